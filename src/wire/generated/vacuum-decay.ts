// How do the inputs and results of vacuum-decay travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type {
  assessVacuumDecay,
  createDecayMonitor,
  decayCurve,
  effectivePumpingSpeed,
  pumpDownTime,
  residualGasFraction,
  tubeConductance,
  vacuumRiseOfLeak,
  waterVaporMass,
} from "../../vacuum-decay/index.ts";
import type { ArgumentsOf, InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  ConductanceInputShape,
  ConductanceShape,
  DecayCurveInputShape,
  DecayReadingShape,
  EffectivePumpingSpeedInputShape,
  PumpDownInputShape,
  ResidualGasFractionInputShape,
  VacuumDecayAssessmentShape,
  VacuumDecayInputShape,
  VacuumDecayOptionsShape,
  VacuumRiseOfLeakInputShape,
  WaterVaporMassInputShape,
} from "./vacuum-decay.shapes.ts";

/** JSON of what `assessVacuumDecay` takes. Source: the library's own format. */
export const assessVacuumDecayInput: Codec<InputOf<typeof assessVacuumDecay>> =
  /* @__PURE__ */ codecOf({
    id: "assessVacuumDecayInput",
    name: "input",
    shape: VacuumDecayInputShape,
  });

/** JSON of what `assessVacuumDecay` gives. Source: the library's own format. */
export const assessVacuumDecayResult: Codec<ResultOf<typeof assessVacuumDecay>> =
  /* @__PURE__ */ codecOf({
    id: "assessVacuumDecayResult",
    name: "result",
    shape: VacuumDecayAssessmentShape,
  });

/** JSON of what `effectivePumpingSpeed` takes. Source: the library's own format. */
export const effectivePumpingSpeedInput: Codec<InputOf<typeof effectivePumpingSpeed>> =
  /* @__PURE__ */ codecOf({
    id: "effectivePumpingSpeedInput",
    name: "input",
    shape: EffectivePumpingSpeedInputShape,
  });

/** JSON of what `tubeConductance` takes. Source: the library's own format. */
export const tubeConductanceInput: Codec<InputOf<typeof tubeConductance>> = /* @__PURE__ */ codecOf(
  { id: "tubeConductanceInput", name: "input", shape: ConductanceInputShape },
);

/** JSON of what `tubeConductance` gives. Source: the library's own format. */
export const tubeConductanceResult: Codec<ResultOf<typeof tubeConductance>> =
  /* @__PURE__ */ codecOf({ id: "tubeConductanceResult", name: "result", shape: ConductanceShape });

/** JSON of what `decayCurve` takes. Source: the library's own format. */
export const decayCurveInput: Codec<ArgumentsOf<typeof decayCurve, ["fit", "options"]>> =
  /* @__PURE__ */ codecOf({ id: "decayCurveInput", name: "input", shape: DecayCurveInputShape });

/** JSON of what `decayCurve` gives. Source: the library's own format. */
export const decayCurveResult: Codec<ResultOf<typeof decayCurve>> = /* @__PURE__ */ codecOf({
  id: "decayCurveResult",
  name: "result",
  shape: () => ({ list: DecayReadingShape() }),
});

/** JSON of what `createDecayMonitor` takes. Source: the library's own format. */
export const createDecayMonitorInput: Codec<InputOf<typeof createDecayMonitor>> =
  /* @__PURE__ */ codecOf({
    id: "createDecayMonitorInput",
    name: "options",
    shape: VacuumDecayOptionsShape,
  });

/** JSON of what `vacuumRiseOfLeak` takes. Source: the library's own format. */
export const vacuumRiseOfLeakInput: Codec<InputOf<typeof vacuumRiseOfLeak>> =
  /* @__PURE__ */ codecOf({
    id: "vacuumRiseOfLeakInput",
    name: "input",
    shape: VacuumRiseOfLeakInputShape,
  });

/** JSON of what `waterVaporMass` takes. Source: the library's own format. */
export const waterVaporMassInput: Codec<InputOf<typeof waterVaporMass>> = /* @__PURE__ */ codecOf({
  id: "waterVaporMassInput",
  name: "input",
  shape: WaterVaporMassInputShape,
});

/** JSON of what `pumpDownTime` takes. Source: the library's own format. */
export const pumpDownTimeInput: Codec<InputOf<typeof pumpDownTime>> = /* @__PURE__ */ codecOf({
  id: "pumpDownTimeInput",
  name: "input",
  shape: PumpDownInputShape,
});

/** JSON of what `residualGasFraction` takes. Source: the library's own format. */
export const residualGasFractionInput: Codec<InputOf<typeof residualGasFraction>> =
  /* @__PURE__ */ codecOf({
    id: "residualGasFractionInput",
    name: "input",
    shape: ResidualGasFractionInputShape,
  });
