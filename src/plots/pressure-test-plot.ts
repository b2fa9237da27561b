// What did the nitrogen do? Readings, what temperature alone explains, the limit, and what was found.
// Follows JCGM 106:2012, 8.3, for the guarded decision; the expected pressure is that of the pressure-test module.
// Does not cover the verdict: the assessment brings it, and the picture shows it.
import type {
  LogAssessment,
  PressureTest,
  PressureTestLog,
  TestReading,
  TwoReadingAssessment,
} from "../pressure-test/index.ts";
import { flagOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { linePlot } from "./line-plot.ts";
import { frameOf, type PlotOptions } from "./plot-options.ts";
import { foundOf, pressureLines, temperaturePanel } from "./pressure-test-course.ts";
import { type TestRows, testRowsOf } from "./pressure-test-rows.ts";
import { inUnit } from "./reader.ts";
import type { Panel } from "./shapes.ts";
import { type PlotStatement, say } from "./statements.ts";

/** Language, units and looks of {@link pressureTestPlot}. */
export interface PressureTestPlotOptions extends PlotOptions {
  /** Whether the temperature has a panel of its own; `true` when left out. */
  readonly temperature?: boolean | undefined;
}

/**
 * Draws a nitrogen test: the readings, the pressure that the temperature alone explains, and, where a limit was
 * stated, the lowest pressure that keeps it. A ring with its uncertainty marks what was found at the end, which
 * decides: it can pass only where the whole of it lies above the limit and reaches the explained pressure. Where all of
 * it lies below the explained pressure a leak is proven; below the limit too, it fails. What else the verdict asks,
 * such as the length of the hold, it says in words.
 *
 * A limit that is a rate grows with time. A log is drawn with at
 * most 600 points, the lowest and highest of each stretch among them.
 *
 * @param test - What was given to `assessPressureTest` or `assessPressureLog`.
 * @param assessment - What it answered.
 * @param options - Language and units ({@link PlotOptions}), `temperature` for the second panel.
 * @returns One `<svg>` element as text, with its own text alternative.
 * @throws {@link InvalidInputError} for a quantity or unit of another kind, no language, readings that are missing or
 * all at one time, or an id that is none.
 *
 * Cautions: the picture is no permission to raise the pressure. Dry nitrogen only, regulator and relief
 * device, never above the lowest marked limit; show the cautions of the assessment beside it.
 *
 * Source: JCGM 106:2012, 8.3; Span et al. (2000), doi:10.1063/1.1349047, for the explained pressure.
 *
 * @example
 * ```ts
 * import { english } from "hvac-install-math/language/en";
 * import { pressureTestPlot } from "hvac-install-math/plots";
 * import { assessPressureTest } from "hvac-install-math/pressure-test";
 * import { deltaF, degF, hour, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const test = {
 *   start: { pressure: psig(500), temperature: degF(80), elapsed: hour(0) },
 *   end: { pressure: psig(479), temperature: degF(60), elapsed: hour(12) },
 *   instruments: { pressure: { accuracy: psi(2) }, temperature: { accuracy: deltaF(1), followsGasWithin: deltaF(0) } },
 *   criterion: { maximumDrop: psi(4) },
 *   atmosphere: standardAtmosphere,
 * };
 * const reader = { language: english, system: "inch-pound" } as const;
 * const svg = pressureTestPlot(test, assessPressureTest(test), { ...reader, id: "line-set-1" });
 * svg.startsWith("<svg "); // => true
 * svg.includes("drop 0.37 psi ± 1.1 psi, limit 4 psi"); // => true
 * ```
 */
export function pressureTestPlot(
  test: PressureTest | PressureTestLog,
  assessment: TwoReadingAssessment | LogAssessment,
  options: PressureTestPlotOptions,
): string {
  const frame = frameOf(options, "pressure-test-plot", say("plots.pressure-test"));
  const { reader } = frame;
  const { temperature = true } = options;
  flagOf("temperature", temperature);
  const rows = testRowsOf(test);
  const { readings, elapsed, isTimed, kind } = rows;
  const [first] = readings as [TestReading];
  const [from, to] = [elapsed[0] as number, elapsed.at(-1) as number];
  const found = foundOf(assessment);
  const pressureUnit = reader.unitFor(first.pressure as Quantity<typeof kind>);
  const timeUnit = reader.timeUnitFor(to - from);
  const time = (seconds: number) => (isTimed ? inUnit(seconds, timeUnit) : seconds);
  const difference = (si: number): Quantity<"pressureDifference"> =>
    new Quantity(si, pressureUnit.difference);
  const { drop, uncertainty, limit } = found;
  const figures = { drop: difference(drop), uncertainty: difference(uncertainty) };
  const atLimit = limit === undefined ? undefined : { limit: difference(limit) };
  const unit = reader.unitName(pressureUnit as never);
  const panels: Panel[] = [
    {
      name: reader.say(say("plots.pressure-axis", { unit })),
      height: 190,
      bands: [],
      levels: [],
      lines: pressureLines(test, assessment, { rows, found, time, pressureUnit, reader }),
      reach: [],
    },
  ];
  if (temperature) panels.push(temperaturePanel(rows, time, reader));
  const { outcome, sentences } = reader.verdict(assessment);
  return linePlot({
    frame,
    outcome,
    result: reader.say(
      atLimit
        ? say("plots.drop-with-limit", { ...figures, ...atLimit })
        : say("plots.drop-without-limit", figures),
    ),
    description: `${sentences} ${reader.say(shownOf(rows, new Quantity(to - from, timeUnit)))}`,
    xName: isTimed
      ? reader.say(say("plots.time-axis", { unit: reader.unitName(timeUnit as never) }))
      : reader.word("plots.time-not-recorded"),
    x: [time(from), time(to)],
    ...(!isTimed && {
      xWords: [[0, reader.word("plots.start")] as const, [1, reader.word("plots.end")] as const],
    }),
    panels,
  });
}

/** Which readings are drawn, in a sentence. */
function shownOf({ readings, isTimed }: TestRows, span: Quantity<"duration">): PlotStatement {
  const [first, last] = [readings[0] as TestReading, readings.at(-1) as TestReading];
  const seen = {
    count: readings.length,
    first: first.pressure as Quantity<"gaugePressure">,
    firstTemperature: [first.temperature].flat(),
    last: last.pressure as Quantity<"gaugePressure">,
    lastTemperature: [last.temperature].flat(),
  };
  return isTimed
    ? say("plots.test-shown", { ...seen, span })
    : say("plots.untimed-test-shown", seen);
}
