// Which readings of a log were taken while the unit was starting, where nobody marked them?
// Common practice, no source: an inrush of twice the later current, for ten seconds at most; a dip of 3 %.
// Does not cover a start that lies between two readings: the verdict says how far they are apart.
import type { PlainReading } from "./voltage-reading.ts";
import { least } from "./voltage-reading.ts";

/** Longest time for which an inrush lasts, s. Common practice, no source. */
const longest = 10;
/** Share of the neighbors' voltage by which a start dips at least. Common practice, no source. */
const dip = 0.03;
/** Current of a start over that of the reading after it. Common practice, no source. */
const inrush = 2;

/** The readings with the starts that were found marked, how many, and the deepest dip that may be one. */
export function findStarts(readings: readonly PlainReading[]): {
  readonly readings: readonly PlainReading[];
  readonly found: number;
  readonly unmarkedDip: number | undefined;
} {
  let found = 0;
  let unmarkedDip: number | undefined;
  const marked = [...readings];
  for (let from = 1; from < readings.length - 1; from++) {
    const to = dipFrom(readings, from);
    if (to === undefined) continue;
    const inside = readings.slice(from, to);
    if (hasInrush(inside, readings[to])) {
      found++;
      for (let i = from; i < to; i++)
        marked[i] = { ...(marked[i] as PlainReading), state: "start" };
    } else if (inside.every(({ amps }) => amps.length === 0)) {
      unmarkedDip = Math.min(unmarkedDip ?? Infinity, ...inside.map(({ volts }) => least(volts)));
    }
    from = to - 1;
  }
  return { readings: marked, found, unmarkedDip };
}

/** The end of a short dip that begins at a reading: the first reading that is back up; `undefined` where none begins. */
function dipFrom(readings: readonly PlainReading[], from: number): number | undefined {
  const before = readings[from - 1] as PlainReading;
  const level = least(before.volts) * (1 - dip);
  let to = from;
  for (; to < readings.length; to++) {
    const { volts, state, at } = readings[to] as PlainReading;
    if (state !== undefined) return undefined;
    if (least(volts) >= level) break;
    if (at - before.at > longest) return undefined;
  }
  const after = readings[to];
  return to > from && after && after.at - before.at <= 2 * longest ? to : undefined;
}

/** Whether the current shows that a motor was starting: far above what it draws once it runs. */
function hasInrush(inside: readonly PlainReading[], after: PlainReading | undefined): boolean {
  const later = Math.max(0, ...(after?.amps ?? []));
  const peak = Math.max(0, ...inside.flatMap(({ amps }) => amps));
  return later > 0 && peak >= inrush * later;
}
