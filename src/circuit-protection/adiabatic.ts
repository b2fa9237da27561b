// Which protective conductor bears the heat of a fault? The adiabatic equation.
// Follows IEC 60364-5-54:2011, 543.1.2 and annex A; BS 7671, 543.1.3, table 54.2 to 54.4.
// Does not cover faults that last longer than 5 s.

import { flagOf, numberOf, objectOf, oneOf, refuse, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { choose } from "../quantity/hints.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { materialOf } from "./checks.ts";
import type { Material } from "./conductor-size.ts";

/**
 * The heat of a fault to ground: a current and the time until it is cleared, or the device's let-through energy.
 *
 * Source: IEC 60364-5-54:2011, 543.1.2.
 */
export type FaultEnergy =
  | {
      /** Fault current, more than 0, from the impedance of the fault loop. */
      readonly current: Quantity<"current">;
      /** Time until the device clears it, more than 0 up to 5 s. */
      readonly clearingTime: Quantity<"duration">;
    }
  | {
      /** Let-through energy of the device, I²t, in A²s, more than 0. */
      readonly letThrough: number;
    };

/** What bears it. Source: IEC 60364-5-54:2011, tables A.54.2 and A.54.4. */
export interface ProtectiveConductor {
  /** Material. */
  readonly material: Material;
  /** Insulation that touches it: "70 °C" for PVC (to 160 °C), "90 °C" for XLPE (to 250 °C). */
  readonly insulation: "70 °C" | "90 °C";
  /** Whether it runs apart from the cable, so that it starts at 30 °C; a core of the cable is assumed. */
  readonly separate?: boolean | undefined;
}

/**
 * Smallest cross-section of a protective conductor by the adiabatic equation, S = √(I²t)/k.
 *
 * Assumes that no heat leaves the conductor, and up to 300 mm² of PVC cable (160 °C).
 *
 * @param input - The fault, and the conductor's material, insulation and place.
 * @returns The area in mm², not rounded to a made size, and the factor k.
 * @throws {@link InvalidInputError} when the fault is not stated, lasts longer than 5 s, or a figure is not above 0.
 *
 * Cautions: the fault current comes from a measured or calculated loop impedance; for a licensed electrician.
 *
 * Source: IEC 60364-5-54:2011, 543.1.2 and annex A (k from the material's constants, rounded as printed).
 *
 * @example
 * ```ts
 * import { protectiveConductorArea } from "hvac-install-math/circuit-protection";
 * import { ampere, second } from "hvac-install-math/quantity";
 *
 * const fault = { current: ampere(1000), clearingTime: second(0.4) };
 * const found = protectiveConductorArea({ fault, conductor: { material: "copper", insulation: "70 °C" } });
 * found.factor; // => 115
 * found.area.toFixed(2); // => 5.50
 * ```
 */
export function protectiveConductorArea(input: {
  /** The fault. */
  readonly fault: FaultEnergy;
  /** The conductor. */
  readonly conductor: ProtectiveConductor;
}): {
  /** Least area in mm². */
  readonly area: number;
  /** The factor k of material and temperatures, A·√s/mm². */
  readonly factor: number;
} {
  const { fault, conductor } = objectOf("input", input);
  const energy = energyOf("fault", fault);
  const { insulation, separate = false } = objectOf("conductor", conductor);
  materialOf("conductor.material", conductor.material);
  oneOf("conductor.insulation", insulation, ["70 °C", "90 °C"]);
  flagOf("conductor.separate", separate);
  const factor = factorOf({ ...conductor, separate });
  return frozen({ area: Math.sqrt(energy) / factor, factor });
}

/** The factor k of a conductor. */
export function factorOf({ material, insulation, separate }: ProtectiveConductor): number {
  const hot = insulation === "90 °C" ? 90 : 70;
  return adiabaticFactor(material, separate ? 30 : hot, hot === 90 ? 250 : 160);
}

/** I²t in A²s. */
export function energyOf(argument: string, fault: FaultEnergy): number {
  objectOf(argument, fault);
  if ("letThrough" in fault)
    return numberOf(`${argument}.letThrough`, fault.letThrough, { above: 0 });
  if (!("current" in fault)) {
    const allowed = "a current with its clearing time, or letThrough";
    refuse(argument, fault, allowed, choose(["current", "letThrough"], "one-of"));
  }
  const current = siOf(`${argument}.current`, fault.current, "current", { above: 0 });
  const limits = { above: 0, max: 5 };
  return current ** 2 * siOf(`${argument}.clearingTime`, fault.clearingTime, "duration", limits);
}

/** k = K·√(ln((β + θf)/(β + θi))), annex A, to whole numbers as printed. K and β: copper, aluminum. */
export function adiabaticFactor(material: Material, from: number, to: number): number {
  const [k, beta] = material === "copper" ? [226, 234.5] : [148, 228];
  return Math.round(k * Math.sqrt(Math.log((beta + to) / (beta + from))));
}
