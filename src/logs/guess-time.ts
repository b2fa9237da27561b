// Which column is the time, and how is it written? With the reasons, and what the rows cannot tell.
// Common practice of loggers and spreadsheets, no source.
// Does not cover the zone: no row states it, so that it is always asked about.
import { second } from "../quantity/units/time.ts";
import type { Findings, Layout } from "./guess-cells.ts";
import type { TitledColumn } from "./guess-columns.ts";
import type { DateOrder, TimeFormat } from "./log-format.ts";
import { momentOf, secondsOf } from "./moment.ts";
import { numberIn } from "./number-cell.ts";
import { say, type WrittenWord } from "./statements.ts";

const orders: readonly DateOrder[] = ["year-month-day", "day-month-year", "month-day-year"];

/** The time of the rows, and the columns that it takes. */
export interface GuessedTime {
  readonly time: TimeFormat;
  readonly taken: readonly TitledColumn[];
}

/** Finds the column of the time. */
export function guessTime(
  { rows }: Layout,
  columns: readonly TitledColumn[],
  decimal: "." | ",",
  findings: Findings,
): GuessedTime | undefined {
  const { doubts } = findings;
  const cellsOf = ({ at }: TitledColumn) =>
    rows.map(({ cells }) => cells[at] ?? "").filter((cell) => cell !== "");
  const every = (column: TitledColumn, holds: (cell: string) => boolean) => {
    const cells = cellsOf(column);
    return cells.length > 0 && cells.filter(holds).length >= 0.9 * cells.length;
  };
  const isClock = (cell: string) => secondsOf(cell, 10_000) !== undefined;
  const isDate = (order: DateOrder) => (cell: string) => momentOf(cell, order) !== undefined;
  const named = ({ title }: TitledColumn) => ({ column: { verbatim: title } });
  const found = (column: TitledColumn, written: WrittenWord) =>
    findings.reasons.push(
      say("logs.time", { ...named(column), written: `logs.written.${written}` }),
    );

  const dated = columns.find((one) => orders.some((order) => every(one, isDate(order))));
  const counted = columns.find(({ kind }) => kind === "duration");
  const clocked = columns.find((one) => every(one, isClock));
  if (dated && !counted) {
    found(dated, "date-time");
    const cells = cellsOf(dated).filter((cell) => orders.some((order) => isDate(order)(cell)));
    const order = orderOf(cells, findings);
    const inOne = cells.some((cell) => /:/.test(cell));
    const ofDay = inOne ? undefined : clocked;
    const isZoned = cells.every((cell) => momentOf(cell, order)?.offset !== undefined);
    if (!isZoned) doubts.push(say("logs.zone-unknown"));
    const time: TimeFormat = {
      written: "date-time",
      column: dated.place,
      ...(ofDay && { timeColumn: ofDay.place }),
      order,
      zone: "wall-clock",
    };
    return { time, taken: ofDay ? [dated, ofDay] : [dated] };
  }
  const firstOf = (column: TitledColumn) => numberIn(cellsOf(column)[0] ?? "", { decimal });
  const serial = (column: TitledColumn): GuessedTime => {
    found(column, "serial");
    doubts.push(say("logs.serial-unsure", named(column)));
    return { time: { written: "serial", column: column.place, epoch: 1900 }, taken: [column] };
  };
  // Days in these numbers are the years 1954 to 2119 of a spreadsheet.
  const isSerial = (column: TitledColumn) => firstOf(column) > 20_000 && firstOf(column) < 80_000;
  if (counted) {
    const unit = counted.unit as unknown as typeof second;
    if (unit.symbol === "d" && isSerial(counted)) return serial(counted);
    found(counted, "elapsed");
    return { time: { written: "elapsed", column: counted.place, unit }, taken: [counted] };
  }
  if (clocked) {
    const fromZero = secondsOf(cellsOf(clocked)[0] ?? "", 10_000) === 0;
    const written = fromZero ? "elapsed" : "clock";
    found(clocked, written);
    doubts.push(say("logs.elapsed-or-clock", named(clocked)));
    return { time: { written, column: clocked.place }, taken: [clocked] };
  }
  // A column of numbers that only grow.
  const grows = columns.find((one) => {
    const numbers = cellsOf(one).map((cell) => numberIn(cell, { decimal }));
    return numbers.length > 1 && numbers.every((n, i) => i === 0 || n > (numbers[i - 1] as number));
  });
  if (!grows) {
    doubts.push(say("logs.no-time"));
    return undefined;
  }
  if (isSerial(grows) && cellsOf(grows).some((cell) => /[.,]\d/.test(cell))) return serial(grows);
  found(grows, "elapsed");
  doubts.push(say("logs.time-unit-unknown", named(grows)));
  return { time: { written: "elapsed", column: grows.place, unit: second }, taken: [grows] };
}

/** The order of day, month and year that fits most dates; where more than one does, the doubt. */
function orderOf(cells: readonly string[], { reasons, doubts }: Findings): DateOrder {
  const fits = (order: DateOrder) => cells.filter((cell) => momentOf(cell, order)).length;
  const most = Math.max(...orders.map(fits));
  const fitting = orders.filter((order) => fits(order) === most);
  const named = cells.every((cell) => /[a-z]{3}/i.test(cell.slice(0, 12)));
  const [order] = fitting as [DateOrder];
  const telling =
    cells.find((cell) => orders.every((one) => (one === order) === !!momentOf(cell, one))) ??
    (cells[0] as string);
  const statement = { order: `logs.order.${order}`, cell: { verbatim: telling } } as const;
  if (fitting.length > 1 && !named) doubts.push(say("logs.date-order-unsure", statement));
  else reasons.push(say("logs.date-order", statement));
  return order;
}
