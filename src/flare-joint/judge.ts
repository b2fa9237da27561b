// Does a measured figure keep its window? One decision for torque, diameter, wall and angle.
// Follows JCGM 106:2012, 8.3: guarded acceptance, guarded rejection.
// Does not cover tightness: only a pressure test shows that.

import type { Assumption, Estimate, Reason } from "../assessment/assessment.ts";
import {
  type Assessment,
  type Caution,
  type Citation,
  estimate,
  statement,
} from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { type Instrument, standardUncertainty } from "../assessment/uncertainty.ts";
import { siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { AnyQuantity } from "../quantity/json.ts";
import type { AdditiveKind } from "../quantity/kinds.ts";
import { Quantity } from "../quantity/quantity.ts";

/**
 * The smallest and the largest figure that a source allows.
 *
 * Source: none; the library's own type.
 */
export interface FlareLimits<K extends AdditiveKind> {
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
export interface FlareAssessment<K extends AdditiveKind, Cause extends string>
  extends Assessment<Cause> {
  /** The measured figure with its uncertainty. */
  readonly measured: Estimate<K>;
  /** What it passes within: where several sources apply, the part that they share. */
  readonly window: Partial<FlareLimits<K>>;
}

type Window<K extends AdditiveKind> = Partial<FlareLimits<K>>;

/** What to judge: `sure` passes, outside `possible` fails, between the two nobody can tell. */
export interface Judged<K extends AdditiveKind, Cause extends string> {
  readonly argument: string;
  readonly value: Quantity<K>;
  readonly kind: K;
  readonly instrument: Instrument<K> | undefined;
  /** Path of the instrument, for messages. */
  readonly instrumentArgument: string;
  readonly confidence: number | undefined;
  readonly sure: Window<K>;
  readonly possible: Window<K>;
  readonly below: Cause;
  readonly above: Cause;
  /** Why the caller's manual cannot decide: then nothing passes. */
  readonly doubt?: Reason | undefined;
  readonly assumptions?: readonly Assumption[];
  readonly cautions: readonly Caution[];
  readonly sources: readonly Citation[];
}

export function judge<K extends AdditiveKind, Cause extends string>(
  input: Judged<K, Cause>,
): FlareAssessment<K, Cause> {
  const { argument, value, kind, instrument, confidence = 0.95, sure, possible, doubt } = input;
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
  const low = possible.low && y < possible.low.si;
  const guard = normalQuantile(confidence) * u.si;
  const shown = (si: number) => new Quantity(si, value.unit) as unknown as AnyQuantity;
  const values: Record<string, AnyQuantity> = {
    measured: shown(y),
    ...limitsIn(sure, value),
    guard: shown(guard),
    shows: shown(2 * guard), // guarded rejection then fails it at the stated confidence
  };
  const inSure = y >= (sure.low?.si ?? 0) && y <= (sure.high?.si ?? Infinity);
  const inPossible = y >= (possible.low?.si ?? 0) && y <= (possible.high?.si ?? Infinity);
  let reason: Reason;
  if (passes) {
    reason = statement(
      "inside",
      `{measured} keeps ${wording(sure)}${u.si > 0 ? "; {shows} outside it would have failed" : ""}.`,
      values,
    );
  } else if (fails) {
    reason = statement("outside", `{measured} does not keep ${wording(possible)}.`, {
      ...values,
      ...limitsIn(possible, value),
    });
  } else if (inPossible && !inSure) {
    reason = statement(
      "sources-disagree",
      `{measured} keeps one source and not another; all of them allow ${wording(sure)}. The manual of the unit decides.`,
      values,
    );
  } else {
    const limits = [sure.low, sure.high, possible.low, possible.high];
    const gap = Math.min(...limits.map((limit) => (limit ? Math.abs(limit.si - y) : Infinity)));
    const needed = shown((gap * Math.sqrt(3)) / normalQuantile(confidence));
    reason = statement(
      "instrument-cannot-tell",
      `{measured} is within {guard} of a limit of ${wording(sure)}; an instrument of ±{needed} or better would decide.`,
      { ...values, needed },
    );
  }
  const assumptions = instrument
    ? []
    : [statement("exact-instrument", "The reading counts as exact: no accuracy was stated.")];
  return {
    outcome: fails ? "fail" : passes && !doubt ? "pass" : "inconclusive",
    ...(fails && { cause: low ? input.below : input.above }),
    reasons: doubt ? [...(fails ? [reason] : []), doubt] : [reason],
    assumptions: [...assumptions, ...(input.assumptions ?? [])],
    cautions: input.cautions,
    sources: input.sources,
    measured: estimate(value as unknown as Quantity<"torque">, u.si) as unknown as Estimate<K>,
    window: sure,
  };
}

/** A window in words, its limits by name. */
function wording<K extends AdditiveKind>({ low, high }: Window<K>): string {
  if (low && high) return "{low} to {high}";
  return low ? "at least {low}" : "at most {high}";
}

/** The limits by name, in the unit in which it was measured. */
function limitsIn<K extends AdditiveKind>(
  { low, high }: Window<K>,
  { unit }: Quantity<K>,
): Record<string, AnyQuantity> {
  const limits = { ...(low && { low: low.as(unit) }), ...(high && { high: high.as(unit) }) };
  return limits as unknown as Record<string, AnyQuantity>;
}

/** From the smallest to the largest figure that any of the windows, one or more, allows. */
export function hullOf<K extends AdditiveKind>(windows: readonly FlareLimits<K>[]): FlareLimits<K> {
  return windows.reduce((hull, { low, high }) => ({
    low: low.si < hull.low.si ? low : hull.low,
    high: high.si > hull.high.si ? high : hull.high,
  }));
}

/** Two limits from the caller's manual, checked. */
export function limitsOf<K extends AdditiveKind>(
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

const deferCaution: Caution = /* @__PURE__ */ statement(
  "manual-decides",
  "The unit's manual, the nuts that come with it, local code and licensed practice override these figures.",
);
const pressureCaution: Caution = /* @__PURE__ */ statement(
  "pressure",
  "Never loosen a flare nut under pressure: liquid refrigerant burns and freezes. With a flammable refrigerant no flame or spark; ventilate.",
);
const tightnessCaution: Caution = /* @__PURE__ */ statement(
  "not-a-leak-test",
  "This does not prove the joint tight: only a pressure test does.",
);

/** What every verdict on a flare joint carries. */
export const flareCautions: readonly Caution[] = [deferCaution, pressureCaution, tightnessCaution];
