// Which moment stands in this cell? Dates, times of day and spreadsheet days to seconds of the wall clock.
// Follows ISO 8601-1:2019 for the calendar; other orders of day, month and year as stated.
// Does not cover zones: zone.ts turns the wall clock into time that passes.
import type { DateOrder } from "./log-format.ts";

/** A moment on the wall clock: seconds since 1970 as if there were no zones; its own zone where it states one. */
export interface Moment {
  readonly wall: number;
  /** Seconds east of UTC. */
  readonly offset?: number | undefined;
}

const months = "janfebmaraprmayjunjulaugsepoctnovdec";

/** The moment of a date with a time of day, or undefined. */
export function momentOf(text: string, order: DateOrder): Moment | undefined {
  const found = /^(\d{1,4})[-./ ]([a-z]{3}|\d{1,2})[-./ ](\d{1,4})(?:[T, ]+(.+))?$/i.exec(text);
  if (!found) return undefined;
  const [, a = "", b = "", c = "", clock = "0:00"] = found;
  const month = /\D/.test(b) ? monthNamed(b) : Number(b);
  const first = Number(a);
  const last = Number(c);
  // A month by its name stands in the middle, whatever the order of numbers.
  const middle = /\D/.test(b) && order === "month-day-year" ? "day-month-year" : order;
  const [year, m, day] = {
    "year-month-day": [first, month, last],
    "day-month-year": [last, month, first],
    "month-day-year": [last, first, month],
  }[middle] as [number, number, number];
  const digits = order === "year-month-day" ? a.length : c.length;
  const full = digits === 2 ? 2000 + year : digits === 4 ? year : Number.NaN;
  const midnight = Date.UTC(full, m - 1, day);
  const date = new Date(midnight);
  const exists = date.getUTCMonth() === m - 1 && date.getUTCDate() === day;
  const zone = /\s*(?:Z|UTC|([+-])(\d\d):?(\d\d))$/i.exec(clock);
  const seconds = secondsOf(clock.slice(0, zone?.index), 24);
  if (!exists || seconds === undefined) return undefined;
  const wall = midnight / 1000 + seconds;
  return zone ? { wall, offset: offsetOf(zone) } : { wall };
}

/** The number of a month; of what is none, a number that is not whole and stands in no date. */
const monthNamed = (name: string): number => months.indexOf(name.toLowerCase()) / 3 + 1;

/** Seconds east of UTC; Z and UTC have neither sign nor figures. */
function offsetOf([, sign, h = "0", min = "0"]: readonly string[]): number {
  return (sign === "-" ? -1 : 1) * (Number(h) * 3600 + Number(min) * 60);
}

/** The seconds of h:mm, h:mm:ss or h:mm:ss.s, with AM or PM; fewer hours than stated; or undefined. */
export function secondsOf(text: string, hours: number): number | undefined {
  const found =
    /^(\d{1,4}):([0-5]\d)(?::([0-5]\d(?:[.,]\d{1,9})?))?(?:\s*([ap])\.?\s?m\.?)?$/i.exec(text);
  if (!found) return undefined;
  const [, h = "", min = "", s = "0", half] = found;
  let hour = Number(h);
  if (half !== undefined) {
    if (hour < 1 || hour > 12) return undefined;
    hour = (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  }
  return hour < hours ? hour * 3600 + Number(min) * 60 + Number(s.replace(",", ".")) : undefined;
}
