// What does the nameplate's rate mean? Mass per length, or a mass for every so many feet or meters.
// Follows the two ways in which manufacturers' published manuals print it.
// Does not cover rates that follow from geometry: those are a plausibility check (full-line.ts).

import { requireKind, siOf } from "../quantity/check.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { g, gPerM, kg, lb, oz, ozPerFt } from "../quantity/units/mass.ts";
import { say } from "./statements.ts";
import { isImperial } from "./tube.ts";

/**
 * A rate as some manuals print it: 3 oz for every 5 ft.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export interface MassPerStep {
  /** Mass, 0 or more. */
  readonly mass: Quantity<"mass">;
  /** For this much length, more than 0. */
  readonly per: Quantity<"length">;
}

/**
 * Added charge per length of liquid line, as the nameplate or manual prints it.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export type ChargeRate = Quantity<"massPerLength"> | MassPerStep;

/** The rate as one quantity, 0 to 1 kg/m: 20 times what any small split prints. Internal. */
export function rateOf(argument: string, rate: ChargeRate): Quantity<"massPerLength"> {
  let one = rate as Quantity<"massPerLength">;
  if (typeof rate === "object" && rate && "per" in rate) {
    const per = siOf(`${argument}.per`, rate.per, "length", { above: 0, max: 1000 });
    const mass = siOf(`${argument}.mass`, rate.mass, "mass", { min: 0 });
    one = new Quantity(mass / per, isImperial(rate.per) ? ozPerFt : gPerM);
  }
  requireKind(argument, one, "massPerLength");
  siOf(argument, one, "massPerLength", {
    min: 0,
    max: 1,
    hint: say("line-set.rate-unit"),
  });
  return one;
}

/** The unit of mass that belongs to a rate. Internal. */
export function massUnitOf(rate: Quantity<"massPerLength">): Unit<"mass"> {
  return { "oz/ft": oz, "lb/ft": lb, "kg/m": kg }[rate.unit.symbol] ?? g;
}
