// How much does a hose, a core or a line let through? Conductance from viscous to molecular flow.
// Follows vacuum handbooks: Hagen-Poiseuille, Knudsen's long-tube molecular flow and his transition formula
// (from memory). Does not cover turbulence, choking, or tubes shorter than ten bores.

import { listOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { literPerSecond, m3PerSecond } from "../quantity/units/flow.ts";

const R = 8.314462618; // J/(mol·K), SI Brochure, 9th ed.

/** Molar mass in kg/mol and viscosity in Pa·s at 20 °C of what is pumped. */
const gases = {
  air: { M: 0.028964, eta: 18.2e-6 }, // vacuum handbooks
  nitrogen: { M: 0.028013, eta: 17.57e-6 }, // computed from the reference equation of state
} as const;

/** Gas that is pumped. */
export type PumpedGas = keyof typeof gases;

/**
 * A round tube, hose or bore through which the system is evacuated.
 */
export interface VacuumTube {
  /** Inner diameter, 0.1 mm to 1 m. Real hose bores are smaller than the nominal size. */
  readonly bore: Quantity<"length">;
  /** Length, 0.1 mm to 1 km. */
  readonly length: Quantity<"length">;
}

/** Options of {@link tubeConductance}. */
export interface ConductanceInput extends VacuumTube {
  /** Mean of the pressures at both ends. */
  readonly meanPressure: Quantity<"absolutePressure">;
  /** Gas temperature. */
  readonly temperature: Quantity<"temperature">;
  /** `air` when left out. */
  readonly gas?: PumpedGas | undefined;
}

/**
 * Conductance of a tube and the kind of flow in it.
 *
 * Source: vacuum handbooks.
 */
export interface Conductance {
  /** By the transition formula, which holds in all regimes. */
  readonly conductance: Quantity<"volumeFlow">;
  /** Viscous part alone, Hagen-Poiseuille. */
  readonly viscous: Quantity<"volumeFlow">;
  /** Molecular part alone, long tube. */
  readonly molecular: Quantity<"volumeFlow">;
  /** Mean free path over bore. */
  readonly knudsenNumber: number;
  /** `viscous` below Kn 0.01, `molecular` above 0.5, `transition` between. */
  readonly regime: "viscous" | "transition" | "molecular";
}

/** Conductance in m³/s of a tube in SI units. */
export function tubeConductanceSi(
  d: number,
  l: number,
  p: number,
  T: number,
  gas: PumpedGas = "air",
): { total: number; viscous: number; molecular: number; Kn: number } {
  const { M, eta } = gases[gas];
  const speed = Math.sqrt((8 * R * T) / (Math.PI * M)); // mean thermal speed
  const viscous = (Math.PI * d ** 4 * p) / (128 * eta * l); // Hagen-Poiseuille
  const molecular = (Math.PI * d ** 3 * speed) / (12 * l); // Knudsen, long tube
  // Knudsen's transition formula in the variable d·p̄ of air at 20 °C, cm·mbar (from memory)
  const x = (d * 100 * p) / 100;
  const total = viscous + (molecular * (1 + 192 * x)) / (1 + 237 * x);
  const freePath = 6.7e-3 / p; // λ·p = 6.7e-3 Pa·m for air, vacuum handbooks
  return { total, viscous, molecular, Kn: freePath / d };
}

/**
 * Conductance of a tube or hose at a mean pressure: how many liters per second of the pressure difference
 * it lets through. At 500 micron a field hose is in the transition near viscous flow, where four times the
 * bore area is much more than four times the flow.
 *
 * Assumes a straight round tube, laminar flow, and the transition formula of air for both gases.
 *
 * @param input - Bore, length, mean pressure (above 0), temperature, gas.
 * @returns The conductance, its viscous and molecular parts, Knudsen number and regime.
 * @throws {@link InvalidInputError} when a value is outside its range.
 *
 * Source: vacuum handbooks (viscous, molecular, λ·p); transition formula and regime limits from memory.
 * A printed form of the viscous law with 228 in place of 128 is a misprint.
 *
 * @example
 * ```ts
 * import { degC, ft, inch, literPerSecond, micron } from "hvac-install-math/quantity";
 * import { tubeConductance } from "hvac-install-math/vacuum-decay";
 *
 * const hose = { bore: inch(0.25), length: ft(3), temperature: degC(20) };
 * const { conductance, regime } = tubeConductance({ ...hose, meanPressure: micron(500) });
 * conductance.toString(literPerSecond, 2); // => 0.19 L/s
 * regime; // => transition
 * ```
 */
export function tubeConductance(input: ConductanceInput): Conductance {
  const { bore, length, meanPressure, temperature, gas = "air" } = objectOf("input", input);
  oneOf("gas", gas, ["air", "nitrogen"]);
  const { total, viscous, molecular, Kn } = tubeConductanceSi(
    siOf("bore", bore, "length", { min: 1e-4, max: 1 }),
    siOf("length", length, "length", { min: 1e-4, max: 1000 }),
    siOf("meanPressure", meanPressure, "absolutePressure", { above: 0, max: 1.2e5 }),
    siOf("temperature", temperature, "temperature", { min: 200, max: 400 }),
    gas,
  );
  const flow = (si: number) => m3PerSecond(si).as(literPerSecond);
  return frozen({
    conductance: flow(total),
    viscous: flow(viscous),
    molecular: flow(molecular),
    knudsenNumber: Kn,
    regime: Kn < 0.01 ? "viscous" : Kn > 0.5 ? "molecular" : "transition",
  });
}

/**
 * The pumping speed that is left at the system behind conductances in series: 1/S_eff = 1/S + Σ 1/C.
 *
 * @param input - Speed of the pump and one or more conductances, each above 0.
 * @returns The effective speed, in the pump's unit.
 * @throws {@link InvalidInputError} when a value is not above 0.
 *
 * Source: vacuum handbooks.
 *
 * @example
 * ```ts
 * import { literPerSecond } from "hvac-install-math/quantity";
 * import { effectivePumpingSpeed } from "hvac-install-math/vacuum-decay";
 *
 * const input = { pump: literPerSecond(50), conductances: [literPerSecond(30)] };
 * effectivePumpingSpeed(input).toString(); // => 18.75 L/s
 * ```
 */
export function effectivePumpingSpeed(input: {
  readonly pump: Quantity<"volumeFlow">;
  readonly conductances: readonly Quantity<"volumeFlow">[];
}): Quantity<"volumeFlow"> {
  const { pump, conductances } = objectOf("input", input);
  const above = { above: 0 };
  const resistance = listOf("conductances", conductances).reduce(
    (sum, one, i) => sum + 1 / siOf(`conductances[${i}]`, one, "volumeFlow", above),
    1 / siOf("pump", pump, "volumeFlow", above),
  );
  return m3PerSecond(1 / resistance).as(pump.unit);
}
