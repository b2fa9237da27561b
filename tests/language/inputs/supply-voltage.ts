// What else it takes to hear all that the module says: readings, most of them of a supply that is not fit.
import { ampere, minute, percent, second, volt } from "hvac-install-math/quantity";
import type * as supplyVoltage from "hvac-install-math/supply-voltage";
import {
  ansiC84,
  britishSupply,
  iec60038,
  type SupplyVoltageInput,
  type VoltageReading,
} from "hvac-install-math/supply-voltage";
import type { Inputs } from "../../faults/catalogue.ts";

const nameplate = {
  rated: [volt(208), volt(230)],
  range: { minimum: volt(187), maximum: volt(253) },
  phases: 1,
} as const;
type Change = Partial<SupplyVoltageInput>;

const reading = (state: VoltageReading["state"], volts: number, amperes?: number) => ({
  ...(state && { state }),
  voltage: volt(volts),
  ...(amperes !== undefined && { current: ampere(amperes) }),
});
/** One phase at 240 V, read at the unit, unless said otherwise. */
const single = (volts: readonly number[], change: Change = {}): [SupplyVoltageInput] => [
  {
    nameplate,
    supply: { voltage: volt(240), phases: 1, standard: ansiC84 },
    readings: volts.map((one) => reading(undefined, one)),
    measuredAt: "unit",
    ...change,
  },
];
const european = (change: Change = {}, standard = iec60038): Change => ({
  nameplate: { rated: volt(230) },
  supply: { voltage: volt(230), phases: 1, standard },
  ...change,
});
/** At rest and under load. */
const loaded = (rest: number, load: number, amperes: number, full?: number, change: Change = {}) =>
  single([], {
    nameplate: { ...nameplate, ...(full && { ratedCurrent: ampere(full) }) },
    readings: [reading("rest", rest, 0), reading("load", load, amperes)],
    ...change,
  });
/** Three phases at 480 V. */
const three = (
  lines: readonly number[],
  amperes?: readonly number[],
  change: Change = {},
  state: VoltageReading["state"] | null = "load",
): [SupplyVoltageInput] => [
  {
    nameplate: { rated: volt(460), phases: 3 },
    supply: { voltage: volt(480), phases: 3, standard: ansiC84 },
    readings: [
      {
        ...(state && { state }),
        lineToLine: lines.map((one) => volt(one)),
        ...(amperes && { currents: amperes.map((one) => ampere(one)) }),
      },
    ],
    measuredAt: "unit",
    ...change,
  },
];
/** A log with a reading every second. */
const log = (volts: readonly number[], amperes?: readonly number[], change: Change = {}) =>
  single([], {
    readings: volts.map((one, i) => ({
      ...reading(undefined, one, amperes?.[i]),
      elapsed: second(i),
    })),
    ...change,
  });
const steady = Array.from({ length: 30 }, () => 240);
const dipping = [...steady, 150, 240, ...steady];

/** A week with a reading a minute, `low` of its ten-minute means below the rest. */
const week = (low: number, volts: number, days = 7) =>
  Array.from({ length: days * 1440 + 1 }, (_, i) => ({
    elapsed: minute(i),
    voltage: volt(i < low * 10 ? volts : 230),
  }));

export const inputs: Partial<Inputs<typeof supplyVoltage>> = {
  assessSupplyVoltage: [
    single([240]),
    single([330]),
    single([3]),
    single([122]),
    single([300]),
    single([150]),
    single([187.4], { meter: { accuracy: volt(2) } }),
    single([187.02], { meter: { accuracy: volt(0.05) } }),
    single([207], { meter: { accuracy: volt(3) } }),
    single([216]),
    single([212], { measuredAt: "service" }),
    single([200], { supply: { voltage: volt(240), phases: 1 } }),
    single([230], { supply: { voltage: volt(236), phases: 1 } }),
    single([230], { supply: { voltage: volt(230), phases: 1, standard: ansiC84 } }),
    single([300], { nameplate: { rated: volt(120) } }),
    single([240], { nameplate: { rated: volt(208) } }),
    single([240], { nameplate: { rated: volt(300) } }),
    single([258]),
    single([240], {
      supply: {
        voltage: volt(240),
        phases: 1,
        range: { minimum: volt(230), maximum: volt(250) },
      },
    }),
    single([240], {
      readings: [{ voltage: volt(240), lineToGround: [volt(240), volt(2)] }],
    }),
    single([240], {
      readings: [{ voltage: volt(240), lineToGround: [volt(150), volt(90)] }],
    }),
    single([240], {
      readings: [
        { voltage: volt(240), elapsed: minute(1) },
        { voltage: volt(240), elapsed: minute(0) },
      ],
    }),
    loaded(240, 180, 10),
    loaded(220, 240, 10),
    loaded(240, 200, 10, 12),
    loaded(240, 220, 10, 26.5, { meter: { accuracy: volt(2) } }),
    loaded(240, 220, 5, 24),
    loaded(240, 210, 5, 80),
    loaded(240, 210, 10, 19),
    log(dipping),
    log(dipping, [...steady.map(() => 1), 60, 12, ...steady.map(() => 12)]),
    three([480, 478, 300]),
    three([480, 470, 455]),
    three([480, 470, 456], undefined, { meter: { resolution: volt(20) } }),
    three([480, 470, 420]),
    three([480, 478, 481], [10, 10, 0]),
    three([480, 478, 481], [10, 10, 14]),
    three([480, 478, 481], [10, 10, 14], {}, null),
    three([480, 478, 277]),
    single([230], european()),
    single([230], european({ measuredAt: "service" }, britishSupply)),
    single([212], european()),
    single([201], european({ measuredAt: "unit" })),
    single([202], european({ measuredAt: "service" })),
    single([], european({ measuredAt: "service", readings: week(0, 230) })),
    single([], european({ measuredAt: "service", readings: week(5, 200) })),
    single([], european({ measuredAt: "service", readings: week(100, 200) })),
    single(
      [],
      european({
        measuredAt: "service",
        readings: week(100, 207.2),
        meter: { accuracy: volt(1) },
      }),
    ),
    single([200], european({ supply: { voltage: volt(200), phases: 1 } })),
    single([101], {
      nameplate: { rated: volt(100) },
      supply: { voltage: volt(100), phases: 1 },
    }),
    single([101], {
      nameplate: { rated: volt(100) },
      supply: { voltage: volt(100), phases: 1 },
      measuredAt: "service",
    }),
  ],
  assessSupplyWeek: [
    [{ nominal: volt(230), readings: week(0, 230) }],
    [{ nominal: volt(230), readings: week(100, 200) }],
  ],
  unbalanceDerating: [[percent(6)]],
  nameplateVoltageRange: [[{ rated: [volt(115), volt(230)] }]],
};
