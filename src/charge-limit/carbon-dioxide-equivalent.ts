// What does the charge weigh as carbon dioxide? Global warming potential of a charge and of a blend.
// Follows Regulation (EU) 2024/573, Annex VI, and 40 CFR 84.64: mass fractions times the components' potentials.
// Does not cover the duties that law attaches to the figure: leak-checks.ts and market-rules.ts.
import { type Citation, cite } from "../assessment/assessment.ts";
import { describe, listOf, numberOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import {
  type RefrigerantComponent,
  type WarmingBasis,
  warmingBases,
  warmingPotentials,
} from "../refrigerants/index.ts";
import { say, verbatim } from "./statements.ts";

/** Components with their share of the mass; a refrigerant of `refrigerants` has them. */
export interface Composed {
  /** Components, shares that make up 100 % within 0.1. */
  readonly composition: readonly RefrigerantComponent[];
}

/**
 * A warming potential by a named basis.
 *
 * Source: the basis.
 */
export interface BlendWarmingPotential {
  /** Over 100 years, carbon dioxide being 1; not rounded. */
  readonly value: number;
  /** Read there for every component, or partly from memory. */
  readonly standing: "published" | "from-memory";
  /** Components that the basis lists no value for: EU law counts them as 0, United States law leaves them out. */
  readonly unlisted: readonly string[];
  /** The basis. */
  readonly citation: Citation;
}

const methods: Readonly<Record<WarmingBasis, string>> = {
  "ipcc-ar4": "mean by mass",
  "ipcc-ar5": "mean by mass",
  "ipcc-ar6": "mean by mass",
  "eu-517-2014": "Annex IV",
  "eu-2024-573": "Annex VI",
  "cfr-40-84": "84.64",
};

/**
 * The global warming potential of a refrigerant from its composition: the mean of its components' potentials,
 * weighted by mass. Neither EU nor United States law rounds it, so that the unrounded figure is what is compared with
 * 150, 700 or 750. A component without a value in the law counts as 0 (EU 2024/573, Annex VI) or is left out together
 * with its share (40 CFR 84.64(c)); a report of the IPCC without a value for one cannot answer.
 *
 * @param input - Composition with shares that make up 100 % within 0.1, and the basis that applies.
 * @returns The potential with its standing.
 * @throws {@link InvalidInputError} when a share is not above 0, the shares do not make up 100 %, or the basis has no
 * value: there are no values of IPCC AR4 for HFOs and hydrocarbons.
 *
 * Source: Regulation (EU) 2024/573, Annex VI; Regulation (EU) No 517/2014, Annex IV; 40 CFR 84.64; IPCC AR4 to AR6.
 *
 * @example
 * ```ts
 * import { blendWarmingPotential } from "hvac-install-math/charge-limit";
 * import { R410A, R454B } from "hvac-install-math/refrigerants";
 *
 * blendWarmingPotential({ composition: R410A.composition, basis: "ipcc-ar4" }).value; // => 2087.5
 * blendWarmingPotential({ composition: R454B.composition, basis: "eu-2024-573" }).value.toFixed(2); // => 465.23
 * ```
 */
export function blendWarmingPotential(
  input: Composed & {
    /** Which potentials apply. */
    readonly basis: WarmingBasis;
  },
): BlendWarmingPotential {
  return potentialOfBlend("", objectOf("input", input));
}

/** The same for a composition that stands elsewhere in the input, `at` a path that ends in a dot. Internal. */
export function potentialOfBlend(
  at: string,
  input: Parameters<typeof blendWarmingPotential>[0],
): BlendWarmingPotential {
  const path = `${at}composition`;
  const { composition } = input;
  const basis = oneOf("basis", input.basis, warmingBases);
  const column = warmingBases.indexOf(basis);
  const byLaw = basis === "eu-2024-573" || basis === "cfr-40-84";
  const unlisted: string[] = [];
  let [counted, sum, read] = [0, 0, true];
  requireShares(path, composition);
  composition.forEach(({ designation, massPercent }, i) => {
    const found = potentialOf(designation)?.[column];
    if (found) {
      counted += massPercent;
      sum += massPercent * found[0];
      read &&= found[1] === "published";
    } else if (byLaw && typeof designation === "string") unlisted.push(designation);
    else throw noValue(`${path}[${i}].designation`, designation, basis);
  });
  if (counted === 0) throw noValue(path, unlisted.join(", "), basis);
  const whole = basis === "cfr-40-84" ? counted : 100;
  return frozen({
    value: twelveDigits(sum / whole),
    standing: read ? "published" : "from-memory",
    unlisted,
    citation: cite(basis, methods[basis]),
  });
}

/** Checks components and that their shares make up 100 %, for a composition at a path of the input. Internal. */
export function requireShares(path: string, composition: Composed["composition"]): void {
  let total = 0;
  listOf(path, composition).forEach((component, i) => {
    const { massPercent } = objectOf(`${path}[${i}]`, component);
    total += numberOf(`${path}[${i}].massPercent`, massPercent, { above: 0, max: 100 });
  });
  numberOf(path, total, { min: 99.9, max: 100.1, hint: say("charge-limit.shares-make-100") });
}

function potentialOf(designation: unknown): (typeof warmingPotentials)[string] | undefined {
  const key = typeof designation === "string" ? designation.replace(/[^\w]/g, "") : "";
  return Object.hasOwn(warmingPotentials, key) ? warmingPotentials[key] : undefined;
}

function noValue(argument: string, value: unknown, basis: WarmingBasis): InvalidInputError {
  const column = warmingBases.indexOf(basis);
  const listed = Object.entries(warmingPotentials).filter(([, row]) => row[column]);
  return new InvalidInputError({
    argument,
    value: describe(value),
    allowed: listed.map(([name]) => name).join(", "),
    hint: say("charge-limit.no-value-by-basis", { basis: verbatim(basis) }),
  });
}

/**
 * The carbon dioxide that warms as much as a charge would, over 100 years.
 *
 * @param input - Refrigerant with its composition, charge of 0 or more, and the basis that applies.
 * @returns The mass of carbon dioxide, in the charge's unit.
 * @throws {@link InvalidInputError} as {@link blendWarmingPotential}, and when a kind or range does not fit.
 *
 * Source: see {@link blendWarmingPotential}.
 *
 * @example
 * ```ts
 * import { carbonDioxideEquivalent } from "hvac-install-math/charge-limit";
 * import { kg } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * carbonDioxideEquivalent({ refrigerant: R32, charge: kg(1.2), basis: "eu-2024-573" }).toString(); // => 810 kg
 * ```
 */
export function carbonDioxideEquivalent(input: {
  /** The refrigerant. */
  readonly refrigerant: Composed;
  /** Total charge. */
  readonly charge: Quantity<"mass">;
  /** Which potentials apply. */
  readonly basis: WarmingBasis;
}): Quantity<"mass"> {
  const { refrigerant, charge, basis } = objectOf("input", input);
  const mass = siOf("charge", charge, "mass", { min: 0 });
  const { composition } = objectOf("refrigerant", refrigerant);
  const { value } = potentialOfBlend("refrigerant.", { composition, basis });
  return new Quantity(mass * value, charge.unit);
}
