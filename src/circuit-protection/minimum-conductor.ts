// Which is the smallest conductor, and how large a device may stand ahead of it?
// Follows NFPA 70 (2023), 240.4(B), (D), (G), 440.35; IEC 60364-4-43:2008, 433.1.
// Does not cover motor circuits of Article 430, taps, or parallel conductors.
import { oneOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import type { Material } from "./conductor-size.ts";
import type { CircuitRules, RuleFamily, SizeOf } from "./rules/circuit-rules.ts";
import { ratingAtLeast, ratingAtMost } from "./standard-ratings.ts";
import { cell, sizesOf, step } from "./table.ts";
import { type AmpacityInput, ampacities, type UsableAmpacity } from "./usable-ampacity.ts";

/**
 * `motor-compressor`: Article 440, where the unit's own overload protects the conductors. `other`: heaters,
 * air handlers with heat and the like, whose conductors the device protects.
 *
 * Source: NFPA 70 (2023), 240.4(G).
 */
export type EquipmentKind = "motor-compressor" | "other";

/** Fuse or breaker. Source: none; the library's own type. */
export type DeviceKind = "breaker" | "fuse";

/**
 * Largest device that protects a conductor of a general circuit: the next standard size above its ampacity
 * up to 800 A, and never more than the limit for small conductors. Under rules where the device always
 * protects the conductor, the largest current rating that the ampacity allows.
 *
 * Assumes a circuit that is not for several cord-and-plug outlets.
 *
 * @param input - Rules, size, material, usable ampacity above 0, kind of device (a breaker when left out).
 * @returns The largest rating.
 * @throws {@link InvalidInputError} when the ampacity is not above 0 or the size is not of the rules.
 *
 * Cautions: not a step above a marked maximum; for a licensed electrician.
 *
 * Source: NFPA 70 (2023), 240.4(B), (D) (from memory in detail); IEC 60364-4-43:2008, 433.1.
 *
 * @example
 * ```ts
 * import { largestDeviceOnConductor, nec2023 } from "hvac-install-math/circuit-protection";
 * import { ampere } from "hvac-install-math/quantity";
 *
 * const usable = ampere(55);
 * const input = { rules: nec2023, size: "6 AWG", material: "copper", usable } as const;
 * largestDeviceOnConductor(input).toString(); // => 60 A
 * ```
 */
export function largestDeviceOnConductor<F extends RuleFamily>(input: {
  /** The rule set. */
  readonly rules: CircuitRules<F>;
  /** The size. */
  readonly size: SizeOf<F>;
  /** The material. */
  readonly material: Material;
  /** What the conductor carries as it runs. */
  readonly usable: Quantity<"current">;
  /** Fuse or breaker. */
  readonly device?: DeviceKind;
}): Quantity<"current"> {
  const { rules, material, device = "breaker" } = input;
  const usable = siOf("usable", input.usable, "current", { above: 0 });
  const size = oneOf("size", input.size, sizesOf(rules));
  const { ampacityPerRating, smallConductors, nextSizeUpTo = 0 } = rules;
  const list = rules.ratings[oneOf("device", device, ["breaker", "fuse"])];
  if (ampacityPerRating) {
    const fits = list.filter(
      (r) => r * step("device", ampacityPerRating[device], r) <= usable + 1e-9,
    );
    return ampere(fits.at(-1) ?? 0);
  }
  const up = ratingAtLeast(usable, list) ?? Number.POSITIVE_INFINITY;
  const rating = up <= nextSizeUpTo ? up : (ratingAtMost(usable, list) ?? 0);
  const small = smallConductors && cell(smallConductors, size, material);
  return ampere(Math.min(rating, small ?? Number.POSITIVE_INFINITY));
}

/**
 * Smallest conductor whose usable ampacity is at least the one asked for and, where the device has to
 * protect the conductor, that the device protects.
 *
 * Assumes what {@link usableAmpacity} assumes. The minimum circuit ampacity of a plate already holds the
 * 125 %: it is not multiplied again.
 *
 * @param input - Rules, wiring, phases, ampacity above 0, device rating and kind, equipment
 * (`motor-compressor` when left out).
 * @returns The size with its usable ampacity and the steps.
 * @throws {@link OutOfRangeError} when no size of the table is enough, and as {@link usableAmpacity}.
 *
 * Cautions: for a licensed electrician; never below the marked minimum circuit ampacity.
 *
 * Source: NFPA 70 (2023), 440.35, 240.4; IEC 60364-4-43:2008, 433.1.
 *
 * @example
 * ```ts
 * import { minimumConductor, nec2023 } from "hvac-install-math/circuit-protection";
 * import { ampere } from "hvac-install-math/quantity";
 *
 * const conductor = minimumConductor({
 *   rules: nec2023,
 *   wiring: { material: "copper", insulation: "75 °C", terminations: "75 °C" },
 *   phases: 1,
 *   ampacity: ampere(31.4),
 *   deviceRating: ampere(50),
 * });
 * conductor.size; // => 10 AWG
 * ```
 */
export function minimumConductor<F extends RuleFamily>(
  input: AmpacityInput<F> & ConductorDemand,
): UsableAmpacity<F> {
  siOf("ampacity", input.ampacity, "current", { above: 0 });
  const found = ampacities(input).find((ampacity) => isEnough(input, ampacity));
  if (found) return found;
  throw new OutOfRangeError({
    argument: "ampacity",
    value: `${input.ampacity}${input.deviceRating ? ` behind ${input.deviceRating}` : ""}`,
    allowed: `what ${sizesOf(input.rules).at(-1)} carries under these conditions`,
  });
}

/**
 * What a conductor has to do.
 *
 * Source: none; the library's own type.
 */
export interface ConductorDemand {
  /** Least ampacity, such as the marked minimum circuit ampacity; more than 0. */
  readonly ampacity: Quantity<"current">;
  /** Kind of the device ahead; a breaker when left out. */
  readonly device?: DeviceKind;
  /** What the circuit feeds; `motor-compressor` when left out. */
  readonly equipment?: EquipmentKind;
}

/** Whether a conductor carries the demand and is protected by its device where that is asked for. */
export function isEnough<F extends RuleFamily>(
  input: AmpacityInput<F> & ConductorDemand,
  { size, usable }: UsableAmpacity<F>,
): boolean {
  const { rules, deviceRating, device = "breaker", equipment = "motor-compressor" } = input;
  if (usable.si < input.ampacity.si - 1e-9) return false;
  oneOf("equipment", equipment, ["motor-compressor", "other"]);
  if (!deviceRating || (equipment !== "other" && !rules.deviceProtectsConductor)) return true;
  const { material } = input.wiring;
  if (rules.ampacityPerRating) return protects(rules, device, deviceRating.si, usable.si);
  return deviceRating.si <= largestDeviceOnConductor({ rules, size, material, usable, device }).si;
}

/** IEC 60364-4-43, 433.1: In ≤ Iz for a breaker, a margin more for a fuse. */
function protects(
  rules: CircuitRules,
  device: DeviceKind,
  rating: number,
  usable: number,
): boolean {
  const { ampacityPerRating } = rules;
  return (
    !ampacityPerRating ||
    rating * step("device", ampacityPerRating[device], rating) <= usable + 1e-9
  );
}
