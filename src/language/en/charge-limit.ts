// English of a charge and its room: sentences and words.
import type { ChargeLimitStatements, ChargeLimitWord } from "../../charge-limit/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = ChargeLimitStatements & Words<ChargeLimitWord>;
const catalogue: Define<Said> = define;

/** What `charge-limit` says, in American English. */
export const chargeLimit: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "charge-limit.shares-make-100": "The shares must add up to 100 %.",
  "charge-limit.place-or-height":
    "Enter one of the two: where the indoor unit is, or its installation height.",
  "charge-limit.other-clauses":
    "Above it other clauses apply: enhanced tightness, ventilation, sensors.",
  "charge-limit.no-value-by-basis": "No value for another refrigerant in {basis}.",
  "charge-limit.others-by-concentration":
    "A refrigerant of another class is held to its concentration limit.",
  "charge-limit.give-its-own-limit":
    "For another refrigerant, enter the limit from its safety data.",

  "charge-limit.within-limit": "The charge, {charge}, is within the limit of {limit}.",
  "charge-limit.above-limit": "The charge, {charge}, is above the limit of {limit}.",
  "charge-limit.too-close-to-call":
    "Too close to call: charge {charge} ± {uncertainty}, limit {limit}.",
  "charge-limit.room-does-not-matter":
    "Up to {limit} the size of the room does not matter. The charge is {charge}.",
  "charge-limit.beyond-m2":
    "The charge, {charge}, is above {limit}, the most that a floor area allows.",
  "charge-limit.beyond-m3":
    "The charge, {charge}, is above {limit}, beyond which this edition has no rule.",
  "charge-limit.protection-not-stated": "Needed for this limit, and not entered: {missing}.",
  "charge-limit.every-room-passes": {
    by: "count",
    one: "The charge is within the limit of the one room served.",
    other: "The charge is within the limit of each of the {count} rooms served.",
  },
  "charge-limit.room-fails": "Room {room}: the charge is above its limit.",
  "charge-limit.room-inconclusive": "Room {room}: inconclusive.",
  "charge-limit.nothing-near":
    "No opening or ignition source was found near the unit; {required} required.",
  "charge-limit.clear-of-openings":
    "The nearest opening or ignition source is {distance} away; {required} required.",
  "charge-limit.too-near-an-opening":
    "The nearest opening or ignition source is only {distance} away; {required} required.",
  "charge-limit.distance-too-close-to-call":
    "Too close to call: the nearest opening or ignition source is {distance} away, {required} required.",
  "charge-limit.protection-zone-not-stated": "The protection zone around the unit was not entered.",
  "charge-limit.distances-not-stated":
    "The distances to openings and ignition sources were not entered.",
  "charge-limit.closed-in-outdoors": "The unit is enclosed. Leaking refrigerant collects there.",

  "charge-limit.one-closed-room":
    "One closed, unventilated room and a fixed unit, without fan or sensor.",
  "charge-limit.edition-used": "Judged by {edition}.",
  "charge-limit.low-altitude": "No altitude was given: at most 600 m (2000 ft) is assumed.",
  "charge-limit.above-reference-height":
    "{height} is above the reference heights. It counts only where the manual allows it.",
  "charge-limit.flammability-limit-used": "Lower flammability limit used: {limit} ({standing}).",
  "charge-limit.concentration-limit-used": "Concentration limit used: {limit} ({standing}).",
  "charge-limit.exact-charge": "No accuracy was given for the charge, so it is taken as exact.",
  "charge-limit.exact-size": "No accuracy was given for the room’s size, so it is taken as exact.",
  "charge-limit.exact-distance":
    "No accuracy was given for the distances, so they are taken as exact.",

  "charge-limit.flammability-too":
    "This limit is for breathing alone. A flammable refrigerant must also meet the flammability rule.",
  "charge-limit.from-memory": "Quoted from memory: {rules}. Check them against the text.",
  "charge-limit.refrigerant-in-water":
    "A leak in the water heat exchanger carries refrigerant into the heating water. Install the air separator and safety valve that the manual requires.",
  "charge-limit.market-rules-older":
    "These rules were read as of {reviewed}. The date asked about, {date}, is later. Look for newer rules.",

  "charge-limit.add-no-refrigerant": "Do not add refrigerant.",
  "charge-limit.find-larger-room":
    "Move the indoor unit to a room of {area} or more, or choose a unit with less charge.",
  "charge-limit.find-larger-volume":
    "Move the indoor unit to a room of {volume} or more, or choose a unit with less charge.",
  "charge-limit.use-other-clauses":
    "Follow the manual for enhanced tightness, ventilation and sensors, or choose a unit of {maximum} or less.",
  "charge-limit.divide-the-system": "Divide the system into systems of {maximum} or less each.",
  "charge-limit.enlarge-openings": "Enlarge both openings to the next room.",
  "charge-limit.raise-airflow": "Raise the airflow, or choose a unit with less charge.",
  "charge-limit.weigh-or-measure-better": "Weigh the charge or measure the room more accurately.",
  "charge-limit.state-protection": "Enter: {missing}.",
  "charge-limit.act-on-room": "In room {room}, do the following.",
  "charge-limit.move-outdoor-unit":
    "Move the unit until every opening and ignition source is {required} away or more.",
  "charge-limit.state-protection-zone": "Enter the protection zone from the unit’s manual.",
  "charge-limit.measure-distances":
    "Measure the distance to every door, window, air intake, drain and ignition source.",
  "charge-limit.move-to-open-air": "Move the unit into open air.",

  "charge-limit.standing.published": "published",
  "charge-limit.standing.secondary": "from a secondary source",
  "charge-limit.standing.from-memory": "from memory",
  "charge-limit.standing.stated": "as entered",
  "charge-limit.rule.thresholds": "the thresholds m1, m2 and m3",
  "charge-limit.rule.flammability-limit": "the lower flammability limit",
  "charge-limit.rule.concentration-limit": "the concentration limit",
  "charge-limit.rule.altitude-factor": "the factor for altitude",
  "charge-limit.rule.openings": "the rule for openings",
  "charge-limit.rule.enhanced-tightness": "the rule for enhanced tightness",
  "charge-limit.rule.circulation": "the rule for circulation",
  "charge-limit.rule.dispersal": "the effective dispersal volume charge",
  "charge-limit.rule.ventilation-limits": "the limits with ventilation",
  "charge-limit.edition.iec-60335-2-40-2013": "IEC 60335-2-40:2013, edition 5",
  "charge-limit.edition.iec-60335-2-40-2018": "IEC 60335-2-40:2018, edition 6",
  "charge-limit.edition.iec-60335-2-40-2022": "IEC 60335-2-40:2022, edition 7",
  "charge-limit.edition.ul-60335-2-40-2019": "UL 60335-2-40:2019, 3rd edition",
  "charge-limit.edition.ul-60335-2-40-2022": "UL 60335-2-40:2022, 4th edition",
  "charge-limit.edition.en-378-1": "EN 378-1:2016",
  "charge-limit.missing.openings-placed":
    "whether the openings are permanent and placed as required",
  "charge-limit.missing.enhanced-tightness": "whether the maker declares enhanced tightness",
  "charge-limit.missing.detector": "whether a detector starts the fan",
  "charge-limit.cause.room-too-small": "room too small",
  "charge-limit.cause.openings-too-small": "openings too small",
  "charge-limit.cause.airflow-too-small": "airflow too small",
  "charge-limit.cause.beyond-m2": "too much for any floor area",
  "charge-limit.cause.beyond-m3": "too much for the rule",
  "charge-limit.cause.too-near-an-opening": "too near an opening or ignition source",
  "charge-limit.cause.closed-in": "enclosed",
});
