// Which shapes have the types of operating-check?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import {
  EstimateOfTemperatureDifferenceShape,
  EstimateOfTemperatureShape,
  InstrumentOfGaugePressureShape,
} from "./assessment.shapes.ts";
import {
  AssessSubcoolingInputInput1InstrumentsShape,
  CitationShape,
  RefrigerantsAdjustToTargetValuesShape,
  RefrigerantsBelowSaturationValuesShape,
  RefrigerantsCorrectTheChargeValuesShape,
  RefrigerantsLargestUncertaintyValuesShape,
  RefrigerantsLooksLikeOtherSideValuesShape,
  RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
  RefrigerantsRangeOfValuesShape,
  RefrigerantsSaturationUncertaintyValuesShape,
  RefrigerantsTargetOutOfReachValuesShape,
  RefrigerantsToleranceReachesSaturationValuesShape,
  RefrigerantsToleranceWideValuesShape,
  RefrigerantsUseBetterProbeValuesShape,
  RefrigerantsWithinToleranceValuesShape,
} from "./refrigerants.shapes.ts";

export const ServicePortsInputShape: Shape = {
  type: "ServicePortsInput",
  fields: {
    mode: { words: ["cooling", "heating"] },
    expansion: { words: ["outdoor-unit", "evaporating-unit"] },
  },
  about: { mode: "What the unit does.", expansion: "Where the refrigerant expands." },
};

export const ServicePortRoleShape: Shape = {
  type: "ServicePortRole",
  fields: {
    side: { words: ["low", "high"] },
    shows: { words: ["suction", "discharge", "liquid", "expanded"] },
  },
  says: "What a port shows.",
  about: { side: "Side of the compressor that it belongs to.", shows: "What is behind it." },
};

export const OperatingCheckSuperheatBelowFloorValuesShape: Shape = {
  type: "OperatingCheckSuperheatBelowFloorValues",
  fields: { superheat: "temperatureDifference", least: "temperatureDifference" },
};

export const OperatingCheckSuperheatNearFloorValuesShape: Shape = {
  type: "OperatingCheckSuperheatNearFloorValues",
  fields: { superheat: "temperatureDifference", least: "temperatureDifference" },
};

export const OperatingCheckGaugeSetSuitsValuesShape: Shape = {
  type: "OperatingCheckGaugeSetSuitsValues",
  fields: { pressure: "gaugePressure" },
};

export const OperatingCheckAboveHoseRatingValuesShape: Shape = {
  type: "OperatingCheckAboveHoseRatingValues",
  fields: { pressure: "gaugePressure", limit: "gaugePressure" },
};

export const OperatingCheckDestroysGaugeValuesShape: Shape = {
  type: "OperatingCheckDestroysGaugeValues",
  fields: { pressure: "gaugePressure", limit: "gaugePressure" },
};

export const OperatingCheckBeyondScaleValuesShape: Shape = {
  type: "OperatingCheckBeyondScaleValues",
  fields: { pressure: "gaugePressure", limit: "gaugePressure" },
};

export const OperatingCheckWithinWindowValuesShape: Shape = {
  type: "OperatingCheckWithinWindowValues",
  fields: { pressure: "gaugePressure", from: "gaugePressure", to: "gaugePressure" },
};

export const OperatingCheckOtherSideValuesShape: Shape = {
  type: "OperatingCheckOtherSideValues",
  fields: {
    pressure: "gaugePressure",
    from: "gaugePressure",
    to: "gaugePressure",
    side: { words: ["operating-check.side.low", "operating-check.side.high"] },
  },
};

export const OperatingCheckApproachRangeWideValuesShape: Shape = {
  type: "OperatingCheckApproachRangeWideValues",
  fields: {
    low: "temperatureDifference",
    high: "temperatureDifference",
    widest: "temperatureDifference",
  },
};

export const OperatingCheckApproachAtRestValuesShape: Shape = {
  type: "OperatingCheckApproachAtRestValues",
  fields: {
    low: "temperatureDifference",
    high: "temperatureDifference",
    least: "temperatureDifference",
  },
};

export const OperatingCheckReadNearFloorAgainValuesShape: Shape = {
  type: "OperatingCheckReadNearFloorAgainValues",
  fields: { least: "temperatureDifference" },
};

export const OperatingCheckUseRatedHoseValuesShape: Shape = {
  type: "OperatingCheckUseRatedHoseValues",
  fields: { pressure: "gaugePressure" },
};

export const OperatingCheckUseLargerGaugeValuesShape: Shape = {
  type: "OperatingCheckUseLargerGaugeValues",
  fields: { pressure: "gaugePressure" },
};

export const OperatingCheckUseBetterGaugeValuesShape: Shape = {
  type: "OperatingCheckUseBetterGaugeValues",
  fields: { needed: "pressureDifference" },
};

export const GaugeCautionShape: Shape = {
  type: "GaugeCaution",
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
    "operating-check.by-superheat": { fields: {} },
    "operating-check.by-subcooling": { fields: {} },
    "operating-check.no-target": { fields: {} },
    "operating-check.no-target-in-heating": { fields: {} },
    "operating-check.superheat-below-floor": OperatingCheckSuperheatBelowFloorValuesShape,
    "operating-check.superheat-near-floor": OperatingCheckSuperheatNearFloorValuesShape,
    "operating-check.gauge-set-suits": OperatingCheckGaugeSetSuitsValuesShape,
    "operating-check.above-hose-rating": OperatingCheckAboveHoseRatingValuesShape,
    "operating-check.destroys-gauge": OperatingCheckDestroysGaugeValuesShape,
    "operating-check.beyond-scale": OperatingCheckBeyondScaleValuesShape,
    "operating-check.within-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.below-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.above-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.other-side": OperatingCheckOtherSideValuesShape,
    "operating-check.too-close-to-call": OperatingCheckWithinWindowValuesShape,
    "operating-check.approach-range-wide": OperatingCheckApproachRangeWideValuesShape,
    "operating-check.approach-at-rest": OperatingCheckApproachAtRestValuesShape,
    "operating-check.as-printed": { fields: {} },
    "operating-check.steady-full-speed": { fields: {} },
    "operating-check.approaches-as-stated": { fields: {} },
    "operating-check.expands-outdoors": { fields: {} },
    "operating-check.exact-gauge": { fields: {} },
    "operating-check.mode-first": { fields: {} },
    "operating-check.hoses-lose-refrigerant": { fields: {} },
    "operating-check.not-the-charge": { fields: {} },
    "operating-check.weigh-the-charge": { fields: {} },
    "operating-check.stop-liquid": { fields: {} },
    "operating-check.read-near-floor-again": OperatingCheckReadNearFloorAgainValuesShape,
    "operating-check.use-rated-hose": OperatingCheckUseRatedHoseValuesShape,
    "operating-check.use-larger-gauge": OperatingCheckUseLargerGaugeValuesShape,
    "operating-check.check-mode-and-port": { fields: {} },
    "operating-check.find-the-cause": { fields: {} },
    "operating-check.use-better-gauge": OperatingCheckUseBetterGaugeValuesShape,
    "operating-check.read-again-later": { fields: {} },
    "operating-check.state-approach": { fields: {} },
  },
  with: { "kind?": { words: ["finding", "danger", "governing"] } },
};

export const ServicePortsShape: Shape = {
  type: "ServicePorts",
  fields: {
    vapor: ServicePortRoleShape,
    liquid: ServicePortRoleShape,
    commonSuction: ServicePortRoleShape,
    cautions: { list: GaugeCautionShape },
  },
  says: "What the ports of a split unit show.",
  about: {
    vapor: "Port of the larger valve: vapor line. On most small splits it is the only one.",
    liquid: "Port of the smaller valve: liquid line.",
    commonSuction: "The gauge port at the compressor's suction that some ducted heat pumps have.",
    cautions: "What can hurt someone.",
  },
};

export const ChargeByGaugeInputShape: Shape = {
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
    instruments: AssessSubcoolingInputInput1InstrumentsShape,
    "confidence?": "number",
  },
  says: "A reading of pressure and line temperature on a system, and what it should be.",
  about: {
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
};

export const ChargeByGaugeAssessmentReasonsItemShape: Shape = {
  type: "ChargeByGaugeAssessmentReasonsItem",
  statements: {
    "refrigerants.table-needs-atmosphere": { fields: {} },
    "refrigerants.number-of-rows": { fields: {} },
    "refrigerants.check-designation": { fields: {} },
    "refrigerants.range-of": RefrigerantsRangeOfValuesShape,
    "refrigerants.gauge-needs-atmosphere": { fields: {} },
    "refrigerants.within-tolerance": RefrigerantsWithinToleranceValuesShape,
    "refrigerants.above-tolerance": RefrigerantsWithinToleranceValuesShape,
    "refrigerants.below-tolerance": RefrigerantsWithinToleranceValuesShape,
    "refrigerants.below-saturation": RefrigerantsBelowSaturationValuesShape,
    "refrigerants.too-close-to-call": RefrigerantsWithinToleranceValuesShape,
    "refrigerants.largest-uncertainty": RefrigerantsLargestUncertaintyValuesShape,
    "refrigerants.closer-than-the-model": { fields: {} },
    "refrigerants.target-out-of-reach": RefrigerantsTargetOutOfReachValuesShape,
    "refrigerants.tolerance-wide": RefrigerantsToleranceWideValuesShape,
    "refrigerants.tolerance-reaches-saturation": RefrigerantsToleranceReachesSaturationValuesShape,
    "refrigerants.steady": { fields: {} },
    "refrigerants.nominal-composition": { fields: {} },
    "refrigerants.saturation-uncertainty": RefrigerantsSaturationUncertaintyValuesShape,
    "refrigerants.exact-atmosphere": { fields: {} },
    "refrigerants.looks-like-other-side": RefrigerantsLooksLikeOtherSideValuesShape,
    "refrigerants.only-where-the-manual-charges-by-it":
      RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "refrigerants.check-airflow-first": { fields: {} },
    "refrigerants.correct-the-charge": RefrigerantsCorrectTheChargeValuesShape,
    "refrigerants.check-both-readings": { fields: {} },
    "refrigerants.use-better-probe": RefrigerantsUseBetterProbeValuesShape,
    "refrigerants.adjust-to-target": RefrigerantsAdjustToTargetValuesShape,
    "refrigerants.state-target": RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "refrigerants.state-tolerance": RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "operating-check.by-superheat": { fields: {} },
    "operating-check.by-subcooling": { fields: {} },
    "operating-check.no-target": { fields: {} },
    "operating-check.no-target-in-heating": { fields: {} },
    "operating-check.superheat-below-floor": OperatingCheckSuperheatBelowFloorValuesShape,
    "operating-check.superheat-near-floor": OperatingCheckSuperheatNearFloorValuesShape,
    "operating-check.gauge-set-suits": OperatingCheckGaugeSetSuitsValuesShape,
    "operating-check.above-hose-rating": OperatingCheckAboveHoseRatingValuesShape,
    "operating-check.destroys-gauge": OperatingCheckDestroysGaugeValuesShape,
    "operating-check.beyond-scale": OperatingCheckBeyondScaleValuesShape,
    "operating-check.within-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.below-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.above-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.other-side": OperatingCheckOtherSideValuesShape,
    "operating-check.too-close-to-call": OperatingCheckWithinWindowValuesShape,
    "operating-check.approach-range-wide": OperatingCheckApproachRangeWideValuesShape,
    "operating-check.approach-at-rest": OperatingCheckApproachAtRestValuesShape,
    "operating-check.as-printed": { fields: {} },
    "operating-check.steady-full-speed": { fields: {} },
    "operating-check.approaches-as-stated": { fields: {} },
    "operating-check.expands-outdoors": { fields: {} },
    "operating-check.exact-gauge": { fields: {} },
    "operating-check.mode-first": { fields: {} },
    "operating-check.hoses-lose-refrigerant": { fields: {} },
    "operating-check.not-the-charge": { fields: {} },
    "operating-check.weigh-the-charge": { fields: {} },
    "operating-check.stop-liquid": { fields: {} },
    "operating-check.read-near-floor-again": OperatingCheckReadNearFloorAgainValuesShape,
    "operating-check.use-rated-hose": OperatingCheckUseRatedHoseValuesShape,
    "operating-check.use-larger-gauge": OperatingCheckUseLargerGaugeValuesShape,
    "operating-check.check-mode-and-port": { fields: {} },
    "operating-check.find-the-cause": { fields: {} },
    "operating-check.use-better-gauge": OperatingCheckUseBetterGaugeValuesShape,
    "operating-check.read-again-later": { fields: {} },
    "operating-check.state-approach": { fields: {} },
  },
};

export const ChargeByGaugeAssessmentCautionsItemShape: Shape = {
  type: "ChargeByGaugeAssessmentCautionsItem",
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
    "refrigerants.table-needs-atmosphere": { fields: {} },
    "refrigerants.number-of-rows": { fields: {} },
    "refrigerants.check-designation": { fields: {} },
    "refrigerants.range-of": RefrigerantsRangeOfValuesShape,
    "refrigerants.gauge-needs-atmosphere": { fields: {} },
    "refrigerants.within-tolerance": RefrigerantsWithinToleranceValuesShape,
    "refrigerants.above-tolerance": RefrigerantsWithinToleranceValuesShape,
    "refrigerants.below-tolerance": RefrigerantsWithinToleranceValuesShape,
    "refrigerants.below-saturation": RefrigerantsBelowSaturationValuesShape,
    "refrigerants.too-close-to-call": RefrigerantsWithinToleranceValuesShape,
    "refrigerants.largest-uncertainty": RefrigerantsLargestUncertaintyValuesShape,
    "refrigerants.closer-than-the-model": { fields: {} },
    "refrigerants.target-out-of-reach": RefrigerantsTargetOutOfReachValuesShape,
    "refrigerants.tolerance-wide": RefrigerantsToleranceWideValuesShape,
    "refrigerants.tolerance-reaches-saturation": RefrigerantsToleranceReachesSaturationValuesShape,
    "refrigerants.steady": { fields: {} },
    "refrigerants.nominal-composition": { fields: {} },
    "refrigerants.saturation-uncertainty": RefrigerantsSaturationUncertaintyValuesShape,
    "refrigerants.exact-atmosphere": { fields: {} },
    "refrigerants.looks-like-other-side": RefrigerantsLooksLikeOtherSideValuesShape,
    "refrigerants.only-where-the-manual-charges-by-it":
      RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "refrigerants.check-airflow-first": { fields: {} },
    "refrigerants.correct-the-charge": RefrigerantsCorrectTheChargeValuesShape,
    "refrigerants.check-both-readings": { fields: {} },
    "refrigerants.use-better-probe": RefrigerantsUseBetterProbeValuesShape,
    "refrigerants.adjust-to-target": RefrigerantsAdjustToTargetValuesShape,
    "refrigerants.state-target": RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "refrigerants.state-tolerance": RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "operating-check.by-superheat": { fields: {} },
    "operating-check.by-subcooling": { fields: {} },
    "operating-check.no-target": { fields: {} },
    "operating-check.no-target-in-heating": { fields: {} },
    "operating-check.superheat-below-floor": OperatingCheckSuperheatBelowFloorValuesShape,
    "operating-check.superheat-near-floor": OperatingCheckSuperheatNearFloorValuesShape,
    "operating-check.gauge-set-suits": OperatingCheckGaugeSetSuitsValuesShape,
    "operating-check.above-hose-rating": OperatingCheckAboveHoseRatingValuesShape,
    "operating-check.destroys-gauge": OperatingCheckDestroysGaugeValuesShape,
    "operating-check.beyond-scale": OperatingCheckBeyondScaleValuesShape,
    "operating-check.within-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.below-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.above-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.other-side": OperatingCheckOtherSideValuesShape,
    "operating-check.too-close-to-call": OperatingCheckWithinWindowValuesShape,
    "operating-check.approach-range-wide": OperatingCheckApproachRangeWideValuesShape,
    "operating-check.approach-at-rest": OperatingCheckApproachAtRestValuesShape,
    "operating-check.as-printed": { fields: {} },
    "operating-check.steady-full-speed": { fields: {} },
    "operating-check.approaches-as-stated": { fields: {} },
    "operating-check.expands-outdoors": { fields: {} },
    "operating-check.exact-gauge": { fields: {} },
    "operating-check.mode-first": { fields: {} },
    "operating-check.hoses-lose-refrigerant": { fields: {} },
    "operating-check.not-the-charge": { fields: {} },
    "operating-check.weigh-the-charge": { fields: {} },
    "operating-check.stop-liquid": { fields: {} },
    "operating-check.read-near-floor-again": OperatingCheckReadNearFloorAgainValuesShape,
    "operating-check.use-rated-hose": OperatingCheckUseRatedHoseValuesShape,
    "operating-check.use-larger-gauge": OperatingCheckUseLargerGaugeValuesShape,
    "operating-check.check-mode-and-port": { fields: {} },
    "operating-check.find-the-cause": { fields: {} },
    "operating-check.use-better-gauge": OperatingCheckUseBetterGaugeValuesShape,
    "operating-check.read-again-later": { fields: {} },
    "operating-check.state-approach": { fields: {} },
  },
  with: { "kind?": { words: ["finding", "danger", "governing"] } },
};

export const ChargeByGaugeAssessmentShape: Shape = {
  type: "ChargeByGaugeAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["low", "high", "liquid-to-compressor"] },
    reasons: { list: ChargeByGaugeAssessmentReasonsItemShape },
    assumptions: { list: ChargeByGaugeAssessmentReasonsItemShape },
    cautions: { list: ChargeByGaugeAssessmentCautionsItemShape },
    "actions?": { list: ChargeByGaugeAssessmentReasonsItemShape },
    sources: { list: CitationShape },
    method: { words: ["superheat", "subcooling", "weigh"] },
    "result?": EstimateOfTemperatureDifferenceShape,
    "saturationTemperature?": EstimateOfTemperatureShape,
  },
  says: "The verdict on a charge by gauge.",
  about: {
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
};

export const AssessGaugeSetInputShape: Shape = {
  type: "AssessGaugeSetInput",
  fields: {
    fullScale: "gaugePressure",
    "retardTo?": "gaugePressure",
    hoseWorkingPressure: "gaugePressure",
    highestPressure: "gaugePressure",
  },
  about: {
    fullScale: "End of the graduated scale, above 0.",
    retardTo:
      "Where the retarded part of the dial ends, not below the full scale: it survives, it does not measure.",
    hoseWorkingPressure: "Working pressure printed on the hose, above 0; not the burst pressure.",
    highestPressure: "The highest pressure that can come.",
  },
};

export const OperatingCheckStatementShape: Shape = {
  type: "OperatingCheckStatement",
  statements: {
    "operating-check.by-superheat": { fields: {} },
    "operating-check.by-subcooling": { fields: {} },
    "operating-check.no-target": { fields: {} },
    "operating-check.no-target-in-heating": { fields: {} },
    "operating-check.superheat-below-floor": OperatingCheckSuperheatBelowFloorValuesShape,
    "operating-check.superheat-near-floor": OperatingCheckSuperheatNearFloorValuesShape,
    "operating-check.gauge-set-suits": OperatingCheckGaugeSetSuitsValuesShape,
    "operating-check.above-hose-rating": OperatingCheckAboveHoseRatingValuesShape,
    "operating-check.destroys-gauge": OperatingCheckDestroysGaugeValuesShape,
    "operating-check.beyond-scale": OperatingCheckBeyondScaleValuesShape,
    "operating-check.within-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.below-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.above-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.other-side": OperatingCheckOtherSideValuesShape,
    "operating-check.too-close-to-call": OperatingCheckWithinWindowValuesShape,
    "operating-check.approach-range-wide": OperatingCheckApproachRangeWideValuesShape,
    "operating-check.approach-at-rest": OperatingCheckApproachAtRestValuesShape,
    "operating-check.as-printed": { fields: {} },
    "operating-check.steady-full-speed": { fields: {} },
    "operating-check.approaches-as-stated": { fields: {} },
    "operating-check.expands-outdoors": { fields: {} },
    "operating-check.exact-gauge": { fields: {} },
    "operating-check.mode-first": { fields: {} },
    "operating-check.hoses-lose-refrigerant": { fields: {} },
    "operating-check.not-the-charge": { fields: {} },
    "operating-check.weigh-the-charge": { fields: {} },
    "operating-check.stop-liquid": { fields: {} },
    "operating-check.read-near-floor-again": OperatingCheckReadNearFloorAgainValuesShape,
    "operating-check.use-rated-hose": OperatingCheckUseRatedHoseValuesShape,
    "operating-check.use-larger-gauge": OperatingCheckUseLargerGaugeValuesShape,
    "operating-check.check-mode-and-port": { fields: {} },
    "operating-check.find-the-cause": { fields: {} },
    "operating-check.use-better-gauge": OperatingCheckUseBetterGaugeValuesShape,
    "operating-check.read-again-later": { fields: {} },
    "operating-check.state-approach": { fields: {} },
  },
};

export const AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItemShape: Shape = {
  type: "AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItem",
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
    "operating-check.by-superheat": { fields: {} },
    "operating-check.by-subcooling": { fields: {} },
    "operating-check.no-target": { fields: {} },
    "operating-check.no-target-in-heating": { fields: {} },
    "operating-check.superheat-below-floor": OperatingCheckSuperheatBelowFloorValuesShape,
    "operating-check.superheat-near-floor": OperatingCheckSuperheatNearFloorValuesShape,
    "operating-check.gauge-set-suits": OperatingCheckGaugeSetSuitsValuesShape,
    "operating-check.above-hose-rating": OperatingCheckAboveHoseRatingValuesShape,
    "operating-check.destroys-gauge": OperatingCheckDestroysGaugeValuesShape,
    "operating-check.beyond-scale": OperatingCheckBeyondScaleValuesShape,
    "operating-check.within-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.below-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.above-window": OperatingCheckWithinWindowValuesShape,
    "operating-check.other-side": OperatingCheckOtherSideValuesShape,
    "operating-check.too-close-to-call": OperatingCheckWithinWindowValuesShape,
    "operating-check.approach-range-wide": OperatingCheckApproachRangeWideValuesShape,
    "operating-check.approach-at-rest": OperatingCheckApproachAtRestValuesShape,
    "operating-check.as-printed": { fields: {} },
    "operating-check.steady-full-speed": { fields: {} },
    "operating-check.approaches-as-stated": { fields: {} },
    "operating-check.expands-outdoors": { fields: {} },
    "operating-check.exact-gauge": { fields: {} },
    "operating-check.mode-first": { fields: {} },
    "operating-check.hoses-lose-refrigerant": { fields: {} },
    "operating-check.not-the-charge": { fields: {} },
    "operating-check.weigh-the-charge": { fields: {} },
    "operating-check.stop-liquid": { fields: {} },
    "operating-check.read-near-floor-again": OperatingCheckReadNearFloorAgainValuesShape,
    "operating-check.use-rated-hose": OperatingCheckUseRatedHoseValuesShape,
    "operating-check.use-larger-gauge": OperatingCheckUseLargerGaugeValuesShape,
    "operating-check.check-mode-and-port": { fields: {} },
    "operating-check.find-the-cause": { fields: {} },
    "operating-check.use-better-gauge": OperatingCheckUseBetterGaugeValuesShape,
    "operating-check.read-again-later": { fields: {} },
    "operating-check.state-approach": { fields: {} },
  },
  with: { "kind?": { words: ["finding", "danger", "governing"] } },
};

export const AssessmentOfGaugeSetCauseOperatingCheckStatementShape: Shape = {
  type: "AssessmentOfGaugeSetCauseOperatingCheckStatement",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["hose-rating", "gauge-scale", "retard-only"] },
    reasons: { list: OperatingCheckStatementShape },
    assumptions: { list: OperatingCheckStatementShape },
    cautions: { list: AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItemShape },
    "actions?": { list: OperatingCheckStatementShape },
    sources: { list: CitationShape },
  },
  says: "The verdict that every module returns, to which it adds its own quantities. Deeply frozen.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
  },
};

export const ApproachRangeShape: Shape = {
  type: "ApproachRange",
  fields: { low: "temperatureDifference", high: "temperatureDifference" },
  says: "Smallest and largest difference between the air that enters a coil and the saturation temperature in it, both 0 to 60 K.",
  about: { low: "Smallest difference.", high: "Largest difference." },
};

export const ServiceReadingShape: Shape = {
  type: "ServiceReading",
  fields: {
    refrigerant: byDesignation,
    mode: { words: ["cooling", "heating"] },
    indoorTemperature: "temperature",
    outdoorTemperature: "temperature",
    evaporatorApproach: ApproachRangeShape,
    condenserApproach: ApproachRangeShape,
    atmosphere: "absolutePressure",
    pressure: "gaugePressure",
    "port?": { words: ["liquid", "vapor", "commonSuction"] },
    "expansion?": { words: ["outdoor-unit", "evaporating-unit"] },
    "gauge?": InstrumentOfGaugePressureShape,
    "confidence?": "number",
  },
  says: "A gauge reading on a running unit.",
  about: {
    refrigerant: "The refrigerant, of any kind.",
    mode: "What the unit does.",
    indoorTemperature: "Air that enters the indoor coil.",
    outdoorTemperature: "Air that enters the outdoor coil.",
    evaporatorApproach: "How far the evaporating temperature lies below the air at the evaporator.",
    condenserApproach: "How far the condensing temperature lies above the air at the condenser.",
    atmosphere: "Atmospheric pressure on site: gauges read against it.",
    pressure: "What the gauge shows.",
    port: "The port that it is on; the larger one, vapor, when left out.",
    expansion: "Where the refrigerant expands; in the outdoor unit when left out.",
    gauge: "What is known of the gauge; counted as exact when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const SaturationWindowShape: Shape = {
  type: "SaturationWindow",
  fields: {
    from: "gaugePressure",
    to: "gaugePressure",
    fromTemperature: "temperature",
    toTemperature: "temperature",
  },
  says: "A window of pressure and the saturation temperatures behind it.",
  about: {
    from: "Lowest pressure to be expected.",
    to: "Highest pressure to be expected.",
    fromTemperature: "Saturation temperature at the lowest pressure.",
    toTemperature: "Saturation temperature at the highest pressure.",
  },
};

export const ExpectedPressuresShape: Shape = {
  type: "ExpectedPressures",
  fields: {
    low: SaturationWindowShape,
    high: SaturationWindowShape,
    vaporPort: { words: ["low", "high"] },
    assumptions: { list: OperatingCheckStatementShape },
    cautions: { list: GaugeCautionShape },
    sources: { list: CitationShape },
  },
  says: "What to expect on both sides of a running unit.",
  about: {
    low: "Low side: dew pressure in the evaporator.",
    high: "High side: bubble pressure in the condenser.",
    vaporPort: "Side that the larger (vapor) port shows in this mode.",
    assumptions: "What was assumed.",
    cautions: "What can hurt someone.",
    sources: "Where it stands.",
  },
};

export const ServiceReadingAssessmentShape: Shape = {
  type: "ServiceReadingAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["below-window", "above-window", "other-side"] },
    reasons: { list: OperatingCheckStatementShape },
    assumptions: { list: OperatingCheckStatementShape },
    cautions: { list: AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItemShape },
    "actions?": { list: OperatingCheckStatementShape },
    sources: { list: CitationShape },
    expected: ExpectedPressuresShape,
    side: { words: ["low", "high"] },
  },
  says: "The verdict on a gauge reading.",
  about: {
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
};

export const ChargedSystemShape: Shape = {
  type: "ChargedSystem",
  fields: {
    meteringDevice: { words: ["orifice", "thermostatic-valve", "electronic-valve"] },
    compressor: { words: ["single-speed", "inverter"] },
    mode: { words: ["cooling", "heating"] },
  },
  says: "What sets the flow of refrigerant, and how the compressor runs.",
  about: {
    meteringDevice: "Fixed orifice or capillary, thermostatic valve, or electronic valve.",
    compressor: "One speed, or an inverter.",
    mode: "What the unit does.",
  },
};

export const ChargingMethodShape: Shape = {
  type: "ChargingMethod",
  fields: {
    method: { words: ["superheat", "subcooling", "weigh"] },
    reason: OperatingCheckStatementShape,
  },
  says: "How a charge is checked.",
  about: { method: "By superheat, by subcooling, or by weight alone.", reason: "Why." },
};

export const RunningUnitShape: Shape = {
  type: "RunningUnit",
  fields: {
    refrigerant: byDesignation,
    mode: { words: ["cooling", "heating"] },
    indoorTemperature: "temperature",
    outdoorTemperature: "temperature",
    evaporatorApproach: ApproachRangeShape,
    condenserApproach: ApproachRangeShape,
    atmosphere: "absolutePressure",
  },
  says: "A running unit and the air around it.",
  about: {
    refrigerant: "The refrigerant, of any kind.",
    mode: "What the unit does.",
    indoorTemperature: "Air that enters the indoor coil.",
    outdoorTemperature: "Air that enters the outdoor coil.",
    evaporatorApproach: "How far the evaporating temperature lies below the air at the evaporator.",
    condenserApproach: "How far the condensing temperature lies above the air at the condenser.",
    atmosphere: "Atmospheric pressure on site: gauges read against it.",
  },
};

export const SuperheatChartShape: Shape = {
  type: "SuperheatChart",
  fields: {
    outdoorDryBulbs: { list: "temperature" },
    indoorWetBulbs: { list: "temperature" },
    targets: { list: { list: { either: ["temperatureDifference", { words: ["-"] }] } } },
  },
  says: "The chart of a manual: a row for each outdoor dry bulb, a column for each indoor wet bulb, a dash where the unit must not be charged by superheat.",
  about: {
    outdoorDryBulbs: "Outdoor dry bulbs, rising, at least two.",
    indoorWetBulbs: "Indoor wet bulbs, rising, at least two.",
    targets: "A row for each outdoor dry bulb, in it a cell for each wet bulb.",
  },
};

export const TargetSuperheatInputShape: Shape = {
  type: "TargetSuperheatInput",
  fields: {
    outdoorDryBulb: "temperature",
    indoorWetBulb: "temperature",
    "chart?": SuperheatChartShape,
  },
  about: {
    outdoorDryBulb: "Air that enters the outdoor coil.",
    indoorWetBulb: "Wet bulb of the air that enters the indoor coil.",
    chart: "The chart in the unit's manual.",
  },
};

export const ChargeToTargetShape: Shape = {
  type: "ChargeToTarget",
  fields: {
    instruction: { words: ["charge-to-target"] },
    target: "temperatureDifference",
    tolerance: "temperatureDifference",
  },
  about: {
    instruction: "Charge to the target.",
    target: "The superheat to charge to.",
    tolerance: "± 5 °F.",
  },
};

export const DoNotChargeBySuperheatShape: Shape = {
  type: "DoNotChargeBySuperheat",
  fields: { instruction: { words: ["do-not-charge-by-superheat"] } },
  about: { instruction: "The chart has a dash here." },
};

export const UsualPressuresInputShape: Shape = {
  type: "UsualPressuresInput",
  fields: { refrigerant: { words: ["R410A"] }, mode: { words: ["cooling", "heating"] } },
  about: { refrigerant: "Nothing is held for others.", mode: "What the unit does." },
};

export const UsualPressuresResultShape: Shape = {
  type: "UsualPressuresResult",
  fields: { from: "gaugePressure", to: "gaugePressure" },
  about: { from: "Lower end.", to: "Upper end." },
};
