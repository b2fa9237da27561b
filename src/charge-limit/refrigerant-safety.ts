// How dangerous is it in a room? Flammability and concentration limits of a refrigerant.
// Follows ANSI/ASHRAE Standard 34 (2022) and IEC 60335-2-40:2018, each figure with its own source.
// Does not cover toxicity of the B classes, nor what a fire makes of a refrigerant.
import { type Citation, cite } from "../assessment/assessment.ts";
import { type Caution, caution } from "../assessment/caution.ts";
import { danger, heed, type SafetyStatement } from "../assessment/safety.ts";
import { describe, objectOf, oneOf, refuse, textOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { gPerM3, kgPerM3 } from "../quantity/units/mass.ts";
import { ppm } from "../quantity/units/ratio.ts";
import type { Refrigerant } from "../refrigerants/index.ts";
import { type Figure, type SafetyRow, safetyTable } from "./safety-data.ts";
import {
  type ChargeLimitStatement,
  type LimitStanding,
  type Remembered,
  say,
} from "./statements.ts";

/**
 * What this module needs to know of a refrigerant; the objects of `refrigerants` have it.
 *
 * Source: ANSI/ASHRAE Standard 34.
 */
export type RoomRefrigerant = Pick<Refrigerant, "designation" | "safetyClass">;

/**
 * A limit with its source: editions differ.
 *
 * Source: the citation that it carries.
 */
export interface SafetyLimit {
  /** The limit. */
  readonly value: Quantity<"density">;
  /** Where it stands; nowhere for a limit that the caller stated. */
  readonly citation?: Citation | undefined;
  /** Whether it was read there, in another text that names it, remembered, or stated by the caller. */
  readonly standing: LimitStanding;
}

/**
 * The limits of a refrigerant.
 *
 * Source: see {@link refrigerantSafety}.
 */
export interface RefrigerantSafety {
  /** ASHRAE 34 safety class. */
  readonly safetyClass: RoomRefrigerant["safetyClass"];
  /** Lower flammability limits, first the one that is used; empty for what does not burn. */
  readonly lowerFlammabilityLimits: readonly SafetyLimit[];
  /** Concentration limits (RCL, practical limit), first the one that is used. */
  readonly concentrationLimits: readonly SafetyLimit[];
  /** The RCL as a share of the volume. */
  readonly concentrationLimitByVolume: Quantity<"ratio">;
}

/**
 * Flammability and concentration limits of a refrigerant, each with its source and how it was come by. RCL is the
 * least of a toxicity limit, an oxygen limit and a quarter of the LFL.
 *
 * @param refrigerant - Such as `R32`; every refrigerant of `refrigerants` is held.
 * @returns Safety class and limits.
 * @throws {@link InvalidInputError} when no figures are held for it.
 *
 * Cautions: figures from memory are to be checked against the standard before they decide.
 *
 * Source: ANSI/ASHRAE Standard 34 (2022); IEC 60335-2-40:2018; EN 378-1; each figure says which.
 *
 * @example
 * ```ts
 * import { refrigerantSafety } from "hvac-install-math/charge-limit";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * const { safetyClass, lowerFlammabilityLimits } = refrigerantSafety(R32);
 * safetyClass; // => A2L
 * lowerFlammabilityLimits.map(({ value, citation }) => `${value} ${citation?.source}`).join(", "); // => 0.307 kg/m³ iec-60335-2-40-2018, 0.306 kg/m³ ashrae-34-2022
 * ```
 */
export function refrigerantSafety(refrigerant: RoomRefrigerant): RefrigerantSafety {
  return safetyOf(refrigerant, true) as RefrigerantSafety;
}

/** The limits; nothing where none are held and the caller has a limit of its own. */
export function safetyOf(
  refrigerant: RoomRefrigerant,
  needed: boolean,
): RefrigerantSafety | undefined {
  const { safetyClass } = objectOf("refrigerant", refrigerant);
  const row = rowOf(refrigerant, needed);
  oneOf("refrigerant.safetyClass", safetyClass, ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"]);
  const limit =
    (unit: typeof kgPerM3) =>
    ([value, source, standing, note = ""]: Figure): SafetyLimit => ({
      value: unit(value),
      citation: cite(source, note),
      standing,
    });
  return (
    row &&
    frozen({
      safetyClass,
      lowerFlammabilityLimits: (row.lfl ?? []).map(limit(kgPerM3)),
      concentrationLimits: row.rcl.map(limit(gPerM3)),
      concentrationLimitByVolume: ppm(row.ppm),
    })
  );
}

/** The molar mass of a flammable refrigerant, g/mol, where one is held. */
export function molarMassOf(argument: string, refrigerant: RoomRefrigerant): number {
  const found = rowOf(refrigerant, false)?.molarMass;
  if (found !== undefined) return found;
  const allowed = `a number in g/mol; none is held for ${describe(refrigerant.designation)}`;
  return refuse(argument, undefined, allowed, "number");
}

function rowOf({ designation }: RoomRefrigerant, needed: boolean): SafetyRow | undefined {
  const key = textOf("refrigerant.designation", designation).replace(/[^\w]/g, "");
  if (Object.hasOwn(safetyTable, key)) return safetyTable[key];
  if (!needed) return undefined;
  throw new InvalidInputError({
    argument: "refrigerant.designation",
    value: describe(designation),
    allowed: `an object of refrigerants for one of ${Object.keys(safetyTable).join(", ")}`,
    hint: say("charge-limit.give-its-own-limit"),
  });
}

/** What to heed at a charge in a room. */
export type RoomCaution = Caution<ChargeLimitStatement | SafetyStatement>;

/** The cautions for a refrigerant in a room, with what rests on memory. */
export function roomCautions(
  { safetyClass }: RoomRefrigerant,
  remembered: readonly Remembered[] = [],
  findings: readonly ChargeLimitStatement[] = [],
): readonly RoomCaution[] {
  const rules = remembered.map((one) => `charge-limit.rule.${one}` as const);
  return heed<ChargeLimitStatement | SafetyStatement>([
    ...findings.map((one) => caution("finding", one)),
    ...(rules.length ? [caution("finding", say("charge-limit.from-memory", { rules }))] : []),
    safetyClass.endsWith("1")
      ? danger("safety.refrigerant-suffocates")
      : danger("safety.flammable-refrigerant"),
    ...(safetyClass.startsWith("B") ? [danger("safety.toxic-refrigerant")] : []),
    danger("safety.refrigerant-contact"),
    danger("safety.charge-tight-system"),
    danger("safety.refrigerant-air-mixture"),
  ]);
}
