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
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { type FlareKind, type FlareLimits, limitsFor } from "./flare-limits.ts";
import { type FlareCause, type FlareFigure, type FlareJointStatement, say } from "./statements.ts";

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

/** Every figure has a least; not every one a most. */
type Window<K extends FlareKind> = Pick<FlareLimits<K>, "low"> & Partial<FlareLimits<K>>;
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
  /** What to do about each cause; the limits are in the unit in which it was measured. */
  readonly remedy: (cause: Cause, limits: Window<K>) => FlareJointStatement;
  /** What settles what is too close to call, for a figure that is not measured twice, by the error that would decide. */
  readonly settle?: ((needed: Quantity<K>) => readonly FlareJointStatement[]) | undefined;
  /** Why the caller's manual cannot decide: then nothing passes. */
  readonly doubts?: readonly FlareJointStatement[] | undefined;
  /** What else is behind a fail. */
  readonly aside?: readonly FlareJointStatement[] | undefined;
  /** What to look at before the remedy of a fail. */
  readonly first?: readonly FlareJointStatement[] | undefined;
  readonly assumptions?: readonly FlareJointStatement[] | undefined;
  /** What a pass would hide. */
  readonly findings?: (() => readonly Heeded[]) | undefined;
  readonly sources: readonly Citation[];
}

export function judge<K extends FlareKind, Cause extends FlareCause>(
  input: Judged<K, Cause>,
): FlareAssessment<K, Cause> {
  const { argument, value, kind, instrument, confidence = 0.95, sure, possible } = input;
  const { doubts = [], aside = [], first = [] } = input;
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
      lowerLimit: window.low,
      ...(window.high && { upperLimit: window.high }),
      confidence,
    }).outcome;
  const passes = against(sure) === "pass";
  const fails = against(possible) === "fail";
  const cause = y < possible.low.si ? input.below : input.above;
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
      ...(fails
        ? [...first, input.remedy(cause, inUnitOf(value, doubts.length ? possible : sure))]
        : []),
      ...(passes || fails || doubts.length ? [] : near.actions),
    ],
    sources: input.sources,
    measured: estimate(value as unknown as Quantity<"torque">, u.si) as unknown as Estimate<K>,
    window: sure,
  });
}

type Any = Quantity<"torque">;
type Named<K extends FlareKind> = Pick<
  Judged<K, FlareCause>,
  "figure" | "value" | "sure" | "possible" | "confidence" | "settle"
>;

/** A figure in the unit in which it was measured; which of the kinds it is, the caller's type says. */
const as = <K extends FlareKind>(si: number, { unit }: Quantity<K>): Any =>
  new Quantity(si, unit) as unknown as Any;

/** A window in the unit in which the figure was measured: one verdict, one unit. */
const inUnitOf = <K extends FlareKind>(
  { unit }: Quantity<K>,
  { low, high }: Window<K>,
): Window<K> => ({
  low: new Quantity(low.si, unit),
  ...(high && { high: new Quantity(high.si, unit) }),
});

/** What a sentence names of a measured figure and of a window, in the unit in which it was measured. */
function valuesOf<K extends FlareKind>({ figure, value }: Named<K>, window: Window<K>) {
  return {
    figure: `flare-joint.figure.${figure}` as const,
    measured: as(value.si, value),
    low: as(window.low.si, value),
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
): { readonly reason: FlareJointStatement; readonly actions: readonly FlareJointStatement[] } {
  const { sure, possible, value, confidence = 0.95 } = input;
  const { high, low, ...values } = valuesOf(input, sure);
  const isIn = (window: Window<K>) =>
    isAtLeast(y, window.low.si) && isAtMost(y, window.high?.si ?? Infinity);
  if (isIn(possible) && !isIn(sure)) {
    return {
      reason: sure.high
        ? say("flare-joint.sources-disagree", { ...values, low, high })
        : say("flare-joint.minimums-disagree", { ...values, low }),
      actions: [say("flare-joint.state-manual-range")],
    };
  }
  const limits = [sure.low, sure.high, possible.low, possible.high];
  const gap = Math.min(...limits.map((limit) => (limit ? Math.abs(limit.si - y) : Infinity)));
  // Limits of error count as a rectangular distribution: JCGM 100:2008, 4.3.7.
  const needed = (gap * Math.sqrt(3)) / normalQuantile(confidence);
  return {
    reason: say("flare-joint.instrument-cannot-tell", { ...values, guard: as(guard, value) }),
    actions:
      needed < finest * y
        ? [aimInside(inUnitOf(value, sure))]
        : (input.settle?.(as(needed, value) as unknown as Quantity<K>) ?? [
            measureBetter(needed, value),
          ]),
  };
}

// The best hand tools read to 1 part in 1000 of the figure or so: common practice, no source.
const finest = 1e-3;

/** What to do where a figure lies on its limit, so that no instrument can tell. */
const aimInside = <K extends FlareKind>(limits: Window<K>): FlareJointStatement =>
  limits.high
    ? say("flare-joint.aim-inside", limitsFor(limits))
    : say("flare-joint.aim-above", { low: limitsFor(limits).low });

const measureBetter = <K extends FlareKind>(needed: number, value: Quantity<K>) =>
  say("flare-joint.measure-better", { needed: as(needed, value) });

/** What every result on a flare joint carries. */
export const flareCautions: readonly Heeded[] = /* @__PURE__ */ (() => [
  danger("safety.open-under-pressure"),
  danger("safety.refrigerant-contact"),
  danger("safety.flammable-refrigerant"),
  caution("finding", say("flare-joint.not-a-leak-test")),
])();
