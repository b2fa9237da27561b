// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the dangers that modules share: assessment/safety.ts.
import {
  type None,
  type Say,
  type StatementOf,
  sayer,
  type Verbatim,
} from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { SupplyName, SupplyNameWord } from "./standards/index.ts";

type Voltage = Quantity<"voltage">;
type Ratio = Quantity<"ratio">;

interface Extremes {
  readonly low: Voltage;
  readonly high: Voltage;
  /** Whether low and high are one figure as they are shown. */
  readonly readings: `supply-voltage.readings.${"one" | "several"}`;
}
interface Range {
  readonly minimum: Voltage;
  readonly maximum: Voltage;
}
interface Ranged extends Extremes, Range {
  readonly range: SupplyName;
  readonly standard: SupplyName;
}
interface Unbalanced {
  readonly unbalance: Ratio;
  readonly limit: Ratio;
}
interface Week {
  readonly within: Ratio;
  readonly means: number;
  readonly outside10: number;
  readonly outside15: number;
}
interface Predicted {
  readonly there: Voltage;
  readonly minimum: Voltage;
  readonly current: Quantity<"current">;
}

/**
 * The statements of this module: values by code.
 */
export interface SupplyVoltageStatements {
  // against the nameplate
  "supply-voltage.within-nameplate": Extremes & Range;
  "supply-voltage.would-have-failed": { readonly beyond: Voltage };
  "supply-voltage.board-at-risk": { readonly high: Voltage; readonly ceiling: Voltage };
  "supply-voltage.no-voltage": { readonly low: Voltage };
  "supply-voltage.phase-missing": { readonly lines: readonly Voltage[] };
  "supply-voltage.leg-missing": { readonly low: Voltage; readonly nominal: Voltage };
  "supply-voltage.uneven-to-ground": { readonly lines: readonly Voltage[] };
  "supply-voltage.plate-does-not-fit": Range & { readonly nominal: Voltage };
  "supply-voltage.high-supply": { readonly high: Voltage; readonly maximum: Voltage };
  "supply-voltage.low-supply": { readonly low: Voltage; readonly minimum: Voltage };
  "supply-voltage.sag-under-load": { readonly low: Voltage; readonly minimum: Voltage };
  "supply-voltage.dip-not-marked": { readonly low: Voltage; readonly minimum: Voltage };
  "supply-voltage.meter-cannot-tell": Extremes & Range;
  // against the standard
  "supply-voltage.within-standard": Ranged;
  "supply-voltage.too-close-to-standard": Ranged;
  "supply-voltage.outside-standard": Ranged;
  "supply-voltage.outside-at-times": Ranged;
  "supply-voltage.standard-not-stated": { readonly nominal: Voltage };
  "supply-voltage.week-within": Week;
  "supply-voltage.week-outside": Week;
  "supply-voltage.week-so-far": Week;
  "supply-voltage.week-incomplete": { readonly missing: Quantity<"duration"> };
  "supply-voltage.week-meter-cannot-tell": None;
  // phases
  "supply-voltage.unbalance-within": Unbalanced & { readonly factor: number; readonly rise: Ratio };
  "supply-voltage.unbalance-above": Unbalanced;
  "supply-voltage.unbalance-too-close": Unbalanced;
  "supply-voltage.unbalance-above-5-percent": { readonly unbalance: Ratio };
  "supply-voltage.line-without-current": None;
  "supply-voltage.current-unbalance-within": Unbalanced;
  "supply-voltage.current-unbalance-above": Unbalanced;
  // sag
  "supply-voltage.full-load-enough": Predicted;
  "supply-voltage.full-load-too-low": Predicted;
  "supply-voltage.full-load-too-close": Predicted;
  "supply-voltage.full-load-far-off": Predicted;
  "supply-voltage.full-load-impossible": {
    readonly current: Quantity<"current">;
    readonly minimum: Voltage;
  };
  // assumptions
  "supply-voltage.ten-percent": None;
  "supply-voltage.exact-meter": None;
  "supply-voltage.moment-only": None;
  "supply-voltage.no-sag": None;
  "supply-voltage.standard-assumed": { readonly standard: SupplyName; readonly nominal: Voltage };
  "supply-voltage.judged-as": { readonly nominal: Voltage; readonly as: Voltage };
  "supply-voltage.no-range-at-unit": { readonly standard: SupplyName };
  "supply-voltage.unbalance-limit": { readonly limit: Ratio };
  "supply-voltage.currents-not-judged": None;
  "supply-voltage.starts-found": { readonly count: number };
  "supply-voltage.starts-unseen": { readonly interval: Quantity<"duration"> };
  // findings
  "supply-voltage.start-dip": { readonly dip: Voltage };
  "supply-voltage.large-sag": { readonly share: Ratio };
  "supply-voltage.rise-under-load": { readonly load: Voltage; readonly rest: Voltage };
  "supply-voltage.transformer-tap": { readonly near: Voltage };
  "supply-voltage.narrow-plate": { readonly near: Voltage; readonly nominal: Voltage };
  "supply-voltage.limited-time": { readonly range: SupplyName };
  "supply-voltage.drop-to-unit": { readonly drop: Voltage };
  "supply-voltage.derate": None;
  "supply-voltage.uneven-supply": None;
  "supply-voltage.line-grounded": None;
  "supply-voltage.from-memory": { readonly standard: SupplyName };
  // actions
  "supply-voltage.do-not-energize": None;
  "supply-voltage.find-missing-line": None;
  "supply-voltage.check-neutral": None;
  "supply-voltage.match-unit-and-supply": None;
  "supply-voltage.check-wiring": None;
  "supply-voltage.read-at-service": None;
  "supply-voltage.call-utility": None;
  "supply-voltage.mark-starts": None;
  "supply-voltage.measure-better": { readonly needed: Voltage };
  "supply-voltage.log-near-limit": None;
  "supply-voltage.measure-finer": None;
  "supply-voltage.measure-at-full-load": None;
  "supply-voltage.state-standard": None;
  "supply-voltage.log-longer": { readonly missing: Quantity<"duration"> };
  "supply-voltage.even-out-load": None;
  // hints of errors
  "supply-voltage.times-in-order": None;
  "supply-voltage.state-connection": None;
  "supply-voltage.do-not-run-motor": None;
  "supply-voltage.line-to-neutral": None;
}

/** The words of this module. */
export type SupplyVoltageWord =
  | `supply-voltage.cause.${SupplyVoltageCause}`
  | `supply-voltage.readings.${"one" | "several"}`
  | SupplyNameWord;

/**
 * What is behind a supply that is not fit, the most dangerous first.
 */
export type SupplyVoltageCause =
  | "board-at-risk"
  | "no-voltage"
  | "leg-missing"
  | "phase-missing"
  | "uneven-to-ground"
  | "plate-does-not-fit"
  | "high-supply"
  | "low-supply"
  | "sag-under-load"
  | "sag-at-full-load"
  | "unbalance"
  | "current-unbalance"
  | "outside-standard";

/** One statement of this module. */
export type SupplyVoltageStatement = StatementOf<SupplyVoltageStatements>;

/** Makes a statement of this module. */
export const say: Say<SupplyVoltageStatements> = /* @__PURE__ */ sayer();

/** A text that no language changes. */
export const verbatim = (text: string): Verbatim => ({ verbatim: text });
