// The tables of NFPA 70 that its 2020, 2023 and 2026 editions share, printed like the standard's.
// Follows NFPA 70 (2023), read in reproductions; what was not found there is marked "from memory".
// Does not cover sizes above 250 kcmil, cables in free air or ambient bases other than 30 °C.
import { cite } from "../../assessment/assessment.ts";
import { ohmPerKft } from "../../quantity/units/electricity.ts";
import { ft } from "../../quantity/units/geometry.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { AwgSize, Material } from "../conductor-size.ts";
import type {
  CircuitRules,
  ClauseStanding,
  PrintedTable,
  RuleClause,
  Steps,
} from "./circuit-rules.ts";
import { standardRatings } from "./standard-ratings.ts";
import type { SupplySystem, VoltageRating } from "./supply-system.ts";

/** Table 310.16: ampacity, A; not more than three current-carrying conductors, ambient 30 °C. */
// biome-ignore format: printed like the table
export const table310p16: PrintedTable<AwgSize> = {
  columns: [
    "copper 60 °C", "copper 75 °C", "copper 90 °C",
    "aluminum 60 °C", "aluminum 75 °C", "aluminum 90 °C",
  ],
  rows: [
    ["14 AWG",     15,  20,  25,   null, null, null],
    ["12 AWG",     20,  25,  30,     15,   20,   25],
    ["10 AWG",     30,  35,  40,     25,   30,   35],
    ["8 AWG",      40,  50,  55,     35,   40,   45],
    ["6 AWG",      55,  65,  75,     40,   50,   55],
    ["4 AWG",      70,  85,  95,     55,   65,   75],
    ["3 AWG",      85, 100, 115,     65,   75,   85],
    ["2 AWG",      95, 115, 130,     75,   90,  100],
    ["1 AWG",     110, 130, 145,     85,  100,  115],
    ["1/0 AWG",   125, 150, 170,    100,  120,  135],
    ["2/0 AWG",   145, 175, 195,    115,  135,  150],
    ["3/0 AWG",   165, 200, 225,    130,  155,  175],
    ["4/0 AWG",   195, 230, 260,    150,  180,  205],
    ["250 kcmil", 215, 255, 290,    170,  205,  230],
  ],
};

/** Table 310.15(B)(1): ambient correction on a 30 °C base, by the upper edge of each band in °C. */
// biome-ignore format: printed like the table
const table310p15B1: PrintedTable<number> = {
  columns: ["60 °C", "75 °C", "90 °C"],
  rows: [
    [10, 1.29, 1.20, 1.15],
    [15, 1.22, 1.15, 1.12],
    [20, 1.15, 1.11, 1.08],
    [25, 1.08, 1.05, 1.04],
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
    [85, null, null, 0.29],
  ],
};

/** Table 310.15(C)(1): adjustment by the number of current-carrying conductors. */
// biome-ignore format: printed like the table
const table310p15C1: Steps<number> = [
  [3, 1],
  [6, 0.8],
  [9, 0.7],
  [20, 0.5],
  [30, 0.45],
  [40, 0.4],
  [Number.POSITIVE_INFINITY, 0.35],
];

/** 240.4(D): largest device on small conductors, A; not for Article 440 circuits, 240.4(G). */
// biome-ignore format: printed like the table
const clause240p4D: PrintedTable<AwgSize> = {
  columns: ["copper", "aluminum"],
  rows: [
    ["14 AWG", 15, null],
    ["12 AWG", 20, 15],
    ["10 AWG", 30, 25],
  ],
};

/** Table 250.122: equipment grounding conductor by the rating of the device, A. */
// biome-ignore format: printed like the table
const table250p122: Steps<Readonly<Record<Material, AwgSize>>> = [
  [15,  { copper: "14 AWG",  aluminum: "12 AWG" }],
  [20,  { copper: "12 AWG",  aluminum: "10 AWG" }],
  [60,  { copper: "10 AWG",  aluminum: "8 AWG" }],
  [100, { copper: "8 AWG",   aluminum: "6 AWG" }],
  [200, { copper: "6 AWG",   aluminum: "4 AWG" }],
  [300, { copper: "4 AWG",   aluminum: "2 AWG" }],
  [400, { copper: "3 AWG",   aluminum: "1 AWG" }],
  [500, { copper: "2 AWG",   aluminum: "1/0 AWG" }],
  [600, { copper: "1 AWG",   aluminum: "2/0 AWG" }],
  [800, { copper: "1/0 AWG", aluminum: "3/0 AWG" }],
];

/**
 * Chapter 9, table 8: area in circular mils and direct-current resistance at 75 °C, uncoated, Ω/kft.
 * From memory: areas from 2/0, 250 kcmil, and 10 AWG solid aluminum.
 */
// biome-ignore format: printed like the table
export const table8: PrintedTable<AwgSize> = {
  columns: ["area", "copper solid", "copper stranded", "aluminum solid", "aluminum stranded"],
  rows: [
    ["14 AWG",      4110,  3.07,   3.14, 5.06,   5.17],
    ["12 AWG",      6530,  1.93,   1.98, 3.18,   3.25],
    ["10 AWG",     10380,  1.21,   1.24, 2.00,   2.04],
    ["8 AWG",      16510, 0.764,  0.778, 1.26,   1.28],
    ["6 AWG",      26240,  null,  0.491, null,  0.808],
    ["4 AWG",      41740,  null,  0.308, null,  0.508],
    ["3 AWG",      52620,  null,  0.245, null,  0.403],
    ["2 AWG",      66360,  null,  0.194, null,  0.319],
    ["1 AWG",      83690,  null,  0.154, null,  0.253],
    ["1/0 AWG",   105600,  null,  0.122, null,  0.201],
    ["2/0 AWG",   133100,  null, 0.0967, null,  0.159],
    ["3/0 AWG",   167800,  null, 0.0766, null,  0.126],
    ["4/0 AWG",   211600,  null, 0.0608, null,  0.100],
    ["250 kcmil", 250000,  null, 0.0515, null, 0.0847],
  ],
};

/**
 * Chapter 9, table 9: reactance and alternating-current resistance to neutral, 60 Hz, 75 °C, three single
 * conductors in conduit, Ω/kft. From memory: 250 kcmil except copper and reactance in steel.
 */
// biome-ignore format: printed like the table
export const table9: PrintedTable<AwgSize> = {
  columns: [
    "reactance PVC", "reactance aluminum", "reactance steel",
    "copper PVC", "copper aluminum", "copper steel",
    "aluminum PVC", "aluminum aluminum", "aluminum steel",
  ],
  rows: [
    ["14 AWG",    .058, .058, .073,    3.1,  3.1,  3.1,   null, null, null],
    ["12 AWG",    .054, .054, .068,    2.0,  2.0,  2.0,    3.2,  3.2,  3.2],
    ["10 AWG",    .050, .050, .063,    1.2,  1.2,  1.2,    2.0,  2.0,  2.0],
    ["8 AWG",     .052, .052, .065,    .78,  .78,  .78,    1.3,  1.3,  1.3],
    ["6 AWG",     .051, .051, .064,    .49,  .49,  .49,    .81,  .81,  .81],
    ["4 AWG",     .048, .048, .060,    .31,  .31,  .31,    .51,  .51,  .51],
    ["3 AWG",     .047, .047, .059,    .25,  .25,  .25,    .40,  .41,  .40],
    ["2 AWG",     .045, .045, .057,    .19,  .20,  .20,    .32,  .32,  .32],
    ["1 AWG",     .046, .046, .057,    .15,  .16,  .16,    .25,  .26,  .25],
    ["1/0 AWG",   .044, .044, .055,    .12,  .13,  .12,    .20,  .21,  .20],
    ["2/0 AWG",   .043, .043, .054,    .10,  .10,  .10,    .16,  .16,  .16],
    ["3/0 AWG",   .042, .042, .052,   .077, .082, .079,    .13,  .13,  .13],
    ["4/0 AWG",   .041, .041, .051,   .062, .067, .063,    .10,  .11,  .10],
    ["250 kcmil", .041, .041, .052,   .052, .057, .054,   .085, .090, .086],
  ],
};

/** Services; an unnamed one is taken as the first that fits, which is the one with the stricter rating. */
// biome-ignore format: one service per line
export const americanSystems: readonly SupplySystem[] = [
  { name: "120/240 V", phases: 1, lineToLine: 240, lineToNeutral: 120, toGround: 120 },
  { name: "208Y/120 V", phases: 3, lineToLine: 208, lineToNeutral: 120, toGround: 120 },
  { name: "240 V delta", phases: 3, lineToLine: 240, toGround: 240 },
  { name: "240/120 V high-leg delta", phases: 3, lineToLine: 240, lineToNeutral: 120, toGround: 208 },
  { name: "480 V delta", phases: 3, lineToLine: 480, toGround: 480 },
  { name: "480Y/277 V", phases: 3, lineToLine: 480, lineToNeutral: 277, toGround: 277 },
  { name: "600 V delta", phases: 3, lineToLine: 600, toGround: 600 },
  { name: "600Y/347 V", phases: 3, lineToLine: 600, lineToNeutral: 347, toGround: 347 },
  // Nominal in Mexico; common practice, no source.
  { name: "220Y/127 V", phases: 3, lineToLine: 220, lineToNeutral: 127, toGround: 127, onlyNamed: true },
  { name: "440Y/254 V", phases: 3, lineToLine: 440, lineToNeutral: 254, toGround: 254, onlyNamed: true },
];

/** Voltage markings of American breakers and fuses: 240.85, from memory. */
export const americanVoltageRatings: PrintedTable<VoltageRating> = {
  columns: ["to ground", "between"],
  // biome-ignore format: one marking per line
  rows: [
    ["120 V",      120, 120],
    ["120/240 V",  120, 240],
    ["240 V",      240, 240],
    ["277 V",      277, 277],
    ["480Y/277 V", 277, 480],
    ["480 V",      480, 480],
    ["600Y/347 V", 347, 600],
    ["600 V",      600, 600],
  ],
};

const inch = 0.0254;
const foot = 0.3048;

/** One clause of a rule set. */
export const clause = (text: string, standing: ClauseStanding = "confirmed"): RuleClause => ({
  clause: text,
  standing,
});

/** The clauses of the points, each once, as citations. */
export const citationsOf = (
  source: SourceId,
  points: CircuitRules["points"],
  more: readonly string[] = [],
): CircuitRules["citations"] =>
  [...new Set([...Object.values(points).map((point) => point.clause), ...more])].map((text) =>
    cite(source, text),
  );

/** The clauses that the editions share. */
const sharedPoints = (): CircuitRules["points"] => ({
  "marked-values": clause("110.3(B), 440.4(B), 440.22(C), 440.35"),
  "device-ratings": clause("240.6(A)"),
  poles: clause("240.15(B)", "memory"),
  "voltage-marking": clause("240.85", "memory"),
  overload: clause("240.4(B), (D), (G)"),
  ampacity: clause("table 310.16"),
  terminations: clause("110.14(C)"),
  "sheathed-cable": clause("334.80"),
  grouping: clause("310.15(C)(1)"),
  "aluminum-terminals": clause("110.14(A)", "memory"),
  grounding: clause("250.122"),
  "enlarged-grounding": clause("250.122(B)"),
  "disconnect-rating": clause("440.12"),
  "voltage-drop": clause("210.19, informational note"),
  "ground-fault": clause("210.8(F)"),
  "service-receptacle": clause("210.63(A)"),
  "rooftop-raceway": clause("440.9", "secondary"),
  compressor: clause("440.22(A), (B)"),
});

/** What an edition adds to what all share. */
export interface NecEdition
  extends Pick<CircuitRules<"awg">, "name" | "source" | "groundFault" | "advice"> {
  /** The clauses of the edition. */
  readonly points: CircuitRules["points"];
  /** Ratings of the edition below 15 A. */
  readonly smallBreakers: readonly number[];
  /** Whether 440.14 asks for the working space of 110.26(A). */
  readonly workingSpaceRequired: boolean;
}

/** Fills the shared tables into an edition. */
export function necRules(edition: NecEdition): CircuitRules<"awg"> {
  const { smallBreakers, workingSpaceRequired, points: own, ...named } = edition;
  const points = { ...sharedPoints(), ...own };
  return {
    ...named,
    family: "awg",
    reviewed: "2026-11-29",
    onlyConfirmed: false,
    points,
    citations: citationsOf(edition.source, points, [
      "210.8(F)",
      "310.15",
      "Chapter 9, tables 8 and 9",
    ]),
    ratings: {
      breaker: [...smallBreakers, ...standardRatings],
      // 240.6(A): additional standard ratings for fuses.
      fuse: [1, 3, 6, 10, ...standardRatings, 601].sort((a, b) => a - b),
    },
    smallestRating: 15, // 440.22(A)
    proposes: "largest",
    ampacityFactor: 1.25, // 440.32
    deviceProtectsConductor: false, // 240.4(G): Article 440 circuits go by Article 440
    nextSizeUpTo: 800, // 240.4(B)
    smallConductors: clause240p4D,
    systems: americanSystems,
    voltageRatings: americanVoltageRatings,
    ampacity: [table310p16],
    ambient: table310p15B1,
    adjustment: { bunched: table310p15C1 },
    terminations: [
      [100, "60 °C"],
      [Number.POSITIVE_INFINITY, "75 °C"],
    ], // 110.14(C)(1)
    sheathedCableColumn: "60 °C", // 334.80
    rooftop: { below: (7 / 8) * inch, adder: 33 }, // 310.15(B)(2)
    grounding: { by: "device", table: table250p122, enlargedBy: "area" },
    disconnect: {
      factor: 1.15, // 440.12
      of: "sum", // 440.12(B)
      sizes: [30, 60, 100, 200, 400, 600], // common practice, no source
      within: 50 * foot, // within sight: Article 100, 110.29 from 2023 on
      wants: ["visible", "readilyAccessible", "notInTheWay"], // 440.14
    },
    workingSpace: {
      // 110.26(A)(1): conditions 1, 2, 3; the row above 150 V to ground from memory
      depth: [
        [150, [3 * foot, 3 * foot, 3 * foot]],
        [600, [3 * foot, 3.5 * foot, 4 * foot]],
      ],
      readUpTo: 150,
      width: 30 * inch, // 110.26(A)(2)
      height: 6.5 * foot, // 110.26(A)(3)
      required: workingSpaceRequired,
    },
    receptacleWithin: 25 * foot, // 210.63(A)
    conductors: table8,
    impedance: table9,
    resistanceUnit: ohmPerKft,
    lengthUnit: ft,
    resistanceAt: 75,
    operatingTemperature: 75,
    temperatureCoefficient: { copper: 0.00323, aluminum: 0.0033 }, // table 8, note 2, from memory
    voltageDrop: { branch: [[Number.POSITIVE_INFINITY, 0.03]], total: 0.05, mandatory: false },
    compressorProtection: { of: "ratedLoad", normal: 1.75, ifItWillNotStart: 2.25 }, // 440.22(A)
  };
}
