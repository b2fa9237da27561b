// What do several findings make together? The deciding one first, with what to do about it. Internal.
// Follows JCGM 106:2012, for a figure against a limit: 8.2 for lengths, whose limits are of design, 8.3 for masses.
// Does not cover which limits there are: the manual says.
import { type Outcome, overallOutcome } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { simpleAcceptance } from "../assessment/simple-acceptance.ts";
import { Quantity } from "../quantity/quantity.ts";
import { rounded } from "../quantity/rounded.ts";
import { type LineSetFigure, type LineSetStatement, say, type Verdict } from "./statements.ts";

/** One thing that was found, and what to do where it is no pass. */
export interface Finding {
  readonly outcome: Outcome;
  readonly said: LineSetStatement;
  readonly actions?: readonly LineSetStatement[] | undefined;
}

const order: readonly Outcome[] = ["fail", "inconclusive", "pass"];

/** The outcome of all findings, their reasons with the deciding ones first, and each action once. */
export function decide(
  findings: readonly Finding[],
): Pick<Verdict, "outcome" | "reasons"> & { readonly actions: readonly LineSetStatement[] } {
  const sorted = order.flatMap((outcome) => findings.filter((one) => one.outcome === outcome));
  const todo = sorted.flatMap(({ outcome, actions = [] }) => (outcome === "pass" ? [] : actions));
  return {
    outcome: overallOutcome(findings.map(({ outcome }) => outcome)),
    reasons: sorted.map(({ said }) => said),
    actions: [...new Map(todo.map((one) => [JSON.stringify(one), one])).values()],
  };
}

/** A length or mass with its standard uncertainty in SI, and the limit that it is held to. */
export interface Limited<K extends "length" | "mass"> {
  readonly figure: LineSetFigure;
  readonly value: Quantity<K>;
  readonly uncertainty: number;
  readonly side: "maximum" | "minimum";
  readonly limit: Quantity<K>;
  /** What to do beyond the limit. */
  readonly remedy: LineSetStatement;
}

/** Holds a value against a limit. */
export function heldTo<K extends "length" | "mass">(held: Limited<K>): Finding {
  const { value, uncertainty, side, limit, remedy } = held;
  const isLeast = side === "minimum";
  // A length is held to a limit of design, a mass to one beyond which a unit or a room holds too much.
  const judge = value.kind === "length" ? simpleAcceptance<K> : conformity<K>;
  const { outcome, conformanceProbability } = judge({
    value,
    standardUncertainty: new Quantity(uncertainty, value.unit) as never,
    [isLeast ? "lowerLimit" : "upperLimit"]: limit,
  });
  const figure = `line-set.figure.${held.figure}` as const;
  const values = { figure, value, limit } as unknown as Values;
  const expanded = rounded(2 * uncertainty, value.unit, 2); // k = 2; two digits by JCGM 100:2008, 7.2.6
  const near = { ...values, uncertainty: expanded as unknown as Quantity<"length"> };
  if (outcome === "inconclusive") {
    return {
      outcome,
      said: say(isLeast ? "line-set.near-minimum" : "line-set.near-maximum", near),
      actions: [say("line-set.measure-better", { figure })],
    };
  }
  if (outcome === "pass" && conformanceProbability < 0.95) {
    return { outcome, said: say("line-set.kept-as-measured", near) };
  }
  const codes = isLeast
    ? ({ pass: "line-set.above-minimum", fail: "line-set.below-minimum" } as const)
    : ({ pass: "line-set.within-maximum", fail: "line-set.above-maximum" } as const);
  return { outcome, said: say(codes[outcome], values), actions: [remedy] };
}

/** Which of the kinds it is, the caller's type says. */
interface Values {
  readonly figure: `line-set.figure.${LineSetFigure}`;
  readonly value: Quantity<"length">;
  readonly limit: Quantity<"length">;
}
