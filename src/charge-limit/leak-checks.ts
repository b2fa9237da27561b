// How often must the law's leak check be done? The thresholds and intervals of the European Union.
// Follows Regulation (EU) 2024/573, Articles 3, 5 and 7, as a reproduction of the text of 20 February 2024 has it.
// Does not cover who may do it, vehicles, switchgear, nor national law beside it.

import { type Citation, cite } from "../assessment/assessment.ts";
import { flagOf, objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { isAtLeast } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { kg } from "../quantity/units/mass.ts";
import { type Composed, potentialOfBlend } from "./carbon-dioxide-equivalent.ts";

/**
 * An answer of law: what it asks, where, by which text, and as of when.
 *
 * Source: the citation that it carries.
 */
export interface LawAnswer {
  /** Where it holds. */
  readonly region: "EU" | "GB" | "US" | "AU";
  /** From which day on, year-month-day. */
  readonly from: string;
  /** State of the text that was read, year-month-day or year-month. */
  readonly readOn: string;
  /** The text. */
  readonly citation: Citation;
  /** How it was come by. */
  readonly standing: "published" | "secondary" | "from-memory";
}

/**
 * Whether a leak check is due, and how often.
 *
 * Source: see {@link leakCheckInterval}.
 */
export interface LeakCheckAnswer extends LawAnswer {
  /** Whether the law asks for checks. */
  readonly required: boolean;
  /** The interval between them; missing where none is asked for. */
  readonly months?: 3 | 6 | 12 | 24 | undefined;
  /** The charge of Annex I gases as carbon dioxide. */
  readonly carbonDioxide: Quantity<"mass">;
  /** The charge of HFOs of Annex II, section 1. */
  readonly unsaturated: Quantity<"mass">;
}

/**
 * The leak checks that Regulation (EU) 2024/573 asks for: from 5 t of carbon dioxide equivalent of Annex I gases or
 * 1 kg of HFOs (Annex II, section 1); hermetically sealed and so labelled from 10 t or 2 kg, in residential buildings
 * from 3 kg of gas. Every 12 months, 6 from 50 t or 10 kg, 3 from 500 t or 100 kg; twice as long with a leak detection
 * system. Which of the two figures of a mixture counts was not found: the stricter does here.
 *
 * @param system - Refrigerant with its composition, charge of 0 or more, and what the unit is.
 * @returns Whether checks are required, and the interval. A split that is joined on site is not hermetically sealed.
 * @throws {@link InvalidInputError} as {@link blendWarmingPotential}, and when a kind or range does not fit.
 *
 * Source: Regulation (EU) 2024/573, Articles 3(9), 5(1) and 7, consolidated text of 20 February 2024.
 *
 * @example
 * ```ts
 * import { leakCheckInterval } from "hvac-install-math/charge-limit";
 * import { kg } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * leakCheckInterval({ refrigerant: R32, charge: kg(7.4) }).required; // => false
 * leakCheckInterval({ refrigerant: R32, charge: kg(7.41) }).months; // => 12
 * ```
 */
export function leakCheckInterval(system: {
  /** The refrigerant. */
  readonly refrigerant: Composed;
  /** Total charge. */
  readonly charge: Quantity<"mass">;
  /** Whether every joint was made in the factory and the label says hermetically sealed; `false` when left out. */
  readonly hermeticallySealed?: boolean | undefined;
  /** Whether it stands in a residential building; `false` when left out. */
  readonly residential?: boolean | undefined;
  /** Whether a leak detection system watches it; `false` when left out. */
  readonly leakDetection?: boolean | undefined;
}): LeakCheckAnswer {
  const { refrigerant, charge } = objectOf("system", system);
  const { hermeticallySealed = false, residential = false, leakDetection = false } = system;
  const sealed = flagOf("hermeticallySealed", hermeticallySealed);
  const home = flagOf("residential", residential);
  const detected = flagOf("leakDetection", leakDetection);
  const mass = siOf("charge", charge, "mass", { min: 0 });
  const { composition } = objectOf("refrigerant", refrigerant);
  potentialOfBlend("refrigerant.", { composition, basis: "eu-2024-573" }); // checks the composition
  const share = (of: RegExp) =>
    composition
      .filter(({ designation }) => of.test(designation))
      .reduce((sum, { massPercent }) => sum + massPercent / 100, 0);
  const gas = mass * share(/^R-?(32|125|134a|143a|152a)$/); // Annex I
  const unsaturated = mass * share(/^R-?(1234yf|1234ze\(E\)|1233zd\(E\))$/); // Annex II, section 1
  const carbonDioxide = composition
    .filter(({ designation }) => /^R-?(32|125|134a|143a|152a)$/.test(designation))
    .reduce((sum, { designation, massPercent }) => {
      const only = [{ designation, massPercent: 100 }];
      const { value } = potentialOfBlend("", { composition: only, basis: "eu-2024-573" });
      return sum + (mass * massPercent * value) / 100;
    }, 0);
  const reaches = (tonnes: number, kilograms: number) =>
    isAtLeast(carbonDioxide, tonnes * 1000) || isAtLeast(unsaturated, kilograms);
  const exempt = sealed && (!reaches(10, 2) || (home && gas + unsaturated < 3));
  const required = reaches(5, 1) && !exempt;
  const months = ((reaches(500, 100) ? 3 : reaches(50, 10) ? 6 : 12) * (detected ? 2 : 1)) as
    | 3
    | 6
    | 12
    | 24;
  return frozen({
    required,
    ...(required && { months }),
    carbonDioxide: new Quantity(carbonDioxide, charge.unit),
    unsaturated: new Quantity(unsaturated, kg),
    region: "EU",
    from: "2024-03-11",
    readOn: "2024-02-20",
    citation: cite("eu-2024-573", "Articles 3(9), 5(1) and 7"),
    standing: "published",
  });
}
