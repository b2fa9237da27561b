// Which shapes have the types of condensate?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { EstimateOfRatioShape } from "./assessment.shapes.ts";
import { CitationShape } from "./refrigerants.shapes.ts";

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

export const CondensateCodesDifferValuesShape: Shape = {
  type: "CondensateCodesDifferValues",
  fields: { slope: "ratio", uncertainty: "ratio", required: "ratio", least: "ratio" },
};

export const CondensatePitchEnoughValuesShape: Shape = {
  type: "CondensatePitchEnoughValues",
  fields: { pitch: "ratio", uncertainty: "ratio", minimum: "ratio" },
};

export const CondensatePitchWithinValuesShape: Shape = {
  type: "CondensatePitchWithinValues",
  fields: { pitch: "ratio", uncertainty: "ratio", minimum: "ratio", maximum: "ratio" },
};

export const CondensatePitchAwayValuesShape: Shape = {
  type: "CondensatePitchAwayValues",
  fields: { pitch: "ratio", uncertainty: "ratio", minimum: "ratio" },
};

export const CondensatePitchTooLittleValuesShape: Shape = {
  type: "CondensatePitchTooLittleValues",
  fields: { pitch: "ratio", uncertainty: "ratio", minimum: "ratio" },
};

export const CondensatePitchTooMuchValuesShape: Shape = {
  type: "CondensatePitchTooMuchValues",
  fields: { pitch: "ratio", uncertainty: "ratio", maximum: "ratio" },
};

export const CondensatePitchNearValuesShape: Shape = {
  type: "CondensatePitchNearValues",
  fields: { pitch: "ratio", uncertainty: "ratio" },
};

export const CondensatePumpKeepsUpValuesShape: Shape = {
  type: "CondensatePumpKeepsUpValues",
  fields: { lift: "length", flow: "volumeFlow", required: "volumeFlow" },
};

export const CondensatePumpLiftTooHighValuesShape: Shape = {
  type: "CondensatePumpLiftTooHighValues",
  fields: { lift: "length", highest: "length" },
};

export const CondensateGravityValuesShape: Shape = {
  type: "CondensateGravityValues",
  fields: { available: "length", needed: "length" },
};

export const CondensateFallShortValuesShape: Shape = {
  type: "CondensateFallShortValues",
  fields: { shortfall: "length", point: "number" },
};

export const CondensateCodeSlopeValuesShape: Shape = {
  type: "CondensateCodeSlopeValues",
  fields: { slope: "ratio" },
};

export const CondensatePumpMarginValuesShape: Shape = {
  type: "CondensatePumpMarginValues",
  fields: { margin: "number" },
};

export const CondensateSteepValuesShape: Shape = {
  type: "CondensateSteepValues",
  fields: { slope: "ratio", usual: "ratio" },
};

export const CondensateFlatterThanCodeValuesShape: Shape = {
  type: "CondensateFlatterThanCodeValues",
  fields: { least: "ratio" },
};

export const CondensateIncreaseSlopeValuesShape: Shape = {
  type: "CondensateIncreaseSlopeValues",
  fields: { required: "ratio" },
};

export const CondensateIncreaseFallValuesShape: Shape = {
  type: "CondensateIncreaseFallValues",
  fields: { fall: "length", run: "length" },
};

export const CondensateAskCodeValuesShape: Shape = {
  type: "CondensateAskCodeValues",
  fields: { required: "ratio" },
};

export const CondensateRaisePitchValuesShape: Shape = {
  type: "CondensateRaisePitchValues",
  fields: { minimum: "ratio" },
};

export const CondensateLowerPitchValuesShape: Shape = {
  type: "CondensateLowerPitchValues",
  fields: { maximum: "ratio" },
};

export const CondensateOtherPumpValuesShape: Shape = {
  type: "CondensateOtherPumpValues",
  fields: { lift: "length", required: "volumeFlow" },
};

export const CondensateLowerPointValuesShape: Shape = {
  type: "CondensateLowerPointValues",
  fields: { shortfall: "length", point: "number", lift: "length" },
};

export const CondensateCautionShape: Shape = {
  type: "CondensateCaution",
  statements: {
    "safety.others-govern": { fields: {} },
    "safety.dry-nitrogen-only": { fields: {} },
    "safety.regulator-and-relief": { fields: {} },
    "safety.raise-in-stages": { fields: {} },
    "safety.lowest-rating": { fields: {} },
    "safety.nitrogen-suffocates": { fields: {} },
    "safety.open-under-pressure": { fields: {} },
    "safety.refrigerant-contact": { fields: {} },
    "safety.flammable-refrigerant": { fields: {} },
    "safety.toxic-refrigerant": { fields: {} },
    "safety.refrigerant-suffocates": { fields: {} },
    "safety.charge-tight-system": { fields: {} },
    "safety.refrigerant-air-mixture": { fields: {} },
    "safety.compressor-in-vacuum": { fields: {} },
    "safety.line-voltage": { fields: {} },
    "safety.meter-category": { fields: {} },
    "safety.running-unit": { fields: {} },
    "safety.work-at-height": { fields: {} },
    "condensate.falls-enough": CondensateFallsEnoughValuesShape,
    "condensate.falls-too-little": CondensateFallsEnoughValuesShape,
    "condensate.rises": CondensateFallsEnoughValuesShape,
    "condensate.codes-differ": CondensateCodesDifferValuesShape,
    "condensate.slope-near": CondensateFallsEnoughValuesShape,
    "condensate.pitch-enough": CondensatePitchEnoughValuesShape,
    "condensate.pitch-within": CondensatePitchWithinValuesShape,
    "condensate.pitch-away": CondensatePitchAwayValuesShape,
    "condensate.pitch-too-little": CondensatePitchTooLittleValuesShape,
    "condensate.pitch-too-much": CondensatePitchTooMuchValuesShape,
    "condensate.pitch-near": CondensatePitchNearValuesShape,
    "condensate.pump-keeps-up": CondensatePumpKeepsUpValuesShape,
    "condensate.pump-too-slow": CondensatePumpKeepsUpValuesShape,
    "condensate.pump-lift-too-high": CondensatePumpLiftTooHighValuesShape,
    "condensate.gravity": CondensateGravityValuesShape,
    "condensate.fall-short": CondensateFallShortValuesShape,
    "condensate.straight": { fields: {} },
    "condensate.exact-instrument": { fields: {} },
    "condensate.code-slope": CondensateCodeSlopeValuesShape,
    "condensate.level-is-enough": { fields: {} },
    "condensate.maximum-pitch-not-checked": { fields: {} },
    "condensate.pump-margin": CondensatePumpMarginValuesShape,
    "condensate.pump-curve-straight": { fields: {} },
    "condensate.steep": CondensateSteepValuesShape,
    "condensate.flatter-than-code": CondensateFlatterThanCodeValuesShape,
    "condensate.discharge": { fields: {} },
    "condensate.sweating": { fields: {} },
    "condensate.sunlight": { fields: {} },
    "condensate.freezing": { fields: {} },
    "condensate.overflow": { fields: {} },
    "condensate.pump-failure": { fields: {} },
    "condensate.dry-trap": { fields: {} },
    "condensate.increase-slope": CondensateIncreaseSlopeValuesShape,
    "condensate.increase-fall": CondensateIncreaseFallValuesShape,
    "condensate.ask-code": CondensateAskCodeValuesShape,
    "condensate.measure-better": { fields: {} },
    "condensate.raise-pitch": CondensateRaisePitchValuesShape,
    "condensate.lower-pitch": CondensateLowerPitchValuesShape,
    "condensate.other-pump": CondensateOtherPumpValuesShape,
    "condensate.lower-point": CondensateLowerPointValuesShape,
  },
  with: { "kind?": { words: ["finding", "danger", "governing"] } },
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

export const CondensateStatementShape: Shape = {
  type: "CondensateStatement",
  statements: {
    "condensate.falls-enough": CondensateFallsEnoughValuesShape,
    "condensate.falls-too-little": CondensateFallsEnoughValuesShape,
    "condensate.rises": CondensateFallsEnoughValuesShape,
    "condensate.codes-differ": CondensateCodesDifferValuesShape,
    "condensate.slope-near": CondensateFallsEnoughValuesShape,
    "condensate.pitch-enough": CondensatePitchEnoughValuesShape,
    "condensate.pitch-within": CondensatePitchWithinValuesShape,
    "condensate.pitch-away": CondensatePitchAwayValuesShape,
    "condensate.pitch-too-little": CondensatePitchTooLittleValuesShape,
    "condensate.pitch-too-much": CondensatePitchTooMuchValuesShape,
    "condensate.pitch-near": CondensatePitchNearValuesShape,
    "condensate.pump-keeps-up": CondensatePumpKeepsUpValuesShape,
    "condensate.pump-too-slow": CondensatePumpKeepsUpValuesShape,
    "condensate.pump-lift-too-high": CondensatePumpLiftTooHighValuesShape,
    "condensate.gravity": CondensateGravityValuesShape,
    "condensate.fall-short": CondensateFallShortValuesShape,
    "condensate.straight": { fields: {} },
    "condensate.exact-instrument": { fields: {} },
    "condensate.code-slope": CondensateCodeSlopeValuesShape,
    "condensate.level-is-enough": { fields: {} },
    "condensate.maximum-pitch-not-checked": { fields: {} },
    "condensate.pump-margin": CondensatePumpMarginValuesShape,
    "condensate.pump-curve-straight": { fields: {} },
    "condensate.steep": CondensateSteepValuesShape,
    "condensate.flatter-than-code": CondensateFlatterThanCodeValuesShape,
    "condensate.discharge": { fields: {} },
    "condensate.sweating": { fields: {} },
    "condensate.sunlight": { fields: {} },
    "condensate.freezing": { fields: {} },
    "condensate.overflow": { fields: {} },
    "condensate.pump-failure": { fields: {} },
    "condensate.dry-trap": { fields: {} },
    "condensate.increase-slope": CondensateIncreaseSlopeValuesShape,
    "condensate.increase-fall": CondensateIncreaseFallValuesShape,
    "condensate.ask-code": CondensateAskCodeValuesShape,
    "condensate.measure-better": { fields: {} },
    "condensate.raise-pitch": CondensateRaisePitchValuesShape,
    "condensate.lower-pitch": CondensateLowerPitchValuesShape,
    "condensate.other-pump": CondensateOtherPumpValuesShape,
    "condensate.lower-point": CondensateLowerPointValuesShape,
  },
};

export const CondensatePumpAssessmentCautionsItemShape: Shape = {
  type: "CondensatePumpAssessmentCautionsItem",
  statements: {
    "safety.others-govern": { fields: {} },
    "safety.dry-nitrogen-only": { fields: {} },
    "safety.regulator-and-relief": { fields: {} },
    "safety.raise-in-stages": { fields: {} },
    "safety.lowest-rating": { fields: {} },
    "safety.nitrogen-suffocates": { fields: {} },
    "safety.open-under-pressure": { fields: {} },
    "safety.refrigerant-contact": { fields: {} },
    "safety.flammable-refrigerant": { fields: {} },
    "safety.toxic-refrigerant": { fields: {} },
    "safety.refrigerant-suffocates": { fields: {} },
    "safety.charge-tight-system": { fields: {} },
    "safety.refrigerant-air-mixture": { fields: {} },
    "safety.compressor-in-vacuum": { fields: {} },
    "safety.line-voltage": { fields: {} },
    "safety.meter-category": { fields: {} },
    "safety.running-unit": { fields: {} },
    "safety.work-at-height": { fields: {} },
    "condensate.falls-enough": CondensateFallsEnoughValuesShape,
    "condensate.falls-too-little": CondensateFallsEnoughValuesShape,
    "condensate.rises": CondensateFallsEnoughValuesShape,
    "condensate.codes-differ": CondensateCodesDifferValuesShape,
    "condensate.slope-near": CondensateFallsEnoughValuesShape,
    "condensate.pitch-enough": CondensatePitchEnoughValuesShape,
    "condensate.pitch-within": CondensatePitchWithinValuesShape,
    "condensate.pitch-away": CondensatePitchAwayValuesShape,
    "condensate.pitch-too-little": CondensatePitchTooLittleValuesShape,
    "condensate.pitch-too-much": CondensatePitchTooMuchValuesShape,
    "condensate.pitch-near": CondensatePitchNearValuesShape,
    "condensate.pump-keeps-up": CondensatePumpKeepsUpValuesShape,
    "condensate.pump-too-slow": CondensatePumpKeepsUpValuesShape,
    "condensate.pump-lift-too-high": CondensatePumpLiftTooHighValuesShape,
    "condensate.gravity": CondensateGravityValuesShape,
    "condensate.fall-short": CondensateFallShortValuesShape,
    "condensate.straight": { fields: {} },
    "condensate.exact-instrument": { fields: {} },
    "condensate.code-slope": CondensateCodeSlopeValuesShape,
    "condensate.level-is-enough": { fields: {} },
    "condensate.maximum-pitch-not-checked": { fields: {} },
    "condensate.pump-margin": CondensatePumpMarginValuesShape,
    "condensate.pump-curve-straight": { fields: {} },
    "condensate.steep": CondensateSteepValuesShape,
    "condensate.flatter-than-code": CondensateFlatterThanCodeValuesShape,
    "condensate.discharge": { fields: {} },
    "condensate.sweating": { fields: {} },
    "condensate.sunlight": { fields: {} },
    "condensate.freezing": { fields: {} },
    "condensate.overflow": { fields: {} },
    "condensate.pump-failure": { fields: {} },
    "condensate.dry-trap": { fields: {} },
    "condensate.increase-slope": CondensateIncreaseSlopeValuesShape,
    "condensate.increase-fall": CondensateIncreaseFallValuesShape,
    "condensate.ask-code": CondensateAskCodeValuesShape,
    "condensate.measure-better": { fields: {} },
    "condensate.raise-pitch": CondensateRaisePitchValuesShape,
    "condensate.lower-pitch": CondensateLowerPitchValuesShape,
    "condensate.other-pump": CondensateOtherPumpValuesShape,
    "condensate.lower-point": CondensateLowerPointValuesShape,
  },
  with: { "kind?": { words: ["finding", "danger", "governing"] } },
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
    isDry: "flag",
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
    isDry:
      "Whether the coil is dry: the leaving air is as wet as the entering, as far as hygrometers tell.",
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
