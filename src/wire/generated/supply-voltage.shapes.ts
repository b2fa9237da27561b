// Which shapes have the types of supply-voltage?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import { byStandard } from "../named.ts";
import {
  EstimateOfResistanceShape,
  EstimateOfVoltageShape,
  SafetyStatements,
  VerbatimShape,
} from "./assessment.shapes.ts";
import { CitationShape, CitationSourceShape } from "./refrigerants.shapes.ts";

export function VoltageRangeShape(): Shape {
  return once(VoltageRangeShape, () => ({
    type: "VoltageRange",
    fields: { minimum: "voltage", maximum: "voltage" },
    docs: {
      "": "Lowest and highest voltage.",
      minimum: "Lowest voltage allowed.",
      maximum: "Highest voltage allowed.",
    },
  }));
}

export function VoltageNameplateShape(): Shape {
  return once(VoltageNameplateShape, () => ({
    type: "VoltageNameplate",
    fields: {
      rated: { either: ["voltage", { list: "voltage" }] },
      "range?": VoltageRangeShape(),
      "phases?": { words: [1, 3] },
      "ratedCurrent?": "current",
    },
    docs: {
      "": "What the nameplate says about the voltage.",
      rated: 'Rated voltage, or both of a dual plate: [volt(208), volt(230)] for "208/230".',
      range: "The range that the maker prints; it wins over any rule.",
      phases: "Phases that the plate asks for.",
      ratedCurrent:
        "Current at which the unit runs at full load: rated-load or full-load amperes, not MCA.",
    },
  }));
}

export function VoltageStandardRangesShape(): Shape {
  return once(VoltageStandardRangesShape, () => ({
    type: "VoltageStandardRanges",
    fields: {
      service: { list: { items: ["text", "number", "number"] } },
      unit: { list: { items: ["text", "number", "number"] } },
    },
  }));
}

export function VoltageStandardShape(): Shape {
  return once(VoltageStandardShape, () => ({
    type: "VoltageStandard",
    fields: {
      name: "text",
      source: CitationSourceShape(),
      clause: "text",
      table: { list: { list: "number" } },
      "alsoWritten?": { list: { items: ["number", "number"] } },
      "fromMemory?": "flag",
      ranges: VoltageStandardRangesShape(),
    },
    docs: {
      "": "A standard of supply voltages. Make one of your own for a jurisdiction that the library lacks.",
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
  }));
}

export function NominalSupplyShape(): Shape {
  return once(NominalSupplyShape, () => ({
    type: "NominalSupply",
    fields: {
      voltage: "voltage",
      phases: { words: [1, 3] },
      "standard?": { either: [byStandard, VoltageStandardShape()] },
      "range?": VoltageRangeShape(),
    },
    docs: {
      "": "The supply that feeds the unit.",
      voltage:
        "Nominal voltage between the conductors that feed the unit; line to line for three phases.",
      phases: "Phases that feed the unit.",
      standard:
        "The standard. Where it is left out, one is taken only for a nominal voltage that no other standard here knows (120, 208, 240, 277, 480 and 600 V: ANSI C84.1; 400 V: IEC 60038; 100 V: Japan); for any other it is asked for.",
      range: "The range that the utility promises; it goes before any standard.",
    },
  }));
}

export function SinglePhaseReadingShape(): Shape {
  return once(SinglePhaseReadingShape, () => ({
    type: "SinglePhaseReading",
    fields: {
      "state?": { words: ["start", "load", "rest"] },
      "elapsed?": "duration",
      voltage: "voltage",
      "current?": "current",
      "lineToGround?": { list: "voltage" },
    },
    docs: {
      "": "One reading of a supply that feeds the unit by two conductors.",
      state: "What the unit did.",
      elapsed: "Time since the first reading of a log; on all readings or on none, and growing.",
      voltage: "Voltage between the two conductors that feed the unit.",
      current: "Current of the unit at that moment.",
      lineToGround: "Voltages from each of the two conductors to ground, where they were read too.",
    },
  }));
}

export function ThreePhaseReadingShape(): Shape {
  return once(ThreePhaseReadingShape, () => ({
    type: "ThreePhaseReading",
    fields: {
      "state?": { words: ["start", "load", "rest"] },
      "elapsed?": "duration",
      lineToLine: { list: "voltage" },
      "currents?": { list: "current" },
    },
    docs: {
      "": "One set of readings of a three-phase supply.",
      state: "What the unit did.",
      elapsed: "Time since the first reading of a log; on all readings or on none, and growing.",
      lineToLine: "Voltages between lines 1 and 2, 2 and 3, 3 and 1.",
      currents: "Currents of lines 1, 2 and 3 at that moment.",
    },
  }));
}

export function VoltmeterShape(): Shape {
  return once(VoltmeterShape, () => ({
    type: "Voltmeter",
    fields: {
      "accuracyOfReading?": "ratio",
      "accuracy?": "voltage",
      "resolution?": "voltage",
      "repeatability?": "voltage",
    },
    docs: {
      "": 'The voltmeter. The limits of a digital one, "±(0.7 % + 2 counts)", are { accuracyOfReading: percent(0.7), accuracy: volt(0.2), resolution: volt(0.1) } on a 0.1 V display.',
      accuracyOfReading: "Limits of error that grow with the reading, ±; added to accuracy.",
      accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
      resolution: "Smallest step that the display shows.",
      repeatability: "Standard deviation of repeated readings of the same thing.",
    },
  }));
}

export function SupplyVoltageInputShape(): Shape {
  return once(SupplyVoltageInputShape, () => ({
    type: "SupplyVoltageInput",
    fields: {
      nameplate: VoltageNameplateShape(),
      supply: NominalSupplyShape(),
      readings: { list: { either: [SinglePhaseReadingShape(), ThreePhaseReadingShape()] } },
      measuredAt: { words: ["service", "unit"] },
      "meter?": VoltmeterShape(),
      "unbalanceLimit?": "ratio",
      "confidence?": "number",
    },
    docs: {
      "": "Nameplate, supply and what was read.",
      nameplate: "What the unit allows.",
      supply: "What feeds it.",
      readings: "One reading or a log, at rest and under load.",
      measuredAt: "At the service entrance or at the unit.",
      meter: "The voltmeter; readings count as exact when left out.",
      unbalanceLimit: "Largest voltage unbalance that the maker allows; 2 % when left out.",
      confidence: "How sure the verdict has to be, one-sided, 0.5 to below 1; 0.95 when left out.",
    },
  }));
}

export function SupplyVoltageReadingsShape(): Shape {
  return once(SupplyVoltageReadingsShape, () => ({
    type: "SupplyVoltageReadings",
    words: ["supply-voltage.readings.one", "supply-voltage.readings.several"],
  }));
}

export function SupplyVoltageStatements(): StatementTable {
  return once(SupplyVoltageStatements, () => ({
    "supply-voltage.board-at-risk": { high: "voltage", ceiling: "voltage" },
    "supply-voltage.call-utility": {},
    "supply-voltage.check-neutral": {},
    "supply-voltage.check-wiring": {},
    "supply-voltage.current-unbalance-above": { unbalance: "ratio", limit: "ratio" },
    "supply-voltage.current-unbalance-within": { unbalance: "ratio", limit: "ratio" },
    "supply-voltage.currents-not-judged": {},
    "supply-voltage.derate": {},
    "supply-voltage.dip-not-marked": { low: "voltage", minimum: "voltage" },
    "supply-voltage.do-not-energize": {},
    "supply-voltage.do-not-run-motor": {},
    "supply-voltage.drop-to-unit": { drop: "voltage" },
    "supply-voltage.even-out-load": {},
    "supply-voltage.exact-meter": {},
    "supply-voltage.find-missing-line": {},
    "supply-voltage.from-memory": {
      standard: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
    },
    "supply-voltage.full-load-enough": { there: "voltage", minimum: "voltage", current: "current" },
    "supply-voltage.full-load-far-off": {
      there: "voltage",
      minimum: "voltage",
      current: "current",
    },
    "supply-voltage.full-load-impossible": { current: "current", minimum: "voltage" },
    "supply-voltage.full-load-too-close": {
      there: "voltage",
      minimum: "voltage",
      current: "current",
    },
    "supply-voltage.full-load-too-low": {
      there: "voltage",
      minimum: "voltage",
      current: "current",
    },
    "supply-voltage.high-supply": { high: "voltage", maximum: "voltage" },
    "supply-voltage.judged-as": { nominal: "voltage", as: "voltage" },
    "supply-voltage.large-sag": { share: "ratio" },
    "supply-voltage.leg-missing": { low: "voltage", nominal: "voltage" },
    "supply-voltage.limited-time": {
      range: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
    },
    "supply-voltage.line-grounded": {},
    "supply-voltage.line-to-neutral": {},
    "supply-voltage.line-without-current": {},
    "supply-voltage.log-longer": { missing: "duration" },
    "supply-voltage.log-near-limit": {},
    "supply-voltage.low-supply": { low: "voltage", minimum: "voltage" },
    "supply-voltage.mark-starts": {},
    "supply-voltage.match-unit-and-supply": {},
    "supply-voltage.measure-at-full-load": {},
    "supply-voltage.measure-better": { needed: "voltage" },
    "supply-voltage.measure-finer": {},
    "supply-voltage.meter-cannot-tell": {
      low: "voltage",
      high: "voltage",
      readings: SupplyVoltageReadingsShape(),
      minimum: "voltage",
      maximum: "voltage",
    },
    "supply-voltage.moment-only": {},
    "supply-voltage.narrow-plate": { near: "voltage", nominal: "voltage" },
    "supply-voltage.no-range-at-unit": {
      standard: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
    },
    "supply-voltage.no-sag": {},
    "supply-voltage.no-voltage": { low: "voltage" },
    "supply-voltage.outside-at-times": {
      range: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
      standard: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
      low: "voltage",
      high: "voltage",
      readings: SupplyVoltageReadingsShape(),
      minimum: "voltage",
      maximum: "voltage",
    },
    "supply-voltage.outside-standard": {
      range: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
      standard: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
      low: "voltage",
      high: "voltage",
      readings: SupplyVoltageReadingsShape(),
      minimum: "voltage",
      maximum: "voltage",
    },
    "supply-voltage.phase-missing": { lines: { list: "voltage" } },
    "supply-voltage.plate-does-not-fit": {
      minimum: "voltage",
      maximum: "voltage",
      nominal: "voltage",
    },
    "supply-voltage.read-at-service": {},
    "supply-voltage.rise-under-load": { load: "voltage", rest: "voltage" },
    "supply-voltage.sag-under-load": { low: "voltage", minimum: "voltage" },
    "supply-voltage.standard-assumed": {
      standard: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
      nominal: "voltage",
    },
    "supply-voltage.standard-not-stated": { nominal: "voltage" },
    "supply-voltage.start-dip": { dip: "voltage" },
    "supply-voltage.starts-found": { count: "number" },
    "supply-voltage.starts-unseen": { interval: "duration" },
    "supply-voltage.state-connection": {},
    "supply-voltage.state-standard": {},
    "supply-voltage.ten-percent": {},
    "supply-voltage.times-in-order": {},
    "supply-voltage.too-close-to-standard": {
      range: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
      standard: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
      low: "voltage",
      high: "voltage",
      readings: SupplyVoltageReadingsShape(),
      minimum: "voltage",
      maximum: "voltage",
    },
    "supply-voltage.transformer-tap": { near: "voltage" },
    "supply-voltage.unbalance-above": { unbalance: "ratio", limit: "ratio" },
    "supply-voltage.unbalance-above-5-percent": { unbalance: "ratio" },
    "supply-voltage.unbalance-limit": { limit: "ratio" },
    "supply-voltage.unbalance-too-close": { unbalance: "ratio", limit: "ratio" },
    "supply-voltage.unbalance-within": {
      unbalance: "ratio",
      limit: "ratio",
      factor: "number",
      rise: "ratio",
    },
    "supply-voltage.uneven-supply": {},
    "supply-voltage.uneven-to-ground": { lines: { list: "voltage" } },
    "supply-voltage.week-incomplete": { missing: "duration" },
    "supply-voltage.week-meter-cannot-tell": {},
    "supply-voltage.week-outside": {
      within: "ratio",
      means: "number",
      outside10: "number",
      outside15: "number",
    },
    "supply-voltage.week-so-far": {
      within: "ratio",
      means: "number",
      outside10: "number",
      outside15: "number",
    },
    "supply-voltage.week-within": {
      within: "ratio",
      means: "number",
      outside10: "number",
      outside15: "number",
    },
    "supply-voltage.within-nameplate": {
      low: "voltage",
      high: "voltage",
      readings: SupplyVoltageReadingsShape(),
      minimum: "voltage",
      maximum: "voltage",
    },
    "supply-voltage.within-standard": {
      range: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
      standard: {
        either: [
          VerbatimShape(),
          {
            words: [
              "supply-voltage.name.japan-article-38",
              "supply-voltage.name.stated-supply",
              "supply-voltage.name.only-range",
              "supply-voltage.name.utilization-range",
              "supply-voltage.name.range-a",
              "supply-voltage.name.range-b",
            ],
          },
        ],
      },
      low: "voltage",
      high: "voltage",
      readings: SupplyVoltageReadingsShape(),
      minimum: "voltage",
      maximum: "voltage",
    },
    "supply-voltage.would-have-failed": { beyond: "voltage" },
  }));
}

export function SupplyVoltageStatementShape(): Shape {
  return once(SupplyVoltageStatementShape, () => ({
    type: "SupplyVoltageStatement",
    statements: [SupplyVoltageStatements()],
  }));
}

export function SupplyVoltageAssessmentCautionsItemShape(): Shape {
  return once(SupplyVoltageAssessmentCautionsItemShape, () => ({
    type: "SupplyVoltageAssessmentCautionsItem",
    statements: [SafetyStatements(), SupplyVoltageStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function SupplyVoltageAssessmentPartsShape(): Shape {
  return once(SupplyVoltageAssessmentPartsShape, () => ({
    type: "SupplyVoltageAssessmentParts",
    fields: {
      nameplate: { words: ["pass", "fail", "inconclusive"] },
      "supply?": { words: ["pass", "fail", "inconclusive"] },
      "sag?": { words: ["pass", "fail", "inconclusive"] },
      "unbalance?": { words: ["pass", "fail", "inconclusive"] },
      "currentUnbalance?": { words: ["pass", "fail", "inconclusive"] },
    },
    docs: {
      nameplate: "Against the nameplate.",
      supply: "Against the standard of the supply; missing where it has no range at that place.",
      sag: "The voltage to expect at full load, where it can be predicted.",
      unbalance: "Voltage unbalance; three phases only.",
      currentUnbalance: "Current unbalance; three phases with currents only.",
    },
  }));
}

export function NameplateVoltageRangeShape(): Shape {
  return once(NameplateVoltageRangeShape, () => ({
    type: "NameplateVoltageRange",
    fields: {
      minimum: "voltage",
      maximum: "voltage",
      printed: "flag",
      ceiling: "voltage",
      rated: { list: "voltage" },
    },
    docs: {
      "": "The voltages that a nameplate allows.",
      minimum: "Lowest voltage allowed.",
      maximum: "Highest voltage allowed.",
      printed: "Whether the maker printed the range.",
      ceiling:
        "Voltage above which the electronics are at risk: 260 V on a 230 V unit, in proportion on others.",
      rated: "The rated voltages, the lowest first.",
    },
  }));
}

export function SupplyRangeShape(): Shape {
  return once(SupplyRangeShape, () => ({
    type: "SupplyRange",
    fields: { minimum: "voltage", maximum: "voltage", name: "text" },
    docs: {
      "": "A named range of a standard for one nominal voltage.",
      minimum: "Lowest voltage allowed.",
      maximum: "Highest voltage allowed.",
      name: 'As the standard names it, such as "Range A".',
    },
  }));
}

export function VoltageUnbalanceShape(): Shape {
  return once(VoltageUnbalanceShape, () => ({
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
    docs: {
      "": "How uneven three voltages are, and what that does to a motor.",
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
  }));
}

export function PhaseUnbalanceOfCurrentShape(): Shape {
  return once(PhaseUnbalanceOfCurrentShape, () => ({
    type: "PhaseUnbalanceOfCurrent",
    fields: { unbalance: "ratio", average: "current", deviation: "current", farthest: "number" },
    docs: {
      "": "How uneven three readings are.",
      unbalance: "Largest deviation from the average, in per cent of the average.",
      average: "Average of the three.",
      deviation: "The reading farthest from the average less the average: negative for a low leg.",
      farthest: "Position of that reading, 0 to 2.",
    },
  }));
}

export function SupplySagShape(): Shape {
  return once(SupplySagShape, () => ({
    type: "SupplySag",
    fields: {
      sag: EstimateOfVoltageShape(),
      share: "ratio",
      "sourceResistance?": EstimateOfResistanceShape(),
      "voltageAtCurrent?": "voltage",
    },
    docs: {
      "": "How far the supply sags.",
      sag: "Voltage at rest less voltage under load; negative when something else on the supply went off.",
      share: "The sag as a share of the voltage at rest.",
      sourceResistance:
        "Resistance of everything upstream of the meter: both conductors for one phase, one line for three. Missing without a current, or when the voltage rose.",
      voltageAtCurrent: "Voltage to expect at atCurrent.",
    },
  }));
}

export function VoltageLogStatisticsShape(): Shape {
  return once(VoltageLogStatisticsShape, () => ({
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
    docs: {
      "": "What a log of one voltage saw.",
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
  }));
}

export function SupplyVoltageAssessmentLogShape(): Shape {
  return once(SupplyVoltageAssessmentLogShape, () => ({
    type: "SupplyVoltageAssessmentLog",
    fields: { low: VoltageLogStatisticsShape(), high: VoltageLogStatisticsShape() },
    docs: {
      low: "Of the only voltage, or of the lowest of three at each moment.",
      high: "Of the only voltage, or of the highest of three at each moment.",
    },
  }));
}

export function SupplyWeekAssessmentShape(): Shape {
  return once(SupplyWeekAssessmentShape, () => ({
    type: "SupplyWeekAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      reasons: { list: SupplyVoltageStatementShape() },
      assumptions: { list: SupplyVoltageStatementShape() },
      cautions: { list: SupplyVoltageAssessmentCautionsItemShape() },
      "actions?": { list: SupplyVoltageStatementShape() },
      sources: { list: CitationShape() },
      means: "number",
      outside10: "number",
      outside15: "number",
      shareWithin10: "ratio",
    },
    docs: {
      "": "The verdict on a week of a public supply.",
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
  }));
}

export function VoltageMonitorSettingsShape(): Shape {
  return once(VoltageMonitorSettingsShape, () => ({
    type: "VoltageMonitorSettings",
    fields: {
      lowCutOut: "voltage",
      highCutOut: "voltage",
      tripDelay: "duration",
      reconnectDelay: "duration",
      "unbalanceCutOut?": "ratio",
    },
    docs: {
      "": "Settings to suggest for a voltage monitor.",
      lowCutOut: "Cut out below.",
      highCutOut: "Cut out above.",
      tripDelay:
        "Wait before cutting out, so that a motor start does not trip it; 2 s to 10 s is usual.",
      reconnectDelay:
        "Wait before reconnecting, so that pressures equalise; 3 min at least, 5 min is common.",
      unbalanceCutOut:
        "Cut out above this voltage unbalance, between the 2 % that makers allow and the 5 % at which a motor must not run; three phases only. Phase loss and reversal cut out at once.",
    },
  }));
}

export function SupplyVoltageAssessmentShape(): Shape {
  return once(SupplyVoltageAssessmentShape, () => ({
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
      reasons: { list: SupplyVoltageStatementShape() },
      assumptions: { list: SupplyVoltageStatementShape() },
      cautions: { list: SupplyVoltageAssessmentCautionsItemShape() },
      "actions?": { list: SupplyVoltageStatementShape() },
      sources: { list: CitationShape() },
      parts: SupplyVoltageAssessmentPartsShape(),
      nameplateRange: NameplateVoltageRangeShape(),
      "supplyRange?": SupplyRangeShape(),
      lowest: EstimateOfVoltageShape(),
      highest: EstimateOfVoltageShape(),
      marginBelow: "voltage",
      marginAbove: "voltage",
      "unbalance?": VoltageUnbalanceShape(),
      "currentUnbalance?": PhaseUnbalanceOfCurrentShape(),
      "sag?": SupplySagShape(),
      "log?": SupplyVoltageAssessmentLogShape(),
      "week?": SupplyWeekAssessmentShape(),
      "monitor?": VoltageMonitorSettingsShape(),
    },
    docs: {
      "": "The verdict on a supply, with the figures behind it.",
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
      monitor:
        "Voltage monitor settings to suggest; missing when the plate does not fit the supply.",
    },
  }));
}

export function LoggedVoltageShape(): Shape {
  return once(LoggedVoltageShape, () => ({
    type: "LoggedVoltage",
    fields: { elapsed: "duration", voltage: "voltage" },
    docs: {
      "": "A reading of a log.",
      elapsed: "Time since the start of the log.",
      voltage: "The voltage, 0 or more.",
    },
  }));
}

export function AssessSupplyWeekInputShape(): Shape {
  return once(AssessSupplyWeekInputShape, () => ({
    type: "AssessSupplyWeekInput",
    fields: { nominal: "voltage", readings: { list: LoggedVoltageShape() } },
    docs: { nominal: "Nominal voltage of what was logged.", readings: "The log." },
  }));
}

export function ResistanceHeatAtInputShape(): Shape {
  return once(ResistanceHeatAtInputShape, () => ({
    type: "ResistanceHeatAtInput",
    fields: { rated: "voltage", actual: "voltage" },
    docs: { rated: "Rated voltage of the heater.", actual: "Voltage that it gets." },
  }));
}

export function ResistanceHeatAtResultShape(): Shape {
  return once(ResistanceHeatAtResultShape, () => ({
    type: "ResistanceHeatAtResult",
    fields: { powerShare: "number", currentShare: "number" },
    docs: { powerShare: "Power over rated power.", currentShare: "Current over rated current." },
  }));
}

export function SupplyVoltageRangesInputShape(): Shape {
  return once(SupplyVoltageRangesInputShape, () => ({
    type: "SupplyVoltageRangesInput",
    fields: { supply: NominalSupplyShape(), measuredAt: { words: ["service", "unit"] } },
  }));
}

export function SupplySagInputShape(): Shape {
  return once(SupplySagInputShape, () => ({
    type: "SupplySagInput",
    fields: {
      rest: "voltage",
      load: "voltage",
      "loadCurrent?": "current",
      "restCurrent?": "current",
      "phases?": { words: [1, 3] },
      "meter?": VoltmeterShape(),
      "atCurrent?": "current",
    },
    docs: {
      "": "Voltage at rest and under load.",
      rest: "Voltage while the unit is off, above 0; the average of the lines for three phases.",
      load: "Voltage while it runs, above 0, read at the same place.",
      loadCurrent: "Current while it runs; the average of the lines for three phases.",
      restCurrent: "Current while it is off; 0 when left out.",
      phases: "Phases that feed the unit; 1 when left out.",
      meter: "The voltmeter; its common error cancels in the difference.",
      atCurrent:
        "Current at which the voltage is wanted, such as the rated-load amperes of an inverter that now runs slowly.",
    },
  }));
}

export function VoltageLogStatisticsInputShape(): Shape {
  return once(VoltageLogStatisticsInputShape, () => ({
    type: "VoltageLogStatisticsInput",
    fields: { readings: { list: LoggedVoltageShape() }, range: VoltageRangeShape() },
    docs: { readings: "The log.", range: "The range that the voltage should keep." },
  }));
}

export function VoltageMonitorSettingsInputShape(): Shape {
  return once(VoltageMonitorSettingsInputShape, () => ({
    type: "VoltageMonitorSettingsInput",
    fields: { nameplate: VoltageNameplateShape(), supply: NominalSupplyShape() },
    docs: { nameplate: "What the unit allows.", supply: "What feeds it." },
  }));
}
