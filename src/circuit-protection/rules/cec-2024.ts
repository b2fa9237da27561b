// What does the Canadian Electrical Code say? Its own tables and rules, in the edition of 2024.
// Follows CSA C22.1:24 and, for Section 28, C22.1:21, in reproductions; each point carries how it was come by.
// Does not cover provincial amendments and conductors in free air (tables 1 and 3, which are not the American ones).
import { ohmPerKft } from "../../quantity/units/electricity.ts";
import { m } from "../../quantity/units/geometry.ts";
import type { AwgSize, Material } from "../conductor-size.ts";
import type { CircuitRules, PrintedTable, Steps } from "./circuit-rules.ts";
import {
  americanSystems,
  americanVoltageRatings,
  citationsOf,
  clause,
  table8,
  table9,
  table310p16,
} from "./nec-tables.ts";
import { ruleSet } from "./rule-set.ts";
import { standardRatings } from "./standard-ratings.ts";

/** Table 5A: ambient above 30 °C, the next hotter row; no credit below. */
// biome-ignore format: printed like the table
const table5A: PrintedTable<number> = {
  columns: ["60 °C", "75 °C", "90 °C"],
  rows: [
    [30, 1.00, 1.00, 1.00],
    [35, 0.91, 0.94, 0.96],
    [40, 0.82, 0.88, 0.91],
    [45, 0.71, 0.82, 0.87],
    [50, 0.58, 0.75, 0.82],
    [55, 0.41, 0.67, 0.76],
    [60, null, 0.58, 0.71],
    [65, null, 0.47, 0.65],
    [70, null, 0.33, 0.58],
    [75, null, null, 0.50],
    [80, null, null, 0.41],
  ],
};

/** Table 5C: conductors in a raceway or cable. Two pages teach other bands (7 to 9, 10 to 24): rejected. */
const table5C: Steps<number> = [
  [3, 1],
  [6, 0.8],
  [24, 0.7],
  [42, 0.6],
  [Number.POSITIVE_INFINITY, 0.5],
];

/** 14-104(2): largest device on small conductors, A; not where Section 28 allows more, 14-104(1)(c). */
const rule14p104: PrintedTable<AwgSize> = {
  columns: ["copper", "aluminum"],
  rows: [
    ["14 AWG", 15, null],
    ["12 AWG", 20, 15],
    ["10 AWG", 30, 25],
  ],
};

/** Table 16: bonding conductor by the rating of the device, A. */
// biome-ignore format: printed like the table
const table16: Steps<Readonly<Record<Material, AwgSize>>> = [
  [20,  { copper: "14 AWG",  aluminum: "12 AWG" }],
  [30,  { copper: "12 AWG",  aluminum: "10 AWG" }],
  [60,  { copper: "10 AWG",  aluminum: "8 AWG" }],
  [100, { copper: "8 AWG",   aluminum: "6 AWG" }],
  [200, { copper: "6 AWG",   aluminum: "4 AWG" }],
  [300, { copper: "4 AWG",   aluminum: "2 AWG" }],
  [400, { copper: "3 AWG",   aluminum: "1 AWG" }],
  [500, { copper: "2 AWG",   aluminum: "1/0 AWG" }],
  [600, { copper: "1 AWG",   aluminum: "2/0 AWG" }],
  [800, { copper: "1/0 AWG", aluminum: "3/0 AWG" }],
];

const points = (): CircuitRules["points"] => ({
  "marked-values": clause("28-202"),
  "device-ratings": clause("table 13"),
  poles: clause("14-010"),
  "voltage-marking": clause("14-012", "secondary"), // ratings sufficient for the voltage employed
  overload: clause("14-104, table 13"),
  ampacity: clause("tables 2 and 4"),
  terminations: clause("4-006"),
  "sheathed-cable": clause("4-006, 12-500", "memory"), // NMD90 without a cap
  ambient: clause("table 5A"),
  grouping: clause("4-004, table 5C"),
  rooftop: clause("4-004", "missing"),
  "aluminum-terminals": clause("12-118", "memory"),
  grounding: clause("10-614, table 16"),
  "enlarged-grounding": clause("10-616"),
  "disconnect-rating": clause("28-714"),
  "disconnect-place": clause("28-604(5)"),
  "working-space": clause("2-308", "secondary"),
  "voltage-drop": clause("8-102"),
  "service-receptacle": clause("26-700", "missing"),
  compressor: clause("28-702 to 28-710"),
});

/**
 * Rules of the Canadian Electrical Code from its own tables: conductors by tables 2 and 4, which are equal to the
 * American ones at every size, ambient by 5A, grouping by 5C, bonding by 16, the disconnect within 3 m and in sight,
 * a voltage drop that binds. A point that was not confirmed decides nothing.
 *
 * Provincial amendments and the authority having jurisdiction override it.
 *
 * Source: CSA C22.1:24 (tables 2, 4, 5A, 5C, 13, 16; 4-004, 4-006, 8-102, 10-614, 14-104) and C22.1:21 (Section 28),
 * in reproductions.
 */
export const cec2024: CircuitRules<"awg"> = /* @__PURE__ */ ruleSet(() => ({
  family: "awg",
  name: "CEC 2024",
  source: "cec-part-1",
  reviewed: "2026-11-29",
  onlyConfirmed: true,
  points: points(),
  citations: citationsOf("cec-part-1", points()),
  // Table 13 to 400 A; above, the ratings that are made.
  ratings: { breaker: standardRatings, fuse: standardRatings },
  smallestRating: 15, // 28-708(2)
  proposes: "largest",
  ampacityFactor: 1.25, // 28-706, 28-106
  deviceProtectsConductor: false, // 14-104(1)(c)
  nextSizeUpTo: 800, // 14-104(1)(a)
  smallConductors: rule14p104,
  systems: americanSystems,
  voltageRatings: americanVoltageRatings,
  ampacity: [table310p16], // tables 2 and 4: 63 rows compared in three columns, none differs
  ambient: table5A,
  adjustment: { bunched: table5C },
  terminations: [
    [100, "60 °C"],
    [Number.POSITIVE_INFINITY, "75 °C"],
  ], // 4-006
  grounding: { by: "device", table: table16, enlargedBy: "ampacity" },
  disconnect: {
    factor: 1.15, // 28-714
    of: "largest",
    sizes: [30, 60, 100, 200, 400, 600], // common practice, no source
    within: 3, // 28-604(5)
    wants: ["visible", "readilyAccessible"],
  },
  workingSpace: {
    depth: [[Number.POSITIVE_INFINITY, [1, 1, 1]]], // 2-308
    width: 0,
    height: 0,
    required: true,
  },
  conductors: table8, // areas and resistance of the same wire
  impedance: table9,
  resistanceUnit: ohmPerKft,
  lengthUnit: m,
  resistanceAt: 75,
  operatingTemperature: "by load", // table D3 and its note on insulation and load
  temperatureCoefficient: { copper: 0.00323, aluminum: 0.0033 },
  voltageDrop: { branch: [[Number.POSITIVE_INFINITY, 0.03]], total: 0.05, mandatory: true },
  // 28-704: locked-rotor current as marked, else 6 × rated load. 28-708(1): 50 %, 65 % if it will not start.
  compressorProtection: {
    of: "lockedRotor",
    normal: 0.5,
    ifItWillNotStart: 0.65,
    lockedRotorMultiple: 6,
  },
  advice: [{ name: "gas-clearance", clause: "2-328" }],
}));
