// Which shapes have the types of vacuum-decay?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byPolicy } from "../named.ts";
import {
  EstimateOfAbsolutePressureShape,
  EstimateOfPressureRateShape,
  EstimateOfThroughputShape,
  VacuumDecayAssessmentCautionsItem19Shape,
  VacuumDecayAssessmentReasonsItemShape,
} from "./assessment.shapes.ts";
import { CitationShape } from "./refrigerants.shapes.ts";

export const GaugeRangeShape: Shape = {
  type: "GaugeRange",
  fields: { upTo: "absolutePressure", resolution: "pressureDifference" },
  says: "One range of a gauge.",
  about: {
    upTo: "Largest reading of the range.",
    resolution: "Smallest step of the display in it.",
  },
};

export const VacuumGaugeShape: Shape = {
  type: "VacuumGauge",
  fields: {
    "resolution?": { either: ["pressureDifference", { list: GaugeRangeShape }] },
    "accuracy?": "ratio",
    "range?": "absolutePressure",
  },
  says: "A vacuum gauge as its data sheet describes it.",
  about: {
    resolution:
      "Smallest step of the display; one per range when it changes with the reading. Found from the readings when left out; a display that stands still is believed only with it.",
    accuracy: "Stated limits of error as a part of the reading; ±10 % is assumed when left out.",
    range: "Largest reading; readings at or above it are over range.",
  },
};

export const CheckpointShape: Shape = {
  type: "Checkpoint",
  fields: {
    at: "duration",
    "limit?": "absolutePressure",
    "rise?": "pressureDifference",
    "failAbove?": "absolutePressure",
  },
  says: "What has to hold at a time after isolation: a ceiling, or a rise above the pressure at isolation.",
  about: {
    at: "Time after isolation.",
    limit: "Largest pressure that is accepted then.",
    rise: "Largest rise since isolation that is accepted then; zero means none that the gauge could show.",
    failAbove:
      "From here on the source calls it wet or leaking; between the limit and here it is doubtful.",
  },
};

export const AcceptancePolicyShape: Shape = {
  type: "AcceptancePolicy",
  fields: {
    name: "text",
    target: "absolutePressure",
    checkpoints: { list: CheckpointShape },
    earlyPass: "flag",
    standing: { words: ["published", "memory", "practice"] },
    source: CitationShape,
  },
  says: "An acceptance policy: evacuate to the target, isolate, watch for the hold.",
  about: {
    name: "Name in kebab case.",
    target: "Pressure to reach before isolation.",
    checkpoints: "What has to hold, in order of time; the last one ends the hold.",
    earlyPass: "Whether a pass may be given before the hold is over, once the readings prove it.",
    standing: "How sure the figures are.",
    source: "Where it comes from.",
  },
};

export const DecayReadingShape: Shape = {
  type: "DecayReading",
  fields: { elapsed: "duration", pressure: "absolutePressure" },
  says: "One reading of the gauge.",
  about: {
    elapsed: "Time since the system was isolated from the pump.",
    pressure: "What the gauge shows.",
  },
};

export const VacuumDecayInputShape: Shape = {
  type: "VacuumDecayInput",
  fields: {
    ambient: "temperature",
    "coldest?": "temperature",
    "volume?": "volume",
    "gauge?": VacuumGaugeShape,
    policy: { either: [byPolicy, AcceptancePolicyShape] },
    "leakLimit?": { either: ["throughput", "pressureRate"] },
    "confidence?": "number",
    readings: { list: DecayReadingShape },
  },
  says: "Options of assessVacuumDecay.",
  about: {
    ambient:
      "temperature of the warmest part of the system, −40 to 60 °C: it limits what water can do.",
    coldest: "temperature of the coldest part, where water would sit; the ambient when left out.",
    volume:
      "Inner volume of the isolated part, 1 cm³ to 1 m³: turns the rise into a leak rate and a mass of water.",
    gauge: "The gauge.",
    policy: "What is accepted, such as acceptancePolicies.guideSpec15182.",
    leakLimit:
      "Largest leak that is accepted: throughput (needs the volume) or pressureRate. What the policy's rise allows when left out. A leak that only this limit lets pass carries the caution leak-within-limit.",
    confidence: "How sure a pass or a fail has to be, 0.8 to 0.999; 0.95 one-sided when left out.",
    readings: "The log, at least one reading; rows out of order are sorted.",
  },
};

export const DecayCauseShape: Shape = {
  type: "DecayCause",
  words: [
    "dry-and-tight",
    "leak",
    "moisture",
    "leak-and-moisture",
    "moisture-leak-not-excluded",
    "outgassing",
    "undecided",
  ],
};

export const VacuumDecayAssessmentCautionsItem1ValuesShape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem1Values",
  fields: {},
};

export const VacuumDecayAssessmentCautionsItem1Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem1",
  fields: {
    code: { words: ["safety.others-govern"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem2Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem2",
  fields: {
    code: { words: ["safety.dry-nitrogen-only"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem3Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem3",
  fields: {
    code: { words: ["safety.regulator-and-relief"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem4Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem4",
  fields: {
    code: { words: ["safety.raise-in-stages"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem5Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem5",
  fields: {
    code: { words: ["safety.lowest-rating"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem6Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem6",
  fields: {
    code: { words: ["safety.nitrogen-suffocates"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem7Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem7",
  fields: {
    code: { words: ["safety.open-under-pressure"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem8Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem8",
  fields: {
    code: { words: ["safety.refrigerant-contact"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem9Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem9",
  fields: {
    code: { words: ["safety.flammable-refrigerant"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem10Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem10",
  fields: {
    code: { words: ["safety.toxic-refrigerant"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem11Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem11",
  fields: {
    code: { words: ["safety.refrigerant-suffocates"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem12Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem12",
  fields: {
    code: { words: ["safety.charge-tight-system"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem13Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem13",
  fields: {
    code: { words: ["safety.refrigerant-air-mixture"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem14Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem14",
  fields: {
    code: { words: ["safety.compressor-in-vacuum"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem15Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem15",
  fields: {
    code: { words: ["safety.line-voltage"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem16Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem16",
  fields: {
    code: { words: ["safety.meter-category"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem17Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem17",
  fields: {
    code: { words: ["safety.running-unit"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItem18Shape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem18",
  fields: {
    code: { words: ["safety.work-at-height"] },
    values: VacuumDecayAssessmentCautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const VacuumDecayAssessmentCautionsItemShape: Shape = {
  type: "VacuumDecayAssessmentCautionsItem",
  either: [
    VacuumDecayAssessmentCautionsItem1Shape,
    VacuumDecayAssessmentCautionsItem2Shape,
    VacuumDecayAssessmentCautionsItem3Shape,
    VacuumDecayAssessmentCautionsItem4Shape,
    VacuumDecayAssessmentCautionsItem5Shape,
    VacuumDecayAssessmentCautionsItem6Shape,
    VacuumDecayAssessmentCautionsItem7Shape,
    VacuumDecayAssessmentCautionsItem8Shape,
    VacuumDecayAssessmentCautionsItem9Shape,
    VacuumDecayAssessmentCautionsItem10Shape,
    VacuumDecayAssessmentCautionsItem11Shape,
    VacuumDecayAssessmentCautionsItem12Shape,
    VacuumDecayAssessmentCautionsItem13Shape,
    VacuumDecayAssessmentCautionsItem14Shape,
    VacuumDecayAssessmentCautionsItem15Shape,
    VacuumDecayAssessmentCautionsItem16Shape,
    VacuumDecayAssessmentCautionsItem17Shape,
    VacuumDecayAssessmentCautionsItem18Shape,
    VacuumDecayAssessmentCautionsItem19Shape,
  ],
};

export const PlateauShape: Shape = {
  type: "Plateau",
  fields: {
    pressure: EstimateOfAbsolutePressureShape,
    saturationTemperature: "temperature",
    "waterMass?": "mass",
    aboveSaturation: "flag",
  },
  says: "Where water levels off, and what that says.",
  about: {
    pressure: "Pressure at which the rise ends, without the leak.",
    saturationTemperature:
      "Water or ice of this temperature is in balance with the plateau: the coldest wet spot is no colder.",
    waterMass:
      "Water that has become vapour by then, mass; missing without the volume. More may be left as liquid, ice or in oil.",
    aboveSaturation:
      "Whether the plateau lies above the saturation of water at the coldest part, which contradicts water alone.",
  },
};

export const VacuumDecayAssessmentSharesShape: Shape = {
  type: "VacuumDecayAssessmentShares",
  fields: {
    steady: "number",
    leak: "number",
    moisture: "number",
    outgassing: "number",
    both: "number",
  },
  about: {
    steady: "Nothing material.",
    leak: "A leak alone.",
    moisture: "A rise that levels off, alone.",
    outgassing: "A rise that slows down without levelling off, alone.",
    both: "A leak together with one of the two.",
  },
};

export const DecayFitCoefficientsShape: Shape = {
  type: "DecayFitCoefficients",
  fields: {
    fast: "number",
    shape: "number",
    tau: "number",
    line: "flag",
    constant: "number",
    fast1: "number",
    fast2: "number",
    amplitude: "number",
    slope: "number",
    slopeU: "number",
    amplitudeU: "number",
    ahead: "number",
    aheadU: "number",
    aicc: "number",
    origin: "number",
  },
  about: {
    fast: "Index of the first of two fast exponentials, −1 for none.",
    shape: "Index into slowShapes, −1 for none.",
    tau: "Slow time constant in s.",
    constant: "c, fast 1, fast 2, A; 0 where the model has none.",
    slope: "Slope of the line in Pa/s and its standard uncertainty.",
    ahead: "Value and standard uncertainty at the time asked for.",
  },
};

export const DecayFitShape: Shape = {
  type: "DecayFit",
  fields: {
    "shape?": {
      words: [
        "saturating",
        "spread",
        "hyperbolic",
        "halfOrder",
        "logarithmic",
        "mixed",
        "squareRoot",
      ],
    },
    "timeConstant?": "duration",
    line: "flag",
    equalisation: "flag",
    aicc: "number",
    from: "duration",
    to: "duration",
    coefficients: DecayFitCoefficientsShape,
  },
  says: "A fitted model as plain data: constant + equalisation + line + slow shape.",
  about: {
    shape: "Slow shape; missing for a constant or a line.",
    timeConstant: "Time constant of the slow shape.",
    line: "Whether it has a line: a leak.",
    equalisation: "Whether it has an equalisation right after isolation.",
    aicc: "Akaike's criterion with small-sample correction; only differences within one log mean anything.",
    from: "Start of the stretch that was fitted.",
    to: "End of the stretch that was fitted.",
    coefficients: "Coefficients in SI units for decayCurve; not for reading.",
  },
};

export const ExclusionReasonShape: Shape = {
  type: "ExclusionReason",
  words: [
    "zero",
    "over-range",
    "before-isolation",
    "repeated-time",
    "out-of-order",
    "spike",
    "unconfirmed-jump",
    "other-side-of-step",
  ],
};

export const ExclusionShape: Shape = {
  type: "Exclusion",
  fields: {
    elapsed: "duration",
    pressure: "absolutePressure",
    row: "number",
    reason: ExclusionReasonShape,
  },
  says: "A reading that is not part of the evidence, and why.",
  about: {
    elapsed: "Time since the system was isolated from the pump.",
    pressure: "What the gauge shows.",
    row: "Position in the caller's log, from 0.",
    reason: "Why.",
  },
};

export const VacuumDecayAssessmentExcludedCountShape: Shape = {
  type: "VacuumDecayAssessmentExcludedCount",
  fields: {
    "zero?": "number",
    "over-range?": "number",
    "before-isolation?": "number",
    "repeated-time?": "number",
    "out-of-order?": "number",
    "spike?": "number",
    "unconfirmed-jump?": "number",
    "other-side-of-step?": "number",
  },
};

export const DecayStepShape: Shape = {
  type: "DecayStep",
  fields: { elapsed: "duration", change: "pressureDifference" },
  says: "A sudden change that no leak makes: a valve was opened or a hose moved.",
  about: { elapsed: "When.", change: "How far the pressure left its course." },
};

export const VacuumDecayAssessmentShape: Shape = {
  type: "VacuumDecayAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    cause: DecayCauseShape,
    reasons: { list: VacuumDecayAssessmentReasonsItemShape },
    assumptions: { list: VacuumDecayAssessmentReasonsItemShape },
    cautions: { list: VacuumDecayAssessmentCautionsItemShape },
    "actions?": { list: VacuumDecayAssessmentReasonsItemShape },
    sources: { list: CitationShape },
    evidence: "duration",
    atHoldEnd: EstimateOfAbsolutePressureShape,
    leak: EstimateOfPressureRateShape,
    leakInterval: { items: ["pressureRate", "pressureRate"] },
    "leakThroughput?": EstimateOfThroughputShape,
    smallestLeak: "pressureRate",
    "smallestLeakThroughput?": "throughput",
    "plateau?": PlateauShape,
    shares: VacuumDecayAssessmentSharesShape,
    "fit?": DecayFitShape,
    excluded: { list: ExclusionShape },
    excludedCount: VacuumDecayAssessmentExcludedCountShape,
    steps: { list: DecayStepShape },
  },
  says: "The verdict on a vacuum decay.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind the decay.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    evidence: "Length of the evidence: since isolation, or since the last step.",
    atHoldEnd:
      "Pressure at the end of the policy's hold: measured when it is over, forecast before. With the gauge's accuracy.",
    leak: "Rate of the steady rise, the leak, over all models.",
    leakInterval: "95 % two-sided interval of the leak; not symmetric when moisture could hide it.",
    leakThroughput:
      "The leak as a throughput at the ambient temperature; missing without the volume.",
    smallestLeak:
      "The smallest leak that these readings could have shown; a pass says nothing of smaller ones.",
    smallestLeakThroughput: "The same as a throughput; missing without the volume.",
    plateau: "Where the water levels off; missing when there is no sign of water.",
    shares: "How the evidence is shared between the explanations, together 1.",
    fit: "The best single model, for plotting with decayCurve; missing with fewer than three points.",
    excluded: "Readings that were set aside; the monitor keeps the first 100.",
    excludedCount: "How many were set aside for which reason.",
    steps: "Steps in the log.",
  },
};

export const ShapeComparisonLineShape: Shape = {
  type: "ShapeComparisonLine",
  fields: { rate: "pressureRate", rateDeviation: "pressureRate", aicc: "number" },
};

export const ShapeComparisonSaturatingShape: Shape = {
  type: "ShapeComparisonSaturating",
  fields: { plateau: "absolutePressure", timeConstant: "duration", aicc: "number" },
};

export const ShapeComparisonShape: Shape = {
  type: "ShapeComparison",
  fields: {
    line: ShapeComparisonLineShape,
    saturating: ShapeComparisonSaturatingShape,
    preferred: { words: ["saturating", "line", "indistinguishable"] },
  },
  says: "A line and a saturating curve through the same readings.",
  about: {
    line: "p = start + rate·t, with the standard deviation of the rate.",
    saturating: "p = start + rise·(1 − e^(−t/τ)); plateau is start + rise, 0 or more.",
    preferred:
      "The one with the smaller AICc, or indistinguishable when they differ by less than 2.",
  },
};

export const EffectivePumpingSpeedInputShape: Shape = {
  type: "EffectivePumpingSpeedInput",
  fields: { pump: "volumeFlow", conductances: { list: "volumeFlow" } },
};

export const ConductanceInputShape: Shape = {
  type: "ConductanceInput",
  fields: {
    bore: "length",
    length: "length",
    meanPressure: "absolutePressure",
    temperature: "temperature",
    "gas?": { words: ["air", "nitrogen"] },
  },
  says: "Options of tubeConductance.",
  about: {
    bore: "Inner diameter, 0.1 mm to 1 m. Real hose bores are smaller than the nominal size.",
    length: "Length, 0.1 mm to 1 km.",
    meanPressure: "Mean of the pressures at both ends.",
    temperature: "Gas temperature.",
    gas: "air when left out.",
  },
};

export const ConductanceShape: Shape = {
  type: "Conductance",
  fields: {
    conductance: "volumeFlow",
    viscous: "volumeFlow",
    molecular: "volumeFlow",
    knudsenNumber: "number",
    regime: { words: ["viscous", "transition", "molecular"] },
  },
  says: "Conductance of a tube and the kind of flow in it.",
  about: {
    conductance: "By the transition formula, which holds in all regimes.",
    viscous: "Viscous part alone, Hagen-Poiseuille.",
    molecular: "Molecular part alone, long tube.",
    knudsenNumber: "Mean free path over bore.",
    regime: "viscous below Kn 0.01, molecular above 0.5, transition between.",
  },
};

export const DecayCurveInputOptionsShape: Shape = {
  type: "DecayCurveInputOptions",
  fields: { points: "number", "until?": "duration" },
};

export const DecayCurveInputShape: Shape = {
  type: "DecayCurveInput",
  fields: { fit: DecayFitShape, options: DecayCurveInputOptionsShape },
};

export const VacuumDecayOptionsShape: Shape = {
  type: "VacuumDecayOptions",
  fields: {
    ambient: "temperature",
    "coldest?": "temperature",
    "volume?": "volume",
    "gauge?": VacuumGaugeShape,
    policy: { either: [byPolicy, AcceptancePolicyShape] },
    "leakLimit?": { either: ["throughput", "pressureRate"] },
    "confidence?": "number",
  },
  says: "What the analysis of a vacuum decay needs besides the readings.",
  about: {
    ambient:
      "temperature of the warmest part of the system, −40 to 60 °C: it limits what water can do.",
    coldest: "temperature of the coldest part, where water would sit; the ambient when left out.",
    volume:
      "Inner volume of the isolated part, 1 cm³ to 1 m³: turns the rise into a leak rate and a mass of water.",
    gauge: "The gauge.",
    policy: "What is accepted, such as acceptancePolicies.guideSpec15182.",
    leakLimit:
      "Largest leak that is accepted: throughput (needs the volume) or pressureRate. What the policy's rise allows when left out. A leak that only this limit lets pass carries the caution leak-within-limit.",
    confidence: "How sure a pass or a fail has to be, 0.8 to 0.999; 0.95 one-sided when left out.",
  },
};

export const VacuumRiseOfLeakInputShape: Shape = {
  type: "VacuumRiseOfLeakInput",
  fields: {
    leak: "throughput",
    testPressure: "absolutePressure",
    atmosphere: "absolutePressure",
    volume: "volume",
  },
};

export const WaterVapourMassInputShape: Shape = {
  type: "WaterVapourMassInput",
  fields: { rise: "pressureDifference", volume: "volume", temperature: "temperature" },
};

export const VacuumTubeShape: Shape = {
  type: "VacuumTube",
  fields: { bore: "length", length: "length" },
  says: "A round tube, hose or bore through which the system is evacuated.",
  about: {
    bore: "Inner diameter, 0.1 mm to 1 m. Real hose bores are smaller than the nominal size.",
    length: "Length, 0.1 mm to 1 km.",
  },
};

export const PumpDownInputShape: Shape = {
  type: "PumpDownInput",
  fields: {
    volume: "volume",
    pump: "volumeFlow",
    "tubes?": { list: VacuumTubeShape },
    from: "absolutePressure",
    to: "absolutePressure",
    "ultimate?": "absolutePressure",
    "temperature?": "temperature",
  },
  says: "Options of pumpDownTime.",
  about: {
    volume: "Volume of the system.",
    pump: "Speed of the pump at its inlet, free air displacement for a mechanical pump.",
    tubes:
      "Hoses, cores and lines between system and pump in series; none when the speed is that at the system.",
    from: "Pressure at the start and at the end.",
    to: "Pressure to reach.",
    ultimate:
      "Lowest pressure that the pump reaches here, what leaks and vapour included; 0 when left out.",
    temperature: "Gas temperature, only needed with tubes.",
  },
};

export const EvacuationCycleShape: Shape = {
  type: "EvacuationCycle",
  fields: { vacuum: "absolutePressure", brokenTo: "absolutePressure" },
  says: "One evacuation and the break with dry nitrogen after it.",
  about: { vacuum: "Pressure that was reached.", brokenTo: "Pressure to which it was broken." },
};

export const ResidualGasFractionInputShape: Shape = {
  type: "ResidualGasFractionInput",
  fields: {
    cycles: { list: EvacuationCycleShape },
    last: "absolutePressure",
    start: "absolutePressure",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: VacuumDecayAssessmentReasonsItemShape },
    assumptions: { list: VacuumDecayAssessmentReasonsItemShape },
    cautions: { list: VacuumDecayAssessmentCautionsItemShape },
    "actions?": { list: VacuumDecayAssessmentReasonsItemShape },
    sources: { list: CitationShape },
  },
};
