// What does a verdict say? A code for the sentence and the figures that stand in it; no words.
// Follows the library's own design: the sentences are data, one catalogue per module and language.
// Does not cover wording: explain.ts puts a statement and a catalogue together.
import { frozen } from "../quantity/frozen.ts";
import type { AnyQuantity } from "../quantity/json.ts";

/** A figure of a sentence: a quantity or a number. */
export type Figure = AnyQuantity | number;

/**
 * What a caller or a standard writes and no language changes: the name of a joint, `R-410A`, `12 AWG`, a date.
 */
export interface Verbatim {
  /** The text, printed as it is. */
  readonly verbatim: string;
}

/**
 * What stands in a sentence: a figure, the code of a word such as `circuit-protection.device.breaker`, which the
 * catalogue words too, a text that stays as it is, or a list of these.
 */
export type Value = Single | readonly Single[];

/** A value that is no list. */
export type Single = Figure | string | Verbatim;

/**
 * One thing that a verdict says: a code, which names one sentence in the whole package, and the values that stand
 * in it. Print it with {@link explain}.
 */
export interface Statement<C extends string = string, V = Readonly<Record<string, Value>>> {
  /** Stable and machine-readable: the module and the sentence, `pressure-test.within-limit`. */
  readonly code: C;
  /** What stands in the sentence, by name. */
  readonly values: V;
}

/**
 * The statements of a module, from the interface that lists the values of each code: a union that a `switch` over
 * `code` can exhaust.
 */
export type StatementOf<S> = {
  [C in keyof S & string]: Statement<C, Readonly<S[C]>>;
}[keyof S & string];

/** No values: a sentence without figures. */
export type None = Readonly<Record<never, never>>;

/** Makes the statements of one module; a wrong code or value does not compile. */
export type Say<S> = <C extends keyof S & string>(
  code: C,
  ...values: keyof S[C] extends never ? [] : [values: Readonly<S[C]>]
) => Statement<C, Readonly<S[C]>>;

/** The maker of a module's statements; each is frozen. */
export function sayer<S>(): Say<S> {
  return (code, ...[values]) => frozen({ code, values: values ?? {} }) as never;
}
