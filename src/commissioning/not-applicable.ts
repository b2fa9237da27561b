// Which steps may a person declare not applicable? The declaration as it stands in a record.
// Follows common practice, no source. Does not cover whether the record bears it out: see declared.ts.
import type { IsoTime } from "../shapes/index.ts";

/**
 * The steps that an installation may do without: `line-run` (lines of a fixed length that came with the
 * unit), `joints` (none, or quick couplings only), `room-limit` (no room that the refrigerant can leak into)
 * and `drain` (a unit that never cools). All others guard life, the unit or the proof, and have no word here.
 *
 * Source: common practice, no source.
 */
export type OptionalStep = "line-run" | "joints" | "room-limit" | "drain";

/** Their names. */
export const optionalSteps: readonly OptionalStep[] = ["line-run", "joints", "room-limit", "drain"];

/**
 * The word of a person that a step does not apply to this installation. It never makes the step pass: the
 * assessment lists it among its first reasons and its assumptions.
 *
 * Cautions: `room-limit` can only be declared with a refrigerant of safety class A1, the others burn or
 * poison; those of A1 suffocate all the same.
 *
 * Source: none; the library's own type.
 */
export interface NotApplicable {
  /** Which step. */
  readonly step: OptionalStep;
  /** Why it does not apply; a letter or a digit at least. */
  readonly reason: string;
  /** Name of who declares it; a letter or a digit at least. */
  readonly by: string;
  /** When. */
  readonly at: IsoTime;
}
