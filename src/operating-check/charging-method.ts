// Superheat, subcooling or the scale? What the charge of this unit can be checked by.
// Follows common practice, no source: no superheat target for inverter and electronic-valve units.
// Does not cover a manual that says otherwise: it decides.
import { objectOf, oneOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { type RunningMode, runningModes } from "./service-ports.ts";
import { type OperatingCheckStatement, say } from "./statements.ts";

/**
 * What sets the flow of refrigerant, and how the compressor runs.
 */
export interface ChargedSystem {
  /** Fixed orifice or capillary, thermostatic valve, or electronic valve. */
  readonly meteringDevice: "orifice" | "thermostatic-valve" | "electronic-valve";
  /** One speed, or an inverter. */
  readonly compressor: "single-speed" | "inverter";
  /** What the unit does. */
  readonly mode: RunningMode;
}

/**
 * How a charge is checked.
 *
 * Source: see {@link chargingMethod}.
 */
export interface ChargingMethod {
  /** By superheat, by subcooling, or by weight alone. */
  readonly method: "superheat" | "subcooling" | "weigh";
  /** Why. */
  readonly reason: OperatingCheckStatement;
}

/**
 * What the charge of a unit can be checked by. Inverter and electronic-valve units hold their superheat
 * whatever the charge: it is weighed. So it is in heating, for which no target is published here.
 *
 * @param system - Metering device, compressor, mode.
 * @returns The method and why.
 * @throws {@link InvalidInputError} when a word is not one of those listed.
 *
 * Cautions: weighing is right for every unit, and the only way for most small splits.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { chargingMethod } from "hvac-install-math/operating-check";
 *
 * const system = { meteringDevice: "orifice", mode: "cooling" } as const;
 * chargingMethod({ ...system, compressor: "single-speed" }).method; // => superheat
 * chargingMethod({ ...system, compressor: "inverter" }).method; // => weigh
 * ```
 */
export function chargingMethod(system: ChargedSystem): ChargingMethod {
  objectOf("system", system);
  const devices = ["orifice", "thermostatic-valve", "electronic-valve"] as const;
  const device = oneOf("meteringDevice", system.meteringDevice, devices);
  const compressor = oneOf("compressor", system.compressor, ["single-speed", "inverter"]);
  const mode = oneOf("mode", system.mode, runningModes);
  if (device === "electronic-valve" || compressor === "inverter") {
    return frozen({ method: "weigh", reason: say("operating-check.no-target") });
  }
  if (mode === "heating") {
    return frozen({ method: "weigh", reason: say("operating-check.no-target-in-heating") });
  }
  return frozen(
    device === "orifice"
      ? { method: "superheat", reason: say("operating-check.by-superheat") }
      : { method: "subcooling", reason: say("operating-check.by-subcooling") },
  );
}
