// How do the inputs and results of line-set travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type {
  additionalCharge,
  assessLineFit,
  assessLineRun,
  assessLiquidVelocity,
  assessRecovery,
  assessVaporLine,
  astmB280Tube,
  boreArea,
  chooseStockLength,
  copperMassPerLength,
  en12735Tube,
  frictionFactor,
  frictionLoss,
  fullLineMass,
  fullLineRate,
  insideDiameter,
  insulatedDiameter,
  jisH3300Tube,
  LinePair,
  LiquidSubcoolingInput,
  lineContents,
  lineVelocity,
  liquidChargePlausibility,
  liquidLineSubcooling,
  multiSplitCharge,
  oilEntrainmentVelocity,
  rateForLiquidLine,
  refrigerantMassFlow,
  smallestSleeve,
  staticHead,
  Tube,
  TubeSize,
  tubeVolume,
} from "../../line-set/index.ts";
import type { Refrigerant } from "../../refrigerants/index.ts";
import type { ArgumentsOf, InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  AdditionalChargeInputShape,
  AstmB280ChoiceShape,
  ChargeAssessmentShape,
  En12735TubeInputShape,
  FilledTubeShape,
  FlowConditionShape,
  FrictionLossInputShape,
  FrictionLossShape,
  FullLineMassInput1Shape,
  FullLineMassInput2Shape,
  IdentifyLinesInputShape,
  IdentifyLinesResultShape,
  InsulatedDiameterInputShape,
  JisH3300TubeInputShape,
  LineContentsInputShape,
  LineContentsShape,
  LineFitAssessmentShape,
  LineFitInputShape,
  LineRunAssessmentShape,
  LineRunInputShape,
  LiquidChargePlausibilityInput1Shape,
  LiquidChargePlausibilityInput2Shape,
  LiquidChargePlausibilityShape,
  LiquidColumnShape,
  LiquidFilledTubeShape,
  LiquidLineSubcoolingInputShape,
  LiquidSubcoolingAssessmentShape,
  LiquidVelocityAssessmentShape,
  LiquidVelocityInputShape,
  MultiSplitChargeInputShape,
  OilRiserShape,
  RateForLiquidLineInputShape,
  RecoveryAssessmentShape,
  RecoveryInputShape,
  RefrigerantMassFlowInputShape,
  SmallestSleeveInputShape,
  StockLengthAssessmentShape,
  StockLengthInputShape,
  TubeFlowShape,
  TubeShape,
  TubeSizeShape,
  TubeVolumeInputShape,
  VaporLineAssessmentShape,
  VaporLineInputShape,
} from "./line-set.shapes.ts";

/** JSON of what `additionalCharge` takes. Source: the library's own format. */
export const additionalChargeInput: Codec<InputOf<typeof additionalCharge>> =
  /* @__PURE__ */ codecOf({
    id: "additionalChargeInput",
    name: "input",
    shape: AdditionalChargeInputShape,
  });

/** JSON of what `additionalCharge` gives. Source: the library's own format. */
export const additionalChargeResult: Codec<ResultOf<typeof additionalCharge>> =
  /* @__PURE__ */ codecOf({
    id: "additionalChargeResult",
    name: "result",
    shape: ChargeAssessmentShape,
  });

/** JSON of what `frictionLoss` takes. Source: the library's own format. */
export const frictionLossInput: Codec<InputOf<typeof frictionLoss>> = /* @__PURE__ */ codecOf({
  id: "frictionLossInput",
  name: "input",
  shape: FrictionLossInputShape,
});

/** JSON of what `frictionLoss` gives. Source: the library's own format. */
export const frictionLossResult: Codec<ResultOf<typeof frictionLoss>> = /* @__PURE__ */ codecOf({
  id: "frictionLossResult",
  name: "result",
  shape: FrictionLossShape,
});

/** JSON of what `lineVelocity` takes. Source: the library's own format. */
export const lineVelocityInput: Codec<InputOf<typeof lineVelocity>> = /* @__PURE__ */ codecOf({
  id: "lineVelocityInput",
  name: "flow",
  shape: TubeFlowShape,
});

/** JSON of what `fullLineMass` takes. Source: the library's own format. */
export const fullLineMassInput: Codec<InputOf<typeof fullLineMass>> = /* @__PURE__ */ codecOf({
  id: "fullLineMassInput",
  name: "filled",
  shape: () => ({ either: [FullLineMassInput1Shape(), FullLineMassInput2Shape()] }),
});

/** JSON of what `fullLineRate` takes. Source: the library's own format. */
export const fullLineRateInput: Codec<InputOf<typeof fullLineRate>> = /* @__PURE__ */ codecOf({
  id: "fullLineRateInput",
  name: "filled",
  shape: () => ({ either: [FilledTubeShape(), LiquidFilledTubeShape()] }),
});

/** JSON of what `boreArea` takes. Source: the library's own format. */
export const boreAreaInput: Codec<InputOf<typeof boreArea>> = /* @__PURE__ */ codecOf({
  id: "boreAreaInput",
  name: "tube",
  shape: TubeSizeShape,
});

/** JSON of what `copperMassPerLength` takes. Source: the library's own format. */
export const copperMassPerLengthInput: Codec<InputOf<typeof copperMassPerLength>> =
  /* @__PURE__ */ codecOf({ id: "copperMassPerLengthInput", name: "tube", shape: TubeSizeShape });

/** JSON of what `insideDiameter` takes. Source: the library's own format. */
export const insideDiameterInput: Codec<InputOf<typeof insideDiameter>> = /* @__PURE__ */ codecOf({
  id: "insideDiameterInput",
  name: "tube",
  shape: TubeSizeShape,
});

/** JSON of what `tubeVolume` takes. Source: the library's own format. */
export const tubeVolumeInput: Codec<ArgumentsOf<typeof tubeVolume, ["tube", "length"]>> =
  /* @__PURE__ */ codecOf({ id: "tubeVolumeInput", name: "input", shape: TubeVolumeInputShape });

/** JSON of what `astmB280Tube` takes. Source: the library's own format. */
export const astmB280TubeInput: Codec<InputOf<typeof astmB280Tube>> = /* @__PURE__ */ codecOf({
  id: "astmB280TubeInput",
  name: "choice",
  shape: AstmB280ChoiceShape,
});

/** JSON of what `astmB280Tube` gives. Source: the library's own format. */
export const astmB280TubeResult: Codec<ResultOf<typeof astmB280Tube>> = /* @__PURE__ */ codecOf({
  id: "astmB280TubeResult",
  name: "result",
  shape: TubeShape,
});

/** JSON of what `frictionFactor` takes. Source: the library's own format. */
export const frictionFactorInput: Codec<InputOf<typeof frictionFactor>> = /* @__PURE__ */ codecOf({
  id: "frictionFactorInput",
  name: "condition",
  shape: FlowConditionShape,
});

/** JSON of what `identifyLines` takes. Source: the library's own format. */
export const identifyLinesInput: Codec<{
  readonly a: Tube | TubeSize;
  readonly b: Tube | TubeSize;
}> = /* @__PURE__ */ codecOf({
  id: "identifyLinesInput",
  name: "input",
  shape: IdentifyLinesInputShape,
});

/** JSON of what `identifyLines` gives. Source: the library's own format. */
export const identifyLinesResult: Codec<LinePair<Tube | TubeSize>> = /* @__PURE__ */ codecOf({
  id: "identifyLinesResult",
  name: "result",
  shape: IdentifyLinesResultShape,
});

/** JSON of what `insulatedDiameter` takes. Source: the library's own format. */
export const insulatedDiameterInput: Codec<
  ArgumentsOf<typeof insulatedDiameter, ["tube", "thickness"]>
> = /* @__PURE__ */ codecOf({
  id: "insulatedDiameterInput",
  name: "input",
  shape: InsulatedDiameterInputShape,
});

/** JSON of what `smallestSleeve` takes. Source: the library's own format. */
export const smallestSleeveInput: Codec<
  ArgumentsOf<typeof smallestSleeve, ["items", "clearance"]>
> = /* @__PURE__ */ codecOf({
  id: "smallestSleeveInput",
  name: "input",
  shape: SmallestSleeveInputShape,
});

/** JSON of what `assessLineFit` takes. Source: the library's own format. */
export const assessLineFitInput: Codec<InputOf<typeof assessLineFit>> = /* @__PURE__ */ codecOf({
  id: "assessLineFitInput",
  name: "input",
  shape: LineFitInputShape,
});

/** JSON of what `assessLineFit` gives. Source: the library's own format. */
export const assessLineFitResult: Codec<ResultOf<typeof assessLineFit>> = /* @__PURE__ */ codecOf({
  id: "assessLineFitResult",
  name: "result",
  shape: LineFitAssessmentShape,
});

/** JSON of what `assessLineRun` takes. Source: the library's own format. */
export const assessLineRunInput: Codec<InputOf<typeof assessLineRun>> = /* @__PURE__ */ codecOf({
  id: "assessLineRunInput",
  name: "input",
  shape: LineRunInputShape,
});

/** JSON of what `assessLineRun` gives. Source: the library's own format. */
export const assessLineRunResult: Codec<ResultOf<typeof assessLineRun>> = /* @__PURE__ */ codecOf({
  id: "assessLineRunResult",
  name: "result",
  shape: LineRunAssessmentShape,
});

/** JSON of what `liquidChargePlausibility` takes. Source: the library's own format. */
export const liquidChargePlausibilityInput: Codec<InputOf<typeof liquidChargePlausibility>> =
  /* @__PURE__ */ codecOf({
    id: "liquidChargePlausibilityInput",
    name: "input",
    shape: () => ({
      either: [LiquidChargePlausibilityInput1Shape(), LiquidChargePlausibilityInput2Shape()],
    }),
  });

/** JSON of what `liquidChargePlausibility` gives. Source: the library's own format. */
export const liquidChargePlausibilityResult: Codec<ResultOf<typeof liquidChargePlausibility>> =
  /* @__PURE__ */ codecOf({
    id: "liquidChargePlausibilityResult",
    name: "result",
    shape: LiquidChargePlausibilityShape,
  });

/** JSON of what `liquidLineSubcooling` takes. Source: the library's own format. */
export const liquidLineSubcoolingInput: Codec<
  Omit<LiquidSubcoolingInput, "bubbleTemperature"> & { readonly refrigerant: Refrigerant }
> = /* @__PURE__ */ codecOf({
  id: "liquidLineSubcoolingInput",
  name: "input",
  shape: LiquidLineSubcoolingInputShape,
});

/** JSON of what `liquidLineSubcooling` gives. Source: the library's own format. */
export const liquidLineSubcoolingResult: Codec<ResultOf<typeof liquidLineSubcooling>> =
  /* @__PURE__ */ codecOf({
    id: "liquidLineSubcoolingResult",
    name: "result",
    shape: LiquidSubcoolingAssessmentShape,
  });

/** JSON of what `assessLiquidVelocity` takes. Source: the library's own format. */
export const assessLiquidVelocityInput: Codec<InputOf<typeof assessLiquidVelocity>> =
  /* @__PURE__ */ codecOf({
    id: "assessLiquidVelocityInput",
    name: "input",
    shape: LiquidVelocityInputShape,
  });

/** JSON of what `assessLiquidVelocity` gives. Source: the library's own format. */
export const assessLiquidVelocityResult: Codec<ResultOf<typeof assessLiquidVelocity>> =
  /* @__PURE__ */ codecOf({
    id: "assessLiquidVelocityResult",
    name: "result",
    shape: LiquidVelocityAssessmentShape,
  });

/** JSON of what `en12735Tube` takes. Source: the library's own format. */
export const en12735TubeInput: Codec<ArgumentsOf<typeof en12735Tube, ["size", "wall"]>> =
  /* @__PURE__ */ codecOf({ id: "en12735TubeInput", name: "input", shape: En12735TubeInputShape });

/** JSON of what `en12735Tube` gives. Source: the library's own format. */
export const en12735TubeResult: Codec<ResultOf<typeof en12735Tube>> = /* @__PURE__ */ codecOf({
  id: "en12735TubeResult",
  name: "result",
  shape: TubeShape,
});

/** JSON of what `jisH3300Tube` takes. Source: the library's own format. */
export const jisH3300TubeInput: Codec<ArgumentsOf<typeof jisH3300Tube, ["size", "wall"]>> =
  /* @__PURE__ */ codecOf({
    id: "jisH3300TubeInput",
    name: "input",
    shape: JisH3300TubeInputShape,
  });

/** JSON of what `jisH3300Tube` gives. Source: the library's own format. */
export const jisH3300TubeResult: Codec<ResultOf<typeof jisH3300Tube>> = /* @__PURE__ */ codecOf({
  id: "jisH3300TubeResult",
  name: "result",
  shape: TubeShape,
});

/** JSON of what `multiSplitCharge` takes. Source: the library's own format. */
export const multiSplitChargeInput: Codec<InputOf<typeof multiSplitCharge>> =
  /* @__PURE__ */ codecOf({
    id: "multiSplitChargeInput",
    name: "input",
    shape: MultiSplitChargeInputShape,
  });

/** JSON of what `multiSplitCharge` gives. Source: the library's own format. */
export const multiSplitChargeResult: Codec<ResultOf<typeof multiSplitCharge>> =
  /* @__PURE__ */ codecOf({
    id: "multiSplitChargeResult",
    name: "result",
    shape: ChargeAssessmentShape,
  });

/** JSON of what `rateForLiquidLine` takes. Source: the library's own format. */
export const rateForLiquidLineInput: Codec<
  ArgumentsOf<typeof rateForLiquidLine, ["rows", "tube"]>
> = /* @__PURE__ */ codecOf({
  id: "rateForLiquidLineInput",
  name: "input",
  shape: RateForLiquidLineInputShape,
});

/** JSON of what `lineContents` takes. Source: the library's own format. */
export const lineContentsInput: Codec<InputOf<typeof lineContents>> = /* @__PURE__ */ codecOf({
  id: "lineContentsInput",
  name: "input",
  shape: LineContentsInputShape,
});

/** JSON of what `lineContents` gives. Source: the library's own format. */
export const lineContentsResult: Codec<ResultOf<typeof lineContents>> = /* @__PURE__ */ codecOf({
  id: "lineContentsResult",
  name: "result",
  shape: LineContentsShape,
});

/** JSON of what `assessRecovery` takes. Source: the library's own format. */
export const assessRecoveryInput: Codec<InputOf<typeof assessRecovery>> = /* @__PURE__ */ codecOf({
  id: "assessRecoveryInput",
  name: "input",
  shape: RecoveryInputShape,
});

/** JSON of what `assessRecovery` gives. Source: the library's own format. */
export const assessRecoveryResult: Codec<ResultOf<typeof assessRecovery>> = /* @__PURE__ */ codecOf(
  { id: "assessRecoveryResult", name: "result", shape: RecoveryAssessmentShape },
);

/** JSON of what `staticHead` takes. Source: the library's own format. */
export const staticHeadInput: Codec<InputOf<typeof staticHead>> = /* @__PURE__ */ codecOf({
  id: "staticHeadInput",
  name: "column",
  shape: LiquidColumnShape,
});

/** JSON of what `chooseStockLength` takes. Source: the library's own format. */
export const chooseStockLengthInput: Codec<InputOf<typeof chooseStockLength>> =
  /* @__PURE__ */ codecOf({
    id: "chooseStockLengthInput",
    name: "input",
    shape: StockLengthInputShape,
  });

/** JSON of what `chooseStockLength` gives. Source: the library's own format. */
export const chooseStockLengthResult: Codec<ResultOf<typeof chooseStockLength>> =
  /* @__PURE__ */ codecOf({
    id: "chooseStockLengthResult",
    name: "result",
    shape: StockLengthAssessmentShape,
  });

/** JSON of what `refrigerantMassFlow` takes. Source: the library's own format. */
export const refrigerantMassFlowInput: Codec<InputOf<typeof refrigerantMassFlow>> =
  /* @__PURE__ */ codecOf({
    id: "refrigerantMassFlowInput",
    name: "input",
    shape: RefrigerantMassFlowInputShape,
  });

/** JSON of what `oilEntrainmentVelocity` takes. Source: the library's own format. */
export const oilEntrainmentVelocityInput: Codec<InputOf<typeof oilEntrainmentVelocity>> =
  /* @__PURE__ */ codecOf({
    id: "oilEntrainmentVelocityInput",
    name: "riser",
    shape: OilRiserShape,
  });

/** JSON of what `assessVaporLine` takes. Source: the library's own format. */
export const assessVaporLineInput: Codec<InputOf<typeof assessVaporLine>> = /* @__PURE__ */ codecOf(
  { id: "assessVaporLineInput", name: "input", shape: VaporLineInputShape },
);

/** JSON of what `assessVaporLine` gives. Source: the library's own format. */
export const assessVaporLineResult: Codec<ResultOf<typeof assessVaporLine>> =
  /* @__PURE__ */ codecOf({
    id: "assessVaporLineResult",
    name: "result",
    shape: VaporLineAssessmentShape,
  });
