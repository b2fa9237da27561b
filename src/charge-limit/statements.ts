// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the dangers that modules share: assessment/safety.ts.
import { type None, type Say, type StatementOf, sayer } from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";

type Mass = Quantity<"mass">;

/** How a figure was come by. Source: none; the library's own words. */
export type LimitStanding = "published" | "from-memory" | "stated";

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
 *
 * Source: none; the library's own type.
 */
export interface ChargeLimitStatements {
  // hints of errors
  "charge-limit.shares-make-100": None;
  "charge-limit.other-clauses": None;
  // reasons
  "charge-limit.within-limit": Compared;
  "charge-limit.above-limit": Compared;
  "charge-limit.too-close-to-call": Compared & { readonly uncertainty: Mass };
  // assumptions
  "charge-limit.unventilated": None;
  "charge-limit.above-reference-height": { readonly height: Quantity<"length"> };
  "charge-limit.flammability-limit-used": Used;
  "charge-limit.concentration-limit-used": Used;
  "charge-limit.exact-charge": None;
  "charge-limit.exact-size": None;
  // cautions
  "charge-limit.flammability-too": None;
  // actions
  "charge-limit.add-no-refrigerant": None;
  "charge-limit.find-larger-room": None;
  "charge-limit.use-other-clauses": { readonly maximum: Mass };
  "charge-limit.weigh-or-measure-better": None;
}

/** The words of this module. Source: none; the library's own type. */
export type ChargeLimitWord =
  | `charge-limit.standing.${LimitStanding}`
  | `charge-limit.cause.${ChargeLimitCause}`;

/** What is wrong with a charge in its room. Source: see the function that judges it. */
export type ChargeLimitCause = "room-too-small" | "beyond-m2";

/** One statement of this module. Source: none; the library's own type. */
export type ChargeLimitStatement = StatementOf<ChargeLimitStatements>;

/** Makes a statement of this module. */
export const say: Say<ChargeLimitStatements> = /* @__PURE__ */ sayer();
