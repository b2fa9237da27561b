// Is what was weighed in what the manual asks for, within its tolerance and below the plate's maximum?
// Follows JCGM 106:2012, 8.3, with guard bands. Does not cover the rule itself: see charge-rule.ts.

import { cite, overallOutcome, verdict } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { standardUncertainty } from "../assessment/uncertainty.ts";
import type { ChargeAssessment } from "../line-set/index.ts";
import { siOf } from "../quantity/check.ts";
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { rounded } from "../quantity/rounded.ts";
import { kg } from "../quantity/units/mass.ts";
import { errorsOf } from "./instrument-errors.ts";
import type { Job } from "./job.ts";
import type { OwnVerdict } from "./own-verdict.ts";
import { type CommissioningStatement, say } from "./statements.ts";

/** Share of the whole charge within which a weighed charge decides anything; common practice, no source. */
const largestTolerance = 0.1;

/** What was weighed in against what the rule asks for and the tolerance. */
export function weighed(
  { record }: Job,
  { unroundedCharge: unrounded }: ChargeAssessment,
): OwnVerdict {
  const added = record.charge?.added as Quantity<"mass">;
  const tolerance = record.charge?.tolerance as Quantity<"mass">;
  const scale = errorsOf(record.instruments?.scale);
  const u = scale ? standardUncertainty(scale, kg) : kg(0);
  const factory = record.equipment?.factoryCharge as Quantity<"mass">;
  // Within the whole charge of a unit anything would be right.
  siOf("tolerance", tolerance, "mass", { min: 0, below: factory.si });
  const most = record.equipment?.maximumCharge;
  const total = factory.plus(added);
  const over = most
    ? conformity({ value: total, standardUncertainty: u, upperLimit: most }).outcome
    : "pass";
  const { outcome } = conformity({
    value: added,
    standardUncertainty: u,
    lowerLimit: unrounded.minus(tolerance),
    upperLimit: unrounded.plus(tolerance),
  });
  const asked = toFourDigits(unrounded);
  const whole = toFourDigits(factory.plus(unrounded));
  const isWide = !isAtMost(tolerance.si, largestTolerance * (factory.si + unrounded.si));
  const doubts: CommissioningStatement[] = [];
  const actions: CommissioningStatement[] = [];
  if (isWide) {
    doubts.push(say("commissioning.tolerance-too-wide", { tolerance, whole }));
    actions.push(say("commissioning.state-tolerance"));
  }
  if (most && over !== "pass") {
    const near = over === "fail" ? "above-maximum-charge" : "near-maximum-charge";
    doubts.push(say(`commissioning.${near}`, { total, most }));
    actions.push(say("commissioning.recover-down-to", { most }));
  }
  if (outcome !== "pass") {
    actions.push(
      outcome === "fail"
        ? say("commissioning.correct-charge", { asked, tolerance })
        : say("commissioning.weigh-better"),
    );
  }
  return verdict({
    outcome: overallOutcome([over, outcome, ...(isWide ? (["inconclusive"] as const) : [])]),
    reasons: [
      ...doubts,
      say(`commissioning.weighed-${weighedCodes[outcome]}`, { added, tolerance, asked }),
    ],
    assumptions: scale ? [] : [say("commissioning.exact-scale")],
    cautions: [],
    actions,
    sources: [cite("manufacturer-manuals"), cite("jcgm-106-2012", "8.3")],
  });
}

const weighedCodes = { pass: "within", fail: "outside", inconclusive: "too-close" } as const;

const toFourDigits = ({ si, unit }: Quantity<"mass">) => rounded(si, unit, 4);
