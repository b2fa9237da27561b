// Which shapes have the types of supply-voltage?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byStandard } from "../named.ts";
import {
  EstimateOfResistanceShape,
  EstimateOfVoltageShape,
  VerbatimShape,
} from "./assessment.shapes.ts";
import { CitationShape, CitationSourceShape } from "./refrigerants.shapes.ts";

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
    source: CitationSourceShape,
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
    "state?": { words: ["start", "load", "rest"] },
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
    "state?": { words: ["start", "load", "rest"] },
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

export const SupplyVoltageWouldHaveFailedValuesShape: Shape = {
  type: "SupplyVoltageWouldHaveFailedValues",
  fields: { beyond: "voltage" },
};

export const SupplyVoltageBoardAtRiskValuesShape: Shape = {
  type: "SupplyVoltageBoardAtRiskValues",
  fields: { high: "voltage", ceiling: "voltage" },
};

export const SupplyVoltageNoVoltageValuesShape: Shape = {
  type: "SupplyVoltageNoVoltageValues",
  fields: { low: "voltage" },
};

export const SupplyVoltagePhaseMissingValuesShape: Shape = {
  type: "SupplyVoltagePhaseMissingValues",
  fields: { lines: { list: "voltage" } },
};

export const SupplyVoltageLegMissingValuesShape: Shape = {
  type: "SupplyVoltageLegMissingValues",
  fields: { low: "voltage", nominal: "voltage" },
};

export const SupplyVoltageUnevenToGroundValuesShape: Shape = {
  type: "SupplyVoltageUnevenToGroundValues",
  fields: { lines: { list: "voltage" } },
};

export const SupplyVoltagePlateDoesNotFitValuesShape: Shape = {
  type: "SupplyVoltagePlateDoesNotFitValues",
  fields: { minimum: "voltage", maximum: "voltage", nominal: "voltage" },
};

export const SupplyVoltageHighSupplyValuesShape: Shape = {
  type: "SupplyVoltageHighSupplyValues",
  fields: { high: "voltage", maximum: "voltage" },
};

export const SupplyVoltageLowSupplyValuesShape: Shape = {
  type: "SupplyVoltageLowSupplyValues",
  fields: { low: "voltage", minimum: "voltage" },
};

export const SupplyVoltageSagUnderLoadValuesShape: Shape = {
  type: "SupplyVoltageSagUnderLoadValues",
  fields: { low: "voltage", minimum: "voltage" },
};

export const SupplyVoltageDipNotMarkedValuesShape: Shape = {
  type: "SupplyVoltageDipNotMarkedValues",
  fields: { low: "voltage", minimum: "voltage" },
};

export const SupplyVoltageWithinStandardValuesShape: Shape = {
  type: "SupplyVoltageWithinStandardValues",
  fields: {
    range: {
      either: [
        VerbatimShape,
        {
          words: [
            "supply-voltage.name.japan-article-38",
            "supply-voltage.name.stated-supply",
            "supply-voltage.name.only-range",
            "supply-voltage.name.utilization-range",
          ],
        },
      ],
    },
    standard: {
      either: [
        VerbatimShape,
        {
          words: [
            "supply-voltage.name.japan-article-38",
            "supply-voltage.name.stated-supply",
            "supply-voltage.name.only-range",
            "supply-voltage.name.utilization-range",
          ],
        },
      ],
    },
    low: "voltage",
    high: "voltage",
    readings: { words: ["supply-voltage.readings.one", "supply-voltage.readings.several"] },
    minimum: "voltage",
    maximum: "voltage",
  },
  about: { readings: "Whether low and high are one figure as they are shown." },
};

export const SupplyVoltageStandardNotStatedValuesShape: Shape = {
  type: "SupplyVoltageStandardNotStatedValues",
  fields: { nominal: "voltage" },
};

export const SupplyVoltageWeekWithinValuesShape: Shape = {
  type: "SupplyVoltageWeekWithinValues",
  fields: { within: "ratio", means: "number", outside10: "number", outside15: "number" },
};

export const SupplyVoltageWeekIncompleteValuesShape: Shape = {
  type: "SupplyVoltageWeekIncompleteValues",
  fields: { missing: "duration" },
};

export const SupplyVoltageUnbalanceWithinValuesShape: Shape = {
  type: "SupplyVoltageUnbalanceWithinValues",
  fields: { unbalance: "ratio", limit: "ratio", factor: "number", rise: "ratio" },
};

export const SupplyVoltageUnbalanceAboveValuesShape: Shape = {
  type: "SupplyVoltageUnbalanceAboveValues",
  fields: { unbalance: "ratio", limit: "ratio" },
};

export const SupplyVoltageUnbalanceAbove5PercentValuesShape: Shape = {
  type: "SupplyVoltageUnbalanceAbove5PercentValues",
  fields: { unbalance: "ratio" },
};

export const SupplyVoltageFullLoadEnoughValuesShape: Shape = {
  type: "SupplyVoltageFullLoadEnoughValues",
  fields: { there: "voltage", minimum: "voltage", current: "current" },
};

export const SupplyVoltageFullLoadImpossibleValuesShape: Shape = {
  type: "SupplyVoltageFullLoadImpossibleValues",
  fields: { current: "current", minimum: "voltage" },
};

export const SupplyVoltageStandardAssumedValuesShape: Shape = {
  type: "SupplyVoltageStandardAssumedValues",
  fields: {
    standard: {
      either: [
        VerbatimShape,
        {
          words: [
            "supply-voltage.name.japan-article-38",
            "supply-voltage.name.stated-supply",
            "supply-voltage.name.only-range",
            "supply-voltage.name.utilization-range",
          ],
        },
      ],
    },
    nominal: "voltage",
  },
};

export const SupplyVoltageJudgedAsValuesShape: Shape = {
  type: "SupplyVoltageJudgedAsValues",
  fields: { nominal: "voltage", as: "voltage" },
};

export const SupplyVoltageNoRangeAtUnitValuesShape: Shape = {
  type: "SupplyVoltageNoRangeAtUnitValues",
  fields: {
    standard: {
      either: [
        VerbatimShape,
        {
          words: [
            "supply-voltage.name.japan-article-38",
            "supply-voltage.name.stated-supply",
            "supply-voltage.name.only-range",
            "supply-voltage.name.utilization-range",
          ],
        },
      ],
    },
  },
};

export const SupplyVoltageUnbalanceLimitValuesShape: Shape = {
  type: "SupplyVoltageUnbalanceLimitValues",
  fields: { limit: "ratio" },
};

export const SupplyVoltageStartsFoundValuesShape: Shape = {
  type: "SupplyVoltageStartsFoundValues",
  fields: { count: "number" },
};

export const SupplyVoltageStartsUnseenValuesShape: Shape = {
  type: "SupplyVoltageStartsUnseenValues",
  fields: { interval: "duration" },
};

export const SupplyVoltageStartDipValuesShape: Shape = {
  type: "SupplyVoltageStartDipValues",
  fields: { dip: "voltage" },
};

export const SupplyVoltageLargeSagValuesShape: Shape = {
  type: "SupplyVoltageLargeSagValues",
  fields: { share: "ratio" },
};

export const SupplyVoltageRiseUnderLoadValuesShape: Shape = {
  type: "SupplyVoltageRiseUnderLoadValues",
  fields: { load: "voltage", rest: "voltage" },
};

export const SupplyVoltageTransformerTapValuesShape: Shape = {
  type: "SupplyVoltageTransformerTapValues",
  fields: { near: "voltage" },
};

export const SupplyVoltageNarrowPlateValuesShape: Shape = {
  type: "SupplyVoltageNarrowPlateValues",
  fields: { near: "voltage", nominal: "voltage" },
};

export const SupplyVoltageLimitedTimeValuesShape: Shape = {
  type: "SupplyVoltageLimitedTimeValues",
  fields: {
    range: {
      either: [
        VerbatimShape,
        {
          words: [
            "supply-voltage.name.japan-article-38",
            "supply-voltage.name.stated-supply",
            "supply-voltage.name.only-range",
            "supply-voltage.name.utilization-range",
          ],
        },
      ],
    },
  },
};

export const SupplyVoltageDropToUnitValuesShape: Shape = {
  type: "SupplyVoltageDropToUnitValues",
  fields: { drop: "voltage" },
};

export const SupplyVoltageFromMemoryValuesShape: Shape = {
  type: "SupplyVoltageFromMemoryValues",
  fields: {
    standard: {
      either: [
        VerbatimShape,
        {
          words: [
            "supply-voltage.name.japan-article-38",
            "supply-voltage.name.stated-supply",
            "supply-voltage.name.only-range",
            "supply-voltage.name.utilization-range",
          ],
        },
      ],
    },
  },
};

export const SupplyVoltageMeasureBetterValuesShape: Shape = {
  type: "SupplyVoltageMeasureBetterValues",
  fields: { needed: "voltage" },
};

export const SupplyVoltageLogLongerValuesShape: Shape = {
  type: "SupplyVoltageLogLongerValues",
  fields: { missing: "duration" },
};

export const SupplyVoltageStatementShape: Shape = {
  type: "SupplyVoltageStatement",
  statements: {
    "supply-voltage.within-nameplate": SupplyVoltageWithinNameplateValuesShape,
    "supply-voltage.would-have-failed": SupplyVoltageWouldHaveFailedValuesShape,
    "supply-voltage.board-at-risk": SupplyVoltageBoardAtRiskValuesShape,
    "supply-voltage.no-voltage": SupplyVoltageNoVoltageValuesShape,
    "supply-voltage.phase-missing": SupplyVoltagePhaseMissingValuesShape,
    "supply-voltage.leg-missing": SupplyVoltageLegMissingValuesShape,
    "supply-voltage.uneven-to-ground": SupplyVoltageUnevenToGroundValuesShape,
    "supply-voltage.plate-does-not-fit": SupplyVoltagePlateDoesNotFitValuesShape,
    "supply-voltage.high-supply": SupplyVoltageHighSupplyValuesShape,
    "supply-voltage.low-supply": SupplyVoltageLowSupplyValuesShape,
    "supply-voltage.sag-under-load": SupplyVoltageSagUnderLoadValuesShape,
    "supply-voltage.dip-not-marked": SupplyVoltageDipNotMarkedValuesShape,
    "supply-voltage.meter-cannot-tell": SupplyVoltageWithinNameplateValuesShape,
    "supply-voltage.within-standard": SupplyVoltageWithinStandardValuesShape,
    "supply-voltage.too-close-to-standard": SupplyVoltageWithinStandardValuesShape,
    "supply-voltage.outside-standard": SupplyVoltageWithinStandardValuesShape,
    "supply-voltage.outside-at-times": SupplyVoltageWithinStandardValuesShape,
    "supply-voltage.standard-not-stated": SupplyVoltageStandardNotStatedValuesShape,
    "supply-voltage.week-within": SupplyVoltageWeekWithinValuesShape,
    "supply-voltage.week-outside": SupplyVoltageWeekWithinValuesShape,
    "supply-voltage.week-so-far": SupplyVoltageWeekWithinValuesShape,
    "supply-voltage.week-incomplete": SupplyVoltageWeekIncompleteValuesShape,
    "supply-voltage.week-meter-cannot-tell": { fields: {} },
    "supply-voltage.unbalance-within": SupplyVoltageUnbalanceWithinValuesShape,
    "supply-voltage.unbalance-above": SupplyVoltageUnbalanceAboveValuesShape,
    "supply-voltage.unbalance-too-close": SupplyVoltageUnbalanceAboveValuesShape,
    "supply-voltage.unbalance-above-5-percent": SupplyVoltageUnbalanceAbove5PercentValuesShape,
    "supply-voltage.line-without-current": { fields: {} },
    "supply-voltage.current-unbalance-within": SupplyVoltageUnbalanceAboveValuesShape,
    "supply-voltage.current-unbalance-above": SupplyVoltageUnbalanceAboveValuesShape,
    "supply-voltage.full-load-enough": SupplyVoltageFullLoadEnoughValuesShape,
    "supply-voltage.full-load-too-low": SupplyVoltageFullLoadEnoughValuesShape,
    "supply-voltage.full-load-too-close": SupplyVoltageFullLoadEnoughValuesShape,
    "supply-voltage.full-load-far-off": SupplyVoltageFullLoadEnoughValuesShape,
    "supply-voltage.full-load-impossible": SupplyVoltageFullLoadImpossibleValuesShape,
    "supply-voltage.ten-percent": { fields: {} },
    "supply-voltage.exact-meter": { fields: {} },
    "supply-voltage.moment-only": { fields: {} },
    "supply-voltage.no-sag": { fields: {} },
    "supply-voltage.standard-assumed": SupplyVoltageStandardAssumedValuesShape,
    "supply-voltage.judged-as": SupplyVoltageJudgedAsValuesShape,
    "supply-voltage.no-range-at-unit": SupplyVoltageNoRangeAtUnitValuesShape,
    "supply-voltage.unbalance-limit": SupplyVoltageUnbalanceLimitValuesShape,
    "supply-voltage.currents-not-judged": { fields: {} },
    "supply-voltage.starts-found": SupplyVoltageStartsFoundValuesShape,
    "supply-voltage.starts-unseen": SupplyVoltageStartsUnseenValuesShape,
    "supply-voltage.start-dip": SupplyVoltageStartDipValuesShape,
    "supply-voltage.large-sag": SupplyVoltageLargeSagValuesShape,
    "supply-voltage.rise-under-load": SupplyVoltageRiseUnderLoadValuesShape,
    "supply-voltage.transformer-tap": SupplyVoltageTransformerTapValuesShape,
    "supply-voltage.narrow-plate": SupplyVoltageNarrowPlateValuesShape,
    "supply-voltage.limited-time": SupplyVoltageLimitedTimeValuesShape,
    "supply-voltage.drop-to-unit": SupplyVoltageDropToUnitValuesShape,
    "supply-voltage.derate": { fields: {} },
    "supply-voltage.uneven-supply": { fields: {} },
    "supply-voltage.line-grounded": { fields: {} },
    "supply-voltage.from-memory": SupplyVoltageFromMemoryValuesShape,
    "supply-voltage.do-not-energize": { fields: {} },
    "supply-voltage.find-missing-line": { fields: {} },
    "supply-voltage.check-neutral": { fields: {} },
    "supply-voltage.match-unit-and-supply": { fields: {} },
    "supply-voltage.check-wiring": { fields: {} },
    "supply-voltage.read-at-service": { fields: {} },
    "supply-voltage.call-utility": { fields: {} },
    "supply-voltage.mark-starts": { fields: {} },
    "supply-voltage.measure-better": SupplyVoltageMeasureBetterValuesShape,
    "supply-voltage.log-near-limit": { fields: {} },
    "supply-voltage.measure-finer": { fields: {} },
    "supply-voltage.measure-at-full-load": { fields: {} },
    "supply-voltage.state-standard": { fields: {} },
    "supply-voltage.log-longer": SupplyVoltageLogLongerValuesShape,
    "supply-voltage.even-out-load": { fields: {} },
    "supply-voltage.times-in-order": { fields: {} },
    "supply-voltage.state-connection": { fields: {} },
    "supply-voltage.do-not-run-motor": { fields: {} },
    "supply-voltage.line-to-neutral": { fields: {} },
  },
};

export const SupplyVoltageAssessmentCautionsItemShape: Shape = {
  type: "SupplyVoltageAssessmentCautionsItem",
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
    "supply-voltage.within-nameplate": SupplyVoltageWithinNameplateValuesShape,
    "supply-voltage.would-have-failed": SupplyVoltageWouldHaveFailedValuesShape,
    "supply-voltage.board-at-risk": SupplyVoltageBoardAtRiskValuesShape,
    "supply-voltage.no-voltage": SupplyVoltageNoVoltageValuesShape,
    "supply-voltage.phase-missing": SupplyVoltagePhaseMissingValuesShape,
    "supply-voltage.leg-missing": SupplyVoltageLegMissingValuesShape,
    "supply-voltage.uneven-to-ground": SupplyVoltageUnevenToGroundValuesShape,
    "supply-voltage.plate-does-not-fit": SupplyVoltagePlateDoesNotFitValuesShape,
    "supply-voltage.high-supply": SupplyVoltageHighSupplyValuesShape,
    "supply-voltage.low-supply": SupplyVoltageLowSupplyValuesShape,
    "supply-voltage.sag-under-load": SupplyVoltageSagUnderLoadValuesShape,
    "supply-voltage.dip-not-marked": SupplyVoltageDipNotMarkedValuesShape,
    "supply-voltage.meter-cannot-tell": SupplyVoltageWithinNameplateValuesShape,
    "supply-voltage.within-standard": SupplyVoltageWithinStandardValuesShape,
    "supply-voltage.too-close-to-standard": SupplyVoltageWithinStandardValuesShape,
    "supply-voltage.outside-standard": SupplyVoltageWithinStandardValuesShape,
    "supply-voltage.outside-at-times": SupplyVoltageWithinStandardValuesShape,
    "supply-voltage.standard-not-stated": SupplyVoltageStandardNotStatedValuesShape,
    "supply-voltage.week-within": SupplyVoltageWeekWithinValuesShape,
    "supply-voltage.week-outside": SupplyVoltageWeekWithinValuesShape,
    "supply-voltage.week-so-far": SupplyVoltageWeekWithinValuesShape,
    "supply-voltage.week-incomplete": SupplyVoltageWeekIncompleteValuesShape,
    "supply-voltage.week-meter-cannot-tell": { fields: {} },
    "supply-voltage.unbalance-within": SupplyVoltageUnbalanceWithinValuesShape,
    "supply-voltage.unbalance-above": SupplyVoltageUnbalanceAboveValuesShape,
    "supply-voltage.unbalance-too-close": SupplyVoltageUnbalanceAboveValuesShape,
    "supply-voltage.unbalance-above-5-percent": SupplyVoltageUnbalanceAbove5PercentValuesShape,
    "supply-voltage.line-without-current": { fields: {} },
    "supply-voltage.current-unbalance-within": SupplyVoltageUnbalanceAboveValuesShape,
    "supply-voltage.current-unbalance-above": SupplyVoltageUnbalanceAboveValuesShape,
    "supply-voltage.full-load-enough": SupplyVoltageFullLoadEnoughValuesShape,
    "supply-voltage.full-load-too-low": SupplyVoltageFullLoadEnoughValuesShape,
    "supply-voltage.full-load-too-close": SupplyVoltageFullLoadEnoughValuesShape,
    "supply-voltage.full-load-far-off": SupplyVoltageFullLoadEnoughValuesShape,
    "supply-voltage.full-load-impossible": SupplyVoltageFullLoadImpossibleValuesShape,
    "supply-voltage.ten-percent": { fields: {} },
    "supply-voltage.exact-meter": { fields: {} },
    "supply-voltage.moment-only": { fields: {} },
    "supply-voltage.no-sag": { fields: {} },
    "supply-voltage.standard-assumed": SupplyVoltageStandardAssumedValuesShape,
    "supply-voltage.judged-as": SupplyVoltageJudgedAsValuesShape,
    "supply-voltage.no-range-at-unit": SupplyVoltageNoRangeAtUnitValuesShape,
    "supply-voltage.unbalance-limit": SupplyVoltageUnbalanceLimitValuesShape,
    "supply-voltage.currents-not-judged": { fields: {} },
    "supply-voltage.starts-found": SupplyVoltageStartsFoundValuesShape,
    "supply-voltage.starts-unseen": SupplyVoltageStartsUnseenValuesShape,
    "supply-voltage.start-dip": SupplyVoltageStartDipValuesShape,
    "supply-voltage.large-sag": SupplyVoltageLargeSagValuesShape,
    "supply-voltage.rise-under-load": SupplyVoltageRiseUnderLoadValuesShape,
    "supply-voltage.transformer-tap": SupplyVoltageTransformerTapValuesShape,
    "supply-voltage.narrow-plate": SupplyVoltageNarrowPlateValuesShape,
    "supply-voltage.limited-time": SupplyVoltageLimitedTimeValuesShape,
    "supply-voltage.drop-to-unit": SupplyVoltageDropToUnitValuesShape,
    "supply-voltage.derate": { fields: {} },
    "supply-voltage.uneven-supply": { fields: {} },
    "supply-voltage.line-grounded": { fields: {} },
    "supply-voltage.from-memory": SupplyVoltageFromMemoryValuesShape,
    "supply-voltage.do-not-energize": { fields: {} },
    "supply-voltage.find-missing-line": { fields: {} },
    "supply-voltage.check-neutral": { fields: {} },
    "supply-voltage.match-unit-and-supply": { fields: {} },
    "supply-voltage.check-wiring": { fields: {} },
    "supply-voltage.read-at-service": { fields: {} },
    "supply-voltage.call-utility": { fields: {} },
    "supply-voltage.mark-starts": { fields: {} },
    "supply-voltage.measure-better": SupplyVoltageMeasureBetterValuesShape,
    "supply-voltage.log-near-limit": { fields: {} },
    "supply-voltage.measure-finer": { fields: {} },
    "supply-voltage.measure-at-full-load": { fields: {} },
    "supply-voltage.state-standard": { fields: {} },
    "supply-voltage.log-longer": SupplyVoltageLogLongerValuesShape,
    "supply-voltage.even-out-load": { fields: {} },
    "supply-voltage.times-in-order": { fields: {} },
    "supply-voltage.state-connection": { fields: {} },
    "supply-voltage.do-not-run-motor": { fields: {} },
    "supply-voltage.line-to-neutral": { fields: {} },
  },
  with: { "kind?": { words: ["finding", "danger", "governing"] } },
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

export const SupplyVoltageRangesInputShape: Shape = {
  type: "SupplyVoltageRangesInput",
  fields: { supply: NominalSupplyShape, measuredAt: { words: ["service", "unit"] } },
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
