// How every function of the library looks at its arguments, so that a mistake that the compiler did
// not see (JavaScript, JSON, a cast) is named instead of turning into a wrong number. Internal.
import { type BrokenBound, type Hint, InvalidInputError, type OutOfRangeError } from "./errors.ts";
import { choose, type Entry, enter } from "./hints.ts";
import type { Kind } from "./kinds.ts";
import { noiseAt } from "./limit.ts";
import type { Quantity, Unit } from "./quantity.ts";

/** Limits in SI units, or plain numbers. `above` and `below` exclude their value. */
export interface Limits {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly above?: number | undefined;
  readonly below?: number | undefined;
  readonly hint?: Hint | undefined;
}

type ErrorClass = typeof InvalidInputError | typeof OutOfRangeError;

/** What was passed, in words for an error message, never longer than a line; never throws. */
export function describe(value: unknown): string {
  const type = typeof value;
  try {
    if (type === "string") return `the text ${JSON.stringify((value as string).slice(0, 40))}`;
    const { kind } = value as { kind?: unknown };
    if (typeof kind === "string") {
      const text = type === "function" ? `a unit of ${kind}` : `${kind} ${value}`;
      return text.replace(/\s+/g, " ").slice(0, 60);
    }
    if (Array.isArray(value)) return "an array";
  } catch {} // nothing at all, or a getter or a toString that throws
  if (value === null || ["undefined", "number", "boolean"].includes(type)) return String(value);
  return `${type === "object" ? "an" : "a"} ${type}`;
}

/** Throws: the value is not what is allowed. The hint says what a person enters instead, or does about it. */
export function refuse(
  argument: string,
  value: unknown,
  allowed: string,
  hint?: Entry | Hint,
  Failure: ErrorClass = InvalidInputError,
): never {
  throw new Failure({
    argument,
    value: describe(value),
    allowed,
    hint: typeof hint === "string" ? enter(hint) : hint,
  });
}

/** Throws: just one of these fields has to be filled in, or one at least; `value` says in words what is. */
export function askOneOf(argument: string, value: string, names: readonly string[]): never {
  const allowed = `one of ${names.join(", ")}`;
  throw new InvalidInputError({ argument, value, allowed, hint: choose(names, "one-of") });
}

/** Whether `value` is a quantity, of any copy of the package, and of the kind when one is asked for. */
export function isOfKind(value: unknown, kind?: Kind): boolean {
  try {
    const { unit, plus, si, kind: own } = value as Quantity<Kind>;
    const whole = typeof unit === "function" && typeof plus === "function" && Number.isFinite(si);
    return whole && own === (kind ?? unit.kind);
  } catch {
    return false; // nothing at all, or a getter that throws
  }
}

/** Throws unless `value` is a quantity, of the kind when one is asked for. */
export function requireKind(argument: string, value: unknown, kind?: Kind): void {
  if (isOfKind(value, kind)) return;
  refuse(argument, value, kind ? `the kind ${kind}` : "a quantity", kind ?? "quantity");
}

/** An object that has to be there: options, a reading, an instrument. */
export function objectOf<T extends object>(argument: string, given: T): T {
  if (typeof given === "object" && given !== null && !Array.isArray(given)) return given;
  return refuse(argument, given, "an object");
}

/** A list that has to be there, without holes; `most` items where the work grows faster than the list. */
export function listOf<T>(
  argument: string,
  given: readonly T[],
  most: number = Infinity,
  least?: number,
): readonly T[] {
  if (!Array.isArray(given)) refuse(argument, given, "an array");
  const hole = given.findIndex((_, i) => !(i in given));
  if (hole >= 0) refuse(`${argument}[${hole}]`, undefined, "a value");
  numberOf(`${argument}.length`, given.length, { min: least, max: most });
  return given;
}

/** A text that has to be there. */
export function textOf(argument: string, given: string): string {
  if (typeof given === "string") return given;
  return refuse(argument, given, "a text", "text");
}

/** A day of the calendar, written "2026-11-29". */
export function dayOf(argument: string, day: string): string {
  const time = /^\d{4}-\d\d-\d\d$/.test(textOf(argument, day)) ? Date.parse(`${day}T00:00Z`) : NaN;
  // 2026-02-30 is read as March 2 by some engines.
  if (time >= 0 && new Date(time).toISOString().startsWith(day)) return day;
  return refuse(argument, day, 'a day such as "2026-11-29"', "day");
}

/** A switch that has to be on or off. */
export function flagOf(argument: string, given: boolean): boolean {
  if (typeof given === "boolean") return given;
  return refuse(argument, given, "true or false", "yes-or-no");
}

/** Throws unless `value` is a unit of the kind; where any will do, ask for its own: {@link anyKindOf}. */
export function requireUnit(argument: string, value: unknown, kind: Kind): void {
  if (typeof value === "function" && (value as Unit<Kind>).kind === kind) return;
  refuse(argument, value, `a unit of ${kind}`);
}

/** The kind of a unit, or words for an error where it is none. */
export const anyKindOf = (unit: { readonly kind: Kind } | undefined): Kind =>
  unit?.kind ?? ("some kind" as Kind);

/** Throws unless the quantity's values add, so that their difference is of the same kind. */
export function requireAdditive<K extends Kind>(argument: string, value: Quantity<K>): void {
  if (value.unit.difference.kind === value.kind) return;
  refuse(argument, value, "a difference, not a point on a scale");
}

/**
 * The SI value of an argument of the kind within the limits; the message speaks the caller's unit. Where
 * any kind will do, pass the argument's own: `siOf("a", a, a?.kind)`.
 */
export function siOf<K extends Kind>(
  argument: string,
  value: Quantity<K>,
  kind: K,
  limits: Limits = {},
  Failure: ErrorClass = InvalidInputError,
): number {
  requireKind(argument, value, kind);
  const { si, unit } = value;
  const inUnit = (si: number) => unit(Number(((si - unit.offset) / unit.scale).toPrecision(6)));
  // The library's own limits: no quantity on a site lies beyond, and formulas would overflow.
  const above = limits.above === 0 && si > 0 ? 1e-30 : -Infinity;
  within(argument, Math.abs(si), { above, max: 1e30 }, Failure, value, inUnit);
  // 140 °F is a little above 60 °C in binary: the thirteenth digit does not decide.
  return within(argument, si, limits, Failure, value, inUnit, noiseAt(si, si));
}

/** A number that is one: no text, not NaN, not infinite. */
export function finiteOf(argument: string, value: number): number {
  if (Number.isFinite(value)) return value;
  return refuse(argument, value, "a finite number", "number");
}

/** A plain number within the limits. */
export function numberOf(
  argument: string,
  value: number,
  limits: Limits = {},
  Failure: ErrorClass = InvalidInputError,
): number {
  return within(argument, finiteOf(argument, value), limits, Failure, value, Number);
}

/** A count: a whole number within the limits. */
export function wholeNumberOf(argument: string, value: number, limits: Limits): number {
  if (Number.isInteger(numberOf(argument, value, limits))) return value;
  return refuse(argument, value, "a whole number", "whole-number");
}

/** One of a few words. */
export function oneOf<T extends string | number>(
  argument: string,
  value: T,
  allowed: readonly T[],
  hint?: Hint,
): T {
  if (allowed.includes(value)) return value;
  return refuse(argument, value, allowed.join(", "), hint ?? choose(allowed));
}

/** A figure within the limits; where it is shown with a unit, so are they. `noise` is of binary arithmetic. */
export function within(
  argument: string,
  value: number,
  { min = -Infinity, max = Infinity, above = -Infinity, below = Infinity, hint }: Limits,
  Failure: ErrorClass,
  shown: unknown,
  figureOf: (si: number) => unknown,
  noise = 0,
): number {
  if (value >= min - noise && value <= max + noise && value > above && value < below) return value;
  const bounds = [
    ["min", "at least", min, value < min],
    ["above", "more than", above, value <= above],
    ["max", "at most", max, value > max],
    ["below", "less than", below, value >= below],
  ] as const;
  const stated = bounds.filter(([, , limit]) => Number.isFinite(limit));
  const [is, , limit] = bounds.find(([, , , broken]) => broken) as (typeof bounds)[number];
  throw new Failure({
    argument,
    value: String(shown),
    allowed: stated.map(([, words, limit]) => `${words} ${figureOf(limit)}`).join(" and "),
    bound: { value: shown, is, limit: figureOf(limit) } as BrokenBound,
    hint,
  });
}
