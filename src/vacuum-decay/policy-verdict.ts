// Is the policy kept? Its checkpoints against the averaged curve, with guard bands, early where allowed.
// Follows JCGM 106:2012, 8.3.2 and 8.3.3. Does not cover the cause: cause.ts.
import { type Outcome, overallOutcome, type Reason, statement } from "../assessment/assessment.ts";
import { Quantity } from "../quantity/quantity.ts";
import { micron } from "../quantity/units/pressure.ts";
import { minute } from "../quantity/units/time.ts";
import { type Component, componentAt } from "./component.ts";
import { boundOf, mixtureOf } from "./mixture.ts";
import type { CheckpointSi, Settings } from "./settings.ts";
import { slowShape } from "./shapes.ts";

/** How far the log is and how sure a verdict has to be. */
export interface Progress {
  /** Length of the evidence, s. */
  readonly T: number;
  /** Time of its first point, s. */
  readonly first: number;
  /** First pressure of the evidence, Pa. */
  readonly origin: number;
  /** Smallest step of the display, Pa. */
  readonly step: number;
  readonly confidence: number;
  readonly mayFail: boolean;
  readonly mayPass: boolean;
}

/** The verdict on one checkpoint. */
function judge(
  components: readonly Component[],
  { at, limit, rise, failAbove }: CheckpointSi,
  { hold, accuracy, resolutionAt }: Settings,
  { T, first, origin, step, confidence, mayFail, mayPass }: Progress,
): { outcome: Outcome; reason: Reason } {
  const ceiling = limit < Infinity;
  const value = (one: Component) => {
    const there = at === hold ? one.ahead : componentAt(one, at);
    if (ceiling) return origin + there;
    // since isolation: the slow part before the first reading counts, an equalisation there is not seen
    const slow = one.shape < 0 ? 0 : one.amplitude * slowShape(one.shape, first, one.tau);
    return there - componentAt(one, first) + Math.max(0, one.slope) * first + slow;
  };
  const u = ({ aheadU }: Component) => aheadU;
  const { mean } = mixtureOf(components, value, u);
  // the gauge's step does not average out, and a rise has two ends: JCGM 100:2008, F.2.2.1
  const shown = step / Math.sqrt(ceiling ? 12 : 6);
  const shared = Math.hypot((accuracy / Math.sqrt(3)) * mean, shown);
  const found = mixtureOf(components, value, u, shared);
  const low = boundOf(found, 1 - confidence);
  const high = boundOf(found, confidence);
  // "no rise" cannot be measured: one step of the gauge and the uncertainty are accepted, the latter as far
  // as the 10 micron that hoses and gauge make; a wider one proves nothing
  const least = resolutionAt(origin) || micron.scale;
  const spread = (high - low) / 2;
  const none = least + Math.min(spread, 10 * micron.scale);
  const known = spread <= least + 10 * micron.scale;
  const most = ceiling ? limit : rise || none;
  const micronOf = (p: number) => new Quantity(p, micron.difference);
  const values = {
    at: minute(at / 60),
    value: micronOf(mean),
    low: micronOf(low),
    high: micronOf(high),
    limit: micronOf(most),
    what: ceiling ? "pressure" : "rise",
  };
  const said = "the {what} is {value} ({low} to {high}), the policy allows {limit}.";
  const say = (outcome: Outcome, code: string, text: string) => ({
    outcome,
    reason: statement(code, text, values),
  });
  if (mayFail && low > Math.max(most, failAbove)) {
    return say("fail", "limit-broken", `At {at} ${said}`);
  }
  if (mayPass && (rise === 0 ? known && mean <= most : high <= most)) {
    return say("pass", "limit-kept", `At {at} ${said}`);
  }
  return T < at
    ? say("inconclusive", "hold-not-over", `The hold lasts to {at}. Forecast: ${said}`)
    : say(
        "inconclusive",
        "too-close",
        `At {at} ${said} Hold longer, evacuate deeper or use a better gauge.`,
      );
}

/** The verdict on all checkpoints: one failed fails, one open leaves it open. */
export function policyVerdict(
  components: readonly Component[],
  settings: Settings,
  progress: Progress,
): { outcome: Outcome; reasons: Reason[] } {
  const verdicts = settings.checkpoints.map((one) => judge(components, one, settings, progress));
  return {
    outcome: overallOutcome(verdicts.map(({ outcome }) => outcome)),
    reasons: verdicts.map(({ reason }) => reason),
  };
}
