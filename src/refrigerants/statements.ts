// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the dangers that modules share: assessment/safety.ts.
import type { None, StatementOf, Verbatim } from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";

/** What is read on a line. */
export type LineFigure = "superheat" | "subcooling";

/** The two probes behind it. */
export type LineProbe = "pressure" | "temperature";

type Difference = Quantity<"temperatureDifference">;

interface Named {
  readonly figure: `refrigerants.figure.${LineFigure}`;
}
interface Read extends Named {
  readonly value: Difference;
  readonly uncertainty: Difference;
}
interface Aimed extends Read {
  readonly target: Difference;
  readonly tolerance: Difference;
}

/**
 * The statements of this module: values by code.
 */
export interface RefrigerantsStatements {
  // hints of errors
  "refrigerants.table-needs-atmosphere": None;
  "refrigerants.number-of-rows": None;
  "refrigerants.check-designation": None;
  "refrigerants.range-of": { readonly refrigerant: Verbatim };
  "refrigerants.gauge-needs-atmosphere": None;
  // reasons
  "refrigerants.within-tolerance": Aimed;
  "refrigerants.above-tolerance": Aimed;
  "refrigerants.below-tolerance": Aimed;
  "refrigerants.below-saturation": Read;
  "refrigerants.too-close-to-call": Aimed;
  "refrigerants.largest-uncertainty": {
    readonly probe: `refrigerants.probe.${LineProbe}`;
    readonly now: Difference;
  };
  "refrigerants.closer-than-the-model": None;
  "refrigerants.target-out-of-reach": Named & {
    readonly target: Difference;
    readonly most: Difference;
  };
  "refrigerants.tolerance-wide": {
    readonly tolerance: Difference;
    readonly target: Difference;
    readonly largest: Difference;
  };
  "refrigerants.tolerance-reaches-saturation": {
    readonly tolerance: Difference;
    readonly target: Difference;
  };
  // assumptions
  "refrigerants.steady": None;
  "refrigerants.nominal-composition": None;
  "refrigerants.saturation-uncertainty": { readonly share: Quantity<"ratio"> };
  "refrigerants.exact-atmosphere": None;
  // cautions
  "refrigerants.looks-like-other-side": Named & { readonly saturation: Quantity<"temperature"> };
  "refrigerants.only-where-the-manual-charges-by-it": Named;
  // actions
  "refrigerants.check-airflow-first": None;
  "refrigerants.correct-the-charge": Named & { readonly target: Difference };
  "refrigerants.check-both-readings": None;
  "refrigerants.use-better-probe": {
    readonly probe: `refrigerants.probe.${LineProbe}`;
    readonly needed: Difference;
  };
  "refrigerants.adjust-to-target": { readonly target: Difference };
  "refrigerants.state-target": Named;
  "refrigerants.state-tolerance": Named;
}

/** The words of this module. */
export type RefrigerantsWord =
  | `refrigerants.figure.${LineFigure}`
  | `refrigerants.probe.${LineProbe}`
  | `refrigerants.cause.${"low" | "high"}`;

/** One statement of this module. */
export type RefrigerantsStatement = StatementOf<RefrigerantsStatements>;

/** The name of a figure, as a sentence takes it. */
export function named<F extends LineFigure>(figure: F): `refrigerants.figure.${F}` {
  return `refrigerants.figure.${figure}`;
}
