// Which shapes have the types of assessment?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";

export function InstrumentOfGaugePressureShape(): Shape {
  return once(InstrumentOfGaugePressureShape, () => ({
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
}

export function InstrumentOfTemperatureShape(): Shape {
  return once(InstrumentOfTemperatureShape, () => ({
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
}

export function InstrumentOfAbsolutePressureShape(): Shape {
  return once(InstrumentOfAbsolutePressureShape, () => ({
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
}

export function VerbatimShape(): Shape {
  return once(VerbatimShape, () => ({
    type: "Verbatim",
    fields: { verbatim: "text" },
    docs: {
      "": "What a caller or a standard writes and no language changes: the name of a joint, R-410A, 12 AWG, a date.",
      verbatim: "The text, printed as it is.",
    },
  }));
}

export function SafetyStatements(): StatementTable {
  return once(SafetyStatements, () => ({
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
}

export function EstimateOfTemperatureDifferenceShape(): Shape {
  return once(EstimateOfTemperatureDifferenceShape, () => ({
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
}

export function EstimateOfTemperatureShape(): Shape {
  return once(EstimateOfTemperatureShape, () => ({
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
}

export function EstimateOfPressureDifferenceShape(): Shape {
  return once(EstimateOfPressureDifferenceShape, () => ({
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
}

export function EstimateOfThroughputShape(): Shape {
  return once(EstimateOfThroughputShape, () => ({
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
}

export function EstimateOfMassFlowShape(): Shape {
  return once(EstimateOfMassFlowShape, () => ({
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
}

export function EstimateOfAbsolutePressureShape(): Shape {
  return once(EstimateOfAbsolutePressureShape, () => ({
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
}

export function EstimateOfPressureRateShape(): Shape {
  return once(EstimateOfPressureRateShape, () => ({
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
}

export function EstimateOfVoltageShape(): Shape {
  return once(EstimateOfVoltageShape, () => ({
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
}

export function EstimateOfResistanceShape(): Shape {
  return once(EstimateOfResistanceShape, () => ({
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
}

export function InstrumentOfAngleShape(): Shape {
  return once(InstrumentOfAngleShape, () => ({
    type: "InstrumentOfAngle",
    fields: { "accuracy?": "angle", "resolution?": "angle", "repeatability?": "angle" },
    docs: {
      "": "What is known of an instrument, all as differences of the kind that it reads.",
      accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
      resolution: "Smallest step that the display shows.",
      repeatability: "Standard deviation of repeated readings of the same thing.",
    },
  }));
}

export function EstimateOfAngleShape(): Shape {
  return once(EstimateOfAngleShape, () => ({
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
}

export function InstrumentOfLengthShape(): Shape {
  return once(InstrumentOfLengthShape, () => ({
    type: "InstrumentOfLength",
    fields: { "accuracy?": "length", "resolution?": "length", "repeatability?": "length" },
    docs: {
      "": "What is known of an instrument, all as differences of the kind that it reads.",
      accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
      resolution: "Smallest step that the display shows.",
      repeatability: "Standard deviation of repeated readings of the same thing.",
    },
  }));
}

export function EstimateOfLengthShape(): Shape {
  return once(EstimateOfLengthShape, () => ({
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
}

export function EstimateOfTorqueShape(): Shape {
  return once(EstimateOfTorqueShape, () => ({
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
}

export function EstimateOfRatioShape(): Shape {
  return once(EstimateOfRatioShape, () => ({
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
}

export function InstrumentOfMassShape(): Shape {
  return once(InstrumentOfMassShape, () => ({
    type: "InstrumentOfMass",
    fields: { "accuracy?": "mass", "resolution?": "mass", "repeatability?": "mass" },
    docs: {
      "": "What is known of an instrument, all as differences of the kind that it reads.",
      accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
      resolution: "Smallest step that the display shows.",
      repeatability: "Standard deviation of repeated readings of the same thing.",
    },
  }));
}

export function InstrumentOfVolumeShape(): Shape {
  return once(InstrumentOfVolumeShape, () => ({
    type: "InstrumentOfVolume",
    fields: { "accuracy?": "volume", "resolution?": "volume", "repeatability?": "volume" },
    docs: {
      "": "What is known of an instrument, all as differences of the kind that it reads.",
      accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
      resolution: "Smallest step that the display shows.",
      repeatability: "Standard deviation of repeated readings of the same thing.",
    },
  }));
}

export function InstrumentOfAreaShape(): Shape {
  return once(InstrumentOfAreaShape, () => ({
    type: "InstrumentOfArea",
    fields: { "accuracy?": "area", "resolution?": "area", "repeatability?": "area" },
    docs: {
      "": "What is known of an instrument, all as differences of the kind that it reads.",
      accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
      resolution: "Smallest step that the display shows.",
      repeatability: "Standard deviation of repeated readings of the same thing.",
    },
  }));
}

export function NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape(): Shape {
  return once(NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape, () => ({
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
}

export function NamedCheckOfChargeByGaugeAssessment2CautionsItemShape(): Shape {
  return once(NamedCheckOfChargeByGaugeAssessment2CautionsItemShape, () => ({
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
}

export function CautionShape(): Shape {
  return once(CautionShape, () => ({
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
}
