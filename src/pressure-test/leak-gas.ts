// Molar mass and viscosity of the gases that leak, for the scaling of leaks.
// Viscosity of the vapor at 20 °C and 1 atm; molar masses from ANSI/ASHRAE 34-2022.
// Pressures at rest are the saturation (bubble) pressures at 20 °C of the modules' own equations of state.
// Does not cover vapor near saturation, where viscosity is about 5 % to 10 % higher.

import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kPaa } from "../quantity/units/pressure.ts";

/** What the scaling needs of a gas. */
export interface LeakGas {
  /** Molar mass, g/mol. */
  readonly gramsPerMole: number;
  /** Viscosity, µPa·s. */
  readonly viscosity: number;
  /** Saturation pressure at 20 °C, where it is a refrigerant: the least that a test has to exceed. */
  readonly pressureAtRest?: Quantity<"absolutePressure"> | undefined;
}

/** What the test is made with; apart, so that a verdict does not carry the other gases. */
export const nitrogen: LeakGas = /* @__PURE__ */ frozen({
  gramsPerMole: 28.0134,
  viscosity: 17.57,
});

/**
 * Gases by name. Viscosities were computed with a property library (R32 unconfirmed; the blend within
 * 3 %), that of air is a printed one (18.2 µPa·s). For another gas pass your own numbers.
 *
 * Source: viscosities from leak-testing handbooks and computed values; molar masses of refrigerants
 * ANSI/ASHRAE 34-2022.
 *
 * @example
 * ```ts
 * import { leakGas } from "hvac-install-math/pressure-test";
 *
 * leakGas.R32.gramsPerMole; // => 52.02
 * ```
 */
export const leakGas: Readonly<
  Record<
    "nitrogen" | "air" | "helium" | "R410A" | "R32" | "R22" | "R134a" | "R290" | "R1234yf",
    LeakGas
  >
> = /* @__PURE__ */ (() =>
  frozen({
    nitrogen,
    air: { gramsPerMole: 28.96, viscosity: 18.2 },
    helium: { gramsPerMole: 4.0026, viscosity: 19.62 },
    R410A: { gramsPerMole: 72.6, viscosity: 13.02, pressureAtRest: kPaa(1447.5) },
    R32: { gramsPerMole: 52.02, viscosity: 13.1, pressureAtRest: kPaa(1474.6) },
    R22: { gramsPerMole: 86.5, viscosity: 13.5, pressureAtRest: kPaa(910.0) },
    R134a: { gramsPerMole: 102.03, viscosity: 11.6, pressureAtRest: kPaa(571.7) },
    R290: { gramsPerMole: 44.1, viscosity: 8.0, pressureAtRest: kPaa(836.5) },
    R1234yf: { gramsPerMole: 114.04, viscosity: 12.2, pressureAtRest: kPaa(591.8) },
  }))();
