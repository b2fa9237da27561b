// When was this row written? The time column to seconds that grow, or why the row has no place in them.
// Follows log-format.ts.
// Does not cover gaps between rows: gaps.ts looks at those.
import { oneOf } from "../quantity/check.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { second } from "../quantity/units/time.ts";
import type { TimeFormat } from "./log-format.ts";
import { momentOf, secondsOf } from "./moment.ts";
import { type CellMarks, numberIn } from "./number-cell.ts";
import { unitOf } from "./reader-columns.ts";
import { type LineStatement, say } from "./statements.ts";
import { zoneClock } from "./zone.ts";

/**
 * A time in seconds, in the unit in which it is given back, what the clock showed (seconds since 1970), whether that
 * clock may have been set in between, and what was noticed; or why there is no time.
 */
export type ReadTime =
  | {
      readonly at: number;
      readonly unit: Unit<"duration">;
      readonly wall?: number | undefined;
      readonly mayBeSet?: boolean | undefined;
      readonly note?: LineStatement | undefined;
    }
  | LineStatement;

/** The time of the row that was taken before, and what the clock showed; before the first row, -Infinity. */
export interface LastTime {
  readonly at: number;
  readonly wall?: number | undefined;
}

/** Reads the time of one row after the other. */
export type TimeReader = (cell: string, line: number, last: LastTime) => ReadTime;

const day = 86_400;

/** Makes the reader of a time column. */
export function timeReader(format: TimeFormat, marks: CellMarks): TimeReader {
  const column = { verbatim: String(format.column) };
  const refused = (line: number, cell: string) =>
    say("logs.not-a-time", { line, column, cell: { verbatim: cell } });
  switch (
    oneOf("format.time.written", format.written, ["elapsed", "clock", "date-time", "serial"])
  ) {
    case "elapsed": {
      const unit = unitOf("format.time.unit", format, "duration", second);
      return (cell, line) => {
        const seconds = secondsOf(cell, 10_000) ?? numberIn(cell, marks, unit.symbol) * unit.scale;
        return Number.isFinite(seconds) ? { at: seconds, unit } : refused(line, cell);
      };
    }
    case "clock": {
      return (cell, line, last) => {
        const seconds = secondsOf(cell, 24);
        if (seconds === undefined) return refused(line, cell);
        const at = Math.max(0, Math.floor(last.at / day)) * day + seconds;
        const time = { at, unit: second, mayBeSet: true };
        if (last.at - at <= day / 2) return time;
        return { ...time, at: at + day, note: say("logs.past-midnight", { line }) };
      };
    }
    case "serial": {
      const epoch = oneOf(
        "format.time.epoch",
        (format as { epoch: 1900 | 1904 }).epoch,
        [1900, 1904],
      );
      return (cell, line) => {
        const days = numberIn(cell, marks);
        // Before day 61 the calendar of 1900 counts a 29 February that there was not.
        if (!(days >= (epoch === 1900 ? 61 : 0) && days < 2_958_466)) return refused(line, cell);
        const at = Math.round(days * day * 1000) / 1000;
        // 1 January 1970 is day 25 569 of the calendar from 1900, and 24 107 of that from 1904.
        return { at, unit: second, wall: at - (epoch === 1900 ? 25_569 : 24_107) * day };
      };
    }
    default:
      return dateReader(format as TimeFormat & { written: "date-time" }, refused);
  }
}

function dateReader(
  format: TimeFormat & { written: "date-time" },
  refused: (line: number, cell: string) => LineStatement,
): TimeReader {
  const { zone, column } = format;
  const orders = ["year-month-day", "day-month-year", "month-day-year"] as const;
  const order = oneOf("format.time.order", format.order, orders);
  const passed = zoneClock(zone);
  return (cell, line, last) => {
    const moment = momentOf(cell, order);
    if (!moment) return refused(line, cell);
    const { wall, offset } = moment;
    const times = offset === undefined ? passed(wall) : [wall - offset];
    const [first] = times;
    if (first === undefined) {
      const where = { column: { verbatim: String(column) }, cell: { verbatim: cell } };
      return say("logs.skipped-hour", { line, ...where });
    }
    const at = times.find((one) => one > last.at) ?? (times.at(-1) as number);
    // The second of two moments, and the row before was still in the first offset.
    const isSetBack = at !== first && wall - at !== (last.wall as number) - last.at;
    const note = isSetBack ? { note: say("logs.clock-set-back", { line }) } : {};
    const mayBeSet = zone === "wall-clock" && offset === undefined;
    return { at, unit: second, wall, mayBeSet, ...note };
  };
}

/** A duration in the unit of the time column. */
export function elapsedOf(seconds: number, unit: Unit<"duration">): Quantity<"duration"> {
  return unit(seconds / unit.scale);
}
