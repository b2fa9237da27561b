// Which time passed while clocks were set forward and back? The wall clock of a zone to seconds of UTC.
// Follows the IANA time zone database, as ECMA-402's Intl.DateTimeFormat knows it.
// Does not cover what a logger's clock did that nobody set: its drift stays in the log.
import { refuse, textOf } from "../quantity/check.ts";

/** The moments of UTC, in s, at which a wall clock shows a time: none in the skipped hour, two in the doubled one. */
export type ZoneClock = (wall: number) => readonly number[];

/** The clock of a zone. */
export function zoneClock(zone: string | undefined): ZoneClock {
  const name = textOf("format.time.zone", zone as string);
  if (name === "wall-clock") return (wall) => [wall];
  const offsetAt = offsetsOf(name);
  return (wall) => {
    // In the doubled hour the offset before is the larger one, so that the earlier moment comes first.
    const offsets = new Set([offsetAt(wall - 86_400), offsetAt(wall + 86_400)]);
    return [...offsets]
      .map((offset) => wall - offset)
      .filter((utc) => utc + offsetAt(utc) === wall);
  };
}

/** Seconds east of UTC at a moment; asked of Intl once for each quarter of an hour. */
function offsetsOf(zone: string): (utc: number) => number {
  let format: Intl.DateTimeFormat;
  try {
    format = new Intl.DateTimeFormat("en-US-u-ca-iso8601-nu-latn-hc-h23", {
      timeZone: zone,
      year: "numeric",
      month: "numeric",
      day: "numeric",
      hour: "numeric",
      minute: "numeric",
      second: "numeric",
    });
  } catch {
    const allowed = 'an IANA zone, such as "America/Denver", or "wall-clock"';
    return refuse("format.time.zone", zone, allowed, "time-zone");
  }
  const known = new Map<number, number>();
  return (utc) => {
    const quarter = Math.floor(utc / 900);
    const found = known.get(quarter);
    if (found !== undefined) return found;
    const parts = format.formatToParts(quarter * 900_000);
    const part = (type: string) => Number(parts.find((one) => one.type === type)?.value);
    const wall = Date.UTC(
      part("year"),
      part("month") - 1,
      part("day"),
      part("hour"),
      part("minute"),
      part("second"),
    );
    const offset = wall / 1000 - quarter * 900;
    if (known.size > 1000) known.clear();
    known.set(quarter, offset);
    return offset;
  };
}
