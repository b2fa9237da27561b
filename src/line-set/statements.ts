// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the dangers that modules share: assessment/safety.ts.
import type { Assessment } from "../assessment/assessment.ts";
import { type None, type Say, type StatementOf, sayer } from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";

type Length = Quantity<"length">;
type Mass = Quantity<"mass">;
type Speed = Quantity<"speed">;
type Loss = Quantity<"pressureDifference">;
type Subcooling = Quantity<"temperatureDifference">;

/** What is held against a limit of the manual. */
export type LineSetFigure =
  | "length"
  | "equivalent-length"
  | "height-difference"
  | "height-difference-outdoor-above"
  | "total-charge"
  | "added-charge"
  | "pressure-loss"
  | "subcooling";

interface Held {
  readonly figure: `line-set.figure.${LineSetFigure}`;
  readonly value: Length | Mass | Loss;
  readonly limit: Length | Mass | Loss;
}
interface Near extends Held {
  readonly uncertainty: Length | Mass | Loss;
}
interface Ruled {
  readonly charge: Mass;
  readonly length: Length;
  readonly difference: Length;
  readonly preCharged: Length;
  readonly rate: Quantity<"massPerLength">;
}
interface Rated {
  readonly rate: Quantity<"massPerLength">;
  readonly full: Quantity<"massPerLength">;
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
}
interface Limit<Q> {
  readonly limit: Q;
}
interface Subcooled {
  readonly available: Subcooling;
  readonly needed: Subcooling;
  readonly loss: Loss;
}

/**
 * The statements of this module: values by code.
 */
export interface LineSetStatements {
  // hints of errors
  "line-set.rate-unit": None;
  "line-set.viscosity-unit": None;
  // reasons: a figure against a limit
  "line-set.within-maximum": Held;
  "line-set.above-maximum": Held;
  "line-set.near-maximum": Near;
  "line-set.above-minimum": Held;
  "line-set.below-minimum": Held;
  "line-set.near-minimum": Near;
  "line-set.kept-as-measured": Near;
  "line-set.bends-within-maximum": { readonly count: number; readonly most: number };
  "line-set.bends-above-maximum": { readonly count: number; readonly most: number };
  "line-set.bends-not-counted": { readonly most: number };
  "line-set.bend-length-not-counted": { readonly bend: Length };
  // reasons: the charge
  "line-set.add": Ruled;
  "line-set.take-out": Ruled;
  "line-set.nothing-to-add": { readonly length: Length; readonly preCharged: Length };
  "line-set.short-line-rule-not-known": {
    readonly length: Length;
    readonly difference: Length;
    readonly preCharged: Length;
  };
  "line-set.allowances": { readonly mass: Mass };
  "line-set.nothing-to-add-in-all": { readonly total: Mass };
  "line-set.total-not-known": Limit<Mass>;
  // reasons: the rate
  "line-set.rate-plausible": Rated;
  "line-set.rate-implausible": Rated;
  "line-set.rate-fits-other-device": Rated;
  "line-set.two-phase-liquid-line": None;
  "line-set.rate-too-high": { readonly rate: Quantity<"massPerLength"> };
  "line-set.rate-per-foot": None;
  "line-set.rate-per-meter": None;
  // reasons: flow
  "line-set.subcooling-enough": Subcooled;
  "line-set.subcooling-too-low": Subcooled;
  "line-set.subcooling-near": Subcooled & { readonly uncertainty: Subcooling };
  "line-set.subcooling-not-known": Omit<Subcooled, "available">;
  "line-set.liquid-velocity-within": {
    readonly velocity: Speed;
    readonly least: Speed;
    readonly most: Speed;
  };
  "line-set.liquid-velocity-high": { readonly velocity: Speed; readonly most: Speed };
  "line-set.liquid-velocity-low": { readonly velocity: Speed; readonly least: Speed };
  "line-set.loss-not-known": Limit<Loss>;
  "line-set.oil-returns": { readonly velocity: Speed; readonly least: Speed };
  "line-set.oil-stays": { readonly velocity: Speed; readonly oil: Speed };
  "line-set.oil-return-open-riser": {
    readonly velocity: Speed;
    readonly least: Speed;
    readonly oil: Speed;
  };
  "line-set.oil-return-open-level": { readonly velocity: Speed; readonly least: Speed };
  "line-set.vapor-noise": { readonly velocity: Speed; readonly most: Speed };
  // reasons: stock, opening, recovery
  "line-set.stock-length": { readonly stock: Length; readonly needed: Length };
  "line-set.surplus-to-cut": { readonly surplus: Length };
  "line-set.coil-to-minimum": { readonly coiled: Length; readonly installed: Length };
  "line-set.coil-surplus": { readonly coiled: Length; readonly installed: Length };
  "line-set.no-stock-length": { readonly needed: Length; readonly longest: Length };
  "line-set.items-fit": { readonly fill: Quantity<"ratio"> };
  "line-set.opening-too-small": { readonly sleeve: Length };
  "line-set.no-layout-found": { readonly sleeve: Length };
  "line-set.to-recover": { readonly mass: Mass; readonly keep: Mass };
  "line-set.to-add": { readonly mass: Mass; readonly keep: Mass };
  "line-set.charge-not-known": None;
  "line-set.cylinder-too-small": { readonly room: Mass; readonly mass: Mass };
  // assumptions
  "line-set.limits-of-the-manual": None;
  "line-set.maximum-length-not-checked": None;
  "line-set.minimum-length-not-checked": None;
  "line-set.room-limit-not-checked": None;
  "line-set.saturated-liquid": None;
  "line-set.no-heat-gain": None;
  "line-set.expansion-indoors": None;
  "line-set.liquid-only": None;
  "line-set.loss-not-checked": None;
  "line-set.same-density": None;
  "line-set.guide-minimum-velocity": { readonly least: Speed };
  "line-set.guide-maximum-velocity": { readonly most: Speed };
  "line-set.no-slack": None;
  "line-set.no-service-loop": None;
  "line-set.round-and-stiff": None;
  "line-set.no-clearance": None;
  "line-set.charge-as-labeled": None;
  "line-set.cylinder-not-checked": None;
  // cautions
  "line-set.charge-after-tests": None;
  "line-set.no-kinks": None;
  "line-set.drain-falls-outward": None;
  "line-set.drilling": None;
  "line-set.overfilled-cylinder": None;
  "line-set.mixed-refrigerants": None;
  "line-set.never-vent": None;
  // actions
  "line-set.measure-better": { readonly figure: `line-set.figure.${LineSetFigure}` };
  "line-set.shorten-line": Limit<Length>;
  "line-set.lengthen-line": Limit<Length>;
  "line-set.reduce-height": Limit<Length>;
  "line-set.fewer-bends": { readonly most: number };
  "line-set.count-bends": None;
  "line-set.enter-short-line-rule": None;
  "line-set.reduce-charge": Limit<Mass>;
  "line-set.enter-factory-charge": None;
  "line-set.read-rate-again": None;
  "line-set.enter-expansion-device": None;
  "line-set.measure-subcooling": None;
  "line-set.reduce-loss": None;
  "line-set.no-extra-charge": None;
  "line-set.wider-liquid-line": None;
  "line-set.ask-line-size": None;
  "line-set.enter-loss": None;
  "line-set.smaller-riser": None;
  "line-set.ask-oil-return": None;
  "line-set.wider-vapor-line": None;
  "line-set.other-stock": { readonly needed: Length; readonly limit: Length };
  "line-set.take-from-roll": None;
  "line-set.larger-opening": { readonly sleeve: Length };
  "line-set.recover-all": None;
  "line-set.charge-by-weight": { readonly keep: Mass };
  "line-set.other-cylinder": { readonly mass: Mass };
}

/**
 * A slip that the ratio of a rate to a full line points to: a figure per foot read as per meter, or the reverse.
 *
 * Source: plane arithmetic, 1 ft = 0.3048 m.
 */
export type RateSlip = "per-foot-taken-as-per-meter" | "per-meter-taken-as-per-foot";

/** The words of this module. */
export type LineSetWord = `line-set.figure.${LineSetFigure}` | `line-set.cause.${RateSlip}`;

/** One statement of this module. */
export type LineSetStatement = StatementOf<LineSetStatements>;

/** A verdict of this module. */
export type Verdict<Cause extends string = never> = Assessment<Cause, LineSetStatement>;

/** Makes a statement of this module. */
export const say: Say<LineSetStatements> = /* @__PURE__ */ sayer();
