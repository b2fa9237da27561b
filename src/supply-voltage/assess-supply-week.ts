// Did the public supply keep its voltage for a week? The 95 % rule on ten-minute means.
// Follows EN 50160:2010, 4.2.2.2: 95 % of the ten-minute means of a week within ±10 %, all within +10 % and
// −15 %; the means as IEC 61000-4-30 forms them (root of the mean square; from memory).
// Does not cover supplies that are not linked to a network, remote ones, flicker, dips and interruptions.

import { type Assessment, cite, type Outcome, verdict } from "../assessment/assessment.ts";
import { danger } from "../assessment/safety.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { day } from "../quantity/units/time.ts";
import { type SupplyVoltageStatement, say } from "./statements.ts";
import { columnsOf, type LoggedVoltage } from "./voltage-log.ts";

/**
 * The verdict on a week of a public supply.
 *
 * Source: EN 50160:2010, 4.2.2.2.
 */
export interface SupplyWeekAssessment extends Assessment<never, SupplyVoltageStatement> {
  /** Ten-minute means that count: whole intervals without a gap above a minute and without interruption. */
  readonly means: number;
  /** Of these, outside ±10 %. */
  readonly outside10: number;
  /** Of these, outside +10 % and −15 %. */
  readonly outside15: number;
  /** Share of the means within ±10 %, in the worst week. */
  readonly shareWithin10: Quantity<"ratio">;
}

interface WeekCounts {
  readonly outcome: Outcome;
  readonly count: number;
  readonly outside10: number;
  readonly outside15: number;
  readonly within: number;
}

const perWeek = 7 * 24 * 6; // ten-minute intervals
const tenMinutes = 600; // s

/**
 * Judges a log of one voltage at the supply terminals by EN 50160. A week decides; a shorter log can fail
 * (one mean outside +10 % and −15 %, or more outside ±10 % than the whole week may have) but not pass. Of a
 * longer log every week is judged, and the worst decides; what follows the last full week can only fail.
 *
 * Assumes that a week of which more than half the means are whole can pass (common practice, no source).
 *
 * @param input - Nominal voltage above 0 and the log: readings no more than a minute apart, in order.
 * @returns The outcome, with the counts behind it.
 * @throws {@link InvalidInputError} when there are fewer than two readings or the times do not grow.
 *
 * Cautions: measured at live terminals; a logger is installed by a licensed electrician.
 *
 * Source: EN 50160:2010, 4.2.2.2, by reproduction.
 *
 * @example
 * ```ts
 * import { minute, volt } from "hvac-install-math/quantity";
 * import { assessSupplyWeek } from "hvac-install-math/supply-voltage";
 *
 * const readings = Array.from({ length: 10_081 }, (_, i) => ({ elapsed: minute(i), voltage: volt(231) }));
 * const week = assessSupplyWeek({ nominal: volt(230), readings });
 * `${week.outcome}, ${week.means} means`; // => pass, 1008 means
 * ```
 */
export function assessSupplyWeek(input: {
  /** Nominal voltage of what was logged. */
  readonly nominal: Quantity<"voltage">;
  /** The log. */
  readonly readings: readonly LoggedVoltage[];
}): SupplyWeekAssessment {
  const nominal = siOf("nominal", objectOf("input", input).nominal, "voltage", { above: 0 });
  const { times, volts } = columnsOf(input.readings);
  return judgeWeek(times, volts, nominal);
}

/** Judges plain columns: times that grow, at least two. */
export function judgeWeek(
  times: readonly number[],
  volts: readonly number[],
  nominal: number,
): SupplyWeekAssessment {
  const means = tenMinuteMeans(times, volts, nominal);
  let worst = countsOf(means.slice(0, perWeek), nominal);
  for (let from = perWeek; from < means.length; from += perWeek) {
    const next = countsOf(means.slice(from, from + perWeek), nominal);
    const counts = next.outcome === "fail" || from + perWeek <= means.length;
    if (counts && (worstFirst(next, worst) || next.within - worst.within) < 0) worst = next;
  }
  const { outcome, count, outside10, outside15, within } = worst;
  const values = {
    means: count,
    outside10,
    outside15,
    within: percent(Number((100 * within).toFixed(2))),
  };
  const missing = day(Number((7 - (count * tenMinutes) / 86_400).toFixed(2)));
  const open = outcome === "inconclusive";
  return verdict({
    outcome,
    reasons: open
      ? [
          say("supply-voltage.week-incomplete", { missing }),
          say("supply-voltage.week-so-far", values),
        ]
      : [say(`supply-voltage.week-${outcome === "fail" ? "outside" : "within"}`, values)],
    assumptions: [],
    cautions: [danger("safety.line-voltage"), danger("safety.meter-category")],
    actions: open
      ? [say("supply-voltage.log-longer", { missing })]
      : outcome === "fail"
        ? [say("supply-voltage.call-utility")]
        : [],
    sources: [cite("en-50160", "4.2.2.2"), cite("iec-61000-4-30", "5.2")],
    means: count,
    outside10,
    outside15,
    shareWithin10: percent(100 * within),
  });
}

const rank = { fail: 0, inconclusive: 1, pass: 2 };

/** Orders verdicts, the worst first. */
export const worstFirst = (
  a: Pick<Assessment, "outcome">,
  b: Pick<Assessment, "outcome">,
): number => rank[a.outcome] - rank[b.outcome];

/** What the means of one week show, which may be cut short. */
function countsOf(week: readonly number[], nominal: number): WeekCounts {
  const own = week.filter((v) => v > 0);
  const count = own.length;
  const outside = (low: number) =>
    own.filter((v) => !isAtLeast(v, low * nominal) || !isAtMost(v, 1.1 * nominal)).length;
  const [outside10, outside15] = [outside(0.9), outside(0.85)];
  const enough = week.length === perWeek && count > perWeek / 2;
  const fails = outside15 > 0 || outside10 > 0.05 * (enough ? count : perWeek);
  const outcome = fails ? "fail" : enough ? "pass" : "inconclusive";
  return { outcome, count, outside10, outside15, within: count ? 1 - outside10 / count : 0 };
}

/** Root mean square per interval from the first reading on; −1 where it is interrupted or has a gap. */
function tenMinuteMeans(
  times: readonly number[],
  volts: readonly number[],
  nominal: number,
): number[] {
  const start = times[0] as number;
  const end = times.at(-1) as number;
  const means: number[] = [];
  let next = 0;
  for (let from = start; isAtMost(from + tenMinutes, end, 1); from += tenMinutes) {
    let [squares, n, last, whole] = [0, 0, from, true];
    for (; !isAtLeast(times[next] ?? Number.POSITIVE_INFINITY, from + tenMinutes, 1); next++) {
      const v = volts[next] as number;
      const at = times[next] as number;
      whole &&= isAtMost(at - last, 60, 1) && v >= 0.05 * nominal; // below 5 %: an interruption
      squares += v * v;
      n++;
      last = at;
    }
    whole &&= isAtMost(from + tenMinutes - last, 60, 1);
    means.push(whole && n ? Math.sqrt(squares / n) : -1);
  }
  return means;
}
