// Is this the log of another run? Logs that are the same row by row.
// Follows common practice, no source: no two tests read alike to the last digit.
// Does not cover logs that differ in a single row.
import { doubt } from "./doubt.ts";
import type { Covering } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

interface Logged {
  readonly readings?: readonly unknown[] | undefined;
}

/** Fewer rows than these may agree by chance. */
const leastRows = 5;

/** Logs that were recorded before, each named at its second place. */
export function copiedLogs(parts: readonly Covering<Logged>[]): Trial[] {
  if (parts.length < 2) return [];
  const seen = new Set<string>();
  return parts.flatMap(({ part: { readings = [] }, path }) => {
    const rows = JSON.stringify(readings);
    const known = readings.length >= leastRows && seen.has(rows);
    seen.add(rows);
    return known ? [doubt(`${path}.readings`, say("commissioning.log-copied"))] : [];
  });
}
