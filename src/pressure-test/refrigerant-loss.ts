// What would a leak lose of the refrigerant in service?
// Follows refrigerant-equivalent.ts. Does not cover how it is computed.

import type { Caution } from "../assessment/caution.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { LeakGas } from "./leak-gas.ts";
import type { PressureTestStatement } from "./statements.ts";

/**
 * The same leak as a loss of refrigerant: a range, order of magnitude.
 */
export interface RefrigerantEquivalent {
  /** By the laminar law: the likelier of the two for what a pressure test can show. */
  readonly viscous: Quantity<"massFlow">;
  /** By the molecular law. */
  readonly molecular: Quantity<"massFlow">;
  /** The smaller of the two. */
  readonly low: Quantity<"massFlow">;
  /** The larger of the two. */
  readonly high: Quantity<"massFlow">;
  /** Temperature to which the throughput refers. */
  readonly referenceTemperature: Quantity<"temperature">;
  /** How far the figures can be trusted. */
  readonly cautions: readonly Caution<PressureTestStatement>[];
}

/**
 * The refrigerant that will be in the machine.
 */
export interface RefrigerantInService {
  /** Molar mass and viscosity of its vapor, such as `leakGas.R32`. */
  readonly gas: LeakGas;
  /** Its pressure in the machine, such as the saturation pressure at rest; above the atmosphere. */
  readonly pressure: Quantity<"absolutePressure">;
}
