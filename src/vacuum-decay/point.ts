// What speaks for an outcome? One finding, its reason, and what to do about it. Types and small makers.
// Follows JCGM 106:2012, 8.3. Does not cover which finding decides: verdict.ts.
import type { Outcome } from "../assessment/assessment.ts";
import { Quantity } from "../quantity/quantity.ts";
import { micron, micronPerMinute } from "../quantity/units/pressure.ts";
import { minute } from "../quantity/units/time.ts";
import type { Analysis } from "./analysis.ts";
import type { Settings } from "./settings.ts";
import { say, type VacuumDecayStatement } from "./statements.ts";
import { enoughPoints } from "./tuning.ts";

/** What speaks for an outcome, and what to do about it. */
export interface Point {
  readonly outcome: Outcome;
  readonly reason: VacuumDecayStatement;
  readonly actions?: readonly VacuumDecayStatement[] | undefined;
}

export const rate = (si: number): Quantity<"pressureRate"> =>
  new Quantity(Math.max(0, si), micronPerMinute);
export const difference = (si: number): Quantity<"pressureDifference"> =>
  new Quantity(Math.max(0, si), micron.difference);

/** What to do about water, and about a limit that is broken for an unknown reason. */
export const dryAgain: readonly VacuumDecayStatement[] = /* @__PURE__ */ [
  /* @__PURE__ */ say("vacuum-decay.dry-and-repeat"),
];

/** To the end of the hold, or half as long again: the leak's uncertainty falls faster than the time grows. */
export function watchOn(
  { T, points }: Pick<Analysis, "T" | "points">,
  { hold }: Settings,
): VacuumDecayStatement {
  const duration = minute(Math.ceil(Math.max(hold - T, T / 2) / 60) || 1);
  return say("vacuum-decay.watch-longer", { duration, rows: Math.max(1, enoughPoints - points) });
}

/** That there are too few points. */
export function tooFew(seen: Pick<Analysis, "T" | "points">, settings: Settings): Point {
  return {
    outcome: "inconclusive",
    reason: say("vacuum-decay.too-few-readings", { rows: seen.points, needed: enoughPoints }),
    actions: [watchOn(seen, settings)],
  };
}
