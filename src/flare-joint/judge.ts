// Does a measured figure keep its window? One decision for torque, diameter, wall and angle.
// Follows JCGM 106:2012, 8.3: guarded acceptance, guarded rejection.
// Does not cover tightness: only a pressure test shows that.

import {
  type Assessment,
  type Citation,
  type Estimate,
  estimate,
  verdict,
} from "../assessment/assessment.ts";
import { type Caution, caution } from "../assessment/caution.ts";
import { conformity } from "../assessment/conformity.ts";
import { danger, type SafetyStatement } from "../assessment/safety.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { type Instrument, standardUncertainty } from "../assessment/uncertainty.ts";
import { siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { type FlareCause, type FlareFigure, type FlareJointStatement, say } from "./statements.ts";

/**
 * The smallest and the largest figure that a source allows.
 *
 * Source: none; the library's own type.
 */
export interface FlareLimits<K extends FlareKind> {
  /** Smallest figure allowed. */
  readonly low: Quantity<K>;
  /** Largest figure allowed. */
  readonly high: Quantity<K>;
}

/**
 * The verdict on one measured figure of a flare joint.
 *
 * Source: JCGM 106:2012 for the decision; the shape is the library's own.
 */
export interface FlareAssessment<K extends FlareKind, Cause extends FlareCause>
  extends Assessment<Cause, FlareJointStatement> {
  /** The measured figure with its uncertainty. */
  readonly measured: Estimate<K>;
  /** What it passes within: where several sources apply, the part that they share. */
  readonly window: Partial<FlareLimits<K>>;
}

/** What is measured at a flare. Source: none; the library's own type. */
export type FlareKind = "torque" | "angle" | "length";

type Window<K extends FlareKind> = Partial<FlareLimits<K>>;
type Heeded = Caution<FlareJointStatement | SafetyStatement>;

/** What to judge: `sure` passes, outside `possible` fails, between the two nobody can tell. */
export interface Judged<K extends FlareKind, Cause extends FlareCause> {
  readonly argument: string;
  readonly value: Quantity<K>;
  readonly kind: K;
  readonly figure: FlareFigure;
  readonly instrument: Instrument<K> | undefined;
  /** Path of the instrument, for messages. */
  readonly instrumentArgument: string;
  readonly confidence: number | undefined;
  readonly sure: Window<K>;
  readonly possible: Window<K>;
  readonly below: Cause;
  readonly above: Cause;
  /** What to do about each cause. */
  readonly remedy: (cause: Cause, limits: Window<K>) => FlareJointStatement;
  /** Why the caller's manual cannot decide: then nothing passes. */
  readonly doubts?: readonly FlareJointStatement[];
  /** What else is behind a fail. */
  readonly aside?: readonly FlareJointStatement[];
  readonly assumptions?: readonly FlareJointStatement[];
  /** What a pass would hide. */
  readonly findings?: () => readonly Heeded[];
  readonly sources: readonly Citation[];
}

export function judge<K extends FlareKind, Cause extends FlareCause>(
  input: Judged<K, Cause>,
): FlareAssessment<K, Cause> {
  const { argument, value, kind, instrument, confidence = 0.95, sure, possible } = input;
  const { doubts = [], aside = [] } = input;
  const y = siOf(argument, value, kind as K, { above: 0 });
  const unit = value.unit.difference;
  const u =
    instrument === undefined
      ? new Quantity(0, unit)
      : standardUncertainty(instrument, unit, input.instrumentArgument);
  const against = (window: Window<K>) =>
    conformity({
      value,
      standardUncertainty: u,
      ...(window.low && { lowerLimit: window.low }),
      ...(window.high && { upperLimit: window.high }),
      confidence,
    }).outcome;
  const passes = against(sure) === "pass";
  const fails = against(possible) === "fail";
  const cause = possible.low && y < possible.low.si ? input.below : input.above;
  const guard = normalQuantile(confidence) * u.si;
  const near = nearness(input, y, guard);
  const reasons = passes
    ? [
        inside(input),
        // guarded rejection then fails it at the stated confidence
        ...(u.si > 0
          ? [say("flare-joint.would-have-failed", { beyond: as(2 * guard, value) })]
          : []),
      ]
    : fails
      ? [outside(input), ...aside]
      : [near.reason];
  return verdict({
    outcome: fails ? "fail" : passes && doubts.length === 0 ? "pass" : "inconclusive",
    ...(fails && { cause }),
    reasons: doubts.length ? [...(fails ? reasons : []), ...doubts] : reasons,
    assumptions: [
      ...(instrument ? [] : [say("flare-joint.exact-instrument")]),
      ...(input.assumptions ?? []),
    ],
    cautions: [...flareCautions, ...(passes && !doubts.length ? (input.findings?.() ?? []) : [])],
    actions: [
      ...(doubts.length ? [say("flare-joint.read-manual-again")] : []),
      ...(fails ? [input.remedy(cause, doubts.length ? possible : sure)] : []),
      ...(passes || fails || doubts.length ? [] : [near.action]),
    ],
    sources: input.sources,
    measured: estimate(value as unknown as Quantity<"torque">, u.si) as unknown as Estimate<K>,
    window: sure,
  });
}

type Any = Quantity<"torque">;
type Named<K extends FlareKind> = Pick<
  Judged<K, FlareCause>,
  "figure" | "value" | "sure" | "possible" | "confidence"
>;

/** A figure in the unit in which it was measured; which of the kinds it is, the caller's type says. */
const as = <K extends FlareKind>(si: number, { unit }: Quantity<K>): Any =>
  new Quantity(si, unit) as unknown as Any;

/** What a sentence names of a measured figure and of a window, in the unit in which it was measured. */
function valuesOf<K extends FlareKind>({ figure, value }: Named<K>, window: Window<K>) {
  return {
    figure: `flare-joint.figure.${figure}` as const,
    measured: as(value.si, value),
    low: as(window.low?.si ?? 0, value),
    high: as(window.high?.si ?? 0, value),
  };
}

function inside<K extends FlareKind>(input: Named<K>): FlareJointStatement {
  const { high, ...values } = valuesOf(input, input.sure);
  return input.sure.high
    ? say("flare-joint.within-range", { ...values, high })
    : say("flare-joint.above-minimum", values);
}

function outside<K extends FlareKind>(input: Named<K>): FlareJointStatement {
  const { high, ...values } = valuesOf(input, input.possible);
  return input.possible.high
    ? say("flare-joint.outside-range", { ...values, high })
    : say("flare-joint.below-minimum", values);
}

/** Why it is too close to call, and what would decide. */
function nearness<K extends FlareKind>(
  input: Named<K>,
  y: number,
  guard: number,
): { readonly reason: FlareJointStatement; readonly action: FlareJointStatement } {
  const { sure, possible, value, confidence = 0.95 } = input;
  const { high, low, ...values } = valuesOf(input, sure);
  const isIn = (window: Window<K>) =>
    isAtLeast(y, window.low?.si ?? 0) && isAtMost(y, window.high?.si ?? Infinity);
  if (isIn(possible) && !isIn(sure)) {
    return {
      reason: sure.high
        ? say("flare-joint.sources-disagree", { ...values, low, high })
        : say("flare-joint.minimums-disagree", { ...values, low }),
      action: say("flare-joint.state-manual-range"),
    };
  }
  const limits = [sure.low, sure.high, possible.low, possible.high];
  const gap = Math.min(...limits.map((limit) => (limit ? Math.abs(limit.si - y) : Infinity)));
  const needed = as((gap * Math.sqrt(3)) / normalQuantile(confidence), value);
  return {
    reason: say("flare-joint.instrument-cannot-tell", { ...values, guard: as(guard, value) }),
    action: say("flare-joint.measure-better", { needed }),
  };
}

/** The limits of a remedy, in their own unit. */
export function limitsFor<K extends FlareKind>({ low, high }: Window<K>): { low: Any; high: Any } {
  return { low: low as unknown as Any, high: high as unknown as Any };
}

/** From the smallest to the largest figure that any of the windows, one or more, allows. */
export function hullOf<K extends FlareKind>(windows: readonly FlareLimits<K>[]): FlareLimits<K> {
  return windows.reduce((hull, { low, high }) => ({
    low: low.si < hull.low.si ? low : hull.low,
    high: high.si > hull.high.si ? high : hull.high,
  }));
}

/** Two limits from the caller's manual, checked. */
export function limitsOf<K extends FlareKind>(
  argument: string,
  limits: FlareLimits<K>,
  kind: K,
): FlareLimits<K> {
  const low = siOf(`${argument}.low`, limits?.low, kind, { above: 0 });
  const high = siOf(`${argument}.high`, limits.high, kind, { above: 0 });
  if (low <= high) return limits;
  throw new InvalidInputError({
    argument: `${argument}.low`,
    value: String(limits.low),
    allowed: `at most ${argument}.high, ${limits.high}`,
  });
}

/** What every result on a flare joint carries. */
export const flareCautions: readonly Heeded[] = /* @__PURE__ */ (() => [
  danger("safety.open-under-pressure"),
  danger("safety.refrigerant-contact"),
  danger("safety.flammable-refrigerant"),
  caution("finding", say("flare-joint.not-a-leak-test")),
])();
