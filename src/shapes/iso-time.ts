// Which moment is meant, and is one surely before another? Dates and times of a record.
// Follows ISO 8601-1:2019, calendar date and extended format (from memory).
// Does not cover week dates, ordinal dates, durations and leap seconds.
import { refuse } from "../quantity/check.ts";
import { enter } from "../quantity/hints.ts";

/**
 * A date or a moment by ISO 8601, stated by the caller: `2026-05-04`, `2026-05-04T14:30` or
 * `2026-05-04T14:30:00+02:00`. The library has no clock.
 *
 * Source: ISO 8601-1:2019, calendar dates and extended format; from memory.
 */
export type IsoTime = string;

/** A part of a record by its path, and when it was done. */
export type Dated = readonly [path: string, at: IsoTime | undefined];

/** First and last millisecond that a text can mean, and whether it names its offset from UTC. */
interface Moment {
  readonly from: number;
  readonly to: number;
  readonly zoned: boolean;
}

/** The form of a date or a moment. */
export const isoTime: RegExp =
  /^(\d{4})-(\d\d)-(\d\d)(?:T(\d\d):(\d\d)(?::(\d\d)(?:\.\d{1,9})?)?(Z|[+-]\d\d:\d\d)?)?$/;

/** What a text means; throws where it is no date. Never asks the machine for its time zone. */
export function momentOf(path: string, text: IsoTime): Moment {
  const found = typeof text === "string" ? isoTime.exec(text) : null;
  if (found) {
    const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = found
      .slice(1, 7)
      .map((part) => Number(part ?? 0));
    const offset = found[7] === "Z" ? "+00:00" : found[7];
    const [oh = 0, om = 0] = (offset ?? "+00:00").slice(1).split(":").map(Number);
    const from = Date.UTC(year, month - 1, day, hour, minute, second);
    const same = new Date(Date.UTC(year, month - 1, day));
    const real = same.getUTCMonth() === month - 1 && year >= 1900; // no day reaches the same month again
    if (real && hour < 24 && minute < 60 && second < 60 && oh < 15 && om < 60) {
      const shift = (offset?.startsWith("-") ? -1 : 1) * (oh * 60 + om) * 60_000;
      const span = found[4] === undefined ? 86_400_000 : found[6] === undefined ? 60_000 : 1000;
      return { from: from - shift, to: from - shift + span - 1, zoned: offset !== undefined };
    }
  }
  const allowed = "a date or a moment by ISO 8601, such as 2026-05-04 or 2026-05-04T14:30+02:00";
  return refuse(path, text, allowed, enter("day"));
}

/** Whether one, or what was so many ms `earlier` (later when negative), is surely before the other: a day without a time, or a time without an offset, can be any that it may mean. */
export function surelyBefore(one: IsoTime, other: IsoTime, earlier = 0): boolean {
  const [a, b] = [momentOf("", one), momentOf("", other)];
  const doubt = a.zoned === b.zoned ? 0 : 14 * 3_600_000; // offsets reach from −12 h to +14 h
  return a.to + doubt - earlier < b.from;
}
