// Why is the verdict what it is? The statements of a decision, the deciding one first; nothing is decided here.
// Follows no standard. Does not cover what to do next: actions.ts.
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import type { Ruling } from "./decide.ts";
import type { Evidence, Found } from "./evidence.ts";
import { asTime, asWait, shown } from "./figures.ts";
import { type PressureTestStatement, say } from "./statements.ts";

/** Pascals for a sentence: to a millionth, so that rounding noise reads as 0. */
export const inUnit = (
  si: number,
  unit: Unit<"pressureDifference">,
): Quantity<"pressureDifference"> => shown(Math.round(si * 1e6) / 1e6, unit);

/** Why, the deciding reason first. */
export function reasonsFor(evidence: Evidence, found: Found): PressureTestStatement[] {
  const { limit, first, unit, doubts } = evidence;
  const { outcome, cause, ruling, U } = found;
  const psi = (si: number) => inUnit(si, unit);
  const byLimit = rulingOf(evidence, found);
  const byLeak =
    cause === "leak"
      ? say("pressure-test.leak-proven", { drop: psi(evidence.drop), uncertainty: psi(U) })
      : say("pressure-test.no-leak-above", { above: psi(Math.max(evidence.drop, 0) + U) });
  const said = doubts.map(({ reason }) => reason);
  const isLimitFirst = outcome === "pass" || ruling === "above" || ruling === "within";
  const reasons: PressureTestStatement[] =
    cause === "leak"
      ? [...(isLimitFirst ? [byLimit, byLeak] : [byLeak, byLimit]), ...said]
      : [...said, byLimit, byLeak];
  if (cause === "unexplained-rise") {
    const values = { rise: psi(-evidence.drop), uncertainty: psi(U) };
    reasons.unshift(say("pressure-test.unexplained-rise", values));
  }
  if (limit && !isAtMost(limit.stated, limit.drop)) {
    const pressure = psi(first.pressure - first.atmosphere);
    const values = { stated: psi(limit.stated), pressure, limit: psi(limit.drop) };
    reasons.push(say("pressure-test.limit-lowered", values));
  }
  return [...reasons, ...(evidence.notes ?? []), weatherOf(evidence)];
}

/** What the drop is to the limit. */
function rulingOf({ drop, limit, unit }: Evidence, { ruling, cause, U }: Found) {
  if (!limit) return say("pressure-test.no-limit-stated");
  const figures = {
    drop: inUnit(drop, unit),
    uncertainty: inUnit(U, unit),
    limit: inUnit(limit.drop, unit),
  };
  return ruling === "within" && cause === "leak"
    ? say("pressure-test.leak-within-limit", figures)
    : say(`pressure-test.${ruling as Exclude<Ruling, "none">}-limit`, figures);
}

/** What was read is what temperature and barometer change by themselves, less the drop. */
function weatherOf({ first, last, isGauge, expected, unit }: Evidence): PressureTestStatement {
  const air = isGauge ? first.atmosphere - last.atmosphere : 0;
  const temperature = inUnit(expected - first.pressure, unit);
  const change = inUnit(last.pressure - first.pressure + air, unit);
  if (air === 0) return say("pressure-test.weather-alone", { temperature, change });
  const barometer = inUnit(air, unit);
  return say("pressure-test.weather-and-barometer-alone", { temperature, barometer, change });
}

/** The smallest leak that the test could prove: a pass hides smaller ones. */
export function smallestFinding(
  { seconds, unit }: Evidence,
  { U, smallestLeak, longer }: Found,
): PressureTestStatement {
  const smallest = inUnit(U, unit);
  if (longer === 0) return say("pressure-test.smallest-drop", { smallest });
  const hold = asWait(longer);
  return smallestLeak === undefined
    ? say("pressure-test.smallest-drop-rate", { smallest, held: asTime(seconds), hold })
    : say("pressure-test.smallest-leak", { smallest: shown(smallestLeak, paM3PerS), hold });
}
