// How every function of the library looks at its arguments, so that a mistake that the compiler did
// not see (JavaScript, JSON, a cast) is named instead of turning into a wrong number. Internal.
import { InvalidInputError, type OutOfRangeError } from "./errors.ts";
import type { Kind, PointKind } from "./kinds.ts";
import type { Quantity, Unit } from "./quantity.ts";

/** Limits in SI units, or plain numbers. `above` and `below` exclude their value. */
export interface Limits {
  readonly min?: number;
  readonly max?: number;
  readonly above?: number;
  readonly below?: number;
  readonly hint?: string;
}

type ErrorClass = typeof InvalidInputError | typeof OutOfRangeError;

const points: Record<PointKind, true> = {
  temperature: true,
  gaugePressure: true,
  absolutePressure: true,
};

/** What was passed, in words for an error message, never longer than a line. */
export function describe(value: unknown): string {
  if (value === null || value === undefined) return String(value);
  const kind = (value as { kind?: unknown }).kind;
  if (typeof kind === "string") {
    return typeof value === "function" ? `a unit of ${kind}` : `${kind} ${shown(value)}`;
  }
  if (typeof value === "string") return `the text "${value.slice(0, 40)}"`;
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  return Array.isArray(value)
    ? "an array"
    : `${/^[aeiou]/.test(typeof value) ? "an" : "a"} ${typeof value}`;
}

function shown(value: object): string {
  try {
    return String(`${value}`).slice(0, 40);
  } catch {
    return "";
  }
}

/** Throws unless `value` is a quantity or a unit of the kind. */
export function requireKind(argument: string, value: unknown, kind: Kind): void {
  const given = value as Quantity<Kind> | Unit<Kind> | null | undefined;
  if (given?.kind === kind && (typeof given === "function" || Number.isFinite(given.si))) return;
  throw new InvalidInputError({ argument, value: describe(value), allowed: `the kind ${kind}` });
}

/** Throws unless `value` is a quantity whose values add. */
export function requireAdditive(argument: string, value: { readonly kind: Kind }): void {
  if (!(value.kind in points)) return;
  throw new InvalidInputError({
    argument,
    value: describe(value),
    allowed: "a difference; a point on a scale cannot be multiplied or divided",
  });
}

/** The SI value of an argument of the kind within the limits; the message speaks the caller's unit. */
export function siOf<K extends Kind>(
  argument: string,
  value: Quantity<K>,
  kind: K,
  limits: Limits = {},
  Failure: ErrorClass = InvalidInputError,
): number {
  requireKind(argument, value, kind);
  const { unit } = value;
  const inUnit = (si: number) =>
    `${Number(((si - unit.offset) / unit.scale).toPrecision(6))} ${unit.symbol}`;
  return within(argument, value.si, limits, Failure, () => value.toString(), inUnit);
}

/** A plain number within the limits. */
export function numberOf(
  argument: string,
  value: number,
  limits: Limits = {},
  Failure: ErrorClass = InvalidInputError,
): number {
  if (typeof value !== "number" || !Number.isFinite(value)) {
    throw new InvalidInputError({ argument, value: describe(value), allowed: "a finite number" });
  }
  return within(argument, value, limits, Failure, () => String(value), String);
}

/** One of a few words. */
export function oneOf<T extends string | number>(
  argument: string,
  value: T,
  allowed: readonly T[],
  hint = "",
): T {
  if (allowed.includes(value)) return value;
  throw new InvalidInputError({
    argument,
    value: describe(value),
    allowed: allowed.join(", "),
    hint,
  });
}

function within(
  argument: string,
  value: number,
  { min, max, above, below, hint = "" }: Limits,
  Failure: ErrorClass,
  show: () => string,
  showLimit: (limit: number) => string,
): number {
  if (
    (min === undefined || value >= min) &&
    (max === undefined || value <= max) &&
    (above === undefined || value > above) &&
    (below === undefined || value < below)
  ) {
    return value;
  }
  const bounds: string[] = [];
  if (min !== undefined) bounds.push(`at least ${showLimit(min)}`);
  if (above !== undefined) bounds.push(`more than ${showLimit(above)}`);
  if (max !== undefined) bounds.push(`at most ${showLimit(max)}`);
  if (below !== undefined) bounds.push(`less than ${showLimit(below)}`);
  throw new Failure({ argument, value: show(), allowed: bounds.join(" and "), hint });
}
