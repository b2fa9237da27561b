// Which shapes have the types of refrigerants?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import {
  EstimateOfTemperatureDifferenceShape,
  EstimateOfTemperatureShape,
  InstrumentOfAbsolutePressureShape,
  InstrumentOfGaugePressureShape,
  InstrumentOfTemperatureShape,
  NamedCheckOfChargeByGaugeAssessment2CautionsItemShape,
  NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape,
  SafetyStatements,
  VerbatimShape,
} from "./assessment.shapes.ts";

export function MeanCoilTemperatureInputReading1Shape(): Shape {
  return once(MeanCoilTemperatureInputReading1Shape, () => ({
    type: "MeanCoilTemperatureInputReading1",
    fields: {
      pressure: "absolutePressure",
      "atmosphere?": "absolutePressure",
      "dewWeight?": "number",
    },
    docs: {
      pressure: "Absolute pressure.",
      atmosphere: "Not needed; ignored when the pressure is absolute.",
    },
  }));
}

export function MeanCoilTemperatureInputReading2Shape(): Shape {
  return once(MeanCoilTemperatureInputReading2Shape, () => ({
    type: "MeanCoilTemperatureInputReading2",
    fields: {
      pressure: { either: ["absolutePressure", "gaugePressure"] },
      atmosphere: "absolutePressure",
      "dewWeight?": "number",
    },
    docs: {
      pressure: "Gauge pressure, or one of either kind.",
      atmosphere:
        "The air around the gauge: standardAtmosphere, atmosphereAtAltitude(…) or a barometer.",
    },
  }));
}

export function MeanCoilTemperatureInputShape(): Shape {
  return once(MeanCoilTemperatureInputShape, () => ({
    type: "MeanCoilTemperatureInput",
    fields: {
      refrigerant: byDesignation,
      reading: {
        either: [MeanCoilTemperatureInputReading1Shape(), MeanCoilTemperatureInputReading2Shape()],
      },
    },
  }));
}

export function TemperatureGlideInputReading1Shape(): Shape {
  return once(TemperatureGlideInputReading1Shape, () => ({
    type: "TemperatureGlideInputReading1",
    fields: { pressure: "absolutePressure", "atmosphere?": "absolutePressure" },
    docs: {
      pressure: "Absolute pressure.",
      atmosphere: "Not needed; ignored when the pressure is absolute.",
    },
  }));
}

export function TemperatureGlideInputReading2Shape(): Shape {
  return once(TemperatureGlideInputReading2Shape, () => ({
    type: "TemperatureGlideInputReading2",
    fields: {
      pressure: { either: ["absolutePressure", "gaugePressure"] },
      atmosphere: "absolutePressure",
    },
    docs: {
      pressure: "Gauge pressure, or one of either kind.",
      atmosphere:
        "The air around the gauge: standardAtmosphere, atmosphereAtAltitude(…) or a barometer.",
    },
  }));
}

export function TemperatureGlideInputShape(): Shape {
  return once(TemperatureGlideInputShape, () => ({
    type: "TemperatureGlideInput",
    fields: {
      refrigerant: byDesignation,
      reading: {
        either: [TemperatureGlideInputReading1Shape(), TemperatureGlideInputReading2Shape()],
      },
    },
  }));
}

export function AssessSubcoolingInputInput1InstrumentsShape(): Shape {
  return once(AssessSubcoolingInputInput1InstrumentsShape, () => ({
    type: "AssessSubcoolingInputInput1Instruments",
    fields: {
      pressure: InstrumentOfGaugePressureShape(),
      temperature: InstrumentOfTemperatureShape(),
      "atmosphere?": InstrumentOfAbsolutePressureShape(),
    },
  }));
}

export function AssessSubcoolingInputInput1Shape(): Shape {
  return once(AssessSubcoolingInputInput1Shape, () => ({
    type: "AssessSubcoolingInputInput1",
    fields: {
      pressure: "absolutePressure",
      "atmosphere?": "absolutePressure",
      lineTemperature: "temperature",
      target: "temperatureDifference",
      tolerance: "temperatureDifference",
      instruments: AssessSubcoolingInputInput1InstrumentsShape(),
      "confidence?": "number",
    },
    docs: {
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
  }));
}

export function AssessSubcoolingInputInput2Shape(): Shape {
  return once(AssessSubcoolingInputInput2Shape, () => ({
    type: "AssessSubcoolingInputInput2",
    fields: {
      pressure: { either: ["absolutePressure", "gaugePressure"] },
      atmosphere: "absolutePressure",
      lineTemperature: "temperature",
      target: "temperatureDifference",
      tolerance: "temperatureDifference",
      instruments: AssessSubcoolingInputInput1InstrumentsShape(),
      "confidence?": "number",
    },
    docs: {
      pressure: "Gauge pressure, or one of either kind.",
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
  }));
}

export function AssessSubcoolingInputShape(): Shape {
  return once(AssessSubcoolingInputShape, () => ({
    type: "AssessSubcoolingInput",
    fields: {
      refrigerant: byDesignation,
      input: { either: [AssessSubcoolingInputInput1Shape(), AssessSubcoolingInputInput2Shape()] },
    },
  }));
}

export function RefrigerantsFigureShape(): Shape {
  return once(RefrigerantsFigureShape, () => ({
    type: "RefrigerantsFigure",
    words: ["refrigerants.figure.superheat", "refrigerants.figure.subcooling"],
  }));
}

export function RefrigerantsProbeShape(): Shape {
  return once(RefrigerantsProbeShape, () => ({
    type: "RefrigerantsProbe",
    words: ["refrigerants.probe.temperature", "refrigerants.probe.pressure"],
  }));
}

export function RefrigerantsStatements(): StatementTable {
  return once(RefrigerantsStatements, () => ({
    "refrigerants.above-tolerance": {
      target: "temperatureDifference",
      tolerance: "temperatureDifference",
      value: "temperatureDifference",
      uncertainty: "temperatureDifference",
      figure: RefrigerantsFigureShape(),
    },
    "refrigerants.adjust-to-target": { target: "temperatureDifference" },
    "refrigerants.below-saturation": {
      value: "temperatureDifference",
      uncertainty: "temperatureDifference",
      figure: RefrigerantsFigureShape(),
    },
    "refrigerants.below-tolerance": {
      target: "temperatureDifference",
      tolerance: "temperatureDifference",
      value: "temperatureDifference",
      uncertainty: "temperatureDifference",
      figure: RefrigerantsFigureShape(),
    },
    "refrigerants.check-airflow-first": {},
    "refrigerants.check-both-readings": {},
    "refrigerants.check-designation": {},
    "refrigerants.closer-than-the-model": {},
    "refrigerants.correct-the-charge": {
      figure: RefrigerantsFigureShape(),
      target: "temperatureDifference",
    },
    "refrigerants.exact-atmosphere": {},
    "refrigerants.gauge-needs-atmosphere": {},
    "refrigerants.largest-uncertainty": {
      probe: RefrigerantsProbeShape(),
      now: "temperatureDifference",
    },
    "refrigerants.looks-like-other-side": {
      figure: RefrigerantsFigureShape(),
      saturation: "temperature",
    },
    "refrigerants.nominal-composition": {},
    "refrigerants.number-of-rows": {},
    "refrigerants.only-where-the-manual-charges-by-it": { figure: RefrigerantsFigureShape() },
    "refrigerants.range-of": { refrigerant: VerbatimShape() },
    "refrigerants.saturation-uncertainty": { share: "ratio" },
    "refrigerants.state-target": { figure: RefrigerantsFigureShape() },
    "refrigerants.state-tolerance": { figure: RefrigerantsFigureShape() },
    "refrigerants.steady": {},
    "refrigerants.table-needs-atmosphere": {},
    "refrigerants.target-out-of-reach": {
      figure: RefrigerantsFigureShape(),
      target: "temperatureDifference",
      most: "temperatureDifference",
    },
    "refrigerants.tolerance-reaches-saturation": {
      tolerance: "temperatureDifference",
      target: "temperatureDifference",
    },
    "refrigerants.tolerance-wide": {
      tolerance: "temperatureDifference",
      target: "temperatureDifference",
      largest: "temperatureDifference",
    },
    "refrigerants.too-close-to-call": {
      target: "temperatureDifference",
      tolerance: "temperatureDifference",
      value: "temperatureDifference",
      uncertainty: "temperatureDifference",
      figure: RefrigerantsFigureShape(),
    },
    "refrigerants.use-better-probe": {
      probe: RefrigerantsProbeShape(),
      needed: "temperatureDifference",
    },
    "refrigerants.within-tolerance": {
      target: "temperatureDifference",
      tolerance: "temperatureDifference",
      value: "temperatureDifference",
      uncertainty: "temperatureDifference",
      figure: RefrigerantsFigureShape(),
    },
  }));
}

export function RefrigerantsStatementShape(): Shape {
  return once(RefrigerantsStatementShape, () => ({
    type: "RefrigerantsStatement",
    statements: [RefrigerantsStatements()],
  }));
}

export function LineAssessmentCautionsItemShape(): Shape {
  return once(LineAssessmentCautionsItemShape, () => ({
    type: "LineAssessmentCautionsItem",
    statements: [SafetyStatements(), RefrigerantsStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function CitationSourceShape(): Shape {
  return once(CitationSourceShape, () => ({
    type: "CitationSource",
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
  }));
}

export function CitationShape(): Shape {
  return once(CitationShape, () => ({
    type: "Citation",
    fields: { source: CitationSourceShape(), clause: "text" },
    docs: {
      "": "A place in a source of the bibliography.",
      source: "Key of the source in the bibliography.",
      clause: "Clause, table, equation or section; empty when the whole is meant.",
    },
  }));
}

export function LineAssessmentShape(): Shape {
  return once(LineAssessmentShape, () => ({
    type: "LineAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["low", "high"] },
      reasons: { list: RefrigerantsStatementShape() },
      assumptions: { list: RefrigerantsStatementShape() },
      cautions: { list: LineAssessmentCautionsItemShape() },
      "actions?": { list: RefrigerantsStatementShape() },
      sources: { list: CitationShape() },
      result: EstimateOfTemperatureDifferenceShape(),
      saturationTemperature: EstimateOfTemperatureShape(),
      conformanceProbability: "number",
    },
    docs: {
      "": "The verdict on superheat or subcooling. cause says on which side of the target it is when it fails.",
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
  }));
}

export function AssessSuperheatInputShape(): Shape {
  return once(AssessSuperheatInputShape, () => ({
    type: "AssessSuperheatInput",
    fields: {
      refrigerant: byDesignation,
      input: { either: [AssessSubcoolingInputInput1Shape(), AssessSubcoolingInputInput2Shape()] },
    },
  }));
}

export function SubcoolingInputReading1Shape(): Shape {
  return once(SubcoolingInputReading1Shape, () => ({
    type: "SubcoolingInputReading1",
    fields: {
      pressure: "absolutePressure",
      "atmosphere?": "absolutePressure",
      lineTemperature: "temperature",
    },
    docs: {
      pressure: "Absolute pressure.",
      atmosphere: "Not needed; ignored when the pressure is absolute.",
      lineTemperature:
        "temperature of the line, measured on clean, insulated metal beside the gauge port.",
    },
  }));
}

export function SubcoolingInputReading2Shape(): Shape {
  return once(SubcoolingInputReading2Shape, () => ({
    type: "SubcoolingInputReading2",
    fields: {
      pressure: { either: ["absolutePressure", "gaugePressure"] },
      atmosphere: "absolutePressure",
      lineTemperature: "temperature",
    },
    docs: {
      pressure: "Gauge pressure, or one of either kind.",
      atmosphere:
        "The air around the gauge: standardAtmosphere, atmosphereAtAltitude(…) or a barometer.",
      lineTemperature:
        "temperature of the line, measured on clean, insulated metal beside the gauge port.",
    },
  }));
}

export function SubcoolingInputShape(): Shape {
  return once(SubcoolingInputShape, () => ({
    type: "SubcoolingInput",
    fields: {
      refrigerant: byDesignation,
      reading: { either: [SubcoolingInputReading1Shape(), SubcoolingInputReading2Shape()] },
    },
  }));
}

export function SuperheatInputShape(): Shape {
  return once(SuperheatInputShape, () => ({
    type: "SuperheatInput",
    fields: {
      refrigerant: byDesignation,
      reading: { either: [SubcoolingInputReading1Shape(), SubcoolingInputReading2Shape()] },
    },
  }));
}

export function BubblePressureInputShape(): Shape {
  return once(BubblePressureInputShape, () => ({
    type: "BubblePressureInput",
    fields: { refrigerant: byDesignation, temperature: "temperature" },
  }));
}

export function BubbleTemperatureInput1Shape(): Shape {
  return once(BubbleTemperatureInput1Shape, () => ({
    type: "BubbleTemperatureInput1",
    fields: {
      refrigerant: byDesignation,
      pressure: { either: ["absolutePressure", "gaugePressure"] },
      atmosphere: "absolutePressure",
    },
  }));
}

export function BubbleTemperatureInput2Shape(): Shape {
  return once(BubbleTemperatureInput2Shape, () => ({
    type: "BubbleTemperatureInput2",
    fields: { refrigerant: byDesignation, pressure: "absolutePressure" },
  }));
}

export function DewPressureInputShape(): Shape {
  return once(DewPressureInputShape, () => ({
    type: "DewPressureInput",
    fields: { refrigerant: byDesignation, temperature: "temperature" },
  }));
}

export function DewTemperatureInput1Shape(): Shape {
  return once(DewTemperatureInput1Shape, () => ({
    type: "DewTemperatureInput1",
    fields: {
      refrigerant: byDesignation,
      pressure: { either: ["absolutePressure", "gaugePressure"] },
      atmosphere: "absolutePressure",
    },
  }));
}

export function DewTemperatureInput2Shape(): Shape {
  return once(DewTemperatureInput2Shape, () => ({
    type: "DewTemperatureInput2",
    fields: { refrigerant: byDesignation, pressure: "absolutePressure" },
  }));
}

export function PressureTemperatureTableInput1OptionsShape(): Shape {
  return once(PressureTemperatureTableInput1OptionsShape, () => ({
    type: "PressureTemperatureTableInput1Options",
    fields: {
      from: "temperature",
      to: "temperature",
      step: "temperatureDifference",
      atmosphere: "absolutePressure",
      "pressureUnit?": { unit: "gaugePressure" },
    },
    docs: {
      from: "Temperature of the first row; its unit is the table's.",
      to: "Temperature that the last row does not pass.",
      step: "Step between rows, above 0.",
    },
  }));
}

export function PressureTemperatureTableInput1Shape(): Shape {
  return once(PressureTemperatureTableInput1Shape, () => ({
    type: "PressureTemperatureTableInput1",
    fields: { refrigerant: byDesignation, options: PressureTemperatureTableInput1OptionsShape() },
  }));
}

export function PressureTemperatureTableInput2OptionsShape(): Shape {
  return once(PressureTemperatureTableInput2OptionsShape, () => ({
    type: "PressureTemperatureTableInput2Options",
    fields: {
      from: "temperature",
      to: "temperature",
      step: "temperatureDifference",
      "pressureUnit?": { unit: "absolutePressure" },
    },
    docs: {
      from: "Temperature of the first row; its unit is the table's.",
      to: "Temperature that the last row does not pass.",
      step: "Step between rows, above 0.",
    },
  }));
}

export function PressureTemperatureTableInput2Shape(): Shape {
  return once(PressureTemperatureTableInput2Shape, () => ({
    type: "PressureTemperatureTableInput2",
    fields: { refrigerant: byDesignation, options: PressureTemperatureTableInput2OptionsShape() },
  }));
}

export function TableRowOfGaugePressureShape(): Shape {
  return once(TableRowOfGaugePressureShape, () => ({
    type: "TableRowOfGaugePressure",
    fields: { temperature: "temperature", bubble: "gaugePressure", dew: "gaugePressure" },
    docs: {
      "": "One row of a table.",
      temperature: "Saturation temperature.",
      bubble: "Where the liquid begins to boil: for subcooling.",
      dew: "Where the vapor begins to condense: for superheat.",
    },
  }));
}

export function PressureTemperatureTableOfGaugePressureShape(): Shape {
  return once(PressureTemperatureTableOfGaugePressureShape, () => ({
    type: "PressureTemperatureTableOfGaugePressure",
    fields: {
      designation: "text",
      temperatureUnit: { unit: "temperature" },
      pressureUnit: { unit: "gaugePressure" },
      rows: { list: TableRowOfGaugePressureShape() },
    },
    docs: {
      "": "A pressure-temperature table.",
      designation: "Designation of the refrigerant.",
      temperatureUnit: "Unit of the temperatures.",
      pressureUnit: "Unit of the pressures.",
      rows: "The rows from from to to.",
    },
  }));
}

export function TableRowOfAbsolutePressureShape(): Shape {
  return once(TableRowOfAbsolutePressureShape, () => ({
    type: "TableRowOfAbsolutePressure",
    fields: { temperature: "temperature", bubble: "absolutePressure", dew: "absolutePressure" },
    docs: {
      "": "One row of a table.",
      temperature: "Saturation temperature.",
      bubble: "Where the liquid begins to boil: for subcooling.",
      dew: "Where the vapor begins to condense: for superheat.",
    },
  }));
}

export function PressureTemperatureTableOfAbsolutePressureShape(): Shape {
  return once(PressureTemperatureTableOfAbsolutePressureShape, () => ({
    type: "PressureTemperatureTableOfAbsolutePressure",
    fields: {
      designation: "text",
      temperatureUnit: { unit: "temperature" },
      pressureUnit: { unit: "absolutePressure" },
      rows: { list: TableRowOfAbsolutePressureShape() },
    },
    docs: {
      "": "A pressure-temperature table.",
      designation: "Designation of the refrigerant.",
      temperatureUnit: "Unit of the temperatures.",
      pressureUnit: "Unit of the pressures.",
      rows: "The rows from from to to.",
    },
  }));
}

export function SaturatedLiquidDensityInputShape(): Shape {
  return once(SaturatedLiquidDensityInputShape, () => ({
    type: "SaturatedLiquidDensityInput",
    fields: { refrigerant: byDesignation, temperature: "temperature" },
  }));
}

export function SaturatedVaporDensityInputShape(): Shape {
  return once(SaturatedVaporDensityInputShape, () => ({
    type: "SaturatedVaporDensityInput",
    fields: { refrigerant: byDesignation, temperature: "temperature" },
  }));
}

export function RefrigerantComponentShape(): Shape {
  return once(RefrigerantComponentShape, () => ({
    type: "RefrigerantComponent",
    fields: { designation: "text", massPercent: "number" },
    docs: {
      "": "One component of a blend.",
      designation: "ASHRAE 34 designation, such as R-32.",
      massPercent: "Nominal share of the mass, per cent.",
    },
  }));
}

export function WarmingBasisShape(): Shape {
  return once(WarmingBasisShape, () => ({
    type: "WarmingBasis",
    words: ["ipcc-ar4", "ipcc-ar5", "ipcc-ar6", "eu-517-2014", "eu-2024-573", "cfr-40-84"],
  }));
}

export function NamedCheckOfChargeByGaugeAssessment2Shape(): Shape {
  return once(NamedCheckOfChargeByGaugeAssessment2Shape, () => ({
    type: "NamedCheckOfChargeByGaugeAssessment2",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": "text",
      reasons: { list: NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape() },
      assumptions: { list: NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape() },
      cautions: { list: NamedCheckOfChargeByGaugeAssessment2CautionsItemShape() },
      "actions?": { list: NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape() },
      sources: { list: CitationShape() },
    },
  }));
}
