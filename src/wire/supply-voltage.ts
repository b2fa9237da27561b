// How do the inputs and results of the supply check travel as JSON?
// Follows the types of supply-voltage. A standard goes by its name, one of the caller's own by its fields.
// Does not cover the parts on their own: supply-voltage-parts.ts.
import type { Outcome } from "../assessment/index.ts";
import { voltageStandards } from "../commissioning/index.ts";
import type {
  LoadState,
  NameplateVoltageRange,
  NominalSupply,
  PhaseUnbalance,
  RangeColumns,
  ReadingMoment,
  SinglePhaseReading,
  SupplyRange,
  SupplySag,
  SupplyVoltageAssessment,
  SupplyVoltageCause,
  SupplyVoltageInput,
  SupplyWeekAssessment,
  ThreePhaseReading,
  VoltageLogStatistics,
  VoltageMeasuredAt,
  VoltageMonitorSettings,
  VoltageNameplate,
  VoltageRange,
  VoltageStandard,
  VoltageUnbalance,
  Voltmeter,
} from "../supply-voltage/index.ts";
import { type Codec, codecOf } from "./codec.ts";
import { estimate, verdict } from "./verdict.ts";
import {
  either,
  type FieldsOf,
  type FormOf,
  list,
  type ObjectOf,
  of,
  words,
} from "./wire-shape.ts";

const columns = (): FormOf<readonly RangeColumns[]> =>
  list({ items: either("text", "number"), count: 3 } as const);

const standard = (): FormOf<VoltageStandard> =>
  either(
    { named: voltageStandards },
    of<VoltageStandard>({
      name: "text",
      source: "text",
      clause: "text",
      table: list(list("number")),
      ranges: of<Record<VoltageMeasuredAt, readonly RangeColumns[]>>({
        service: columns(),
        unit: columns(),
      }),
    }),
  );

const phases = { words: [1, 3] } as const;

/** Lowest and highest voltage. */
export const range = (): FieldsOf<VoltageRange> => ({ minimum: "voltage", maximum: "voltage" });

/** What the unit allows. */
export const nameplate = (): ObjectOf<VoltageNameplate> =>
  of<VoltageNameplate>({
    rated: either("voltage", list("voltage")),
    "range?": of<VoltageRange>(range()),
    "phases?": phases,
    "ratedCurrent?": "current",
  });

/** What feeds the unit. */
export const nominalSupply = (): ObjectOf<NominalSupply> =>
  of<NominalSupply>({ voltage: "voltage", phases, "standard?": standard() });

/** The voltmeter. */
export const voltmeter = (): ObjectOf<Voltmeter> =>
  of<Voltmeter>({
    "accuracy?": "voltage",
    "resolution?": "voltage",
    "repeatability?": "voltage",
    "accuracyOfReading?": "ratio",
  });

/** Where it was measured. */
export const measuredAt = (): FormOf<VoltageMeasuredAt> =>
  words<VoltageMeasuredAt>({ service: true, unit: true });

const moment = (): FieldsOf<ReadingMoment> => ({
  "state?": words<LoadState>({ rest: true, load: true, start: true }),
  "elapsed?": "duration",
});

/** A range of the standard. */
export const supplyRange = (): ObjectOf<SupplyRange> =>
  of<SupplyRange>({ ...range(), name: "text" });

/** What the nameplate allows. */
export const nameplateRange = (): ObjectOf<NameplateVoltageRange> =>
  of<NameplateVoltageRange>({
    ...range(),
    printed: "flag",
    ceiling: "voltage",
    rated: list("voltage"),
  });

/** How uneven three currents are. */
export const currentUnbalanceShape = (): ObjectOf<PhaseUnbalance<"current">> =>
  of<PhaseUnbalance<"current">>({
    unbalance: "ratio",
    average: "current",
    deviation: "current",
    farthest: "number",
  });

/** How uneven three voltages are. */
export const voltageUnbalanceShape = (): ObjectOf<VoltageUnbalance> =>
  of<VoltageUnbalance>({
    unbalance: "ratio",
    average: "voltage",
    deviation: "voltage",
    farthest: "number",
    "negativeSequence?": "ratio",
    "deratingFactor?": "number",
    addedTemperatureRise: "ratio",
  });

/** Sag under load. */
export const sag = (): ObjectOf<SupplySag> =>
  of<SupplySag>({
    sag: estimate("voltage", "voltage"),
    share: "ratio",
    "sourceResistance?": estimate("resistance", "resistance"),
    "voltageAtCurrent?": "voltage",
  });

/** What a log saw. */
export const statistics = (): ObjectOf<VoltageLogStatistics> =>
  of<VoltageLogStatistics>({
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
  });

/** The verdict on a week. */
export const week = (): ObjectOf<SupplyWeekAssessment> =>
  of<SupplyWeekAssessment>({
    ...verdict(),
    means: "number",
    outside10: "number",
    outside15: "number",
    shareWithin10: "ratio",
  });

/** What to set a voltage monitor to. */
export const monitorSettings = (): ObjectOf<VoltageMonitorSettings> =>
  of<VoltageMonitorSettings>({
    lowCutOut: "voltage",
    highCutOut: "voltage",
    tripDelay: "duration",
    reconnectDelay: "duration",
    "unbalanceCutOut?": "ratio",
  });

const outcome = () => words<Outcome>({ pass: true, fail: true, inconclusive: true });

/**
 * JSON of what `assessSupplyVoltage` takes.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { volt } from "hvac-install-math/quantity";
 * import { iec60038 } from "hvac-install-math/supply-voltage";
 * import { assessSupplyVoltageInput } from "hvac-install-math/wire";
 *
 * const supply = { voltage: volt(230), phases: 1, standard: iec60038 } as const;
 * const input = { nameplate: { rated: volt(230) }, supply, readings: [{ voltage: volt(231) }], measuredAt: "unit" } as const;
 * const text = assessSupplyVoltageInput.stringify(input);
 * text.includes('"standard":"iec-60038"'); // => true
 * ```
 */
export const assessSupplyVoltageInput: Codec<SupplyVoltageInput> =
  /* @__PURE__ */ codecOf<SupplyVoltageInput>({
    name: "input",
    shape: () =>
      of<SupplyVoltageInput>({
        nameplate: nameplate(),
        supply: nominalSupply(),
        readings: list(
          either(
            of<SinglePhaseReading>({ ...moment(), voltage: "voltage", "current?": "current" }),
            of<ThreePhaseReading>({
              ...moment(),
              lineToLine: list("voltage"),
              "currents?": list("current"),
            }),
          ),
        ),
        measuredAt: measuredAt(),
        "meter?": voltmeter(),
        "unbalanceLimit?": "ratio",
        "confidence?": "number",
      }),
  });

/** JSON of what `assessSupplyVoltage` gives. Source: the library's own format. */
export const assessSupplyVoltageResult: Codec<SupplyVoltageAssessment> =
  /* @__PURE__ */ codecOf<SupplyVoltageAssessment>({
    name: "result",
    shape: () =>
      of<SupplyVoltageAssessment>({
        ...verdict(),
        "cause?": words<SupplyVoltageCause>({
          "board-at-risk": true,
          "no-voltage": true,
          "leg-missing": true,
          "phase-missing": true,
          "plate-does-not-fit": true,
          "high-supply": true,
          "low-supply": true,
          "sag-under-load": true,
          unbalance: true,
          "current-unbalance": true,
          "outside-standard": true,
        }),
        parts: of<SupplyVoltageAssessment["parts"]>({
          nameplate: outcome(),
          supply: outcome(),
          "unbalance?": outcome(),
          "currentUnbalance?": outcome(),
        }),
        nameplateRange: nameplateRange(),
        "supplyRange?": supplyRange(),
        lowest: estimate("voltage", "voltage"),
        highest: estimate("voltage", "voltage"),
        marginBelow: "voltage",
        marginAbove: "voltage",
        "unbalance?": voltageUnbalanceShape(),
        "currentUnbalance?": currentUnbalanceShape(),
        "sag?": sag(),
        "log?": of<NonNullable<SupplyVoltageAssessment["log"]>>({
          low: statistics(),
          high: statistics(),
        }),
        "week?": week(),
        "monitor?": monitorSettings(),
      }),
  });
