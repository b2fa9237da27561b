// Lower flammability limits and concentration limits, each with its source.
// Follows ANSI/ASHRAE Standard 34 (2022) and IEC 60335-2-40:2018; most rows from memory, as marked.
// Does not cover safety class, composition and warming potential: those are with `refrigerants`.
import type { SourceId } from "../sources/bibliography.ts";

/** A value, where it stands, and whether it was read there. */
export type Figure = readonly [value: number, source: SourceId, read: boolean, note?: string];

/** What is known of one refrigerant. */
export interface SafetyRow {
  /** LFL, kg/m³; the first is used where none is stated. */
  readonly lfl?: readonly Figure[];
  /** RCL or practical limit, g/m³; the first is used where none is stated. */
  readonly rcl: readonly Figure[];
  /** RCL, ppm by volume. */
  readonly ppm: number;
}

const A = "ashrae-34-2022";
const I = "iec-60335-2-40-2018";
const M = "from-memory"; // no source remembered with the figure

/** By ASHRAE 34 designation without hyphen and brackets. */
export const safetyTable: Readonly<Record<string, SafetyRow>> = {
  //       LFL kg/m³                                     RCL g/m³                     RCL ppm
  R22: { rcl: [[210, A, true]], ppm: 59_000 },
  R32: {
    lfl: [
      [0.307, I, true],
      [0.306, A, true, "14.4 % by volume"],
    ],
    rcl: [[77, A, true]],
    ppm: 36_000,
  },
  R134a: { rcl: [[210, A, true]], ppm: 50_000 },
  R290: { lfl: [[0.038, I, true]], rcl: [[9.5, A, false]], ppm: 5300 },
  R600a: {
    lfl: [
      [0.043, M, false, "ISO figure"],
      [0.038, A, false],
    ],
    rcl: [[9.5, A, false]],
    ppm: 4000,
  },
  R404A: { rcl: [[500, A, false]], ppm: 130_000 },
  R407C: { rcl: [[290, A, false]], ppm: 81_000 },
  R410A: {
    rcl: [
      [420, A, false],
      // 25 lb per 1000 ft³
      [(25 * 453.59237) / (1000 * 0.3048 ** 3), A, true, "edition 2010"],
      // 0.3 oz per ft³
      [(0.3 * 453.59237) / 16 / 0.3048 ** 3, "manufacturer-manuals", true, "an older manual"],
    ],
    ppm: 140_000,
  },
  R454B: { lfl: [[0.296, M, false]], rcl: [[49, A, false, "limited by toxicity"]], ppm: 19_000 },
  R454C: {
    lfl: [
      [0.289, M, false, "low end of 0.289 to 0.293"],
      [0.293, M, false, "high end of 0.289 to 0.293"],
    ],
    rcl: [[71, A, false]],
    ppm: 19_000,
  },
  R452B: {
    lfl: [
      [0.309, M, false, "low end of 0.309 to 0.310"],
      [0.31, M, false, "high end of 0.309 to 0.310"],
    ],
    rcl: [[77, A, false]],
    ppm: 30_000,
  },
  R448A: { rcl: [[390, A, false]], ppm: 110_000 },
  R449A: { rcl: [[370, A, false]], ppm: 100_000 },
  R507A: { rcl: [[520, A, false]], ppm: 130_000 },
  R513A: { rcl: [[320, A, false]], ppm: 72_000 },
  R744: {
    rcl: [
      [54, A, false],
      [100, "en-378-1", true, "practical limit"],
    ],
    ppm: 30_000,
  },
  R1234yf: { lfl: [[0.289, M, false]], rcl: [[75, A, false]], ppm: 16_000 },
  R1234zeE: { lfl: [[0.303, M, false]], rcl: [[75, A, false]], ppm: 16_000 },
};
