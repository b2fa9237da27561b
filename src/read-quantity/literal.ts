// What number stands here? A whole number, a decimal, a fraction or a mixed number, from its parts.
// Follows the trade's notation (1/4, 1 1/4, 1-1/4, 1¼), common practice, no source.
// Does not cover signs and units: operand.ts adds them.
import { FieldTextError } from "./field-text-error.ts";
import { say } from "./statements.ts";
import type { Token } from "./tokens.ts";

/** A number made of one or more parts. */
export interface Literal {
  readonly value: number;
  /** Whether it is a plain run of digits. */
  readonly whole: boolean;
  /** Whether it holds a `/`, or joins its parts by a hyphen. */
  readonly slash: boolean;
  readonly hyphen: boolean;
  /** Whether it is two whole numbers with a `/` that could be two values: 208/230, not 1/2. */
  readonly pair: boolean;
  readonly start: number;
  readonly end: number;
  /** Index of the part after it. */
  readonly next: number;
}

/** A fraction in plain digits, `1/4`, or in one part, `¼`. */
function fractionAt(text: string, parts: readonly Token[], at: number): Literal | undefined {
  const [top, slash, bottom] = parts.slice(at, at + 3);
  if (top?.type === "fraction") {
    return { ...top, whole: false, slash: false, hyphen: false, pair: false, next: at + 1 };
  }
  if (top?.type !== "number" || !top.whole || bottom?.type !== "number" || !bottom.whole) {
    return undefined;
  }
  if (slash?.type !== "operator" || slash.operator !== "/") return undefined;
  if (bottom.value === 0) {
    throw new FieldTextError(text, bottom.start, bottom.end, say("field-text.divisor"));
  }
  const value = top.value / bottom.value;
  const { start } = top;
  const pair = top.value !== 1;
  const { end } = bottom;
  return { value, whole: false, slash: true, hyphen: false, pair, start, end, next: at + 3 };
}

/** The number that starts at part `at`, or undefined when none starts there. */
export function literalAt(text: string, parts: readonly Token[], at: number): Literal | undefined {
  const first = parts[at];
  const simple = fractionAt(text, parts, at);
  if (simple) return simple;
  if (first?.type !== "number") return undefined;
  const hyphen = parts[at + 1];
  const joined =
    hyphen?.type === "operator" &&
    hyphen.mark === "-" &&
    hyphen.start === first.end &&
    parts[at + 2]?.start === hyphen.end;
  const fraction = fractionAt(text, parts, at + (joined ? 2 : 1));
  if (!fraction) {
    const { value, whole, start, end } = first;
    return { value, whole, slash: false, hyphen: false, pair: false, start, end, next: at + 1 };
  }
  if (!first.whole || fraction.value >= 1) {
    const { start, end } = fraction;
    throw new FieldTextError(text, start, end, say("field-text.small-fraction"));
  }
  return {
    ...fraction,
    value: first.value + fraction.value,
    hyphen: joined,
    pair: false,
    start: first.start,
  };
}
