// At what pressure does a refrigerant boil and condense? Bubble and dew pressure against temperature.
// Follows the equations of state of the refrigerants module. Does not cover superheat, subcooling or oil.
import { usualUnit } from "../display/index.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { degC } from "../quantity/units/temperature.ts";
import type { Refrigerant } from "../refrigerants/index.ts";
import { type AnyTable, pressureTemperatureTable } from "../refrigerants/saturation/index.ts";
import { linePlot } from "./line-plot.ts";
import { frameOf, type PlotOptions } from "./plot-options.ts";
import { inUnit } from "./reader.ts";
import type { Line, Point } from "./shapes.ts";
import { say } from "./statements.ts";

/** Span, language, units and looks of {@link saturationPlot}. */
export interface SaturationPlotOptions extends PlotOptions {
  /** Lowest temperature; −40 °C, or the lowest that the refrigerant's range allows, when left out. */
  readonly from?: Quantity<"temperature"> | undefined;
  /** Highest temperature; 65 °C, or the highest that the refrigerant's range allows, when left out. */
  readonly to?: Quantity<"temperature"> | undefined;
  /** Station pressure, for what a gauge shows there; absolute pressures when left out. */
  readonly atmosphere?: Quantity<"absolutePressure"> | undefined;
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
 * @param options - Language and units ({@link PlotOptions}), span, `atmosphere` for gauge pressures.
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
 * import { english } from "hvac-install-math/language/en";
 * import { saturationPlot } from "hvac-install-math/plots";
 * import { degF, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R407C } from "hvac-install-math/refrigerants";
 *
 * const reader = { language: english, system: "inch-pound" } as const;
 * const span = { from: degF(-20), to: degF(140), atmosphere: standardAtmosphere };
 * const svg = saturationPlot(R407C, { ...reader, ...span });
 * svg.includes("Pressure, psig"); // => true
 * svg.includes("bubble: liquid begins to boil"); // => true
 * ```
 */
export function saturationPlot(refrigerant: Refrigerant, options: SaturationPlotOptions): string {
  const { designation, range } = objectOf("refrigerant", refrigerant);
  const named = { designation: { verbatim: designation } };
  const frame = frameOf(options, "saturation-plot", say("plots.saturation", named));
  const { reader } = frame;
  const { min, max } = objectOf("refrigerant.range", range);
  const { from = degC(Math.max(-40, min.in(degC))), to = degC(Math.min(65, max.in(degC))) } =
    options;
  const { atmosphere, system, units = {} } = options;
  const low = siOf("from", from, "temperature");
  const temperatureUnit = reader.unitFor(from);
  const high = siOf("to", to, "temperature", { above: low });
  const span = {
    from: from.as(temperatureUnit),
    to,
    step: temperatureUnit.difference((high - low) / stretches / temperatureUnit.scale),
  };
  const table = pressureTemperatureTable(refrigerant, {
    ...span,
    ...(atmosphere !== undefined && { atmosphere }),
    pressureUnit:
      atmosphere === undefined
        ? (units.absolutePressure ?? usualUnit("absolutePressure", system))
        : (units.gaugePressure ?? usualUnit("gaugePressure", system)),
  } as never) as AnyTable;
  const unit = table.pressureUnit;
  const curve = (side: "bubble" | "dew") =>
    table.rows.map(
      (row): Point => [inUnit(row.temperature.si, temperatureUnit), inUnit(row[side].si, unit)],
    );
  const [bubble, dew] = [curve("bubble"), curve("dew")];
  const isPure = refrigerant.composition.length === 1;
  const lines: Line[] = isPure
    ? [{ role: "measured", points: dew, label: reader.word("plots.in-balance") }]
    : [
        { role: "measured", points: bubble, label: reader.word("plots.bubble") },
        { role: "model", points: dew, label: reader.word("plots.dew") },
      ];
  const place = reader.say(
    atmosphere === undefined
      ? say("plots.absolute-pressure")
      : say("plots.gauge-pressure", { atmosphere }),
  );
  const ends = [table.rows[0], table.rows.at(-1)].flatMap((row) => {
    if (row === undefined) return [];
    const { temperature, bubble, dew } = row as typeof row & SamePressures;
    return reader.say(
      isPure
        ? say("plots.pure-point", { temperature, pressure: dew })
        : say("plots.blend-point", { temperature, bubble, dew }),
    );
  });
  const axis = (one: Unit<never>) => ({ unit: reader.unitName(one) });
  return linePlot({
    frame,
    outcome: designation,
    result: place,
    description: [`${frame.title}, ${place}.`, ...ends].join(" "),
    xName: reader.say(say("plots.temperature-axis", axis(temperatureUnit as never))),
    x: [inUnit(low, temperatureUnit), inUnit(high, temperatureUnit)],
    panels: [
      {
        name: reader.say(say("plots.pressure-axis", axis(unit as never))),
        height: 230,
        bands: [],
        levels: [],
        lines,
        reach: [],
      },
    ],
  });
}

/** A row of either kind of pressure; which one, the table's unit says. */
interface SamePressures {
  readonly bubble: Quantity<"gaugePressure">;
  readonly dew: Quantity<"gaugePressure">;
}
