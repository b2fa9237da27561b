// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the dangers that modules share: assessment/safety.ts.
import {
  type None,
  type Say,
  type StatementOf,
  sayer,
  type Verbatim,
} from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { RoomEdition } from "./editions.ts";

type Mass = Quantity<"mass">;
type Area = Quantity<"area">;

/** How a figure was come by. */
export type LimitStanding = "published" | "secondary" | "from-memory" | "stated";

/** What rests on memory. */
export type Remembered =
  | "thresholds"
  | "flammability-limit"
  | "concentration-limit"
  | "altitude-factor"
  | "openings"
  | "enhanced-tightness"
  | "circulation"
  | "dispersal"
  | "ventilation-limits";

interface Used {
  readonly limit: Quantity<"density">;
  readonly standing: `charge-limit.standing.${LimitStanding}`;
}
interface Compared {
  readonly charge: Mass;
  readonly limit: Mass;
}

/**
 * The statements of this module: values by code.
 */
export interface ChargeLimitStatements {
  // hints of errors
  "charge-limit.shares-make-100": None;
  "charge-limit.place-or-height": None;
  "charge-limit.other-clauses": None;
  "charge-limit.no-value-by-basis": { readonly basis: Verbatim };
  "charge-limit.others-by-concentration": None;
  "charge-limit.give-its-own-limit": None;
  // reasons
  "charge-limit.within-limit": Compared;
  "charge-limit.above-limit": Compared;
  "charge-limit.too-close-to-call": Compared & { readonly uncertainty: Mass };
  "charge-limit.room-does-not-matter": Compared;
  "charge-limit.beyond-m2": Compared;
  "charge-limit.beyond-m3": Compared;
  "charge-limit.protection-not-stated": {
    readonly missing: readonly `charge-limit.missing.${ProtectionFact}`[];
  };
  "charge-limit.every-room-passes": { readonly count: number };
  "charge-limit.room-fails": { readonly room: Verbatim };
  "charge-limit.room-inconclusive": { readonly room: Verbatim };
  "charge-limit.nothing-near": { readonly required: Quantity<"length"> };
  "charge-limit.clear-of-openings": {
    readonly distance: Quantity<"length">;
    readonly required: Quantity<"length">;
  };
  "charge-limit.too-near-an-opening": {
    readonly distance: Quantity<"length">;
    readonly required: Quantity<"length">;
  };
  "charge-limit.distance-too-close-to-call": {
    readonly distance: Quantity<"length">;
    readonly required: Quantity<"length">;
  };
  "charge-limit.protection-zone-not-stated": None;
  "charge-limit.distances-not-stated": None;
  "charge-limit.closed-in-outdoors": None;
  // assumptions
  "charge-limit.one-closed-room": None;
  "charge-limit.edition-used": { readonly edition: `charge-limit.edition.${RoomEdition}` };
  "charge-limit.low-altitude": None;
  "charge-limit.above-reference-height": { readonly height: Quantity<"length"> };
  "charge-limit.flammability-limit-used": Used;
  "charge-limit.concentration-limit-used": Used;
  "charge-limit.exact-charge": None;
  "charge-limit.exact-size": None;
  "charge-limit.exact-distance": None;
  // cautions
  "charge-limit.flammability-too": None;
  "charge-limit.from-memory": { readonly rules: readonly `charge-limit.rule.${Remembered}`[] };
  "charge-limit.refrigerant-in-water": None;
  "charge-limit.market-rules-older": { readonly reviewed: Verbatim; readonly date: Verbatim };
  // actions
  "charge-limit.add-no-refrigerant": None;
  "charge-limit.find-larger-room": { readonly area: Area };
  "charge-limit.find-larger-volume": { readonly volume: Quantity<"volume"> };
  "charge-limit.use-other-clauses": { readonly maximum: Mass };
  "charge-limit.divide-the-system": { readonly maximum: Mass };
  "charge-limit.enlarge-openings": None;
  "charge-limit.raise-airflow": None;
  "charge-limit.weigh-or-measure-better": None;
  "charge-limit.state-protection": {
    readonly missing: readonly `charge-limit.missing.${ProtectionFact}`[];
  };
  "charge-limit.act-on-room": { readonly room: Verbatim };
  "charge-limit.move-outdoor-unit": { readonly required: Quantity<"length"> };
  "charge-limit.state-protection-zone": None;
  "charge-limit.measure-distances": None;
  "charge-limit.move-to-open-air": None;
}

/** What has to be known of a protection before it counts. Source: see {@link RoomProtection}. */
export type ProtectionFact = "openings-placed" | "enhanced-tightness" | "detector";

/** The words of this module. */
export type ChargeLimitWord =
  | `charge-limit.standing.${LimitStanding}`
  | `charge-limit.rule.${Remembered}`
  | `charge-limit.edition.${RoomEdition}`
  | `charge-limit.missing.${ProtectionFact}`
  | `charge-limit.cause.${ChargeLimitCause}`;

/** What is wrong with a charge in its room. Source: see the function that judges it. */
export type ChargeLimitCause =
  | "room-too-small"
  | "openings-too-small"
  | "airflow-too-small"
  | "beyond-m2"
  | "beyond-m3"
  | "too-near-an-opening"
  | "closed-in";

/** One statement of this module. */
export type ChargeLimitStatement = StatementOf<ChargeLimitStatements>;

/** Makes a statement of this module. */
export const say: Say<ChargeLimitStatements> = /* @__PURE__ */ sayer();

/** Text that stands as it was written: a day, a name. */
export const verbatim = (text: string): Verbatim => ({ verbatim: text });
