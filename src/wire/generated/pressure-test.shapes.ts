// Which shapes have the types of pressure-test?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import {
  EstimateOfMassFlowShape,
  EstimateOfPressureDifferenceShape,
  EstimateOfThroughputShape,
  SafetyStatements,
} from "./assessment.shapes.ts";
import { CitationShape } from "./refrigerants.shapes.ts";

export function TestGaugeShape(): Shape {
  return once(TestGaugeShape, () => ({
    type: "TestGauge",
    fields: {
      "accuracy?": "pressureDifference",
      "resolution?": "pressureDifference",
      "repeatability?": "pressureDifference",
      "drift?": "pressureDifference",
      "separateInstruments?": "flag",
    },
    docs: {
      "": "The gauge or pressure sensor. Read twice, its common error nearly cancels in the drop; its resolution, its repeatability and what its zero wanders in between remain.",
      accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
      resolution: "Smallest step that the display shows.",
      repeatability: "Standard deviation of repeated readings of the same thing.",
      drift:
        "How far zero and hysteresis may wander from the first to the last reading, ±. When left out, a quarter of the accuracy (at least one display step) and 2 % of it for each kelvin that the temperature moved are assumed.",
      separateInstruments:
        "Two different gauges read start and end, so that their errors do not cancel.",
    },
  }));
}

export function GasThermometerShape(): Shape {
  return once(GasThermometerShape, () => ({
    type: "GasThermometer",
    fields: {
      "accuracy?": "temperatureDifference",
      "resolution?": "temperatureDifference",
      "repeatability?": "temperatureDifference",
      "followsGasWithin?": "temperatureDifference",
      "separateInstruments?": "flag",
    },
    docs: {
      "": "The thermometer that stands for the gas temperature.",
      accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
      resolution: "Smallest step that the display shows.",
      repeatability: "Standard deviation of repeated readings of the same thing.",
      followsGasWithin:
        "How far the reading may be from the mean gas temperature, differently at each reading, ±: sun on one pipe, indoor and outdoor parts, lag, warmth of the fill. Under the insulation of tubing in one place and in shade, ±0.5 K. When left out, a bound that grows with the swing, the time and the volume is assumed.",
      separateInstruments:
        "Two different thermometers read start and end, so that their errors do not cancel.",
    },
  }));
}

export function TestInstrumentsShape(): Shape {
  return once(TestInstrumentsShape, () => ({
    type: "TestInstruments",
    fields: {
      pressure: TestGaugeShape(),
      temperature: GasThermometerShape(),
      "volumeUncertainty?": "ratio",
    },
    docs: {
      "": "What the test was read with.",
      pressure: "The gauge or pressure sensor.",
      temperature: "The thermometer.",
      volumeUncertainty:
        "Standard uncertainty of each volume as a fraction of it; taken as exact when left out.",
    },
  }));
}

export function DropLimitShape(): Shape {
  return once(DropLimitShape, () => ({
    type: "DropLimit",
    fields: { maximumDrop: "pressureDifference", "per?": "duration" },
    docs: {
      "": "The largest corrected drop that still passes.",
      maximumDrop: "Largest drop, above 0; more than 1 % of the fill pressure counts as 1 %.",
      per: "The time for which the drop is allowed, so that the limit is a rate; the whole test when left out.",
    },
  }));
}

export function LeakLimitShape(): Shape {
  return once(LeakLimitShape, () => ({
    type: "LeakLimit",
    fields: { maximumLeakRate: "throughput" },
    docs: {
      "": "The largest leak that still passes; needs the volume and the time of the test.",
      maximumLeakRate:
        "Largest nitrogen throughput at the temperature of the test, above 0; one that lets more than 1 % of the fill pressure go in the test counts as 1 %.",
    },
  }));
}

export function LeakGasShape(): Shape {
  return once(LeakGasShape, () => ({
    type: "LeakGas",
    fields: { gramsPerMole: "number", viscosity: "number", "pressureAtRest?": "absolutePressure" },
    docs: {
      "": "What the scaling needs of a gas.",
      gramsPerMole: "Molar mass, g/mol.",
      viscosity: "Viscosity, µPa·s.",
      pressureAtRest:
        "Saturation pressure at 20 °C, where it is a refrigerant: the least that a test has to exceed.",
    },
  }));
}

export function RefrigerantInServiceShape(): Shape {
  return once(RefrigerantInServiceShape, () => ({
    type: "RefrigerantInService",
    fields: { gas: LeakGasShape(), pressure: "absolutePressure" },
    docs: {
      "": "The refrigerant that will be in the machine.",
      gas: "Molar mass and viscosity of its vapor, such as leakGas.R32.",
      pressure:
        "Its pressure in the machine, such as the saturation pressure at rest; above the atmosphere.",
    },
  }));
}

export function GasElsewhereShape(): Shape {
  return once(GasElsewhereShape, () => ({
    type: "GasElsewhere",
    fields: { share: "ratio", "change?": "temperatureDifference" },
    docs: {
      "": "The part of the gas that lies where no thermometer is: tubing indoors while the thermometer hangs outdoors.",
      share: "Its share of the volume, 0 to below 1; 0 says that every part has its thermometer.",
      change:
        "How much its temperature may have changed from the first to the last reading, ±; when left out, what a day and a house do in that time is assumed.",
    },
  }));
}

export function MarkedLimitShape(): Shape {
  return once(MarkedLimitShape, () => ({
    type: "MarkedLimit",
    fields: {
      part: { words: ["low side", "high side", "component", "relief device"] },
      pressure: "gaugePressure",
    },
    docs: {
      "": "A limit that is marked on something under test.",
      part: "What bears it: low side, high side, a component, a relief device.",
      pressure: "The marked pressure: highest allowed, or the setting of a relief device.",
    },
  }));
}

export function TestRequirementShape(): Shape {
  return once(TestRequirementShape, () => ({
    type: "TestRequirement",
    fields: {
      "testPressure?": "gaugePressure",
      "hold?": "duration",
      "marked?": { list: MarkedLimitShape() },
    },
    docs: {
      "": "What manual and nameplate require of the test.",
      testPressure: "Lowest test pressure of the manual.",
      hold: "Shortest hold of the manual.",
      marked: "Pressures marked on the parts under test; none may be exceeded.",
    },
  }));
}

export function LogReadingShape(): Shape {
  return once(LogReadingShape, () => ({
    type: "LogReading",
    fields: {
      pressure: { either: ["absolutePressure", "gaugePressure"] },
      temperature: { either: ["temperature", { list: "temperature" }] },
      elapsed: "duration",
      "atmosphere?": "absolutePressure",
    },
    docs: {
      "": "A row of a log: a reading with its time.",
      pressure: "What the gauge or absolute sensor shows; the same kind in all readings of a test.",
      temperature: "Gas temperature, per zone where zones differ, −40 °C to 70 °C.",
      elapsed: "Time since the test began.",
      atmosphere:
        "Station pressure at this reading, where it differs from the one given for the whole test.",
    },
  }));
}

export function PressureTestLogShape(): Shape {
  return once(PressureTestLogShape, () => ({
    type: "PressureTestLog",
    fields: {
      instruments: TestInstrumentsShape(),
      atmosphere: "absolutePressure",
      "volume?": { either: ["volume", { list: "volume" }] },
      "zoneShares?": { list: "ratio" },
      "criterion?": { either: [DropLimitShape(), LeakLimitShape()] },
      "confidence?": "number",
      "refrigerant?": RefrigerantInServiceShape(),
      "sinceFill?": "duration",
      "elsewhere?": GasElsewhereShape(),
      "required?": TestRequirementShape(),
      "wall?": { words: ["rigid", "copper", "aluminum"] },
      readings: { list: LogReadingShape() },
    },
    docs: {
      "": "A test judged by a log.",
      instruments: "What the test was read with.",
      atmosphere: "Station pressure; of every reading that does not state its own.",
      volume:
        "Inner volume of the whole, or one per zone in the order of the temperatures; needed for a leak rate.",
      zoneShares:
        "Share of the gas at each thermometer, in the order of the temperatures and together 1, where their volumes are not known one by one; counts as an estimate, each good to 15 % of itself (common practice, no source).",
      criterion: "The stated limit; without one nothing passes.",
      confidence:
        "One-sided confidence of the decision, 0.8 to below 1; 0.977 (k = 2) when left out.",
      refrigerant:
        "What the machine will hold, for the leak in grams a year; needs volume and time.",
      sinceFill:
        "Time from the end of the fill to the first reading; without it the gas counts as warm from the fill, unless the thermometer is stated to follow it.",
      elsewhere:
        "What part of the gas lies where no thermometer is; without it up to 0.7 of it may, unless every zone has one or the thermometer is stated to follow the gas.",
      required:
        "What manual and nameplate require; a test that does not meet it cannot pass. An empty object says that it was checked elsewhere.",
      wall: "What the walls are made of; when left out they count as rigid, with copper's expansion as uncertainty.",
      readings:
        "Two or more readings at different times, in any order, from the time on when the gas is at rest.",
    },
  }));
}

export function PressureTestMarkedShape(): Shape {
  return once(PressureTestMarkedShape, () => ({
    type: "PressureTestMarked",
    words: [
      "pressure-test.marked.low side",
      "pressure-test.marked.high side",
      "pressure-test.marked.component",
      "pressure-test.marked.relief device",
    ],
  }));
}

export function PressureTestPartShape(): Shape {
  return once(PressureTestPartShape, () => ({
    type: "PressureTestPart",
    words: [
      "pressure-test.part.barometer",
      "pressure-test.part.gauge-reading",
      "pressure-test.part.gauge-drift",
      "pressure-test.part.gauge-error",
      "pressure-test.part.thermometer-reading",
      "pressure-test.part.thermometer-error",
      "pressure-test.part.gas-temperature",
      "pressure-test.part.settling",
      "pressure-test.part.wall-expansion",
      "pressure-test.part.zone-volumes",
      "pressure-test.part.scatter",
    ],
  }));
}

export function PressureTestStatements(): StatementTable {
  return once(PressureTestStatements, () => ({
    "pressure-test.above-limit": {
      limit: "pressureDifference",
      drop: "pressureDifference",
      uncertainty: "pressureDifference",
    },
    "pressure-test.above-marked": { pressure: "gaugePressure", marked: "gaugePressure" },
    "pressure-test.across-limit": {
      limit: "pressureDifference",
      drop: "pressureDifference",
      uncertainty: "pressureDifference",
    },
    "pressure-test.all-limits-given": {},
    "pressure-test.barometer-unchanged": { change: "pressureDifference" },
    "pressure-test.below-limit": {
      part: PressureTestMarkedShape(),
      limit: "gaugePressure",
      fill: "gaugePressure",
      warm: "gaugePressure",
    },
    "pressure-test.check-thermometers": {},
    "pressure-test.close-supply": {},
    "pressure-test.cylinder-cools": {},
    "pressure-test.falls-faster": { lost: "pressureDifference" },
    "pressure-test.fill-below-manual": { pressure: "gaugePressure", required: "gaugePressure" },
    "pressure-test.fill-below-service": { pressure: "gaugePressure", service: "gaugePressure" },
    "pressure-test.fill-higher": { required: "gaugePressure" },
    "pressure-test.fill-unchecked": {},
    "pressure-test.find-by-bubbles": { leak: "throughput", watch: "duration" },
    "pressure-test.find-by-foam": { leak: "throughput", watch: "duration" },
    "pressure-test.find-by-tracer": { leak: "throughput", watch: "duration" },
    "pressure-test.find-of-unknown-size": { watch: "duration" },
    "pressure-test.follows-gas": { within: "temperatureDifference", missed: "ratio" },
    "pressure-test.gas-elsewhere-unknown": { within: "temperatureDifference", missed: "ratio" },
    "pressure-test.gas-leaks-outward": {},
    "pressure-test.gas-settled": {},
    "pressure-test.gauge-drift": { drift: "pressureDifference" },
    "pressure-test.gauge-without-error": {},
    "pressure-test.hold-again": {},
    "pressure-test.hold-at-least": { hold: "duration" },
    "pressure-test.hold-below-manual": { hold: "duration", required: "duration" },
    "pressure-test.hold-below-step": { hold: "duration", step: "pressureDifference" },
    "pressure-test.hold-longer": { further: "duration" },
    "pressure-test.hold-time-unknown": {},
    "pressure-test.jump": { change: "pressureDifference", elapsed: "duration" },
    "pressure-test.last-reading-above-limit": {
      drop: "pressureDifference",
      limit: "pressureDifference",
    },
    "pressure-test.leak-proven": { drop: "pressureDifference", uncertainty: "pressureDifference" },
    "pressure-test.leak-within-limit": {
      limit: "pressureDifference",
      drop: "pressureDifference",
      uncertainty: "pressureDifference",
    },
    "pressure-test.limit-lowered": {
      stated: "pressureDifference",
      pressure: "pressureDifference",
      limit: "pressureDifference",
    },
    "pressure-test.liquid-leaks-more": {},
    "pressure-test.log-misfit": { misfit: "number" },
    "pressure-test.look-at-plot": {},
    "pressure-test.lower-pressure": { marked: "gaugePressure" },
    "pressure-test.lowered-to-limit": {
      part: PressureTestMarkedShape(),
      limit: "gaugePressure",
      fill: "gaugePressure",
      warm: "gaugePressure",
    },
    "pressure-test.measure-elsewhere": { share: "ratio" },
    "pressure-test.no-leak-above": { above: "pressureDifference" },
    "pressure-test.no-limit-stated": {},
    "pressure-test.no-loss-not-shown": {},
    "pressure-test.no-margin": {},
    "pressure-test.open-to-system": {},
    "pressure-test.order-of-magnitude": {},
    "pressure-test.pressure-still": { moved: "pressureDifference" },
    "pressure-test.rate-needs-it": {},
    "pressure-test.read-again": {},
    "pressure-test.read-at-first-temperature": { temperature: "temperature" },
    "pressure-test.reduce-uncertainty": {
      part: PressureTestPartShape(),
      share: "pressureDifference",
    },
    "pressure-test.repair-and-retest": {},
    "pressure-test.rigid-walls": {},
    "pressure-test.settle-first": { settle: "duration" },
    "pressure-test.short-hold": { hold: "duration", shortest: "duration" },
    "pressure-test.smallest-drop": { smallest: "pressureDifference" },
    "pressure-test.smallest-drop-rate": {
      smallest: "pressureDifference",
      held: "duration",
      hold: "duration",
    },
    "pressure-test.smallest-leak": { smallest: "throughput", hold: "duration" },
    "pressure-test.state-elsewhere": {},
    "pressure-test.state-follows-gas": { within: "temperatureDifference" },
    "pressure-test.state-gauge": {},
    "pressure-test.state-limit": { largest: "pressureDifference" },
    "pressure-test.state-since-fill": { settle: "duration" },
    "pressure-test.state-thermometer": {},
    "pressure-test.station-pressure": {},
    "pressure-test.thermometer-without-error": {},
    "pressure-test.unexplained-rise": {
      rise: "pressureDifference",
      uncertainty: "pressureDifference",
    },
    "pressure-test.volume-exact": {},
    "pressure-test.warm-from-fill": {},
    "pressure-test.water-volume": {},
    "pressure-test.weather-alone": {
      temperature: "pressureDifference",
      change: "pressureDifference",
    },
    "pressure-test.weather-and-barometer-alone": {
      temperature: "pressureDifference",
      barometer: "pressureDifference",
      change: "pressureDifference",
    },
    "pressure-test.within-limit": {
      limit: "pressureDifference",
      drop: "pressureDifference",
      uncertainty: "pressureDifference",
    },
    "pressure-test.zones-need-volumes": {},
    "pressure-test.zones-swapped": { elapsed: "duration", from: "temperature", to: "temperature" },
    "pressure-test.zones-swapped-at-end": { from: "temperature", to: "temperature" },
  }));
}

export function PressureTestStatementShape(): Shape {
  return once(PressureTestStatementShape, () => ({
    type: "PressureTestStatement",
    statements: [PressureTestStatements()],
  }));
}

export function LogAssessmentCautionsItemShape(): Shape {
  return once(LogAssessmentCautionsItemShape, () => ({
    type: "LogAssessmentCautionsItem",
    statements: [SafetyStatements(), PressureTestStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function UncertaintyPartShape(): Shape {
  return once(UncertaintyPartShape, () => ({
    type: "UncertaintyPart",
    words: [
      "gauge-reading",
      "gauge-drift",
      "gauge-error",
      "thermometer-reading",
      "thermometer-error",
      "gas-temperature",
      "settling",
      "barometer",
      "wall-expansion",
      "zone-volumes",
      "scatter",
    ],
  }));
}

export function UncertaintyShareShape(): Shape {
  return once(UncertaintyShareShape, () => ({
    type: "UncertaintyShare",
    fields: { part: UncertaintyPartShape(), standardUncertainty: "pressureDifference" },
    docs: {
      "": "One part of the uncertainty of the drop.",
      part: "Where it comes from.",
      standardUncertainty: "Standard uncertainty that it gives the drop.",
    },
  }));
}

export function CautionOfPressureTestStatementShape(): Shape {
  return once(CautionOfPressureTestStatementShape, () => ({
    type: "CautionOfPressureTestStatement",
    statements: [PressureTestStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function RefrigerantEquivalentShape(): Shape {
  return once(RefrigerantEquivalentShape, () => ({
    type: "RefrigerantEquivalent",
    fields: {
      viscous: "massFlow",
      molecular: "massFlow",
      low: "massFlow",
      high: "massFlow",
      referenceTemperature: "temperature",
      cautions: { list: CautionOfPressureTestStatementShape() },
    },
    docs: {
      "": "The same leak as a loss of refrigerant: a range, order of magnitude.",
      viscous: "By the laminar law: the likelier of the two for what a pressure test can show.",
      molecular: "By the molecular law.",
      low: "The smaller of the two.",
      high: "The larger of the two.",
      referenceTemperature: "Temperature to which the throughput refers.",
      cautions: "How far the figures can be trusted.",
    },
  }));
}

export function CorrectedPointShape(): Shape {
  return once(CorrectedPointShape, () => ({
    type: "CorrectedPoint",
    fields: { elapsed: "duration", pressure: { either: ["absolutePressure", "gaugePressure"] } },
    docs: {
      "": "A point of the corrected course, for a plot.",
      elapsed: "Time since the test began; the mean of the readings that the point stands for.",
      pressure: "What the instrument would have shown at the temperature of the last reading.",
    },
  }));
}

export function LogAssessmentShape(): Shape {
  return once(LogAssessmentShape, () => ({
    type: "LogAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["leak", "unexplained-rise"] },
      reasons: { list: PressureTestStatementShape() },
      assumptions: { list: PressureTestStatementShape() },
      cautions: { list: LogAssessmentCautionsItemShape() },
      actions: { list: PressureTestStatementShape() },
      sources: { list: CitationShape() },
      correctedDrop: EstimateOfPressureDifferenceShape(),
      uncertaintyBudget: { list: UncertaintyShareShape() },
      "limit?": "pressureDifference",
      "conformanceProbability?": "number",
      smallestProvableDrop: "pressureDifference",
      noLeakAbove: "pressureDifference",
      "leakRate?": EstimateOfThroughputShape(),
      "nitrogenLoss?": EstimateOfMassFlowShape(),
      "smallestProvableLeak?": "throughput",
      "refrigerantLoss?": RefrigerantEquivalentShape(),
      "refrigerantLossAtMost?": RefrigerantEquivalentShape(),
      "furtherHold?": "duration",
      corrected: { list: CorrectedPointShape() },
      "misfit?": "number",
    },
    docs: {
      "": "The verdict on a log.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a pass.",
      sources: "Where the rules and figures come from.",
      correctedDrop:
        "What is missing at the temperature of the last reading; negative when there is too much.",
      uncertaintyBudget: "What makes up the uncertainty, the largest first.",
      limit: "The limit as a drop over this test: as stated, at most 1 % of the fill pressure.",
      conformanceProbability: "Probability that the true drop keeps the stated limit.",
      smallestProvableDrop:
        "The smallest drop that would have proven a leak: the expanded uncertainty. A leak of just this size shows in half of all tests, one of twice the size in almost all.",
      noLeakAbove: "No drop above this was seen: the drop, or 0, plus the expanded uncertainty.",
      leakRate:
        "Throughput V·d/Δt at the gas temperature of the last reading, where volume and time are known.",
      nitrogenLoss: "The same leak as mass of nitrogen, from the density of the real gas.",
      smallestProvableLeak:
        "The smallest leak that this test could have proven, where volume and time are known.",
      refrigerantLoss:
        "The leak as refrigerant in service, where refrigerant was stated: of the drop that was found. Order of magnitude.",
      refrigerantLossAtMost:
        "The same of the largest drop that is not excluded, PressureTestAssessment.noLeakAbove.",
      furtherHold:
        "How much longer to hold until the evidence decides, if the drop goes on as it did; absent when it decides already, or when waiting up to a week would not help.",
      corrected: "The course corrected to the last temperature, at most 100 points.",
      misfit:
        "Scatter around the fit against what the stated errors explain; well above 1, the log holds more than one leak and one temperature explain. Absent for two readings, which have none.",
    },
  }));
}

export function TestReadingShape(): Shape {
  return once(TestReadingShape, () => ({
    type: "TestReading",
    fields: {
      pressure: { either: ["absolutePressure", "gaugePressure"] },
      temperature: { either: ["temperature", { list: "temperature" }] },
      "elapsed?": "duration",
      "atmosphere?": "absolutePressure",
    },
    docs: {
      "": "One reading of a pressure test.",
      pressure: "What the gauge or absolute sensor shows; the same kind in all readings of a test.",
      temperature: "Gas temperature, per zone where zones differ, −40 °C to 70 °C.",
      elapsed: "Time since the test began; needed for a leak rate.",
      atmosphere:
        "Station pressure at this reading, where it differs from the one given for the whole test.",
    },
  }));
}

export function PressureTestShape(): Shape {
  return once(PressureTestShape, () => ({
    type: "PressureTest",
    fields: {
      instruments: TestInstrumentsShape(),
      atmosphere: "absolutePressure",
      "volume?": { either: ["volume", { list: "volume" }] },
      "zoneShares?": { list: "ratio" },
      "criterion?": { either: [DropLimitShape(), LeakLimitShape()] },
      "confidence?": "number",
      "refrigerant?": RefrigerantInServiceShape(),
      "sinceFill?": "duration",
      "elsewhere?": GasElsewhereShape(),
      "required?": TestRequirementShape(),
      "wall?": { words: ["rigid", "copper", "aluminum"] },
      start: TestReadingShape(),
      end: TestReadingShape(),
    },
    docs: {
      "": "A test judged by two readings.",
      instruments: "What the test was read with.",
      atmosphere: "Station pressure; of every reading that does not state its own.",
      volume:
        "Inner volume of the whole, or one per zone in the order of the temperatures; needed for a leak rate.",
      zoneShares:
        "Share of the gas at each thermometer, in the order of the temperatures and together 1, where their volumes are not known one by one; counts as an estimate, each good to 15 % of itself (common practice, no source).",
      criterion: "The stated limit; without one nothing passes.",
      confidence:
        "One-sided confidence of the decision, 0.8 to below 1; 0.977 (k = 2) when left out.",
      refrigerant:
        "What the machine will hold, for the leak in grams a year; needs volume and time.",
      sinceFill:
        "Time from the end of the fill to the first reading; without it the gas counts as warm from the fill, unless the thermometer is stated to follow it.",
      elsewhere:
        "What part of the gas lies where no thermometer is; without it up to 0.7 of it may, unless every zone has one or the thermometer is stated to follow the gas.",
      required:
        "What manual and nameplate require; a test that does not meet it cannot pass. An empty object says that it was checked elsewhere.",
      wall: "What the walls are made of; when left out they count as rigid, with copper's expansion as uncertainty.",
      start: "First reading, some time after the fill: the gas has to have come to rest.",
      end: "Last reading.",
    },
  }));
}

export function TwoReadingAssessmentShape(): Shape {
  return once(TwoReadingAssessmentShape, () => ({
    type: "TwoReadingAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["leak", "unexplained-rise"] },
      reasons: { list: PressureTestStatementShape() },
      assumptions: { list: PressureTestStatementShape() },
      cautions: { list: LogAssessmentCautionsItemShape() },
      actions: { list: PressureTestStatementShape() },
      sources: { list: CitationShape() },
      correctedDrop: EstimateOfPressureDifferenceShape(),
      uncertaintyBudget: { list: UncertaintyShareShape() },
      "limit?": "pressureDifference",
      "conformanceProbability?": "number",
      smallestProvableDrop: "pressureDifference",
      noLeakAbove: "pressureDifference",
      "leakRate?": EstimateOfThroughputShape(),
      "nitrogenLoss?": EstimateOfMassFlowShape(),
      "smallestProvableLeak?": "throughput",
      "refrigerantLoss?": RefrigerantEquivalentShape(),
      "refrigerantLossAtMost?": RefrigerantEquivalentShape(),
      "furtherHold?": "duration",
      expectedPressure: { either: ["absolutePressure", "gaugePressure"] },
    },
    docs: {
      "": "The verdict on two readings, with the pressure that the second should have shown.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a pass.",
      sources: "Where the rules and figures come from.",
      correctedDrop:
        "What is missing at the temperature of the last reading; negative when there is too much.",
      uncertaintyBudget: "What makes up the uncertainty, the largest first.",
      limit: "The limit as a drop over this test: as stated, at most 1 % of the fill pressure.",
      conformanceProbability: "Probability that the true drop keeps the stated limit.",
      smallestProvableDrop:
        "The smallest drop that would have proven a leak: the expanded uncertainty. A leak of just this size shows in half of all tests, one of twice the size in almost all.",
      noLeakAbove: "No drop above this was seen: the drop, or 0, plus the expanded uncertainty.",
      leakRate:
        "Throughput V·d/Δt at the gas temperature of the last reading, where volume and time are known.",
      nitrogenLoss: "The same leak as mass of nitrogen, from the density of the real gas.",
      smallestProvableLeak:
        "The smallest leak that this test could have proven, where volume and time are known.",
      refrigerantLoss:
        "The leak as refrigerant in service, where refrigerant was stated: of the drop that was found. Order of magnitude.",
      refrigerantLossAtMost:
        "The same of the largest drop that is not excluded, PressureTestAssessment.noLeakAbove.",
      furtherHold:
        "How much longer to hold until the evidence decides, if the drop goes on as it did; absent when it decides already, or when waiting up to a week would not help.",
      expectedPressure:
        "What the last reading would have been without a leak, of its kind and in its unit.",
    },
  }));
}

export function AbsoluteChangeShape(): Shape {
  return once(AbsoluteChangeShape, () => ({
    type: "AbsoluteChange",
    fields: {
      temperature: { either: ["temperature", { list: "temperature" }] },
      laterTemperature: { either: ["temperature", { list: "temperature" }] },
      "volume?": { either: ["volume", { list: "volume" }] },
      "wall?": { words: ["rigid", "copper", "aluminum"] },
      pressure: "absolutePressure",
    },
    docs: {
      "": "A reading of an absolute sensor.",
      temperature: "Gas temperature at the first reading; one per zone where zones differ.",
      laterTemperature: "Gas temperature at the later reading.",
      volume:
        "Inner volumes of the zones, needed when temperatures are given per zone; only their ratio counts.",
      wall: "What the walls are made of, for their own expansion; rigid when left out.",
      pressure: "What the sensor shows first, above vacuum.",
    },
  }));
}

export function EitherChangeShape(): Shape {
  return once(EitherChangeShape, () => ({
    type: "EitherChange",
    fields: {
      temperature: { either: ["temperature", { list: "temperature" }] },
      atmosphere: "absolutePressure",
      "volume?": { either: ["volume", { list: "volume" }] },
      "wall?": { words: ["rigid", "copper", "aluminum"] },
      "laterAtmosphere?": "absolutePressure",
      laterTemperature: { either: ["temperature", { list: "temperature" }] },
      pressure: { either: ["absolutePressure", "gaugePressure"] },
    },
    docs: {
      "": "A reading of either kind, with the atmosphere for the case that it is a gauge's.",
      temperature: "Gas temperature at the first reading; one per zone where zones differ.",
      atmosphere: "Station pressure at the first reading.",
      volume:
        "Inner volumes of the zones, needed when temperatures are given per zone; only their ratio counts.",
      wall: "What the walls are made of, for their own expansion; rigid when left out.",
      laterAtmosphere:
        "Station pressure at the later reading; the same when left out. A gauge with a sealed reference does not see it: leave it out.",
      laterTemperature: "Gas temperature at the later reading.",
      pressure: "What the gauge or the sensor shows first.",
    },
  }));
}

export function HoldPlanShape(): Shape {
  return once(HoldPlanShape, () => ({
    type: "HoldPlan",
    fields: {
      atmosphere: "absolutePressure",
      "volume?": { either: ["volume", { list: "volume" }] },
      "wall?": { words: ["rigid", "copper", "aluminum"] },
      instruments: TestInstrumentsShape(),
      "zoneShares?": { list: "ratio" },
      "confidence?": "number",
      "sinceFill?": "duration",
      "elsewhere?": GasElsewhereShape(),
      leakRate: "throughput",
      pressure: { either: ["absolutePressure", "gaugePressure"] },
      temperature: { either: ["temperature", { list: "temperature" }] },
      laterTemperature: { either: ["temperature", { list: "temperature" }] },
    },
    docs: {
      "": "What the hold is planned for.",
      atmosphere: "Station pressure; of every reading that does not state its own.",
      volume:
        "Inner volume of the whole, or one per zone in the order of the temperatures; needed for a leak rate.",
      wall: "What the walls are made of; when left out they count as rigid, with copper's expansion as uncertainty.",
      instruments: "What the test was read with.",
      zoneShares:
        "Share of the gas at each thermometer, in the order of the temperatures and together 1, where their volumes are not known one by one; counts as an estimate, each good to 15 % of itself (common practice, no source).",
      confidence:
        "One-sided confidence of the decision, 0.8 to below 1; 0.977 (k = 2) when left out.",
      sinceFill:
        "Time from the end of the fill to the first reading; without it the gas counts as warm from the fill, unless the thermometer is stated to follow it.",
      elsewhere:
        "What part of the gas lies where no thermometer is; without it up to 0.7 of it may, unless every zone has one or the thermometer is stated to follow the gas.",
      leakRate: "The smallest leak that should show, as nitrogen at the test pressure, above 0.",
      pressure: "Pressure after the fill.",
      temperature: "Gas temperature at the start.",
      laterTemperature:
        "Gas temperature to expect at the end; common errors of gauge, thermometer and walls count by how far it is from the first.",
    },
  }));
}

export function HoldTimeShape(): Shape {
  return once(HoldTimeShape, () => ({
    type: "HoldTime",
    fields: {
      shortest: "duration",
      recommended: "duration",
      provableDrop: "pressureDifference",
      uncertaintyBudget: { list: UncertaintyShareShape() },
    },
    docs: {
      "": "The hold.",
      shortest:
        "A leak of this size then loses as much as the expanded uncertainty: half of such leaks show, and a tight system has an even chance to pass this limit.",
      recommended: "Twice that: nearly every such leak shows and nearly every tight system passes.",
      provableDrop: "The drop that can be proven.",
      uncertaintyBudget: "What makes it up, the largest first.",
    },
  }));
}

export function NitrogenCylinderShape(): Shape {
  return once(NitrogenCylinderShape, () => ({
    type: "NitrogenCylinder",
    fields: { waterVolume: "volume", pressure: "gaugePressure", "temperature?": "temperature" },
    docs: {
      "": "A nitrogen cylinder.",
      waterVolume:
        "Water volume, as stamped on it, at most 150 L: not the volume of gas at 1 atm by which cylinders are sold. A 40 ft³ cylinder holds about 8 L of water.",
      pressure: "What its gauge shows now, up to 31 MPa absolute.",
      temperature: "Temperature of the cylinder; that of the system when left out.",
    },
  }));
}

export function NitrogenNeededInputShape(): Shape {
  return once(NitrogenNeededInputShape, () => ({
    type: "NitrogenNeededInput",
    fields: {
      volume: "volume",
      pressure: "gaugePressure",
      "startPressure?": "gaugePressure",
      temperature: "temperature",
      atmosphere: "absolutePressure",
      "fills?": "number",
      cylinder: NitrogenCylinderShape(),
    },
  }));
}

export function NitrogenNeedShape(): Shape {
  return once(NitrogenNeedShape, () => ({
    type: "NitrogenNeed",
    fields: {
      mass: "mass",
      enough: "flag",
      fills: "number",
      "cylinderPressureAfter?": "gaugePressure",
      cautions: { list: LogAssessmentCautionsItemShape() },
    },
    docs: {
      "": "What a fill takes.",
      mass: "Nitrogen for all fills, purges not counted.",
      enough: "Whether the cylinder can give it while it stays above the test pressure.",
      fills: "How many fills it can give in all.",
      cylinderPressureAfter:
        "What the cylinder shows afterwards; absent when it does not hold enough.",
      cautions: "What can hurt someone.",
    },
  }));
}

export function PressurizationPlanInputShape(): Shape {
  return once(PressurizationPlanInputShape, () => ({
    type: "PressurizationPlanInput",
    fields: {
      limits: { list: MarkedLimitShape() },
      "wanted?": "gaugePressure",
      temperature: "temperature",
      warmest: "temperature",
      atmosphere: "absolutePressure",
      "pattern?": { words: ["three stages", "ten percent"] },
    },
  }));
}

export function StageShape(): Shape {
  return once(StageShape, () => ({
    type: "Stage",
    fields: {
      pressure: "gaugePressure",
      "hold?": "duration",
      check: { words: ["bubble solution on every joint", "watch and listen", "test"] },
    },
    docs: {
      "": "One stage.",
      pressure: "Pressure to raise to.",
      hold: "How long to hold before the next; the last stage is the test itself and has none.",
      check: "What to do there.",
    },
  }));
}

export function PressurizationPlanShape(): Shape {
  return once(PressurizationPlanShape, () => ({
    type: "PressurizationPlan",
    fields: {
      stages: { list: StageShape() },
      fillPressure: "gaugePressure",
      pressureWhenWarm: "gaugePressure",
      lowestLimit: MarkedLimitShape(),
      lowered: "flag",
      reasons: { list: PressureTestStatementShape() },
      assumptions: { list: PressureTestStatementShape() },
      cautions: { list: LogAssessmentCautionsItemShape() },
      sources: { list: CitationShape() },
    },
    docs: {
      "": "The plan.",
      stages: "The stages in order; the last is the test pressure.",
      fillPressure: "Where to stop filling at the present temperature.",
      pressureWhenWarm: "What that becomes at the warmest.",
      lowestLimit: "The lowest marked limit, which governs.",
      lowered: "Whether the wanted pressure had to be lowered.",
      reasons: "Why.",
      assumptions: "What was assumed.",
      cautions: "What can hurt someone.",
      sources: "Where the rules come from.",
    },
  }));
}

export function RefrigerantEquivalentInputShape(): Shape {
  return once(RefrigerantEquivalentInputShape, () => ({
    type: "RefrigerantEquivalentInput",
    fields: {
      nitrogenLeak: "throughput",
      testPressure: "absolutePressure",
      refrigerant: LeakGasShape(),
      refrigerantPressure: "absolutePressure",
      outside: "absolutePressure",
      temperature: "temperature",
    },
  }));
}

export function LeakingGasShape(): Shape {
  return once(LeakingGasShape, () => ({
    type: "LeakingGas",
    fields: {
      pressure: "absolutePressure",
      outside: "absolutePressure",
      gramsPerMole: "number",
      viscosity: "number",
    },
    docs: {
      "": "A gas on its way through a leak.",
      pressure: "Pressure inside, absolute.",
      outside: "Pressure outside, absolute; below the one inside.",
      gramsPerMole: "Molar mass in g/mol, above 0.",
      viscosity: "Viscosity in µPa·s, above 0.",
    },
  }));
}

export function ScaleLeakInputShape(): Shape {
  return once(ScaleLeakInputShape, () => ({
    type: "ScaleLeakInput",
    fields: { throughput: "throughput", from: LeakingGasShape(), to: LeakingGasShape() },
  }));
}

export function ScaledLeakShape(): Shape {
  return once(ScaledLeakShape, () => ({
    type: "ScaledLeak",
    fields: { viscous: "throughput", molecular: "throughput" },
    docs: {
      "": "The same leak under both laws; the truth of a small leak lies between them or near one of them.",
      viscous: "Laminar: prefer it for what a pressure test can show, above about 1e-7 Pa·m³/s.",
      molecular:
        "Molecular: for leaks below about 1e-8 Pa·m³/s, and often for real ones up to 1e-5.",
    },
  }));
}

export function CompareTemperatureRulesInputShape(): Shape {
  return once(CompareTemperatureRulesInputShape, () => ({
    type: "CompareTemperatureRulesInput",
    fields: {
      pressure: "gaugePressure",
      temperature: "temperature",
      laterTemperature: "temperature",
      atmosphere: "absolutePressure",
    },
  }));
}

export function TemperatureRuleShape(): Shape {
  return once(TemperatureRuleShape, () => ({
    type: "TemperatureRule",
    words: [
      "ideal gas, absolute pressure",
      "ideal gas, gauge pressure",
      "0.3 psi per °F",
      "2 kPa per °C",
      "0.01 MPa per °C",
      "no correction",
    ],
  }));
}

export function RuleComparisonShape(): Shape {
  return once(RuleComparisonShape, () => ({
    type: "RuleComparison",
    fields: {
      rule: TemperatureRuleShape(),
      expected: "gaugePressure",
      error: "pressureDifference",
      source: CitationShape(),
    },
    docs: {
      "": "What a rule says beside the truth.",
      rule: "The rule.",
      expected: "What it expects at the later temperature.",
      error:
        "Its expectation less that of real nitrogen: positive makes a tight system look leaking, negative hides a leak.",
      source: "Where it is printed.",
    },
  }));
}

export function TubeRunShape(): Shape {
  return once(TubeRunShape, () => ({
    type: "TubeRun",
    fields: { insideDiameter: "length", length: "length" },
    docs: {
      "": "A run of tube.",
      insideDiameter:
        "Bore, not the nominal outside diameter: wall taken off twice. A tolerance of 0.003 in on the wall of 1/4 in tube is 6 % of its volume.",
      length: "Developed length, above 0.",
    },
  }));
}

export function TestVolumeInputShape(): Shape {
  return once(TestVolumeInputShape, () => ({
    type: "TestVolumeInput",
    fields: { "tubes?": { list: TubeRunShape() }, "vessels?": { list: "volume" } },
  }));
}

export function MassFlowOfThroughputInputShape(): Shape {
  return once(MassFlowOfThroughputInputShape, () => ({
    type: "MassFlowOfThroughputInput",
    fields: { throughput: "throughput", temperature: "temperature", gramsPerMole: "number" },
  }));
}

export function ThroughputOfDropInputShape(): Shape {
  return once(ThroughputOfDropInputShape, () => ({
    type: "ThroughputOfDropInput",
    fields: { volume: "volume", drop: "pressureDifference", elapsed: "duration" },
  }));
}
