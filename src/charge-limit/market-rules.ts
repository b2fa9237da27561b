// May equipment with this refrigerant still be placed on the market, installed or imported? Rules with their dates.
// Follows Regulation (EU) 2024/573, Annex IV; 40 CFR 84.54 and its amendments; the Australian import bans.
// Does not cover states, provinces, permits, service and parts; a rule that is not listed here is not said to be absent.
import { type Citation, cite } from "../assessment/assessment.ts";
import { describe, objectOf, oneOf, siOf, textOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kW } from "../quantity/units/electricity.ts";
import { kg } from "../quantity/units/mass.ts";
import type { WarmingBasis } from "../refrigerants/index.ts";
import { blendWarmingPotential, type Composed } from "./carbon-dioxide-equivalent.ts";
import type { LawAnswer } from "./leak-checks.ts";

/** Kinds of equipment that the rules tell apart. Source: the rules. */
export type RuledEquipment =
  | "single-split"
  | "multi-split"
  | "air-to-air-split"
  | "air-to-water-split"
  | "portable"
  | "variable-refrigerant-flow";

/** The date that counts. Source: the rules. */
export type RuledEvent = "placing-on-the-market" | "installation" | "import";

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

interface Row extends LawAnswer {
  readonly event: RuledEvent;
  readonly equipment: readonly RuledEquipment[];
  /** Least potential that is barred; 0 for every F-gas. */
  readonly bars: number;
  /** Whether exactly that potential is barred too. */
  readonly inclusive: boolean;
  readonly basis: WarmingBasis;
  /** Most charge that the rule speaks of, and whether exactly that is spoken of. */
  readonly charge?: readonly [most: Quantity<"mass">, inclusive: boolean] | undefined;
  readonly capacityAtMost?: Quantity<"power"> | undefined;
  readonly capacityAbove?: Quantity<"power"> | undefined;
  readonly exception?: "site-safety" | undefined;
  /** Components made before this day are outside, for installations before or from the other days. */
  readonly older?:
    | {
        readonly made: string;
        readonly until?: string | undefined;
        readonly from?: string | undefined;
      }
    | undefined;
}

const splits = ["single-split", "multi-split", "air-to-air-split", "air-to-water-split"] as const;
const eu = (clause: string, from: string) => ({
  region: "EU" as const,
  event: "placing-on-the-market" as const,
  inclusive: true,
  basis: "eu-2024-573" as const,
  from,
  readOn: "2024-02-20",
  citation: cite("eu-2024-573", clause) as Citation,
  standing: "published" as const,
});
const us = {
  region: "US" as const,
  event: "installation" as const,
  inclusive: true,
  basis: "cfr-40-84" as const,
  bars: 700,
  readOn: "2026-06",
  standing: "published" as const,
};
const au = {
  region: "AU" as const,
  event: "import" as const,
  inclusive: false,
  basis: "ipcc-ar4" as const,
  bars: 750,
  charge: [/* @__PURE__ */ kg(2.6), true] as const,
  readOn: "2025-07",
  citation: cite("au-ozone-2024") as Citation,
  standing: "secondary" as const,
};

/** The rules; made when asked for, so that nothing runs on import. */
const rowsOf = (): readonly Row[] => [
  {
    ...eu("Annex IV(9)(a)", "2025-01-01"),
    equipment: ["single-split", "air-to-air-split", "air-to-water-split"],
    bars: 750,
    charge: [kg(3), false],
  },
  {
    ...eu("Annex IV(9)(b)", "2027-01-01"),
    equipment: ["air-to-water-split"],
    bars: 150,
    capacityAtMost: kW(12),
    exception: "site-safety",
  },
  {
    ...eu("Annex IV(9)(c)", "2029-01-01"),
    equipment: ["single-split", "multi-split", "air-to-air-split"],
    bars: 150,
    capacityAtMost: kW(12),
    exception: "site-safety",
  },
  {
    ...eu("Annex IV(9)(d)", "2035-01-01"),
    equipment: splits,
    bars: 0,
    capacityAtMost: kW(12),
    exception: "site-safety",
  },
  {
    ...eu("Annex IV(9)(e)", "2029-01-01"),
    equipment: splits,
    bars: 750,
    capacityAbove: kW(12),
    exception: "site-safety",
  },
  {
    ...eu("Annex IV(9)(f)", "2033-01-01"),
    equipment: splits,
    bars: 150,
    capacityAbove: kW(12),
    exception: "site-safety",
  },
  { ...eu("Annex IV(8)", "2020-01-01"), equipment: ["portable"], bars: 150 },
  {
    ...us,
    from: "2025-01-01",
    equipment: splits,
    citation: cite("cfr-40-84", "84.54; 88 FR 73098, 88 FR 88825, 91 FR 31284"),
    // 88 FR 88825: grace for a year; 91 FR 31284: without end from its day in force.
    older: { made: "2025-01-01", until: "2026-01-01", from: "2026-07-27" },
  },
  {
    ...us,
    from: "2026-01-01",
    equipment: ["variable-refrigerant-flow"],
    citation: cite("cfr-40-84", "84.54; 89 FR 100381"),
    older: { made: "2026-01-01", until: "2027-01-01" },
  },
  { ...au, from: "2024-07-01", equipment: ["single-split", "portable"] },
  { ...au, from: "2025-07-01", equipment: ["multi-split"] },
  {
    ...au,
    region: "GB",
    event: "placing-on-the-market",
    inclusive: true,
    basis: "eu-517-2014",
    from: "2025-01-01",
    equipment: ["single-split", "air-to-air-split"],
    charge: [kg(3), false],
    readOn: "2026-02",
    citation: cite("eu-517-2014", "Annex III, as retained in Great Britain"),
    standing: "from-memory",
  },
];

/**
 * The rules on what may be placed on the market (EU, Great Britain), installed (US) or imported (AU), as of the text
 * that was read, for equipment with a refrigerant on a date. Each answer carries its date, region, citation and
 * standing, and says whether it bars the refrigerant on that date. An empty list means that no rule of this list
 * applies, never that a thing is lawful.
 *
 * @param equipment - Region, kind, refrigerant, charge above 0, capacity where it is known (a rule that hangs on a
 * capacity that is not stated applies), the date of the event, and in the United States when all components were made.
 * @returns The rules that speak of this equipment, those that do not apply yet included.
 * @throws {@link InvalidInputError} when a date is no year-month-day, or a kind, range or word does not fit.
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
 * marketRules({ ...split, refrigerant: R410A }).some(({ barred }) => barred); // => true
 * marketRules({ ...split, refrigerant: R32 }).some(({ barred }) => barred); // => false
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
}): readonly MarketRule[] {
  const { refrigerant, capacity, componentsMade } = objectOf("equipment", equipment);
  const region = oneOf("region", equipment.region, ["EU", "GB", "US", "AU"]);
  const kind = oneOf("equipment", equipment.equipment, [
    ...splits,
    "portable",
    "variable-refrigerant-flow",
  ]);
  const charge = siOf("charge", equipment.charge, "mass", { above: 0 });
  const power =
    capacity === undefined ? undefined : siOf("capacity", capacity, "power", { above: 0 });
  const date = dayOf("date", equipment.date);
  const made = componentsMade === undefined ? undefined : dayOf("componentsMade", componentsMade);
  const { composition } = objectOf("refrigerant", refrigerant);
  const rows = rowsOf().filter(
    (row) =>
      row.region === region &&
      row.equipment.includes(kind) &&
      (!row.charge ||
        (row.charge[1] ? charge <= row.charge[0].si * (1 + 1e-12) : charge < row.charge[0].si)) &&
      (power === undefined ||
        !row.capacityAtMost ||
        power <= row.capacityAtMost.si * (1 + 1e-12)) &&
      (power === undefined || !row.capacityAbove || power > row.capacityAbove.si * (1 + 1e-12)),
  );
  return frozen(rows.map((row) => answerOf(row, composition, date, made)));
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
    ((older.until !== undefined && date < older.until) ||
      (older.from !== undefined && date >= older.from));
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

/** A day that is one. */
function dayOf(argument: string, given: string): string {
  const text = textOf(argument, given);
  const day = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : undefined;
  if (day && !Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === text) return text;
  throw new InvalidInputError({
    argument,
    value: describe(given),
    allowed: "a day as year-month-day, such as 2025-01-02",
  });
}
