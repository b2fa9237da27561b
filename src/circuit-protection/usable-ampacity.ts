// Which conductor carries it? Usable ampacity with its steps, and the smallest size that is enough.
// Follows NFPA 70 (2023), 110.14(C), 310.15, 334.80, 440.35; IEC 60364-4-43:2008, 433.1; 60364-5-52:2009, 523.
// Does not cover parallel conductors, cables in the ground or in free air.
import { oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError, OutOfRangeError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { degC } from "../quantity/units/temperature.ts";
import { amperesOf, countOf, materialOf, rulesOf } from "./checks.ts";
import type { CircuitRules, RuleFamily, SizeOf, WiringOf } from "./rules/circuit-rules.ts";
import { tidy } from "./standard-ratings.ts";
import { cell, sizesOf, step } from "./table.ts";
import type { AwgWiring, MetricWiring } from "./wiring.ts";

/**
 * What a conductor carries, with the steps: usable = min(table × ambient × adjustment, termination limit).
 *
 * Source: NFPA 70 (2023), 110.14(C), 310.15.
 */
export interface UsableAmpacity<F extends RuleFamily = RuleFamily> {
  /** The size. */
  readonly size: SizeOf<F>;
  /** Column of the ampacity table that was read. */
  readonly column: string;
  /** Value in the ampacity table. */
  readonly tableAmpacity: Quantity<"current">;
  /** Temperature for which the ambient factor was read, with any addition for a roof. */
  readonly ambient: Quantity<"temperature">;
  /** Correction for ambient temperature. */
  readonly ambientFactor: number;
  /** Adjustment for conductors or circuits that run together. */
  readonly adjustmentFactor: number;
  /** Table value times both factors. */
  readonly derated: Quantity<"current">;
  /** The unfactored value of the termination's or cable's column, where the rules have that limit. */
  readonly terminationLimit?: Quantity<"current">;
  /** What may be used. */
  readonly usable: Quantity<"current">;
}

/**
 * A size and how it runs.
 *
 * Source: none; the library's own type.
 */
export interface AmpacityInput<F extends RuleFamily> {
  /** The rule set. */
  readonly rules: CircuitRules<F>;
  /** How the cable runs. */
  readonly wiring: WiringOf<F>;
  /** Phases that feed the unit: two or three loaded conductors in metric tables. */
  readonly phases: 1 | 3;
  /** Rating of the device ahead, more than 0; decides the termination column where it is not marked. */
  readonly deviceRating?: Quantity<"current">;
}

/** Wiring of either family. */
export type AnyWiring = Omit<AwgWiring, "insulation"> &
  Omit<MetricWiring, "material" | "insulation"> & { readonly insulation: string };

const insulations = ["60 °C", "75 °C", "90 °C"] as const;

/**
 * Ampacity of a conductor as it runs: corrected and adjusted from its own insulation's column, then capped
 * by the column of the terminations (and by 60 °C for NM cable).
 *
 * Assumes 30 °C, up to three loaded conductors (one circuit in metric rules) and unmarked terminations where
 * nothing else is stated.
 *
 * @param input - Rules, wiring, phases, a size of the rules' family, and the device rating.
 * @returns The usable ampacity and every step.
 * @throws {@link InvalidInputError} when the table has no such size, material or method;
 * {@link OutOfRangeError} when it is too hot for the insulation or too many circuits run together.
 *
 * Cautions: for a licensed electrician; the adopted code and the equipment's markings come first.
 *
 * Source: NFPA 70 (2023), 110.14(C), tables 310.16, 310.15(B)(1), 310.15(C)(1), 334.80; IEC
 * 60364-5-52:2009, annex B.
 *
 * @example
 * ```ts
 * import { nec2023, usableAmpacity } from "hvac-install-math/circuit-protection";
 * import { degC } from "hvac-install-math/quantity";
 *
 * const hot = usableAmpacity({
 *   rules: nec2023,
 *   size: "12 AWG",
 *   wiring: { material: "copper", insulation: "90 °C", terminations: "75 °C", ambient: degC(55) },
 *   phases: 1,
 * });
 * hot.ambientFactor; // => 0.76
 * hot.usable.toString(); // => 22.8 A
 * ```
 */
export function usableAmpacity<F extends RuleFamily>(
  input: AmpacityInput<F> & {
    /** The size. */
    readonly size: SizeOf<F>;
  },
): UsableAmpacity<F> {
  const rules = rulesOf(input);
  const size = oneOf("size", input.size, sizesOf(rules));
  const route = routeOf(input);
  const { column, celsius, ambientFactor, adjustmentFactor } = route;
  const { table, derated, limit, usable } = ampacityOn(rules, route, size);
  if (table === null) {
    throw new InvalidInputError({
      argument: "size",
      value: `${size} in the column ${column}`,
      allowed: "a size that the ampacity table gives in this column",
    });
  }
  return {
    size,
    column,
    tableAmpacity: ampere(table),
    ambient: degC(celsius),
    ambientFactor,
    adjustmentFactor,
    derated: ampere(derated),
    ...(limit && { terminationLimit: ampere(limit) }),
    usable: ampere(usable),
  };
}

/** Table value, derated value, termination limit and usable ampacity in A; 0 usable without a table value. */
export function ampacityOn<F extends RuleFamily>(
  { ampacity }: CircuitRules<F>,
  { column, limitColumn, ambientFactor, adjustmentFactor }: Route,
  size: SizeOf<F>,
): { table: number | null; derated: number; limit: number | null; usable: number } {
  const table = cell(ampacity, size, column);
  const limit = cell(ampacity, size, limitColumn);
  const derated = tidy((table ?? 0) * ambientFactor * adjustmentFactor);
  return { table, derated, limit, usable: Math.min(derated, limit ?? derated) };
}

/** Where the wiring reads the tables. */
interface Route {
  readonly column: string;
  readonly limitColumn: string;
  readonly celsius: number;
  readonly ambientFactor: number;
  readonly adjustmentFactor: number;
}

/** What the wiring means in the tables of its family. */
export function routeOf<F extends RuleFamily>({
  rules,
  wiring,
  phases,
  deviceRating,
}: AmpacityInput<F>): Route {
  const either = wiring as AnyWiring;
  materialOf("wiring.material", either?.material);
  oneOf("wiring.insulation", either.insulation, rules.ambient.columns);
  const limits: string[] = [];
  const { ambient = degC(30), length, stranding, conduit, cable = "other" } = either;
  const { currentCarryingConductors = 3, groupedCircuits = 1 } = either;
  oneOf("phases", phases, [1, 3]);
  if (length !== undefined) siOf("wiring.length", length, "length", { above: 0 });
  if (stranding !== undefined) oneOf("wiring.stranding", stranding, ["solid", "stranded"]);
  if (conduit !== undefined) oneOf("wiring.conduit", conduit, ["PVC", "aluminum", "steel"]);
  let celsius = siOf("wiring.ambient", ambient, "temperature") - 273.15;
  let column = `${either.material} `;
  let together: number;
  if (rules.family === "awg") {
    column += either.insulation;
    const rating = deviceRating === undefined ? 0 : amperesOf("deviceRating", deviceRating);
    const { terminations = step("deviceRating", rules.terminations ?? [], rating) } = either;
    limits.push(oneOf("wiring.terminations", terminations, ["60 °C", "75 °C"]));
    limits.push(either.insulation); // the cap never reads a hotter column than the insulation's
    if (oneOf("wiring.cable", cable, ["NM", "other"]) === "NM") {
      limits.push("60 °C"); // 334.80
    }
    if (either.aboveRoof !== undefined && rules.rooftop) {
      const height = siOf("wiring.aboveRoof", either.aboveRoof, "length", { min: 0 });
      if (height < rules.rooftop.below) celsius += rules.rooftop.adder;
    }
    together = countOf("wiring.currentCarryingConductors", currentCarryingConductors);
  } else {
    const method = oneOf("wiring.method", either.method, ["A1", "A2", "B1", "B2", "C"]);
    column += `${method} ${phases === 3 ? 3 : 2}`;
    together = countOf("wiring.groupedCircuits", groupedCircuits);
  }
  return {
    column,
    limitColumn: `${either.material} ${insulations.find((i) => limits.includes(i))}`,
    celsius,
    ambientFactor: ambientFactorAt(rules, either.insulation, celsius),
    adjustmentFactor: step("wiring.groupedCircuits", rules.adjustment, together),
  };
}

/** The factor of the first row that reaches the temperature. */
function ambientFactorAt(rules: CircuitRules, insulation: string, celsius: number): number {
  const at = rules.ambient.columns.indexOf(insulation) + 1;
  const rows = rules.ambient.rows.filter((row) => row[at] !== null);
  const row = rows.find(([upTo]) => tidy(celsius) <= upTo);
  if (row) return Number(row[at]);
  throw new OutOfRangeError({
    argument: "wiring.ambient",
    value: `${tidy(celsius)} °C`,
    allowed: `at most ${rows.at(-1)?.[0]} °C for ${insulation} insulation`,
  });
}
