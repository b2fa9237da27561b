// How much pressure does a column of liquid take or give? Δp = ρ·g·h.
// Follows hydrostatics; standard gravity 9.80665 m/s² (SI Brochure, 9th ed., from the 3rd CGPM, 1901).
// Does not cover two-phase columns: where the unit expands the liquid outdoors the line is lighter.
import { objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { kPa, psi } from "../quantity/units/pressure.ts";
import { isImperial } from "./tube.ts";

/**
 * A column of liquid.
 */
export interface LiquidColumn {
  /** Density of the liquid, up to 3000 kg/m³. */
  readonly density: Quantity<"density">;
  /** How far the liquid rises to the indoor unit, −300 m to 300 m; negative where it falls. */
  readonly lift: Quantity<"length">;
}

/**
 * Pressure that liquid loses on its way up to the indoor unit: positive for a rise, negative (a gain)
 * where the indoor unit is below.
 *
 * @param column - Density and lift.
 * @returns ρ·g·h, in psi for a lift in feet or inches, else in kPa.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 *
 * Source: hydrostatics; standard gravity by the SI Brochure, 9th ed.
 *
 * @example
 * ```ts
 * import { staticHead } from "hvac-install-math/line-set";
 * import { ft, kgPerM3, psi } from "hvac-install-math/quantity";
 *
 * staticHead({ density: kgPerM3(1113.6), lift: ft(10) }).toString(psi, 2); // => 4.83 psi
 * ```
 */
export function staticHead(column: LiquidColumn): Quantity<"pressureDifference"> {
  const { density, lift } = objectOf("column", column);
  const rho = siOf("density", density, "density", { above: 0, max: 3000 });
  const height = siOf("lift", lift, "length", { min: -300, max: 300 });
  return new Quantity(rho * 9.80665 * height, isImperial(lift) ? psi : kPa);
}
