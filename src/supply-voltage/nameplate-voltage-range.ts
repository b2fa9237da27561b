// Between which voltages may the unit run? The printed range, or the rated voltages ±10 %.
// Follows NEMA MG 1, 12.44 (±10 % of the motor's rated voltage at rated frequency).
// Does not cover a variation of the frequency, which takes its share of the 10 %.

import { objectOf, oneOf, refuse, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { volt } from "../quantity/units/electricity.ts";
import type { VoltageRange } from "./standards/index.ts";
import { say } from "./statements.ts";

/**
 * What the nameplate says about the voltage.
 */
export interface VoltageNameplate {
  /** Rated voltage, or both of a dual plate: `[volt(208), volt(230)]` for "208/230". */
  readonly rated: Quantity<"voltage"> | readonly Quantity<"voltage">[];
  /** The range that the maker prints; it wins over any rule. */
  readonly range?: VoltageRange | undefined;
  /** Phases that the plate asks for. */
  readonly phases?: 1 | 3 | undefined;
  /** Current at which the unit runs at full load: rated-load or full-load amperes, not MCA. */
  readonly ratedCurrent?: Quantity<"current"> | undefined;
}

/**
 * The voltages that a nameplate allows.
 *
 * Source: NEMA MG 1, 12.44.
 */
export interface NameplateVoltageRange extends VoltageRange {
  /** Whether the maker printed the range. */
  readonly printed: boolean;
  /** Voltage above which the electronics are at risk: 260 V on a 230 V unit, in proportion on others. */
  readonly ceiling: Quantity<"voltage">;
  /** The rated voltages, the lowest first. */
  readonly rated: readonly Quantity<"voltage">[];
}

/**
 * Common practice, no source: 200/240 is the widest pair that one connection serves; 220/380 or 230/460 are two
 * connections, of which one is made.
 */
const widestRatedPair = 1.25;
/** Common practice, no source: no compressor's printed range goes further below or above its rated voltage. */
const furthestBelow = 0.5;
const furthestAbove = 1.5;

/** Common practice, no source: a 230 V board is at risk above about 260 V. */
const ceilingRatio = 260 / 230;

/**
 * The voltages that a nameplate allows: the printed range where there is one, else the lowest rated
 * voltage less 10 % to the highest plus 10 %, in whole volts as makers print it. So a 208/230 plate reads
 * 187 V (208 − 10 %) to 253 V (230 + 10 %); the 197 V of some makers is 208 − 5 %, not 230 − 10 %.
 *
 * @param nameplate - Rated voltage or voltages above 0, within 25 % of each other: of a plate for two
 * connections (230/460) the one that is made. The printed range if any, from half the lowest to one and a half
 * times the highest of them.
 * @returns The range, the ceiling and whether it was printed.
 * @throws {@link InvalidInputError} when no voltage is given, two are those of two connections, or the printed
 * range does not hold them or is wider than a plate's can be.
 *
 * Cautions: the nameplate and the maker's instructions come before this rule.
 *
 * Source: NEMA MG 1, 12.44 (clause from memory); the ceiling is common practice, no source.
 *
 * @example
 * ```ts
 * import { volt } from "hvac-install-math/quantity";
 * import { nameplateVoltageRange } from "hvac-install-math/supply-voltage";
 *
 * const range = nameplateVoltageRange({ rated: [volt(208), volt(230)] });
 * `${range.minimum} to ${range.maximum}`; // => 187 V to 253 V
 * range.ceiling.toString(); // => 260 V
 * ```
 */
export function nameplateVoltageRange(nameplate: VoltageNameplate): NameplateVoltageRange {
  const rated = [nameplate?.rated].flat() as Quantity<"voltage">[];
  const volts = rated
    .map((one, i) => siOf(`nameplate.rated[${i}]`, one, "voltage", { above: 0 }))
    .sort((a, b) => a - b);
  const [lowest = 0] = volts;
  const highest = volts.at(-1) ?? 0;
  if (highest === 0) {
    refuse("nameplate.rated", undefined, "at least one voltage", "voltage");
  }
  if (highest > widestRatedPair * lowest) {
    throw new InvalidInputError({
      argument: "nameplate.rated",
      value: `${lowest} V and ${highest} V`,
      allowed: "voltages within 25 % of each other",
      hint: say("supply-voltage.state-connection"),
    });
  }
  let minimum = Math.round(0.9 * lowest + 1e-9); // MG 1, 12.44: −10 %
  let maximum = Math.round(1.1 * highest + 1e-9); // MG 1, 12.44: +10 %
  const { range, phases, ratedCurrent } = nameplate;
  if (phases !== undefined) oneOf("nameplate.phases", phases, [1, 3]);
  if (ratedCurrent !== undefined) {
    siOf("nameplate.ratedCurrent", ratedCurrent, "current", { min: 0 });
  }
  if (range !== undefined) {
    objectOf("nameplate.range", range);
    minimum = siOf("nameplate.range.minimum", range.minimum, "voltage", {
      min: furthestBelow * lowest,
      max: lowest,
    });
    maximum = siOf("nameplate.range.maximum", range.maximum, "voltage", {
      min: highest,
      max: furthestAbove * highest,
    });
  }
  return frozen({
    minimum: volt(minimum),
    maximum: volt(maximum),
    printed: range !== undefined,
    ceiling: volt(Math.max(maximum, Math.round(highest * ceilingRatio))),
    rated: volts.map(volt),
  });
}
