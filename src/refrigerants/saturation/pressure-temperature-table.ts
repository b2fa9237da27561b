// What would a printed pressure-temperature chart say, for this place and in these units?
// Follows the saturation functions of this module; bubble and dew have a column each.
// Does not cover interpolation: a step as fine as wanted needs none.

import {
  anyKindOf,
  describe,
  listOf,
  numberOf,
  objectOf,
  requireKind,
  requireUnit,
  siOf,
  textOf,
} from "../../quantity/check.ts";
import { InvalidInputError } from "../../quantity/errors.ts";
import { frozen } from "../../quantity/frozen.ts";
import { stepsWithin } from "../../quantity/limit.ts";
import { Quantity, type Unit } from "../../quantity/quantity.ts";
import { kPaa, kPag, psia, psig } from "../../quantity/units/pressure.ts";
import type { Refrigerant } from "../refrigerant.ts";
import { temperatureOf } from "./arguments.ts";
import { pressureAt } from "./saturation-curve.ts";
import { say } from "./say.ts";

/** A pressure as a gauge shows it, or absolute. */
export type TableKind = "gaugePressure" | "absolutePressure";

/** One row of a table. */
export interface TableRow<K extends TableKind> {
  /** Saturation temperature. */
  readonly temperature: Quantity<"temperature">;
  /** Where the liquid begins to boil: for subcooling. */
  readonly bubble: Quantity<K>;
  /** Where the vapor begins to condense: for superheat. */
  readonly dew: Quantity<K>;
}

/** A pressure-temperature table. */
export interface PressureTemperatureTable<K extends TableKind> {
  /** Designation of the refrigerant. */
  readonly designation: string;
  /** Unit of the temperatures. */
  readonly temperatureUnit: Unit<"temperature">;
  /** Unit of the pressures. */
  readonly pressureUnit: Unit<K>;
  /** The rows from `from` to `to`. */
  readonly rows: readonly TableRow<K>[];
}

/** A table of either kind. */
export type AnyTable =
  | PressureTemperatureTable<"gaugePressure">
  | PressureTemperatureTable<"absolutePressure">;

/** From where to where a table goes. */
export interface TableSpan {
  /** Temperature of the first row; its unit is the table's. */
  readonly from: Quantity<"temperature">;
  /** Temperature that the last row does not pass. */
  readonly to: Quantity<"temperature">;
  /** Step between rows, above 0. */
  readonly step: Quantity<"temperatureDifference">;
}

/** Rows that one table may have. Source: the library's own limit. */
const mostRows = 10_000;

/**
 * A pressure-temperature table in any step, as data: gauge pressures for a stated atmosphere, so that it
 * is right at altitude too, or absolute pressures when no atmosphere is given.
 *
 * @param refrigerant - Such as `R407C`.
 * @param options - `from`, `to` and `step`; `atmosphere` for gauge pressures; `pressureUnit`, by itself
 * psi for °F and kPa otherwise.
 * @returns The table; {@link tableAsMarkdown} and {@link tableAsCsv} print it.
 * @throws {@link OutOfRangeError} when `from` or `to` lies outside the refrigerant's range.
 * @throws {@link InvalidInputError} when the step is not above 0, `to` lies below `from`, or there would
 * be more than 10 000 rows.
 *
 * Source: the refrigerant's `sources`.
 *
 * @example
 * ```ts
 * import { degF, deltaF, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R410A, pressureTemperatureTable } from "hvac-install-math/refrigerants";
 *
 * const { rows } = pressureTemperatureTable(R410A, {
 *   from: degF(40),
 *   to: degF(120),
 *   step: deltaF(5),
 *   atmosphere: standardAtmosphere,
 * });
 * rows.length; // => 17
 * rows[1]?.bubble.toString(undefined, 1); // => 130.6 psig
 * ```
 */
export function pressureTemperatureTable(
  refrigerant: Refrigerant,
  options: TableSpan & {
    readonly atmosphere: Quantity<"absolutePressure">;
    readonly pressureUnit?: Unit<"gaugePressure"> | undefined;
  },
): PressureTemperatureTable<"gaugePressure">;
export function pressureTemperatureTable(
  refrigerant: Refrigerant,
  options: TableSpan & {
    readonly atmosphere?: undefined;
    readonly pressureUnit?: Unit<"absolutePressure"> | undefined;
  },
): PressureTemperatureTable<"absolutePressure">;
export function pressureTemperatureTable(
  refrigerant: Refrigerant,
  options: TableSpan & {
    readonly atmosphere?: Quantity<"absolutePressure"> | undefined;
    readonly pressureUnit?: Unit<"gaugePressure"> | Unit<"absolutePressure"> | undefined;
  },
): AnyTable {
  const { from, to, step, atmosphere } = objectOf("options", options);
  const [first, last] = Object.entries({ from, to }).map(([name, T]) =>
    temperatureOf(refrigerant, T, name),
  ) as [number, number];
  const width = siOf("step", step, "temperatureDifference", { above: 0 });
  const imperial = from.unit.symbol === "°F";
  const kind: TableKind = atmosphere === undefined ? "absolutePressure" : "gaugePressure";
  const ambient =
    atmosphere === undefined ? 0 : siOf("atmosphere", atmosphere, "absolutePressure", { above: 0 });
  const usual = atmosphere === undefined ? (imperial ? psia : kPaa) : imperial ? psig : kPag;
  // Inside, both kinds are calculated alike; the overloads say which one it is.
  const { pressureUnit: asked = usual } = options;
  const pressureUnit = asked as Unit<"gaugePressure">;
  if ((pressureUnit?.kind as TableKind) !== kind) {
    throw new InvalidInputError({
      argument: "pressureUnit",
      value: describe(pressureUnit),
      allowed: `a unit of ${kind}`,
      hint: say("refrigerants.table-needs-atmosphere"),
    });
  }
  const count = stepsWithin(last - first, width) + 1;
  numberOf("step", count, { min: 1, max: mostRows, hint: say("refrigerants.number-of-rows") });
  const rows = Array.from({ length: count }, (_, i): TableRow<"gaugePressure"> => {
    const T = Math.min(first + i * width, last);
    const column = (side: "bubble" | "dew") =>
      new Quantity(pressureAt(refrigerant.saturation, side, T) - ambient, pressureUnit);
    return {
      temperature: new Quantity(T, from.unit),
      bubble: column("bubble"),
      dew: column("dew"),
    };
  });
  return frozen({
    designation: refrigerant.designation,
    temperatureUnit: from.unit,
    pressureUnit,
    rows,
  });
}

/**
 * A table as Markdown text.
 *
 * @param table - From {@link pressureTemperatureTable}.
 * @param decimals - Decimals of the pressures, 0 to 12; 1 when left out.
 * @returns The text, one line per row, ending in a line break.
 *
 * @example
 * ```ts
 * import { degC, deltaC } from "hvac-install-math/quantity";
 * import { R32, pressureTemperatureTable, tableAsMarkdown } from "hvac-install-math/refrigerants";
 *
 * const table = pressureTemperatureTable(R32, { from: degC(0), to: degC(5), step: deltaC(5) });
 * tableAsMarkdown(table).split("\n")[2]; // => | 0 | 813.1 | 813.1 |
 * ```
 */
export function tableAsMarkdown(table: AnyTable, decimals = 1): string {
  const [head, ...body] = cells(table, decimals);
  const line = (row: readonly string[]) => `| ${row.join(" | ")} |\n`;
  return line(head) + line(head.map(() => "---:")) + body.map(line).join("");
}

/**
 * A table as CSV text (RFC 4180 but for plain line feeds).
 *
 * @param table - From {@link pressureTemperatureTable}.
 * @param decimals - Decimals of the pressures, 0 to 12; 1 when left out.
 * @returns The text with a header line, ending in a line break.
 *
 * @example
 * ```ts
 * import { degC, deltaC } from "hvac-install-math/quantity";
 * import { R32, pressureTemperatureTable, tableAsCsv } from "hvac-install-math/refrigerants";
 *
 * const table = pressureTemperatureTable(R32, { from: degC(0), to: degC(5), step: deltaC(5) });
 * tableAsCsv(table, 2).split("\n")[1]; // => 0,813.10,813.10
 * ```
 */
export function tableAsCsv(table: AnyTable, decimals = 1): string {
  return cells(table, decimals)
    .map((row) => `${row.join(",")}\n`)
    .join("");
}

/** Header and rows as text. */
function cells(table: AnyTable, decimals: number): [head: string[], ...body: string[][]] {
  const { designation, temperatureUnit, pressureUnit, rows } = objectOf("table", table);
  textOf("table.designation", designation);
  requireUnit("table.temperatureUnit", temperatureUnit, "temperature");
  requireUnit("table.pressureUnit", pressureUnit, anyKindOf(pressureUnit));
  const unit = pressureUnit as Unit<"gaugePressure">;
  listOf<unknown>("table.rows", rows, mostRows).forEach((row, i) => {
    const { temperature, bubble, dew } = objectOf(`table.rows[${i}]`, row as TableRow<never>);
    requireKind(`table.rows[${i}].temperature`, temperature, "temperature");
    requireKind(`table.rows[${i}].bubble`, bubble, unit.kind);
    requireKind(`table.rows[${i}].dew`, dew, unit.kind);
  });
  const digits = numberOf("decimals", decimals, { min: 0, max: 12 });
  const pressure = (p: { in(unit: never): number }) => p.in(unit as never).toFixed(digits);
  return [
    [`${designation} ${temperatureUnit.symbol}`, `bubble ${unit.symbol}`, `dew ${unit.symbol}`],
    ...rows.map(({ temperature, bubble, dew }) => [
      // Nine decimals hide the noise of steps that binary numbers cannot hold.
      String(Number(temperature.in(temperatureUnit).toFixed(9))),
      pressure(bubble),
      pressure(dew),
    ]),
  ];
}
