// Which charges change the rule? The thresholds m1, m2 and m3 by edition and safety class.
// Follows IEC 60335-2-40 (editions 5, 6 and 7), UL 60335-2-40 (3rd and 4th edition) and EN 378-1:2016.
// Does not cover portable units, nor the higher charges of edition 7 for A2 and A3 with added conditions.
import type { Citation } from "../assessment/assessment.ts";
import { objectOf, oneOf, siOf } from "../quantity/check.ts";
import { frozen, frozenInPlace } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kg } from "../quantity/units/mass.ts";

/**
 * The edition by which a room is judged, by its id in the bibliography. Europe installs by the 2018 text
 * (EN IEC 60335-2-40:2023), the United States by UL 60335-2-40.
 *
 * Source: the works of these ids.
 */
export type RoomEdition =
  | "iec-60335-2-40-2013"
  | "iec-60335-2-40-2018"
  | "iec-60335-2-40-2022"
  | "ul-60335-2-40-2019"
  | "ul-60335-2-40-2022"
  | "en-378-1";

/** A flammable class. Source: ISO 817; ANSI/ASHRAE Standard 34. */
export type FlammableClass = "A2L" | "A2" | "A3" | "B2L" | "B2" | "B3";

/** m1, m2 and m3 over LFL, m³, and whether they were read there. */
type Volumes = readonly [m1: number, m2: number, m3: number, read: boolean];

/** What an edition says. */
interface EditionRule {
  readonly a2l: Volumes;
  readonly others: Volumes;
  /** Whether small rooms are capped beside the root of the area. */
  readonly caps: boolean;
}

//                                          m1   m2   m3  read
const classic: Volumes = /* @__PURE__ */ frozenInPlace([4, 26, 130, true]); // all classes, edition 5
const editions: Readonly<Record<RoomEdition, EditionRule>> = {
  "iec-60335-2-40-2013": { a2l: classic, others: classic, caps: false },
  // m1, m2 and m3 as makers' manuals print them for R32: 1.842, 15.96 and 79.8 kg.
  "iec-60335-2-40-2018": { a2l: [6, 52, 260, true], others: classic, caps: true },
  "iec-60335-2-40-2022": { a2l: [6, 52, 260, false], others: [4, 26, 130, false], caps: true },
  // m1 as a published unit's manual prints it (1.836 kg of R32); the others from memory.
  "ul-60335-2-40-2019": { a2l: [6, 52, 260, false], others: [4, 26, 130, false], caps: true },
  "ul-60335-2-40-2022": { a2l: [6, 52, 260, false], others: [4, 26, 130, false], caps: true },
  // The factor of 1.5 for A2L, from memory.
  "en-378-1": { a2l: [6, 39, 195, false], others: [4, 26, 130, false], caps: false },
};

/** The editions, for checks. */
export const roomEditions: readonly RoomEdition[] = /* @__PURE__ */ Object.keys(
  editions,
) as RoomEdition[];

/**
 * The charges at which the rule changes.
 *
 * Source: see {@link chargeThresholds}.
 */
export interface ChargeThresholds {
  /** Up to here the room does not matter. */
  readonly m1: Quantity<"mass">;
  /** The most by the rule of the floor area, for one indoor unit. */
  readonly m2: Quantity<"mass">;
  /** The most for a system at all: above it the edition has no rule. */
  readonly m3: Quantity<"mass">;
  /** Whether the factors were read in the source or are from memory. */
  readonly standing: "published" | "from-memory";
  /** Where they stand. */
  readonly citation: Citation;
}

/**
 * The charges at which the rule for a room changes, as multiples of the lower flammability limit: 4, 26 and
 * 130 m³ for every class in edition 5 and for A2 and A3 since; 6, 52 and 260 m³ for A2L from edition 6; 6, 39
 * and 195 m³ for A2L in EN 378-1:2016.
 *
 * @param rule - LFL above 0 to 1 kg/m³, safety class, edition (2018 when left out).
 * @returns m1, m2 and m3.
 * @throws {@link InvalidInputError} when the limit is outside its range or a word is not one of those listed.
 *
 * Source: IEC 60335-2-40, GG.1, as manufacturers' manuals print it; editions of 2022 and UL, and EN 378-1:2016,
 * C.2, from memory.
 *
 * @example
 * ```ts
 * import { chargeThresholds } from "hvac-install-math/charge-limit";
 * import { kgPerM3 } from "hvac-install-math/quantity";
 *
 * const R32 = { lowerFlammabilityLimit: kgPerM3(0.307), safetyClass: "A2L" } as const;
 * const { m1, m2, m3 } = chargeThresholds(R32);
 * `${m1}, ${m2}, ${m3}`; // => 1.842 kg, 15.964 kg, 79.82 kg
 * chargeThresholds({ ...R32, edition: "iec-60335-2-40-2013" }).m2.toString(); // => 7.982 kg
 * ```
 */
export function chargeThresholds(rule: {
  /** LFL of the refrigerant. */
  readonly lowerFlammabilityLimit: Quantity<"density">;
  /** Safety class of the refrigerant. */
  readonly safetyClass: FlammableClass;
  /** Edition of the rule. */
  readonly edition?: RoomEdition | undefined;
}): ChargeThresholds {
  const { lowerFlammabilityLimit, edition = "iec-60335-2-40-2018" } = objectOf("rule", rule);
  const limits = { above: 0, max: 1 };
  const LFL = siOf("lowerFlammabilityLimit", lowerFlammabilityLimit, "density", limits);
  const classes = ["A2L", "A2", "A3", "B2L", "B2", "B3"] as const;
  const isMild = oneOf("safetyClass", rule.safetyClass, classes).endsWith("2L");
  const { a2l, others } = editions[oneOf("edition", edition, roomEditions)];
  const [m1, m2, m3, read] = isMild ? a2l : others;
  return frozen({
    m1: kg(m1 * LFL),
    m2: kg(m2 * LFL),
    m3: kg(m3 * LFL),
    standing: read ? "published" : "from-memory",
    citation: { source: edition, clause: edition === "en-378-1" ? "C.2" : "GG.1" },
  });
}

/** Whether an edition caps small rooms. */
export function hasCaps(edition: RoomEdition): boolean {
  return editions[edition].caps;
}
