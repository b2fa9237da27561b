// Which shapes have the types of supply-voltage?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byStandard } from "../named.ts";
import {
  CitationShape,
  EstimateOfResistanceShape,
  EstimateOfVoltageShape,
  VerbatimShape,
} from "./assessment.shapes.ts";
import {
  RefrigerantsTableNeedsAtmosphereValuesShape,
  SafetyChargeTightSystemShape,
  SafetyCompressorInVacuumShape,
  SafetyDryNitrogenOnlyShape,
  SafetyFlammableRefrigerantShape,
  SafetyLineVoltageShape,
  SafetyLowestRatingShape,
  SafetyMeterCategoryShape,
  SafetyNitrogenSuffocatesShape,
  SafetyOpenUnderPressureShape,
  SafetyOthersGovernShape,
  SafetyRaiseInStagesShape,
  SafetyRefrigerantAirMixtureShape,
  SafetyRefrigerantContactShape,
  SafetyRefrigerantSuffocatesShape,
  SafetyRegulatorAndReliefShape,
  SafetyRunningUnitShape,
  SafetyToxicRefrigerantShape,
  SafetyWorkAtHeightShape,
} from "./refrigerants.shapes.ts";

export const VoltageRangeShape: Shape = {
  type: "VoltageRange",
  fields: { minimum: "voltage", maximum: "voltage" },
  says: "Lowest and highest voltage.",
  about: { minimum: "Lowest voltage allowed.", maximum: "Highest voltage allowed." },
};

export const VoltageNameplateShape: Shape = {
  type: "VoltageNameplate",
  fields: {
    rated: { either: ["voltage", { list: "voltage" }] },
    "range?": VoltageRangeShape,
    "phases?": { words: [1, 3] },
    "ratedCurrent?": "current",
  },
  says: "What the nameplate says about the voltage.",
  about: {
    rated: 'Rated voltage, or both of a dual plate: [volt(208), volt(230)] for "208/230".',
    range: "The range that the maker prints; it wins over any rule.",
    phases: "Phases that the plate asks for.",
    ratedCurrent:
      "Current at which the unit runs at full load: rated-load or full-load amperes, not MCA.",
  },
};

export const VoltageStandardRangesShape: Shape = {
  type: "VoltageStandardRanges",
  fields: {
    service: { list: { items: ["text", "number", "number"] } },
    unit: { list: { items: ["text", "number", "number"] } },
  },
};

export const VoltageStandardShape: Shape = {
  type: "VoltageStandard",
  fields: {
    name: "text",
    source: {
      words: [
        "abramowitz-stegun-1964",
        "akasaka-lemmon-2022",
        "ansi-c84-1-2020",
        "as-nzs-3000",
        "ashrae-15-2022",
        "ashrae-34-2022",
        "ashrae-fundamentals-2021",
        "ashrae-refrigeration-2022",
        "asme-b31-5-2022",
        "astm-b280-2020",
        "bell-2022",
        "bell-2023",
        "bell-2025",
        "bs-7671",
        "buecker-wagner-2006",
        "burnham-anderson-2002",
        "cec-part-1",
        "cfr-40-1065-644",
        "colebrook-1939",
        "common-practice",
        "en-12735-1",
        "en-378-1",
        "en-378-2",
        "en-50160",
        "esqcr-2002",
        "eu-517-2014",
        "from-memory",
        "gao-2020",
        "iapws-r14-08",
        "iec-60038",
        "iec-60228",
        "iec-60335-2-40-2018",
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
        "ul-60335-2-40",
        "umc",
        "upc-2021",
        "us-standard-atmosphere-1976",
        "vacuum-handbook",
        "wagner-pruss-2002",
      ],
    },
    clause: "text",
    table: { list: { list: "number" } },
    "alsoWritten?": { list: { items: ["number", "number"] } },
    "fromMemory?": "flag",
    ranges: VoltageStandardRangesShape,
  },
  says: "A standard of supply voltages. Make one of your own for a jurisdiction that the library lacks.",
  about: {
    name: "Name as a report prints it.",
    source: "Its work in the bibliography.",
    clause: "Clause or table.",
    table: "One row per nominal voltage, which is column 0; volts.",
    alsoWritten:
      "Voltages that nameplates and people write for a nominal voltage of the table: 230 V for a service of 240 V.",
    fromMemory: "Whether its figures are remembered, not read.",
    ranges:
      "The ranges, from the normal one to the widest, by where the voltage is measured. Empty: none for that place.",
  },
};

export const NominalSupplyShape: Shape = {
  type: "NominalSupply",
  fields: {
    voltage: "voltage",
    phases: { words: [1, 3] },
    "standard?": { either: [byStandard, VoltageStandardShape] },
    "range?": VoltageRangeShape,
  },
  says: "The supply that feeds the unit.",
  about: {
    voltage:
      "Nominal voltage between the conductors that feed the unit; line to line for three phases.",
    phases: "Phases that feed the unit.",
    standard:
      "The standard. Where it is left out, one is taken only for a nominal voltage that no other standard here knows (120, 208, 240, 277, 480 and 600 V: ANSI C84.1; 400 V: IEC 60038; 100 V: Japan); for any other it is asked for.",
    range: "The range that the utility promises; it goes before any standard.",
  },
};

export const SinglePhaseReadingShape: Shape = {
  type: "SinglePhaseReading",
  fields: {
    "state?": { words: ["load", "rest", "start"] },
    "elapsed?": "duration",
    voltage: "voltage",
    "current?": "current",
    "lineToGround?": { list: "voltage" },
  },
  says: "One reading of a supply that feeds the unit by two conductors.",
  about: {
    state: "What the unit did.",
    elapsed: "Time since the first reading of a log; on all readings or on none, and growing.",
    voltage: "Voltage between the two conductors that feed the unit.",
    current: "Current of the unit at that moment.",
    lineToGround: "Voltages from each of the two conductors to ground, where they were read too.",
  },
};

export const ThreePhaseReadingShape: Shape = {
  type: "ThreePhaseReading",
  fields: {
    "state?": { words: ["load", "rest", "start"] },
    "elapsed?": "duration",
    lineToLine: { list: "voltage" },
    "currents?": { list: "current" },
  },
  says: "One set of readings of a three-phase supply.",
  about: {
    state: "What the unit did.",
    elapsed: "Time since the first reading of a log; on all readings or on none, and growing.",
    lineToLine: "Voltages between lines 1 and 2, 2 and 3, 3 and 1.",
    currents: "Currents of lines 1, 2 and 3 at that moment.",
  },
};

export const VoltmeterShape: Shape = {
  type: "Voltmeter",
  fields: {
    "accuracy?": "voltage",
    "resolution?": "voltage",
    "repeatability?": "voltage",
    "accuracyOfReading?": "ratio",
  },
  says: 'The voltmeter. The limits of a digital one, "±(0.7 % + 2 counts)", are { accuracyOfReading: percent(0.7), accuracy: volt(0.2), resolution: volt(0.1) } on a 0.1 V display.',
  about: {
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
    accuracyOfReading: "Limits of error that grow with the reading, ±; added to accuracy.",
  },
};

export const SupplyVoltageInputShape: Shape = {
  type: "SupplyVoltageInput",
  fields: {
    nameplate: VoltageNameplateShape,
    supply: NominalSupplyShape,
    readings: { list: { either: [SinglePhaseReadingShape, ThreePhaseReadingShape] } },
    measuredAt: { words: ["service", "unit"] },
    "meter?": VoltmeterShape,
    "unbalanceLimit?": "ratio",
    "confidence?": "number",
  },
  says: "Nameplate, supply and what was read.",
  about: {
    nameplate: "What the unit allows.",
    supply: "What feeds it.",
    readings: "One reading or a log, at rest and under load.",
    measuredAt: "At the service entrance or at the unit.",
    meter: "The voltmeter; readings count as exact when left out.",
    unbalanceLimit: "Largest voltage unbalance that the maker allows; 2 % when left out.",
    confidence: "How sure the verdict has to be, one-sided, 0.5 to below 1; 0.95 when left out.",
  },
};

export const SupplyVoltageWithinNameplateValuesShape: Shape = {
  type: "SupplyVoltageWithinNameplateValues",
  fields: {
    low: "voltage",
    high: "voltage",
    readings: { words: ["supply-voltage.readings.one", "supply-voltage.readings.several"] },
    minimum: "voltage",
    maximum: "voltage",
  },
  about: { readings: "Whether low and high are one figure as they are shown." },
};

export const SupplyVoltageWithinNameplateShape: Shape = {
  type: "SupplyVoltageWithinNameplate",
  fields: {
    code: { words: ["supply-voltage.within-nameplate"] },
    values: SupplyVoltageWithinNameplateValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageWouldHaveFailedValuesShape: Shape = {
  type: "SupplyVoltageWouldHaveFailedValues",
  fields: { beyond: "voltage" },
};

export const SupplyVoltageWouldHaveFailedShape: Shape = {
  type: "SupplyVoltageWouldHaveFailed",
  fields: {
    code: { words: ["supply-voltage.would-have-failed"] },
    values: SupplyVoltageWouldHaveFailedValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageBoardAtRiskValuesShape: Shape = {
  type: "SupplyVoltageBoardAtRiskValues",
  fields: { high: "voltage", ceiling: "voltage" },
};

export const SupplyVoltageBoardAtRiskShape: Shape = {
  type: "SupplyVoltageBoardAtRisk",
  fields: {
    code: { words: ["supply-voltage.board-at-risk"] },
    values: SupplyVoltageBoardAtRiskValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageNoVoltageValuesShape: Shape = {
  type: "SupplyVoltageNoVoltageValues",
  fields: { low: "voltage" },
};

export const SupplyVoltageNoVoltageShape: Shape = {
  type: "SupplyVoltageNoVoltage",
  fields: {
    code: { words: ["supply-voltage.no-voltage"] },
    values: SupplyVoltageNoVoltageValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltagePhaseMissingValuesShape: Shape = {
  type: "SupplyVoltagePhaseMissingValues",
  fields: { lines: { list: "voltage" } },
};

export const SupplyVoltagePhaseMissingShape: Shape = {
  type: "SupplyVoltagePhaseMissing",
  fields: {
    code: { words: ["supply-voltage.phase-missing"] },
    values: SupplyVoltagePhaseMissingValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageLegMissingValuesShape: Shape = {
  type: "SupplyVoltageLegMissingValues",
  fields: { low: "voltage", nominal: "voltage" },
};

export const SupplyVoltageLegMissingShape: Shape = {
  type: "SupplyVoltageLegMissing",
  fields: {
    code: { words: ["supply-voltage.leg-missing"] },
    values: SupplyVoltageLegMissingValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageUnevenToGroundValuesShape: Shape = {
  type: "SupplyVoltageUnevenToGroundValues",
  fields: { lines: { list: "voltage" } },
};

export const SupplyVoltageUnevenToGroundShape: Shape = {
  type: "SupplyVoltageUnevenToGround",
  fields: {
    code: { words: ["supply-voltage.uneven-to-ground"] },
    values: SupplyVoltageUnevenToGroundValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltagePlateDoesNotFitValuesShape: Shape = {
  type: "SupplyVoltagePlateDoesNotFitValues",
  fields: { minimum: "voltage", maximum: "voltage", nominal: "voltage" },
};

export const SupplyVoltagePlateDoesNotFitShape: Shape = {
  type: "SupplyVoltagePlateDoesNotFit",
  fields: {
    code: { words: ["supply-voltage.plate-does-not-fit"] },
    values: SupplyVoltagePlateDoesNotFitValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageHighSupplyValuesShape: Shape = {
  type: "SupplyVoltageHighSupplyValues",
  fields: { high: "voltage", maximum: "voltage" },
};

export const SupplyVoltageHighSupplyShape: Shape = {
  type: "SupplyVoltageHighSupply",
  fields: {
    code: { words: ["supply-voltage.high-supply"] },
    values: SupplyVoltageHighSupplyValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageLowSupplyValuesShape: Shape = {
  type: "SupplyVoltageLowSupplyValues",
  fields: { low: "voltage", minimum: "voltage" },
};

export const SupplyVoltageLowSupplyShape: Shape = {
  type: "SupplyVoltageLowSupply",
  fields: {
    code: { words: ["supply-voltage.low-supply"] },
    values: SupplyVoltageLowSupplyValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageSagUnderLoadValuesShape: Shape = {
  type: "SupplyVoltageSagUnderLoadValues",
  fields: { low: "voltage", minimum: "voltage" },
};

export const SupplyVoltageSagUnderLoadShape: Shape = {
  type: "SupplyVoltageSagUnderLoad",
  fields: {
    code: { words: ["supply-voltage.sag-under-load"] },
    values: SupplyVoltageSagUnderLoadValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageDipNotMarkedValuesShape: Shape = {
  type: "SupplyVoltageDipNotMarkedValues",
  fields: { low: "voltage", minimum: "voltage" },
};

export const SupplyVoltageDipNotMarkedShape: Shape = {
  type: "SupplyVoltageDipNotMarked",
  fields: {
    code: { words: ["supply-voltage.dip-not-marked"] },
    values: SupplyVoltageDipNotMarkedValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageMeterCannotTellShape: Shape = {
  type: "SupplyVoltageMeterCannotTell",
  fields: {
    code: { words: ["supply-voltage.meter-cannot-tell"] },
    values: SupplyVoltageWithinNameplateValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageWithinStandardValuesShape: Shape = {
  type: "SupplyVoltageWithinStandardValues",
  fields: {
    range: VerbatimShape,
    standard: VerbatimShape,
    low: "voltage",
    high: "voltage",
    readings: { words: ["supply-voltage.readings.one", "supply-voltage.readings.several"] },
    minimum: "voltage",
    maximum: "voltage",
  },
  about: { readings: "Whether low and high are one figure as they are shown." },
};

export const SupplyVoltageWithinStandardShape: Shape = {
  type: "SupplyVoltageWithinStandard",
  fields: {
    code: { words: ["supply-voltage.within-standard"] },
    values: SupplyVoltageWithinStandardValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageTooCloseToStandardShape: Shape = {
  type: "SupplyVoltageTooCloseToStandard",
  fields: {
    code: { words: ["supply-voltage.too-close-to-standard"] },
    values: SupplyVoltageWithinStandardValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageOutsideStandardShape: Shape = {
  type: "SupplyVoltageOutsideStandard",
  fields: {
    code: { words: ["supply-voltage.outside-standard"] },
    values: SupplyVoltageWithinStandardValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageOutsideAtTimesShape: Shape = {
  type: "SupplyVoltageOutsideAtTimes",
  fields: {
    code: { words: ["supply-voltage.outside-at-times"] },
    values: SupplyVoltageWithinStandardValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageStandardNotStatedValuesShape: Shape = {
  type: "SupplyVoltageStandardNotStatedValues",
  fields: { nominal: "voltage" },
};

export const SupplyVoltageStandardNotStatedShape: Shape = {
  type: "SupplyVoltageStandardNotStated",
  fields: {
    code: { words: ["supply-voltage.standard-not-stated"] },
    values: SupplyVoltageStandardNotStatedValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageWeekWithinValuesShape: Shape = {
  type: "SupplyVoltageWeekWithinValues",
  fields: { within: "ratio", means: "number", outside10: "number", outside15: "number" },
};

export const SupplyVoltageWeekWithinShape: Shape = {
  type: "SupplyVoltageWeekWithin",
  fields: {
    code: { words: ["supply-voltage.week-within"] },
    values: SupplyVoltageWeekWithinValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageWeekOutsideShape: Shape = {
  type: "SupplyVoltageWeekOutside",
  fields: {
    code: { words: ["supply-voltage.week-outside"] },
    values: SupplyVoltageWeekWithinValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageWeekSoFarShape: Shape = {
  type: "SupplyVoltageWeekSoFar",
  fields: {
    code: { words: ["supply-voltage.week-so-far"] },
    values: SupplyVoltageWeekWithinValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageWeekIncompleteValuesShape: Shape = {
  type: "SupplyVoltageWeekIncompleteValues",
  fields: { missing: "duration" },
};

export const SupplyVoltageWeekIncompleteShape: Shape = {
  type: "SupplyVoltageWeekIncomplete",
  fields: {
    code: { words: ["supply-voltage.week-incomplete"] },
    values: SupplyVoltageWeekIncompleteValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageWeekMeterCannotTellShape: Shape = {
  type: "SupplyVoltageWeekMeterCannotTell",
  fields: {
    code: { words: ["supply-voltage.week-meter-cannot-tell"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageUnbalanceWithinValuesShape: Shape = {
  type: "SupplyVoltageUnbalanceWithinValues",
  fields: { unbalance: "ratio", limit: "ratio", factor: "number", rise: "ratio" },
};

export const SupplyVoltageUnbalanceWithinShape: Shape = {
  type: "SupplyVoltageUnbalanceWithin",
  fields: {
    code: { words: ["supply-voltage.unbalance-within"] },
    values: SupplyVoltageUnbalanceWithinValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageUnbalanceAboveValuesShape: Shape = {
  type: "SupplyVoltageUnbalanceAboveValues",
  fields: { unbalance: "ratio", limit: "ratio" },
};

export const SupplyVoltageUnbalanceAboveShape: Shape = {
  type: "SupplyVoltageUnbalanceAbove",
  fields: {
    code: { words: ["supply-voltage.unbalance-above"] },
    values: SupplyVoltageUnbalanceAboveValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageUnbalanceTooCloseShape: Shape = {
  type: "SupplyVoltageUnbalanceTooClose",
  fields: {
    code: { words: ["supply-voltage.unbalance-too-close"] },
    values: SupplyVoltageUnbalanceAboveValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageUnbalanceAbove5PercentValuesShape: Shape = {
  type: "SupplyVoltageUnbalanceAbove5PercentValues",
  fields: { unbalance: "ratio" },
};

export const SupplyVoltageUnbalanceAbove5PercentShape: Shape = {
  type: "SupplyVoltageUnbalanceAbove5Percent",
  fields: {
    code: { words: ["supply-voltage.unbalance-above-5-percent"] },
    values: SupplyVoltageUnbalanceAbove5PercentValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageLineWithoutCurrentShape: Shape = {
  type: "SupplyVoltageLineWithoutCurrent",
  fields: {
    code: { words: ["supply-voltage.line-without-current"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageCurrentUnbalanceWithinShape: Shape = {
  type: "SupplyVoltageCurrentUnbalanceWithin",
  fields: {
    code: { words: ["supply-voltage.current-unbalance-within"] },
    values: SupplyVoltageUnbalanceAboveValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageCurrentUnbalanceAboveShape: Shape = {
  type: "SupplyVoltageCurrentUnbalanceAbove",
  fields: {
    code: { words: ["supply-voltage.current-unbalance-above"] },
    values: SupplyVoltageUnbalanceAboveValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageFullLoadEnoughValuesShape: Shape = {
  type: "SupplyVoltageFullLoadEnoughValues",
  fields: { there: "voltage", minimum: "voltage", current: "current" },
};

export const SupplyVoltageFullLoadEnoughShape: Shape = {
  type: "SupplyVoltageFullLoadEnough",
  fields: {
    code: { words: ["supply-voltage.full-load-enough"] },
    values: SupplyVoltageFullLoadEnoughValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageFullLoadTooLowShape: Shape = {
  type: "SupplyVoltageFullLoadTooLow",
  fields: {
    code: { words: ["supply-voltage.full-load-too-low"] },
    values: SupplyVoltageFullLoadEnoughValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageFullLoadTooCloseShape: Shape = {
  type: "SupplyVoltageFullLoadTooClose",
  fields: {
    code: { words: ["supply-voltage.full-load-too-close"] },
    values: SupplyVoltageFullLoadEnoughValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageFullLoadFarOffShape: Shape = {
  type: "SupplyVoltageFullLoadFarOff",
  fields: {
    code: { words: ["supply-voltage.full-load-far-off"] },
    values: SupplyVoltageFullLoadEnoughValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageFullLoadImpossibleValuesShape: Shape = {
  type: "SupplyVoltageFullLoadImpossibleValues",
  fields: { current: "current", minimum: "voltage" },
};

export const SupplyVoltageFullLoadImpossibleShape: Shape = {
  type: "SupplyVoltageFullLoadImpossible",
  fields: {
    code: { words: ["supply-voltage.full-load-impossible"] },
    values: SupplyVoltageFullLoadImpossibleValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageTenPercentShape: Shape = {
  type: "SupplyVoltageTenPercent",
  fields: {
    code: { words: ["supply-voltage.ten-percent"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageExactMeterShape: Shape = {
  type: "SupplyVoltageExactMeter",
  fields: {
    code: { words: ["supply-voltage.exact-meter"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageMomentOnlyShape: Shape = {
  type: "SupplyVoltageMomentOnly",
  fields: {
    code: { words: ["supply-voltage.moment-only"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageNoSagShape: Shape = {
  type: "SupplyVoltageNoSag",
  fields: {
    code: { words: ["supply-voltage.no-sag"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageStandardAssumedValuesShape: Shape = {
  type: "SupplyVoltageStandardAssumedValues",
  fields: { standard: VerbatimShape, nominal: "voltage" },
};

export const SupplyVoltageStandardAssumedShape: Shape = {
  type: "SupplyVoltageStandardAssumed",
  fields: {
    code: { words: ["supply-voltage.standard-assumed"] },
    values: SupplyVoltageStandardAssumedValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageJudgedAsValuesShape: Shape = {
  type: "SupplyVoltageJudgedAsValues",
  fields: { nominal: "voltage", as: "voltage" },
};

export const SupplyVoltageJudgedAsShape: Shape = {
  type: "SupplyVoltageJudgedAs",
  fields: {
    code: { words: ["supply-voltage.judged-as"] },
    values: SupplyVoltageJudgedAsValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageNoRangeAtUnitValuesShape: Shape = {
  type: "SupplyVoltageNoRangeAtUnitValues",
  fields: { standard: VerbatimShape },
};

export const SupplyVoltageNoRangeAtUnitShape: Shape = {
  type: "SupplyVoltageNoRangeAtUnit",
  fields: {
    code: { words: ["supply-voltage.no-range-at-unit"] },
    values: SupplyVoltageNoRangeAtUnitValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageUnbalanceLimitValuesShape: Shape = {
  type: "SupplyVoltageUnbalanceLimitValues",
  fields: { limit: "ratio" },
};

export const SupplyVoltageUnbalanceLimitShape: Shape = {
  type: "SupplyVoltageUnbalanceLimit",
  fields: {
    code: { words: ["supply-voltage.unbalance-limit"] },
    values: SupplyVoltageUnbalanceLimitValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageCurrentsNotJudgedShape: Shape = {
  type: "SupplyVoltageCurrentsNotJudged",
  fields: {
    code: { words: ["supply-voltage.currents-not-judged"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageStartsFoundValuesShape: Shape = {
  type: "SupplyVoltageStartsFoundValues",
  fields: { count: "number" },
};

export const SupplyVoltageStartsFoundShape: Shape = {
  type: "SupplyVoltageStartsFound",
  fields: {
    code: { words: ["supply-voltage.starts-found"] },
    values: SupplyVoltageStartsFoundValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageStartsUnseenValuesShape: Shape = {
  type: "SupplyVoltageStartsUnseenValues",
  fields: { interval: "duration" },
};

export const SupplyVoltageStartsUnseenShape: Shape = {
  type: "SupplyVoltageStartsUnseen",
  fields: {
    code: { words: ["supply-voltage.starts-unseen"] },
    values: SupplyVoltageStartsUnseenValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageStartDipValuesShape: Shape = {
  type: "SupplyVoltageStartDipValues",
  fields: { dip: "voltage" },
};

export const SupplyVoltageStartDipShape: Shape = {
  type: "SupplyVoltageStartDip",
  fields: {
    code: { words: ["supply-voltage.start-dip"] },
    values: SupplyVoltageStartDipValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageLargeSagValuesShape: Shape = {
  type: "SupplyVoltageLargeSagValues",
  fields: { share: "ratio" },
};

export const SupplyVoltageLargeSagShape: Shape = {
  type: "SupplyVoltageLargeSag",
  fields: {
    code: { words: ["supply-voltage.large-sag"] },
    values: SupplyVoltageLargeSagValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageRiseUnderLoadValuesShape: Shape = {
  type: "SupplyVoltageRiseUnderLoadValues",
  fields: { load: "voltage", rest: "voltage" },
};

export const SupplyVoltageRiseUnderLoadShape: Shape = {
  type: "SupplyVoltageRiseUnderLoad",
  fields: {
    code: { words: ["supply-voltage.rise-under-load"] },
    values: SupplyVoltageRiseUnderLoadValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageTransformerTapValuesShape: Shape = {
  type: "SupplyVoltageTransformerTapValues",
  fields: { near: "voltage" },
};

export const SupplyVoltageTransformerTapShape: Shape = {
  type: "SupplyVoltageTransformerTap",
  fields: {
    code: { words: ["supply-voltage.transformer-tap"] },
    values: SupplyVoltageTransformerTapValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageNarrowPlateValuesShape: Shape = {
  type: "SupplyVoltageNarrowPlateValues",
  fields: { near: "voltage", nominal: "voltage" },
};

export const SupplyVoltageNarrowPlateShape: Shape = {
  type: "SupplyVoltageNarrowPlate",
  fields: {
    code: { words: ["supply-voltage.narrow-plate"] },
    values: SupplyVoltageNarrowPlateValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageLimitedTimeValuesShape: Shape = {
  type: "SupplyVoltageLimitedTimeValues",
  fields: { range: VerbatimShape },
};

export const SupplyVoltageLimitedTimeShape: Shape = {
  type: "SupplyVoltageLimitedTime",
  fields: {
    code: { words: ["supply-voltage.limited-time"] },
    values: SupplyVoltageLimitedTimeValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageDropToUnitValuesShape: Shape = {
  type: "SupplyVoltageDropToUnitValues",
  fields: { drop: "voltage" },
};

export const SupplyVoltageDropToUnitShape: Shape = {
  type: "SupplyVoltageDropToUnit",
  fields: {
    code: { words: ["supply-voltage.drop-to-unit"] },
    values: SupplyVoltageDropToUnitValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageDerateShape: Shape = {
  type: "SupplyVoltageDerate",
  fields: {
    code: { words: ["supply-voltage.derate"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageUnevenSupplyShape: Shape = {
  type: "SupplyVoltageUnevenSupply",
  fields: {
    code: { words: ["supply-voltage.uneven-supply"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageLineGroundedShape: Shape = {
  type: "SupplyVoltageLineGrounded",
  fields: {
    code: { words: ["supply-voltage.line-grounded"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageFromMemoryValuesShape: Shape = {
  type: "SupplyVoltageFromMemoryValues",
  fields: { standard: VerbatimShape },
};

export const SupplyVoltageFromMemoryShape: Shape = {
  type: "SupplyVoltageFromMemory",
  fields: {
    code: { words: ["supply-voltage.from-memory"] },
    values: SupplyVoltageFromMemoryValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageDoNotEnergizeShape: Shape = {
  type: "SupplyVoltageDoNotEnergize",
  fields: {
    code: { words: ["supply-voltage.do-not-energize"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageFindMissingLineShape: Shape = {
  type: "SupplyVoltageFindMissingLine",
  fields: {
    code: { words: ["supply-voltage.find-missing-line"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageCheckNeutralShape: Shape = {
  type: "SupplyVoltageCheckNeutral",
  fields: {
    code: { words: ["supply-voltage.check-neutral"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageMatchUnitAndSupplyShape: Shape = {
  type: "SupplyVoltageMatchUnitAndSupply",
  fields: {
    code: { words: ["supply-voltage.match-unit-and-supply"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageCheckWiringShape: Shape = {
  type: "SupplyVoltageCheckWiring",
  fields: {
    code: { words: ["supply-voltage.check-wiring"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageReadAtServiceShape: Shape = {
  type: "SupplyVoltageReadAtService",
  fields: {
    code: { words: ["supply-voltage.read-at-service"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageCallUtilityShape: Shape = {
  type: "SupplyVoltageCallUtility",
  fields: {
    code: { words: ["supply-voltage.call-utility"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageMarkStartsShape: Shape = {
  type: "SupplyVoltageMarkStarts",
  fields: {
    code: { words: ["supply-voltage.mark-starts"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageMeasureBetterValuesShape: Shape = {
  type: "SupplyVoltageMeasureBetterValues",
  fields: { needed: "voltage" },
};

export const SupplyVoltageMeasureBetterShape: Shape = {
  type: "SupplyVoltageMeasureBetter",
  fields: {
    code: { words: ["supply-voltage.measure-better"] },
    values: SupplyVoltageMeasureBetterValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageMeasureFinerShape: Shape = {
  type: "SupplyVoltageMeasureFiner",
  fields: {
    code: { words: ["supply-voltage.measure-finer"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageMeasureAtFullLoadShape: Shape = {
  type: "SupplyVoltageMeasureAtFullLoad",
  fields: {
    code: { words: ["supply-voltage.measure-at-full-load"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageStateStandardShape: Shape = {
  type: "SupplyVoltageStateStandard",
  fields: {
    code: { words: ["supply-voltage.state-standard"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageLogLongerValuesShape: Shape = {
  type: "SupplyVoltageLogLongerValues",
  fields: { missing: "duration" },
};

export const SupplyVoltageLogLongerShape: Shape = {
  type: "SupplyVoltageLogLonger",
  fields: {
    code: { words: ["supply-voltage.log-longer"] },
    values: SupplyVoltageLogLongerValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageEvenOutLoadShape: Shape = {
  type: "SupplyVoltageEvenOutLoad",
  fields: {
    code: { words: ["supply-voltage.even-out-load"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const SupplyVoltageStatementShape: Shape = {
  type: "SupplyVoltageStatement",
  by: "code",
  cases: {
    "supply-voltage.within-nameplate": SupplyVoltageWithinNameplateShape,
    "supply-voltage.would-have-failed": SupplyVoltageWouldHaveFailedShape,
    "supply-voltage.board-at-risk": SupplyVoltageBoardAtRiskShape,
    "supply-voltage.no-voltage": SupplyVoltageNoVoltageShape,
    "supply-voltage.phase-missing": SupplyVoltagePhaseMissingShape,
    "supply-voltage.leg-missing": SupplyVoltageLegMissingShape,
    "supply-voltage.uneven-to-ground": SupplyVoltageUnevenToGroundShape,
    "supply-voltage.plate-does-not-fit": SupplyVoltagePlateDoesNotFitShape,
    "supply-voltage.high-supply": SupplyVoltageHighSupplyShape,
    "supply-voltage.low-supply": SupplyVoltageLowSupplyShape,
    "supply-voltage.sag-under-load": SupplyVoltageSagUnderLoadShape,
    "supply-voltage.dip-not-marked": SupplyVoltageDipNotMarkedShape,
    "supply-voltage.meter-cannot-tell": SupplyVoltageMeterCannotTellShape,
    "supply-voltage.within-standard": SupplyVoltageWithinStandardShape,
    "supply-voltage.too-close-to-standard": SupplyVoltageTooCloseToStandardShape,
    "supply-voltage.outside-standard": SupplyVoltageOutsideStandardShape,
    "supply-voltage.outside-at-times": SupplyVoltageOutsideAtTimesShape,
    "supply-voltage.standard-not-stated": SupplyVoltageStandardNotStatedShape,
    "supply-voltage.week-within": SupplyVoltageWeekWithinShape,
    "supply-voltage.week-outside": SupplyVoltageWeekOutsideShape,
    "supply-voltage.week-so-far": SupplyVoltageWeekSoFarShape,
    "supply-voltage.week-incomplete": SupplyVoltageWeekIncompleteShape,
    "supply-voltage.week-meter-cannot-tell": SupplyVoltageWeekMeterCannotTellShape,
    "supply-voltage.unbalance-within": SupplyVoltageUnbalanceWithinShape,
    "supply-voltage.unbalance-above": SupplyVoltageUnbalanceAboveShape,
    "supply-voltage.unbalance-too-close": SupplyVoltageUnbalanceTooCloseShape,
    "supply-voltage.unbalance-above-5-percent": SupplyVoltageUnbalanceAbove5PercentShape,
    "supply-voltage.line-without-current": SupplyVoltageLineWithoutCurrentShape,
    "supply-voltage.current-unbalance-within": SupplyVoltageCurrentUnbalanceWithinShape,
    "supply-voltage.current-unbalance-above": SupplyVoltageCurrentUnbalanceAboveShape,
    "supply-voltage.full-load-enough": SupplyVoltageFullLoadEnoughShape,
    "supply-voltage.full-load-too-low": SupplyVoltageFullLoadTooLowShape,
    "supply-voltage.full-load-too-close": SupplyVoltageFullLoadTooCloseShape,
    "supply-voltage.full-load-far-off": SupplyVoltageFullLoadFarOffShape,
    "supply-voltage.full-load-impossible": SupplyVoltageFullLoadImpossibleShape,
    "supply-voltage.ten-percent": SupplyVoltageTenPercentShape,
    "supply-voltage.exact-meter": SupplyVoltageExactMeterShape,
    "supply-voltage.moment-only": SupplyVoltageMomentOnlyShape,
    "supply-voltage.no-sag": SupplyVoltageNoSagShape,
    "supply-voltage.standard-assumed": SupplyVoltageStandardAssumedShape,
    "supply-voltage.judged-as": SupplyVoltageJudgedAsShape,
    "supply-voltage.no-range-at-unit": SupplyVoltageNoRangeAtUnitShape,
    "supply-voltage.unbalance-limit": SupplyVoltageUnbalanceLimitShape,
    "supply-voltage.currents-not-judged": SupplyVoltageCurrentsNotJudgedShape,
    "supply-voltage.starts-found": SupplyVoltageStartsFoundShape,
    "supply-voltage.starts-unseen": SupplyVoltageStartsUnseenShape,
    "supply-voltage.start-dip": SupplyVoltageStartDipShape,
    "supply-voltage.large-sag": SupplyVoltageLargeSagShape,
    "supply-voltage.rise-under-load": SupplyVoltageRiseUnderLoadShape,
    "supply-voltage.transformer-tap": SupplyVoltageTransformerTapShape,
    "supply-voltage.narrow-plate": SupplyVoltageNarrowPlateShape,
    "supply-voltage.limited-time": SupplyVoltageLimitedTimeShape,
    "supply-voltage.drop-to-unit": SupplyVoltageDropToUnitShape,
    "supply-voltage.derate": SupplyVoltageDerateShape,
    "supply-voltage.uneven-supply": SupplyVoltageUnevenSupplyShape,
    "supply-voltage.line-grounded": SupplyVoltageLineGroundedShape,
    "supply-voltage.from-memory": SupplyVoltageFromMemoryShape,
    "supply-voltage.do-not-energize": SupplyVoltageDoNotEnergizeShape,
    "supply-voltage.find-missing-line": SupplyVoltageFindMissingLineShape,
    "supply-voltage.check-neutral": SupplyVoltageCheckNeutralShape,
    "supply-voltage.match-unit-and-supply": SupplyVoltageMatchUnitAndSupplyShape,
    "supply-voltage.check-wiring": SupplyVoltageCheckWiringShape,
    "supply-voltage.read-at-service": SupplyVoltageReadAtServiceShape,
    "supply-voltage.call-utility": SupplyVoltageCallUtilityShape,
    "supply-voltage.mark-starts": SupplyVoltageMarkStartsShape,
    "supply-voltage.measure-better": SupplyVoltageMeasureBetterShape,
    "supply-voltage.measure-finer": SupplyVoltageMeasureFinerShape,
    "supply-voltage.measure-at-full-load": SupplyVoltageMeasureAtFullLoadShape,
    "supply-voltage.state-standard": SupplyVoltageStateStandardShape,
    "supply-voltage.log-longer": SupplyVoltageLogLongerShape,
    "supply-voltage.even-out-load": SupplyVoltageEvenOutLoadShape,
  },
};

export const SupplyVoltageWithinNameplate2Shape: Shape = {
  type: "SupplyVoltageWithinNameplate2",
  fields: {
    code: { words: ["supply-voltage.within-nameplate"] },
    values: SupplyVoltageWithinNameplateValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageWouldHaveFailed2Shape: Shape = {
  type: "SupplyVoltageWouldHaveFailed2",
  fields: {
    code: { words: ["supply-voltage.would-have-failed"] },
    values: SupplyVoltageWouldHaveFailedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageBoardAtRisk2Shape: Shape = {
  type: "SupplyVoltageBoardAtRisk2",
  fields: {
    code: { words: ["supply-voltage.board-at-risk"] },
    values: SupplyVoltageBoardAtRiskValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageNoVoltage2Shape: Shape = {
  type: "SupplyVoltageNoVoltage2",
  fields: {
    code: { words: ["supply-voltage.no-voltage"] },
    values: SupplyVoltageNoVoltageValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltagePhaseMissing2Shape: Shape = {
  type: "SupplyVoltagePhaseMissing2",
  fields: {
    code: { words: ["supply-voltage.phase-missing"] },
    values: SupplyVoltagePhaseMissingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageLegMissing2Shape: Shape = {
  type: "SupplyVoltageLegMissing2",
  fields: {
    code: { words: ["supply-voltage.leg-missing"] },
    values: SupplyVoltageLegMissingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageUnevenToGround2Shape: Shape = {
  type: "SupplyVoltageUnevenToGround2",
  fields: {
    code: { words: ["supply-voltage.uneven-to-ground"] },
    values: SupplyVoltageUnevenToGroundValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltagePlateDoesNotFit2Shape: Shape = {
  type: "SupplyVoltagePlateDoesNotFit2",
  fields: {
    code: { words: ["supply-voltage.plate-does-not-fit"] },
    values: SupplyVoltagePlateDoesNotFitValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageHighSupply2Shape: Shape = {
  type: "SupplyVoltageHighSupply2",
  fields: {
    code: { words: ["supply-voltage.high-supply"] },
    values: SupplyVoltageHighSupplyValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageLowSupply2Shape: Shape = {
  type: "SupplyVoltageLowSupply2",
  fields: {
    code: { words: ["supply-voltage.low-supply"] },
    values: SupplyVoltageLowSupplyValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageSagUnderLoad2Shape: Shape = {
  type: "SupplyVoltageSagUnderLoad2",
  fields: {
    code: { words: ["supply-voltage.sag-under-load"] },
    values: SupplyVoltageSagUnderLoadValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageDipNotMarked2Shape: Shape = {
  type: "SupplyVoltageDipNotMarked2",
  fields: {
    code: { words: ["supply-voltage.dip-not-marked"] },
    values: SupplyVoltageDipNotMarkedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageMeterCannotTell2Shape: Shape = {
  type: "SupplyVoltageMeterCannotTell2",
  fields: {
    code: { words: ["supply-voltage.meter-cannot-tell"] },
    values: SupplyVoltageWithinNameplateValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageWithinStandard2Shape: Shape = {
  type: "SupplyVoltageWithinStandard2",
  fields: {
    code: { words: ["supply-voltage.within-standard"] },
    values: SupplyVoltageWithinStandardValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageTooCloseToStandard2Shape: Shape = {
  type: "SupplyVoltageTooCloseToStandard2",
  fields: {
    code: { words: ["supply-voltage.too-close-to-standard"] },
    values: SupplyVoltageWithinStandardValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageOutsideStandard2Shape: Shape = {
  type: "SupplyVoltageOutsideStandard2",
  fields: {
    code: { words: ["supply-voltage.outside-standard"] },
    values: SupplyVoltageWithinStandardValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageOutsideAtTimes2Shape: Shape = {
  type: "SupplyVoltageOutsideAtTimes2",
  fields: {
    code: { words: ["supply-voltage.outside-at-times"] },
    values: SupplyVoltageWithinStandardValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageStandardNotStated2Shape: Shape = {
  type: "SupplyVoltageStandardNotStated2",
  fields: {
    code: { words: ["supply-voltage.standard-not-stated"] },
    values: SupplyVoltageStandardNotStatedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageWeekWithin2Shape: Shape = {
  type: "SupplyVoltageWeekWithin2",
  fields: {
    code: { words: ["supply-voltage.week-within"] },
    values: SupplyVoltageWeekWithinValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageWeekOutside2Shape: Shape = {
  type: "SupplyVoltageWeekOutside2",
  fields: {
    code: { words: ["supply-voltage.week-outside"] },
    values: SupplyVoltageWeekWithinValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageWeekSoFar2Shape: Shape = {
  type: "SupplyVoltageWeekSoFar2",
  fields: {
    code: { words: ["supply-voltage.week-so-far"] },
    values: SupplyVoltageWeekWithinValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageWeekIncomplete2Shape: Shape = {
  type: "SupplyVoltageWeekIncomplete2",
  fields: {
    code: { words: ["supply-voltage.week-incomplete"] },
    values: SupplyVoltageWeekIncompleteValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageWeekMeterCannotTell2Shape: Shape = {
  type: "SupplyVoltageWeekMeterCannotTell2",
  fields: {
    code: { words: ["supply-voltage.week-meter-cannot-tell"] },
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

export const SupplyVoltageUnbalanceWithin2Shape: Shape = {
  type: "SupplyVoltageUnbalanceWithin2",
  fields: {
    code: { words: ["supply-voltage.unbalance-within"] },
    values: SupplyVoltageUnbalanceWithinValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageUnbalanceAbove2Shape: Shape = {
  type: "SupplyVoltageUnbalanceAbove2",
  fields: {
    code: { words: ["supply-voltage.unbalance-above"] },
    values: SupplyVoltageUnbalanceAboveValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageUnbalanceTooClose2Shape: Shape = {
  type: "SupplyVoltageUnbalanceTooClose2",
  fields: {
    code: { words: ["supply-voltage.unbalance-too-close"] },
    values: SupplyVoltageUnbalanceAboveValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageUnbalanceAbove5Percent2Shape: Shape = {
  type: "SupplyVoltageUnbalanceAbove5Percent2",
  fields: {
    code: { words: ["supply-voltage.unbalance-above-5-percent"] },
    values: SupplyVoltageUnbalanceAbove5PercentValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageLineWithoutCurrent2Shape: Shape = {
  type: "SupplyVoltageLineWithoutCurrent2",
  fields: {
    code: { words: ["supply-voltage.line-without-current"] },
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

export const SupplyVoltageCurrentUnbalanceWithin2Shape: Shape = {
  type: "SupplyVoltageCurrentUnbalanceWithin2",
  fields: {
    code: { words: ["supply-voltage.current-unbalance-within"] },
    values: SupplyVoltageUnbalanceAboveValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageCurrentUnbalanceAbove2Shape: Shape = {
  type: "SupplyVoltageCurrentUnbalanceAbove2",
  fields: {
    code: { words: ["supply-voltage.current-unbalance-above"] },
    values: SupplyVoltageUnbalanceAboveValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageFullLoadEnough2Shape: Shape = {
  type: "SupplyVoltageFullLoadEnough2",
  fields: {
    code: { words: ["supply-voltage.full-load-enough"] },
    values: SupplyVoltageFullLoadEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageFullLoadTooLow2Shape: Shape = {
  type: "SupplyVoltageFullLoadTooLow2",
  fields: {
    code: { words: ["supply-voltage.full-load-too-low"] },
    values: SupplyVoltageFullLoadEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageFullLoadTooClose2Shape: Shape = {
  type: "SupplyVoltageFullLoadTooClose2",
  fields: {
    code: { words: ["supply-voltage.full-load-too-close"] },
    values: SupplyVoltageFullLoadEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageFullLoadFarOff2Shape: Shape = {
  type: "SupplyVoltageFullLoadFarOff2",
  fields: {
    code: { words: ["supply-voltage.full-load-far-off"] },
    values: SupplyVoltageFullLoadEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageFullLoadImpossible2Shape: Shape = {
  type: "SupplyVoltageFullLoadImpossible2",
  fields: {
    code: { words: ["supply-voltage.full-load-impossible"] },
    values: SupplyVoltageFullLoadImpossibleValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageTenPercent2Shape: Shape = {
  type: "SupplyVoltageTenPercent2",
  fields: {
    code: { words: ["supply-voltage.ten-percent"] },
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

export const SupplyVoltageExactMeter2Shape: Shape = {
  type: "SupplyVoltageExactMeter2",
  fields: {
    code: { words: ["supply-voltage.exact-meter"] },
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

export const SupplyVoltageMomentOnly2Shape: Shape = {
  type: "SupplyVoltageMomentOnly2",
  fields: {
    code: { words: ["supply-voltage.moment-only"] },
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

export const SupplyVoltageNoSag2Shape: Shape = {
  type: "SupplyVoltageNoSag2",
  fields: {
    code: { words: ["supply-voltage.no-sag"] },
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

export const SupplyVoltageStandardAssumed2Shape: Shape = {
  type: "SupplyVoltageStandardAssumed2",
  fields: {
    code: { words: ["supply-voltage.standard-assumed"] },
    values: SupplyVoltageStandardAssumedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageJudgedAs2Shape: Shape = {
  type: "SupplyVoltageJudgedAs2",
  fields: {
    code: { words: ["supply-voltage.judged-as"] },
    values: SupplyVoltageJudgedAsValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageNoRangeAtUnit2Shape: Shape = {
  type: "SupplyVoltageNoRangeAtUnit2",
  fields: {
    code: { words: ["supply-voltage.no-range-at-unit"] },
    values: SupplyVoltageNoRangeAtUnitValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageUnbalanceLimit2Shape: Shape = {
  type: "SupplyVoltageUnbalanceLimit2",
  fields: {
    code: { words: ["supply-voltage.unbalance-limit"] },
    values: SupplyVoltageUnbalanceLimitValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageCurrentsNotJudged2Shape: Shape = {
  type: "SupplyVoltageCurrentsNotJudged2",
  fields: {
    code: { words: ["supply-voltage.currents-not-judged"] },
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

export const SupplyVoltageStartsFound2Shape: Shape = {
  type: "SupplyVoltageStartsFound2",
  fields: {
    code: { words: ["supply-voltage.starts-found"] },
    values: SupplyVoltageStartsFoundValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageStartsUnseen2Shape: Shape = {
  type: "SupplyVoltageStartsUnseen2",
  fields: {
    code: { words: ["supply-voltage.starts-unseen"] },
    values: SupplyVoltageStartsUnseenValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageStartDip2Shape: Shape = {
  type: "SupplyVoltageStartDip2",
  fields: {
    code: { words: ["supply-voltage.start-dip"] },
    values: SupplyVoltageStartDipValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageLargeSag2Shape: Shape = {
  type: "SupplyVoltageLargeSag2",
  fields: {
    code: { words: ["supply-voltage.large-sag"] },
    values: SupplyVoltageLargeSagValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageRiseUnderLoad2Shape: Shape = {
  type: "SupplyVoltageRiseUnderLoad2",
  fields: {
    code: { words: ["supply-voltage.rise-under-load"] },
    values: SupplyVoltageRiseUnderLoadValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageTransformerTap2Shape: Shape = {
  type: "SupplyVoltageTransformerTap2",
  fields: {
    code: { words: ["supply-voltage.transformer-tap"] },
    values: SupplyVoltageTransformerTapValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageNarrowPlate2Shape: Shape = {
  type: "SupplyVoltageNarrowPlate2",
  fields: {
    code: { words: ["supply-voltage.narrow-plate"] },
    values: SupplyVoltageNarrowPlateValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageLimitedTime2Shape: Shape = {
  type: "SupplyVoltageLimitedTime2",
  fields: {
    code: { words: ["supply-voltage.limited-time"] },
    values: SupplyVoltageLimitedTimeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageDropToUnit2Shape: Shape = {
  type: "SupplyVoltageDropToUnit2",
  fields: {
    code: { words: ["supply-voltage.drop-to-unit"] },
    values: SupplyVoltageDropToUnitValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageDerate2Shape: Shape = {
  type: "SupplyVoltageDerate2",
  fields: {
    code: { words: ["supply-voltage.derate"] },
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

export const SupplyVoltageUnevenSupply2Shape: Shape = {
  type: "SupplyVoltageUnevenSupply2",
  fields: {
    code: { words: ["supply-voltage.uneven-supply"] },
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

export const SupplyVoltageLineGrounded2Shape: Shape = {
  type: "SupplyVoltageLineGrounded2",
  fields: {
    code: { words: ["supply-voltage.line-grounded"] },
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

export const SupplyVoltageFromMemory2Shape: Shape = {
  type: "SupplyVoltageFromMemory2",
  fields: {
    code: { words: ["supply-voltage.from-memory"] },
    values: SupplyVoltageFromMemoryValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageDoNotEnergize2Shape: Shape = {
  type: "SupplyVoltageDoNotEnergize2",
  fields: {
    code: { words: ["supply-voltage.do-not-energize"] },
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

export const SupplyVoltageFindMissingLine2Shape: Shape = {
  type: "SupplyVoltageFindMissingLine2",
  fields: {
    code: { words: ["supply-voltage.find-missing-line"] },
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

export const SupplyVoltageCheckNeutral2Shape: Shape = {
  type: "SupplyVoltageCheckNeutral2",
  fields: {
    code: { words: ["supply-voltage.check-neutral"] },
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

export const SupplyVoltageMatchUnitAndSupply2Shape: Shape = {
  type: "SupplyVoltageMatchUnitAndSupply2",
  fields: {
    code: { words: ["supply-voltage.match-unit-and-supply"] },
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

export const SupplyVoltageCheckWiring2Shape: Shape = {
  type: "SupplyVoltageCheckWiring2",
  fields: {
    code: { words: ["supply-voltage.check-wiring"] },
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

export const SupplyVoltageReadAtService2Shape: Shape = {
  type: "SupplyVoltageReadAtService2",
  fields: {
    code: { words: ["supply-voltage.read-at-service"] },
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

export const SupplyVoltageCallUtility2Shape: Shape = {
  type: "SupplyVoltageCallUtility2",
  fields: {
    code: { words: ["supply-voltage.call-utility"] },
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

export const SupplyVoltageMarkStarts2Shape: Shape = {
  type: "SupplyVoltageMarkStarts2",
  fields: {
    code: { words: ["supply-voltage.mark-starts"] },
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

export const SupplyVoltageMeasureBetter2Shape: Shape = {
  type: "SupplyVoltageMeasureBetter2",
  fields: {
    code: { words: ["supply-voltage.measure-better"] },
    values: SupplyVoltageMeasureBetterValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageMeasureFiner2Shape: Shape = {
  type: "SupplyVoltageMeasureFiner2",
  fields: {
    code: { words: ["supply-voltage.measure-finer"] },
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

export const SupplyVoltageMeasureAtFullLoad2Shape: Shape = {
  type: "SupplyVoltageMeasureAtFullLoad2",
  fields: {
    code: { words: ["supply-voltage.measure-at-full-load"] },
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

export const SupplyVoltageStateStandard2Shape: Shape = {
  type: "SupplyVoltageStateStandard2",
  fields: {
    code: { words: ["supply-voltage.state-standard"] },
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

export const SupplyVoltageLogLonger2Shape: Shape = {
  type: "SupplyVoltageLogLonger2",
  fields: {
    code: { words: ["supply-voltage.log-longer"] },
    values: SupplyVoltageLogLongerValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const SupplyVoltageEvenOutLoad2Shape: Shape = {
  type: "SupplyVoltageEvenOutLoad2",
  fields: {
    code: { words: ["supply-voltage.even-out-load"] },
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

export const SupplyVoltageAssessmentCautionsItemShape: Shape = {
  type: "SupplyVoltageAssessmentCautionsItem",
  by: "code",
  cases: {
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
    "supply-voltage.within-nameplate": SupplyVoltageWithinNameplate2Shape,
    "supply-voltage.would-have-failed": SupplyVoltageWouldHaveFailed2Shape,
    "supply-voltage.board-at-risk": SupplyVoltageBoardAtRisk2Shape,
    "supply-voltage.no-voltage": SupplyVoltageNoVoltage2Shape,
    "supply-voltage.phase-missing": SupplyVoltagePhaseMissing2Shape,
    "supply-voltage.leg-missing": SupplyVoltageLegMissing2Shape,
    "supply-voltage.uneven-to-ground": SupplyVoltageUnevenToGround2Shape,
    "supply-voltage.plate-does-not-fit": SupplyVoltagePlateDoesNotFit2Shape,
    "supply-voltage.high-supply": SupplyVoltageHighSupply2Shape,
    "supply-voltage.low-supply": SupplyVoltageLowSupply2Shape,
    "supply-voltage.sag-under-load": SupplyVoltageSagUnderLoad2Shape,
    "supply-voltage.dip-not-marked": SupplyVoltageDipNotMarked2Shape,
    "supply-voltage.meter-cannot-tell": SupplyVoltageMeterCannotTell2Shape,
    "supply-voltage.within-standard": SupplyVoltageWithinStandard2Shape,
    "supply-voltage.too-close-to-standard": SupplyVoltageTooCloseToStandard2Shape,
    "supply-voltage.outside-standard": SupplyVoltageOutsideStandard2Shape,
    "supply-voltage.outside-at-times": SupplyVoltageOutsideAtTimes2Shape,
    "supply-voltage.standard-not-stated": SupplyVoltageStandardNotStated2Shape,
    "supply-voltage.week-within": SupplyVoltageWeekWithin2Shape,
    "supply-voltage.week-outside": SupplyVoltageWeekOutside2Shape,
    "supply-voltage.week-so-far": SupplyVoltageWeekSoFar2Shape,
    "supply-voltage.week-incomplete": SupplyVoltageWeekIncomplete2Shape,
    "supply-voltage.week-meter-cannot-tell": SupplyVoltageWeekMeterCannotTell2Shape,
    "supply-voltage.unbalance-within": SupplyVoltageUnbalanceWithin2Shape,
    "supply-voltage.unbalance-above": SupplyVoltageUnbalanceAbove2Shape,
    "supply-voltage.unbalance-too-close": SupplyVoltageUnbalanceTooClose2Shape,
    "supply-voltage.unbalance-above-5-percent": SupplyVoltageUnbalanceAbove5Percent2Shape,
    "supply-voltage.line-without-current": SupplyVoltageLineWithoutCurrent2Shape,
    "supply-voltage.current-unbalance-within": SupplyVoltageCurrentUnbalanceWithin2Shape,
    "supply-voltage.current-unbalance-above": SupplyVoltageCurrentUnbalanceAbove2Shape,
    "supply-voltage.full-load-enough": SupplyVoltageFullLoadEnough2Shape,
    "supply-voltage.full-load-too-low": SupplyVoltageFullLoadTooLow2Shape,
    "supply-voltage.full-load-too-close": SupplyVoltageFullLoadTooClose2Shape,
    "supply-voltage.full-load-far-off": SupplyVoltageFullLoadFarOff2Shape,
    "supply-voltage.full-load-impossible": SupplyVoltageFullLoadImpossible2Shape,
    "supply-voltage.ten-percent": SupplyVoltageTenPercent2Shape,
    "supply-voltage.exact-meter": SupplyVoltageExactMeter2Shape,
    "supply-voltage.moment-only": SupplyVoltageMomentOnly2Shape,
    "supply-voltage.no-sag": SupplyVoltageNoSag2Shape,
    "supply-voltage.standard-assumed": SupplyVoltageStandardAssumed2Shape,
    "supply-voltage.judged-as": SupplyVoltageJudgedAs2Shape,
    "supply-voltage.no-range-at-unit": SupplyVoltageNoRangeAtUnit2Shape,
    "supply-voltage.unbalance-limit": SupplyVoltageUnbalanceLimit2Shape,
    "supply-voltage.currents-not-judged": SupplyVoltageCurrentsNotJudged2Shape,
    "supply-voltage.starts-found": SupplyVoltageStartsFound2Shape,
    "supply-voltage.starts-unseen": SupplyVoltageStartsUnseen2Shape,
    "supply-voltage.start-dip": SupplyVoltageStartDip2Shape,
    "supply-voltage.large-sag": SupplyVoltageLargeSag2Shape,
    "supply-voltage.rise-under-load": SupplyVoltageRiseUnderLoad2Shape,
    "supply-voltage.transformer-tap": SupplyVoltageTransformerTap2Shape,
    "supply-voltage.narrow-plate": SupplyVoltageNarrowPlate2Shape,
    "supply-voltage.limited-time": SupplyVoltageLimitedTime2Shape,
    "supply-voltage.drop-to-unit": SupplyVoltageDropToUnit2Shape,
    "supply-voltage.derate": SupplyVoltageDerate2Shape,
    "supply-voltage.uneven-supply": SupplyVoltageUnevenSupply2Shape,
    "supply-voltage.line-grounded": SupplyVoltageLineGrounded2Shape,
    "supply-voltage.from-memory": SupplyVoltageFromMemory2Shape,
    "supply-voltage.do-not-energize": SupplyVoltageDoNotEnergize2Shape,
    "supply-voltage.find-missing-line": SupplyVoltageFindMissingLine2Shape,
    "supply-voltage.check-neutral": SupplyVoltageCheckNeutral2Shape,
    "supply-voltage.match-unit-and-supply": SupplyVoltageMatchUnitAndSupply2Shape,
    "supply-voltage.check-wiring": SupplyVoltageCheckWiring2Shape,
    "supply-voltage.read-at-service": SupplyVoltageReadAtService2Shape,
    "supply-voltage.call-utility": SupplyVoltageCallUtility2Shape,
    "supply-voltage.mark-starts": SupplyVoltageMarkStarts2Shape,
    "supply-voltage.measure-better": SupplyVoltageMeasureBetter2Shape,
    "supply-voltage.measure-finer": SupplyVoltageMeasureFiner2Shape,
    "supply-voltage.measure-at-full-load": SupplyVoltageMeasureAtFullLoad2Shape,
    "supply-voltage.state-standard": SupplyVoltageStateStandard2Shape,
    "supply-voltage.log-longer": SupplyVoltageLogLonger2Shape,
    "supply-voltage.even-out-load": SupplyVoltageEvenOutLoad2Shape,
  },
};

export const SupplyVoltageAssessmentPartsShape: Shape = {
  type: "SupplyVoltageAssessmentParts",
  fields: {
    nameplate: { words: ["pass", "fail", "inconclusive"] },
    "supply?": { words: ["pass", "fail", "inconclusive"] },
    "sag?": { words: ["pass", "fail", "inconclusive"] },
    "unbalance?": { words: ["pass", "fail", "inconclusive"] },
    "currentUnbalance?": { words: ["pass", "fail", "inconclusive"] },
  },
  about: {
    nameplate: "Against the nameplate.",
    supply: "Against the standard of the supply; missing where it has no range at that place.",
    sag: "The voltage to expect at full load, where it can be predicted.",
    unbalance: "Voltage unbalance; three phases only.",
    currentUnbalance: "Current unbalance; three phases with currents only.",
  },
};

export const NameplateVoltageRangeShape: Shape = {
  type: "NameplateVoltageRange",
  fields: {
    minimum: "voltage",
    maximum: "voltage",
    printed: "flag",
    ceiling: "voltage",
    rated: { list: "voltage" },
  },
  says: "The voltages that a nameplate allows.",
  about: {
    minimum: "Lowest voltage allowed.",
    maximum: "Highest voltage allowed.",
    printed: "Whether the maker printed the range.",
    ceiling:
      "Voltage above which the electronics are at risk: 260 V on a 230 V unit, in proportion on others.",
    rated: "The rated voltages, the lowest first.",
  },
};

export const SupplyRangeShape: Shape = {
  type: "SupplyRange",
  fields: { minimum: "voltage", maximum: "voltage", name: "text" },
  says: "A named range of a standard for one nominal voltage.",
  about: {
    minimum: "Lowest voltage allowed.",
    maximum: "Highest voltage allowed.",
    name: 'As the standard names it, such as "Range A".',
  },
};

export const VoltageUnbalanceShape: Shape = {
  type: "VoltageUnbalance",
  fields: {
    unbalance: "ratio",
    average: "voltage",
    deviation: "voltage",
    farthest: "number",
    "negativeSequence?": "ratio",
    "deratingFactor?": "number",
    addedTemperatureRise: "ratio",
  },
  says: "How uneven three voltages are, and what that does to a motor.",
  about: {
    unbalance: "Largest deviation from the average, in per cent of the average.",
    average: "Average of the three.",
    deviation: "The reading farthest from the average less the average: negative for a low leg.",
    farthest: "Position of that reading, 0 to 2.",
    negativeSequence:
      "Negative over positive sequence, the unbalance that EN 50160 limits; missing when no three phases can give these voltages.",
    deratingFactor:
      "Share of its rated power that a motor may give; missing above 5 %, where it must not run.",
    addedTemperatureRise:
      "How much more the windings heat up, in per cent of their temperature rise: about 2u².",
  },
};

export const PhaseUnbalanceOfCurrentShape: Shape = {
  type: "PhaseUnbalanceOfCurrent",
  fields: { unbalance: "ratio", average: "current", deviation: "current", farthest: "number" },
  says: "How uneven three readings are.",
  about: {
    unbalance: "Largest deviation from the average, in per cent of the average.",
    average: "Average of the three.",
    deviation: "The reading farthest from the average less the average: negative for a low leg.",
    farthest: "Position of that reading, 0 to 2.",
  },
};

export const SupplySagShape: Shape = {
  type: "SupplySag",
  fields: {
    sag: EstimateOfVoltageShape,
    share: "ratio",
    "sourceResistance?": EstimateOfResistanceShape,
    "voltageAtCurrent?": "voltage",
  },
  says: "How far the supply sags.",
  about: {
    sag: "Voltage at rest less voltage under load; negative when something else on the supply went off.",
    share: "The sag as a share of the voltage at rest.",
    sourceResistance:
      "Resistance of everything upstream of the meter: both conductors for one phase, one line for three. Missing without a current, or when the voltage rose.",
    voltageAtCurrent: "Voltage to expect at atCurrent.",
  },
};

export const VoltageLogStatisticsShape: Shape = {
  type: "VoltageLogStatistics",
  fields: {
    count: "number",
    duration: "duration",
    minimum: "voltage",
    maximum: "voltage",
    mean: "voltage",
    percentile5: "voltage",
    median: "voltage",
    percentile95: "voltage",
    timeBelow: "duration",
    timeAbove: "duration",
    shareOutside: "ratio",
  },
  says: "What a log of one voltage saw.",
  about: {
    count: "Readings in the log.",
    duration: "From the first reading to the last.",
    minimum: "Lowest reading.",
    maximum: "Highest reading.",
    mean: "Mean over time.",
    percentile5: "Stayed at or below it for 5 % of the time.",
    median: "Stayed at or below it for half of the time.",
    percentile95: "Stayed at or below it for 95 % of the time.",
    timeBelow: "Time below the range.",
    timeAbove: "Time above the range.",
    shareOutside: "Share of the time outside the range.",
  },
};

export const SupplyVoltageAssessmentLogShape: Shape = {
  type: "SupplyVoltageAssessmentLog",
  fields: { low: VoltageLogStatisticsShape, high: VoltageLogStatisticsShape },
  about: {
    low: "Of the only voltage, or of the lowest of three at each moment.",
    high: "Of the only voltage, or of the highest of three at each moment.",
  },
};

export const SupplyWeekAssessmentShape: Shape = {
  type: "SupplyWeekAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: SupplyVoltageStatementShape },
    assumptions: { list: SupplyVoltageStatementShape },
    cautions: { list: SupplyVoltageAssessmentCautionsItemShape },
    "actions?": { list: SupplyVoltageStatementShape },
    sources: { list: CitationShape },
    means: "number",
    outside10: "number",
    outside15: "number",
    shareWithin10: "ratio",
  },
  says: "The verdict on a week of a public supply.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    means:
      "Ten-minute means that count: whole intervals without a gap above a minute and without interruption.",
    outside10: "Of these, outside ±10 %.",
    outside15: "Of these, outside +10 % and −15 %.",
    shareWithin10: "Share of the means within ±10 %, in the worst week.",
  },
};

export const VoltageMonitorSettingsShape: Shape = {
  type: "VoltageMonitorSettings",
  fields: {
    lowCutOut: "voltage",
    highCutOut: "voltage",
    tripDelay: "duration",
    reconnectDelay: "duration",
    "unbalanceCutOut?": "ratio",
  },
  says: "Settings to suggest for a voltage monitor.",
  about: {
    lowCutOut: "Cut out below.",
    highCutOut: "Cut out above.",
    tripDelay:
      "Wait before cutting out, so that a motor start does not trip it; 2 s to 10 s is usual.",
    reconnectDelay:
      "Wait before reconnecting, so that pressures equalise; 3 min at least, 5 min is common.",
    unbalanceCutOut:
      "Cut out above this voltage unbalance, between the 2 % that makers allow and the 5 % at which a motor must not run; three phases only. Phase loss and reversal cut out at once.",
  },
};

export const SupplyVoltageAssessmentShape: Shape = {
  type: "SupplyVoltageAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": {
      words: [
        "board-at-risk",
        "no-voltage",
        "leg-missing",
        "phase-missing",
        "uneven-to-ground",
        "plate-does-not-fit",
        "high-supply",
        "low-supply",
        "sag-under-load",
        "sag-at-full-load",
        "unbalance",
        "current-unbalance",
        "outside-standard",
      ],
    },
    reasons: { list: SupplyVoltageStatementShape },
    assumptions: { list: SupplyVoltageStatementShape },
    cautions: { list: SupplyVoltageAssessmentCautionsItemShape },
    "actions?": { list: SupplyVoltageStatementShape },
    sources: { list: CitationShape },
    parts: SupplyVoltageAssessmentPartsShape,
    nameplateRange: NameplateVoltageRangeShape,
    "supplyRange?": SupplyRangeShape,
    lowest: EstimateOfVoltageShape,
    highest: EstimateOfVoltageShape,
    marginBelow: "voltage",
    marginAbove: "voltage",
    "unbalance?": VoltageUnbalanceShape,
    "currentUnbalance?": PhaseUnbalanceOfCurrentShape,
    "sag?": SupplySagShape,
    "log?": SupplyVoltageAssessmentLogShape,
    "week?": SupplyWeekAssessmentShape,
    "monitor?": VoltageMonitorSettingsShape,
  },
  says: "The verdict on a supply, with the figures behind it.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    parts: "The parts, all of which have to hold.",
    nameplateRange: "What the nameplate allows.",
    supplyRange:
      "The narrowest range of the standard that all readings keep; missing when they keep none.",
    lowest: "Lowest reading, starting aside.",
    highest: "Highest reading, also while starting.",
    marginBelow:
      "From the nameplate's lowest voltage up to the lowest reading; negative when below.",
    marginAbove:
      "From the highest reading up to the nameplate's highest voltage; negative when above.",
    unbalance: "The worst voltage unbalance; three phases only.",
    currentUnbalance: "The worst current unbalance, of readings under load.",
    sag: "Sag between rest and load, where both were read.",
    log: "What a log saw against the nameplate: of the only voltage, or of the lowest and highest of three lines.",
    week: "EN 50160 on a log of a 230 V or 400 V service, the worst line.",
    monitor: "Voltage monitor settings to suggest; missing when the plate does not fit the supply.",
  },
};

export const LoggedVoltageShape: Shape = {
  type: "LoggedVoltage",
  fields: { elapsed: "duration", voltage: "voltage" },
  says: "A reading of a log.",
  about: { elapsed: "Time since the start of the log.", voltage: "The voltage, 0 or more." },
};

export const AssessSupplyWeekInputShape: Shape = {
  type: "AssessSupplyWeekInput",
  fields: { nominal: "voltage", readings: { list: LoggedVoltageShape } },
  about: { nominal: "Nominal voltage of what was logged.", readings: "The log." },
};

export const ResistanceHeatAtInputShape: Shape = {
  type: "ResistanceHeatAtInput",
  fields: { rated: "voltage", actual: "voltage" },
  about: { rated: "Rated voltage of the heater.", actual: "Voltage that it gets." },
};

export const ResistanceHeatAtResultShape: Shape = {
  type: "ResistanceHeatAtResult",
  fields: { powerShare: "number", currentShare: "number" },
  about: { powerShare: "Power over rated power.", currentShare: "Current over rated current." },
};

export const SupplySagInputShape: Shape = {
  type: "SupplySagInput",
  fields: {
    rest: "voltage",
    load: "voltage",
    "loadCurrent?": "current",
    "restCurrent?": "current",
    "phases?": { words: [1, 3] },
    "meter?": VoltmeterShape,
    "atCurrent?": "current",
  },
  says: "Voltage at rest and under load.",
  about: {
    rest: "Voltage while the unit is off, above 0; the average of the lines for three phases.",
    load: "Voltage while it runs, above 0, read at the same place.",
    loadCurrent: "Current while it runs; the average of the lines for three phases.",
    restCurrent: "Current while it is off; 0 when left out.",
    phases: "Phases that feed the unit; 1 when left out.",
    meter: "The voltmeter; its common error cancels in the difference.",
    atCurrent:
      "Current at which the voltage is wanted, such as the rated-load amperes of an inverter that now runs slowly.",
  },
};

export const VoltageLogStatisticsInputShape: Shape = {
  type: "VoltageLogStatisticsInput",
  fields: { readings: { list: LoggedVoltageShape }, range: VoltageRangeShape },
  about: { readings: "The log.", range: "The range that the voltage should keep." },
};

export const VoltageMonitorSettingsInputShape: Shape = {
  type: "VoltageMonitorSettingsInput",
  fields: { nameplate: VoltageNameplateShape, supply: NominalSupplyShape },
  about: { nameplate: "What the unit allows.", supply: "What feeds it." },
};

export const SupplyVoltageRangesInputShape: Shape = {
  type: "SupplyVoltageRangesInput",
  fields: { supply: NominalSupplyShape, measuredAt: { words: ["service", "unit"] } },
};
