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
import type { FlareTorqueSource } from "./flare-torque-source.ts";

/** What is measured at a flare joint. */
export type FlareFigure = "torque" | "turn" | "diameter" | "wall" | "seat-angle";

/** A figure of any of these kinds. */
type Measured = Quantity<"torque"> | Quantity<"angle"> | Quantity<"length">;

interface Range {
  readonly low: Measured;
  readonly high: Measured;
}
interface Named {
  readonly figure: `flare-joint.figure.${FlareFigure}`;
  readonly measured: Measured;
}

/**
 * The statements of this module: values by code.
 */
export interface FlareJointStatements {
  // reasons
  "flare-joint.within-range": Named & Range;
  "flare-joint.outside-range": Named & Range;
  "flare-joint.above-minimum": Named & { readonly low: Measured };
  "flare-joint.below-minimum": Named & { readonly low: Measured };
  "flare-joint.would-have-failed": { readonly beyond: Measured };
  "flare-joint.sources-disagree": Named & Range;
  "flare-joint.minimums-disagree": Named & { readonly low: Measured };
  "flare-joint.instrument-cannot-tell": Named & { readonly guard: Measured };
  "flare-joint.hydraulic-flare": None;
  "flare-joint.right-on-other-scale": { readonly other: Measured };
  "flare-joint.manual-range-wide": Range & {
    readonly from: Measured;
    readonly to: Measured;
    readonly tube: Verbatim;
  };
  "flare-joint.manual-range-apart": Range & {
    readonly from: Measured;
    readonly to: Measured;
    readonly tube: Verbatim;
  };
  "flare-joint.newton-meter-as-foot-pound": None;
  "flare-joint.foot-pound-as-newton-meter": None;
  "flare-joint.manual-diameters-wide": Range & { readonly widest: Measured };
  "flare-joint.manual-minimum-thin": { readonly least: Measured; readonly usual: Measured };
  "flare-joint.adapter-needed": Ports;
  "flare-joint.hose-fits": { readonly hose: Verbatim; readonly hoseThread: Verbatim };
  // assumptions
  "flare-joint.exact-instrument": None;
  "flare-joint.published-ranges": {
    readonly sources: readonly `flare-joint.source.${FlareTorqueSource}`[];
  };
  "flare-joint.one-source": None;
  "flare-joint.wider-flare-assumed": None;
  "flare-joint.manual-read-again": None;
  // cautions
  "flare-joint.not-a-leak-test": None;
  "flare-joint.beyond-sources": Range & { readonly torque: Measured };
  // actions
  "flare-joint.tighten": Range;
  "flare-joint.tighten-by-turn": Range;
  "flare-joint.remake-and-tighten": Range;
  "flare-joint.remake-and-turn": Range;
  "flare-joint.remake-larger": Range;
  "flare-joint.remake-smaller": Range;
  "flare-joint.remake-cone": None;
  "flare-joint.replace-tube": { readonly low: Measured };
  "flare-joint.measure-better": { readonly needed: Measured };
  "flare-joint.check-wrench": { readonly needed: Measured };
  "flare-joint.check-scale": None;
  "flare-joint.aim-inside": Range;
  "flare-joint.aim-above": { readonly low: Measured };
  "flare-joint.state-manual-range": None;
  "flare-joint.read-manual-again": None;
  // hints
  "flare-joint.figure-from-manual": None;
}

interface Ports {
  readonly port: Verbatim;
  readonly portThread: Verbatim;
  readonly hose: Verbatim;
  readonly hoseThread: Verbatim;
}

/** The words of this module. */
export type FlareJointWord =
  | `flare-joint.figure.${FlareFigure}`
  | `flare-joint.source.${FlareTorqueSource}`
  | `flare-joint.cause.${FlareCause}`;

/** What is wrong with a flare joint. Source: see the function that judges it. */
export type FlareCause =
  | "under-tightened"
  | "over-tightened"
  | "flare-too-small"
  | "flare-too-large"
  | "wall-too-thin"
  | "cone-too-steep"
  | "cone-too-flat";

/** One statement of this module. */
export type FlareJointStatement = StatementOf<FlareJointStatements>;

/** Makes a statement of this module. */
export const say: Say<FlareJointStatements> = /* @__PURE__ */ sayer();
