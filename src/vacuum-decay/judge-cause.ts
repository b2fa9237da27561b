// Is there a leak, water, or a rise that goes on, of an amount that matters?
// Follows JCGM 106:2012, 8.3: what is proven fails, what is not excluded leaves it open.
// Does not cover the policy's limits: judge-policy.ts.
import type { Analysis } from "./analysis.ts";
import { findLeak } from "./find-leak.ts";
import { difference, dryAgain, type Point, rate, tooFew, watchOn } from "./point.ts";
import type { Stage } from "./policy-verdict.ts";
import type { Settings } from "./settings.ts";
import { say } from "./statements.ts";
import {
  earlyFailShare,
  earlyShare,
  enoughPoints,
  failShare,
  passShare,
  usualVolume,
} from "./tuning.ts";

/** Is there a leak that matters? */
export function judgeLeak(
  analysis: Analysis,
  settings: Settings,
  { over, mayFail }: Stage,
  low: number,
  high: number,
): Point[] {
  const { odds, amounts, endRate } = analysis;
  const { leakLimit, hoses } = settings;
  const values = { low: rate(low), high: rate(high), limit: rate(leakLimit.rate) };
  const find = findLeak(low * (settings.volume || usualVolume));
  const points: Point[] = [];
  const aboveStated = leakLimit.stated && low > Math.max(leakLimit.rate, hoses);
  if (mayFail && (aboveStated || odds.provenLeak > (over ? failShare : earlyFailShare))) {
    points.push(
      high < leakLimit.rate
        ? {
            outcome: "inconclusive",
            reason: say("vacuum-decay.leak-within-limit", values),
            actions: [say("vacuum-decay.blank-test"), ...find],
          }
        : { outcome: "fail", reason: say("vacuum-decay.leak-proven", values), actions: find },
    );
  } else if (odds.leak > (over ? passShare : earlyShare) || high > leakLimit.rate) {
    const most = Math.min(leakLimit.rate, amounts.leak);
    const byHoses = hoses > 0 && endRate.mean < most + 2 * hoses && endRate.mean > most / 2;
    points.push({
      outcome: "inconclusive",
      reason: say("vacuum-decay.leak-not-excluded", { high: rate(high), limit: rate(most) }),
      actions: [...(byHoses ? [say("vacuum-decay.blank-test")] : []), watchOn(analysis, settings)],
    });
  }
  return points;
}

/** Is there water that matters, or a rise that goes on? */
export function judgeRest(
  analysis: Analysis,
  settings: Settings,
  { over, mayFail }: Stage,
): Point[] {
  const { odds, water, endRate, amounts } = analysis;
  const { hoses, volume } = settings;
  const proven = over ? failShare : earlyFailShare;
  if (mayFail && odds.water > proven) {
    const reason = say("vacuum-decay.moisture-proven", { water: difference(water) });
    return [{ outcome: "fail", reason, actions: dryAgain }];
  }
  const find = findLeak(endRate.mean * (volume || usualVolume));
  if (mayFail && odds.provenBad > proven && odds.provenLeak <= proven) {
    return [
      {
        outcome: "fail",
        reason: say("vacuum-decay.leak-or-moisture"),
        actions: [...dryAgain, ...find],
      },
    ];
  }
  if (odds.bad <= (over ? passShare : earlyShare)) return [];
  if (analysis.points < enoughPoints) return [tooFew(analysis, settings)];
  if (odds.water > odds.bad / 2) {
    const reason = say("vacuum-decay.moisture-not-excluded", { water: difference(water) });
    return [{ outcome: "inconclusive", reason, actions: dryAgain }];
  }
  const byHoses = endRate.mean < amounts.endRate + 2 * hoses;
  return [
    {
      outcome: "inconclusive",
      reason: say("vacuum-decay.still-rising", { rate: rate(endRate.mean) }),
      actions: [
        ...(hoses > 0 && byHoses ? [say("vacuum-decay.blank-test")] : []),
        watchOn(analysis, settings),
      ],
    },
  ];
}
