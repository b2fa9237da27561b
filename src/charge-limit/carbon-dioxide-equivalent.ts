// What does the charge weigh as carbon dioxide? Global warming potential of a charge and of a blend.
// Follows Regulation (EU) No 517/2014, Annex IV: mass fractions times the components' potentials.
// Does not cover the duties that law attaches to the figure.

import { describe, listOf, numberOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { Refrigerant, RefrigerantComponent } from "../refrigerants/index.ts";
import { say } from "./statements.ts";

/** Assessment report of the IPCC: AR4 (2007) or AR5 (2013). Source: IPCC. */
export type WarmingReport = "ar4" | "ar5";

// Over 100 years. AR4 as 42 U.S.C. 7675(c) lists them; the HFO and AR5, but for R32, from memory.
const potentials: Readonly<Record<string, readonly [ar4: number, ar5: number]>> = {
  R32: [675, 677],
  R125: [3500, 3170],
  R134a: [1430, 1300],
  R143a: [4470, 4800],
  // AR5 prints "< 1" for the two HFO; 1 is used.
  R1234yf: [4, 1],
  R1234zeE: [7, 1],
};

/**
 * The carbon dioxide that warms as much as a charge would, over 100 years.
 *
 * @param input - Refrigerant, charge of 0 or more, and the report whose potentials apply.
 * @returns The mass of carbon dioxide, in the charge's unit.
 * @throws {@link InvalidInputError} when a kind, range or word does not fit.
 *
 * Source: IPCC AR4 and AR5 as the refrigerant's own data cite them.
 *
 * @example
 * ```ts
 * import { carbonDioxideEquivalent } from "hvac-install-math/charge-limit";
 * import { kg } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * carbonDioxideEquivalent({ refrigerant: R32, charge: kg(1.2), report: "ar4" }).toString(); // => 810 kg
 * ```
 */
export function carbonDioxideEquivalent(input: {
  /** The refrigerant. */
  readonly refrigerant: Pick<Refrigerant, "gwp">;
  /** Total charge. */
  readonly charge: Quantity<"mass">;
  /** Which potentials apply: EU law of 2014 and United States law use AR4. */
  readonly report: WarmingReport;
}): Quantity<"mass"> {
  objectOf("input", input);
  const charge = siOf("charge", input.charge, "mass", { min: 0 });
  const report = oneOf("report", input.report, ["ar4", "ar5"]);
  const gwp = numberOf("refrigerant.gwp", input.refrigerant?.gwp?.[report]?.value, { min: 0 });
  return new Quantity(charge * gwp, input.charge.unit);
}

/**
 * The global warming potential of a blend from its composition: the mean of its components' potentials,
 * weighted by mass.
 *
 * @param input - Composition with shares that make up 100 % within 0.1, and the report that applies.
 * @returns The potential over 100 years, carbon dioxide being 1.
 * @throws {@link InvalidInputError} when a component is not held, a share is not above 0, or the shares do
 * not make up 100 %.
 *
 * Source: Regulation (EU) No 517/2014, Annex IV (method, from memory); 42 U.S.C. 7675(c) (AR4 components).
 *
 * @example
 * ```ts
 * import { blendWarmingPotential } from "hvac-install-math/charge-limit";
 * import { R410A } from "hvac-install-math/refrigerants";
 *
 * blendWarmingPotential({ composition: R410A.composition, report: "ar4" }); // => 2087.5
 * ```
 */
export function blendWarmingPotential(input: {
  /** Components with their share of the mass. */
  readonly composition: readonly RefrigerantComponent[];
  /** Which potentials apply. */
  readonly report: WarmingReport;
}): number {
  objectOf("input", input);
  const column = oneOf("report", input.report, ["ar4", "ar5"]) === "ar4" ? 0 : 1;
  let total = 0;
  let sum = 0;
  listOf("composition", input.composition).forEach((component, i) => {
    const { designation, massPercent } = objectOf(`composition[${i}]`, component);
    const key = typeof designation === "string" ? designation.replace(/[^\w]/g, "") : "";
    const row = Object.hasOwn(potentials, key) ? potentials[key] : undefined;
    if (!row) {
      throw new InvalidInputError({
        argument: `composition[${i}].designation`,
        value: describe(designation),
        allowed: Object.keys(potentials).join(", "),
      });
    }
    const share = numberOf(`composition[${i}].massPercent`, massPercent, { above: 0, max: 100 });
    total += share;
    sum += share * row[column];
  });
  numberOf("composition", total, {
    min: 99.9,
    max: 100.1,
    hint: say("charge-limit.shares-make-100"),
  });
  return Number((sum / 100).toPrecision(12));
}
