// English of a charge and its room: sentences and words.
import type { ChargeLimitStatements, ChargeLimitWord } from "../../charge-limit/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = ChargeLimitStatements & Words<ChargeLimitWord>;
const catalogue: Define<Said> = define;

/** What `charge-limit` says, in American English. */
export const chargeLimit: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "charge-limit.shares-make-100": "The shares have to make up 100 %.",
  "charge-limit.other-clauses": "Above it other clauses apply: ventilation, sensors.",

  "charge-limit.within-limit": "The charge, {charge}, is within the limit of {limit}.",
  "charge-limit.above-limit": "The charge, {charge}, is above the limit of {limit}.",
  "charge-limit.too-close-to-call":
    "Too close to call: charge {charge} ± {uncertainty}, limit {limit}.",

  "charge-limit.unventilated":
    "One closed, unventilated room and a fixed unit, without fan or sensor.",
  "charge-limit.above-reference-height":
    "{height} is above the reference heights. Only where the manual allows it.",
  "charge-limit.flammability-limit-used": "Lower flammability limit used: {limit} ({standing}).",
  "charge-limit.concentration-limit-used": "Concentration limit used: {limit} ({standing}).",
  "charge-limit.exact-charge": "No accuracy was given for the charge, so it is taken as exact.",
  "charge-limit.exact-size": "No accuracy was given for the room’s size, so it is taken as exact.",

  "charge-limit.flammability-too":
    "This limit is for breathing alone. A flammable refrigerant has to meet the flammability rule as well.",

  "charge-limit.add-no-refrigerant": "Do not add refrigerant.",
  "charge-limit.find-larger-room":
    "Move the indoor unit to a larger room, or choose a unit with less charge.",
  "charge-limit.use-other-clauses":
    "Above {maximum} no unventilated room is large enough. Follow the manual for ventilation and sensors, or choose a unit with less charge.",
  "charge-limit.weigh-or-measure-better": "Weigh the charge or measure the room more accurately.",

  "charge-limit.standing.published": "published",
  "charge-limit.standing.from-memory": "from memory",
  "charge-limit.standing.stated": "as entered",
  "charge-limit.cause.room-too-small": "room too small",
  "charge-limit.cause.beyond-m2": "too much for any unventilated room",
});
