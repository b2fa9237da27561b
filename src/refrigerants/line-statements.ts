// What was assumed, and what can hurt someone? The statements that go with a verdict on a line.
// Follows ANSI/ASHRAE Standard 34 for the meaning of the safety classes; the wording is our own.
// Does not cover local rules on who may open a refrigerant circuit.
import { type Assumption, type Caution, statement } from "../assessment/assessment.ts";
import { percent } from "../quantity/units/ratio.ts";
import type { Refrigerant } from "./refrigerant.ts";

/** What a verdict on superheat or subcooling takes for granted. */
export function assumptionsOf(exactAtmosphere: boolean, model: number): Assumption[] {
  return [
    statement("steady", "The system runs steadily; the probe is clean, tight and insulated."),
    statement("nominal-composition", "The refrigerant is pure or has its nominal composition."),
    statement("model", "The saturation pressure itself has a standard uncertainty of {share}.", {
      share: percent(100 * model),
    }),
    ...(exactAtmosphere ? [statement("atmosphere", "The atmosphere is known exactly.")] : []),
  ];
}

/** What can hurt someone, by safety class, and what goes before the figure. */
export function cautionsOf({ safetyClass, designation }: Refrigerant, what: string): Caution[] {
  const cautions = [
    statement(
      "pressure",
      "Refrigerant under pressure burns and freezes: wear gloves and eye protection; licensed work.",
    ),
    statement(
      "instructions",
      `Nameplate and manufacturer's charging instructions go before this figure; inverter and electronic-valve systems have no ${what} to charge by unless their manual says so.`,
    ),
  ];
  if (safetyClass !== "A1" && safetyClass !== "B1") {
    cautions.push(
      statement(
        "flammable",
        "{designation} ({safetyClass}) can ignite: no flames or sparks, ventilate.",
        {
          designation,
          safetyClass,
        },
      ),
    );
  }
  if (safetyClass.startsWith("B")) {
    cautions.push(
      statement("toxic", "{designation} is toxic: breathing protection.", { designation }),
    );
  }
  return cautions;
}
