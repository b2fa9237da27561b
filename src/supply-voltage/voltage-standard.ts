// Which voltages may the utility supply? The ranges of a standard for a nominal voltage, by where it
// is measured. A standard is data: its table, and which of its columns bound which range.
// Does not cover transients, flicker, harmonics and frequency.
import { listOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { volt } from "../quantity/units/electricity.ts";
import type { SourceId } from "../sources/bibliography.ts";
import { ansiC84 } from "./ansi-c84-1.ts";
import { iec60038 } from "./iec-60038.ts";

/**
 * Where the readings were taken: at the service entrance, or at the unit, behind the building's wiring.
 *
 * Source: ANSI C84.1-2020, clause 3 (service voltage, utilization voltage), from memory.
 */
export type VoltageMeasuredAt = "service" | "unit";

/**
 * A range of a standard as its table states it: its name and the columns of lowest and highest voltage.
 *
 * Source: none; the library's own type.
 */
export type RangeColumns = readonly [name: string, lowest: number, highest: number];

/**
 * A standard of supply voltages. Make one of your own for a jurisdiction that the library lacks.
 *
 * Source: none; the library's own type.
 */
export interface VoltageStandard {
  /** Name as a report prints it. */
  readonly name: string;
  /** Its work in the bibliography. */
  readonly source: SourceId;
  /** Clause or table. */
  readonly clause: string;
  /** One row per nominal voltage, which is column 0; volts. */
  readonly table: readonly (readonly number[])[];
  /** The ranges, from the normal one to the widest, by where the voltage is measured. */
  readonly ranges: Readonly<Record<VoltageMeasuredAt, readonly RangeColumns[]>>;
}

/**
 * Lowest and highest voltage.
 *
 * Source: none; the library's own type.
 */
export interface VoltageRange {
  /** Lowest voltage allowed. */
  readonly minimum: Quantity<"voltage">;
  /** Highest voltage allowed. */
  readonly maximum: Quantity<"voltage">;
}

/**
 * A named range of a standard for one nominal voltage.
 *
 * Source: none; the library's own type.
 */
export interface SupplyRange extends VoltageRange {
  /** As the standard names it, such as "Range A". */
  readonly name: string;
}

/**
 * The supply that feeds the unit.
 *
 * Source: none; the library's own type.
 */
export interface NominalSupply {
  /** Nominal voltage between the conductors that feed the unit; line to line for three phases. */
  readonly voltage: Quantity<"voltage">;
  /** Phases that feed the unit. */
  readonly phases: 1 | 3;
  /** The standard; when left out, ANSI C84.1 for its nominal voltages (60 Hz) and IEC 60038 for 230 V and 400 V. */
  readonly standard?: VoltageStandard;
}

/** The standard and the row of its table for a supply. */
export function standardOf(supply: NominalSupply): {
  standard: VoltageStandard;
  row: readonly number[];
} {
  const nominal = siOf("supply.voltage", supply?.voltage, "voltage", { above: 0 });
  oneOf("supply.phases", supply.phases, [1, 3]);
  const { standard: own } = supply;
  const standards = own === undefined ? [ansiC84, iec60038] : [objectOf("supply.standard", own)];
  if (own !== undefined) listOf("supply.standard.table", own.table);
  for (const standard of standards) {
    const row = standard.table.find(([value = 0]) => Math.abs(value - nominal) <= 0.5);
    if (row) return { standard, row };
  }
  throw new OutOfRangeError({
    argument: "supply.voltage",
    value: supply.voltage.toString(),
    allowed: `${standards.flatMap(({ table }) => table.map(([value]) => value)).join(", ")} V`,
    hint: "Pass the nominal voltage, or a standard of your own",
  });
}

/**
 * The ranges that a supply should keep, from the normal one to the widest.
 *
 * @param supply - Nominal voltage, phases and, for other countries, the standard.
 * @param measuredAt - Service entrance or unit.
 * @returns Range A and Range B of ANSI C84.1, or the one range of IEC 60038.
 * @throws {@link OutOfRangeError} when the standard has no such nominal voltage.
 *
 * Source: ANSI C84.1-2020, table 1; IEC 60038:2009, table 1 and annex A.
 *
 * @example
 * ```ts
 * import { volt } from "hvac-install-math/quantity";
 * import { supplyVoltageRanges } from "hvac-install-math/supply-voltage";
 *
 * const [rangeA] = supplyVoltageRanges({ voltage: volt(208), phases: 1 }, "service");
 * `${rangeA?.name}: ${rangeA?.minimum} to ${rangeA?.maximum}`; // => Range A: 197 V to 218 V
 * ```
 */
export function supplyVoltageRanges(
  supply: NominalSupply,
  measuredAt: VoltageMeasuredAt,
): readonly SupplyRange[] {
  const { standard, row } = standardOf(supply);
  oneOf("measuredAt", measuredAt, ["service", "unit"]);
  return standard.ranges[measuredAt].map(([name, lowest, highest]) => ({
    name,
    minimum: volt(row[lowest] ?? Number.NaN),
    maximum: volt(row[highest] ?? Number.NaN),
  }));
}
