// Which voltages should a supply keep?
// Follows the standard of the supply, or the range that its utility promises. Does not cover the readings.

import { listOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { volt } from "../quantity/units/electricity.ts";
import {
  ansiC84,
  iec60038,
  japaneseSupply,
  type VoltageMeasuredAt,
  type VoltageRange,
  type VoltageStandard,
} from "./standards/index.ts";
import { say } from "./statements.ts";

/**
 * A named range of a standard for one nominal voltage.
 */
export interface SupplyRange extends VoltageRange {
  /** As the standard names it, such as "Range A". */
  readonly name: string;
}

/**
 * The supply that feeds the unit.
 */
export interface NominalSupply {
  /** Nominal voltage between the conductors that feed the unit; line to line for three phases. */
  readonly voltage: Quantity<"voltage">;

  /** Phases that feed the unit. */
  readonly phases: 1 | 3;

  /**
   * The standard. Where it is left out, one is taken only for a nominal voltage that no other standard here knows (120,
   * 208, 240, 277, 480 and 600 V: ANSI C84.1; 400 V: IEC 60038; 100 V: Japan); for any other it is asked for.
   */
  readonly standard?: VoltageStandard | undefined;

  /** The range that the utility promises; it goes before any standard. */
  readonly range?: VoltageRange | undefined;
}

/** The standard of a supply, how it is known, and the row of its table; nothing where it has to be asked for. */
export function resolveStandard(supply: NominalSupply): {
  readonly standard?: VoltageStandard | undefined;
  readonly by: "input" | "nominal" | "nothing";
  readonly row?: readonly number[] | undefined;

  /** Nominal voltage of the row. */
  readonly nominal?: number | undefined;
} {
  const volts = siOf("supply.voltage", supply?.voltage, "voltage", { above: 0 });
  oneOf("supply.phases", supply.phases, [1, 3]);
  const { standard: own } = supply;
  if (own !== undefined) {
    listOf("supply.standard.table", objectOf("supply.standard", own).table);
    const row = rowIn(own, volts);
    return { standard: own, by: "input", ...(row && { row, nominal: row[0] ?? volts }) };
  }
  if (supply.range !== undefined) return { by: "nothing" };
  const candidates = known().flatMap((standard) => {
    const row = rowIn(standard, volts);
    return row ? [{ standard, row }] : [];
  });
  const [only] = candidates;
  const exact = only && Math.abs((only.row[0] ?? 0) - volts) <= 0.5;
  return candidates.length === 1 && only && exact
    ? { ...only, by: "nominal", nominal: only.row[0] ?? volts }
    : { by: "nothing" };
}

/** The ranges of a supply, the stated one first of all; `undefined` where they have to be asked for. */
export function rangesOf(
  supply: NominalSupply,
  measuredAt: VoltageMeasuredAt,
): readonly SupplyRange[] | undefined {
  oneOf("measuredAt", measuredAt, ["service", "unit"]);
  const { range } = supply;
  if (range !== undefined) {
    objectOf("supply.range", range);
    const low = siOf("supply.range.minimum", range.minimum, "voltage", { above: 0 });
    siOf("supply.range.maximum", range.maximum, "voltage", { min: low });
    return [{ name: "only-range", minimum: range.minimum, maximum: range.maximum }];
  }
  const { standard, row } = resolveStandard(supply);
  if (!standard || !row) return undefined;
  return standard.ranges[measuredAt].map(([name, lowest, highest]) => ({
    name,
    minimum: volt(row[lowest] ?? Number.NaN),
    maximum: volt(row[highest] ?? Number.NaN),
  }));
}

/**
 * The ranges that a supply should keep, from the normal one to the widest.
 *
 * @param supply - Nominal voltage, phases and, for other countries, the standard.
 * @param measuredAt - Service entrance or unit.
 * @returns Range A and Range B of ANSI C84.1, the one range of another standard, or the stated range.
 * @throws {@link OutOfRangeError} when the standard has no such nominal voltage, or has to be stated for it.
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
  const ranges = rangesOf(objectOf("supply", supply), measuredAt);
  if (ranges) return frozen(ranges);
  throw new OutOfRangeError({
    argument: "supply.voltage",
    value: supply.voltage.toString(),
    allowed: "a nominal voltage of the stated standard",
    hint: say("supply-voltage.state-standard"),
  });
}

/** Standards that are taken by the nominal voltage alone, where only one of them knows it. */
const known = (): readonly VoltageStandard[] => [ansiC84, iec60038, japaneseSupply];

/** The row of a standard's table for a voltage, as it stands there or as it is also written. */
function rowIn(standard: VoltageStandard, volts: number): readonly number[] | undefined {
  const near = (value = 0) => Math.abs(value - volts) <= 0.5;
  const exact = standard.table.find(([value]) => near(value));
  if (exact) return exact;
  const [, nominal] = standard.alsoWritten?.find(([written]) => near(written)) ?? [];
  return standard.table.find(([value]) => value === nominal);
}
