// Which supply is the better one? The same load at several voltages: current, conductor, drop.
// Follows NFPA 70 (2023), 440.32 (125 %), 310.15; IEC 60364-4-43:2008, 433.1.
// Does not cover a unit that is made for one voltage only: the nameplate decides.

import { listOf, numberOf, oneOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { rulesOf } from "./checks.ts";
import { conductorResistance } from "./conductor-impedance.ts";
import { type Connection, connectionOf, type Supply } from "./connection.ts";
import { minimumConductor } from "./minimum-conductor.ts";
import {
  type CircuitRules,
  type RuleFamily,
  ratingAtLeast,
  type SizeOf,
  type WiringOf,
} from "./rules/index.ts";
import { sizesOf } from "./table.ts";
import type { UsableAmpacity } from "./usable-ampacity.ts";
import { type VoltageDrop, voltageDrop } from "./voltage-drop.ts";

/**
 * One supply for a load.
 */
export interface SupplyOption<F extends RuleFamily = RuleFamily> {
  /** The supply. */
  readonly supply: Supply;
  /** Poles and voltage marking of the breaker. */
  readonly connection: Connection;
  /** Current of the load. */
  readonly current: Quantity<"current">;
  /** What the conductor has to carry. */
  readonly ampacity: Quantity<"current">;
  /** Smallest conductor. */
  readonly conductor: UsableAmpacity<F>;
  /** Drop with the smallest conductor, where the length is stated. */
  readonly drop?: VoltageDrop | undefined;
  /** Drop with the same conductor for every supply, where it and the length are stated. */
  readonly dropWithSameConductor?: VoltageDrop | undefined;
}

/**
 * The same load on several supplies, for the advice to use the higher voltage: at twice the voltage it draws
 * half the current, and on the same wire loses a quarter of the percentage.
 *
 * Assumes the same power at every voltage, power factor 1 where none is stated, and one compressor-like load:
 * 125 % of its current (100 % under metric rules).
 *
 * @param input - Rules, power above 0, power factor above 0 up to 1, at least one supply, wiring, and a
 * conductor to compare on.
 * @returns One option per supply, in the same order.
 * @throws {@link InvalidInputError} when a field is not what it should be; {@link OutOfRangeError} beyond the
 * tables.
 *
 * Cautions: a unit runs only on the voltage of its nameplate; for a licensed electrician.
 *
 * Source: NFPA 70 (2023), 440.32, 310.15, chapter 9, table 8.
 *
 * @example
 * ```ts
 * import { compareSupplies, nec2023 } from "hvac-install-math/circuit-protection";
 * import { ampere, ft, percent, volt, watt } from "hvac-install-math/quantity";
 *
 * const [low, high] = compareSupplies({
 *   rules: nec2023,
 *   power: watt(1500),
 *   supplies: [
 *     { voltage: volt(120), phases: 1 },
 *     { voltage: volt(240), phases: 1 },
 *   ],
 *   wiring: { material: "copper", insulation: "75 °C", length: ft(80) },
 *   conductor: "12 AWG",
 * });
 * low?.current.toString(); // => 12.5 A
 * high?.current.toString(); // => 6.25 A
 * low?.dropWithSameConductor?.ratio.toString(percent, 1); // => 3.3 %
 * high?.dropWithSameConductor?.ratio.toString(percent, 3); // => 0.825 %
 * ```
 */
export function compareSupplies<F extends RuleFamily>(input: {
  /** The rule set. */
  readonly rules: CircuitRules<F>;
  /** Power of the load. */
  readonly power: Quantity<"power">;
  /** Its power factor. */
  readonly powerFactor?: number | undefined;
  /** The supplies to compare. */
  readonly supplies: readonly Supply[];
  /** How the cable runs. */
  readonly wiring: WiringOf<F>;
  /** One conductor on which all supplies are compared. */
  readonly conductor?: SizeOf<F> | undefined;
}): readonly SupplyOption<F>[] {
  const rules = rulesOf(input);
  const { supplies, wiring, conductor: same, powerFactor = 1 } = input;
  const power = siOf("power", input.power, "power", { above: 0 });
  numberOf("powerFactor", powerFactor, { min: 0.01, max: 1 });
  if (same !== undefined) oneOf("conductor", same, sizesOf(rules));
  listOf("supplies", supplies, 1000, 1);
  return frozen(
    supplies.map((supply, i) => {
      const connection = connectionOf(rules, supply, `supplies[${i}]`);
      const { voltage, phases } = supply;
      const current = ampere(
        power / (voltage.si * powerFactor * (phases === 3 ? Math.sqrt(3) : 1)),
      );
      const ampacity = ampere(twelveDigits(current.si * rules.ampacityFactor));
      const rating = Math.max(ampacity.si, rules.smallestRating);
      const deviceRating = ampere(ratingAtLeast(rating, rules.ratings.breaker) ?? rating);
      const conductor = minimumConductor({ rules, wiring, phases, ampacity, deviceRating });
      const { length, material, stranding = "stranded" } = wiring;
      const dropOn = (size: SizeOf<F>) =>
        length &&
        voltageDrop({
          current,
          voltage,
          phases,
          length,
          resistance: conductorResistance({ rules, size, material, stranding }),
        });
      const drop = dropOn(conductor.size);
      const dropWithSameConductor = same && dropOn(same);
      return {
        supply,
        connection,
        current,
        ampacity,
        conductor,
        ...(drop && { drop }),
        ...(dropWithSameConductor && { dropWithSameConductor }),
      };
    }),
  );
}
