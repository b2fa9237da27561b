// Which steps may a person declare not applicable, and why? The waiver as it stands in a record.
// Follows common practice, no source. Does not cover whether the record bears it out: see waived.ts.
import type { IsoTime } from "../shapes/index.ts";

/**
 * The steps that an installation may do without: `line-run`, `joints`, `room-limit` and `drain`. All others guard life,
 * the unit or the proof, and have no word here; what falls away by the construction of the unit needs no waiver.
 *
 * Source: common practice, no source.
 */
export type OptionalStep = "line-run" | "joints" | "room-limit" | "drain";

/**
 * Why a step does not apply. `factory-line-set`: lines of a fixed length came with the unit (`line-run`).
 * `existing-lines`: the lines and their joints were there before and were not opened (`joints`). `no-enclosed-room`:
 * no room that a leak can fill, class A1 only (`room-limit`). `heats-only`: the unit never cools (`drain`).
 *
 * Source: common practice, no source.
 */
export type WaiverReason =
  | "factory-line-set"
  | "existing-lines"
  | "no-enclosed-room"
  | "heats-only";

/**
 * The word of a person that a step does not apply to this installation. It never makes the step pass: the
 * assessment lists it among its first reasons and its assumptions.
 *
 * Cautions: `room-limit` can only be waived with a refrigerant of safety class A1, the others burn or poison; those of
 * A1 suffocate all the same.
 */
export interface Waiver {
  /** Which step. */
  readonly step: OptionalStep;
  /** Why it does not apply: one of the reasons that fit the step and the equipment; without one it does not count. */
  readonly reason?: WaiverReason | undefined;
  /** Name of the run for which it holds; all of them when left out. */
  readonly run?: string | undefined;
  /** More about it, in one's own words; kept, never judged. */
  readonly note?: string | undefined;
  /** Name of who declares it; a letter or a digit at least. */
  readonly by: string;
  /** When. */
  readonly at: IsoTime;
}
