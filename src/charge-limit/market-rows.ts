// Which rules say what may be placed on the market, installed or imported? One row each, with its dates. Data.
// Follows Regulation (EU) 2024/573, Annex IV; 40 CFR 84.54 and its amendments; the Australian import bans.
// Does not cover states, provinces, permits, service and parts; a rule that is not listed here is not said to be absent.
import { type Citation, cite } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kW } from "../quantity/units/electricity.ts";
import { kg } from "../quantity/units/mass.ts";
import type { WarmingBasis } from "../refrigerants/index.ts";
import type { LawAnswer } from "./leak-checks.ts";

/** Kinds of equipment that the rules tell apart. Source: the rules. */
export type RuledEquipment =
  | "single-split"
  | "multi-split"
  | "air-to-air-split"
  | "air-to-water-split"
  | "portable"
  | "self-contained"
  | "variable-refrigerant-flow";

/** The date that counts. Source: the rules. */
export type RuledEvent =
  | "placing-on-the-market"
  | "installation"
  | "import"
  | "manufacture-or-import";

/** One rule. */
export interface Row extends LawAnswer {
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
        readonly until: string;
        readonly from?: string | undefined;
      }
    | undefined;
}

export const splits = [
  "single-split",
  "multi-split",
  "air-to-air-split",
  "air-to-water-split",
] as const;
const selfContained = ["self-contained"] as const;
/** State of the texts that were read, by region: year-month-day, or year-month. */
export const readOnOf: Readonly<Record<LawAnswer["region"], string>> = {
  EU: "2024-02-20",
  GB: "2026-02",
  US: "2026-06",
  AU: "2025-07",
};

const eu = (clause: string, from: string) => ({
  region: "EU" as const,
  event: "placing-on-the-market" as const,
  inclusive: true,
  basis: "eu-2024-573" as const,
  from,
  readOn: readOnOf.EU,
  citation: cite("eu-2024-573", clause) as Citation,
  standing: "published" as const,
});
const us = {
  region: "US" as const,
  event: "installation" as const,
  inclusive: true,
  basis: "cfr-40-84" as const,
  bars: 700,
  readOn: readOnOf.US,
  standing: "published" as const,
};
const au = {
  region: "AU" as const,
  event: "import" as const,
  inclusive: false,
  basis: "ipcc-ar4" as const,
  bars: 750,
  charge: [/* @__PURE__ */ kg(2.6), true] as const,
  readOn: readOnOf.AU,
  citation: cite("au-ozone-2024") as Citation,
  standing: "secondary" as const,
};

/** The rules; made when asked for, so that nothing runs on import. */
export const rowsOf = (): readonly Row[] => [
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
  // Monoblocs and other self-contained units; where safety forbids less than 150, below 750.
  {
    ...eu("Annex IV(8)", "2027-01-01"),
    equipment: selfContained,
    bars: 150,
    capacityAtMost: kW(12),
    exception: "site-safety",
  },
  {
    ...eu("Annex IV(8)", "2032-01-01"),
    equipment: selfContained,
    bars: 0,
    capacityAtMost: kW(12),
    exception: "site-safety",
  },
  {
    ...eu("Annex IV(8)", "2027-01-01"),
    equipment: selfContained,
    bars: 150,
    capacityAbove: kW(12),
    capacityAtMost: kW(50),
    exception: "site-safety",
  },
  {
    ...eu("Annex IV(8)", "2030-01-01"),
    equipment: selfContained,
    bars: 150,
    capacityAbove: kW(50),
    exception: "site-safety",
  },
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
    event: "manufacture-or-import",
    from: "2025-01-01",
    equipment: [...selfContained, "portable"],
    citation: cite("cfr-40-84", "84.54; 88 FR 73098"),
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
    readOn: readOnOf.GB,
    citation: cite("eu-517-2014", "Annex III, as retained in Great Britain"),
    standing: "from-memory",
  },
];
