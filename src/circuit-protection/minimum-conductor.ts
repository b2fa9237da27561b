// Which is the smallest conductor, and how large a device may stand ahead of it?
// Follows NFPA 70 (2023), 240.4(B), (D), (G), 440.35; CSA C22.1, 14-104; IEC 60364-4-43:2008, 433.1.
// Does not cover motor circuits of Article 430, taps, or parallel conductors.

import { oneOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { amperesOf, materialOf, rulesOf } from "./checks.ts";
import type { DeviceKind, EquipmentKind } from "./circuit-kinds.ts";
import type { Material } from "./conductor-size.ts";
import { type Route, routeOf } from "./route.ts";
import {
  type CircuitRules,
  type RuleFamily,
  ratingAtLeast,
  ratingAtMost,
  type SizeOf,
  type Steps,
} from "./rules/index.ts";
import { say } from "./statements.ts";
import { cell, sizesOf, step } from "./table.ts";
import { type AmpacityInput, ampacityOf, type UsableAmpacity } from "./usable-ampacity.ts";

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
 * Source: NFPA 70 (2023), 240.4(B), (D) (from memory in detail); CSA C22.1, 14-104 and table 13; IEC
 * 60364-4-43:2008, 433.1.
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
  readonly device?: DeviceKind | undefined;
}): Quantity<"current"> {
  const rules = rulesOf(input);
  const { device = "breaker" } = input;
  const usable = amperesOf("usable", input.usable);
  const size = oneOf("size", input.size, sizesOf(rules));
  const material = materialOf("material", input.material);
  oneOf("device", device, ["breaker", "fuse"]);
  return ampere(deviceLimit(rules, size, material, usable, device));
}

/** The rating in A. */
function deviceLimit<F extends RuleFamily>(
  rules: CircuitRules<F>,
  size: SizeOf<F>,
  material: Material,
  usable: number,
  device: DeviceKind,
): number {
  const { smallConductors, nextSizeUpTo = 0, ampacityPerRating } = rules;
  const list = rules.ratings[device];
  if (ampacityPerRating) {
    return list.filter((r) => protects(ampacityPerRating[device], r, usable)).at(-1) ?? 0;
  }
  const up = ratingAtLeast(usable, list) ?? Infinity;
  const rating = up <= nextSizeUpTo ? up : (ratingAtMost(usable, list) ?? 0); // 240.4(B); table 13
  const small = smallConductors && cell(smallConductors, size, material); // 240.4(D); 14-104(2)
  return Math.min(rating, small ?? Infinity);
}

/** IEC 60364-4-43, 433.1: In ≤ Iz for a breaker, with a margin for a fuse. */
const protects = (margins: Steps<number>, rating: number, usable: number) =>
  isAtMost(rating * step("deviceRating", margins, rating), usable);

/**
 * What a conductor has to do.
 */
export interface ConductorDemand {
  /** Least ampacity, such as the marked minimum circuit ampacity; more than 0. */
  readonly ampacity: Quantity<"current">;
  /** Kind of the device ahead; a breaker when left out. */
  readonly device?: DeviceKind | undefined;
  /** What the circuit feeds; `motor-compressor` when left out. */
  readonly equipment?: EquipmentKind | undefined;
}

/**
 * Smallest conductor whose usable ampacity is at least the one asked for and, where the device has to
 * protect the conductor, that the device protects.
 *
 * Assumes what {@link usableAmpacity} assumes. The minimum circuit ampacity of a nameplate already holds the
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
  const rules = rulesOf(input);
  const { device = "breaker", equipment = "motor-compressor", wiring, deviceRating } = input;
  const ampacity = amperesOf("ampacity", input.ampacity);
  const rating = deviceRating === undefined ? 0 : amperesOf("deviceRating", deviceRating);
  oneOf("device", device, ["breaker", "fuse"]);
  oneOf("equipment", equipment, ["motor-compressor", "other"]);
  const phases = oneOf("phases", input.phases, [1, 3]);
  const route = routeOf(rules, wiring, phases, rating);
  const demand = { ampacity, rating, device, equipment, material: wiring.material };
  const found = smallestConductor(rules, route, demand);
  if (found) return frozen(found);
  throw beyondTable("ampacity", rules, demand);
}

/** The error of a demand that no conductor of the rules carries. */
export function beyondTable(
  argument: string,
  rules: CircuitRules,
  { ampacity, rating }: PlainDemand,
): OutOfRangeError {
  return new OutOfRangeError({
    argument,
    value: `${ampere(ampacity)}${rating ? ` behind ${ampere(rating)}` : ""}`,
    allowed: `what ${sizesOf(rules).at(-1)} carries under these conditions`,
    hint: say("circuit-protection.read-nameplate-again"),
  });
}

/** The demand on checked figures, in A; a rating of 0 asks for no protection by the device. */
export interface PlainDemand {
  readonly ampacity: number;
  readonly rating: number;
  readonly device: DeviceKind;
  readonly equipment: EquipmentKind;
  readonly material: Material;
}

/** The smallest size that is enough on a route; `undefined` where none is. */
export function smallestConductor<F extends RuleFamily>(
  rules: CircuitRules<F>,
  route: Route,
  demand: PlainDemand,
): UsableAmpacity<F> | undefined {
  for (const size of sizesOf(rules)) {
    const found = ampacityOf(rules, route, size);
    if (found && carries(found, demand) && isProtected(rules, found, demand)) return found;
  }
  return undefined;
}

/** Whether a conductor carries the demand. */
export const carries = ({ usable }: UsableAmpacity, { ampacity }: PlainDemand): boolean =>
  isAtLeast(usable.si, ampacity);

/** Whether a conductor is protected by its device, where that is asked for. */
export function isProtected<F extends RuleFamily>(
  rules: CircuitRules<F>,
  { size, usable }: UsableAmpacity<F>,
  { rating, device, equipment, material }: PlainDemand,
): boolean {
  if (rating === 0 || (equipment !== "other" && !rules.deviceProtectsConductor)) return true;
  const { ampacityPerRating } = rules;
  if (ampacityPerRating) return protects(ampacityPerRating[device], rating, usable.si);
  return rating <= deviceLimit(rules, size, material, usable.si, device);
}
