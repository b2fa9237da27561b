// Which shapes have the types of assessment?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";

export const InstrumentOfGaugePressureShape: Shape = {
  type: "InstrumentOfGaugePressure",
  fields: {
    "accuracy?": "pressureDifference",
    "resolution?": "pressureDifference",
    "repeatability?": "pressureDifference",
  },
  says: "What is known of an instrument, all as differences of the kind that it reads.",
  about: {
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentOfTemperatureShape: Shape = {
  type: "InstrumentOfTemperature",
  fields: {
    "accuracy?": "temperatureDifference",
    "resolution?": "temperatureDifference",
    "repeatability?": "temperatureDifference",
  },
  says: "What is known of an instrument, all as differences of the kind that it reads.",
  about: {
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentOfAbsolutePressureShape: Shape = {
  type: "InstrumentOfAbsolutePressure",
  fields: {
    "accuracy?": "pressureDifference",
    "resolution?": "pressureDifference",
    "repeatability?": "pressureDifference",
  },
  says: "What is known of an instrument, all as differences of the kind that it reads.",
  about: {
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const VerbatimShape: Shape = {
  type: "Verbatim",
  fields: { verbatim: "text" },
  says: "What a caller or a standard writes and no language changes: the name of a joint, R-410A, 12 AWG, a date.",
  about: { verbatim: "The text, printed as it is." },
};

export const CitationShape: Shape = {
  type: "Citation",
  fields: {
    source: {
      words: [
        "abramowitz-stegun-1964",
        "akasaka-lemmon-2022",
        "ansi-c84-1-2020",
        "as-nzs-3000",
        "ashrae-15-2-2022",
        "ashrae-15-2022",
        "ashrae-34-2022",
        "ashrae-fundamentals-2021",
        "ashrae-refrigeration-2022",
        "asme-b31-5-2022",
        "astm-b280-2020",
        "au-ozone-2024",
        "bell-2022",
        "bell-2023",
        "bell-2025",
        "bs-7671",
        "buecker-wagner-2006",
        "burnham-anderson-2002",
        "cec-part-1",
        "cfr-40-1065-644",
        "cfr-40-84",
        "colebrook-1939",
        "common-practice",
        "en-12735-1",
        "en-378-1",
        "en-378-2",
        "en-50160",
        "esqcr-2002",
        "eu-2024-573",
        "eu-517-2014",
        "from-memory",
        "gao-2020",
        "iapws-r14-08",
        "iec-60038",
        "iec-60228",
        "iec-60335-2-40-2013",
        "iec-60335-2-40-2018",
        "iec-60335-2-40-2022",
        "iec-60364-4-41",
        "iec-60364-4-43",
        "iec-60364-5-52",
        "iec-60364-5-54",
        "iec-60898-1",
        "iec-61000-4-30",
        "iec-61010-2-033",
        "imc-2021",
        "ipc-2021",
        "ipcc-ar4",
        "ipcc-ar5",
        "ipcc-ar6",
        "iso-5149-2",
        "iso-80000",
        "jacobs-1976",
        "japan-electricity-rules",
        "japan-interpretation",
        "jcgm-100-2008",
        "jcgm-106-2012",
        "jis-h-3300",
        "json-schema-2020-12",
        "kamei-1995",
        "lemmon-2003",
        "lemmon-akasaka-2022",
        "lemmon-jacobsen-2000",
        "lemmon-jacobsen-2004",
        "lemmon-jacobsen-2005",
        "lemmon-mclinden-wagner-2009",
        "manufacturer-manuals",
        "marsaglia-2004",
        "municipal-code",
        "nema-mg-1",
        "nfpa-70-2020",
        "nfpa-70-2023",
        "nfpa-70-2026",
        "nist-dlmf",
        "nist-sp-811",
        "nist-strd",
        "rfc-8259",
        "sae-j513",
        "si-brochure",
        "span-2000",
        "span-wagner-1996",
        "thol-lemmon-2016",
        "tillner-roth-1997",
        "tillner-roth-baehr-1994",
        "ufgs-15182",
        "ufgs-15217n",
        "ufgs-15730n",
        "ufgs-15741n",
        "ul-1995",
        "ul-60335-2-40-2019",
        "ul-60335-2-40-2022",
        "umc",
        "upc-2021",
        "us-standard-atmosphere-1976",
        "vacuum-handbook",
        "wagner-pruss-2002",
      ],
    },
    clause: "text",
  },
  says: "A place in a source of the bibliography.",
  about: {
    source: "Key of the source in the bibliography.",
    clause: "Clause, table, equation or section; empty when the whole is meant.",
  },
};

export const EstimateOfTemperatureDifferenceShape: Shape = {
  type: "EstimateOfTemperatureDifference",
  fields: {
    value: "temperatureDifference",
    standardUncertainty: "temperatureDifference",
    expandedUncertainty: "temperatureDifference",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const EstimateOfTemperatureShape: Shape = {
  type: "EstimateOfTemperature",
  fields: {
    value: "temperature",
    standardUncertainty: "temperatureDifference",
    expandedUncertainty: "temperatureDifference",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const EstimateOfPressureDifferenceShape: Shape = {
  type: "EstimateOfPressureDifference",
  fields: {
    value: "pressureDifference",
    standardUncertainty: "pressureDifference",
    expandedUncertainty: "pressureDifference",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const EstimateOfThroughputShape: Shape = {
  type: "EstimateOfThroughput",
  fields: {
    value: "throughput",
    standardUncertainty: "throughput",
    expandedUncertainty: "throughput",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const EstimateOfMassFlowShape: Shape = {
  type: "EstimateOfMassFlow",
  fields: {
    value: "massFlow",
    standardUncertainty: "massFlow",
    expandedUncertainty: "massFlow",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const EstimateOfAbsolutePressureShape: Shape = {
  type: "EstimateOfAbsolutePressure",
  fields: {
    value: "absolutePressure",
    standardUncertainty: "pressureDifference",
    expandedUncertainty: "pressureDifference",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const EstimateOfPressureRateShape: Shape = {
  type: "EstimateOfPressureRate",
  fields: {
    value: "pressureRate",
    standardUncertainty: "pressureRate",
    expandedUncertainty: "pressureRate",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const EstimateOfVoltageShape: Shape = {
  type: "EstimateOfVoltage",
  fields: {
    value: "voltage",
    standardUncertainty: "voltage",
    expandedUncertainty: "voltage",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const EstimateOfResistanceShape: Shape = {
  type: "EstimateOfResistance",
  fields: {
    value: "resistance",
    standardUncertainty: "resistance",
    expandedUncertainty: "resistance",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const InstrumentOfAngleShape: Shape = {
  type: "InstrumentOfAngle",
  fields: { "accuracy?": "angle", "resolution?": "angle", "repeatability?": "angle" },
  says: "What is known of an instrument, all as differences of the kind that it reads.",
  about: {
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const EstimateOfAngleShape: Shape = {
  type: "EstimateOfAngle",
  fields: {
    value: "angle",
    standardUncertainty: "angle",
    expandedUncertainty: "angle",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const InstrumentOfLengthShape: Shape = {
  type: "InstrumentOfLength",
  fields: { "accuracy?": "length", "resolution?": "length", "repeatability?": "length" },
  says: "What is known of an instrument, all as differences of the kind that it reads.",
  about: {
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const EstimateOfLengthShape: Shape = {
  type: "EstimateOfLength",
  fields: {
    value: "length",
    standardUncertainty: "length",
    expandedUncertainty: "length",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const EstimateOfTorqueShape: Shape = {
  type: "EstimateOfTorque",
  fields: {
    value: "torque",
    standardUncertainty: "torque",
    expandedUncertainty: "torque",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const EstimateOfRatioShape: Shape = {
  type: "EstimateOfRatio",
  fields: {
    value: "ratio",
    standardUncertainty: "ratio",
    expandedUncertainty: "ratio",
    coverageFactor: "number",
  },
  says: "A value with what its instruments leave open.",
  about: {
    value: "Best estimate.",
    standardUncertainty: "Standard uncertainty, k = 1.",
    expandedUncertainty: "Expanded uncertainty: coverageFactor times the standard uncertainty.",
    coverageFactor: "k, such as 2 for about 95 % two-sided.",
  },
};

export const InstrumentOfMassShape: Shape = {
  type: "InstrumentOfMass",
  fields: { "accuracy?": "mass", "resolution?": "mass", "repeatability?": "mass" },
  says: "What is known of an instrument, all as differences of the kind that it reads.",
  about: {
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentOfVolumeShape: Shape = {
  type: "InstrumentOfVolume",
  fields: { "accuracy?": "volume", "resolution?": "volume", "repeatability?": "volume" },
  says: "What is known of an instrument, all as differences of the kind that it reads.",
  about: {
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentOfAreaShape: Shape = {
  type: "InstrumentOfArea",
  fields: { "accuracy?": "area", "resolution?": "area", "repeatability?": "area" },
  says: "What is known of an instrument, all as differences of the kind that it reads.",
  about: {
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstallationAssessmentReasonsItemShape: Shape = {
  type: "InstallationAssessmentReasonsItem",
  fields: {
    code: "text",
    values: {
      each: {
        either: [
          "quantity",
          VerbatimShape,
          "text",
          "number",
          { list: { either: ["quantity", VerbatimShape, "text", "number"] } },
        ],
      },
    },
    "text?": "text",
  },
};

export const InstallationAssessmentCautionsItemShape: Shape = {
  type: "InstallationAssessmentCautionsItem",
  fields: {
    code: "text",
    values: {
      each: {
        either: [
          "quantity",
          VerbatimShape,
          "text",
          "number",
          { list: { either: ["quantity", VerbatimShape, "text", "number"] } },
        ],
      },
    },
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
};

export const ReasonShape: Shape = {
  type: "Reason",
  fields: {
    code: "text",
    values: {
      each: {
        either: [
          "quantity",
          VerbatimShape,
          "text",
          "number",
          { list: { either: ["quantity", VerbatimShape, "text", "number"] } },
        ],
      },
    },
    "text?": "text",
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
  },
};

export const NamedCheckOfLineSizesAssessmentShape: Shape = {
  type: "NamedCheckOfLineSizesAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: InstallationAssessmentReasonsItemShape },
    assumptions: { list: InstallationAssessmentReasonsItemShape },
    cautions: { list: InstallationAssessmentCautionsItemShape },
    "actions?": { list: InstallationAssessmentReasonsItemShape },
    sources: { list: CitationShape },
  },
};
