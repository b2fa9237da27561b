// What do the parts of the verdict look at, and in which form do they answer? Internal.
// Follows no standard; the form is the library's own.
// Does not cover what is judged: the files named judge-… do.
import type { Citation, Outcome } from "../assessment/assessment.ts";
import type { NameplateVoltageRange } from "./nameplate-voltage-range.ts";
import type { SupplyVoltageCause, SupplyVoltageStatement } from "./statements.ts";
import type { SupplyVoltageInput } from "./supply-voltage-assessment.ts";
import type { meterErrors, PlainReading } from "./voltage-reading.ts";

/** What the parts look at: readings without those while starting, extremes in volts. */
export interface SupplyEvidence {
  readonly input: SupplyVoltageInput;
  readonly plate: NameplateVoltageRange;
  readonly readings: readonly PlainReading[];
  readonly low: number;
  readonly high: number;
  readonly nominal: number;
  readonly confidence: number;
  readonly errors: ReturnType<typeof meterErrors>;
  /** Whether the readings are a log: two or more, with their times. */
  readonly timed: boolean;
  /** Deepest dip of a log that looks like a start and has no state and no current to show it. */
  readonly unmarkedDip: number | undefined;
}

/** One thing that a part found. */
export type SupplyFinding =
  | {
      readonly as: Outcome;
      readonly cause?: SupplyVoltageCause | undefined;
      readonly said: SupplyVoltageStatement;
      readonly actions?: readonly SupplyVoltageStatement[] | undefined;
    }
  | { readonly as: "assumption" | "finding"; readonly said: SupplyVoltageStatement };

/** What a part answers. */
export interface SupplyPart {
  readonly findings: readonly SupplyFinding[];
  readonly sources?: readonly Citation[] | undefined;
}

/** Lists what was taken because it was not stated. */
export const assumed = (said: SupplyVoltageStatement): SupplyFinding => ({
  as: "assumption",
  said,
});

/** Says what a pass would hide. */
export const noted = (said: SupplyVoltageStatement): SupplyFinding => ({ as: "finding", said });
