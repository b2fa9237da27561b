// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the dangers that modules share: assessment/safety.ts.
import { type None, type Say, type StatementOf, sayer } from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";

type Pressure = Quantity<"gaugePressure">;
type Difference = Quantity<"temperatureDifference">;

/** The two sides of the compressor. */
export type RunningSide = "low" | "high";

interface Window {
  readonly pressure: Pressure;
  readonly from: Pressure;
  readonly to: Pressure;
}
interface Approach {
  readonly low: Difference;
  readonly high: Difference;
}

/**
 * The statements of this module: values by code.
 */
export interface OperatingCheckStatements {
  // reasons: how a charge is checked
  "operating-check.by-superheat": None;
  "operating-check.by-subcooling": None;
  "operating-check.no-target": None;
  "operating-check.no-target-in-heating": None;
  "operating-check.superheat-below-floor": {
    readonly superheat: Difference;
    readonly least: Difference;
  };
  "operating-check.superheat-near-floor": {
    readonly superheat: Difference;
    readonly least: Difference;
  };
  // reasons: a gauge and its hose
  "operating-check.gauge-set-suits": { readonly pressure: Pressure };
  "operating-check.above-hose-rating": { readonly pressure: Pressure; readonly limit: Pressure };
  "operating-check.destroys-gauge": { readonly pressure: Pressure; readonly limit: Pressure };
  "operating-check.beyond-scale": { readonly pressure: Pressure; readonly limit: Pressure };
  // reasons: a reading
  "operating-check.within-window": Window;
  "operating-check.below-window": Window;
  "operating-check.above-window": Window;
  "operating-check.other-side": Window & { readonly side: `operating-check.side.${RunningSide}` };
  "operating-check.too-close-to-call": Window;
  "operating-check.approach-range-wide": Approach & { readonly widest: Difference };
  "operating-check.approach-at-rest": Approach & { readonly least: Difference };
  // assumptions
  "operating-check.as-printed": None;
  "operating-check.steady-full-speed": None;
  "operating-check.approaches-as-stated": None;
  "operating-check.expands-outdoors": None;
  "operating-check.exact-gauge": None;
  // cautions
  "operating-check.mode-first": None;
  "operating-check.hoses-lose-refrigerant": None;
  "operating-check.not-the-charge": None;
  // actions
  "operating-check.weigh-the-charge": None;
  "operating-check.stop-liquid": None;
  "operating-check.read-near-floor-again": { readonly least: Difference };
  "operating-check.use-rated-hose": { readonly pressure: Pressure };
  "operating-check.use-larger-gauge": { readonly pressure: Pressure };
  "operating-check.check-mode-and-port": None;
  "operating-check.find-the-cause": None;
  "operating-check.use-better-gauge": { readonly needed: Quantity<"pressureDifference"> };
  "operating-check.read-again-later": None;
  "operating-check.state-approach": None;
}

/** The words of this module. */
export type OperatingCheckWord =
  | `operating-check.side.${RunningSide}`
  | `operating-check.cause.${OperatingCheckCause}`;

/** What is off at a running unit. Source: see the function that judges it. */
export type OperatingCheckCause =
  | "low"
  | "high"
  | "liquid-to-compressor"
  | "hose-rating"
  | "gauge-scale"
  | "retard-only"
  | "below-window"
  | "above-window"
  | "other-side";

/** One statement of this module. */
export type OperatingCheckStatement = StatementOf<OperatingCheckStatements>;

/** Makes a statement of this module. */
export const say: Say<OperatingCheckStatements> = /* @__PURE__ */ sayer();
