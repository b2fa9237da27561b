// At what pressure does a refrigerant boil and condense? Bubble and dew pressure against temperature.
// Follows the equations of state of the refrigerants module. Does not cover superheat, subcooling or oil.
import { objectOf, siOf } from "../quantity/check.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { degC } from "../quantity/units/temperature.ts";
import {
  type AnyTable,
  pressureTemperatureTable,
  type Refrigerant,
} from "../refrigerants/index.ts";
import { linePlot } from "./line-plot.ts";
import { frameOf, type PlotOptions } from "./plot-options.ts";
import { inUnit, unitOf } from "./reader-units.ts";
import type { Line, Point } from "./shapes.ts";

/** Span, units and looks of {@link saturationPlot}. Source: none; the library's own type. */
export interface SaturationPlotOptions extends PlotOptions {
  /** Lowest temperature; −40 °C, or the lowest that the refrigerant's range allows, when left out. */
  readonly from?: Quantity<"temperature">;
  /** Highest temperature; 65 °C, or the highest that the refrigerant's range allows, when left out. */
  readonly to?: Quantity<"temperature">;
  /** Station pressure, for what a gauge shows there; absolute pressures when left out. */
  readonly atmosphere?: Quantity<"absolutePressure">;
  /** Unit of the pressures: gauge with an atmosphere, absolute without; by itself psi for °F and kPa otherwise. */
  readonly pressureUnit?: Unit<"gaugePressure"> | Unit<"absolutePressure">;
  /** Unit of the temperatures; that of `from` when left out. */
  readonly temperatureUnit?: Unit<"temperature">;
}

/** Stretches of each curve; a stretch is then about 3 units wide. */
const stretches = 120;

/**
 * Draws the saturation curves of a refrigerant: bubble and dew pressure against temperature, or the one
 * curve of a pure substance, in the reader's units, as a gauge shows it or absolute.
 *
 * Assumes the nominal composition; a blend that has leaked has other curves.
 *
 * @param refrigerant - Such as `R407C`.
 * @param options - Span, units, `atmosphere` for gauge pressures, and {@link PlotOptions}.
 * @returns One `<svg>` element as text, with its own text alternative.
 * @throws {@link OutOfRangeError} when `from` or `to` lies outside the refrigerant's range.
 * @throws {@link InvalidInputError} for a quantity or unit of another kind, a span that is none, or an id
 * that is none.
 *
 * Cautions: a curve is for seeing, a gauge and `bubblePressure` or `dewPressure` are for reading.
 * Superheat goes with the dew curve, subcooling with the bubble curve.
 *
 * Source: the refrigerant's `sources`.
 *
 * @example
 * ```ts
 * import { saturationPlot } from "hvac-install-math/plots";
 * import { degF, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R407C } from "hvac-install-math/refrigerants";
 *
 * const svg = saturationPlot(R407C, { from: degF(-20), to: degF(140), atmosphere: standardAtmosphere });
 * svg.includes("pressure, psig"); // => true
 * svg.includes("bubble: liquid begins to boil"); // => true
 * ```
 */
export function saturationPlot(
  refrigerant: Refrigerant,
  options: SaturationPlotOptions = {},
): string {
  const { designation, range } = objectOf("refrigerant", refrigerant);
  const frame = frameOf(options, "saturation-plot", `Saturation of ${designation}`);
  const { min, max } = objectOf("refrigerant.range", range);
  const { from = degC(Math.max(-40, min.in(degC))), to = degC(Math.min(65, max.in(degC))) } =
    options;
  const { atmosphere, pressureUnit } = options;
  const temperatureUnit = unitOf("temperatureUnit", options.temperatureUnit, from.unit);
  const low = siOf("from", from, "temperature");
  const high = siOf("to", to, "temperature", { above: low });
  const span = {
    from: from.as(temperatureUnit),
    to,
    step: temperatureUnit.difference((high - low) / stretches / temperatureUnit.scale),
  };
  const table = pressureTemperatureTable(refrigerant, {
    ...span,
    ...(atmosphere !== undefined && { atmosphere }),
    ...(pressureUnit !== undefined && { pressureUnit }),
  } as never) as AnyTable;
  const unit = table.pressureUnit;
  const curve = (side: "bubble" | "dew") =>
    table.rows.map(
      (row): Point => [inUnit(row.temperature.si, temperatureUnit), inUnit(row[side].si, unit)],
    );
  const [bubble, dew] = [curve("bubble"), curve("dew")];
  const isPure = refrigerant.composition.length === 1;
  const lines: Line[] = isPure
    ? [{ role: "measured", points: dew, label: "liquid and vapor in balance" }]
    : [
        { role: "measured", points: bubble, label: "bubble: liquid begins to boil" },
        { role: "model", points: dew, label: "dew: vapor begins to condense" },
      ];
  const place =
    atmosphere === undefined
      ? "absolute pressure"
      : `gauge pressure where the air is at ${atmosphere}`;
  const [first, last] = [table.rows[0], table.rows.at(-1)] as const;
  const ends = [first, last].map((row) =>
    row === undefined
      ? ""
      : `at ${row.temperature.toString(undefined, 0)} ${
          isPure
            ? row.dew.toString(undefined, 1)
            : `bubble ${row.bubble.toString(undefined, 1)}, dew ${row.dew.toString(undefined, 1)}`
        }`,
  );
  return linePlot({
    frame,
    outcome: designation,
    result: place,
    description: `Saturation pressure of ${designation}, ${place}: ${ends.join("; ")}.`,
    xName: `temperature, ${temperatureUnit.symbol}`,
    x: [inUnit(low, temperatureUnit), inUnit(high, temperatureUnit)],
    panels: [
      {
        name: `pressure, ${unit.symbol}`,
        height: 230,
        bands: [],
        levels: [],
        lines,
        reach: [],
      },
    ],
  });
}
