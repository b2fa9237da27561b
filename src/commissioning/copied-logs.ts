// Is this the log of another run? Logs that are the same row by row.
// Follows common practice, no source: no two tests read alike to the last digit.
// Does not cover logs that differ in a single row, nor short ones that show nothing but one pressure.
import { doubt } from "./doubt.ts";
import type { Covering } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

interface Logged {
  readonly readings?: readonly { readonly pressure?: unknown }[] | undefined;
}

/** Fewer rows than these may agree by chance: those of one pressure, and those of a course. */
const least = { still: 5, course: 3 };

/** Logs that were recorded before, each named at its second place. */
export function copiedLogs(parts: readonly Covering<Logged>[]): Trial[] {
  if (parts.length < 2) return [];
  const seen = new Set<string>();
  return parts.flatMap(({ part: { readings = [] }, path }) => {
    const rows = JSON.stringify(readings);
    const isStill = new Set(readings.map(({ pressure }) => JSON.stringify(pressure))).size < 2;
    const known = readings.length >= least[isStill ? "still" : "course"] && seen.has(rows);
    seen.add(rows);
    return known ? [doubt(`${path}.readings`, say("commissioning.log-copied"))] : [];
  });
}
