// Which shapes have the types of condensate?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { CitationShape, EstimateOfRatioShape } from "./assessment.shapes.ts";
import {
  RefrigerantsTableNeedsAtmosphereValuesShape,
  SafetyChargeTightSystemShape,
  SafetyCompressorInVacuumShape,
  SafetyDryNitrogenOnlyShape,
  SafetyFlammableRefrigerantShape,
  SafetyLineVoltageShape,
  SafetyLowestRatingShape,
  SafetyMeterCategoryShape,
  SafetyNitrogenSuffocatesShape,
  SafetyOpenUnderPressureShape,
  SafetyOthersGovernShape,
  SafetyRaiseInStagesShape,
  SafetyRefrigerantAirMixtureShape,
  SafetyRefrigerantContactShape,
  SafetyRefrigerantSuffocatesShape,
  SafetyRegulatorAndReliefShape,
  SafetyRunningUnitShape,
  SafetyToxicRefrigerantShape,
  SafetyWorkAtHeightShape,
} from "./refrigerants.shapes.ts";

export const DrainRouteShape: Shape = {
  type: "DrainRoute",
  fields: {
    "outdoors?": "flag",
    "lowestOutdoorTemperature?": "temperature",
    "aboveFinishedSpace?": "flag",
    "pumped?": "flag",
  },
  says: "Where a drain runs. What is left out counts as possible.",
  about: {
    outdoors: "Whether part of it is outdoors.",
    lowestOutdoorTemperature: "Coldest outdoor temperature to be expected.",
    aboveFinishedSpace: "Whether the unit hangs above finished space.",
    pumped: "Whether a pump lifts the water.",
  },
};

export const CondensateFallsEnoughValuesShape: Shape = {
  type: "CondensateFallsEnoughValues",
  fields: { slope: "ratio", uncertainty: "ratio", required: "ratio" },
};

export const CondensateFallsEnoughShape: Shape = {
  type: "CondensateFallsEnough",
  fields: {
    code: { words: ["condensate.falls-enough"] },
    values: CondensateFallsEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateFallsTooLittleShape: Shape = {
  type: "CondensateFallsTooLittle",
  fields: {
    code: { words: ["condensate.falls-too-little"] },
    values: CondensateFallsEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateRisesShape: Shape = {
  type: "CondensateRises",
  fields: {
    code: { words: ["condensate.rises"] },
    values: CondensateFallsEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateCodesDifferValuesShape: Shape = {
  type: "CondensateCodesDifferValues",
  fields: { slope: "ratio", uncertainty: "ratio", required: "ratio", least: "ratio" },
};

export const CondensateCodesDifferShape: Shape = {
  type: "CondensateCodesDiffer",
  fields: {
    code: { words: ["condensate.codes-differ"] },
    values: CondensateCodesDifferValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateSlopeNearShape: Shape = {
  type: "CondensateSlopeNear",
  fields: {
    code: { words: ["condensate.slope-near"] },
    values: CondensateFallsEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePitchEnoughValuesShape: Shape = {
  type: "CondensatePitchEnoughValues",
  fields: { pitch: "ratio", uncertainty: "ratio", minimum: "ratio" },
};

export const CondensatePitchEnoughShape: Shape = {
  type: "CondensatePitchEnough",
  fields: {
    code: { words: ["condensate.pitch-enough"] },
    values: CondensatePitchEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePitchWithinValuesShape: Shape = {
  type: "CondensatePitchWithinValues",
  fields: { pitch: "ratio", uncertainty: "ratio", minimum: "ratio", maximum: "ratio" },
};

export const CondensatePitchWithinShape: Shape = {
  type: "CondensatePitchWithin",
  fields: {
    code: { words: ["condensate.pitch-within"] },
    values: CondensatePitchWithinValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePitchAwayValuesShape: Shape = {
  type: "CondensatePitchAwayValues",
  fields: { pitch: "ratio", uncertainty: "ratio", minimum: "ratio" },
};

export const CondensatePitchAwayShape: Shape = {
  type: "CondensatePitchAway",
  fields: {
    code: { words: ["condensate.pitch-away"] },
    values: CondensatePitchAwayValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePitchTooLittleValuesShape: Shape = {
  type: "CondensatePitchTooLittleValues",
  fields: { pitch: "ratio", uncertainty: "ratio", minimum: "ratio" },
};

export const CondensatePitchTooLittleShape: Shape = {
  type: "CondensatePitchTooLittle",
  fields: {
    code: { words: ["condensate.pitch-too-little"] },
    values: CondensatePitchTooLittleValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePitchTooMuchValuesShape: Shape = {
  type: "CondensatePitchTooMuchValues",
  fields: { pitch: "ratio", uncertainty: "ratio", maximum: "ratio" },
};

export const CondensatePitchTooMuchShape: Shape = {
  type: "CondensatePitchTooMuch",
  fields: {
    code: { words: ["condensate.pitch-too-much"] },
    values: CondensatePitchTooMuchValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePitchNearValuesShape: Shape = {
  type: "CondensatePitchNearValues",
  fields: { pitch: "ratio", uncertainty: "ratio" },
};

export const CondensatePitchNearShape: Shape = {
  type: "CondensatePitchNear",
  fields: {
    code: { words: ["condensate.pitch-near"] },
    values: CondensatePitchNearValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePumpKeepsUpValuesShape: Shape = {
  type: "CondensatePumpKeepsUpValues",
  fields: { lift: "length", flow: "volumeFlow", required: "volumeFlow" },
};

export const CondensatePumpKeepsUpShape: Shape = {
  type: "CondensatePumpKeepsUp",
  fields: {
    code: { words: ["condensate.pump-keeps-up"] },
    values: CondensatePumpKeepsUpValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePumpTooSlowShape: Shape = {
  type: "CondensatePumpTooSlow",
  fields: {
    code: { words: ["condensate.pump-too-slow"] },
    values: CondensatePumpKeepsUpValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePumpLiftTooHighValuesShape: Shape = {
  type: "CondensatePumpLiftTooHighValues",
  fields: { lift: "length", highest: "length" },
};

export const CondensatePumpLiftTooHighShape: Shape = {
  type: "CondensatePumpLiftTooHigh",
  fields: {
    code: { words: ["condensate.pump-lift-too-high"] },
    values: CondensatePumpLiftTooHighValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateGravityValuesShape: Shape = {
  type: "CondensateGravityValues",
  fields: { available: "length", needed: "length" },
};

export const CondensateGravityShape: Shape = {
  type: "CondensateGravity",
  fields: {
    code: { words: ["condensate.gravity"] },
    values: CondensateGravityValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateFallShortValuesShape: Shape = {
  type: "CondensateFallShortValues",
  fields: { shortfall: "length", point: "number" },
};

export const CondensateFallShortShape: Shape = {
  type: "CondensateFallShort",
  fields: {
    code: { words: ["condensate.fall-short"] },
    values: CondensateFallShortValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateStraightShape: Shape = {
  type: "CondensateStraight",
  fields: {
    code: { words: ["condensate.straight"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateExactInstrumentShape: Shape = {
  type: "CondensateExactInstrument",
  fields: {
    code: { words: ["condensate.exact-instrument"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateCodeSlopeValuesShape: Shape = {
  type: "CondensateCodeSlopeValues",
  fields: { slope: "ratio" },
};

export const CondensateCodeSlopeShape: Shape = {
  type: "CondensateCodeSlope",
  fields: {
    code: { words: ["condensate.code-slope"] },
    values: CondensateCodeSlopeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateLevelIsEnoughShape: Shape = {
  type: "CondensateLevelIsEnough",
  fields: {
    code: { words: ["condensate.level-is-enough"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateMaximumPitchNotCheckedShape: Shape = {
  type: "CondensateMaximumPitchNotChecked",
  fields: {
    code: { words: ["condensate.maximum-pitch-not-checked"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePumpMarginValuesShape: Shape = {
  type: "CondensatePumpMarginValues",
  fields: { margin: "number" },
};

export const CondensatePumpMarginShape: Shape = {
  type: "CondensatePumpMargin",
  fields: {
    code: { words: ["condensate.pump-margin"] },
    values: CondensatePumpMarginValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePumpCurveStraightShape: Shape = {
  type: "CondensatePumpCurveStraight",
  fields: {
    code: { words: ["condensate.pump-curve-straight"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateFlatterThanCodeValuesShape: Shape = {
  type: "CondensateFlatterThanCodeValues",
  fields: { least: "ratio" },
};

export const CondensateFlatterThanCodeShape: Shape = {
  type: "CondensateFlatterThanCode",
  fields: {
    code: { words: ["condensate.flatter-than-code"] },
    values: CondensateFlatterThanCodeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateDischargeShape: Shape = {
  type: "CondensateDischarge",
  fields: {
    code: { words: ["condensate.discharge"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateSweatingShape: Shape = {
  type: "CondensateSweating",
  fields: {
    code: { words: ["condensate.sweating"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateSunlightShape: Shape = {
  type: "CondensateSunlight",
  fields: {
    code: { words: ["condensate.sunlight"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateFreezingShape: Shape = {
  type: "CondensateFreezing",
  fields: {
    code: { words: ["condensate.freezing"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateOverflowShape: Shape = {
  type: "CondensateOverflow",
  fields: {
    code: { words: ["condensate.overflow"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensatePumpFailureShape: Shape = {
  type: "CondensatePumpFailure",
  fields: {
    code: { words: ["condensate.pump-failure"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateDryTrapShape: Shape = {
  type: "CondensateDryTrap",
  fields: {
    code: { words: ["condensate.dry-trap"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateIncreaseSlopeValuesShape: Shape = {
  type: "CondensateIncreaseSlopeValues",
  fields: { required: "ratio" },
};

export const CondensateIncreaseSlopeShape: Shape = {
  type: "CondensateIncreaseSlope",
  fields: {
    code: { words: ["condensate.increase-slope"] },
    values: CondensateIncreaseSlopeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateIncreaseFallValuesShape: Shape = {
  type: "CondensateIncreaseFallValues",
  fields: { fall: "length", run: "length" },
};

export const CondensateIncreaseFallShape: Shape = {
  type: "CondensateIncreaseFall",
  fields: {
    code: { words: ["condensate.increase-fall"] },
    values: CondensateIncreaseFallValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateAskCodeValuesShape: Shape = {
  type: "CondensateAskCodeValues",
  fields: { required: "ratio" },
};

export const CondensateAskCodeShape: Shape = {
  type: "CondensateAskCode",
  fields: {
    code: { words: ["condensate.ask-code"] },
    values: CondensateAskCodeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateMeasureBetterShape: Shape = {
  type: "CondensateMeasureBetter",
  fields: {
    code: { words: ["condensate.measure-better"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateRaisePitchValuesShape: Shape = {
  type: "CondensateRaisePitchValues",
  fields: { minimum: "ratio" },
};

export const CondensateRaisePitchShape: Shape = {
  type: "CondensateRaisePitch",
  fields: {
    code: { words: ["condensate.raise-pitch"] },
    values: CondensateRaisePitchValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateLowerPitchValuesShape: Shape = {
  type: "CondensateLowerPitchValues",
  fields: { maximum: "ratio" },
};

export const CondensateLowerPitchShape: Shape = {
  type: "CondensateLowerPitch",
  fields: {
    code: { words: ["condensate.lower-pitch"] },
    values: CondensateLowerPitchValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateOtherPumpValuesShape: Shape = {
  type: "CondensateOtherPumpValues",
  fields: { lift: "length", required: "volumeFlow" },
};

export const CondensateOtherPumpShape: Shape = {
  type: "CondensateOtherPump",
  fields: {
    code: { words: ["condensate.other-pump"] },
    values: CondensateOtherPumpValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateLowerPointValuesShape: Shape = {
  type: "CondensateLowerPointValues",
  fields: { shortfall: "length", point: "number", lift: "length" },
};

export const CondensateLowerPointShape: Shape = {
  type: "CondensateLowerPoint",
  fields: {
    code: { words: ["condensate.lower-point"] },
    values: CondensateLowerPointValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CondensateCautionShape: Shape = {
  type: "CondensateCaution",
  by: "code",
  cases: {
    "safety.others-govern": SafetyOthersGovernShape,
    "safety.dry-nitrogen-only": SafetyDryNitrogenOnlyShape,
    "safety.regulator-and-relief": SafetyRegulatorAndReliefShape,
    "safety.raise-in-stages": SafetyRaiseInStagesShape,
    "safety.lowest-rating": SafetyLowestRatingShape,
    "safety.nitrogen-suffocates": SafetyNitrogenSuffocatesShape,
    "safety.open-under-pressure": SafetyOpenUnderPressureShape,
    "safety.refrigerant-contact": SafetyRefrigerantContactShape,
    "safety.flammable-refrigerant": SafetyFlammableRefrigerantShape,
    "safety.toxic-refrigerant": SafetyToxicRefrigerantShape,
    "safety.refrigerant-suffocates": SafetyRefrigerantSuffocatesShape,
    "safety.charge-tight-system": SafetyChargeTightSystemShape,
    "safety.refrigerant-air-mixture": SafetyRefrigerantAirMixtureShape,
    "safety.compressor-in-vacuum": SafetyCompressorInVacuumShape,
    "safety.line-voltage": SafetyLineVoltageShape,
    "safety.meter-category": SafetyMeterCategoryShape,
    "safety.running-unit": SafetyRunningUnitShape,
    "safety.work-at-height": SafetyWorkAtHeightShape,
    "condensate.falls-enough": CondensateFallsEnoughShape,
    "condensate.falls-too-little": CondensateFallsTooLittleShape,
    "condensate.rises": CondensateRisesShape,
    "condensate.codes-differ": CondensateCodesDifferShape,
    "condensate.slope-near": CondensateSlopeNearShape,
    "condensate.pitch-enough": CondensatePitchEnoughShape,
    "condensate.pitch-within": CondensatePitchWithinShape,
    "condensate.pitch-away": CondensatePitchAwayShape,
    "condensate.pitch-too-little": CondensatePitchTooLittleShape,
    "condensate.pitch-too-much": CondensatePitchTooMuchShape,
    "condensate.pitch-near": CondensatePitchNearShape,
    "condensate.pump-keeps-up": CondensatePumpKeepsUpShape,
    "condensate.pump-too-slow": CondensatePumpTooSlowShape,
    "condensate.pump-lift-too-high": CondensatePumpLiftTooHighShape,
    "condensate.gravity": CondensateGravityShape,
    "condensate.fall-short": CondensateFallShortShape,
    "condensate.straight": CondensateStraightShape,
    "condensate.exact-instrument": CondensateExactInstrumentShape,
    "condensate.code-slope": CondensateCodeSlopeShape,
    "condensate.level-is-enough": CondensateLevelIsEnoughShape,
    "condensate.maximum-pitch-not-checked": CondensateMaximumPitchNotCheckedShape,
    "condensate.pump-margin": CondensatePumpMarginShape,
    "condensate.pump-curve-straight": CondensatePumpCurveStraightShape,
    "condensate.flatter-than-code": CondensateFlatterThanCodeShape,
    "condensate.discharge": CondensateDischargeShape,
    "condensate.sweating": CondensateSweatingShape,
    "condensate.sunlight": CondensateSunlightShape,
    "condensate.freezing": CondensateFreezingShape,
    "condensate.overflow": CondensateOverflowShape,
    "condensate.pump-failure": CondensatePumpFailureShape,
    "condensate.dry-trap": CondensateDryTrapShape,
    "condensate.increase-slope": CondensateIncreaseSlopeShape,
    "condensate.increase-fall": CondensateIncreaseFallShape,
    "condensate.ask-code": CondensateAskCodeShape,
    "condensate.measure-better": CondensateMeasureBetterShape,
    "condensate.raise-pitch": CondensateRaisePitchShape,
    "condensate.lower-pitch": CondensateLowerPitchShape,
    "condensate.other-pump": CondensateOtherPumpShape,
    "condensate.lower-point": CondensateLowerPointShape,
  },
};

export const MinimumFallInputShape: Shape = {
  type: "MinimumFallInput",
  fields: { run: "length", "slope?": "ratio" },
  about: { run: "Horizontal length of the drain.", slope: "Slope asked for." },
};

export const SlopeOfInput1Shape: Shape = {
  type: "SlopeOfInput1",
  fields: { slope: "ratio", "accuracy?": "ratio" },
  about: {
    slope: "From a digital level that shows per cent or mm/m.",
    accuracy: "Limits of error, ±.",
  },
};

export const SlopeOfInput2Shape: Shape = {
  type: "SlopeOfInput2",
  fields: { angle: "angle", "accuracy?": "angle" },
  about: { angle: "From a digital level that shows degrees.", accuracy: "Limits of error, ±." },
};

export const SlopeOfInput3Shape: Shape = {
  type: "SlopeOfInput3",
  fields: { gap: "length", levelLength: "length", "accuracy?": "length" },
  about: {
    gap: "Gap below a spirit level when its bubble is centerd.",
    levelLength: "Length of that level.",
    accuracy: "Limits of error of the gap, ±.",
  },
};

export const SlopeOfInput4Shape: Shape = {
  type: "SlopeOfInput4",
  fields: { heightAtStart: "length", heightAtEnd: "length", run: "length", "accuracy?": "length" },
  about: {
    heightAtStart: "Height where the water starts, from a datum such as a laser line.",
    heightAtEnd: "Height where it leaves, from the same datum.",
    run: "Horizontal distance between the two.",
    accuracy: "Limits of error of each height, ±.",
  },
};

export const SlopeOfInputShape: Shape = {
  type: "SlopeOfInput",
  either: [SlopeOfInput1Shape, SlopeOfInput2Shape, SlopeOfInput3Shape, SlopeOfInput4Shape],
};

export const AirStateShape: Shape = {
  type: "AirState",
  fields: {
    dryBulb: "temperature",
    "relativeHumidity?": "ratio",
    "wetBulb?": "temperature",
    "dewPoint?": "temperature",
  },
  says: "The state of air: its dry-bulb temperature, 0 to 60 °C, and one measure of its moisture. Name one.",
  about: {
    dryBulb: "Temperature of the air, 0 to 60 °C.",
    relativeHumidity: "Relative humidity, above 0 to 100 %.",
    wetBulb: "Thermodynamic wet-bulb temperature, 0 °C to the dry bulb.",
    dewPoint: "Dew point, 0 °C to the dry bulb.",
  },
};

export const HumidityRatioInputShape: Shape = {
  type: "HumidityRatioInput",
  fields: { air: AirStateShape, atmosphere: "absolutePressure" },
};

export const PumpPointShape: Shape = {
  type: "PumpPoint",
  fields: { lift: "length", flow: "volumeFlow" },
  says: "A point of a pump's curve.",
  about: { lift: "Lift, 0 or more.", flow: "Flow at that lift, 0 or more." },
};

export const CondensatePumpInputShape: Shape = {
  type: "CondensatePumpInput",
  fields: {
    condensate: "volumeFlow",
    lift: "length",
    curve: { list: PumpPointShape },
    "reservoir?": "volume",
    "margin?": "number",
  },
  says: "A condensate pump and what it has to do.",
  about: {
    condensate: "Water that comes, above 0: from condensateRate, at the wettest conditions.",
    lift: "Height from the water to the highest point of the hose, 0 or more.",
    curve: "At least two points, by rising lift, the flow not rising.",
    reservoir: "Volume between the switch points of its float, above 0.",
    margin: "How many times the condensate the pump has to move, 1 or more; 2 when left out.",
  },
};

export const CondensateFallsEnough2Shape: Shape = {
  type: "CondensateFallsEnough2",
  fields: {
    code: { words: ["condensate.falls-enough"] },
    values: CondensateFallsEnoughValuesShape,
    "text?": "text",
  },
};

export const CondensateFallsTooLittle2Shape: Shape = {
  type: "CondensateFallsTooLittle2",
  fields: {
    code: { words: ["condensate.falls-too-little"] },
    values: CondensateFallsEnoughValuesShape,
    "text?": "text",
  },
};

export const CondensateRises2Shape: Shape = {
  type: "CondensateRises2",
  fields: {
    code: { words: ["condensate.rises"] },
    values: CondensateFallsEnoughValuesShape,
    "text?": "text",
  },
};

export const CondensateCodesDiffer2Shape: Shape = {
  type: "CondensateCodesDiffer2",
  fields: {
    code: { words: ["condensate.codes-differ"] },
    values: CondensateCodesDifferValuesShape,
    "text?": "text",
  },
};

export const CondensateSlopeNear2Shape: Shape = {
  type: "CondensateSlopeNear2",
  fields: {
    code: { words: ["condensate.slope-near"] },
    values: CondensateFallsEnoughValuesShape,
    "text?": "text",
  },
};

export const CondensatePitchEnough2Shape: Shape = {
  type: "CondensatePitchEnough2",
  fields: {
    code: { words: ["condensate.pitch-enough"] },
    values: CondensatePitchEnoughValuesShape,
    "text?": "text",
  },
};

export const CondensatePitchWithin2Shape: Shape = {
  type: "CondensatePitchWithin2",
  fields: {
    code: { words: ["condensate.pitch-within"] },
    values: CondensatePitchWithinValuesShape,
    "text?": "text",
  },
};

export const CondensatePitchAway2Shape: Shape = {
  type: "CondensatePitchAway2",
  fields: {
    code: { words: ["condensate.pitch-away"] },
    values: CondensatePitchAwayValuesShape,
    "text?": "text",
  },
};

export const CondensatePitchTooLittle2Shape: Shape = {
  type: "CondensatePitchTooLittle2",
  fields: {
    code: { words: ["condensate.pitch-too-little"] },
    values: CondensatePitchTooLittleValuesShape,
    "text?": "text",
  },
};

export const CondensatePitchTooMuch2Shape: Shape = {
  type: "CondensatePitchTooMuch2",
  fields: {
    code: { words: ["condensate.pitch-too-much"] },
    values: CondensatePitchTooMuchValuesShape,
    "text?": "text",
  },
};

export const CondensatePitchNear2Shape: Shape = {
  type: "CondensatePitchNear2",
  fields: {
    code: { words: ["condensate.pitch-near"] },
    values: CondensatePitchNearValuesShape,
    "text?": "text",
  },
};

export const CondensatePumpKeepsUp2Shape: Shape = {
  type: "CondensatePumpKeepsUp2",
  fields: {
    code: { words: ["condensate.pump-keeps-up"] },
    values: CondensatePumpKeepsUpValuesShape,
    "text?": "text",
  },
};

export const CondensatePumpTooSlow2Shape: Shape = {
  type: "CondensatePumpTooSlow2",
  fields: {
    code: { words: ["condensate.pump-too-slow"] },
    values: CondensatePumpKeepsUpValuesShape,
    "text?": "text",
  },
};

export const CondensatePumpLiftTooHigh2Shape: Shape = {
  type: "CondensatePumpLiftTooHigh2",
  fields: {
    code: { words: ["condensate.pump-lift-too-high"] },
    values: CondensatePumpLiftTooHighValuesShape,
    "text?": "text",
  },
};

export const CondensateGravity2Shape: Shape = {
  type: "CondensateGravity2",
  fields: {
    code: { words: ["condensate.gravity"] },
    values: CondensateGravityValuesShape,
    "text?": "text",
  },
};

export const CondensateFallShort2Shape: Shape = {
  type: "CondensateFallShort2",
  fields: {
    code: { words: ["condensate.fall-short"] },
    values: CondensateFallShortValuesShape,
    "text?": "text",
  },
};

export const CondensateStraight2Shape: Shape = {
  type: "CondensateStraight2",
  fields: {
    code: { words: ["condensate.straight"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateExactInstrument2Shape: Shape = {
  type: "CondensateExactInstrument2",
  fields: {
    code: { words: ["condensate.exact-instrument"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateCodeSlope2Shape: Shape = {
  type: "CondensateCodeSlope2",
  fields: {
    code: { words: ["condensate.code-slope"] },
    values: CondensateCodeSlopeValuesShape,
    "text?": "text",
  },
};

export const CondensateLevelIsEnough2Shape: Shape = {
  type: "CondensateLevelIsEnough2",
  fields: {
    code: { words: ["condensate.level-is-enough"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateMaximumPitchNotChecked2Shape: Shape = {
  type: "CondensateMaximumPitchNotChecked2",
  fields: {
    code: { words: ["condensate.maximum-pitch-not-checked"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensatePumpMargin2Shape: Shape = {
  type: "CondensatePumpMargin2",
  fields: {
    code: { words: ["condensate.pump-margin"] },
    values: CondensatePumpMarginValuesShape,
    "text?": "text",
  },
};

export const CondensatePumpCurveStraight2Shape: Shape = {
  type: "CondensatePumpCurveStraight2",
  fields: {
    code: { words: ["condensate.pump-curve-straight"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateFlatterThanCode2Shape: Shape = {
  type: "CondensateFlatterThanCode2",
  fields: {
    code: { words: ["condensate.flatter-than-code"] },
    values: CondensateFlatterThanCodeValuesShape,
    "text?": "text",
  },
};

export const CondensateDischarge2Shape: Shape = {
  type: "CondensateDischarge2",
  fields: {
    code: { words: ["condensate.discharge"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateSweating2Shape: Shape = {
  type: "CondensateSweating2",
  fields: {
    code: { words: ["condensate.sweating"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateSunlight2Shape: Shape = {
  type: "CondensateSunlight2",
  fields: {
    code: { words: ["condensate.sunlight"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateFreezing2Shape: Shape = {
  type: "CondensateFreezing2",
  fields: {
    code: { words: ["condensate.freezing"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateOverflow2Shape: Shape = {
  type: "CondensateOverflow2",
  fields: {
    code: { words: ["condensate.overflow"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensatePumpFailure2Shape: Shape = {
  type: "CondensatePumpFailure2",
  fields: {
    code: { words: ["condensate.pump-failure"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateDryTrap2Shape: Shape = {
  type: "CondensateDryTrap2",
  fields: {
    code: { words: ["condensate.dry-trap"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateIncreaseSlope2Shape: Shape = {
  type: "CondensateIncreaseSlope2",
  fields: {
    code: { words: ["condensate.increase-slope"] },
    values: CondensateIncreaseSlopeValuesShape,
    "text?": "text",
  },
};

export const CondensateIncreaseFall2Shape: Shape = {
  type: "CondensateIncreaseFall2",
  fields: {
    code: { words: ["condensate.increase-fall"] },
    values: CondensateIncreaseFallValuesShape,
    "text?": "text",
  },
};

export const CondensateAskCode2Shape: Shape = {
  type: "CondensateAskCode2",
  fields: {
    code: { words: ["condensate.ask-code"] },
    values: CondensateAskCodeValuesShape,
    "text?": "text",
  },
};

export const CondensateMeasureBetter2Shape: Shape = {
  type: "CondensateMeasureBetter2",
  fields: {
    code: { words: ["condensate.measure-better"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CondensateRaisePitch2Shape: Shape = {
  type: "CondensateRaisePitch2",
  fields: {
    code: { words: ["condensate.raise-pitch"] },
    values: CondensateRaisePitchValuesShape,
    "text?": "text",
  },
};

export const CondensateLowerPitch2Shape: Shape = {
  type: "CondensateLowerPitch2",
  fields: {
    code: { words: ["condensate.lower-pitch"] },
    values: CondensateLowerPitchValuesShape,
    "text?": "text",
  },
};

export const CondensateOtherPump2Shape: Shape = {
  type: "CondensateOtherPump2",
  fields: {
    code: { words: ["condensate.other-pump"] },
    values: CondensateOtherPumpValuesShape,
    "text?": "text",
  },
};

export const CondensateLowerPoint2Shape: Shape = {
  type: "CondensateLowerPoint2",
  fields: {
    code: { words: ["condensate.lower-point"] },
    values: CondensateLowerPointValuesShape,
    "text?": "text",
  },
};

export const CondensateStatementShape: Shape = {
  type: "CondensateStatement",
  by: "code",
  cases: {
    "condensate.falls-enough": CondensateFallsEnough2Shape,
    "condensate.falls-too-little": CondensateFallsTooLittle2Shape,
    "condensate.rises": CondensateRises2Shape,
    "condensate.codes-differ": CondensateCodesDiffer2Shape,
    "condensate.slope-near": CondensateSlopeNear2Shape,
    "condensate.pitch-enough": CondensatePitchEnough2Shape,
    "condensate.pitch-within": CondensatePitchWithin2Shape,
    "condensate.pitch-away": CondensatePitchAway2Shape,
    "condensate.pitch-too-little": CondensatePitchTooLittle2Shape,
    "condensate.pitch-too-much": CondensatePitchTooMuch2Shape,
    "condensate.pitch-near": CondensatePitchNear2Shape,
    "condensate.pump-keeps-up": CondensatePumpKeepsUp2Shape,
    "condensate.pump-too-slow": CondensatePumpTooSlow2Shape,
    "condensate.pump-lift-too-high": CondensatePumpLiftTooHigh2Shape,
    "condensate.gravity": CondensateGravity2Shape,
    "condensate.fall-short": CondensateFallShort2Shape,
    "condensate.straight": CondensateStraight2Shape,
    "condensate.exact-instrument": CondensateExactInstrument2Shape,
    "condensate.code-slope": CondensateCodeSlope2Shape,
    "condensate.level-is-enough": CondensateLevelIsEnough2Shape,
    "condensate.maximum-pitch-not-checked": CondensateMaximumPitchNotChecked2Shape,
    "condensate.pump-margin": CondensatePumpMargin2Shape,
    "condensate.pump-curve-straight": CondensatePumpCurveStraight2Shape,
    "condensate.flatter-than-code": CondensateFlatterThanCode2Shape,
    "condensate.discharge": CondensateDischarge2Shape,
    "condensate.sweating": CondensateSweating2Shape,
    "condensate.sunlight": CondensateSunlight2Shape,
    "condensate.freezing": CondensateFreezing2Shape,
    "condensate.overflow": CondensateOverflow2Shape,
    "condensate.pump-failure": CondensatePumpFailure2Shape,
    "condensate.dry-trap": CondensateDryTrap2Shape,
    "condensate.increase-slope": CondensateIncreaseSlope2Shape,
    "condensate.increase-fall": CondensateIncreaseFall2Shape,
    "condensate.ask-code": CondensateAskCode2Shape,
    "condensate.measure-better": CondensateMeasureBetter2Shape,
    "condensate.raise-pitch": CondensateRaisePitch2Shape,
    "condensate.lower-pitch": CondensateLowerPitch2Shape,
    "condensate.other-pump": CondensateOtherPump2Shape,
    "condensate.lower-point": CondensateLowerPoint2Shape,
  },
};

export const CondensatePumpAssessmentCautionsItemShape: Shape = {
  type: "CondensatePumpAssessmentCautionsItem",
  by: "code",
  cases: {
    "safety.others-govern": SafetyOthersGovernShape,
    "safety.dry-nitrogen-only": SafetyDryNitrogenOnlyShape,
    "safety.regulator-and-relief": SafetyRegulatorAndReliefShape,
    "safety.raise-in-stages": SafetyRaiseInStagesShape,
    "safety.lowest-rating": SafetyLowestRatingShape,
    "safety.nitrogen-suffocates": SafetyNitrogenSuffocatesShape,
    "safety.open-under-pressure": SafetyOpenUnderPressureShape,
    "safety.refrigerant-contact": SafetyRefrigerantContactShape,
    "safety.flammable-refrigerant": SafetyFlammableRefrigerantShape,
    "safety.toxic-refrigerant": SafetyToxicRefrigerantShape,
    "safety.refrigerant-suffocates": SafetyRefrigerantSuffocatesShape,
    "safety.charge-tight-system": SafetyChargeTightSystemShape,
    "safety.refrigerant-air-mixture": SafetyRefrigerantAirMixtureShape,
    "safety.compressor-in-vacuum": SafetyCompressorInVacuumShape,
    "safety.line-voltage": SafetyLineVoltageShape,
    "safety.meter-category": SafetyMeterCategoryShape,
    "safety.running-unit": SafetyRunningUnitShape,
    "safety.work-at-height": SafetyWorkAtHeightShape,
    "condensate.falls-enough": CondensateFallsEnoughShape,
    "condensate.falls-too-little": CondensateFallsTooLittleShape,
    "condensate.rises": CondensateRisesShape,
    "condensate.codes-differ": CondensateCodesDifferShape,
    "condensate.slope-near": CondensateSlopeNearShape,
    "condensate.pitch-enough": CondensatePitchEnoughShape,
    "condensate.pitch-within": CondensatePitchWithinShape,
    "condensate.pitch-away": CondensatePitchAwayShape,
    "condensate.pitch-too-little": CondensatePitchTooLittleShape,
    "condensate.pitch-too-much": CondensatePitchTooMuchShape,
    "condensate.pitch-near": CondensatePitchNearShape,
    "condensate.pump-keeps-up": CondensatePumpKeepsUpShape,
    "condensate.pump-too-slow": CondensatePumpTooSlowShape,
    "condensate.pump-lift-too-high": CondensatePumpLiftTooHighShape,
    "condensate.gravity": CondensateGravityShape,
    "condensate.fall-short": CondensateFallShortShape,
    "condensate.straight": CondensateStraightShape,
    "condensate.exact-instrument": CondensateExactInstrumentShape,
    "condensate.code-slope": CondensateCodeSlopeShape,
    "condensate.level-is-enough": CondensateLevelIsEnoughShape,
    "condensate.maximum-pitch-not-checked": CondensateMaximumPitchNotCheckedShape,
    "condensate.pump-margin": CondensatePumpMarginShape,
    "condensate.pump-curve-straight": CondensatePumpCurveStraightShape,
    "condensate.flatter-than-code": CondensateFlatterThanCodeShape,
    "condensate.discharge": CondensateDischargeShape,
    "condensate.sweating": CondensateSweatingShape,
    "condensate.sunlight": CondensateSunlightShape,
    "condensate.freezing": CondensateFreezingShape,
    "condensate.overflow": CondensateOverflowShape,
    "condensate.pump-failure": CondensatePumpFailureShape,
    "condensate.dry-trap": CondensateDryTrapShape,
    "condensate.increase-slope": CondensateIncreaseSlopeShape,
    "condensate.increase-fall": CondensateIncreaseFallShape,
    "condensate.ask-code": CondensateAskCodeShape,
    "condensate.measure-better": CondensateMeasureBetterShape,
    "condensate.raise-pitch": CondensateRaisePitchShape,
    "condensate.lower-pitch": CondensateLowerPitchShape,
    "condensate.other-pump": CondensateOtherPumpShape,
    "condensate.lower-point": CondensateLowerPointShape,
  },
};

export const CondensatePumpAssessmentShape: Shape = {
  type: "CondensatePumpAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["lift-too-high", "too-slow"] },
    reasons: { list: CondensateStatementShape },
    assumptions: { list: CondensateStatementShape },
    cautions: { list: CondensatePumpAssessmentCautionsItemShape },
    "actions?": { list: CondensateStatementShape },
    sources: { list: CitationShape },
    flowAtLift: "volumeFlow",
    requiredFlow: "volumeFlow",
    "dutyCycle?": "ratio",
    "startInterval?": "duration",
  },
  says: "The verdict on a condensate pump.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    flowAtLift: "Flow at the lift; 0 beyond the curve.",
    requiredFlow: "Flow that is needed: margin times condensate.",
    dutyCycle: "Share of the time that the pump runs; only where it keeps up.",
    startInterval:
      "Time from start to start; only where a reservoir was given and the pump keeps up.",
  },
};

export const SlopeReadingShape: Shape = {
  type: "SlopeReading",
  either: [SlopeOfInput1Shape, SlopeOfInput2Shape, SlopeOfInput3Shape, SlopeOfInput4Shape],
};

export const DrainSlopeInputShape: Shape = {
  type: "DrainSlopeInput",
  fields: {
    reading: SlopeReadingShape,
    "required?": "ratio",
    "run?": "length",
    "route?": DrainRouteShape,
    "confidence?": "number",
  },
  says: "A drain and its measured slope.",
  about: {
    reading: "The measured slope, positive where it falls in the direction of flow.",
    required:
      "The slope asked for, 0.5 % to 100 %. When left out: 1/8 in per foot passes, less than 1 % fails.",
    run: "Horizontal length of the drain; with it the verdict says how much fall is missing.",
    route: "Where it runs, for the cautions.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const DrainSlopeAssessmentShape: Shape = {
  type: "DrainSlopeAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["rises", "too-flat"] },
    reasons: { list: CondensateStatementShape },
    assumptions: { list: CondensateStatementShape },
    cautions: { list: CondensatePumpAssessmentCautionsItemShape },
    "actions?": { list: CondensateStatementShape },
    sources: { list: CitationShape },
    slope: EstimateOfRatioShape,
    required: "ratio",
    "missingFall?": "length",
  },
  says: "The verdict on the slope of a drain.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    slope: "The slope found; positive falls.",
    required: "The slope asked for.",
    missingFall: "How much more the drain has to fall over the run; only where a run was given.",
  },
};

export const IndoorUnitPitchInputShape: Shape = {
  type: "IndoorUnitPitchInput",
  fields: {
    reading: SlopeReadingShape,
    "minimum?": "ratio",
    "maximum?": "ratio",
    "confidence?": "number",
  },
  says: "An indoor unit and its measured pitch.",
  about: {
    reading:
      "The measured slope along the case: positive falls toward the drain; start is the far side.",
    minimum: "Least pitch toward the drain in the manual; 0 (level) when left out.",
    maximum: "Largest pitch in the manual; none when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const IndoorUnitPitchAssessmentShape: Shape = {
  type: "IndoorUnitPitchAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["away-from-drain", "too-little", "too-much"] },
    reasons: { list: CondensateStatementShape },
    assumptions: { list: CondensateStatementShape },
    cautions: { list: CondensatePumpAssessmentCautionsItemShape },
    "actions?": { list: CondensateStatementShape },
    sources: { list: CitationShape },
    pitch: EstimateOfRatioShape,
  },
  says: "The verdict on the pitch of an indoor unit.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    pitch: "The pitch found; positive falls toward the drain.",
  },
};

export const CoilAirShape: Shape = {
  type: "CoilAir",
  fields: {
    entering: AirStateShape,
    leaving: AirStateShape,
    airFlow: "volumeFlow",
    atmosphere: "absolutePressure",
  },
  says: "Air through a cooling coil.",
  about: {
    entering: "Air that enters the coil.",
    leaving: "Air that leaves the coil, not warmer and not wetter.",
    airFlow: "Volume flow of the air as it enters, above 0.",
    atmosphere: "Atmospheric pressure on site, 30 to 120 kPa.",
  },
};

export const CondensateRateShape: Shape = {
  type: "CondensateRate",
  fields: {
    massFlow: "massFlow",
    volumeFlow: "volumeFlow",
    dryAirFlow: "massFlow",
    enteringHumidityRatio: "ratio",
    leavingHumidityRatio: "ratio",
    totalCooling: "power",
    sensibleHeatRatio: "ratio",
  },
  says: "What a cooling coil takes from the air.",
  about: {
    massFlow: "By mass.",
    volumeFlow: "By volume, at 20 °C.",
    dryAirFlow: "Dry air through the coil.",
    enteringHumidityRatio: "Water per dry air before the coil.",
    leavingHumidityRatio: "Water per dry air behind the coil.",
    totalCooling: "Heat taken from the air, after the heat that leaves with the condensate.",
    sensibleHeatRatio: "Share of it that only cools.",
  },
};

export const CondensateFromLoadInputShape: Shape = {
  type: "CondensateFromLoadInput",
  fields: { totalCooling: "power", sensibleHeatRatio: "ratio" },
  about: {
    totalCooling: "Total cooling, sensible and latent.",
    sensibleHeatRatio: "Share of it that only cools.",
  },
};

export const CondensateFlowShape: Shape = {
  type: "CondensateFlow",
  fields: { massFlow: "massFlow", volumeFlow: "volumeFlow" },
  says: "Water per time.",
  about: { massFlow: "By mass.", volumeFlow: "By volume, at 20 °C." },
};

export const CondensateRuleOfThumbResultShape: Shape = {
  type: "CondensateRuleOfThumbResult",
  fields: { low: "volumeFlow", high: "volumeFlow" },
  about: { low: "0.3 gal/h per ton.", high: "0.8 gal/h per ton." },
};

export const CondensateTrapInputShape: Shape = {
  type: "CondensateTrapInput",
  fields: { staticPressure: "pressureDifference", "margin?": "length" },
  about: {
    staticPressure: "Static pressure at the pan less that of the room.",
    margin:
      "Seal beyond the static pressure of a blow-through coil, 0 or more; 1 in when left out.",
  },
};

export const CondensateTrapShape: Shape = {
  type: "CondensateTrap",
  fields: {
    kind: { words: ["none", "draw-through", "blow-through"] },
    outletDrop: "length",
    seal: "length",
    height: "length",
    cautions: { list: CondensateCautionShape },
    citations: { list: CitationShape },
  },
  says: "The trap that a pan needs.",
  about: {
    kind: "Whether the fan sucks at the pan, blows into it, or neither.",
    outletDrop:
      "From the pan's outlet down to the trap's outlet, at least; 0 where the manual gives no figure.",
    seal: "Water in the trap below its outlet, at least.",
    height:
      "From the pan's outlet down to the bottom of the trap, about, without the pipe's own diameter.",
    cautions: "What to heed.",
    citations: "Where it stands.",
  },
};

export const DrainSizeInputShape: Shape = {
  type: "DrainSizeInput",
  fields: { capacity: "power", "outletDiameter?": "length" },
  about: {
    capacity: "Cooling capacity of all units on the drain.",
    outletDiameter: "Diameter of the pan's outlet, nominal.",
  },
};

export const DrainSizeShape: Shape = {
  type: "DrainSize",
  fields: {
    nominal: "length",
    decidedBy: { words: ["capacity", "outlet"] },
    cautions: { list: CondensateCautionShape },
    citation: CitationShape,
  },
  says: "The size of a condensate drain.",
  about: {
    nominal: "Nominal size, in.",
    decidedBy: "Whether the capacity or the pan's outlet decides.",
    cautions: "What overrides it.",
    citation: "Where it stands.",
  },
};

export const DrainPointShape: Shape = {
  type: "DrainPoint",
  fields: { distance: "length", height: "length" },
  says: "A point that a drain goes through.",
  about: {
    distance:
      "Horizontal distance from the outlet along the drain, 0 or more, not less than the point before.",
    height: "Height of the pipe above the same datum as the outlet.",
  },
};

export const DrainPlanInputShape: Shape = {
  type: "DrainPlanInput",
  fields: {
    outletHeight: "length",
    points: { list: DrainPointShape },
    "slope?": "ratio",
    "route?": DrainRouteShape,
  },
  says: "A drain to be run.",
  about: {
    outletHeight: "Height of the pan outlet, or of the trap's outlet where there is a trap.",
    points:
      "The points that the drain has to go through, in the direction of flow; the last is the discharge.",
    slope: "Slope asked for, 0.5 % to 100 %; 1/8 in per foot when left out.",
    route: "Where it runs, for the cautions.",
  },
};

export const DrainPlanShape: Shape = {
  type: "DrainPlan",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["needs-pump"] },
    reasons: { list: CondensateStatementShape },
    assumptions: { list: CondensateStatementShape },
    cautions: { list: CondensatePumpAssessmentCautionsItemShape },
    "actions?": { list: CondensateStatementShape },
    sources: { list: CitationShape },
    method: { words: ["gravity", "pump"] },
    availableFall: "length",
    neededFall: "length",
    shortfall: "length",
    "worstPoint?": "number",
    lift: "length",
  },
  says: "How the water gets away.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    method: "By its own weight or by a pump.",
    availableFall: "From the outlet down to the discharge; negative where it lies higher.",
    neededFall: "Slope times the whole run.",
    shortfall: "How much fall the worst stretch lacks; 0 for gravity.",
    worstPoint: "Position in points of the end of the worst stretch; only where a pump is needed.",
    lift: "How high a pump has to lift: from the outlet to the highest point, 0 or more.",
  },
};
