// How much gas is a leak? Throughput, mass per time and mass per year.
// Follows Q = V Δp/Δt and m = Q M/(R T) (ISO 3529-1; 40 CFR 1065.644, eq. 1, for moles).
// Does not cover a throughput whose temperature is unknown: its mass is uncertain by 7 %.
import { numberOf, objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import { gPerYear } from "../quantity/units/mass.ts";

/** Molar gas constant, J/(mol K), exact. Source: SI Brochure, 9th ed. */
export const R = 8.314462618;

/**
 * The throughput of a leak from a pressure that fell, or of one into a vacuum that rose, at a steady
 * temperature.
 *
 * @param loss - `volume` (above 0), change of pressure `drop` (`pressureDifference`, of either sign) and
 * the time `elapsed` (above 0).
 * @returns The `throughput` V·Δp/Δt at the temperature of the gas.
 * @throws {@link InvalidInputError} when a value is missing, of another kind or out of its range.
 *
 * Source: ISO 3529-1:2019; 40 CFR 1065.644.
 *
 * @example
 * ```ts
 * import { throughputOfDrop } from "hvac-install-math/pressure-test";
 * import { day, liter, psi } from "hvac-install-math/quantity";
 *
 * const leak = throughputOfDrop({ volume: liter(2), drop: psi(1), elapsed: day(1) });
 * leak.si.toExponential(3); // => 1.596e-4
 * ```
 */
export function throughputOfDrop(loss: {
  readonly volume: Quantity<"volume">;
  readonly drop: Quantity<"pressureDifference">;
  readonly elapsed: Quantity<"duration">;
}): Quantity<"throughput"> {
  objectOf("loss", loss);
  const V = siOf("volume", loss.volume, "volume", { above: 0 });
  const dp = siOf("drop", loss.drop, "pressureDifference");
  const dt = siOf("elapsed", loss.elapsed, "duration", { above: 0 });
  return new Quantity((V * dp) / dt, paM3PerS);
}

/**
 * The mass flow of a throughput. The same throughput is 7 % less mass at 20 °C than at 0 °C, and printed
 * tables rarely say which they mean.
 *
 * Assumes an ideal gas.
 *
 * @param leak - `throughput`, the `temperature` that it refers to, and `gramsPerMole`, the molar mass of
 * the gas in g/mol (above 0): 28.0134 nitrogen, 28.96 air.
 * @returns The `massFlow`, in g/yr.
 * @throws {@link InvalidInputError} when a value is missing, of another kind or out of its range.
 *
 * Source: 40 CFR 1065.644, eq. 1, times the molar mass; Julian year of 365.25 days.
 *
 * @example
 * ```ts
 * import { massFlowOfThroughput } from "hvac-install-math/pressure-test";
 * import { degC, mbarLiterPerSecond } from "hvac-install-math/quantity";
 *
 * const air = { throughput: mbarLiterPerSecond(0.01), gramsPerMole: 28.96 };
 * massFlowOfThroughput({ ...air, temperature: degC(20) }).toString(undefined, 0); // => 375 g/yr
 * massFlowOfThroughput({ ...air, temperature: degC(0) }).toString(undefined, 0); // => 402 g/yr
 * ```
 */
export function massFlowOfThroughput(leak: {
  readonly throughput: Quantity<"throughput">;
  readonly temperature: Quantity<"temperature">;
  readonly gramsPerMole: number;
}): Quantity<"massFlow"> {
  objectOf("leak", leak);
  const Q = siOf("throughput", leak.throughput, "throughput");
  const T = siOf("temperature", leak.temperature, "temperature", { above: 0 });
  const M = numberOf("gramsPerMole", leak.gramsPerMole, { min: 1, max: 1000 }) / 1e3;
  return new Quantity((Q * M) / (R * T), gPerYear);
}
