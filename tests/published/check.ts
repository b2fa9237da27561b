// The form of a check against an outside source. One JSON file per module holds the rows; the file
// `<module>.evaluate.ts` beside it says how the library computes each of them.

import type { Jurisdiction } from "./jurisdictions.ts";

/** Where the expected value of a check comes from. */
export type Standing =
  /** Printed in a published source that was read. */
  | "published"
  /** Printed in one transcription, or told by a text of the trade about the source. */
  | "secondary"
  /** Computed from a published formula or equation, outside this library. */
  | "computed"
  /** A published figure remembered, not read. */
  | "from memory"
  /** Common practice of the trade, no source. */
  | "common practice";

/** One figure that the library has to reproduce. */
export interface Check {
  /** Unique in the file. */
  readonly id: string;
  /** Which evaluator of the `.evaluate.ts` file computes it. */
  readonly computes: string;
  /** Where the rule holds, for rules of a country. */
  readonly jurisdiction?: Jurisdiction;
  /** What the evaluator needs, as plain JSON with units in the names. */
  readonly input: Readonly<Record<string, unknown>>;
  /** The source's answer: a number, or a word or size that has to match exactly. */
  readonly expected: number | string | boolean;
  /** Unit of the expected number, "" for a word. */
  readonly unit: string;
  /** How far ours may be off, absolute (in the unit) or relative; left out for an exact match. */
  readonly tolerance?: { readonly absolute: number } | { readonly relative: number };
  /** Publication, edition, clause or table. */
  readonly source: string;
  /** How the expected value was come by. */
  readonly standing: Standing;
  /** Conflicts, misprints, why the tolerance is what it is. */
  readonly note?: string;
}

/** The rows of one module. */
export interface CheckFile {
  readonly module: string;
  readonly checks: readonly Check[];
}

/** How a module computes its checks: one function per `computes`, in the unit of the row. */
export type Evaluators = Readonly<
  // biome-ignore lint/suspicious/noExplicitAny: each evaluator knows the shape of its own rows.
  Record<string, (input: any) => number | string | boolean>
>;

/** How far ours is from the source's answer, and whether that is near enough. */
export function compare(
  check: Check,
  ours: number | string | boolean,
): { deviation: number; ok: boolean } {
  if (typeof check.expected !== "number" || typeof ours !== "number" || !check.tolerance) {
    return {
      deviation: ours === check.expected ? 0 : Number.POSITIVE_INFINITY,
      ok: ours === check.expected,
    };
  }
  const deviation = Math.abs(ours - check.expected);
  const allowed =
    "absolute" in check.tolerance
      ? check.tolerance.absolute
      : check.tolerance.relative * Math.abs(check.expected);
  return { deviation, ok: deviation <= allowed };
}
