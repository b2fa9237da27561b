// What do the rules of IEC 60364 and its national forms share? Devices, their tripping, and how a table is written.
// Follows IEC 60898-1:2015, IEC 60269 (from memory), IEC 60228.
// Does not cover the tables of one jurisdiction: those stand in its own file.
import type { Material, MetricSize } from "../conductor-size.ts";
import type { InstallationMethod } from "../wiring.ts";
import type { CircuitRules, PrintedTable } from "./circuit-rules.ts";
import type { VoltageRating } from "./supply-system.ts";

/** IEC 60898-1:2015, 5.3.2: preferred ratings, with 8 A. */
export const breakerRatings: readonly number[] = [
  6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125,
];

/** gG fuses: the same without 13 A, and smaller and larger ones; from memory. */
export const fuseRatings: readonly number[] = [
  2, 4, 6, 8, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160,
];

/** IEC 60898-1:2015, tables 2 and 7; curves for compressors are common practice, no source. */
export const breakerTripping: NonNullable<CircuitRules["tripping"]> = {
  noTrip: 1.13, // for 1 h up to 63 A
  trip: 1.45,
  curves: { B: [3, 5], C: [5, 10], D: [10, 20] },
  compressor: ["C", "D"],
};

/** Ampacity over rating: I2 ≤ 1.45 Iz. A breaker's I2 is 1.45 In; a gG fuse's 2.1, 1.9 and 1.6 In (2.1 from memory). */
export const overloadMargins: NonNullable<CircuitRules["ampacityPerRating"]> = {
  breaker: [[Number.POSITIVE_INFINITY, 1]],
  fuse: [
    [4, 2.1 / 1.45],
    [15.99, 1.9 / 1.45],
    [Number.POSITIVE_INFINITY, 1.6 / 1.45],
  ],
};

/** Voltage markings, from memory. */
export const metricVoltageRatings: PrintedTable<VoltageRating> = {
  columns: ["to ground", "between"],
  // biome-ignore format: one marking per line
  rows: [
    ["230 V",     230, 230],
    ["230/400 V", 230, 400],
    ["400 V",     400, 400],
  ],
};

/** IEC 60228: largest resistance at 20 °C, classes 1 and 2, Ω/km; 10 mm² aluminum from memory. */
// biome-ignore format: printed like the table
export const iec60228: PrintedTable<MetricSize> = {
  columns: ["area", "copper solid", "copper stranded", "aluminum stranded"],
  rows: [
    ["1 mm²",     1, 18.1, 18.1,  null],
    ["1.5 mm²", 1.5, 12.1, 12.1,  null],
    ["2.5 mm²", 2.5, 7.41, 7.41,  null],
    ["4 mm²",     4, 4.61, 4.61,  null],
    ["6 mm²",     6, 3.08, 3.08,  null],
    ["10 mm²",   10, 1.83, 1.83,  3.08],
    ["16 mm²",   16, 1.15, 1.15,  1.91],
    ["25 mm²",   25, .727, .727,  1.20],
    ["35 mm²",   35, .524, .524,  .868],
    ["50 mm²",   50, .387, .387,  .641],
  ],
};

/** The sizes from 1.5 mm² on. */
// biome-ignore format: one line
export const sizesFrom1p5: readonly MetricSize[] = [
  "1.5 mm²", "2.5 mm²", "4 mm²", "6 mm²", "10 mm²", "16 mm²", "25 mm²", "35 mm²", "50 mm²",
];

/** A table with a row per method and a value per size, the last sizes of the list where there are fewer. */
export function byMethod(
  sizes: readonly MetricSize[],
  material: Material,
  insulation: "70 °C" | "90 °C",
  loaded: 2 | 3,
  methods: Readonly<Partial<Record<InstallationMethod, readonly number[]>>>,
): PrintedTable<MetricSize> {
  const lists = Object.entries(methods);
  return {
    columns: lists.map(([method]) => `${material} ${insulation} ${method} ${loaded}`),
    rows: sizes.map((size, i) => [
      size,
      ...lists.map(([, values]) => values[i - (sizes.length - values.length)] ?? null),
    ]),
  };
}
