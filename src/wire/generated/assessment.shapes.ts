// Which shapes have the types of assessment?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { type Later, later, type Shape, type StatementTable } from "../../shapes/index.ts";

export const InstrumentOfGaugePressureShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "InstrumentOfGaugePressure",
  fields: {
    "accuracy?": "pressureDifference",
    "resolution?": "pressureDifference",
    "repeatability?": "pressureDifference",
  },
  docs: {
    "": "What is known of an instrument, all as differences of the kind that it reads.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
}));

export const InstrumentOfTemperatureShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "InstrumentOfTemperature",
  fields: {
    "accuracy?": "temperatureDifference",
    "resolution?": "temperatureDifference",
    "repeatability?": "temperatureDifference",
  },
  docs: {
    "": "What is known of an instrument, all as differences of the kind that it reads.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
}));

export const InstrumentOfAbsolutePressureShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "InstrumentOfAbsolutePressure",
  fields: {
    "accuracy?": "pressureDifference",
    "resolution?": "pressureDifference",
    "repeatability?": "pressureDifference",
  },
  docs: {
    "": "What is known of an instrument, all as differences of the kind that it reads.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
}));

export const VerbatimShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "Verbatim",
  fields: { verbatim: "text" },
  docs: {
    "": "What a caller or a standard writes and no language changes: the name of a joint, R-410A, 12 AWG, a date.",
    verbatim: "The text, printed as it is.",
  },
}));

export const SafetyStatements: Later<StatementTable> = /* @__PURE__ */ later(() => ({
  "safety.charge-tight-system": {},
  "safety.compressor-in-vacuum": {},
  "safety.dry-nitrogen-only": {},
  "safety.flammable-refrigerant": {},
  "safety.line-voltage": {},
  "safety.lowest-rating": {},
  "safety.meter-category": {},
  "safety.nitrogen-suffocates": {},
  "safety.open-under-pressure": {},
  "safety.others-govern": {},
  "safety.raise-in-stages": {},
  "safety.refrigerant-air-mixture": {},
  "safety.refrigerant-contact": {},
  "safety.refrigerant-suffocates": {},
  "safety.regulator-and-relief": {},
  "safety.running-unit": {},
  "safety.toxic-refrigerant": {},
  "safety.work-at-height": {},
}));

export const EstimateOfTemperatureDifferenceShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfTemperatureDifference",
  fields: {
    value: "temperatureDifference",
    standardUncertainty: "temperatureDifference",
    expandedUncertainty: "temperatureDifference",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const EstimateOfTemperatureShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfTemperature",
  fields: {
    value: "temperature",
    standardUncertainty: "temperatureDifference",
    expandedUncertainty: "temperatureDifference",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const EstimateOfPressureDifferenceShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfPressureDifference",
  fields: {
    value: "pressureDifference",
    standardUncertainty: "pressureDifference",
    expandedUncertainty: "pressureDifference",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const EstimateOfThroughputShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfThroughput",
  fields: {
    value: "throughput",
    standardUncertainty: "throughput",
    expandedUncertainty: "throughput",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const EstimateOfMassFlowShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfMassFlow",
  fields: {
    value: "massFlow",
    standardUncertainty: "massFlow",
    expandedUncertainty: "massFlow",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const EstimateOfAbsolutePressureShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfAbsolutePressure",
  fields: {
    value: "absolutePressure",
    standardUncertainty: "pressureDifference",
    expandedUncertainty: "pressureDifference",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const EstimateOfPressureRateShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfPressureRate",
  fields: {
    value: "pressureRate",
    standardUncertainty: "pressureRate",
    expandedUncertainty: "pressureRate",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const EstimateOfVoltageShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfVoltage",
  fields: {
    value: "voltage",
    standardUncertainty: "voltage",
    expandedUncertainty: "voltage",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const EstimateOfResistanceShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfResistance",
  fields: {
    value: "resistance",
    standardUncertainty: "resistance",
    expandedUncertainty: "resistance",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const InstrumentOfAngleShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "InstrumentOfAngle",
  fields: { "accuracy?": "angle", "resolution?": "angle", "repeatability?": "angle" },
  docs: {
    "": "What is known of an instrument, all as differences of the kind that it reads.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
}));

export const EstimateOfAngleShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfAngle",
  fields: {
    value: "angle",
    standardUncertainty: "angle",
    expandedUncertainty: "angle",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const InstrumentOfLengthShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "InstrumentOfLength",
  fields: { "accuracy?": "length", "resolution?": "length", "repeatability?": "length" },
  docs: {
    "": "What is known of an instrument, all as differences of the kind that it reads.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
}));

export const EstimateOfLengthShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfLength",
  fields: {
    value: "length",
    standardUncertainty: "length",
    expandedUncertainty: "length",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const EstimateOfTorqueShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfTorque",
  fields: {
    value: "torque",
    standardUncertainty: "torque",
    expandedUncertainty: "torque",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const EstimateOfRatioShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EstimateOfRatio",
  fields: {
    value: "ratio",
    standardUncertainty: "ratio",
    expandedUncertainty: "ratio",
    coverageFactor: "number",
  },
  docs: {
    "": "A value with what its instruments leave open.",
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
}));

export const InstrumentOfMassShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "InstrumentOfMass",
  fields: { "accuracy?": "mass", "resolution?": "mass", "repeatability?": "mass" },
  docs: {
    "": "What is known of an instrument, all as differences of the kind that it reads.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
}));

export const InstrumentOfVolumeShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "InstrumentOfVolume",
  fields: { "accuracy?": "volume", "resolution?": "volume", "repeatability?": "volume" },
  docs: {
    "": "What is known of an instrument, all as differences of the kind that it reads.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
}));

export const InstrumentOfAreaShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "InstrumentOfArea",
  fields: { "accuracy?": "area", "resolution?": "area", "repeatability?": "area" },
  docs: {
    "": "What is known of an instrument, all as differences of the kind that it reads.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
}));

export const NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape: Later<Shape> =
  /* @__PURE__ */ later(() => ({
    type: "NamedCheckOfChargeByGaugeAssessment2ReasonsItem",
    fields: {
      code: "text",
      values: {
        each: {
          either: [
            "quantity",
            VerbatimShape(),
            "text",
            "number",
            { list: { either: ["quantity", VerbatimShape(), "text", "number"] } },
          ],
        },
      },
    },
  }));

export const NamedCheckOfChargeByGaugeAssessment2CautionsItemShape: Later<Shape> =
  /* @__PURE__ */ later(() => ({
    type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem",
    fields: {
      code: "text",
      values: {
        each: {
          either: [
            "quantity",
            VerbatimShape(),
            "text",
            "number",
            { list: { either: ["quantity", VerbatimShape(), "text", "number"] } },
          ],
        },
      },
      "kind?": { words: ["finding", "danger", "governing"] },
    },
    docs: {
      code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
      values: "What stands in the sentence, by name.",
      kind: "Whether it is found in this case, can hurt someone, or governs.",
    },
  }));

export const CautionShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "Caution",
  fields: {
    code: "text",
    values: {
      each: {
        either: [
          "quantity",
          VerbatimShape(),
          "text",
          "number",
          { list: { either: ["quantity", VerbatimShape(), "text", "number"] } },
        ],
      },
    },
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  docs: {
    "": "Something to heed, with its kind.",
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
}));
