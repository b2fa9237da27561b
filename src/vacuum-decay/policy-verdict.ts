// Is the policy kept? Its checkpoints against the averaged curve, with guard bands, early where allowed.
// Follows JCGM 106:2012, 8.3.2 and 8.3.3. Does not cover the cause: cause.ts.
import type { Outcome } from "../assessment/assessment.ts";
import { Quantity } from "../quantity/quantity.ts";
import { micron } from "../quantity/units/pressure.ts";
import { minute } from "../quantity/units/time.ts";
import type { Analysis } from "./analysis.ts";
import { type Component, componentAt, slowShape } from "./curve/index.ts";
import { boundOf, mixtureOf } from "./mixture.ts";
import type { CheckpointSi, Settings } from "./settings.ts";
import { say, type VacuumDecayStatement } from "./statements.ts";

/** How sure a verdict has to be, and which may be given by now. */
export interface Stage {
  readonly over: boolean;
  readonly confidence: number;
  readonly mayFail: boolean;
  readonly mayPass: boolean;
}

/** The verdict on one checkpoint. */
export interface Kept {
  readonly outcome: Outcome;
  readonly reason: VacuumDecayStatement;
  /** Whether more time, or a better gauge, is what it takes. */
  readonly lacks?: "time" | "gauge" | undefined;
}

/** Judges one checkpoint. */
export function judgeCheckpoint(
  analysis: Analysis,
  checkpoint: CheckpointSi,
  settings: Settings,
  { confidence, mayFail, mayPass }: Stage,
): Kept {
  const { at, limit, rise, failAbove } = checkpoint;
  const { resolutionAt, accuracy } = settings;
  const { T, step, widening, components, segment } = analysis;
  const ceiling = limit < Infinity;
  const value = valueAt(analysis, checkpoint, settings.hold);
  const u = ({ aheadU }: Component) => widening * aheadU;
  const { mean } = mixtureOf(components, value, u);
  // the gauge's step does not average out, and a rise has two ends: JCGM 100:2008, F.2.2.1
  const shown = step / Math.sqrt(ceiling ? 12 : 6);
  const shared = Math.hypot((accuracy / Math.sqrt(3)) * mean, shown);
  const found = mixtureOf(components, value, u, shared);
  const low = boundOf(found, 1 - confidence);
  const high = boundOf(found, confidence);
  // "no rise" cannot be measured: one step of the gauge and the uncertainty are accepted, the latter as far
  // as the 10 micron that hoses and gauge make; a wider one proves nothing
  const least = resolutionAt(segment.origin) || micron.scale;
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
  };
  const what = ceiling ? "pressure" : "rise";
  if (mayFail && low > Math.max(most, failAbove)) {
    return { outcome: "fail", reason: say(`vacuum-decay.${what}-above-limit`, values) };
  }
  if (mayPass && (rise === 0 ? known && mean <= most : high <= most)) {
    return { outcome: "pass", reason: say(`vacuum-decay.${what}-within-limit`, values) };
  }
  const [lacks, code] =
    T < at ? (["time", "forecast"] as const) : (["gauge", "too-close"] as const);
  return { outcome: "inconclusive", reason: say(`vacuum-decay.${what}-${code}`, values), lacks };
}

/** What a model says at the checkpoint: the pressure, or the rise since isolation. */
function valueAt({ segment, first }: Analysis, { at, limit }: CheckpointSi, hold: number) {
  return (one: Component): number => {
    const there = at === hold ? one.ahead : componentAt(one, at);
    if (limit < Infinity) return segment.origin + there;
    // since isolation: the slow part before the first reading counts, an equalization there is not seen
    const slow = one.shape < 0 ? 0 : one.amplitude * slowShape(one.shape, first, one.tau);
    return there - componentAt(one, first) + Math.max(0, one.slope) * first + slow;
  };
}
