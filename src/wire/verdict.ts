// Which form has what every verdict says? Statements, citations, estimates.
// Follows assessment/assessment.ts. Does not cover what a module adds of its own.
import type { Citation, Estimate, Outcome, Statement } from "../assessment/assessment.ts";
import type { Instrument } from "../assessment/uncertainty.ts";
import type { AnyQuantity } from "../quantity/json.ts";
import type { DifferenceOf, Kind } from "../quantity/kinds.ts";
import { allKinds } from "./units-of.ts";
import { either, type FormOf, list, type ObjectOf, of, words } from "./wire-shape.ts";

/** A quantity of any kind, a number or a text: what a statement names. */
const figure = () => {
  const single = [...allKinds(), "number", "text", { fields: { verbatim: "text" } }] as never[];
  const lists = { list: either(...single) } as never;
  return either(...single, lists) as FormOf<AnyQuantity | number | string>;
};

/** A reason, an assumption or a caution. */
export const statement = (): never =>
  of<Statement>({ code: "text", "text?": "text", values: { each: figure() } } as never) as never;

/** A place in a source. Its id is a text: which works there are, the bibliography says. */
export const citation = (): ObjectOf<Citation> => of<Citation>({ source: "text", clause: "text" });

/** A value with its uncertainty. */
export const estimate = <K extends Kind>(
  value: K,
  difference: DifferenceOf<K>,
): ObjectOf<Estimate<K>> =>
  of<Estimate<"length">>({
    value: value as "length", // the kinds of both are held together by the arguments
    standardUncertainty: difference as "length",
    expandedUncertainty: difference as "length",
    coverageFactor: "number",
  }) as unknown as ObjectOf<Estimate<K>>;

/** What the instrument of a reading leaves open. */
export const instrument = <K extends Kind>(difference: DifferenceOf<K>): ObjectOf<Instrument<K>> =>
  of<Instrument<"length">>({
    "accuracy?": difference as "length",
    "resolution?": difference as "length",
    "repeatability?": difference as "length",
  }) as unknown as ObjectOf<Instrument<K>>;

/** The fields of every verdict but `cause`. */
export const verdict = (): {
  readonly outcome: FormOf<Outcome>;
  readonly reasons: never;
  readonly assumptions: never;
  readonly cautions: never;
  readonly "actions?": never;
  readonly sources: FormOf<readonly Citation[]>;
} => ({
  outcome: words<Outcome>({ pass: true, fail: true, inconclusive: true }),
  reasons: list(statement()) as never,
  assumptions: list(statement()) as never,
  cautions: list(statement()) as never,
  "actions?": list(statement()) as never,
  sources: list(citation()),
});
