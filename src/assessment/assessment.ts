// What do the readings prove? The shape of every verdict of the library.
// Outcomes follow JCGM 106:2012; what a verdict says are statements, codes with figures.
// Does not cover wording: explain.ts puts a statement and a language together.
import { listOf, oneOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { DifferenceOf, Kind } from "../quantity/kinds.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { SourceId } from "../sources/bibliography.ts";
import type { Caution } from "./caution.ts";
import { heed, type SafetyStatement } from "./safety.ts";
import type { Statement } from "./statement.ts";

/**
 * `pass`: proven. `fail`: proven otherwise. `inconclusive`: the evidence cannot decide, and the reasons
 * say what would.
 *
 * Source: JCGM 106:2012, 8.3; the three words are the library's own.
 */
export type Outcome = "pass" | "fail" | "inconclusive";

/**
 * A place in a source of the bibliography.
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
 * The verdict that every module returns, to which it adds its own quantities. Deeply frozen.
 *
 * Source: JCGM 106:2012 for the decision; the shape is the library's own.
 */
export interface Assessment<Cause extends string = string, S extends Statement = Statement> {
  /** Proven good, proven bad, or inconclusive. */
  readonly outcome: Outcome;
  /** What is behind it, where the module can tell. */
  readonly cause?: Cause | undefined;
  /** Why, the deciding reason first. */
  readonly reasons: readonly S[];
  /** What was assumed because it was not given. */
  readonly assumptions: readonly S[];
  /** What this case hides, what can hurt someone, and what overrides the result, in this order. */
  readonly cautions: readonly Caution<S | SafetyStatement>[];
  /** What to do next, in order; empty on a clean pass. */
  readonly actions?: readonly S[] | undefined;
  /** Where the rules and figures come from. */
  readonly sources: readonly Citation[];
}

/**
 * A verdict as it is handed out: its cautions in order, each said once and who governs last, all of it frozen.
 */
export function verdict<const A extends Assessment<string>>(found: A): A {
  return frozen({ ...found, cautions: heed<Statement>(found.cautions) });
}

/** Makes a citation; a short form for the modules. */
export function cite(source: SourceId, clause = ""): Citation {
  return { source, clause };
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
