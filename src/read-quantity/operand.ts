// What value stands here? A number with its sign and unit, or several side by side: −12 ft 6 1/2 in.
// Follows the trade's notation, common practice, no source; what can be read in two ways is refused.
// Does not cover arithmetic between values.
import { compoundRatio } from "./compound-units.ts";
import { FieldTextError } from "./field-text-error.ts";
import type { NamedUnit } from "./find-unit.ts";
import { type Literal, literalAt } from "./literal.ts";
import { say, verbatim } from "./statements.ts";
import type { Token } from "./tokens.ts";

/** One value as typed: a bare number (no units) or a quantity. */
export interface Leaf {
  /** The number, in the first unit that is typed: 12.5 of 12 ft 6 in. */
  readonly value: number;
  /** The units that the name of the first unit can stand for. */
  readonly units?: readonly NamedUnit[] | undefined;
  /** Whether it is a bare mixed number joined by a hyphen: 5-1/2. */
  readonly hyphenated: boolean;
  /** Whether it is two whole numbers with a slash that could be two values: 208/230 V. */
  readonly pair: boolean;
  readonly start: number;
  readonly end: number;
  /** Where the first unit's name stands; the whole value where there is none. */
  readonly unitPlace: readonly [start: number, end: number];
}

type UnitToken = Extract<Token, { type: "unit" }>;
interface Measure {
  readonly literal: Literal;
  readonly unit: UnitToken;
  /** How many of its unit make one of the first. */
  readonly ratio: number;
}

/** The value that starts at part `at`, whether a `/` stands in it, and the part after it. */
export function operandAt(
  text: string,
  parts: readonly Token[],
  at: number,
): { leaf: Leaf; slash: boolean; next: number } | undefined {
  const sign = parts[at];
  const signed = sign?.type === "operator" && (sign.operator === "-" || sign.operator === "+");
  const literal = literalAt(text, parts, signed ? at + 1 : at);
  if (!literal) return undefined;
  const factor = signed && sign.operator === "-" ? -1 : 1;
  const start = signed ? sign.start : literal.start;
  const unit = parts[literal.next];
  if (unit?.type !== "unit") {
    const { value, end, hyphen, pair, slash, next } = literal;
    const leaf = { value: factor * value, hyphenated: hyphen, pair, start, end };
    return { leaf: { ...leaf, unitPlace: [start, end] }, slash, next };
  }
  let { value } = literal;
  let last: Measure = { literal, unit, ratio: 1 };
  let next = literal.next + 1;
  for (let more = compoundAt(text, parts, next, last); more; ) {
    value += more.literal.value / more.ratio;
    last = more;
    next = more.literal.next + 1;
    more = compoundAt(text, parts, next, last);
  }
  const leaf: Leaf = {
    value: factor * value,
    units: unit.units,
    hyphenated: false,
    pair: literal.pair,
    start,
    end: last.unit.end,
    unitPlace: [unit.start, unit.end],
  };
  return { leaf, slash: literal.slash, next };
}

/** The smaller measure that continues `before` at part `at`: the 6 in of 12 ft 6 in. */
function compoundAt(
  text: string,
  parts: readonly Token[],
  at: number,
  before: Measure,
): Measure | undefined {
  const dash = parts[at];
  const dashed = dash?.type === "operator" && (dash.mark === "-" || dash.mark === "–");
  const literal = literalAt(text, parts, dashed ? at + 1 : at);
  if (!literal) return undefined;
  const unit = parts[literal.next];
  const ratio = unit?.type === "unit" ? compoundRatio(before.unit.units, unit.units) : undefined;
  if (dashed && !ratio) return undefined; // a subtraction
  if (unit?.type !== "unit") {
    throw new FieldTextError(text, literal.start, literal.end, say("field-text.number-with-unit"));
  }
  if (!ratio) {
    throw new FieldTextError(text, literal.start, unit.end, say("field-text.operator"));
  }
  if (dashed && !joins(text, dash, before.unit, literal, unit)) return undefined;
  if (!before.literal.whole) {
    const { start, end } = before.literal;
    const hint = say("field-text.write-plus");
    throw new FieldTextError(text, start, end, say("field-text.whole-number"), hint);
  }
  if (literal.value >= ratio) {
    const limit = verbatim(`${ratio} ${unit.units[0]?.symbol}`);
    const larger = verbatim(before.unit.units[0]?.symbol ?? "");
    const wanted = say("field-text.less-than", { limit, unit: larger });
    const hint = say("field-text.write-plus");
    throw new FieldTextError(text, literal.start, literal.end, wanted, hint);
  }
  return { literal, unit, ratio: before.ratio * ratio };
}

/**
 * Whether the dash joins (12'-6" is 12 ft 6 in, as drawings write it) or subtracts (12 ft - 6 in). Any
 * other dash between a large unit and its small one could be either.
 */
function joins(
  text: string,
  dash: Token & { mark: string },
  largeUnit: UnitToken,
  literal: Literal,
  smallUnit: UnitToken,
): boolean {
  const gaps = [dash.start - largeUnit.end, literal.start - dash.end];
  const primes = largeUnit.mark === "'" && /^["']/.test(smallUnit.mark);
  if (gaps.every((gap) => gap === 0) && primes && dash.mark === "-") return true;
  if (gaps.every((gap) => gap > 0) && !primes) return false;
  const [large = "", small = ""] = [largeUnit.units[0]?.symbol, smallUnit.units[0]?.symbol];
  const wanted = say("field-text.joined-or-subtracted", {
    joined: verbatim(`12 ${large} 6 ${small}`),
    subtracted: verbatim(`12 ${large} − 6 ${small}`),
  });
  const units = { large: verbatim(large), small: verbatim(small) };
  const hint = say("field-text.dash-two-ways", units);
  throw new FieldTextError(text, dash.start, dash.end, wanted, hint);
}
