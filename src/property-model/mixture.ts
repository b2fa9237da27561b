// Which model describes a blend of given composition? Components, reducing parameters, departure functions.
// Follows Lemmon and Jacobsen (2004), doi:10.1063/1.1649997, in the reducing form of Kunz and Wagner (2012).
// Does not cover blends with a pair that nobody fitted; they are refused, not estimated.

import { listOf, numberOf, objectOf, siOf, textOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type BinaryPair, binaryPairs } from "./binary-pairs.ts";
import type { PureFluid } from "./fluid.ts";
import { modelHint } from "./hints.ts";

/**
 * A blend: its components, the mole fractions of the bulk, and the parameters of each pair.
 *
 * Source: Lemmon and Jacobsen (2004), doi:10.1063/1.1649997.
 */
export interface Mixture {
  /** Tells it from pure and pseudo-pure fluids. */
  readonly kind: "mixture";
  /** Name of the blend, for messages. */
  readonly id: string;
  /** The components, in the order of `moleFractions`. */
  readonly components: readonly PureFluid[];
  /** Mole fractions of the bulk; they sum to 1. */
  readonly moleFractions: readonly number[];
  /** Molar mass of the bulk, kg/mol. */
  readonly molarMass: number;
  /** One pair for every two components, in the order 0-1, 0-2, … 1-2, … */
  readonly pairs: readonly BinaryPair[];
}

/** What {@link mixture} needs to know. */
export interface MixtureInput {
  /** Name of the blend, such as `R454B`; for messages only. */
  readonly id?: string | undefined;
  /** Components with their `ratio` of the mass, above 0; together 100 %. */
  readonly components: readonly {
    readonly fluid: PureFluid;
    readonly massFraction: Quantity<"ratio">;
  }[];
  /** Pairs of your own; they go before the library's {@link binaryPairs}. */
  readonly pairs?: readonly BinaryPair[] | undefined;
}

/**
 * A blend of pure fluids by its composition by mass, as ASHRAE 34 gives it.
 *
 * Pairs without a departure function mix by their reducing parameters alone and are less certain; see
 * the `literature` of `mixture.pairs`.
 *
 * @param input - Components with mass fractions that sum to 1 within 1e-6.
 * @returns The blend, for {@link bubblePoint}, {@link dewPoint}, {@link saturation} and {@link stateAt}.
 * @throws {@link InvalidInputError} when the fractions do not sum to 1, a component comes twice, or the
 * parameters of a pair are not known.
 *
 * Source: Lemmon and Jacobsen (2004), doi:10.1063/1.1649997; Kunz and Wagner (2012), doi:10.1021/je300655b.
 *
 * @example
 * ```ts
 * import { R32, R1234yf, mixture } from "hvac-install-math/property-model";
 * import { percent } from "hvac-install-math/quantity";
 *
 * const blend = mixture({
 *   components: [
 *     { fluid: R32, massFraction: percent(68.9) },
 *     { fluid: R1234yf, massFraction: percent(31.1) },
 *   ],
 * });
 * blend.moleFractions[0]?.toFixed(4); // => 0.8292
 * ```
 */
export function mixture(input: MixtureInput): Mixture {
  const { id = "mixture", components, pairs = [] } = objectOf("input", input);
  textOf("id", id);
  listOf("pairs", pairs).forEach((pair, i) => {
    objectOf(`pairs[${i}]`, pair);
  });
  const masses = listOf("components", components).map((component, i) => {
    const { fluid, massFraction } = objectOf(`components[${i}]`, component);
    const { id: name, molarMass } = objectOf(`components[${i}].fluid`, fluid);
    textOf(`components[${i}].fluid.id`, name);
    numberOf(`components[${i}].fluid.molarMass`, molarMass, { above: 0 });
    return siOf(`components[${i}].massFraction`, massFraction, "ratio", { above: 0, max: 1 });
  });
  const total = masses.reduce((sum, mass) => sum + mass, 0);
  numberOf("components", total, {
    min: 1 - 1e-6,
    max: 1 + 1e-6,
    hint: modelHint("property-model.sum-of-fractions"),
  });
  const fluids = components.map(({ fluid }) => fluid);
  const moles = fluids.map((fluid, i) => (masses[i] as number) / fluid.molarMass);
  const allMoles = moles.reduce((sum, n) => sum + n, 0);
  const known = [...pairs, ...binaryPairs];
  const found: BinaryPair[] = [];
  for (const [i, a] of fluids.entries()) {
    for (const b of fluids.slice(i + 1)) {
      const pair = known.find(
        ({ first, second }) =>
          (first === a.id && second === b.id) || (first === b.id && second === a.id),
      );
      if (a.id === b.id || pair === undefined) {
        throw new InvalidInputError({
          argument: "components",
          value: `${a.id} with ${b.id}`,
          allowed: "pairs of different fluids whose mixture parameters are published",
          hint: modelHint("property-model.give-the-pair"),
        });
      }
      found.push(pair);
    }
  }
  return frozen({
    kind: "mixture",
    id,
    components: fluids,
    moleFractions: moles.map((n) => n / allMoles),
    molarMass: total / allMoles,
    pairs: found,
  });
}
