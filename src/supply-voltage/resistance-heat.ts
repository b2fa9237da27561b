// What does an electric heater give on another voltage? Its power goes with the square of the voltage.
// Follows Ohm's law at a constant resistance.
// Does not cover the resistance of a hot element, which moves by a few per cent.

import { objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";

/**
 * Power and current of a resistance heater on another than its rated voltage, as shares of the rated
 * ones. A 240 V heater on a 208 V service gives three quarters of its heat.
 *
 * @param input - Rated `voltage` of the heater and the `voltage` it gets, both above 0.
 * @returns Shares of rated power and current.
 * @throws {@link InvalidInputError} when a voltage is not above 0.
 *
 * Source: Ohm's law, constant resistance.
 *
 * @example
 * ```ts
 * import { volt } from "hvac-install-math/quantity";
 * import { resistanceHeatAt } from "hvac-install-math/supply-voltage";
 *
 * const heater = resistanceHeatAt({ rated: volt(240), actual: volt(208) });
 * heater.powerShare.toFixed(3); // => 0.751
 * heater.currentShare.toFixed(3); // => 0.867
 * ```
 */
export function resistanceHeatAt(input: {
  /** Rated voltage of the heater. */
  readonly rated: Quantity<"voltage">;
  /** Voltage that it gets. */
  readonly actual: Quantity<"voltage">;
}): {
  /** Power over rated power. */
  readonly powerShare: number;
  /** Current over rated current. */
  readonly currentShare: number;
} {
  const rated = siOf("rated", objectOf("input", input).rated, "voltage", { above: 0 });
  const currentShare = siOf("actual", input.actual, "voltage", { above: 0 }) / rated;
  return frozen({ powerShare: currentShare ** 2, currentShare });
}
