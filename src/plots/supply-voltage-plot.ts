// Does the supply suit the unit? Lowest and highest reading beside the ranges of nameplate and standard.
// Follows the verdict of supply-voltage.
// Does not cover a log over time, nor the unbalance of three phases: the verdict says those in words.
import { objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { SupplyVoltageAssessment } from "../supply-voltage/index.ts";
import { supplyName } from "../supply-voltage/standards/index.ts";
import { type Bar, barPlot } from "./bar-plot.ts";
import { frameOf, type PlotOptions } from "./plot-options.ts";
import { inUnit } from "./reader.ts";
import { say } from "./statements.ts";

type Estimated = SupplyVoltageAssessment["lowest"];
interface Range {
  readonly minimum: Quantity<"voltage">;
  readonly maximum: Quantity<"voltage">;
}

/**
 * Draws a supply as bars: what the nameplate allows, the range of the standard that the readings keep where there is
 * one, and from the lowest to the highest reading, each ringed, with its uncertainty.
 *
 * @param assessment - What `assessSupplyVoltage` answered.
 * @param options - Language, units and looks.
 * @returns One `<svg>` element as text, with its own text alternative.
 * @throws {@link InvalidInputError} for an assessment that is none, no language, or an id that is none.
 *
 * Cautions: line voltage can kill; show the cautions of the assessment beside the picture.
 *
 * Source: none for the picture; the assessment names its own.
 *
 * @example
 * ```ts
 * import { english } from "hvac-install-math/language/en";
 * import { supplyVoltagePlot } from "hvac-install-math/plots";
 * import { volt } from "hvac-install-math/quantity";
 * import { assessSupplyVoltage } from "hvac-install-math/supply-voltage";
 *
 * const supply = assessSupplyVoltage({
 *   nameplate: { rated: [volt(208), volt(230)], range: { minimum: volt(197), maximum: volt(253) } },
 *   supply: { voltage: volt(208), phases: 1 },
 *   readings: [{ voltage: volt(201) }],
 *   measuredAt: "service",
 * });
 * const svg = supplyVoltagePlot(supply, { language: english, system: "inch-pound" });
 * svg.includes("lowest and highest reading"); // => true
 * ```
 */
export function supplyVoltagePlot(
  assessment: SupplyVoltageAssessment,
  options: PlotOptions,
): string {
  const frame = frameOf(options, "supply-voltage-plot", say("plots.supply-voltage"));
  const { reader } = frame;
  const { outcome, sentences } = reader.verdict(assessment);
  const { lowest, highest, nameplateRange, supplyRange } = assessment;
  const [low, high] = [voltageOf("lowest", lowest), voltageOf("highest", highest)];
  const unit = reader.unitFor(lowest.value);
  const volts = (si: number) => inUnit(si, unit);
  const plate = rangeOf("nameplateRange", nameplateRange);
  const bars: Bar[] = [
    {
      role: "limit",
      label: reader.say(say("plots.nameplate-range", plate)),
      low: volts(plate.low.si),
      high: volts(plate.high.si),
    },
  ];
  if (supplyRange) {
    const standard = rangeOf("supplyRange", supplyRange);
    bars.push({
      role: "guide",
      label: reader.say(
        say("plots.standard-range", { ...standard, name: supplyName(supplyRange.name) }),
      ),
      low: volts(standard.low.si),
      high: volts(standard.high.si),
    });
  }
  bars.push({
    role: "measured",
    label: reader.word("plots.lowest-and-highest"),
    low: volts(low.si),
    high: volts(high.si),
    rings: [low, high].map(({ si, uncertainty }) => ({
      at: volts(si),
      uncertainty: uncertainty / unit.scale,
    })),
  });
  return barPlot({
    frame,
    outcome,
    result: reader.say(
      say("plots.voltage-range", {
        readings: low.si === high.si ? 1 : 2,
        low: new Quantity(low.si, unit),
        high: new Quantity(high.si, unit),
      }),
    ),
    description: sentences,
    xName: reader.say(say("plots.voltage-axis", { unit: reader.unitName(unit as never) })),
    reach: [],
    bars,
  });
}

/** A reading and its expanded uncertainty, V. */
function voltageOf(name: string, estimate: Estimated): { si: number; uncertainty: number } {
  const path = `assessment.${name}`;
  const { value, expandedUncertainty } = objectOf(path, estimate);
  return {
    si: siOf(`${path}.value`, value, "voltage"),
    uncertainty: siOf(`${path}.expandedUncertainty`, expandedUncertainty, "voltage", { min: 0 }),
  };
}

/** A range, checked. */
function rangeOf(
  name: string,
  range: Range,
): { low: Quantity<"voltage">; high: Quantity<"voltage"> } {
  const path = `assessment.${name}`;
  const { minimum, maximum } = objectOf(path, range);
  siOf(`${path}.minimum`, minimum, "voltage");
  siOf(`${path}.maximum`, maximum, "voltage", { min: minimum.si });
  return { low: minimum, high: maximum };
}
