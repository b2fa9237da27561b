// In which units does the reader want the picture? Checks them and turns SI numbers into them. Internal.
// Source: none; the library's own choices. Does not cover what each plot measures.
import { requireUnit } from "../quantity/check.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/quantity.ts";
import { day, hour, minute, second } from "../quantity/units/time.ts";

/** Any unit of a quantity, as far as a picture needs it. */
export interface Reading {
  readonly symbol: string;
  readonly scale: number;
  readonly offset: number;
}

/** The number of an SI value in a unit. */
export const inUnit = (si: number, { scale, offset }: Reading): number => (si - offset) / scale;

/** The unit that was asked for, or the usual one. */
export function unitOf<K extends Kind>(
  argument: string,
  unit: Unit<K> | undefined,
  usual: Unit<K>,
): Unit<K> {
  if (unit === undefined) return usual;
  requireUnit(argument, unit, usual.kind);
  return unit;
}

/** The unit in which a time is a handy number. */
export function timeUnitFor(seconds: number): Unit<"duration"> {
  if (seconds < 3 * 60) return second;
  return seconds < 3 * 3600 ? minute : seconds < 4 * 86_400 ? hour : day;
}
