// What do people see on that port? Usual readings of small R410A splits.
// Follows common practice, no source.
// Does not cover other refrigerants: state approaches to expected-pressures.ts instead.
import { objectOf, oneOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { psig } from "../quantity/units/pressure.ts";
import { type RunningMode, runningModes } from "./service-ports.ts";

/**
 * The pressures that small R410A splits usually show on the larger port: about 100 to 150 psig in cooling
 * and 300 to 400 psig in heating. A first look, not a check: weather and speed move them.
 *
 * @param unit - The designation R410A, and the mode.
 * @returns The usual window.
 * @throws {@link InvalidInputError} for another refrigerant or mode.
 *
 * Cautions: see {@link servicePorts}.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { usualPressures } from "hvac-install-math/operating-check";
 *
 * const { from, to } = usualPressures({ refrigerant: "R410A", mode: "heating" });
 * `${from} to ${to}`; // => 300 psig to 400 psig
 * ```
 */
export function usualPressures(unit: {
  /** Nothing is held for others. */
  readonly refrigerant: "R410A";
  /** What the unit does. */
  readonly mode: RunningMode;
}): {
  /** Lower end. */
  readonly from: Quantity<"gaugePressure">;
  /** Upper end. */
  readonly to: Quantity<"gaugePressure">;
} {
  objectOf("unit", unit);
  oneOf("refrigerant", unit.refrigerant, ["R410A"]);
  const cooling = oneOf("mode", unit.mode, runningModes) === "cooling";
  return frozen(cooling ? { from: psig(100), to: psig(150) } : { from: psig(300), to: psig(400) });
}
