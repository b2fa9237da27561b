// What do the British rules say? Flat twin-and-earth cable by its own table, drop in mV/A/m, the reduced cpc.
// Follows BS 7671:2018+A2:2022, tables 4D5, 4C1, 54.7, 433.1.1, 525, 543.1, in reproductions.
// Does not cover tables 4D1 to 4D4 and 4E, amendments 3 and 4, ring circuits, and other national conditions.
import { ohmPerKm } from "../../quantity/units/electricity.ts";
import { m } from "../../quantity/units/geometry.ts";
import type { MetricSize } from "../conductor-size.ts";
import type { CircuitRules, PrintedTable } from "./circuit-rules.ts";
import {
  breakerRatings,
  breakerTripping,
  fuseRatings,
  metricVoltageRatings,
  overloadMargins,
} from "./metric-tables.ts";
import { citationsOf, clause } from "./nec-tables.ts";
import { ruleSet } from "./rule-set.ts";

/** Table 4D5: flat PVC twin and earth, A at 30 °C. An older table has 65 and 87 A in column C at 10 and 16 mm². */
// biome-ignore format: printed like the table
const table4D5: PrintedTable<MetricSize> = {
  columns: [
    "copper 70 °C A 2", "copper 70 °C C 2", "copper 70 °C 100 2", "copper 70 °C 101 2",
    "copper 70 °C 102 2", "copper 70 °C 103 2",
  ],
  rows: [
    ["1 mm²",   11.5, 16, 13, 10.5,   13,    8],
    ["1.5 mm²", 14.5, 20, 16,   13,   16,   10],
    ["2.5 mm²",   20, 27, 21,   17,   21, 13.5],
    ["4 mm²",     26, 37, 27,   22,   27, 17.5],
    ["6 mm²",     32, 47, 34,   27,   35, 23.5],
    ["10 mm²",    44, 64, 45,   36,   47,   32],
    ["16 mm²",    57, 85, 57,   46,   63, 42.5],
  ],
};

/** Table 4D5, voltage drop: half of the printed mV/A/m is the Ω/km of one conductor at 70 °C. */
// biome-ignore format: printed like the table
const millivolts: PrintedTable<MetricSize> = {
  columns: ["area", "copper stranded"],
  rows: [
    ["1 mm²",     1,  44 / 2],
    ["1.5 mm²", 1.5,  29 / 2],
    ["2.5 mm²", 2.5,  18 / 2],
    ["4 mm²",     4,  11 / 2],
    ["6 mm²",     6, 7.3 / 2],
    ["10 mm²",   10, 4.4 / 2],
    ["16 mm²",   16, 2.8 / 2],
  ],
};

const points = (): CircuitRules["points"] => ({
  "marked-values": clause("nameplate, 134.1.1"),
  "device-ratings": clause("BS EN 60898-1, 5.3.2"),
  overload: clause("433.1.1"),
  "small-fuse": clause("BS 88-2, gG up to 4 A", "memory"),
  ampacity: clause("table 4D5"),
  ambient: clause("table 4B1", "memory"),
  grouping: clause("table 4C1"),
  grounding: clause("543.1, table 54.7"),
  "disconnect-rating": clause("537", "memory"),
  "disconnect-place": clause("462, 537", "secondary"),
  "voltage-drop": clause("525, appendix 4"),
  "residual-current": clause("411.3.3, 411.5, 522.6.202", "secondary"),
});

/**
 * British rules for the cable that is used for small units: flat twin and earth, copper, PVC, in the positions of its
 * own table. The reduced protective conductor inside it passes only by the adiabatic equation. A point that was not
 * confirmed decides nothing.
 *
 * Building regulations, the distributor and the person who certifies override it.
 *
 * Source: BS 7671:2018+A2:2022, table 4D5, 433.1.1, 525, 543.1 and table 54.7, in reproductions.
 */
export const bs7671: CircuitRules<"metric"> = /* @__PURE__ */ ruleSet(() => ({
  family: "metric",
  name: "BS 7671",
  source: "bs-7671",
  reviewed: "2026-11-29",
  onlyConfirmed: true,
  points: points(),
  citations: citationsOf("bs-7671", points()),
  ratings: { breaker: breakerRatings, fuse: fuseRatings },
  smallestRating: 6,
  proposes: "smallest",
  ampacityFactor: 1,
  deviceProtectsConductor: true,
  ampacityPerRating: overloadMargins,
  systems: [{ name: "230/400 V", phases: 3, lineToLine: 400, lineToNeutral: 230, toGround: 230 }],
  voltageRatings: metricVoltageRatings, // not judged: no point of its own
  ampacity: [table4D5],
  // Table 4B1: not the international one below 30 °C (25 °C 1.03); from 35 °C on from memory.
  // biome-ignore format: printed like the table
  ambient: {
    columns: ["70 °C"],
    rows: [
      [30, 1.00], [35, 0.94], [40, 0.87], [45, 0.79], [50, 0.71], [55, 0.61], [60, 0.50],
    ],
  },
  adjustment: {
    bunched: [
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
    "single layer": [
      [1, 1],
      [2, 0.85],
      [3, 0.79],
      [4, 0.75],
      [5, 0.73],
      [6, 0.72],
    ],
  },
  grounding: {
    by: "line",
    table: (["1 mm²", "1.5 mm²", "2.5 mm²", "4 mm²", "6 mm²", "10 mm²", "16 mm²"] as const).map(
      (size) => [size, size],
    ),
    adiabatic: true,
  },
  disconnect: {
    factor: 1,
    of: "sum",
    sizes: [20, 32, 45, 63, 100], // common practice, no source
    wants: ["visible or lockable"],
  },
  conductors: millivolts,
  resistanceUnit: ohmPerKm,
  lengthUnit: m,
  resistanceAt: 70,
  operatingTemperature: 70,
  temperatureCoefficient: {},
  voltageDrop: { branch: [[Number.POSITIVE_INFINITY, 0.05]], total: 0.05, mandatory: false },
  residualCurrent: "TT",
  tripping: breakerTripping,
  advice: [
    { name: "buried-cable-residual-current", clause: "522.6.202" },
    { name: "notifiable-work", clause: "Building Regulations, Part P" },
  ],
}));
