// Which voltages may the utility supply? The ranges of a standard for a nominal voltage, by where it
// is measured. A standard is data: its table, and which of its columns bound which range.
// Does not cover transients, flicker, harmonics and frequency.

import type { Quantity } from "../../quantity/quantity.ts";
import type { SourceId } from "../../sources/bibliography.ts";

/**
 * Where the readings were taken: at the service entrance, or at the unit, behind the building's wiring.
 *
 * Source: ANSI C84.1-2020, clause 3 (service voltage, utilization voltage), from memory.
 */
export type VoltageMeasuredAt = "service" | "unit";

/**
 * A range of a standard as its table states it: its name and the columns of lowest and highest voltage.
 */
export type RangeColumns = readonly [name: string, lowest: number, highest: number];

/**
 * A standard of supply voltages. Make one of your own for a jurisdiction that the library lacks.
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
  /** Voltages that nameplates and people write for a nominal voltage of the table: 230 V for a service of 240 V. */
  readonly alsoWritten?: readonly (readonly [written: number, nominal: number])[] | undefined;
  /** Whether its figures are remembered, not read. */
  readonly fromMemory?: boolean | undefined;
  /** The ranges, from the normal one to the widest, by where the voltage is measured. Empty: none for that place. */
  readonly ranges: Readonly<Record<VoltageMeasuredAt, readonly RangeColumns[]>>;
}

/**
 * Lowest and highest voltage.
 */
export interface VoltageRange {
  /** Lowest voltage allowed. */
  readonly minimum: Quantity<"voltage">;
  /** Highest voltage allowed. */
  readonly maximum: Quantity<"voltage">;
}
