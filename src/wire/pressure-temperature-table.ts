// How does a whole pressure-temperature table travel as JSON, and what it is asked for with?
// Follows the types of refrigerants. A refrigerant goes by its designation, a unit by its symbol.
// Does not cover a table as text: print it on arrival.
import type { Quantity, Unit } from "../quantity/quantity.ts";
import type {
  AnyTable,
  PressureTemperatureTable,
  Refrigerant,
  TableKind,
  TableRow,
  TableSpan,
} from "../refrigerants/index.ts";
import { type Codec, codecOf } from "./codec.ts";
import { byDesignation } from "./refrigerant-names.ts";
import { unit } from "./units-of.ts";
import { either, type FieldsOf, list, type ObjectOf, of } from "./wire-shape.ts";

/** A table in gauge pressure. Source: none; the library's own type. */
export interface GaugeOptions extends TableSpan {
  readonly atmosphere: Quantity<"absolutePressure">;
  readonly pressureUnit?: Unit<"gaugePressure">;
}
/** A table in absolute pressure. Source: none; the library's own type. */
export interface AbsoluteOptions extends TableSpan {
  readonly atmosphere?: undefined;
  readonly pressureUnit?: Unit<"absolutePressure">;
}
/** A table that is asked for. Source: none; the library's own type. */
export interface AskedTable<Options> {
  readonly refrigerant: Refrigerant;
  readonly options: Options;
}

const span = (): FieldsOf<TableSpan> => ({
  from: "temperature",
  to: "temperature",
  step: "temperatureDifference",
});

/** JSON of what `pressureTemperatureTable` takes. Source: the library's own format. */
export const pressureTemperatureTableInput: Codec<
  AskedTable<GaugeOptions> | AskedTable<AbsoluteOptions>
> = /* @__PURE__ */ codecOf<AskedTable<GaugeOptions> | AskedTable<AbsoluteOptions>>({
  name: "input",
  shape: () =>
    either(
      of<AskedTable<GaugeOptions>>({
        refrigerant: byDesignation(),
        options: of<GaugeOptions>({
          ...span(),
          atmosphere: "absolutePressure",
          "pressureUnit?": unit("gaugePressure"),
        }),
      }),
      of<AskedTable<AbsoluteOptions>>({
        refrigerant: byDesignation(),
        options: of<AbsoluteOptions>({ ...span(), "pressureUnit?": unit("absolutePressure") }),
      }),
    ),
});

const table = <K extends TableKind>(kind: K): ObjectOf<PressureTemperatureTable<K>> =>
  of<PressureTemperatureTable<"gaugePressure">>({
    designation: "text",
    temperatureUnit: unit("temperature"),
    pressureUnit: unit(kind as "gaugePressure"), // the kind of all is held together by the argument
    rows: list(
      of<TableRow<"gaugePressure">>({
        temperature: "temperature",
        bubble: kind as "gaugePressure",
        dew: kind as "gaugePressure",
      }),
    ),
  }) as unknown as ObjectOf<PressureTemperatureTable<K>>;

/**
 * JSON of what `pressureTemperatureTable` gives: the whole table.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { degC, deltaC } from "hvac-install-math/quantity";
 * import { R32, pressureTemperatureTable, tableAsCsv } from "hvac-install-math/refrigerants";
 * import { pressureTemperatureTableResult } from "hvac-install-math/wire";
 *
 * const table = pressureTemperatureTable(R32, { from: degC(0), to: degC(5), step: deltaC(5) });
 * const sent = pressureTemperatureTableResult.stringify(table);
 * sent.slice(0, 67); // => {"designation":"R-32","temperatureUnit":"°C","pressureUnit":"kPaa",
 * tableAsCsv(pressureTemperatureTableResult.parse(sent)).split("\n")[1]; // => 0,813.1,813.1
 * ```
 */
export const pressureTemperatureTableResult: Codec<AnyTable> = /* @__PURE__ */ codecOf<AnyTable>({
  name: "result",
  shape: () => either(table("gaugePressure"), table("absolutePressure")),
});
