// What do the international rules say? The overload condition, cable tables and breaker curves of the IEC.
// Follows IEC 60364-4-43:2008, 433.1; IEC 60364-5-52:2009, annexes B and G; IEC 60898-1:2015; IEC 60228.
// Does not cover national rules, earth-fault loop impedance, residual-current devices, or XLPE cables.
import { statement } from "../../assessment/assessment.ts";
import { ohmPerKm } from "../../quantity/units/electricity.ts";
import { m } from "../../quantity/units/geometry.ts";
import type { MetricSize } from "../conductor-size.ts";
import type { CircuitRules, PrintedTable } from "./circuit-rules.ts";

/**
 * Tables B.52.2 (two loaded conductors) and B.52.4 (three loaded): PVC 70 °C, copper, 30 °C in air, A.
 * From memory, except B2 and C with three loaded conductors.
 */
// biome-ignore format: printed like the table
const tableB52: PrintedTable<MetricSize> = {
  columns: [
    "copper A1 2", "copper A1 3", "copper A2 2", "copper A2 3", "copper B1 2", "copper B1 3",
    "copper B2 2", "copper B2 3", "copper C 2", "copper C 3",
  ],
  rows: [
    ["1.5 mm²", 14.5, 13.5,  14.0, 13.0,  17.5, 15.5,  16.5, 15.0,  19.5, 17.5],
    ["2.5 mm²", 19.5, 18.0,  18.5, 17.5,  24.0, 21.0,  23.0, 20.0,  27.0, 24.0],
    ["4 mm²",   26.0, 24.0,  25.0, 23.0,  32.0, 28.0,  30.0, 27.0,  36.0, 32.0],
    ["6 mm²",   34.0, 31.0,  32.0, 29.0,  41.0, 36.0,  38.0, 34.0,  46.0, 41.0],
    ["10 mm²",  46.0, 42.0,  43.0, 39.0,  57.0, 50.0,  52.0, 46.0,  63.0, 57.0],
    ["16 mm²",  61.0, 56.0,  57.0, 52.0,  76.0, 68.0,  69.0, 62.0,  85.0, 76.0],
  ],
};

/** Table B.52.14, PVC: factor by ambient air temperature in °C. From memory, except 35 to 55 °C. */
// biome-ignore format: printed like the table
const tableB52p14: PrintedTable<number> = {
  columns: ["70 °C"],
  rows: [
    [10, 1.22], [15, 1.17], [20, 1.12], [25, 1.06], [30, 1.00], [35, 0.94],
    [40, 0.87], [45, 0.79], [50, 0.71], [55, 0.61], [60, 0.50],
  ],
};

/** IEC 60228: largest resistance at 20 °C, classes 1 and 2, Ω/km. From memory. */
// biome-ignore format: printed like the table
const iec60228: PrintedTable<MetricSize> = {
  columns: ["area", "copper solid", "copper stranded"],
  rows: [
    ["1.5 mm²", 1.5, 12.1, 12.1],
    ["2.5 mm²", 2.5, 7.41, 7.41],
    ["4 mm²",     4, 4.61, 4.61],
    ["6 mm²",     6, 3.08, 3.08],
    ["10 mm²",   10, 1.83, 1.83],
    ["16 mm²",   16, 1.15, 1.15],
  ],
};

/** IEC 60898-1: preferred ratings, with 8 A. */
const ratings = [6, 8, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125];

/**
 * The international rules: the device protects the cable, Ib ≤ In ≤ Iz and I2 ≤ 1.45 Iz. Here the plate's
 * minimum circuit ampacity stands for the design current Ib, and its largest overcurrent protection for the
 * largest fuse that the manufacturer allows.
 *
 * National rules and the local authority override it.
 *
 * Source: IEC 60364-4-43:2008, 433.1; IEC 60364-5-52:2009, annexes B and G; IEC 60898-1:2015, in
 * reproductions; figures from memory are listed in the module's guide.
 */
export const iec60364: CircuitRules<"metric"> = {
  family: "metric",
  name: "IEC 60364",
  source: "iec-60364-4-43",
  citations: [
    { source: "iec-60364-4-43", clause: "433.1" },
    { source: "iec-60364-5-52", clause: "tables B.52.2, B.52.4, B.52.14, B.52.17, annex G" },
    { source: "iec-60898-1", clause: "5.3 and table 7" },
    { source: "iec-60228", clause: "" },
  ],
  ratings: { breaker: ratings, fuse: [2, 4, ...ratings.filter((r) => r !== 13), 160] }, // fuses from memory
  smallestRating: 6,
  proposes: "smallest",
  ampacityFactor: 1,
  deviceProtectsConductor: true, // 433.1
  ampacityPerRating: {
    breaker: [[Number.POSITIVE_INFINITY, 1]], // I2 = 1.45 In makes I2 ≤ 1.45 Iz automatic
    fuse: [
      [15.99, 1.31],
      [Number.POSITIVE_INFINITY, 1.1],
    ], // gG: In ≤ Iz/1.31 below 16 A, Iz/1.1 from 16 A
  },
  systems: [{ name: "230/400 V", phases: 3, lineToLine: 400, lineToNeutral: 230, toGround: 230 }],
  voltageRatings: {
    columns: ["to ground", "between"], // from memory
    // biome-ignore format: one marking per line
    rows: [
      ["230 V",     230, 230],
      ["230/400 V", 230, 400],
      ["400 V",     400, 400],
    ],
  },
  ampacity: tableB52,
  ambient: tableB52p14,
  // Table B.52.17, bunched: factor by number of circuits. From memory.
  adjustment: [
    [1, 1],
    [2, 0.8],
    [3, 0.7],
    [4, 0.65],
    [5, 0.6],
    [6, 0.57],
    [7, 0.54],
    [8, 0.52],
    [9, 0.5],
  ],
  // IEC 60364-5-54, table 54.2, up to 16 mm²: as the line conductor. From memory.
  grounding: [[Number.POSITIVE_INFINITY, { copper: "16 mm²", aluminum: "16 mm²" }]],
  disconnect: { factor: 1, sizes: [16, 20, 25, 32, 40, 63, 80, 100, 125] }, // common practice, no source
  conductors: iec60228,
  resistanceUnit: ohmPerKm,
  lengthUnit: m,
  resistanceAt: 20,
  operatingTemperature: 70,
  temperatureCoefficient: { copper: 0.00393 }, // 1.197 at 70 °C, from memory
  voltageDrop: { branch: 0.05, total: 0.05, mandatory: false }, // annex G, public supply, from memory
  tripping: {
    noTrip: 1.13, // IEC 60898-1, table 7: for 1 h up to 63 A
    trip: 1.45,
    curves: { B: [3, 5], C: [5, 10], D: [10, 20] },
    compressor: ["C", "D"], // common practice, no source
  },
  advice: [
    /* @__PURE__ */ statement(
      "not-checked-here",
      "Not checked: breaking capacity, earth-fault loop impedance and disconnection time, residual-current protection.",
    ),
  ],
};
