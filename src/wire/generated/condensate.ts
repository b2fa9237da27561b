// How do the inputs and results of condensate travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type {
  assessCondensatePump,
  assessDrainSlope,
  assessIndoorUnitPitch,
  condensateFromLoad,
  condensateRate,
  condensateRuleOfThumb,
  condensateTrap,
  drainCautions,
  drainSize,
  humidityRatio,
  minimumFall,
  planDrain,
  slopeOf,
} from "../../condensate/index.ts";
import type { ArgumentsOf, InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import { EstimateOfRatioShape } from "./assessment.shapes.ts";
import {
  CoilAirShape,
  CondensateCautionShape,
  CondensateFlowShape,
  CondensateFromLoadInputShape,
  CondensatePumpAssessmentShape,
  CondensatePumpInputShape,
  CondensateRateShape,
  CondensateRuleOfThumbResultShape,
  CondensateTrapInputShape,
  CondensateTrapShape,
  DrainPlanInputShape,
  DrainPlanShape,
  DrainRouteShape,
  DrainSizeInputShape,
  DrainSizeShape,
  DrainSlopeAssessmentShape,
  DrainSlopeInputShape,
  HumidityRatioInputShape,
  IndoorUnitPitchAssessmentShape,
  IndoorUnitPitchInputShape,
  MinimumFallInputShape,
  SlopeOfInputShape,
} from "./condensate.shapes.ts";

/** JSON of what `drainCautions` takes. Source: the library's own format. */
export const drainCautionsInput: Codec<InputOf<typeof drainCautions>> = /* @__PURE__ */ codecOf({
  id: "drainCautionsInput",
  name: "route",
  shape: DrainRouteShape,
});

/** JSON of what `drainCautions` gives. Source: the library's own format. */
export const drainCautionsResult: Codec<ResultOf<typeof drainCautions>> = /* @__PURE__ */ codecOf({
  id: "drainCautionsResult",
  name: "result",
  shape: () => ({ list: CondensateCautionShape() }),
});

/** JSON of what `minimumFall` takes. Source: the library's own format. */
export const minimumFallInput: Codec<InputOf<typeof minimumFall>> = /* @__PURE__ */ codecOf({
  id: "minimumFallInput",
  name: "drain",
  shape: MinimumFallInputShape,
});

/** JSON of what `slopeOf` takes. Source: the library's own format. */
export const slopeOfInput: Codec<InputOf<typeof slopeOf>> = /* @__PURE__ */ codecOf({
  id: "slopeOfInput",
  name: "reading",
  shape: SlopeOfInputShape,
});

/** JSON of what `slopeOf` gives. Source: the library's own format. */
export const slopeOfResult: Codec<ResultOf<typeof slopeOf>> = /* @__PURE__ */ codecOf({
  id: "slopeOfResult",
  name: "result",
  shape: EstimateOfRatioShape,
});

/** JSON of what `humidityRatio` takes. Source: the library's own format. */
export const humidityRatioInput: Codec<ArgumentsOf<typeof humidityRatio, ["air", "atmosphere"]>> =
  /* @__PURE__ */ codecOf({
    id: "humidityRatioInput",
    name: "input",
    shape: HumidityRatioInputShape,
  });

/** JSON of what `assessCondensatePump` takes. Source: the library's own format. */
export const assessCondensatePumpInput: Codec<InputOf<typeof assessCondensatePump>> =
  /* @__PURE__ */ codecOf({
    id: "assessCondensatePumpInput",
    name: "input",
    shape: CondensatePumpInputShape,
  });

/** JSON of what `assessCondensatePump` gives. Source: the library's own format. */
export const assessCondensatePumpResult: Codec<ResultOf<typeof assessCondensatePump>> =
  /* @__PURE__ */ codecOf({
    id: "assessCondensatePumpResult",
    name: "result",
    shape: CondensatePumpAssessmentShape,
  });

/** JSON of what `assessDrainSlope` takes. Source: the library's own format. */
export const assessDrainSlopeInput: Codec<InputOf<typeof assessDrainSlope>> =
  /* @__PURE__ */ codecOf({
    id: "assessDrainSlopeInput",
    name: "input",
    shape: DrainSlopeInputShape,
  });

/** JSON of what `assessDrainSlope` gives. Source: the library's own format. */
export const assessDrainSlopeResult: Codec<ResultOf<typeof assessDrainSlope>> =
  /* @__PURE__ */ codecOf({
    id: "assessDrainSlopeResult",
    name: "result",
    shape: DrainSlopeAssessmentShape,
  });

/** JSON of what `assessIndoorUnitPitch` takes. Source: the library's own format. */
export const assessIndoorUnitPitchInput: Codec<InputOf<typeof assessIndoorUnitPitch>> =
  /* @__PURE__ */ codecOf({
    id: "assessIndoorUnitPitchInput",
    name: "input",
    shape: IndoorUnitPitchInputShape,
  });

/** JSON of what `assessIndoorUnitPitch` gives. Source: the library's own format. */
export const assessIndoorUnitPitchResult: Codec<ResultOf<typeof assessIndoorUnitPitch>> =
  /* @__PURE__ */ codecOf({
    id: "assessIndoorUnitPitchResult",
    name: "result",
    shape: IndoorUnitPitchAssessmentShape,
  });

/** JSON of what `condensateRate` takes. Source: the library's own format. */
export const condensateRateInput: Codec<InputOf<typeof condensateRate>> = /* @__PURE__ */ codecOf({
  id: "condensateRateInput",
  name: "coil",
  shape: CoilAirShape,
});

/** JSON of what `condensateRate` gives. Source: the library's own format. */
export const condensateRateResult: Codec<ResultOf<typeof condensateRate>> = /* @__PURE__ */ codecOf(
  { id: "condensateRateResult", name: "result", shape: CondensateRateShape },
);

/** JSON of what `condensateFromLoad` takes. Source: the library's own format. */
export const condensateFromLoadInput: Codec<InputOf<typeof condensateFromLoad>> =
  /* @__PURE__ */ codecOf({
    id: "condensateFromLoadInput",
    name: "load",
    shape: CondensateFromLoadInputShape,
  });

/** JSON of what `condensateFromLoad` gives. Source: the library's own format. */
export const condensateFromLoadResult: Codec<ResultOf<typeof condensateFromLoad>> =
  /* @__PURE__ */ codecOf({
    id: "condensateFromLoadResult",
    name: "result",
    shape: CondensateFlowShape,
  });

/** JSON of what `condensateRuleOfThumb` gives. Source: the library's own format. */
export const condensateRuleOfThumbResult: Codec<ResultOf<typeof condensateRuleOfThumb>> =
  /* @__PURE__ */ codecOf({
    id: "condensateRuleOfThumbResult",
    name: "result",
    shape: CondensateRuleOfThumbResultShape,
  });

/** JSON of what `condensateTrap` takes. Source: the library's own format. */
export const condensateTrapInput: Codec<InputOf<typeof condensateTrap>> = /* @__PURE__ */ codecOf({
  id: "condensateTrapInput",
  name: "input",
  shape: CondensateTrapInputShape,
});

/** JSON of what `condensateTrap` gives. Source: the library's own format. */
export const condensateTrapResult: Codec<ResultOf<typeof condensateTrap>> = /* @__PURE__ */ codecOf(
  { id: "condensateTrapResult", name: "result", shape: CondensateTrapShape },
);

/** JSON of what `drainSize` takes. Source: the library's own format. */
export const drainSizeInput: Codec<InputOf<typeof drainSize>> = /* @__PURE__ */ codecOf({
  id: "drainSizeInput",
  name: "input",
  shape: DrainSizeInputShape,
});

/** JSON of what `drainSize` gives. Source: the library's own format. */
export const drainSizeResult: Codec<ResultOf<typeof drainSize>> = /* @__PURE__ */ codecOf({
  id: "drainSizeResult",
  name: "result",
  shape: DrainSizeShape,
});

/** JSON of what `planDrain` takes. Source: the library's own format. */
export const planDrainInput: Codec<InputOf<typeof planDrain>> = /* @__PURE__ */ codecOf({
  id: "planDrainInput",
  name: "input",
  shape: DrainPlanInputShape,
});

/** JSON of what `planDrain` gives. Source: the library's own format. */
export const planDrainResult: Codec<ResultOf<typeof planDrain>> = /* @__PURE__ */ codecOf({
  id: "planDrainResult",
  name: "result",
  shape: DrainPlanShape,
});
