// What would the same leak pass at other pressures, or of another gas?
// Follows the laminar (viscous) and the molecular flow laws as printed in leak-testing handbooks.
// Does not cover choked or turbulent flow, or liquid at the leak: order of magnitude only.

import { numberOf, objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";

import type { LeakGas } from "./leak-gas.ts";
import { say } from "./statements.ts";

/**
 * A gas on its way through a leak.
 */
export interface LeakingGas {
  /** Pressure inside, absolute. */
  readonly pressure: Quantity<"absolutePressure">;
  /** Pressure outside, absolute; below the one inside. */
  readonly outside: Quantity<"absolutePressure">;
  /** Molar mass in g/mol, above 0. */
  readonly gramsPerMole: number;
  /** Viscosity in µPa·s, above 0. */
  readonly viscosity: number;
}

/**
 * The same leak under both laws; the truth of a small leak lies between them or near one of them.
 *
 * Source: leak-testing handbooks.
 */
export interface ScaledLeak {
  /** Laminar: prefer it for what a pressure test can show, above about 1e-7 Pa·m³/s. */
  readonly viscous: Quantity<"throughput">;
  /** Molecular: for leaks below about 1e-8 Pa·m³/s, and often for real ones up to 1e-5. */
  readonly molecular: Quantity<"throughput">;
}

/**
 * Scales a leak to another pressure and gas, at the same temperature: laminar
 * Q ∝ (p₁² − p₂²)/η, molecular Q ∝ (p₁ − p₂)/√M.
 *
 * @param leak - The known `throughput` (0 or more), the gas and pressures that it was found with (`from`)
 * and those that are wanted (`to`).
 * @returns The throughput under each law: an order of magnitude, not a measurement.
 * @throws {@link InvalidInputError} when a value is missing, of another kind or out of its range, or the
 * pressure outside is not below the one inside.
 *
 * Source: leak-testing handbooks of instrument makers.
 *
 * @example
 * ```ts
 * import { leakGas, scaleLeak } from "hvac-install-math/pressure-test";
 * import { atmCm3PerSecond, kPaa } from "hvac-install-math/quantity";
 *
 * const outside = kPaa(101.325);
 * const { viscous } = scaleLeak({
 *   throughput: atmCm3PerSecond(0.001),
 *   from: { ...leakGas.helium, pressure: kPaa(1013.25), outside },
 *   to: { ...leakGas.helium, pressure: kPaa(2026.5), outside },
 * });
 * viscous.toString(atmCm3PerSecond, 5); // => 0.00403 atm·cm³/s
 * ```
 */
export function scaleLeak(leak: {
  readonly throughput: Quantity<"throughput">;
  readonly from: LeakingGas;
  readonly to: LeakingGas;
}): ScaledLeak {
  objectOf("leak", leak);
  const Q = siOf("throughput", leak.throughput, "throughput", { min: 0 });
  const from = laws("from", leak.from);
  const to = laws("to", leak.to);
  return frozen({
    viscous: new Quantity((Q * to.viscous) / from.viscous, paM3PerS),
    molecular: new Quantity((Q * to.molecular) / from.molecular, paM3PerS),
  });
}

/** (p₁² − p₂²)/η and (p₁ − p₂)/√M. */
/** A gas with its molar mass, 1 to 1000 g/mol, and viscosity, 1 to 1000 µPa·s. Internal. */
export function gasOf(path: string, gas: LeakGas): LeakGas {
  const { gramsPerMole, viscosity } = objectOf(path, gas);
  numberOf(`${path}.gramsPerMole`, gramsPerMole, { min: 1, max: 1000 });
  numberOf(`${path}.viscosity`, viscosity, { min: 1, max: 1000 });
  return gas;
}

function laws(path: string, gas: LeakingGas): { viscous: number; molecular: number } {
  objectOf(path, gas);
  const p2 = siOf(`${path}.outside`, gas.outside, "absolutePressure");
  const p1 = siOf(`${path}.pressure`, gas.pressure, "absolutePressure", {
    above: p2,
    hint: say("pressure-test.gas-leaks-outward"),
  });
  const { gramsPerMole: M, viscosity: eta } = gasOf(path, gas);
  return { viscous: (p1 * p1 - p2 * p2) / eta, molecular: (p1 - p2) / Math.sqrt(M) };
}
