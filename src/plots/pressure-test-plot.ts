// What did the nitrogen do? Readings, what temperature alone explains, the limit, and what was found.
// Follows JCGM 106:2012, 8.3, for the guarded decision; the expected pressure is that of the pressure-test module.
// Does not cover the verdict: the assessment brings it, and the picture shows it.
import type {
  DropLimit,
  LeakLimit,
  LogAssessment,
  PressureTest,
  PressureTestLog,
  TestReading,
  TwoReadingAssessment,
} from "../pressure-test/index.ts";
import { describe } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { Quantity } from "../quantity/quantity.ts";
import { linePlot } from "./line-plot.ts";
import { frameOf, type PlotOptions } from "./plot-options.ts";
import { explainedBy, foundOf, temperaturePanel } from "./pressure-test-course.ts";
import { testRowsOf } from "./pressure-test-rows.ts";
import { inUnit } from "./reader.ts";
import type { Line, Panel, Point } from "./shapes.ts";
import { say } from "./statements.ts";
import { thinned } from "./thin.ts";

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
 * svg.includes("drop 0.37 psi ± 1.1 psi, limit 4.0 psi"); // => true
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
  if (typeof temperature !== "boolean") {
    const value = describe(temperature);
    throw new InvalidInputError({ argument: "temperature", value, allowed: "true or false" });
  }
  const rows = testRowsOf(test);
  const { readings, elapsed, isTimed, kind } = rows;
  const [first, last] = [readings[0] as TestReading, readings.at(-1) as TestReading];
  const [from, to] = [elapsed[0] as number, elapsed.at(-1) as number];
  const found = foundOf(assessment);
  const { drop, uncertainty, limit } = found;

  // The readings, and what the temperature explains at those that are drawn.
  const pressures = readings.map(({ pressure }) => pressure.si);
  const drawn = thinned(elapsed, pressures);
  const explained = explainedBy(test, rows, assessment, drop);
  const pressureUnit = reader.unitFor(first.pressure as Quantity<typeof kind>);
  const timeUnit = reader.timeUnitFor(to - from);
  const time = (seconds: number) => (isTimed ? inUnit(seconds, timeUnit) : seconds);
  const course = (value: (i: number) => number): Point[] =>
    drawn.map((i) => [time(elapsed[i] as number), inUnit(value(i), pressureUnit)]);
  const expected = new Map(drawn.map((i) => [i, explained(readings[i] as TestReading)]));
  const expectedAt = (i: number) => expected.get(i) as number;
  const { per, maximumLeakRate } = (test.criterion ?? {}) as Partial<DropLimit & LeakLimit>;
  const isRate = per !== undefined || maximumLeakRate !== undefined;
  const allowed = (i: number) =>
    (limit ?? 0) * (isRate ? ((elapsed[i] as number) - from) / (to - from) : 1);

  const difference = (si: number): Quantity<"pressureDifference"> =>
    new Quantity(si, pressureUnit.difference);
  const figures = { drop: difference(drop), uncertainty: difference(uncertainty) };
  const atLimit = limit === undefined ? undefined : { limit: difference(limit) };
  const lines: Line[] = [
    {
      role: "measured",
      label: reader.word("plots.readings"),
      points: course((i) => pressures[i] as number),
      ...(drawn.length <= 40 && { marks: "dotted line" as const }),
    },
    {
      role: "model",
      label: reader.word("plots.explained-by-temperature"),
      points: course(expectedAt),
    },
    {
      role: "measured",
      label: reader.say(say("plots.found-at-end", { uncertainty: figures.uncertainty })),
      marks: "rings",
      whisker: uncertainty / pressureUnit.scale,
      points: [[time(to), inUnit(expectedAt(readings.length - 1) - drop, pressureUnit)]],
    },
  ];
  if (atLimit) {
    lines.splice(2, 0, {
      role: "limit",
      label: reader.say(say("plots.limit", atLimit)),
      points: course((i) => expectedAt(i) - allowed(i)),
    });
  }
  const unit = reader.unitName(pressureUnit as never);
  const panels: Panel[] = [
    {
      name: reader.say(say("plots.pressure-axis", { unit })),
      height: 190,
      bands: [],
      levels: [],
      lines,
      reach: [],
    },
  ];
  if (temperature) panels.push(temperaturePanel(rows, time, reader));

  const { outcome, sentences } = reader.verdict(assessment);
  const seen = {
    count: readings.length,
    first: first.pressure as Quantity<"gaugePressure">,
    firstTemperature: [first.temperature].flat(),
    last: last.pressure as Quantity<"gaugePressure">,
    lastTemperature: [last.temperature].flat(),
  };
  const shown = isTimed
    ? say("plots.test-shown", { ...seen, span: new Quantity(to - from, timeUnit) })
    : say("plots.untimed-test-shown", seen);
  return linePlot({
    frame,
    outcome,
    result: reader.say(
      atLimit
        ? say("plots.drop-with-limit", { ...figures, ...atLimit })
        : say("plots.drop-without-limit", figures),
    ),
    description: `${sentences} ${reader.say(shown)}`,
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
