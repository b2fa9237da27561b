// Is this the log of another run? Logs that are the same row by row.
// Follows common practice, no source: no two tests read alike to the last digit, nor rise alike in every row.
// Does not cover logs that differ in a single row, nor short ones that show nothing but one pressure.
import { doubt } from "./doubt.ts";
import type { Covering } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

interface Logged {
  readonly readings?:
    | readonly {
        readonly pressure?: { readonly si: number } | undefined;
        readonly elapsed?: { readonly si: number } | undefined;
      }[]
    | undefined;
}

/** Fewer rows than these may agree by chance: those of one pressure, and those of a course. */
const least = { still: 5, course: 3 };

/** Nor may so many rises all agree by chance, whatever they started from. */
const leastShifted = { rows: 8, rises: 6 };

/** Logs that were recorded before, as they are or raised by one figure, each named at its second place. */
export function copiedLogs(parts: readonly Covering<Logged>[]): Trial[] {
  if (parts.length < 2) return [];
  const seen = new Set<string>();
  return parts.flatMap(({ part: { readings = [] }, path }) => {
    const isStill = new Set(readings.map(({ pressure }) => JSON.stringify(pressure))).size < 2;
    const rows = readings.length >= least[isStill ? "still" : "course"] && JSON.stringify(readings);
    const keys = [rows, risesOf(readings)].filter((key) => key !== false);
    const known = keys.some((key) => seen.has(key));
    for (const key of keys) seen.add(key);
    return known ? [doubt(`${path}.readings`, say("commissioning.log-copied"))] : [];
  });
}

/** How a log rises or falls from its first row on, to 0.01 Pa; false where that could agree by chance. */
function risesOf(readings: NonNullable<Logged["readings"]>): string | false {
  const from = readings[0]?.pressure?.si ?? 0;
  const rises = readings.map(({ pressure }) => Math.round(100 * ((pressure?.si ?? 0) - from)));
  const isLong = rises.length >= leastShifted.rows && new Set(rises).size >= leastShifted.rises;
  return isLong && JSON.stringify([rises, readings.map(({ elapsed }) => elapsed?.si)]);
}
