// May equipment with this refrigerant still be placed on the market, installed or imported? Rules with their dates.
// Follows the rows of market-rows.ts.
// Does not cover states, provinces, permits, service and parts; a rule that is not listed here is not said to be absent.

import { type Caution, caution } from "../assessment/caution.ts";
import { dayOf, objectOf, oneOf, siOf, textOf } from "../quantity/check.ts";
import type { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { WarmingBasis } from "../refrigerants/index.ts";
import {
  blendWarmingPotential,
  type Composed,
  requireShares,
} from "./carbon-dioxide-equivalent.ts";
import type { LawAnswer } from "./leak-checks.ts";
import {
  type Row,
  type RuledEquipment,
  type RuledEvent,
  readOnOf,
  rowsOf,
  splits,
} from "./market-rows.ts";
import { type ChargeLimitStatement, say, verbatim } from "./statements.ts";

/**
 * A rule that applies to equipment.
 *
 * Source: see {@link marketRules}.
 */
export interface MarketRule extends LawAnswer {
  /** What it dates by. */
  readonly event: RuledEvent;
  /** Potentials have to be below this; missing where no F-gas is allowed or only the mass counts. */
  readonly below?: number | undefined;
  /** The potential by the rule's basis; missing where the basis has none. */
  readonly potential?: number | undefined;
  /** Whether the rule bars this refrigerant on the date asked about. */
  readonly barred: boolean;
  /** `site-safety`: not where safety requirements at the site forbid what is allowed instead. */
  readonly exception?: "site-safety" | undefined;
}

/**
 * The rules of a region that speak of equipment, and how new they are.
 *
 * Source: see {@link marketRules}.
 */
export interface MarketAnswer {
  /** Where they hold. */
  readonly region: LawAnswer["region"];
  /** State of the texts that were read, year-month-day or year-month. */
  readonly readOn: string;
  /** The rules, those that do not apply yet included; none means that none of this list applies. */
  readonly rules: readonly MarketRule[];
  /** A finding where the date lies after that state: the law may have changed since. */
  readonly cautions: readonly Caution<ChargeLimitStatement>[];
}

/**
 * The rules on what may be placed on the market (EU, Great Britain), installed (US) or imported (AU), as of the text
 * that was read, for equipment with a refrigerant on a date. Each answer carries its date, region, citation and
 * standing, and says whether it bars the refrigerant on that date. An empty list means that no rule of this list
 * applies, never that a thing is lawful. A date after the state of the texts that were read gets a finding.
 *
 * @param equipment - Region, kind, refrigerant, charge above 0, capacity where it is known (a rule that hangs on a
 * capacity that is not stated applies), the date of the event, and in the United States when all components were made.
 * @returns The rules that speak of this equipment, those that do not apply yet included, the state of the texts, and a
 * finding where the date lies after it.
 * @throws {@link InvalidInputError} when a date is no year-month-day, shares do not make up 100 %, or a kind, range or
 * word does not fit.
 *
 * Cautions: law changes, and states, provinces and permits may be stricter: look up the text in force.
 *
 * Source: Regulation (EU) 2024/573, Annex IV (consolidated 20 February 2024); 40 CFR 84.54 with 88 FR 73098,
 * 88 FR 88825, 89 FR 100381 and 91 FR 31284; the Australian licensing body and trade press (July 2025).
 *
 * @example
 * ```ts
 * import { marketRules } from "hvac-install-math/charge-limit";
 * import { kg } from "hvac-install-math/quantity";
 * import { R32, R410A } from "hvac-install-math/refrigerants";
 *
 * const split = { region: "EU", equipment: "single-split", charge: kg(1.1), date: "2025-01-02" } as const;
 * marketRules({ ...split, refrigerant: R410A }).rules.some(({ barred }) => barred); // => true
 * marketRules({ ...split, refrigerant: R32 }).rules.some(({ barred }) => barred); // => false
 * marketRules({ ...split, refrigerant: R32 }).cautions[0]?.code; // => charge-limit.market-rules-older
 * ```
 */
export function marketRules(equipment: {
  /** Where. */
  readonly region: LawAnswer["region"];
  /** What. */
  readonly equipment: RuledEquipment;
  /** The refrigerant. */
  readonly refrigerant: Composed;
  /** Total charge. */
  readonly charge: Quantity<"mass">;
  /** Rated cooling capacity. */
  readonly capacity?: Quantity<"power"> | undefined;
  /** Day of the event that the region counts by, year-month-day. */
  readonly date: string;
  /** Day on which the last of all components was made, year-month-day. */
  readonly componentsMade?: string | undefined;
}): MarketAnswer {
  const { refrigerant, capacity, componentsMade } = objectOf("equipment", equipment);
  const region = oneOf("region", equipment.region, ["EU", "GB", "US", "AU"]);
  const kind = oneOf("equipment", equipment.equipment, [
    ...splits,
    "portable",
    "self-contained",
    "variable-refrigerant-flow",
  ]);
  const charge = siOf("charge", equipment.charge, "mass", { above: 0 });
  const power =
    capacity === undefined ? undefined : siOf("capacity", capacity, "power", { above: 0 });
  const date = dayOf("date", equipment.date);
  const made = componentsMade === undefined ? undefined : dayOf("componentsMade", componentsMade);
  const { composition } = objectOf("refrigerant", refrigerant);
  requireShares("refrigerant.composition", composition);
  composition.forEach(({ designation }, i) => {
    textOf(`refrigerant.composition[${i}].designation`, designation);
  });
  const rows = rowsOf().filter(
    (row) =>
      row.region === region &&
      row.equipment.includes(kind) &&
      (!row.charge ||
        (row.charge[1]
          ? isAtMost(charge, row.charge[0].si)
          : !isAtLeast(charge, row.charge[0].si))) &&
      (power === undefined || !row.capacityAtMost || isAtMost(power, row.capacityAtMost.si)) &&
      (power === undefined || !row.capacityAbove || !isAtMost(power, row.capacityAbove.si)),
  );
  const readOn = readOnOf[region];
  // A month counts whole: only a later month is after it.
  const later = date.slice(0, readOn.length) > readOn;
  const days = { reviewed: verbatim(readOn), date: verbatim(date) };
  return frozen({
    region,
    readOn,
    rules: rows.map((row) => answerOf(row, composition, date, made)),
    cautions: later ? [caution("finding", say("charge-limit.market-rules-older", days))] : [],
  });
}

function answerOf(
  row: Row,
  composition: Composed["composition"],
  date: string,
  made: string | undefined,
): MarketRule {
  const { region, event, from, readOn, citation, standing, bars, inclusive, exception } = row;
  const potential = potentialOf(composition, row.basis);
  const high = potential !== undefined && (inclusive ? potential >= bars : potential > bars);
  const fluorinated = composition.some(({ designation }) =>
    /^R-?(22|32|125|134a|143a|152a|1234yf|1234ze\(E\)|1233zd\(E\))$/.test(designation),
  );
  const { older } = row;
  const outside =
    older !== undefined &&
    made !== undefined &&
    made < older.made &&
    (date < older.until || (older.from !== undefined && date >= older.from));
  return {
    region,
    event,
    from,
    readOn,
    citation,
    standing,
    ...(bars > 0 && { below: bars }),
    ...(potential !== undefined && { potential }),
    ...(exception && { exception }),
    barred: date >= from && !outside && fluorinated && (bars === 0 || high),
  };
}

/** The potential by a basis; nothing where the basis has none. */
function potentialOf(composition: Composed["composition"], basis: WarmingBasis) {
  try {
    return blendWarmingPotential({ composition, basis }).value;
  } catch (error) {
    if ((error as InvalidInputError).argument.startsWith("composition")) return undefined;
    throw error;
  }
}
