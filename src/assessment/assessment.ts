// What do the readings prove? The shape of every verdict of the library.
// Outcomes follow JCGM 106:2012; statements carry a code for programs and a sentence for people.
// Does not cover translation: an app keys its own wording on the codes.
import { listOf, numberOf, objectOf, oneOf, requireKind, textOf } from "../quantity/check.ts";
import type { AnyQuantity } from "../quantity/json.ts";
import type { DifferenceOf, Kind } from "../quantity/kinds.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { SourceId } from "../sources/bibliography.ts";

/**
 * `pass`: proven. `fail`: proven otherwise. `inconclusive`: the evidence cannot decide, and the reasons
 * say what would.
 *
 * Source: JCGM 106:2012, 8.3; the three words are the library's own.
 */
export type Outcome = "pass" | "fail" | "inconclusive";

/**
 * One thing that a verdict says: a stable code for programs, the figures, and an English sentence in
 * which `{name}` stands for a figure. Print it with {@link explain}.
 *
 * Source: none; the library's own type.
 */
export interface Statement {
  /** Stable, machine-readable, in kebab case. */
  readonly code: string;
  /** English sentence with `{name}` where a value belongs. */
  readonly text: string;
  /** The figures by name. */
  readonly values: Readonly<Record<string, Figure>>;
}

/** What stands in a sentence: a quantity, a number, or a word. Source: none; the library's own type. */
export type Figure = AnyQuantity | number | string;

/** Why the outcome is what it is. Source: none; the library's own type. */
export type Reason = Statement;

/** What was assumed because it was not given. Source: none; the library's own type. */
export type Assumption = Statement;

/** What can hurt someone or void the result. Source: none; the library's own type. */
export type Caution = Statement;

/**
 * A place in a source of the bibliography.
 *
 * Source: none; the library's own type.
 */
export interface Citation {
  /** Key of the source in the bibliography. */
  readonly source: SourceId;
  /** Clause, table, equation or section; empty when the whole is meant. */
  readonly clause: string;
}

/**
 * A value with what its instruments leave open.
 *
 * Source: JCGM 100:2008, 7.2.3.
 */
export interface Estimate<K extends Kind> {
  /** Best estimate. */
  readonly value: Quantity<K>;
  /** Standard uncertainty, k = 1. */
  readonly standardUncertainty: Quantity<DifferenceOf<K>>;
  /** Expanded uncertainty: `coverageFactor` times the standard uncertainty. */
  readonly expandedUncertainty: Quantity<DifferenceOf<K>>;
  /** k, such as 2 for about 95 % two-sided. */
  readonly coverageFactor: number;
}

/**
 * The verdict that every module returns, to which it adds its own quantities.
 *
 * Source: JCGM 106:2012 for the decision; the shape is the library's own.
 */
export interface Assessment<Cause extends string = never> {
  /** Proven good, proven bad, or undecided. */
  readonly outcome: Outcome;
  /** What is behind it, where the module can tell. */
  readonly cause?: Cause;
  /** Why, the deciding reason first. */
  readonly reasons: readonly Reason[];
  /** What was assumed because it was not given. */
  readonly assumptions: readonly Assumption[];
  /** What can hurt someone, and what overrides the result. */
  readonly cautions: readonly Caution[];
  /** Where the rules and figures come from. */
  readonly sources: readonly Citation[];
}

/** Makes a statement; a short form for the modules. */
export function statement(code: string, text: string, values: Statement["values"] = {}): Statement {
  return { code, text, values };
}

/** Makes a citation; a short form for the modules. */
export function cite(source: SourceId, clause = ""): Citation {
  return { source, clause };
}

/**
 * A statement as an English sentence with its figures.
 *
 * @param said - A reason, an assumption or a caution.
 * @param show - How a figure is printed, for instance in the reader's units, given the other figures of the
 * sentence; when left out, in the unit in which it comes, to four significant digits or to the whole number,
 * and to more where two figures that differ would read the same.
 * @returns The sentence.
 * @throws {@link InvalidInputError} from JavaScript, when it is not a statement.
 *
 * Source: none; the library's own wording.
 *
 * @example
 * ```ts
 * import { explain } from "hvac-install-math/assessment";
 * import { psi } from "hvac-install-math/quantity";
 *
 * const reason = { code: "drop", text: "The pressure fell by {drop}.", values: { drop: psi(2.9) } };
 * explain(reason); // => The pressure fell by 2.9 psi.
 * ```
 */
export function explain(
  said: Statement,
  show: (figure: Figure, resolution: undefined, beside: readonly Figure[]) => string = rounded,
): string {
  const { text, values } = objectOf("said", said);
  objectOf("said.values", values);
  const places = /\{(\w+)\}/g;
  const beside: Figure[] = [];
  const figures = new Map<string, Figure>();
  for (const [, name = ""] of textOf("said.text", text).matchAll(places)) {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    if (value === undefined) continue;
    if (typeof value === "number") numberOf(`said.values.${name}`, value);
    else if (typeof value !== "string") requireKind(`said.values.${name}`, value);
    figures.set(name, value);
    beside.push(value);
  }
  return text.replace(places, (whole, name: string) => {
    const value = figures.get(name);
    return value === undefined ? whole : show(value, undefined, beside);
  });
}

/** Four significant digits, never fewer than stand before the decimal point, and more beside a figure that would read the same. */
function rounded(figure: Figure, _: undefined, beside: readonly Figure[]): string {
  if (typeof figure === "string") return figure;
  const { value, unit } = plain(figure);
  const text = (number: number, finer: number) => {
    const digits = Math.max(4, Math.floor(Math.log10(Math.abs(number))) + 1) + finer;
    return Number(number.toPrecision(Math.min(digits, 21)));
  };
  const others = beside
    .filter((one) => typeof one !== "string")
    .map(plain)
    .filter((one) => one.unit === unit && one.value !== value);
  let finer = 0;
  while (finer < 8 && others.some((one) => text(one.value, finer) === text(value, finer))) finer++;
  return `${text(value, finer)} ${unit}`.trim();
}

/** A figure in its unit, to twelve digits, which leave out the noise of arithmetic. */
function plain(figure: AnyQuantity | number): { value: number; unit: string } {
  return typeof figure === "number" ? { value: figure, unit: "" } : figure.toJSON();
}

/**
 * The outcome of several outcomes that all have to hold: one fail fails, else one inconclusive leaves
 * it open. Nothing at all proves nothing.
 *
 * @param outcomes - The outcomes of the parts.
 * @returns The outcome of the whole.
 * @throws {@link InvalidInputError} from JavaScript, when one is none of the three words.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { overallOutcome } from "hvac-install-math/assessment";
 *
 * overallOutcome(["pass", "inconclusive"]); // => inconclusive
 * ```
 */
export function overallOutcome(outcomes: readonly Outcome[]): Outcome {
  listOf("outcomes", outcomes).forEach((outcome, i) => {
    oneOf(`outcomes[${i}]`, outcome, ["pass", "fail", "inconclusive"]);
  });
  if (outcomes.includes("fail")) return "fail";
  return outcomes.length === 0 || outcomes.includes("inconclusive") ? "inconclusive" : "pass";
}

/**
 * An estimate with its expanded uncertainty at k = 2, about 95 % (JCGM 100:2008, 6.3.3). The standard
 * uncertainty comes as a plain SI number.
 */
export function estimate<K extends Kind>(value: Quantity<K>, uncertaintySi: number): Estimate<K> {
  const unit = value.unit.difference;
  return {
    value,
    standardUncertainty: new Quantity(uncertaintySi, unit),
    expandedUncertainty: new Quantity(2 * uncertaintySi, unit),
    coverageFactor: 2,
  };
}
