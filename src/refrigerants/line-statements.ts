// What was read, what was assumed, and what can hurt someone? The statements that go with a verdict on a line.
// Follows ANSI/ASHRAE Standard 34 for the meaning of the safety classes.
// Does not cover local rules on who may open a refrigerant circuit.
import type { Outcome } from "../assessment/assessment.ts";
import { type Caution, caution } from "../assessment/caution.ts";
import { danger, type SafetyStatement } from "../assessment/safety.ts";
import { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import type { Refrigerant } from "./refrigerant.ts";
import { say } from "./saturation/index.ts";
import {
  type LineFigure,
  type LineProbe,
  named,
  type RefrigerantsStatement,
  type RefrigerantsStatements,
} from "./statements.ts";

/** What a verdict on superheat or subcooling takes for granted. */
export function assumptionsOf(exactAtmosphere: boolean, model: number): RefrigerantsStatement[] {
  return [
    say("refrigerants.steady"),
    say("refrigerants.nominal-composition"),
    say("refrigerants.saturation-uncertainty", { share: percent(100 * model) }),
    ...(exactAtmosphere ? [say("refrigerants.exact-atmosphere")] : []),
  ];
}

/** What can hurt someone, by safety class. */
export function dangersOf({
  safetyClass,
}: Pick<Refrigerant, "safetyClass">): Caution<SafetyStatement>[] {
  return [
    danger("safety.refrigerant-contact"),
    ...(safetyClass.endsWith("1") ? [] : [danger("safety.flammable-refrigerant")]),
    ...(safetyClass.startsWith("B") ? [danger("safety.toxic-refrigerant")] : []),
  ];
}

/** What can hurt someone, and where the figure is no measure of the charge. */
export function cautionsOf(
  refrigerant: Refrigerant,
  what: LineFigure,
): Caution<RefrigerantsStatement | SafetyStatement>[] {
  const figure = named(what);
  return [
    ...dangersOf(refrigerant),
    caution("finding", say("refrigerants.only-where-the-manual-charges-by-it", { figure })),
  ];
}

/** What could decide where the probes cannot. */
export interface Decisive {
  /** Standard uncertainty that would decide, K. */
  readonly needed: number;
  /** Standard uncertainty of the equation of state alone, K. */
  readonly model: number;
  readonly probe: LineProbe;
  /** Standard uncertainty as it is. */
  readonly now: Quantity<"temperatureDifference">;
}

/** Why, and what to do next. */
export function saidOf(
  read: RefrigerantsStatements["refrigerants.within-tolerance"],
  outcome: Outcome,
  { needed, model, probe: name, now }: Decisive,
): { reasons: RefrigerantsStatement[]; actions: RefrigerantsStatement[] } {
  const { figure, value, uncertainty, target } = read;
  if (outcome === "pass")
    return { reasons: [say("refrigerants.within-tolerance", read)], actions: [] };
  if (outcome === "fail") {
    if (value.si < 0) {
      const reason = say("refrigerants.below-saturation", { figure, value, uncertainty });
      return { reasons: [reason], actions: [say("refrigerants.check-both-readings")] };
    }
    const reason =
      value.si > target.si
        ? say("refrigerants.above-tolerance", read)
        : say("refrigerants.below-tolerance", read);
    const correct = say("refrigerants.correct-the-charge", { figure, target });
    return { reasons: [reason], actions: [say("refrigerants.check-airflow-first"), correct] };
  }
  const close = say("refrigerants.too-close-to-call", read);
  const adjust = say("refrigerants.adjust-to-target", { target });
  if (needed <= model) {
    return { reasons: [close, say("refrigerants.closer-than-the-model")], actions: [adjust] };
  }
  const probe = `refrigerants.probe.${name}` as const;
  const better = new Quantity(needed, value.unit);
  return {
    reasons: [close, say("refrigerants.largest-uncertainty", { probe, now })],
    actions: [say("refrigerants.use-better-probe", { probe, needed: better }), adjust],
  };
}
