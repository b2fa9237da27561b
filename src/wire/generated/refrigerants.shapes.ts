// Which shapes have the types of refrigerants?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import {
  CitationShape,
  EstimateOfTemperatureDifferenceShape,
  EstimateOfTemperatureShape,
  InstrumentOfAbsolutePressureShape,
  InstrumentOfGaugePressureShape,
  InstrumentOfTemperatureShape,
  VerbatimShape,
} from "./assessment.shapes.ts";

export const MeanCoilTemperatureInputReading1Shape: Shape = {
  type: "MeanCoilTemperatureInputReading1",
  fields: {
    pressure: "absolutePressure",
    "atmosphere?": "absolutePressure",
    "dewWeight?": "number",
  },
  about: {
    pressure: "Absolute pressure.",
    atmosphere: "Not needed; ignored when the pressure is absolute.",
  },
};

export const MeanCoilTemperatureInputReading2Shape: Shape = {
  type: "MeanCoilTemperatureInputReading2",
  fields: { pressure: "gaugePressure", atmosphere: "absolutePressure", "dewWeight?": "number" },
  about: {
    pressure: "Gauge pressure.",
    atmosphere:
      "The air around the gauge: standardAtmosphere, atmosphereAtAltitude(…) or a barometer.",
  },
};

export const MeanCoilTemperatureInputShape: Shape = {
  type: "MeanCoilTemperatureInput",
  fields: {
    refrigerant: byDesignation,
    reading: {
      either: [MeanCoilTemperatureInputReading1Shape, MeanCoilTemperatureInputReading2Shape],
    },
  },
};

export const TemperatureGlideInputReading1Shape: Shape = {
  type: "TemperatureGlideInputReading1",
  fields: { pressure: "absolutePressure", "atmosphere?": "absolutePressure" },
  about: {
    pressure: "Absolute pressure.",
    atmosphere: "Not needed; ignored when the pressure is absolute.",
  },
};

export const TemperatureGlideInputReading2Shape: Shape = {
  type: "TemperatureGlideInputReading2",
  fields: { pressure: "gaugePressure", atmosphere: "absolutePressure" },
  about: {
    pressure: "Gauge pressure.",
    atmosphere:
      "The air around the gauge: standardAtmosphere, atmosphereAtAltitude(…) or a barometer.",
  },
};

export const TemperatureGlideInputShape: Shape = {
  type: "TemperatureGlideInput",
  fields: {
    refrigerant: byDesignation,
    reading: { either: [TemperatureGlideInputReading1Shape, TemperatureGlideInputReading2Shape] },
  },
};

export const AssessSubcoolingInputInput1InstrumentsShape: Shape = {
  type: "AssessSubcoolingInputInput1Instruments",
  fields: {
    pressure: InstrumentOfGaugePressureShape,
    temperature: InstrumentOfTemperatureShape,
    "atmosphere?": InstrumentOfAbsolutePressureShape,
  },
};

export const AssessSubcoolingInputInput1Shape: Shape = {
  type: "AssessSubcoolingInputInput1",
  fields: {
    pressure: "absolutePressure",
    "atmosphere?": "absolutePressure",
    lineTemperature: "temperature",
    target: "temperatureDifference",
    tolerance: "temperatureDifference",
    instruments: AssessSubcoolingInputInput1InstrumentsShape,
    "confidence?": "number",
  },
  about: {
    pressure: "Absolute pressure.",
    atmosphere: "Not needed; ignored when the pressure is absolute.",
    lineTemperature:
      "temperature of the line, measured on clean, insulated metal beside the gauge port.",
    target:
      "The superheat or subcooling that the nameplate or the manufacturer's chart asks for, 0 or more.",
    tolerance:
      "How far from the target is still right, above 0; manufacturers often say ±3 °F to ±5 °F.",
    instruments: "What the two probes can do; atmosphere where the barometer is uncertain too.",
    confidence: "How sure a pass or a fail has to be, 0.5 to below 1; 0.95 when left out.",
  },
};

export const AssessSubcoolingInputInput2Shape: Shape = {
  type: "AssessSubcoolingInputInput2",
  fields: {
    pressure: "gaugePressure",
    atmosphere: "absolutePressure",
    lineTemperature: "temperature",
    target: "temperatureDifference",
    tolerance: "temperatureDifference",
    instruments: AssessSubcoolingInputInput1InstrumentsShape,
    "confidence?": "number",
  },
  about: {
    pressure: "Gauge pressure.",
    atmosphere:
      "The air around the gauge: standardAtmosphere, atmosphereAtAltitude(…) or a barometer.",
    lineTemperature:
      "temperature of the line, measured on clean, insulated metal beside the gauge port.",
    target:
      "The superheat or subcooling that the nameplate or the manufacturer's chart asks for, 0 or more.",
    tolerance:
      "How far from the target is still right, above 0; manufacturers often say ±3 °F to ±5 °F.",
    instruments: "What the two probes can do; atmosphere where the barometer is uncertain too.",
    confidence: "How sure a pass or a fail has to be, 0.5 to below 1; 0.95 when left out.",
  },
};

export const AssessSubcoolingInputShape: Shape = {
  type: "AssessSubcoolingInput",
  fields: {
    refrigerant: byDesignation,
    input: { either: [AssessSubcoolingInputInput1Shape, AssessSubcoolingInputInput2Shape] },
  },
};

export const RefrigerantsTableNeedsAtmosphereValuesShape: Shape = {
  type: "RefrigerantsTableNeedsAtmosphereValues",
  fields: {},
};

export const RefrigerantsTableNeedsAtmosphereShape: Shape = {
  type: "RefrigerantsTableNeedsAtmosphere",
  fields: {
    code: { words: ["refrigerants.table-needs-atmosphere"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsNumberOfRowsShape: Shape = {
  type: "RefrigerantsNumberOfRows",
  fields: {
    code: { words: ["refrigerants.number-of-rows"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsRangeOfValuesShape: Shape = {
  type: "RefrigerantsRangeOfValues",
  fields: { refrigerant: VerbatimShape },
};

export const RefrigerantsRangeOfShape: Shape = {
  type: "RefrigerantsRangeOf",
  fields: {
    code: { words: ["refrigerants.range-of"] },
    values: RefrigerantsRangeOfValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsGaugeNeedsAtmosphereShape: Shape = {
  type: "RefrigerantsGaugeNeedsAtmosphere",
  fields: {
    code: { words: ["refrigerants.gauge-needs-atmosphere"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsWithinToleranceValuesShape: Shape = {
  type: "RefrigerantsWithinToleranceValues",
  fields: {
    target: "temperatureDifference",
    tolerance: "temperatureDifference",
    value: "temperatureDifference",
    uncertainty: "temperatureDifference",
    figure: { words: ["refrigerants.figure.superheat", "refrigerants.figure.subcooling"] },
  },
};

export const RefrigerantsWithinToleranceShape: Shape = {
  type: "RefrigerantsWithinTolerance",
  fields: {
    code: { words: ["refrigerants.within-tolerance"] },
    values: RefrigerantsWithinToleranceValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsAboveToleranceShape: Shape = {
  type: "RefrigerantsAboveTolerance",
  fields: {
    code: { words: ["refrigerants.above-tolerance"] },
    values: RefrigerantsWithinToleranceValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsBelowToleranceShape: Shape = {
  type: "RefrigerantsBelowTolerance",
  fields: {
    code: { words: ["refrigerants.below-tolerance"] },
    values: RefrigerantsWithinToleranceValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsBelowSaturationValuesShape: Shape = {
  type: "RefrigerantsBelowSaturationValues",
  fields: {
    value: "temperatureDifference",
    uncertainty: "temperatureDifference",
    figure: { words: ["refrigerants.figure.superheat", "refrigerants.figure.subcooling"] },
  },
};

export const RefrigerantsBelowSaturationShape: Shape = {
  type: "RefrigerantsBelowSaturation",
  fields: {
    code: { words: ["refrigerants.below-saturation"] },
    values: RefrigerantsBelowSaturationValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsTooCloseToCallShape: Shape = {
  type: "RefrigerantsTooCloseToCall",
  fields: {
    code: { words: ["refrigerants.too-close-to-call"] },
    values: RefrigerantsWithinToleranceValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsLargestUncertaintyValuesShape: Shape = {
  type: "RefrigerantsLargestUncertaintyValues",
  fields: {
    probe: { words: ["refrigerants.probe.temperature", "refrigerants.probe.pressure"] },
    now: "temperatureDifference",
  },
};

export const RefrigerantsLargestUncertaintyShape: Shape = {
  type: "RefrigerantsLargestUncertainty",
  fields: {
    code: { words: ["refrigerants.largest-uncertainty"] },
    values: RefrigerantsLargestUncertaintyValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsCloserThanTheModelShape: Shape = {
  type: "RefrigerantsCloserThanTheModel",
  fields: {
    code: { words: ["refrigerants.closer-than-the-model"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsTargetOutOfReachValuesShape: Shape = {
  type: "RefrigerantsTargetOutOfReachValues",
  fields: {
    figure: { words: ["refrigerants.figure.superheat", "refrigerants.figure.subcooling"] },
    target: "temperatureDifference",
    most: "temperatureDifference",
  },
};

export const RefrigerantsTargetOutOfReachShape: Shape = {
  type: "RefrigerantsTargetOutOfReach",
  fields: {
    code: { words: ["refrigerants.target-out-of-reach"] },
    values: RefrigerantsTargetOutOfReachValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsToleranceWideValuesShape: Shape = {
  type: "RefrigerantsToleranceWideValues",
  fields: {
    tolerance: "temperatureDifference",
    target: "temperatureDifference",
    largest: "temperatureDifference",
  },
};

export const RefrigerantsToleranceWideShape: Shape = {
  type: "RefrigerantsToleranceWide",
  fields: {
    code: { words: ["refrigerants.tolerance-wide"] },
    values: RefrigerantsToleranceWideValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsToleranceReachesSaturationValuesShape: Shape = {
  type: "RefrigerantsToleranceReachesSaturationValues",
  fields: { tolerance: "temperatureDifference", target: "temperatureDifference" },
};

export const RefrigerantsToleranceReachesSaturationShape: Shape = {
  type: "RefrigerantsToleranceReachesSaturation",
  fields: {
    code: { words: ["refrigerants.tolerance-reaches-saturation"] },
    values: RefrigerantsToleranceReachesSaturationValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsSteadyShape: Shape = {
  type: "RefrigerantsSteady",
  fields: {
    code: { words: ["refrigerants.steady"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsNominalCompositionShape: Shape = {
  type: "RefrigerantsNominalComposition",
  fields: {
    code: { words: ["refrigerants.nominal-composition"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsSaturationUncertaintyValuesShape: Shape = {
  type: "RefrigerantsSaturationUncertaintyValues",
  fields: { share: "ratio" },
};

export const RefrigerantsSaturationUncertaintyShape: Shape = {
  type: "RefrigerantsSaturationUncertainty",
  fields: {
    code: { words: ["refrigerants.saturation-uncertainty"] },
    values: RefrigerantsSaturationUncertaintyValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsExactAtmosphereShape: Shape = {
  type: "RefrigerantsExactAtmosphere",
  fields: {
    code: { words: ["refrigerants.exact-atmosphere"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsLooksLikeOtherSideValuesShape: Shape = {
  type: "RefrigerantsLooksLikeOtherSideValues",
  fields: {
    figure: { words: ["refrigerants.figure.superheat", "refrigerants.figure.subcooling"] },
    saturation: "temperature",
  },
};

export const RefrigerantsLooksLikeOtherSideShape: Shape = {
  type: "RefrigerantsLooksLikeOtherSide",
  fields: {
    code: { words: ["refrigerants.looks-like-other-side"] },
    values: RefrigerantsLooksLikeOtherSideValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsOnlyWhereTheManualChargesByItValuesShape: Shape = {
  type: "RefrigerantsOnlyWhereTheManualChargesByItValues",
  fields: {
    figure: { words: ["refrigerants.figure.superheat", "refrigerants.figure.subcooling"] },
  },
};

export const RefrigerantsOnlyWhereTheManualChargesByItShape: Shape = {
  type: "RefrigerantsOnlyWhereTheManualChargesByIt",
  fields: {
    code: { words: ["refrigerants.only-where-the-manual-charges-by-it"] },
    values: RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsCheckAirflowFirstShape: Shape = {
  type: "RefrigerantsCheckAirflowFirst",
  fields: {
    code: { words: ["refrigerants.check-airflow-first"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsCorrectTheChargeValuesShape: Shape = {
  type: "RefrigerantsCorrectTheChargeValues",
  fields: {
    figure: { words: ["refrigerants.figure.superheat", "refrigerants.figure.subcooling"] },
    target: "temperatureDifference",
  },
};

export const RefrigerantsCorrectTheChargeShape: Shape = {
  type: "RefrigerantsCorrectTheCharge",
  fields: {
    code: { words: ["refrigerants.correct-the-charge"] },
    values: RefrigerantsCorrectTheChargeValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsCheckBothReadingsShape: Shape = {
  type: "RefrigerantsCheckBothReadings",
  fields: {
    code: { words: ["refrigerants.check-both-readings"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsUseBetterProbeValuesShape: Shape = {
  type: "RefrigerantsUseBetterProbeValues",
  fields: {
    probe: { words: ["refrigerants.probe.temperature", "refrigerants.probe.pressure"] },
    needed: "temperatureDifference",
  },
};

export const RefrigerantsUseBetterProbeShape: Shape = {
  type: "RefrigerantsUseBetterProbe",
  fields: {
    code: { words: ["refrigerants.use-better-probe"] },
    values: RefrigerantsUseBetterProbeValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsAdjustToTargetValuesShape: Shape = {
  type: "RefrigerantsAdjustToTargetValues",
  fields: { target: "temperatureDifference" },
};

export const RefrigerantsAdjustToTargetShape: Shape = {
  type: "RefrigerantsAdjustToTarget",
  fields: {
    code: { words: ["refrigerants.adjust-to-target"] },
    values: RefrigerantsAdjustToTargetValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsStateTargetShape: Shape = {
  type: "RefrigerantsStateTarget",
  fields: {
    code: { words: ["refrigerants.state-target"] },
    values: RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsStateToleranceShape: Shape = {
  type: "RefrigerantsStateTolerance",
  fields: {
    code: { words: ["refrigerants.state-tolerance"] },
    values: RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "text?": "text",
  },
};

export const RefrigerantsStatementShape: Shape = {
  type: "RefrigerantsStatement",
  by: "code",
  cases: {
    "refrigerants.table-needs-atmosphere": RefrigerantsTableNeedsAtmosphereShape,
    "refrigerants.number-of-rows": RefrigerantsNumberOfRowsShape,
    "refrigerants.range-of": RefrigerantsRangeOfShape,
    "refrigerants.gauge-needs-atmosphere": RefrigerantsGaugeNeedsAtmosphereShape,
    "refrigerants.within-tolerance": RefrigerantsWithinToleranceShape,
    "refrigerants.above-tolerance": RefrigerantsAboveToleranceShape,
    "refrigerants.below-tolerance": RefrigerantsBelowToleranceShape,
    "refrigerants.below-saturation": RefrigerantsBelowSaturationShape,
    "refrigerants.too-close-to-call": RefrigerantsTooCloseToCallShape,
    "refrigerants.largest-uncertainty": RefrigerantsLargestUncertaintyShape,
    "refrigerants.closer-than-the-model": RefrigerantsCloserThanTheModelShape,
    "refrigerants.target-out-of-reach": RefrigerantsTargetOutOfReachShape,
    "refrigerants.tolerance-wide": RefrigerantsToleranceWideShape,
    "refrigerants.tolerance-reaches-saturation": RefrigerantsToleranceReachesSaturationShape,
    "refrigerants.steady": RefrigerantsSteadyShape,
    "refrigerants.nominal-composition": RefrigerantsNominalCompositionShape,
    "refrigerants.saturation-uncertainty": RefrigerantsSaturationUncertaintyShape,
    "refrigerants.exact-atmosphere": RefrigerantsExactAtmosphereShape,
    "refrigerants.looks-like-other-side": RefrigerantsLooksLikeOtherSideShape,
    "refrigerants.only-where-the-manual-charges-by-it":
      RefrigerantsOnlyWhereTheManualChargesByItShape,
    "refrigerants.check-airflow-first": RefrigerantsCheckAirflowFirstShape,
    "refrigerants.correct-the-charge": RefrigerantsCorrectTheChargeShape,
    "refrigerants.check-both-readings": RefrigerantsCheckBothReadingsShape,
    "refrigerants.use-better-probe": RefrigerantsUseBetterProbeShape,
    "refrigerants.adjust-to-target": RefrigerantsAdjustToTargetShape,
    "refrigerants.state-target": RefrigerantsStateTargetShape,
    "refrigerants.state-tolerance": RefrigerantsStateToleranceShape,
  },
};

export const RefrigerantsTableNeedsAtmosphere2Shape: Shape = {
  type: "RefrigerantsTableNeedsAtmosphere2",
  fields: {
    code: { words: ["refrigerants.table-needs-atmosphere"] },
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

export const RefrigerantsNumberOfRows2Shape: Shape = {
  type: "RefrigerantsNumberOfRows2",
  fields: {
    code: { words: ["refrigerants.number-of-rows"] },
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

export const RefrigerantsRangeOf2Shape: Shape = {
  type: "RefrigerantsRangeOf2",
  fields: {
    code: { words: ["refrigerants.range-of"] },
    values: RefrigerantsRangeOfValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsGaugeNeedsAtmosphere2Shape: Shape = {
  type: "RefrigerantsGaugeNeedsAtmosphere2",
  fields: {
    code: { words: ["refrigerants.gauge-needs-atmosphere"] },
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

export const RefrigerantsWithinTolerance2Shape: Shape = {
  type: "RefrigerantsWithinTolerance2",
  fields: {
    code: { words: ["refrigerants.within-tolerance"] },
    values: RefrigerantsWithinToleranceValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsAboveTolerance2Shape: Shape = {
  type: "RefrigerantsAboveTolerance2",
  fields: {
    code: { words: ["refrigerants.above-tolerance"] },
    values: RefrigerantsWithinToleranceValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsBelowTolerance2Shape: Shape = {
  type: "RefrigerantsBelowTolerance2",
  fields: {
    code: { words: ["refrigerants.below-tolerance"] },
    values: RefrigerantsWithinToleranceValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsBelowSaturation2Shape: Shape = {
  type: "RefrigerantsBelowSaturation2",
  fields: {
    code: { words: ["refrigerants.below-saturation"] },
    values: RefrigerantsBelowSaturationValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsTooCloseToCall2Shape: Shape = {
  type: "RefrigerantsTooCloseToCall2",
  fields: {
    code: { words: ["refrigerants.too-close-to-call"] },
    values: RefrigerantsWithinToleranceValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsLargestUncertainty2Shape: Shape = {
  type: "RefrigerantsLargestUncertainty2",
  fields: {
    code: { words: ["refrigerants.largest-uncertainty"] },
    values: RefrigerantsLargestUncertaintyValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsCloserThanTheModel2Shape: Shape = {
  type: "RefrigerantsCloserThanTheModel2",
  fields: {
    code: { words: ["refrigerants.closer-than-the-model"] },
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

export const RefrigerantsTargetOutOfReach2Shape: Shape = {
  type: "RefrigerantsTargetOutOfReach2",
  fields: {
    code: { words: ["refrigerants.target-out-of-reach"] },
    values: RefrigerantsTargetOutOfReachValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsToleranceWide2Shape: Shape = {
  type: "RefrigerantsToleranceWide2",
  fields: {
    code: { words: ["refrigerants.tolerance-wide"] },
    values: RefrigerantsToleranceWideValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsToleranceReachesSaturation2Shape: Shape = {
  type: "RefrigerantsToleranceReachesSaturation2",
  fields: {
    code: { words: ["refrigerants.tolerance-reaches-saturation"] },
    values: RefrigerantsToleranceReachesSaturationValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsSteady2Shape: Shape = {
  type: "RefrigerantsSteady2",
  fields: {
    code: { words: ["refrigerants.steady"] },
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

export const RefrigerantsNominalComposition2Shape: Shape = {
  type: "RefrigerantsNominalComposition2",
  fields: {
    code: { words: ["refrigerants.nominal-composition"] },
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

export const RefrigerantsSaturationUncertainty2Shape: Shape = {
  type: "RefrigerantsSaturationUncertainty2",
  fields: {
    code: { words: ["refrigerants.saturation-uncertainty"] },
    values: RefrigerantsSaturationUncertaintyValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsExactAtmosphere2Shape: Shape = {
  type: "RefrigerantsExactAtmosphere2",
  fields: {
    code: { words: ["refrigerants.exact-atmosphere"] },
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

export const RefrigerantsLooksLikeOtherSide2Shape: Shape = {
  type: "RefrigerantsLooksLikeOtherSide2",
  fields: {
    code: { words: ["refrigerants.looks-like-other-side"] },
    values: RefrigerantsLooksLikeOtherSideValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsOnlyWhereTheManualChargesByIt2Shape: Shape = {
  type: "RefrigerantsOnlyWhereTheManualChargesByIt2",
  fields: {
    code: { words: ["refrigerants.only-where-the-manual-charges-by-it"] },
    values: RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsCheckAirflowFirst2Shape: Shape = {
  type: "RefrigerantsCheckAirflowFirst2",
  fields: {
    code: { words: ["refrigerants.check-airflow-first"] },
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

export const RefrigerantsCorrectTheCharge2Shape: Shape = {
  type: "RefrigerantsCorrectTheCharge2",
  fields: {
    code: { words: ["refrigerants.correct-the-charge"] },
    values: RefrigerantsCorrectTheChargeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsCheckBothReadings2Shape: Shape = {
  type: "RefrigerantsCheckBothReadings2",
  fields: {
    code: { words: ["refrigerants.check-both-readings"] },
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

export const RefrigerantsUseBetterProbe2Shape: Shape = {
  type: "RefrigerantsUseBetterProbe2",
  fields: {
    code: { words: ["refrigerants.use-better-probe"] },
    values: RefrigerantsUseBetterProbeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsAdjustToTarget2Shape: Shape = {
  type: "RefrigerantsAdjustToTarget2",
  fields: {
    code: { words: ["refrigerants.adjust-to-target"] },
    values: RefrigerantsAdjustToTargetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsStateTarget2Shape: Shape = {
  type: "RefrigerantsStateTarget2",
  fields: {
    code: { words: ["refrigerants.state-target"] },
    values: RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const RefrigerantsStateTolerance2Shape: Shape = {
  type: "RefrigerantsStateTolerance2",
  fields: {
    code: { words: ["refrigerants.state-tolerance"] },
    values: RefrigerantsOnlyWhereTheManualChargesByItValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SafetyOthersGovernShape: Shape = {
  type: "SafetyOthersGovern",
  fields: {
    code: { words: ["safety.others-govern"] },
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

export const SafetyDryNitrogenOnlyShape: Shape = {
  type: "SafetyDryNitrogenOnly",
  fields: {
    code: { words: ["safety.dry-nitrogen-only"] },
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

export const SafetyRegulatorAndReliefShape: Shape = {
  type: "SafetyRegulatorAndRelief",
  fields: {
    code: { words: ["safety.regulator-and-relief"] },
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

export const SafetyRaiseInStagesShape: Shape = {
  type: "SafetyRaiseInStages",
  fields: {
    code: { words: ["safety.raise-in-stages"] },
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

export const SafetyLowestRatingShape: Shape = {
  type: "SafetyLowestRating",
  fields: {
    code: { words: ["safety.lowest-rating"] },
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

export const SafetyNitrogenSuffocatesShape: Shape = {
  type: "SafetyNitrogenSuffocates",
  fields: {
    code: { words: ["safety.nitrogen-suffocates"] },
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

export const SafetyOpenUnderPressureShape: Shape = {
  type: "SafetyOpenUnderPressure",
  fields: {
    code: { words: ["safety.open-under-pressure"] },
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

export const SafetyRefrigerantContactShape: Shape = {
  type: "SafetyRefrigerantContact",
  fields: {
    code: { words: ["safety.refrigerant-contact"] },
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

export const SafetyFlammableRefrigerantShape: Shape = {
  type: "SafetyFlammableRefrigerant",
  fields: {
    code: { words: ["safety.flammable-refrigerant"] },
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

export const SafetyToxicRefrigerantShape: Shape = {
  type: "SafetyToxicRefrigerant",
  fields: {
    code: { words: ["safety.toxic-refrigerant"] },
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

export const SafetyRefrigerantSuffocatesShape: Shape = {
  type: "SafetyRefrigerantSuffocates",
  fields: {
    code: { words: ["safety.refrigerant-suffocates"] },
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

export const SafetyChargeTightSystemShape: Shape = {
  type: "SafetyChargeTightSystem",
  fields: {
    code: { words: ["safety.charge-tight-system"] },
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

export const SafetyRefrigerantAirMixtureShape: Shape = {
  type: "SafetyRefrigerantAirMixture",
  fields: {
    code: { words: ["safety.refrigerant-air-mixture"] },
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

export const SafetyCompressorInVacuumShape: Shape = {
  type: "SafetyCompressorInVacuum",
  fields: {
    code: { words: ["safety.compressor-in-vacuum"] },
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

export const SafetyLineVoltageShape: Shape = {
  type: "SafetyLineVoltage",
  fields: {
    code: { words: ["safety.line-voltage"] },
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

export const SafetyMeterCategoryShape: Shape = {
  type: "SafetyMeterCategory",
  fields: {
    code: { words: ["safety.meter-category"] },
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

export const SafetyRunningUnitShape: Shape = {
  type: "SafetyRunningUnit",
  fields: {
    code: { words: ["safety.running-unit"] },
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

export const SafetyWorkAtHeightShape: Shape = {
  type: "SafetyWorkAtHeight",
  fields: {
    code: { words: ["safety.work-at-height"] },
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

export const LineAssessmentCautionsItemShape: Shape = {
  type: "LineAssessmentCautionsItem",
  by: "code",
  cases: {
    "refrigerants.table-needs-atmosphere": RefrigerantsTableNeedsAtmosphere2Shape,
    "refrigerants.number-of-rows": RefrigerantsNumberOfRows2Shape,
    "refrigerants.range-of": RefrigerantsRangeOf2Shape,
    "refrigerants.gauge-needs-atmosphere": RefrigerantsGaugeNeedsAtmosphere2Shape,
    "refrigerants.within-tolerance": RefrigerantsWithinTolerance2Shape,
    "refrigerants.above-tolerance": RefrigerantsAboveTolerance2Shape,
    "refrigerants.below-tolerance": RefrigerantsBelowTolerance2Shape,
    "refrigerants.below-saturation": RefrigerantsBelowSaturation2Shape,
    "refrigerants.too-close-to-call": RefrigerantsTooCloseToCall2Shape,
    "refrigerants.largest-uncertainty": RefrigerantsLargestUncertainty2Shape,
    "refrigerants.closer-than-the-model": RefrigerantsCloserThanTheModel2Shape,
    "refrigerants.target-out-of-reach": RefrigerantsTargetOutOfReach2Shape,
    "refrigerants.tolerance-wide": RefrigerantsToleranceWide2Shape,
    "refrigerants.tolerance-reaches-saturation": RefrigerantsToleranceReachesSaturation2Shape,
    "refrigerants.steady": RefrigerantsSteady2Shape,
    "refrigerants.nominal-composition": RefrigerantsNominalComposition2Shape,
    "refrigerants.saturation-uncertainty": RefrigerantsSaturationUncertainty2Shape,
    "refrigerants.exact-atmosphere": RefrigerantsExactAtmosphere2Shape,
    "refrigerants.looks-like-other-side": RefrigerantsLooksLikeOtherSide2Shape,
    "refrigerants.only-where-the-manual-charges-by-it":
      RefrigerantsOnlyWhereTheManualChargesByIt2Shape,
    "refrigerants.check-airflow-first": RefrigerantsCheckAirflowFirst2Shape,
    "refrigerants.correct-the-charge": RefrigerantsCorrectTheCharge2Shape,
    "refrigerants.check-both-readings": RefrigerantsCheckBothReadings2Shape,
    "refrigerants.use-better-probe": RefrigerantsUseBetterProbe2Shape,
    "refrigerants.adjust-to-target": RefrigerantsAdjustToTarget2Shape,
    "refrigerants.state-target": RefrigerantsStateTarget2Shape,
    "refrigerants.state-tolerance": RefrigerantsStateTolerance2Shape,
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
  },
};

export const LineAssessmentShape: Shape = {
  type: "LineAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["low", "high"] },
    reasons: { list: RefrigerantsStatementShape },
    assumptions: { list: RefrigerantsStatementShape },
    cautions: { list: LineAssessmentCautionsItemShape },
    "actions?": { list: RefrigerantsStatementShape },
    sources: { list: CitationShape },
    result: EstimateOfTemperatureDifferenceShape,
    saturationTemperature: EstimateOfTemperatureShape,
    conformanceProbability: "number",
  },
  says: "The verdict on superheat or subcooling. cause says on which side of the target it is when it fails.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    result: "Superheat or subcooling with its uncertainty.",
    saturationTemperature:
      "Dew temperature (superheat) or bubble temperature (subcooling) with its uncertainty.",
    conformanceProbability:
      "Probability that the true value lies within the tolerance of the target, 0 to 1.",
  },
};

export const AssessSuperheatInputShape: Shape = {
  type: "AssessSuperheatInput",
  fields: {
    refrigerant: byDesignation,
    input: { either: [AssessSubcoolingInputInput1Shape, AssessSubcoolingInputInput2Shape] },
  },
};

export const SubcoolingInputReading1Shape: Shape = {
  type: "SubcoolingInputReading1",
  fields: {
    pressure: "absolutePressure",
    "atmosphere?": "absolutePressure",
    lineTemperature: "temperature",
  },
  about: {
    pressure: "Absolute pressure.",
    atmosphere: "Not needed; ignored when the pressure is absolute.",
    lineTemperature:
      "temperature of the line, measured on clean, insulated metal beside the gauge port.",
  },
};

export const SubcoolingInputReading2Shape: Shape = {
  type: "SubcoolingInputReading2",
  fields: {
    pressure: "gaugePressure",
    atmosphere: "absolutePressure",
    lineTemperature: "temperature",
  },
  about: {
    pressure: "Gauge pressure.",
    atmosphere:
      "The air around the gauge: standardAtmosphere, atmosphereAtAltitude(…) or a barometer.",
    lineTemperature:
      "temperature of the line, measured on clean, insulated metal beside the gauge port.",
  },
};

export const SubcoolingInputShape: Shape = {
  type: "SubcoolingInput",
  fields: {
    refrigerant: byDesignation,
    reading: { either: [SubcoolingInputReading1Shape, SubcoolingInputReading2Shape] },
  },
};

export const SuperheatInputShape: Shape = {
  type: "SuperheatInput",
  fields: {
    refrigerant: byDesignation,
    reading: { either: [SubcoolingInputReading1Shape, SubcoolingInputReading2Shape] },
  },
};

export const PressureTemperatureTableInput1OptionsShape: Shape = {
  type: "PressureTemperatureTableInput1Options",
  fields: {
    from: "temperature",
    to: "temperature",
    step: "temperatureDifference",
    atmosphere: "absolutePressure",
    "pressureUnit?": { unit: "gaugePressure" },
  },
  about: {
    from: "Temperature of the first row; its unit is the table's.",
    to: "Temperature that the last row does not pass.",
    step: "Step between rows, above 0.",
  },
};

export const PressureTemperatureTableInput1Shape: Shape = {
  type: "PressureTemperatureTableInput1",
  fields: { refrigerant: byDesignation, options: PressureTemperatureTableInput1OptionsShape },
};

export const PressureTemperatureTableInput2OptionsShape: Shape = {
  type: "PressureTemperatureTableInput2Options",
  fields: {
    from: "temperature",
    to: "temperature",
    step: "temperatureDifference",
    "pressureUnit?": { unit: "absolutePressure" },
  },
  about: {
    from: "Temperature of the first row; its unit is the table's.",
    to: "Temperature that the last row does not pass.",
    step: "Step between rows, above 0.",
  },
};

export const PressureTemperatureTableInput2Shape: Shape = {
  type: "PressureTemperatureTableInput2",
  fields: { refrigerant: byDesignation, options: PressureTemperatureTableInput2OptionsShape },
};

export const TableRowOfGaugePressureShape: Shape = {
  type: "TableRowOfGaugePressure",
  fields: { temperature: "temperature", bubble: "gaugePressure", dew: "gaugePressure" },
  says: "One row of a table.",
  about: {
    temperature: "Saturation temperature.",
    bubble: "Where the liquid begins to boil: for subcooling.",
    dew: "Where the vapour begins to condense: for superheat.",
  },
};

export const PressureTemperatureTableOfGaugePressureShape: Shape = {
  type: "PressureTemperatureTableOfGaugePressure",
  fields: {
    designation: "text",
    temperatureUnit: { unit: "temperature" },
    pressureUnit: { unit: "gaugePressure" },
    rows: { list: TableRowOfGaugePressureShape },
  },
  says: "A pressure-temperature table.",
  about: {
    designation: "Designation of the refrigerant.",
    temperatureUnit: "Unit of the temperatures.",
    pressureUnit: "Unit of the pressures.",
    rows: "The rows from from to to.",
  },
};

export const TableRowOfAbsolutePressureShape: Shape = {
  type: "TableRowOfAbsolutePressure",
  fields: { temperature: "temperature", bubble: "absolutePressure", dew: "absolutePressure" },
  says: "One row of a table.",
  about: {
    temperature: "Saturation temperature.",
    bubble: "Where the liquid begins to boil: for subcooling.",
    dew: "Where the vapour begins to condense: for superheat.",
  },
};

export const PressureTemperatureTableOfAbsolutePressureShape: Shape = {
  type: "PressureTemperatureTableOfAbsolutePressure",
  fields: {
    designation: "text",
    temperatureUnit: { unit: "temperature" },
    pressureUnit: { unit: "absolutePressure" },
    rows: { list: TableRowOfAbsolutePressureShape },
  },
  says: "A pressure-temperature table.",
  about: {
    designation: "Designation of the refrigerant.",
    temperatureUnit: "Unit of the temperatures.",
    pressureUnit: "Unit of the pressures.",
    rows: "The rows from from to to.",
  },
};

export const SaturatedLiquidDensityInputShape: Shape = {
  type: "SaturatedLiquidDensityInput",
  fields: { refrigerant: byDesignation, temperature: "temperature" },
};

export const SaturatedVaporDensityInputShape: Shape = {
  type: "SaturatedVaporDensityInput",
  fields: { refrigerant: byDesignation, temperature: "temperature" },
};

export const BubblePressureInputShape: Shape = {
  type: "BubblePressureInput",
  fields: { refrigerant: byDesignation, temperature: "temperature" },
};

export const DewPressureInputShape: Shape = {
  type: "DewPressureInput",
  fields: { refrigerant: byDesignation, temperature: "temperature" },
};

export const BubbleTemperatureInput1Shape: Shape = {
  type: "BubbleTemperatureInput1",
  fields: {
    refrigerant: byDesignation,
    pressure: { either: ["absolutePressure", "gaugePressure"] },
    atmosphere: "absolutePressure",
  },
};

export const BubbleTemperatureInput2Shape: Shape = {
  type: "BubbleTemperatureInput2",
  fields: { refrigerant: byDesignation, pressure: "absolutePressure" },
};

export const DewTemperatureInput1Shape: Shape = {
  type: "DewTemperatureInput1",
  fields: {
    refrigerant: byDesignation,
    pressure: { either: ["absolutePressure", "gaugePressure"] },
    atmosphere: "absolutePressure",
  },
};

export const DewTemperatureInput2Shape: Shape = {
  type: "DewTemperatureInput2",
  fields: { refrigerant: byDesignation, pressure: "absolutePressure" },
};

export const WarmingPotentialShape: Shape = {
  type: "WarmingPotential",
  fields: { value: "number", standing: { words: ["published", "computed", "from memory"] } },
  says: "A global warming potential over 100 years, CO₂ = 1.",
  about: { value: 'The value; 1 stands for "less than 1" too.', standing: "How it was come by." },
};

export const CarbonDioxideEquivalentInputRefrigerantGwpShape: Shape = {
  type: "CarbonDioxideEquivalentInputRefrigerantGwp",
  fields: { ar4: WarmingPotentialShape, ar5: WarmingPotentialShape },
};

export const CarbonDioxideEquivalentInputRefrigerantShape: Shape = {
  type: "CarbonDioxideEquivalentInputRefrigerant",
  fields: { gwp: CarbonDioxideEquivalentInputRefrigerantGwpShape },
  about: { gwp: "Global warming potential by assessment report of the IPCC." },
};

export const RefrigerantComponentShape: Shape = {
  type: "RefrigerantComponent",
  fields: { designation: "text", massPercent: "number" },
  says: "One component of a blend.",
  about: {
    designation: "ASHRAE 34 designation, such as R-32.",
    massPercent: "Nominal share of the mass, per cent.",
  },
};
