// What current does an electric heater draw at a voltage? From its power, which goes with the square of the voltage.
// Follows Ohm's law at a constant resistance.
// Does not cover the resistance of a hot element, which moves by a few per cent.
import { objectOf, oneOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";

/**
 * Current of a resistance heater from its marked power: at its rated voltage I = P/U, for three phases I = P/(√3·U);
 * at another voltage in proportion to that voltage.
 *
 * Assumes a constant resistance and a balanced heater for three phases.
 *
 * @param input - Marked power and its rated voltage, both above 0; the supply's voltage where it differs; phases.
 * @returns The current.
 * @throws {@link InvalidInputError} when a figure is not above 0.
 *
 * Cautions: the marked current rules where there is one.
 *
 * Source: Ohm's law.
 *
 * @example
 * ```ts
 * import { heaterCurrent } from "hvac-install-math/circuit-protection";
 * import { kW, volt } from "hvac-install-math/quantity";
 *
 * heaterCurrent({ power: kW(9.6), ratedVoltage: volt(240) }).toString(); // => 40 A
 * heaterCurrent({ power: kW(9.6), ratedVoltage: volt(240), supplyVoltage: volt(208) }).si.toFixed(1); // => 34.7
 * ```
 */
export function heaterCurrent(input: {
  /** Marked power. */
  readonly power: Quantity<"power">;
  /** Voltage for which it is marked; line to line for three phases. */
  readonly ratedVoltage: Quantity<"voltage">;
  /** Voltage that it gets; the rated one when left out. */
  readonly supplyVoltage?: Quantity<"voltage"> | undefined;
  /** Phases that feed it; 1 when left out. */
  readonly phases?: 1 | 3 | undefined;
}): Quantity<"current"> {
  return currentOfHeater("", objectOf("input", input));
}

/** The same for a heater that stands elsewhere in the input, `at` a path that ends in a dot. Internal. */
export function currentOfHeater(
  at: string,
  input: Parameters<typeof heaterCurrent>[0],
): Quantity<"current"> {
  const { phases = 1, ratedVoltage, supplyVoltage = ratedVoltage } = input;
  const power = siOf(`${at}power`, input.power, "power", { above: 0 });
  const rated = siOf(`${at}ratedVoltage`, ratedVoltage, "voltage", { above: 0 });
  const factor = oneOf(`${at}phases`, phases, [1, 3]) === 3 ? Math.sqrt(3) : 1;
  const share = siOf(`${at}supplyVoltage`, supplyVoltage, "voltage", { above: 0 }) / rated;
  return ampere((power / (rated * factor)) * share);
}
