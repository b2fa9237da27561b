// How do losses, velocities and oil return in a line travel as JSON?
// Follows the types of line-set. A bubble curve goes by the designation of its refrigerant.
// Does not cover lengths and lifts that a manual allows: line-set.ts.
import type {
  FlowCondition,
  FrictionLoss,
  FrictionLossInput,
  LiquidColumn,
  LiquidSubcoolingAssessment,
  LiquidSubcoolingInput,
  LiquidVelocityAssessment,
  LiquidVelocityInput,
  OilRiser,
  refrigerantMassFlow,
  TubeFlow,
  VaporLineAssessment,
  VaporLineInput,
} from "../line-set/index.ts";
import type { Refrigerant } from "../refrigerants/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { tubeFlow, tubeSize } from "./line-set-parts.ts";
import { byDesignation } from "./refrigerant-names.ts";
import { verdict } from "./verdict.ts";
import { type FieldsOf, list, of, words } from "./wire-shape.ts";

/** JSON of what `frictionFactor` takes. Source: the library's own format. */
export const frictionFactorInput: Codec<FlowCondition> = /* @__PURE__ */ codecOf<FlowCondition>({
  name: "condition",
  shape: () => of<FlowCondition>({ reynolds: "number", relativeRoughness: "number" }),
});

/** JSON of what `frictionLoss` takes. Source: the library's own format. */
export const frictionLossInput: Codec<FrictionLossInput> =
  /* @__PURE__ */ codecOf<FrictionLossInput>({
    name: "input",
    shape: () =>
      of<FrictionLossInput>({
        ...tubeFlow(),
        length: "length",
        viscosityMicropascalSecond: "number",
        "roughness?": "length",
      }),
  });

/** JSON of what `frictionLoss` gives. Source: the library's own format. */
export const frictionLossResult: Codec<FrictionLoss> = /* @__PURE__ */ codecOf<FrictionLoss>({
  name: "result",
  shape: () =>
    of<FrictionLoss>({
      pressureLoss: "pressureDifference",
      velocity: "speed",
      reynolds: "number",
      frictionFactor: "number",
    }),
});

/** JSON of what `lineVelocity` takes. Source: the library's own format. */
export const lineVelocityInput: Codec<TubeFlow> = /* @__PURE__ */ codecOf<TubeFlow>({
  name: "flow",
  shape: () => of<TubeFlow>(tubeFlow()),
});

/** JSON of what `staticHead` takes. Source: the library's own format. */
export const staticHeadInput: Codec<LiquidColumn> = /* @__PURE__ */ codecOf<LiquidColumn>({
  name: "column",
  shape: () => of<LiquidColumn>({ density: "density", lift: "length" }),
});

/** JSON of what `refrigerantMassFlow` takes. Source: the library's own format. */
export const refrigerantMassFlowInput: Codec<InputOf<typeof refrigerantMassFlow>> =
  /* @__PURE__ */ codecOf<InputOf<typeof refrigerantMassFlow>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof refrigerantMassFlow>>({
        capacity: "power",
        enthalpyDifference: "specificEnergy",
      }),
  });

/** JSON of what `assessLiquidVelocity` takes. Source: the library's own format. */
export const assessLiquidVelocityInput: Codec<LiquidVelocityInput> =
  /* @__PURE__ */ codecOf<LiquidVelocityInput>({
    name: "input",
    shape: () =>
      of<LiquidVelocityInput>({
        ...tubeFlow(),
        solenoidValve: "flag",
        "pressureLoss?": "pressureDifference",
        "maximumLoss?": "pressureDifference",
      }),
  });

/** JSON of what `assessLiquidVelocity` gives. Source: the library's own format. */
export const assessLiquidVelocityResult: Codec<LiquidVelocityAssessment> =
  /* @__PURE__ */ codecOf<LiquidVelocityAssessment>({
    name: "result",
    shape: () => of<LiquidVelocityAssessment>({ ...verdict(), velocity: "speed" }),
  });

/** What subcooling a liquid line needs, with the refrigerant in place of the function that gives its bubble temperature. Source: none; the library's own type. */
export interface SubcoolingOnTheWire extends Omit<LiquidSubcoolingInput, "bubbleTemperature"> {
  readonly refrigerant: Refrigerant;
}

/**
 * JSON of what `liquidLineSubcooling` takes. A function cannot travel: the refrigerant whose bubble curve
 * it is goes in its place.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { liquidLineSubcooling } from "hvac-install-math/line-set";
 * import { deltaK, kPa, kPaa } from "hvac-install-math/quantity";
 * import { bubbleTemperature, R410A } from "hvac-install-math/refrigerants";
 * import { liquidLineSubcoolingInput } from "hvac-install-math/wire";
 *
 * const line = { refrigerant: R410A, liquidPressure: kPaa(2550), losses: [kPa(97)], margin: deltaK(2) };
 * const { refrigerant, ...input } = liquidLineSubcoolingInput.parse(liquidLineSubcoolingInput.stringify(line));
 * const curve = { bubbleTemperature: (p: typeof input.liquidPressure) => bubbleTemperature(refrigerant, p) };
 * liquidLineSubcooling({ ...input, ...curve }).neededSubcooling.toString(deltaK, 1); // => 3.6 K
 * ```
 */
export const liquidLineSubcoolingInput: Codec<SubcoolingOnTheWire> =
  /* @__PURE__ */ codecOf<SubcoolingOnTheWire>({
    name: "input",
    shape: () =>
      of<SubcoolingOnTheWire>({
        refrigerant: byDesignation(),
        liquidPressure: "absolutePressure",
        losses: list("pressureDifference"),
        margin: "temperatureDifference",
        "available?": "temperatureDifference",
        "standardUncertainty?": "temperatureDifference",
      }),
  });

/** JSON of what `liquidLineSubcooling` gives. Source: the library's own format. */
export const liquidLineSubcoolingResult: Codec<LiquidSubcoolingAssessment> =
  /* @__PURE__ */ codecOf<LiquidSubcoolingAssessment>({
    name: "result",
    shape: () =>
      of<LiquidSubcoolingAssessment>({
        ...verdict(),
        pressureLoss: "pressureDifference",
        temperatureLoss: "temperatureDifference",
        neededSubcooling: "temperatureDifference",
      }),
  });

const riser = (): FieldsOf<OilRiser> => ({
  tube: tubeSize(),
  vaporDensity: "density",
  oilDensity: "density",
});

/** JSON of what `oilEntrainmentVelocity` takes. Source: the library's own format. */
export const oilEntrainmentVelocityInput: Codec<OilRiser> = /* @__PURE__ */ codecOf<OilRiser>({
  name: "riser",
  shape: () => of<OilRiser>(riser()),
});

/** JSON of what `assessVaporLine` takes. Source: the library's own format. */
export const assessVaporLineInput: Codec<VaporLineInput> = /* @__PURE__ */ codecOf<VaporLineInput>({
  name: "input",
  shape: () =>
    of<VaporLineInput>({
      ...riser(),
      direction: words<VaporLineInput["direction"]>({ horizontal: true, riser: true }),
      fullMassFlow: "massFlow",
      minimumMassFlow: "massFlow",
      "minimumVelocity?": "speed",
      "maximumVelocity?": "speed",
    }),
});

/** JSON of what `assessVaporLine` gives. Source: the library's own format. */
export const assessVaporLineResult: Codec<VaporLineAssessment> =
  /* @__PURE__ */ codecOf<VaporLineAssessment>({
    name: "result",
    shape: () =>
      of<VaporLineAssessment>({
        ...verdict(),
        fullVelocity: "speed",
        minimumCapacityVelocity: "speed",
        entrainmentVelocity: "speed",
      }),
  });
