// Which shapes have the types of vacuum-decay?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import { byPolicy } from "../named.ts";
import {
  EstimateOfAbsolutePressureShape,
  EstimateOfPressureRateShape,
  EstimateOfThroughputShape,
  SafetyStatements,
} from "./assessment.shapes.ts";
import { CitationShape } from "./refrigerants.shapes.ts";

export function GaugeRangeShape(): Shape {
  return once(GaugeRangeShape, () => ({
    type: "GaugeRange",
    fields: { upTo: "absolutePressure", resolution: "pressureDifference" },
    docs: {
      "": "One range of a gauge.",
      upTo: "Largest reading of the range.",
      resolution: "Smallest step of the display in it.",
    },
  }));
}

export function VacuumGaugeShape(): Shape {
  return once(VacuumGaugeShape, () => ({
    type: "VacuumGauge",
    fields: {
      "resolution?": { either: ["pressureDifference", { list: GaugeRangeShape() }] },
      "accuracy?": "ratio",
      "range?": "absolutePressure",
    },
    docs: {
      "": "A vacuum gauge as its data sheet describes it.",
      resolution:
        "Smallest step of the display; one per range when it changes with the reading. Found from the readings when left out; a display that stands still is believed only with it.",
      accuracy: "Stated limits of error as a part of the reading; ±10 % is assumed when left out.",
      range: "Largest reading; readings at or above it are over range.",
    },
  }));
}

export function CheckpointShape(): Shape {
  return once(CheckpointShape, () => ({
    type: "Checkpoint",
    fields: {
      at: "duration",
      "limit?": "absolutePressure",
      "rise?": "pressureDifference",
      "failAbove?": "absolutePressure",
    },
    docs: {
      "": "What has to hold at a time after isolation: a ceiling, or a rise above the pressure at isolation.",
      at: "Time after isolation.",
      limit: "Largest pressure that is accepted then.",
      rise: "Largest rise since isolation that is accepted then; zero means none that the gauge could show.",
      failAbove:
        "From here on the source calls it wet or leaking; between the limit and here it is doubtful.",
    },
  }));
}

export function AcceptancePolicyShape(): Shape {
  return once(AcceptancePolicyShape, () => ({
    type: "AcceptancePolicy",
    fields: {
      name: "text",
      target: "absolutePressure",
      checkpoints: { list: CheckpointShape() },
      "leakLimit?": "throughput",
      earlyPass: "flag",
      standing: { words: ["published", "memory", "practice"] },
      source: CitationShape(),
    },
    docs: {
      "": "An acceptance policy: evacuate to the target, isolate, watch for the hold.",
      name: "Name in kebab case.",
      target: "Pressure to reach before isolation.",
      checkpoints: "What has to hold, in order of time; the last one ends the hold.",
      leakLimit:
        "Largest leak that is accepted in 3 L and more, where the source states one; in less as much less; commonLeakLimit when left out.",
      earlyPass: "Whether a pass may be given before the hold is over, once the readings prove it.",
      standing: "How sure the figures are.",
      source: "Where it comes from.",
    },
  }));
}

export function VacuumHosesShape(): Shape {
  return once(VacuumHosesShape, () => ({
    type: "VacuumHoses",
    fields: { material: { words: ["rubber", "low-permeation", "metal"] }, length: "length" },
    docs: {
      "": "Hoses within the isolated part.",
      material: "rubber lets air through, low-permeation has a barrier, metal lets none through.",
      length: "Length of all of them together, 0 to 30 m.",
    },
  }));
}

export function BlankTestShape(): Shape {
  return once(BlankTestShape, () => ({
    type: "BlankTest",
    fields: { rate: "pressureRate", volume: "volume" },
    docs: {
      "": "What hoses and gauge do by themselves: shut off from the system and watched.",
      rate: "Rise of the pressure by the end of the blank test, 0 or more.",
      volume: "Inner volume of hoses and gauge.",
    },
  }));
}

export function DecayReadingShape(): Shape {
  return once(DecayReadingShape, () => ({
    type: "DecayReading",
    fields: { elapsed: "duration", pressure: "absolutePressure" },
    docs: {
      "": "One reading of the gauge.",
      elapsed: "Time since the system was isolated from the pump.",
      pressure: "What the gauge shows.",
    },
  }));
}

export function VacuumDecayInputShape(): Shape {
  return once(VacuumDecayInputShape, () => ({
    type: "VacuumDecayInput",
    fields: {
      ambient: "temperature",
      "coldest?": "temperature",
      "volume?": "volume",
      "gauge?": VacuumGaugeShape(),
      policy: { either: [byPolicy, AcceptancePolicyShape()] },
      "leakLimit?": { either: ["pressureRate", "throughput"] },
      "isolation?": { words: ["isolation-valve", "hose-removed", "pump-valve"] },
      "hoses?": VacuumHosesShape(),
      "blankTest?": BlankTestShape(),
      "confidence?": "number",
      readings: { list: DecayReadingShape() },
    },
    docs: {
      "": "Options of assessVacuumDecay.",
      ambient:
        "temperature of the warmest part of the system, −40 to 60 °C: it limits what water can do.",
      coldest: "temperature of the coldest part, where water would sit; the ambient when left out.",
      volume:
        "Inner volume of the isolated part, 1 cm³ to 1 m³: turns the rise into a leak and a mass of water; 3 L is assumed when left out.",
      gauge: "The gauge.",
      policy: "What is accepted, such as acceptancePolicies.guideSpec15182.",
      leakLimit:
        "Largest leak that is accepted, as throughput or pressureRate: less than the policy's limit, never more.",
      isolation:
        "How the pump was shut off; a course that falls or stays too flat is believed only where it is known.",
      hoses: "Hoses within the isolated part: what they let in is no leak of the system.",
      blankTest: "What a blank test of hoses and gauge showed; it is taken off the rise.",
      confidence:
        "How sure a pass or a fail has to be, 0.8 to 0.999; 0.95 one-sided when left out.",
      readings: "The log, at least one reading; rows out of order are sorted.",
    },
  }));
}

export function DecayCauseShape(): Shape {
  return once(DecayCauseShape, () => ({
    type: "DecayCause",
    words: [
      "dry-and-tight",
      "leak",
      "moisture",
      "leak-and-moisture",
      "moisture-leak-not-excluded",
      "outgassing",
      "not-determined",
    ],
  }));
}

export function VacuumDecayExclusionShape(): Shape {
  return once(VacuumDecayExclusionShape, () => ({
    type: "VacuumDecayExclusion",
    words: [
      "vacuum-decay.exclusion.zero",
      "vacuum-decay.exclusion.over-range",
      "vacuum-decay.exclusion.before-isolation",
      "vacuum-decay.exclusion.repeated-time",
      "vacuum-decay.exclusion.out-of-order",
      "vacuum-decay.exclusion.spike",
      "vacuum-decay.exclusion.unconfirmed-jump",
    ],
  }));
}

export function VacuumDecayStatements(): StatementTable {
  return once(VacuumDecayStatements, () => ({
    "vacuum-decay.above-saturation": { plateau: "absolutePressure" },
    "vacuum-decay.below-gauge": { lowest: "absolutePressure", believed: "absolutePressure" },
    "vacuum-decay.better-gauge": {},
    "vacuum-decay.blank-test": {},
    "vacuum-decay.check-the-gauge": {},
    "vacuum-decay.course-unexplained": { off: "pressureDifference" },
    "vacuum-decay.display-steps": { step: "pressureDifference" },
    "vacuum-decay.display-still": { since: "duration", pressure: "absolutePressure" },
    "vacuum-decay.dry-and-repeat": {},
    "vacuum-decay.dry-and-tight": { smallest: "pressureRate" },
    "vacuum-decay.evacuate-deeper": { target: "absolutePressure" },
    "vacuum-decay.find-with-bubbles": { least: "duration", most: "duration" },
    "vacuum-decay.find-with-tracer": {},
    "vacuum-decay.found-before-step": { low: "pressureRate", high: "pressureRate" },
    "vacuum-decay.gauge-accuracy": { accuracy: "ratio" },
    "vacuum-decay.gauge-at-the-system": {},
    "vacuum-decay.hold-again": { hold: "duration" },
    "vacuum-decay.hoses-unknown": { allowance: "throughput" },
    "vacuum-decay.ice-not-excluded": { coldest: "temperature", saturation: "absolutePressure" },
    "vacuum-decay.isolate-at-the-system": {},
    "vacuum-decay.isolated": {},
    "vacuum-decay.keep-gauge-open": { hold: "duration" },
    "vacuum-decay.last-reading-above-limit": {
      pressure: "absolutePressure",
      limit: "absolutePressure",
    },
    "vacuum-decay.leak": { low: "pressureRate", high: "pressureRate", leak: "pressureRate" },
    "vacuum-decay.leak-and-moisture": {
      low: "pressureRate",
      high: "pressureRate",
      leak: "pressureRate",
      water: "pressureDifference",
    },
    "vacuum-decay.leak-not-excluded": { high: "pressureRate", limit: "pressureRate" },
    "vacuum-decay.leak-or-moisture": {},
    "vacuum-decay.leak-proven": {
      low: "pressureRate",
      high: "pressureRate",
      limit: "pressureRate",
    },
    "vacuum-decay.leak-within-limit": {
      low: "pressureRate",
      high: "pressureRate",
      limit: "pressureRate",
    },
    "vacuum-decay.moisture": { water: "pressureDifference", high: "pressureRate" },
    "vacuum-decay.moisture-leak-not-excluded": {
      water: "pressureDifference",
      high: "pressureRate",
    },
    "vacuum-decay.moisture-not-excluded": { water: "pressureDifference" },
    "vacuum-decay.moisture-proven": { water: "pressureDifference" },
    "vacuum-decay.no-cold-spot": { ambient: "temperature" },
    "vacuum-decay.no-slow-water": { duration: "duration" },
    "vacuum-decay.not-a-pressure-test": {
      limit: "throughput",
      least: "massFlow",
      most: "massFlow",
    },
    "vacuum-decay.not-determined": {},
    "vacuum-decay.outgassing": { water: "pressureDifference", high: "pressureRate" },
    "vacuum-decay.over-range": { range: "absolutePressure" },
    "vacuum-decay.over-range-failed": { range: "absolutePressure" },
    "vacuum-decay.pressure-above-limit": {
      at: "duration",
      value: "pressureDifference",
      low: "pressureDifference",
      high: "pressureDifference",
      limit: "pressureDifference",
    },
    "vacuum-decay.pressure-falls": { fall: "pressureDifference" },
    "vacuum-decay.pressure-forecast": {
      at: "duration",
      value: "pressureDifference",
      low: "pressureDifference",
      high: "pressureDifference",
      limit: "pressureDifference",
    },
    "vacuum-decay.pressure-too-close": {
      at: "duration",
      value: "pressureDifference",
      low: "pressureDifference",
      high: "pressureDifference",
      limit: "pressureDifference",
    },
    "vacuum-decay.pressure-within-limit": {
      at: "duration",
      value: "pressureDifference",
      low: "pressureDifference",
      high: "pressureDifference",
      limit: "pressureDifference",
    },
    "vacuum-decay.readings-excluded": {
      excluded: "number",
      rows: "number",
      why: { list: VacuumDecayExclusionShape() },
    },
    "vacuum-decay.repair-leak": {},
    "vacuum-decay.rise-above-limit": {
      at: "duration",
      value: "pressureDifference",
      low: "pressureDifference",
      high: "pressureDifference",
      limit: "pressureDifference",
    },
    "vacuum-decay.rise-forecast": {
      at: "duration",
      value: "pressureDifference",
      low: "pressureDifference",
      high: "pressureDifference",
      limit: "pressureDifference",
    },
    "vacuum-decay.rise-quickens": { late: "pressureDifference" },
    "vacuum-decay.rise-stops": { elapsed: "duration", missing: "pressureDifference" },
    "vacuum-decay.rise-too-close": {
      at: "duration",
      value: "pressureDifference",
      low: "pressureDifference",
      high: "pressureDifference",
      limit: "pressureDifference",
    },
    "vacuum-decay.rise-within-limit": {
      at: "duration",
      value: "pressureDifference",
      low: "pressureDifference",
      high: "pressureDifference",
      limit: "pressureDifference",
    },
    "vacuum-decay.state-isolation": {},
    "vacuum-decay.step": { elapsed: "duration", change: "pressureDifference" },
    "vacuum-decay.step-before": { elapsed: "duration" },
    "vacuum-decay.still-rising": { rate: "pressureRate" },
    "vacuum-decay.target-missed": { start: "absolutePressure", target: "absolutePressure" },
    "vacuum-decay.too-few-readings": { rows: "number", needed: "number" },
    "vacuum-decay.too-flat": { change: "pressureDifference" },
    "vacuum-decay.typed-by-hand": { rows: "number", step: "pressureDifference" },
    "vacuum-decay.usual-volume": { volume: "volume" },
    "vacuum-decay.warm-and-repeat": { coldest: "temperature" },
    "vacuum-decay.watch-longer": { duration: "duration", rows: "number" },
  }));
}

export function VacuumDecayStatementShape(): Shape {
  return once(VacuumDecayStatementShape, () => ({
    type: "VacuumDecayStatement",
    statements: [VacuumDecayStatements()],
  }));
}

export function VacuumDecayAssessmentCautionsItemShape(): Shape {
  return once(VacuumDecayAssessmentCautionsItemShape, () => ({
    type: "VacuumDecayAssessmentCautionsItem",
    statements: [SafetyStatements(), VacuumDecayStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function PlateauShape(): Shape {
  return once(PlateauShape, () => ({
    type: "Plateau",
    fields: {
      pressure: EstimateOfAbsolutePressureShape(),
      saturationTemperature: "temperature",
      "waterMass?": "mass",
      aboveSaturation: "flag",
    },
    docs: {
      "": "Where water levels off, and what that says.",
      pressure: "Pressure at which the rise ends, without the leak.",
      saturationTemperature:
        "Water or ice of this temperature is in balance with the plateau: the coldest wet spot is no colder.",
      waterMass:
        "Water that has become vapor by then, mass; missing without the volume. More may be left as liquid, ice or in oil.",
      aboveSaturation:
        "Whether the plateau lies above the saturation of water at the coldest part, which contradicts water alone.",
    },
  }));
}

export function EvidenceSharesShape(): Shape {
  return once(EvidenceSharesShape, () => ({
    type: "EvidenceShares",
    fields: { leak: "number", moisture: "number", either: "number" },
    docs: {
      "": "The share of the evidence for what matters to a system, each from 0 to 1.",
      leak: "A leak above what hoses may let in and 5 micron/min: the one that fails.",
      moisture: "Water above 300 micron and 5 % of the rise.",
      either: "Either, or a rise that goes on: a pass needs this below 0.1.",
    },
  }));
}

export function DecayFitCoefficientsShape(): Shape {
  return once(DecayFitCoefficientsShape, () => ({
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
    docs: {
      fast: "Index of the first of two fast exponentials, −1 for none.",
      shape: "Index into slowShapes, −1 for none.",
      tau: "Slow time constant in s.",
      constant: "c, fast 1, fast 2, A; 0 where the model has none.",
      slope: "Slope of the line in Pa/s and its standard uncertainty.",
      ahead: "Value and standard uncertainty at the time asked for.",
    },
  }));
}

export function DecayFitShape(): Shape {
  return once(DecayFitShape, () => ({
    type: "DecayFit",
    fields: {
      "shape?": {
        words: [
          "saturating",
          "stretched90",
          "stretched80",
          "stretched70",
          "hyperbolic",
          "logarithmic",
          "squareRoot",
        ],
      },
      "timeConstant?": "duration",
      line: "flag",
      equalization: "flag",
      aicc: "number",
      from: "duration",
      to: "duration",
      coefficients: DecayFitCoefficientsShape(),
    },
    docs: {
      "": "A fitted model as plain data: constant + equalization + line + slow shape.",
      shape: "Slow shape; missing for a constant or a line.",
      timeConstant: "Time constant of the slow shape.",
      line: "Whether it has a line: a leak.",
      equalization: "Whether it has an equalization right after isolation.",
      aicc: "Akaike's criterion with small-sample correction; only differences within one log mean anything.",
      from: "Start of the stretch that was fitted.",
      to: "End of the stretch that was fitted.",
      coefficients: "Coefficients in SI units for decayCurve; not for reading.",
    },
  }));
}

export function ExclusionReasonShape(): Shape {
  return once(ExclusionReasonShape, () => ({
    type: "ExclusionReason",
    words: [
      "zero",
      "over-range",
      "before-isolation",
      "repeated-time",
      "out-of-order",
      "spike",
      "unconfirmed-jump",
    ],
  }));
}

export function ExclusionShape(): Shape {
  return once(ExclusionShape, () => ({
    type: "Exclusion",
    fields: {
      elapsed: "duration",
      pressure: "absolutePressure",
      row: "number",
      reason: ExclusionReasonShape(),
    },
    docs: {
      "": "A reading that is not part of the evidence, and why.",
      elapsed: "Time since the system was isolated from the pump.",
      pressure: "What the gauge shows.",
      row: "Position in the caller's log, from 0.",
      reason: "Why.",
    },
  }));
}

export function VacuumDecayAssessmentExcludedCountShape(): Shape {
  return once(VacuumDecayAssessmentExcludedCountShape, () => ({
    type: "VacuumDecayAssessmentExcludedCount",
    fields: {
      "zero?": "number",
      "over-range?": "number",
      "before-isolation?": "number",
      "repeated-time?": "number",
      "out-of-order?": "number",
      "spike?": "number",
      "unconfirmed-jump?": "number",
    },
  }));
}

export function DecayStepShape(): Shape {
  return once(DecayStepShape, () => ({
    type: "DecayStep",
    fields: { elapsed: "duration", change: "pressureDifference" },
    docs: {
      "": "A sudden change that no leak makes: a valve was opened or a hose moved.",
      elapsed: "When.",
      change: "How far the pressure left its course.",
    },
  }));
}

export function VacuumDecayAssessmentShape(): Shape {
  return once(VacuumDecayAssessmentShape, () => ({
    type: "VacuumDecayAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      cause: DecayCauseShape(),
      reasons: { list: VacuumDecayStatementShape() },
      assumptions: { list: VacuumDecayStatementShape() },
      cautions: { list: VacuumDecayAssessmentCautionsItemShape() },
      actions: { list: VacuumDecayStatementShape() },
      sources: { list: CitationShape() },
      evidence: "duration",
      "atHoldEnd?": EstimateOfAbsolutePressureShape(),
      "leak?": EstimateOfPressureRateShape(),
      "leakInterval?": { items: ["pressureRate", "pressureRate"] },
      "leakThroughput?": EstimateOfThroughputShape(),
      "smallestLeak?": "pressureRate",
      "smallestLeakThroughput?": "throughput",
      leakLimit: "throughput",
      lossAtLimit: { items: ["massFlow", "massFlow"] },
      "plateau?": PlateauShape(),
      "shares?": EvidenceSharesShape(),
      "fit?": DecayFitShape(),
      excluded: { list: ExclusionShape() },
      excludedCount: VacuumDecayAssessmentExcludedCountShape(),
      steps: { list: DecayStepShape() },
    },
    docs: {
      "": "The verdict on a vacuum decay. What the readings can't tell is absent.",
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
      leak: "Rate of the steady rise, the leak, over all models, less what a blank test showed.",
      leakInterval:
        "95 % two-sided interval of the leak; not symmetric when moisture could hide it.",
      leakThroughput:
        "The leak as a throughput at the ambient temperature; missing without the volume.",
      smallestLeak:
        "The smallest leak that these readings could have shown; a pass says nothing of smaller ones.",
      smallestLeakThroughput: "The same as a throughput; missing without the volume.",
      leakLimit:
        "The largest leak that may pass: the policy's, in less than 3 L as much less, or the caller's smaller one.",
      lossAtLimit:
        "What a leak of that size loses at operating pressure, least and most: R-410A at 20 °C, order of magnitude.",
      plateau: "Where the water levels off; missing when there is no sign of water.",
      shares: "How likely a leak and water are that matter; missing with fewer than eight points.",
      fit: "The best single model, for plotting with decayCurve; missing with fewer than four points.",
      excluded: "Readings that were set aside; the monitor keeps the first 100.",
      excludedCount: "How many were set aside for which reason.",
      steps: "Steps in the log.",
    },
  }));
}

export function EffectivePumpingSpeedInputShape(): Shape {
  return once(EffectivePumpingSpeedInputShape, () => ({
    type: "EffectivePumpingSpeedInput",
    fields: { pump: "volumeFlow", conductances: { list: "volumeFlow" } },
  }));
}

export function ConductanceInputShape(): Shape {
  return once(ConductanceInputShape, () => ({
    type: "ConductanceInput",
    fields: {
      bore: "length",
      length: "length",
      meanPressure: "absolutePressure",
      temperature: "temperature",
      "gas?": { words: ["air", "nitrogen"] },
    },
    docs: {
      "": "Options of tubeConductance.",
      bore: "Inner diameter, 0.1 mm to 1 m. Real hose bores are smaller than the nominal size.",
      length: "Length, 0.1 mm to 1 km.",
      meanPressure: "Mean of the pressures at both ends.",
      temperature: "Gas temperature.",
      gas: "air when left out.",
    },
  }));
}

export function ConductanceShape(): Shape {
  return once(ConductanceShape, () => ({
    type: "Conductance",
    fields: {
      conductance: "volumeFlow",
      viscous: "volumeFlow",
      molecular: "volumeFlow",
      knudsenNumber: "number",
      regime: { words: ["viscous", "transition", "molecular"] },
    },
    docs: {
      "": "Conductance of a tube and the kind of flow in it.",
      conductance: "By the transition formula, which holds in all regimes.",
      viscous: "Viscous part alone, Hagen-Poiseuille.",
      molecular: "Molecular part alone, long tube.",
      knudsenNumber: "Mean free path over bore.",
      regime: "viscous below Kn 0.01, molecular above 0.5, transition between.",
    },
  }));
}

export function DecayCurveInputOptionsShape(): Shape {
  return once(DecayCurveInputOptionsShape, () => ({
    type: "DecayCurveInputOptions",
    fields: { points: "number", "until?": "duration" },
  }));
}

export function DecayCurveInputShape(): Shape {
  return once(DecayCurveInputShape, () => ({
    type: "DecayCurveInput",
    fields: { fit: DecayFitShape(), options: DecayCurveInputOptionsShape() },
  }));
}

export function VacuumDecayOptionsShape(): Shape {
  return once(VacuumDecayOptionsShape, () => ({
    type: "VacuumDecayOptions",
    fields: {
      ambient: "temperature",
      "coldest?": "temperature",
      "volume?": "volume",
      "gauge?": VacuumGaugeShape(),
      policy: { either: [byPolicy, AcceptancePolicyShape()] },
      "leakLimit?": { either: ["pressureRate", "throughput"] },
      "isolation?": { words: ["isolation-valve", "hose-removed", "pump-valve"] },
      "hoses?": VacuumHosesShape(),
      "blankTest?": BlankTestShape(),
      "confidence?": "number",
    },
    docs: {
      "": "What the analysis of a vacuum decay needs besides the readings.",
      ambient:
        "temperature of the warmest part of the system, −40 to 60 °C: it limits what water can do.",
      coldest: "temperature of the coldest part, where water would sit; the ambient when left out.",
      volume:
        "Inner volume of the isolated part, 1 cm³ to 1 m³: turns the rise into a leak and a mass of water; 3 L is assumed when left out.",
      gauge: "The gauge.",
      policy: "What is accepted, such as acceptancePolicies.guideSpec15182.",
      leakLimit:
        "Largest leak that is accepted, as throughput or pressureRate: less than the policy's limit, never more.",
      isolation:
        "How the pump was shut off; a course that falls or stays too flat is believed only where it is known.",
      hoses: "Hoses within the isolated part: what they let in is no leak of the system.",
      blankTest: "What a blank test of hoses and gauge showed; it is taken off the rise.",
      confidence:
        "How sure a pass or a fail has to be, 0.8 to 0.999; 0.95 one-sided when left out.",
    },
  }));
}

export function VacuumRiseOfLeakInputShape(): Shape {
  return once(VacuumRiseOfLeakInputShape, () => ({
    type: "VacuumRiseOfLeakInput",
    fields: {
      leak: "throughput",
      testPressure: "absolutePressure",
      atmosphere: "absolutePressure",
      volume: "volume",
    },
  }));
}

export function WaterVaporMassInputShape(): Shape {
  return once(WaterVaporMassInputShape, () => ({
    type: "WaterVaporMassInput",
    fields: { rise: "pressureDifference", volume: "volume", temperature: "temperature" },
  }));
}

export function VacuumTubeShape(): Shape {
  return once(VacuumTubeShape, () => ({
    type: "VacuumTube",
    fields: { bore: "length", length: "length" },
    docs: {
      "": "A round tube, hose or bore through which the system is evacuated.",
      bore: "Inner diameter, 0.1 mm to 1 m. Real hose bores are smaller than the nominal size.",
      length: "Length, 0.1 mm to 1 km.",
    },
  }));
}

export function PumpDownInputShape(): Shape {
  return once(PumpDownInputShape, () => ({
    type: "PumpDownInput",
    fields: {
      volume: "volume",
      pump: "volumeFlow",
      "tubes?": { list: VacuumTubeShape() },
      from: "absolutePressure",
      to: "absolutePressure",
      "ultimate?": "absolutePressure",
      "temperature?": "temperature",
    },
    docs: {
      "": "Options of pumpDownTime.",
      volume: "Volume of the system.",
      pump: "Speed of the pump at its inlet, free air displacement for a mechanical pump.",
      tubes:
        "Hoses, cores and lines between system and pump in series; none when the speed is that at the system.",
      from: "Pressure at the start and at the end.",
      to: "Pressure to reach.",
      ultimate:
        "Lowest pressure that the pump reaches here, what leaks and vapor included; 0 when left out.",
      temperature: "Gas temperature, only needed with tubes.",
    },
  }));
}

export function EvacuationCycleShape(): Shape {
  return once(EvacuationCycleShape, () => ({
    type: "EvacuationCycle",
    fields: { vacuum: "absolutePressure", brokenTo: "absolutePressure" },
    docs: {
      "": "One evacuation and the break with dry nitrogen after it.",
      vacuum: "Pressure that was reached.",
      brokenTo: "Pressure to which it was broken.",
    },
  }));
}

export function ResidualGasFractionInputShape(): Shape {
  return once(ResidualGasFractionInputShape, () => ({
    type: "ResidualGasFractionInput",
    fields: {
      cycles: { list: EvacuationCycleShape() },
      last: "absolutePressure",
      start: "absolutePressure",
    },
  }));
}
