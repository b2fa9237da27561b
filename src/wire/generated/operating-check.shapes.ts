// Which shapes have the types of operating-check?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import {
  EstimateOfTemperatureDifferenceShape,
  EstimateOfTemperatureShape,
  InstrumentOfGaugePressureShape,
  SafetyStatements,
} from "./assessment.shapes.ts";
import {
  AssessSubcoolingInputInput1InstrumentsShape,
  CitationShape,
  RefrigerantsStatements,
} from "./refrigerants.shapes.ts";

export function ServicePortsInputShape(): Shape {
  return once(ServicePortsInputShape, () => ({
    type: "ServicePortsInput",
    fields: {
      mode: { words: ["cooling", "heating"] },
      expansion: { words: ["outdoor-unit", "evaporating-unit"] },
    },
    docs: { mode: "What the unit does.", expansion: "Where the refrigerant expands." },
  }));
}

export function ServicePortRoleShape(): Shape {
  return once(ServicePortRoleShape, () => ({
    type: "ServicePortRole",
    fields: {
      side: { words: ["low", "high"] },
      shows: { words: ["suction", "discharge", "liquid", "expanded"] },
    },
    docs: {
      "": "What a port shows.",
      side: "Side of the compressor that it belongs to.",
      shows: "What is behind it.",
    },
  }));
}

export function OperatingCheckSideShape(): Shape {
  return once(OperatingCheckSideShape, () => ({
    type: "OperatingCheckSide",
    words: ["operating-check.side.low", "operating-check.side.high"],
  }));
}

export function OperatingCheckStatements(): StatementTable {
  return once(OperatingCheckStatements, () => ({
    "operating-check.above-hose-rating": { pressure: "gaugePressure", limit: "gaugePressure" },
    "operating-check.above-window": {
      pressure: "gaugePressure",
      from: "gaugePressure",
      to: "gaugePressure",
    },
    "operating-check.approach-at-rest": {
      low: "temperatureDifference",
      high: "temperatureDifference",
      least: "temperatureDifference",
    },
    "operating-check.approach-range-wide": {
      low: "temperatureDifference",
      high: "temperatureDifference",
      widest: "temperatureDifference",
    },
    "operating-check.approaches-as-stated": {},
    "operating-check.as-printed": {},
    "operating-check.below-window": {
      pressure: "gaugePressure",
      from: "gaugePressure",
      to: "gaugePressure",
    },
    "operating-check.beyond-scale": { pressure: "gaugePressure", limit: "gaugePressure" },
    "operating-check.by-subcooling": {},
    "operating-check.by-superheat": {},
    "operating-check.check-mode-and-port": {},
    "operating-check.destroys-gauge": { pressure: "gaugePressure", limit: "gaugePressure" },
    "operating-check.exact-gauge": {},
    "operating-check.expands-outdoors": {},
    "operating-check.find-the-cause": {},
    "operating-check.gauge-set-suits": { pressure: "gaugePressure" },
    "operating-check.hoses-lose-refrigerant": {},
    "operating-check.mode-first": {},
    "operating-check.no-target": {},
    "operating-check.no-target-in-heating": {},
    "operating-check.not-the-charge": {},
    "operating-check.other-side": {
      pressure: "gaugePressure",
      from: "gaugePressure",
      to: "gaugePressure",
      side: OperatingCheckSideShape(),
    },
    "operating-check.read-again-later": {},
    "operating-check.read-near-floor-again": { least: "temperatureDifference" },
    "operating-check.state-approach": {},
    "operating-check.steady-full-speed": {},
    "operating-check.stop-liquid": {},
    "operating-check.superheat-below-floor": {
      superheat: "temperatureDifference",
      least: "temperatureDifference",
    },
    "operating-check.superheat-near-floor": {
      superheat: "temperatureDifference",
      least: "temperatureDifference",
    },
    "operating-check.too-close-to-call": {
      pressure: "gaugePressure",
      from: "gaugePressure",
      to: "gaugePressure",
    },
    "operating-check.use-better-gauge": { needed: "pressureDifference" },
    "operating-check.use-larger-gauge": { pressure: "gaugePressure" },
    "operating-check.use-rated-hose": { pressure: "gaugePressure" },
    "operating-check.weigh-the-charge": {},
    "operating-check.within-window": {
      pressure: "gaugePressure",
      from: "gaugePressure",
      to: "gaugePressure",
    },
  }));
}

export function GaugeCautionShape(): Shape {
  return once(GaugeCautionShape, () => ({
    type: "GaugeCaution",
    statements: [SafetyStatements(), OperatingCheckStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function ServicePortsShape(): Shape {
  return once(ServicePortsShape, () => ({
    type: "ServicePorts",
    fields: {
      vapor: ServicePortRoleShape(),
      liquid: ServicePortRoleShape(),
      commonSuction: ServicePortRoleShape(),
      cautions: { list: GaugeCautionShape() },
    },
    docs: {
      "": "What the ports of a split unit show.",
      vapor: "Port of the larger valve: vapor line. On most small splits it is the only one.",
      liquid: "Port of the smaller valve: liquid line.",
      commonSuction: "The gauge port at the compressor's suction that some ducted heat pumps have.",
      cautions: "What can hurt someone.",
    },
  }));
}

export function ChargeByGaugeInputShape(): Shape {
  return once(ChargeByGaugeInputShape, () => ({
    type: "ChargeByGaugeInput",
    fields: {
      meteringDevice: { words: ["orifice", "thermostatic-valve", "electronic-valve"] },
      compressor: { words: ["single-speed", "inverter"] },
      mode: { words: ["cooling", "heating"] },
      refrigerant: byDesignation,
      pressure: "gaugePressure",
      lineTemperature: "temperature",
      atmosphere: "absolutePressure",
      "pressureDrop?": "pressureDifference",
      "target?": "temperatureDifference",
      "tolerance?": "temperatureDifference",
      instruments: AssessSubcoolingInputInput1InstrumentsShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A reading of pressure and line temperature on a system, and what it should be.",
      meteringDevice: "Fixed orifice or capillary, thermostatic valve, or electronic valve.",
      compressor: "One speed, or an inverter.",
      mode: "What the unit does.",
      refrigerant: "The refrigerant.",
      pressure: "Gauge reading: suction for an orifice, liquid or discharge for a valve.",
      lineTemperature: "Line temperature: suction line for an orifice, liquid line for a valve.",
      atmosphere: "Atmospheric pressure on site.",
      pressureDrop:
        "Pressure lost from the gauge down the flow to the thermometer, 0 or more: that of the coil when the gauge is on the discharge. For subcooling only: superheat is read with both at the suction port.",
      target:
        "What superheat or subcooling should be, from nameplate, manual or targetSuperheat. Not needed where the charge is weighed.",
      tolerance: "How far from it is still right, above 0. Not needed where the charge is weighed.",
      instruments: "What the two probes can do.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function ChargeByGaugeAssessmentReasonsItemShape(): Shape {
  return once(ChargeByGaugeAssessmentReasonsItemShape, () => ({
    type: "ChargeByGaugeAssessmentReasonsItem",
    statements: [RefrigerantsStatements(), OperatingCheckStatements()],
  }));
}

export function ChargeByGaugeAssessmentCautionsItemShape(): Shape {
  return once(ChargeByGaugeAssessmentCautionsItemShape, () => ({
    type: "ChargeByGaugeAssessmentCautionsItem",
    statements: [SafetyStatements(), RefrigerantsStatements(), OperatingCheckStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function ChargeByGaugeAssessmentShape(): Shape {
  return once(ChargeByGaugeAssessmentShape, () => ({
    type: "ChargeByGaugeAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["low", "high", "liquid-to-compressor"] },
      reasons: { list: ChargeByGaugeAssessmentReasonsItemShape() },
      assumptions: { list: ChargeByGaugeAssessmentReasonsItemShape() },
      cautions: { list: ChargeByGaugeAssessmentCautionsItemShape() },
      "actions?": { list: ChargeByGaugeAssessmentReasonsItemShape() },
      sources: { list: CitationShape() },
      method: { words: ["superheat", "subcooling", "weigh"] },
      "result?": EstimateOfTemperatureDifferenceShape(),
      "saturationTemperature?": EstimateOfTemperatureShape(),
    },
    docs: {
      "": "The verdict on a charge by gauge.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      method: "What the charge is checked by.",
      result: "Superheat or subcooling; missing where the charge is weighed.",
      saturationTemperature:
        "Dew or bubble temperature at the thermometer; missing where the charge is weighed.",
    },
  }));
}

export function AssessGaugeSetInputShape(): Shape {
  return once(AssessGaugeSetInputShape, () => ({
    type: "AssessGaugeSetInput",
    fields: {
      fullScale: "gaugePressure",
      "retardTo?": "gaugePressure",
      hoseWorkingPressure: "gaugePressure",
      highestPressure: "gaugePressure",
    },
    docs: {
      fullScale: "End of the graduated scale, above 0.",
      retardTo:
        "Where the retarded part of the dial ends, not below the full scale: it survives, it does not measure.",
      hoseWorkingPressure: "Working pressure printed on the hose, above 0; not the burst pressure.",
      highestPressure: "The highest pressure that can come.",
    },
  }));
}

export function OperatingCheckStatementShape(): Shape {
  return once(OperatingCheckStatementShape, () => ({
    type: "OperatingCheckStatement",
    statements: [OperatingCheckStatements()],
  }));
}

export function AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItemShape(): Shape {
  return once(AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItemShape, () => ({
    type: "AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItem",
    statements: [SafetyStatements(), OperatingCheckStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function AssessmentOfGaugeSetCauseOperatingCheckStatementShape(): Shape {
  return once(AssessmentOfGaugeSetCauseOperatingCheckStatementShape, () => ({
    type: "AssessmentOfGaugeSetCauseOperatingCheckStatement",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["hose-rating", "gauge-scale", "retard-only"] },
      reasons: { list: OperatingCheckStatementShape() },
      assumptions: { list: OperatingCheckStatementShape() },
      cautions: { list: AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItemShape() },
      "actions?": { list: OperatingCheckStatementShape() },
      sources: { list: CitationShape() },
    },
    docs: {
      "": "The verdict that every module returns, to which it adds its own quantities. Deeply frozen.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
    },
  }));
}

export function ApproachRangeShape(): Shape {
  return once(ApproachRangeShape, () => ({
    type: "ApproachRange",
    fields: { low: "temperatureDifference", high: "temperatureDifference" },
    docs: {
      "": "Smallest and largest difference between the air that enters a coil and the saturation temperature in it, both 0 to 60 K.",
      low: "Smallest difference.",
      high: "Largest difference.",
    },
  }));
}

export function ServiceReadingShape(): Shape {
  return once(ServiceReadingShape, () => ({
    type: "ServiceReading",
    fields: {
      refrigerant: byDesignation,
      mode: { words: ["cooling", "heating"] },
      indoorTemperature: "temperature",
      outdoorTemperature: "temperature",
      evaporatorApproach: ApproachRangeShape(),
      condenserApproach: ApproachRangeShape(),
      atmosphere: "absolutePressure",
      pressure: "gaugePressure",
      "port?": { words: ["liquid", "vapor", "commonSuction"] },
      "expansion?": { words: ["outdoor-unit", "evaporating-unit"] },
      "gauge?": InstrumentOfGaugePressureShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A gauge reading on a running unit.",
      refrigerant: "The refrigerant, of any kind.",
      mode: "What the unit does.",
      indoorTemperature: "Air that enters the indoor coil.",
      outdoorTemperature: "Air that enters the outdoor coil.",
      evaporatorApproach:
        "How far the evaporating temperature lies below the air at the evaporator.",
      condenserApproach: "How far the condensing temperature lies above the air at the condenser.",
      atmosphere: "Atmospheric pressure on site: gauges read against it.",
      pressure: "What the gauge shows.",
      port: "The port that it is on; the larger one, vapor, when left out.",
      expansion: "Where the refrigerant expands; in the outdoor unit when left out.",
      gauge: "What is known of the gauge; counted as exact when left out.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function SaturationWindowShape(): Shape {
  return once(SaturationWindowShape, () => ({
    type: "SaturationWindow",
    fields: {
      from: "gaugePressure",
      to: "gaugePressure",
      fromTemperature: "temperature",
      toTemperature: "temperature",
    },
    docs: {
      "": "A window of pressure and the saturation temperatures behind it.",
      from: "Lowest pressure to be expected.",
      to: "Highest pressure to be expected.",
      fromTemperature: "Saturation temperature at the lowest pressure.",
      toTemperature: "Saturation temperature at the highest pressure.",
    },
  }));
}

export function ExpectedPressuresShape(): Shape {
  return once(ExpectedPressuresShape, () => ({
    type: "ExpectedPressures",
    fields: {
      low: SaturationWindowShape(),
      high: SaturationWindowShape(),
      vaporPort: { words: ["low", "high"] },
      assumptions: { list: OperatingCheckStatementShape() },
      cautions: { list: GaugeCautionShape() },
      sources: { list: CitationShape() },
    },
    docs: {
      "": "What to expect on both sides of a running unit.",
      low: "Low side: dew pressure in the evaporator.",
      high: "High side: bubble pressure in the condenser.",
      vaporPort: "Side that the larger (vapor) port shows in this mode.",
      assumptions: "What was assumed.",
      cautions: "What can hurt someone.",
      sources: "Where it stands.",
    },
  }));
}

export function ServiceReadingAssessmentShape(): Shape {
  return once(ServiceReadingAssessmentShape, () => ({
    type: "ServiceReadingAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["below-window", "above-window", "other-side"] },
      reasons: { list: OperatingCheckStatementShape() },
      assumptions: { list: OperatingCheckStatementShape() },
      cautions: { list: AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItemShape() },
      "actions?": { list: OperatingCheckStatementShape() },
      sources: { list: CitationShape() },
      expected: ExpectedPressuresShape(),
      side: { words: ["low", "high"] },
    },
    docs: {
      "": "The verdict on a gauge reading.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      expected: "What was to be expected.",
      side: "The side that the port shows in this mode.",
    },
  }));
}

export function ChargedSystemShape(): Shape {
  return once(ChargedSystemShape, () => ({
    type: "ChargedSystem",
    fields: {
      meteringDevice: { words: ["orifice", "thermostatic-valve", "electronic-valve"] },
      compressor: { words: ["single-speed", "inverter"] },
      mode: { words: ["cooling", "heating"] },
    },
    docs: {
      "": "What sets the flow of refrigerant, and how the compressor runs.",
      meteringDevice: "Fixed orifice or capillary, thermostatic valve, or electronic valve.",
      compressor: "One speed, or an inverter.",
      mode: "What the unit does.",
    },
  }));
}

export function ChargingMethodShape(): Shape {
  return once(ChargingMethodShape, () => ({
    type: "ChargingMethod",
    fields: {
      method: { words: ["superheat", "subcooling", "weigh"] },
      reason: OperatingCheckStatementShape(),
    },
    docs: {
      "": "How a charge is checked.",
      method: "By superheat, by subcooling, or by weight alone.",
      reason: "Why.",
    },
  }));
}

export function RunningUnitShape(): Shape {
  return once(RunningUnitShape, () => ({
    type: "RunningUnit",
    fields: {
      refrigerant: byDesignation,
      mode: { words: ["cooling", "heating"] },
      indoorTemperature: "temperature",
      outdoorTemperature: "temperature",
      evaporatorApproach: ApproachRangeShape(),
      condenserApproach: ApproachRangeShape(),
      atmosphere: "absolutePressure",
    },
    docs: {
      "": "A running unit and the air around it.",
      refrigerant: "The refrigerant, of any kind.",
      mode: "What the unit does.",
      indoorTemperature: "Air that enters the indoor coil.",
      outdoorTemperature: "Air that enters the outdoor coil.",
      evaporatorApproach:
        "How far the evaporating temperature lies below the air at the evaporator.",
      condenserApproach: "How far the condensing temperature lies above the air at the condenser.",
      atmosphere: "Atmospheric pressure on site: gauges read against it.",
    },
  }));
}

export function SuperheatChartShape(): Shape {
  return once(SuperheatChartShape, () => ({
    type: "SuperheatChart",
    fields: {
      outdoorDryBulbs: { list: "temperature" },
      indoorWetBulbs: { list: "temperature" },
      targets: { list: { list: { either: ["temperatureDifference", { words: ["-"] }] } } },
    },
    docs: {
      "": "The chart of a manual: a row for each outdoor dry bulb, a column for each indoor wet bulb, a dash where the unit must not be charged by superheat.",
      outdoorDryBulbs: "Outdoor dry bulbs, rising, at least two.",
      indoorWetBulbs: "Indoor wet bulbs, rising, at least two.",
      targets: "A row for each outdoor dry bulb, in it a cell for each wet bulb.",
    },
  }));
}

export function TargetSuperheatInputShape(): Shape {
  return once(TargetSuperheatInputShape, () => ({
    type: "TargetSuperheatInput",
    fields: {
      outdoorDryBulb: "temperature",
      indoorWetBulb: "temperature",
      "chart?": SuperheatChartShape(),
    },
    docs: {
      outdoorDryBulb: "Air that enters the outdoor coil.",
      indoorWetBulb: "Wet bulb of the air that enters the indoor coil.",
      chart: "The chart in the unit's manual.",
    },
  }));
}

export function ChargeToTargetShape(): Shape {
  return once(ChargeToTargetShape, () => ({
    type: "ChargeToTarget",
    fields: {
      instruction: { words: ["charge-to-target"] },
      target: "temperatureDifference",
      tolerance: "temperatureDifference",
    },
    docs: {
      instruction: "Charge to the target.",
      target: "The superheat to charge to.",
      tolerance: "± 5 °F.",
    },
  }));
}

export function DoNotChargeBySuperheatShape(): Shape {
  return once(DoNotChargeBySuperheatShape, () => ({
    type: "DoNotChargeBySuperheat",
    fields: { instruction: { words: ["do-not-charge-by-superheat"] } },
    docs: { instruction: "The chart has a dash here." },
  }));
}

export function UsualPressuresInputShape(): Shape {
  return once(UsualPressuresInputShape, () => ({
    type: "UsualPressuresInput",
    fields: { refrigerant: { words: ["R410A"] }, mode: { words: ["cooling", "heating"] } },
    docs: { refrigerant: "Nothing is held for others.", mode: "What the unit does." },
  }));
}

export function UsualPressuresResultShape(): Shape {
  return once(UsualPressuresResultShape, () => ({
    type: "UsualPressuresResult",
    fields: { from: "gaugePressure", to: "gaugePressure" },
    docs: { from: "Lower end.", to: "Upper end." },
  }));
}
