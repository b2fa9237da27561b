// Where among the cells is this column? By its title in the header, or by its number.
// Follows log-format.ts.
// Does not cover titles that stand twice: those columns are named by number.

import { refuse, textOf, wholeNumberOf } from "../quantity/check.ts";
import { choose } from "../quantity/hints.ts";
import type { ColumnPlace, TimeFormat } from "./log-format.ts";

/** The titles of the header; none where the format names no header. */
export type Titles = readonly string[] | undefined;

/** A title or a number from 1; throws when it is neither. */
export function requirePlace(argument: string, place: ColumnPlace): void {
  if (typeof place === "number") wholeNumberOf(argument, place, { min: 1, max: 1000 });
  else textOf(argument, place);
}

/** The index of a column among the cells, from 0. */
export function placeAmong(titles: Titles, argument: string, place: ColumnPlace): number {
  if (typeof place === "number") {
    return wholeNumberOf(argument, place, { min: 1, max: titles?.length ?? 1000 }) - 1;
  }
  if (!titles) {
    const allowed = "a number from 1, because the format names no header";
    return refuse(argument, place, allowed, "whole-number");
  }
  const at = titles.indexOf(place);
  if (at >= 0 && titles.lastIndexOf(place) === at) return at;
  const allowed = `a title that the header has once: ${titles.join(", ").slice(0, 200)}`;
  return refuse(argument, place, allowed, choose(titles));
}

/** The columns of the time: one, or a date and a time of day. */
export function timePlaces(format: TimeFormat): [argument: string, place: ColumnPlace][] {
  const places: [string, ColumnPlace][] = [["format.time.column", format.column]];
  if (format.written === "date-time" && format.timeColumn !== undefined) {
    places.push(["format.time.timeColumn", format.timeColumn]);
  }
  for (const [argument, place] of places) requirePlace(argument, place);
  return places;
}
