// How often must the law's leak check be done? The thresholds and intervals of the European Union and Great Britain.
// Follows Regulation (EU) 2024/573, Articles 3, 5 and 7 (text of 20 February 2024, reproduced), and Regulation (EU) No
// 517/2014, Articles 2 and 4, as retained in Great Britain (regulators' guidance).
// Does not cover who may do it, vehicles, switchgear, nor national law beside it; 40 CFR 84 and 82 were not read.

import { type Citation, cite } from "../assessment/assessment.ts";
import { flagOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
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
  /** What counts of the charge as carbon dioxide: its Annex I gases; in Great Britain the whole of a mixture with one. */
  readonly carbonDioxide: Quantity<"mass">;
  /** The charge of HFOs of Annex II, section 1, which counts by its mass in the European Union alone. */
  readonly unsaturated: Quantity<"mass">;
}

/**
 * The leak checks that the law asks for. In the European Union and Northern Ireland, by Regulation (EU) 2024/573: from
 * 5 t of carbon dioxide equivalent of Annex I gases or 1 kg of HFOs (Annex II, section 1), each counted by itself in a
 * mixture; hermetically sealed and so labelled from 10 t or 2 kg, in residential buildings from 3 kg of gas. Every 12
 * months, 6 from 50 t or 10 kg, 3 from 500 t or 100 kg; twice as long with a leak detection system.
 *
 * In Great Britain, by Regulation (EU) No 517/2014 as retained: from 5 t, hermetically sealed and so labelled from 10 t,
 * with the same intervals by 50 t and 500 t. A mixture that contains an Annex I gas counts whole, by the potentials of
 * that regulation; an HFO by itself does not count, and a home is no exception. Its consultation of 2025 is of supply
 * alone.
 *
 * @param system - Refrigerant with its composition, charge of 0 or more, what the unit is, and where it stands.
 * @returns Whether checks are required, and the interval. A split that is joined on site is not hermetically sealed.
 * @throws {@link InvalidInputError} as {@link blendWarmingPotential}, and when a kind, range or region does not fit: of the
 * United States and Australia no text was read.
 *
 * Source: Regulation (EU) 2024/573, Articles 3(9), 5(1) and 7, consolidated text of 20 February 2024; that both figures
 * of a mixture count: German Environment Agency, questions on the F-gas regulation, 2.1. Regulation (EU) No 517/2014,
 * Articles 2(1) and 4, thresholds and intervals by the guidance of the environmental regulators of Scotland and
 * Northern Ireland; what an HFO or a mixture with one counts, from memory, and the answer says so.
 *
 * @example
 * ```ts
 * import { leakCheckInterval } from "hvac-install-math/charge-limit";
 * import { kg } from "hvac-install-math/quantity";
 * import { R32, R454B } from "hvac-install-math/refrigerants";
 *
 * leakCheckInterval({ refrigerant: R32, charge: kg(7.4) }).required; // => false
 * leakCheckInterval({ refrigerant: R32, charge: kg(7.41) }).months; // => 12
 * leakCheckInterval({ refrigerant: R454B, charge: kg(3.22) }).months; // => 12
 * leakCheckInterval({ refrigerant: R454B, charge: kg(3.22), region: "GB" }).required; // => false
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
  /** Whose law: `EU`, also for Northern Ireland, or `GB` for England, Scotland and Wales; `EU` when left out. */
  readonly region?: "EU" | "GB" | undefined;
}): LeakCheckAnswer {
  const { refrigerant, charge, region = "EU" } = objectOf("system", system);
  const { hermeticallySealed = false, residential = false, leakDetection = false } = system;
  const isEU = oneOf("region", region, ["EU", "GB"]) === "EU";
  const sealed = flagOf("hermeticallySealed", hermeticallySealed);
  const home = flagOf("residential", residential);
  const detected = flagOf("leakDetection", leakDetection);
  const mass = siOf("charge", charge, "mass", { min: 0 });
  const { gas, unsaturated, carbonDioxide } = countedOf(refrigerant, mass, isEU);
  const reaches = (tonnes: number, kilograms: number) =>
    isAtLeast(carbonDioxide, tonnes * 1000) || (isEU && isAtLeast(unsaturated, kilograms));
  const smallHome = isEU && home && gas + unsaturated < 3;
  const required = reaches(5, 1) && !(sealed && (!reaches(10, 2) || smallHome));
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
    ...(isEU ? europeanUnion() : greatBritain(unsaturated > 0)),
  });
}

const europeanUnion = (): LawAnswer => ({
  region: "EU",
  from: "2024-03-11",
  readOn: "2024-02-20",
  citation: cite("eu-2024-573", "Articles 3(9), 5(1) and 7"),
  standing: "published",
});

const greatBritain = (withHfo: boolean): LawAnswer => ({
  region: "GB",
  from: "2021-01-01", // retained from the end of 31 December 2020
  readOn: "2026-02",
  citation: cite("eu-517-2014", "Articles 2(1) and 4, as retained in Great Britain"),
  standing: withHfo ? "from-memory" : "secondary", // what an HFO, or a mixture with one, counts
});

const annexI = /^R-?(32|125|134a|143a|152a)$/;
const annexII = /^R-?(1234yf|1234ze\(E\)|1233zd\(E\))$/;

/** Annex I gas and HFOs of a charge, and what of it counts as carbon dioxide, kg. */
function countedOf(refrigerant: Composed, mass: number, isEU: boolean) {
  const { composition } = objectOf("refrigerant", refrigerant);
  const basis = isEU ? "eu-2024-573" : "eu-517-2014";
  const whole = potentialOfBlend("refrigerant.", { composition, basis }).value; // checks the composition
  const share = (of: RegExp) =>
    composition
      .filter(({ designation }) => of.test(designation))
      .reduce((sum, { massPercent }) => sum + massPercent / 100, 0);
  const gas = mass * share(annexI);
  const own = composition
    .filter(({ designation }) => annexI.test(designation))
    .reduce((sum, { designation, massPercent }) => {
      const only = [{ designation, massPercent: 100 }];
      return (
        sum + (mass * massPercent * potentialOfBlend("", { composition: only, basis }).value) / 100
      );
    }, 0);
  return {
    gas,
    unsaturated: mass * share(annexII),
    carbonDioxide: isEU ? own : gas > 0 ? mass * whole : 0,
  };
}
