// How every function of the library looks at its arguments, so that a mistake that the compiler did
// not see (JavaScript, JSON, a cast) is named instead of turning into a wrong number. Internal.
import { type BrokenBound, type Hint, InvalidInputError, type OutOfRangeError } from "./errors.ts";
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
    if (typeof value === "string") return `the text ${JSON.stringify(value.slice(0, 40))}`;
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
  const allowed = kind ? `the kind ${kind}` : "a quantity";
  throw new InvalidInputError({ argument, value: describe(value), allowed });
}

/** An object that has to be there: options, a reading, an instrument. */
export function objectOf<T extends object>(argument: string, given: T): T {
  if (typeof given === "object" && given !== null && !Array.isArray(given)) return given;
  throw new InvalidInputError({ argument, value: describe(given), allowed: "an object" });
}

/** A list that has to be there, without holes; `most` items where the work grows faster than the list. */
export function listOf<T>(
  argument: string,
  given: readonly T[],
  most: number = Infinity,
): readonly T[] {
  if (!Array.isArray(given)) {
    throw new InvalidInputError({ argument, value: describe(given), allowed: "an array" });
  }
  const hole = given.findIndex((_, i) => !(i in given));
  if (hole >= 0) {
    const at = `${argument}[${hole}]`;
    throw new InvalidInputError({ argument: at, value: "undefined", allowed: "a value" });
  }
  numberOf(`${argument}.length`, given.length, { max: most });
  return given;
}

/** A text that has to be there. */
export function textOf(argument: string, given: string): string {
  if (typeof given === "string") return given;
  throw new InvalidInputError({ argument, value: describe(given), allowed: "a text" });
}

/** A switch that has to be on or off. */
export function flagOf(argument: string, given: boolean): boolean {
  if (typeof given === "boolean") return given;
  throw new InvalidInputError({ argument, value: describe(given), allowed: "true or false" });
}

/** Throws unless `value` is a unit of the kind; where any will do, ask for its own: {@link anyKindOf}. */
export function requireUnit(argument: string, value: unknown, kind: Kind): void {
  if (typeof value === "function" && (value as Unit<Kind>).kind === kind) return;
  throw new InvalidInputError({ argument, value: describe(value), allowed: `a unit of ${kind}` });
}

/** The kind of a unit, or words for an error where it is none. */
export const anyKindOf = (unit: { readonly kind: Kind } | undefined): Kind =>
  unit?.kind ?? ("some kind" as Kind);

/** Throws unless the quantity's values add, so that their difference is of the same kind. */
export function requireAdditive<K extends Kind>(argument: string, value: Quantity<K>): void {
  if (value.unit.difference.kind === value.kind) return;
  throw new InvalidInputError({
    argument,
    value: describe(value),
    allowed: "a difference; a point on a scale cannot be multiplied or divided",
  });
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
  const { si } = value;
  const unit = value.unit as unknown as Unit<Kind>;
  // The library's own limits: no quantity on a site lies beyond, and formulas would overflow.
  const sane = limits.above === 0 && si > 0 ? sanePositive : saneLimits;
  within(argument, Math.abs(si), sane, Failure, value, unit);
  // 140 °F is a little above 60 °C in binary: the thirteenth digit does not decide.
  return within(argument, si, limits, Failure, value, unit, noiseAt(si, si));
}

const saneLimits: Limits = { max: 1e30 };
const sanePositive: Limits = { above: 1e-30, max: 1e30 };

/** A number that is one: no text, not NaN, not infinite. */
export function finiteOf(argument: string, value: number): number {
  if (Number.isFinite(value)) return value;
  throw new InvalidInputError({ argument, value: describe(value), allowed: "a finite number" });
}

/** A plain number within the limits. */
export function numberOf(
  argument: string,
  value: number,
  limits: Limits = {},
  Failure: ErrorClass = InvalidInputError,
): number {
  return within(argument, finiteOf(argument, value), limits, Failure, value);
}

/** A count: a whole number within the limits. */
export function wholeNumberOf(argument: string, value: number, limits: Limits): number {
  if (Number.isInteger(numberOf(argument, value, limits))) return value;
  throw new InvalidInputError({ argument, value: String(value), allowed: "a whole number" });
}

/** One of a few words. */
export function oneOf<T extends string | number>(
  argument: string,
  value: T,
  allowed: readonly T[],
  hint?: Hint,
): T {
  if (allowed.includes(value)) return value;
  throw new InvalidInputError({
    argument,
    value: describe(value),
    allowed: allowed.join(", "),
    ...(hint && { hint }),
  });
}

function within(
  argument: string,
  value: number,
  { min = -Infinity, max = Infinity, above = -Infinity, below = Infinity, hint }: Limits,
  Failure: ErrorClass,
  shown: unknown,
  unit?: Unit<Kind>,
  noise = 0,
): number {
  if (value >= min - noise && value <= max + noise && value > above && value < below) return value;
  const figureOf = (si: number) =>
    unit ? unit(Number(((si - unit.offset) / unit.scale).toPrecision(6))) : si;
  const bounds = [
    ["min", "at least", min, value < min],
    ["above", "more than", above, value <= above],
    ["max", "at most", max, value > max],
    ["below", "less than", below, value >= below],
  ] as const;
  const stated = bounds.filter(([, , limit]) => Math.abs(limit) < Infinity);
  const [is, , limit] = stated.find(([, , , broken]) => broken) ?? bounds[0];
  throw new Failure({
    argument,
    value: String(shown),
    allowed: stated.map(([, words, limit]) => `${words} ${figureOf(limit)}`).join(" and "),
    bound: { value: shown, is, limit: figureOf(limit) } as BrokenBound,
    ...(hint && { hint }),
  });
}
