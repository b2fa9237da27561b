// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the dangers that modules share: assessment/safety.ts.
import type { Assessment } from "../assessment/assessment.ts";
import type { Caution } from "../assessment/caution.ts";
import type { SafetyStatement } from "../assessment/safety.ts";
import { type None, type Say, type StatementOf, sayer } from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";

type Length = Quantity<"length">;
type Slope = Quantity<"ratio">;
type Flow = Quantity<"volumeFlow">;

interface Falling {
  readonly slope: Slope;
  readonly uncertainty: Slope;
  readonly required: Slope;
}
interface Pitched {
  readonly pitch: Slope;
  readonly uncertainty: Slope;
}
interface Pumped {
  readonly lift: Length;
  readonly flow: Flow;
  readonly required: Flow;
}

/**
 * The statements of this module: values by code.
 */
export interface CondensateStatements {
  // reasons
  "condensate.falls-enough": Falling;
  "condensate.falls-too-little": Falling;
  "condensate.rises": Falling;
  "condensate.codes-differ": Falling & { readonly least: Slope };
  "condensate.slope-near": Falling;
  "condensate.pitch-enough": Pitched & { readonly minimum: Slope };
  "condensate.pitch-within": Pitched & { readonly minimum: Slope; readonly maximum: Slope };
  "condensate.pitch-away": Pitched & { readonly minimum: Slope };
  "condensate.pitch-too-little": Pitched & { readonly minimum: Slope };
  "condensate.pitch-too-much": Pitched & { readonly maximum: Slope };
  "condensate.pitch-near": Pitched;
  "condensate.pump-keeps-up": Pumped;
  "condensate.pump-too-slow": Pumped;
  "condensate.pump-lift-too-high": { readonly lift: Length; readonly highest: Length };
  "condensate.gravity": { readonly available: Length; readonly needed: Length };
  "condensate.fall-short": { readonly shortfall: Length; readonly point: number };
  // assumptions
  "condensate.straight": None;
  "condensate.exact-instrument": None;
  "condensate.code-slope": { readonly slope: Slope };
  "condensate.level-is-enough": None;
  "condensate.maximum-pitch-not-checked": None;
  "condensate.pump-margin": { readonly margin: number };
  "condensate.pump-curve-straight": None;
  // cautions
  "condensate.steep": { readonly slope: Slope; readonly usual: Slope };
  "condensate.flatter-than-code": { readonly least: Slope };
  "condensate.discharge": None;
  "condensate.sweating": None;
  "condensate.sunlight": None;
  "condensate.freezing": None;
  "condensate.overflow": None;
  "condensate.pump-failure": None;
  "condensate.dry-trap": None;
  // actions
  "condensate.increase-slope": { readonly required: Slope };
  "condensate.increase-fall": { readonly fall: Length; readonly run: Length };
  "condensate.ask-code": { readonly required: Slope };
  "condensate.measure-better": None;
  "condensate.raise-pitch": { readonly minimum: Slope };
  "condensate.lower-pitch": { readonly maximum: Slope };
  "condensate.other-pump": { readonly lift: Length; readonly required: Flow };
  "condensate.lower-point": {
    readonly shortfall: Length;
    readonly point: number;
    readonly lift: Length;
  };
}

/** What is wrong with a drain, a pump or a unit's pitch. Source: see the function that judges it. */
export type CondensateCause =
  | "rises"
  | "too-flat"
  | "away-from-drain"
  | "too-little"
  | "too-much"
  | "lift-too-high"
  | "too-slow"
  | "needs-pump";

/** The words of this module. */
export type CondensateWord = `condensate.cause.${CondensateCause}`;

/** One statement of this module. */
export type CondensateStatement = StatementOf<CondensateStatements>;

/** What to heed about condensate. */
export type CondensateCaution = Caution<CondensateStatement | SafetyStatement>;

/** A verdict of this module. */
export type Verdict<Cause extends CondensateCause> = Assessment<Cause, CondensateStatement>;

/** Makes a statement of this module. */
export const say: Say<CondensateStatements> = /* @__PURE__ */ sayer();
