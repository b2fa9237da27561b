// What do the international rules say? The overload condition, cable tables, protective conductors and drop of the IEC.
// Follows IEC 60364-4-43:2008, 433.1; 60364-5-52:2009, annexes B and G; 60364-5-54:2011, 543; 60364-4-41.
// Does not cover national rules, earth-fault loop impedance and disconnection times.

import { cite } from "../../assessment/assessment.ts";
import { ohmPerKm } from "../../quantity/units/electricity.ts";
import { m } from "../../quantity/units/geometry.ts";
import type { MetricSize } from "../conductor-size.ts";
import type { CircuitRules, PrintedTable, Steps } from "./circuit-rules.ts";
import {
  breakerRatings,
  breakerTripping,
  byMethod,
  fuseRatings,
  iec60228,
  metricVoltageRatings,
  overloadMargins,
  sizesFrom1p5,
} from "./metric-tables.ts";
import { clause } from "./nec-tables.ts";
import { ruleSet } from "./rule-set.ts";

/**
 * Tables B.52.2 to B.52.5 and B.52.10 to B.52.13: A at 30 °C in air, 20 °C in the ground, 2.5 K·m/W, 0.7 m deep. One
 * row per method where the print has a column; sizes 1.5 to 50 mm², aluminum from 2.5 mm², D2 aluminum from 16 mm².
 * Aluminum XLPE from 25 mm² has C below B1: so it is printed.
 */
// biome-ignore format: one method per line
const tablesB52 = (): readonly PrintedTable<MetricSize>[] => [
  byMethod(sizesFrom1p5, "copper", "70 °C", 2, {
    A1: [14.5, 19.5, 26, 34, 46, 61, 80, 99, 119],
    A2: [14, 18.5, 25, 32, 43, 57, 75, 92, 110],
    B1: [17.5, 24, 32, 41, 57, 76, 101, 125, 151],
    B2: [16.5, 23, 30, 38, 52, 69, 90, 111, 133],
    C:  [19.5, 27, 36, 46, 63, 85, 112, 138, 168],
    D1: [22, 29, 37, 46, 60, 78, 99, 119, 140],
    D2: [22, 28, 38, 48, 64, 83, 110, 132, 156],
    E:  [22, 30, 40, 51, 70, 94, 119, 148, 180],
  }),
  byMethod(sizesFrom1p5, "copper", "70 °C", 3, {
    A1: [13.5, 18, 24, 31, 42, 56, 73, 89, 108],
    A2: [13, 17.5, 23, 29, 39, 52, 68, 83, 99],
    B1: [15.5, 21, 28, 36, 50, 68, 89, 110, 134],
    B2: [15, 20, 27, 34, 46, 62, 80, 99, 118],
    C:  [17.5, 24, 32, 41, 57, 76, 96, 119, 144],
    D1: [18, 24, 30, 38, 50, 64, 82, 98, 116],
    D2: [19, 24, 33, 41, 54, 70, 92, 110, 130],
    E:  [18.5, 25, 34, 43, 60, 80, 101, 126, 153],
  }),
  byMethod(sizesFrom1p5, "copper", "90 °C", 2, {
    A1: [19, 26, 35, 45, 61, 81, 106, 131, 158],
    A2: [18.5, 25, 33, 42, 57, 76, 99, 121, 145],
    B1: [23, 31, 42, 54, 75, 100, 133, 164, 198],
    B2: [22, 30, 40, 51, 69, 91, 119, 146, 175],
    C:  [24, 33, 45, 58, 80, 107, 138, 171, 209],
    D1: [25, 33, 43, 53, 71, 91, 116, 139, 164],
    D2: [27, 35, 46, 58, 77, 100, 129, 155, 183],
    E:  [26, 36, 49, 63, 86, 115, 149, 185, 225],
  }),
  byMethod(sizesFrom1p5, "copper", "90 °C", 3, {
    A1: [17, 23, 31, 40, 54, 73, 95, 117, 141],
    A2: [16.5, 22, 30, 38, 51, 68, 89, 109, 130],
    B1: [20, 28, 37, 48, 66, 88, 117, 144, 175],
    B2: [19.5, 26, 35, 44, 60, 80, 105, 128, 154],
    C:  [22, 30, 40, 52, 71, 96, 119, 147, 179],
    D1: [21, 28, 36, 44, 58, 75, 96, 115, 135],
    D2: [23, 30, 39, 49, 65, 84, 107, 129, 153],
    E:  [23, 32, 42, 54, 75, 100, 127, 158, 192],
  }),
  byMethod(sizesFrom1p5, "aluminum", "70 °C", 2, {
    A1: [15, 20, 26, 36, 48, 63, 77, 93],
    A2: [14.5, 19.5, 25, 33, 44, 58, 71, 86],
    B1: [18.5, 25, 32, 44, 60, 79, 97, 118],
    B2: [17.5, 24, 30, 41, 54, 71, 86, 104],
    C:  [21, 28, 36, 49, 66, 83, 103, 125],
    D1: [22, 29, 36, 47, 61, 77, 93, 109],
    D2: [63, 82, 98, 117],
    E:  [23, 31, 39, 54, 73, 89, 111, 135],
  }),
  byMethod(sizesFrom1p5, "aluminum", "70 °C", 3, {
    A1: [14, 18.5, 24, 32, 43, 57, 70, 84],
    A2: [13.5, 17.5, 23, 31, 41, 53, 65, 78],
    B1: [16.5, 22, 28, 39, 53, 70, 86, 104],
    B2: [15.5, 21, 27, 36, 48, 62, 77, 92],
    C:  [18.5, 25, 32, 44, 59, 73, 90, 110],
    D1: [18.5, 24, 30, 39, 50, 64, 77, 91],
    D2: [53, 69, 83, 99],
    E:  [19.5, 26, 33, 46, 61, 78, 96, 117],
  }),
  byMethod(sizesFrom1p5, "aluminum", "90 °C", 2, {
    A1: [20, 27, 35, 48, 64, 84, 103, 125],
    A2: [19.5, 26, 33, 45, 60, 78, 96, 115],
    B1: [25, 33, 43, 59, 79, 105, 130, 157],
    B2: [23, 31, 40, 54, 72, 94, 115, 138],
    C:  [26, 35, 45, 62, 84, 101, 126, 154],
    D1: [26, 33, 42, 55, 71, 90, 108, 128],
    D2: [76, 98, 117, 139],
    E:  [28, 38, 49, 67, 91, 108, 135, 164],
  }),
  byMethod(sizesFrom1p5, "aluminum", "90 °C", 3, {
    A1: [19, 25, 32, 44, 58, 76, 94, 113],
    A2: [18, 24, 31, 41, 55, 71, 87, 104],
    B1: [22, 29, 38, 52, 71, 93, 116, 140],
    B2: [21, 28, 35, 48, 64, 84, 103, 124],
    C:  [24, 32, 41, 57, 76, 90, 112, 136],
    D1: [22, 28, 35, 46, 59, 75, 90, 106],
    D2: [64, 82, 98, 117],
    E:  [24, 32, 42, 58, 77, 97, 120, 146],
  }),
];

/** Table B.52.14: ambient air, °C. */
// biome-ignore format: printed like the table
const tableB52p14: PrintedTable<number> = {
  columns: ["70 °C", "90 °C"],
  rows: [
    [10, 1.22, 1.15], [15, 1.17, 1.12], [20, 1.12, 1.08], [25, 1.06, 1.04], [30, 1.00, 1.00],
    [35, 0.94, 0.96], [40, 0.87, 0.91], [45, 0.79, 0.87], [50, 0.71, 0.82], [55, 0.61, 0.76],
    [60, 0.50, 0.71], [65, null, 0.65], [70, null, 0.58], [75, null, 0.50], [80, null, 0.41],
  ],
};

/** Table B.52.15: ground, °C. */
// biome-ignore format: printed like the table
const tableB52p15: PrintedTable<number> = {
  columns: ["70 °C", "90 °C"],
  rows: [
    [10, 1.10, 1.07], [15, 1.05, 1.04], [20, 1.00, 1.00], [25, 0.95, 0.96], [30, 0.89, 0.93],
    [35, 0.84, 0.89], [40, 0.77, 0.85], [45, 0.71, 0.80], [50, 0.63, 0.76], [55, 0.55, 0.71],
    [60, 0.45, 0.65],
  ],
};

/** Table B.52.16: resistivity of the soil, K·m/W. */
// biome-ignore format: printed like the table
const tableB52p16: PrintedTable<number> = {
  columns: ["D1", "D2"],
  rows: [[1, 1.18, 1.5], [1.5, 1.10, 1.28], [2, 1.05, 1.12], [2.5, 1, 1], [3, 0.96, 0.90]],
};

/** Tables B.52.17 to B.52.19: factors for 1, 2, 3 … circuits. */
const factors = (...values: readonly number[]): Steps<number> => values.map((f, i) => [i + 1, f]);
const last = (value: number): Steps<number>[number] => [Number.POSITIVE_INFINITY, value];
const grouping = (): CircuitRules["adjustment"] => ({
  bunched: [
    ...factors(1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5),
    [12, 0.45],
    [16, 0.41],
    [20, 0.38],
  ],
  "single layer": [...factors(1, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71), last(0.7)],
  "perforated tray": [...factors(1, 0.88, 0.82, 0.77, 0.75, 0.73, 0.73), last(0.72)],
  D1: factors(1, 0.85, 0.75, 0.7, 0.65, 0.6),
  D2: factors(1, 0.75, 0.65, 0.6, 0.55, 0.5),
});

const points = (): CircuitRules["points"] => ({
  "marked-values": clause("nameplate and manufacturer's instructions"),
  "device-ratings": clause("IEC 60898-1, 5.3.2"),
  poles: clause("431, 461", "memory"),
  "voltage-marking": clause("IEC 60898-1, 5.3.1", "memory"),
  overload: clause("433.1"),
  "small-fuse": clause("IEC 60269-2, gG up to 4 A", "memory"),
  ampacity: clause("tables B.52.2 to B.52.13"),
  ambient: clause("tables B.52.14, B.52.15"),
  grouping: clause("523.9, tables B.52.16 to B.52.19"),
  "thermal-insulation": clause("523.9, up to 0.4 m", "memory"),
  "aluminum-terminals": clause("526", "memory"),
  grounding: clause("543, table 54.2"),
  "disconnect-rating": clause("537", "memory"),
  "voltage-drop": clause("525, annex G"),
  "residual-current": clause("411.3.3, 411.5", "secondary"),
});

/**
 * The international rules: the device protects the cable, Ib ≤ In ≤ Iz and I2 ≤ 1.45 Iz. Here the plate's
 * rated current stands for the design current Ib, and its largest overcurrent protection for the
 * largest fuse that the manufacturer allows.
 *
 * National rules and the local authority override it.
 *
 * Source: IEC 60364-4-43:2008, 433.1; IEC 60364-5-52:2009, annexes B and G; IEC 60364-5-54:2011, 543; IEC
 * 60898-1:2015, in reproductions; figures from memory are listed in the module's guide.
 */
export const iec60364: CircuitRules<"metric"> = /* @__PURE__ */ ruleSet(() => ({
  family: "metric",
  name: "IEC 60364",
  source: "iec-60364-4-43",
  reviewed: "2026-11-29",
  onlyConfirmed: false,
  points: points(),
  citations: [
    cite("iec-60364-4-41", "411.3.3, 411.5"),
    cite("iec-60364-4-43", "433.1"),
    cite("iec-60364-5-52", "tables B.52.2 to B.52.19, 523.9, 525, annex G"),
    cite("iec-60364-5-54", "543, table 54.2, annex A"),
    cite("iec-60898-1", "5.3 and table 7"),
    cite("iec-60228"),
  ],
  ratings: { breaker: breakerRatings, fuse: fuseRatings },
  smallestRating: 6,
  proposes: "smallest",
  ampacityFactor: 1,
  deviceProtectsConductor: true, // 433.1
  ampacityPerRating: overloadMargins,
  systems: [
    { name: "230/400 V", phases: 3, lineToLine: 400, lineToNeutral: 230, toGround: 230 },
    { name: "220/380 V", phases: 3, lineToLine: 380, lineToNeutral: 220, toGround: 220 },
    // Nominal in parts of Brazil; common practice, no source.
    {
      name: "127/220 V",
      phases: 3,
      lineToLine: 220,
      lineToNeutral: 127,
      toGround: 127,
      onlyNamed: true,
    },
  ],
  voltageRatings: metricVoltageRatings,
  ampacity: tablesB52(),
  ambient: tableB52p14,
  groundAmbient: tableB52p15,
  soil: tableB52p16,
  // 523.9: half where thermal insulation surrounds the cable for more than 0.5 m; shorter lengths from memory.
  thermalInsulation: [[0.05, 0.88], [0.1, 0.78], [0.2, 0.63], [0.4, 0.51], last(0.5)],
  adjustment: grouping(),
  // Table 54.2: the line conductor to 16 mm², 16 mm² to 35 mm², half above.
  grounding: {
    by: "line",
    table: [
      ...sizesFrom1p5.slice(0, 6).map((size) => [size, size] as const),
      ["25 mm²", "16 mm²"],
      ["35 mm²", "16 mm²"],
      ["50 mm²", "25 mm²"],
    ],
    adiabatic: true,
  },
  disconnect: {
    factor: 1,
    of: "sum",
    sizes: [16, 20, 25, 32, 40, 63, 80, 100, 125], // common practice, no source
    wants: [],
  },
  conductors: iec60228,
  resistanceUnit: ohmPerKm,
  lengthUnit: m,
  resistanceAt: 20,
  operatingTemperature: 70,
  temperatureCoefficient: { copper: 0.00393, aluminum: 0.00403 }, // IEC 60228, from memory
  voltageDrop: {
    branch: [last(0.05)],
    total: 0.05,
    mandatory: false,
    growth: { beyond: 100, perMeter: 0.00005, most: 0.005 },
    resistivity: { copper: 0.0225, aluminum: 0.036 },
    reactance: 0.08e-3,
  },
  residualCurrent: "TT",
  tripping: breakerTripping,
  advice: [{ name: "own-circuit", clause: "manufacturer's instructions" }],
}));
