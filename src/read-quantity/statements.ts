// What can be said of a typed text that is refused? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover wrong options of the app: those are InvalidInputErrors without a sentence.
import {
  type None,
  type Say,
  type StatementOf,
  sayer,
  type Verbatim,
} from "../assessment/statement.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity } from "../quantity/quantity.ts";

type KindWord = `quantity.kind.${Kind}`;
type Symbols = { readonly symbols: readonly Verbatim[] };

/**
 * The statements on a typed text: what is wanted at the place of the mistake, and what to do about it.
 */
export interface FieldTextStatements {
  // what is wanted
  "field-text.one-number": None;
  "field-text.expression": None;
  "field-text.number-and-unit": Symbols;
  "field-text.unit": Symbols;
  "field-text.unit-of-kind": Symbols & { readonly kind: KindWord };
  "field-text.number-with-unit": None;
  "field-text.number-before-unit": None;
  "field-text.number-format": { readonly sample: Verbatim; readonly mark: Verbatim };
  "field-text.operator": None;
  "field-text.whole-number": None;
  "field-text.less-than": { readonly limit: Verbatim; readonly unit: Verbatim };
  "field-text.joined-or-subtracted": { readonly joined: Verbatim; readonly subtracted: Verbatim };
  "field-text.one-decimal": None;
  "field-text.mixed-number": None;
  "field-text.small-fraction": None;
  "field-text.divisor": None;
  "field-text.shorter": { readonly most: number };
  "field-text.at-least": {
    readonly limit: Quantity<"temperature"> | Quantity<"absolutePressure">;
  };
  "field-text.smaller": None;
  "field-text.one-unit": None;
  "field-text.difference": { readonly example: Verbatim };
  "field-text.difference-of": { readonly kind: KindWord };
  "field-text.number-or-difference": None;
  "field-text.known-product": None;
  "field-text.known-quotient": None;
  "field-text.fraction-in-parentheses": None;
  "field-text.number-after-sign": None;
  "field-text.fewer-parentheses": { readonly most: number };
  "field-text.opened-parenthesis": None;
  "field-text.closing-parenthesis": None;
  // what to do
  "field-text.digits-after-mark": None;
  "field-text.too-large": None;
  "field-text.which-mark": { readonly mark: Verbatim; readonly readings: readonly Verbatim[] };
  "field-text.feet-or-thousands": None;
  "field-text.vacuum": None;
  "field-text.no-functions": None;
  "field-text.capitals": { readonly spelling: Verbatim };
  "field-text.slash-two-values": None;
  "field-text.hyphen-two-ways": None;
  "field-text.dash-two-ways": { readonly large: Verbatim; readonly small: Verbatim };
  "field-text.write-plus": None;
  "field-text.write-times": None;
  "field-text.no-spaces": None;
  "field-text.which-zero": None;
  "field-text.which-zero-of": { readonly gauge: Verbatim; readonly absolute: Verbatim };
  "field-text.which-scale": None;
  "field-text.is-absolute": None;
  "field-text.is-gauge": None;
  "field-text.given-kind": { readonly kind: KindWord };
  "field-text.points-do-not-add": { readonly kind: KindWord };
  "field-text.added-to": { readonly kind: KindWord };
  "field-text.taken-from": { readonly kind: KindWord };
  "field-text.points-do-not-scale": { readonly kind: KindWord };
  "field-text.no-product": { readonly first: KindWord; readonly second: KindWord };
  "field-text.no-quotient": { readonly first: KindWord; readonly second: KindWord };
  "field-text.number-over-quantity": None;
  "field-text.each-needs-unit": None;
  "field-text.reading-less-reading": { readonly given: KindWord; readonly wanted: KindWord };
  "field-text.readings-or-differences": None;
  "field-text.fraction-two-ways": None;
}

/** One of these statements. */
export type FieldTextStatement = StatementOf<FieldTextStatements>;

/** Makes one of these statements. */
export const say: Say<FieldTextStatements> = /* @__PURE__ */ sayer();

/** A text that no language changes. */
export const verbatim = (text: string): Verbatim => ({ verbatim: text });

/** The word for a kind of quantity. */
export const kindWord = (kind: Kind): KindWord => `quantity.kind.${kind}`;
