// Lower flammability limits and concentration limits, each with its source.
// Follows ANSI/ASHRAE Standard 34 (2022), ISO 817 and IEC 60335-2-40:2018; most rows from memory, as marked.
// Does not cover safety class and composition: those are with `refrigerants`.
import { frozenInPlace } from "../quantity/frozen.ts";
import type { SourceId } from "../sources/bibliography.ts";
import type { LimitStanding } from "./statements.ts";

/** A value, where it stands, how it was come by, and a note. */
export type Figure = readonly [
  value: number,
  source: SourceId,
  standing: Exclude<LimitStanding, "stated">,
  note?: string,
];

/** What is known of one refrigerant. */
export interface SafetyRow {
  /** LFL, kg/m³; the first is used where none is stated. */
  readonly lfl?: readonly Figure[] | undefined;
  /** RCL or practical limit, g/m³; the first is used where none is stated. */
  readonly rcl: readonly Figure[];
  /** RCL, ppm by volume. */
  readonly ppm: number;
  /** Molar mass, g/mol, of what burns: computed from the composition. */
  readonly molarMass?: number | undefined;
}

const A = "ashrae-34-2022";
const I = "iec-60335-2-40-2018";
const E = "en-378-1"; // LFL as a refrigerant service company prints them
const M = "from-memory"; // no source remembered with the figure
const P = "published";
const F = "from-memory";

// R-454A and R-454B: a quarter of the LFL is 70 to 74 g/m³; why the RCL is lower is not known. It is kept, because
// it is the safer figure.
const lower = "lower than a quarter of the LFL; the reason is not known";

/** By ASHRAE 34 designation without hyphen and brackets. */
// biome-ignore format: kept as a table
export const safetyTable: Readonly<Record<string, SafetyRow>> = /* @__PURE__ */ frozenInPlace({
  R22: { rcl: [[210, A, P]], ppm: 59_000 },
  R32: {
    lfl: [[0.307, I, P], [0.306, A, P, "14.4 % by volume"]],
    rcl: [[77, A, P]], ppm: 36_000, molarMass: 52.024,
  },
  R134a: { rcl: [[210, A, P]], ppm: 50_000 },
  R290: {
    lfl: [[0.038, I, P]],
    rcl: [[9.5, A, F], [8, E, F, "practical limit"]], ppm: 5300, molarMass: 44.096,
  },
  R404A: { rcl: [[500, A, F]], ppm: 130_000 },
  R407A: { rcl: [[300, A, F]], ppm: 83_000 },
  R407C: { rcl: [[290, A, F]], ppm: 81_000 },
  R407F: { rcl: [[320, A, F]], ppm: 95_000 },
  R410A: {
    rcl: [
      [420, "manufacturer-manuals", P, "a multi-split manual: 0.42 kg/m³"],
      [(25 * 453.59237) / (1000 * 0.3048 ** 3), A, P, "edition 2010"], // 25 lb per 1000 ft³
      [(0.3 * 453.59237) / 16 / 0.3048 ** 3, "manufacturer-manuals", P, "an older manual"], // 0.3 oz per ft³
    ],
    ppm: 140_000,
  },
  R448A: { rcl: [[390, A, F]], ppm: 110_000 },
  R449A: { rcl: [[370, A, F]], ppm: 100_000 },
  R450A: { rcl: [[320, A, F]], ppm: 72_000 },
  R452A: { rcl: [[440, A, F]], ppm: 100_000 },
  R452B: {
    lfl: [[0.309, M, F, "low end of 0.309 to 0.310"], [0.31, E, "secondary"]],
    rcl: [[77, A, F]], ppm: 30_000, molarMass: 63.53,
  },
  R454A: {
    lfl: [[0.278, E, "secondary", "ISO figure; ASHRAE 34 has 0.294, from memory"]],
    rcl: [[52, A, F, lower]], ppm: 16_000, molarMass: 80.47,
  },
  R454B: {
    lfl: [[0.296, M, F, "0.296 to 0.297"], [0.301, E, "secondary"]],
    rcl: [[49, A, F, lower]], ppm: 19_000, molarMass: 62.61,
  },
  R454C: {
    lfl: [
      [0.289, M, F, "low end of 0.289 to 0.293"],
      [0.291, E, "secondary"],
      [0.293, M, F, "high end of 0.289 to 0.293"],
    ],
    rcl: [[71, A, F]], ppm: 19_000, molarMass: 90.78,
  },
  R507A: { rcl: [[520, A, F]], ppm: 130_000 },
  R513A: { rcl: [[320, A, F]], ppm: 72_000 },
  R600a: {
    lfl: [[0.038, A, F, "the lower of two"], [0.043, M, F, "ISO figure"]],
    rcl: [[9.5, A, F], [11, E, F, "practical limit"]], ppm: 4000, molarMass: 58.122,
  },
  R717: {
    lfl: [[0.116, M, F, "16.7 % by volume"]],
    rcl: [[0.22, A, F], [0.35, E, F, "practical limit"]], ppm: 320, molarMass: 17.031,
  },
  R744: { rcl: [[54, A, F], [100, E, P, "practical limit"]], ppm: 30_000 },
  R1233zdE: { rcl: [[85, A, F]], ppm: 16_000 },
  R1234yf: { lfl: [[0.289, M, F]], rcl: [[75, A, F]], ppm: 16_000, molarMass: 114.042 },
  R1234zeE: { lfl: [[0.303, E, "secondary"]], rcl: [[75, A, F]], ppm: 16_000, molarMass: 114.042 },
} as Readonly<Record<string, SafetyRow>>);
