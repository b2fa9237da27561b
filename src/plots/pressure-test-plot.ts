// What did the nitrogen do? Readings, what temperature alone explains, and the limit with its guard band.
// Follows JCGM 106:2012, 8.3, for the guard band; the expected pressure is that of the pressure-test module.
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
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { linePlot } from "./line-plot.ts";
import { frameOf, type PlotOptions } from "./plot-options.ts";
import { explainedBy, foundOf, temperaturePanel } from "./pressure-test-course.ts";
import { testRowsOf } from "./pressure-test-rows.ts";
import { inUnit, timeUnitFor, unitOf } from "./reader-units.ts";
import type { Band, Line, Panel, Point } from "./shapes.ts";
import { thinned } from "./thin.ts";
import { figure, round, sentences } from "./words.ts";

/** Units and looks of {@link pressureTestPlot}. Source: none; the library's own type. */
export interface PressureTestPlotOptions extends PlotOptions {
  /** Unit of the pressures, of the kind of the readings; that of the first reading when left out. */
  readonly pressureUnit?: Unit<"gaugePressure"> | Unit<"absolutePressure">;
  /** Unit of the time; one that suits the length of the test when left out. */
  readonly timeUnit?: Unit<"duration">;
  /** Unit of the temperatures; that of the first reading when left out. */
  readonly temperatureUnit?: Unit<"temperature">;
  /** Whether the temperature has a panel of its own; `true` when left out. */
  readonly temperature?: boolean;
}

/**
 * Draws a nitrogen test: the readings, the pressure that the temperature alone explains, and, where a
 * limit was stated, the lowest pressure that keeps it with the guard band of the decision around it. A
 * ring marks what was found at the end. Above the band it passes, below it fails, inside it the test
 * cannot tell. Without a limit the band lies around the explained pressure, and a ring below it is a
 * proven leak.
 *
 * A limit that is a rate grows with time. The band is that of the whole test. A log is drawn with at
 * most 600 points, the lowest and highest of each stretch among them.
 *
 * @param test - What was given to `assessPressureTest` or `assessPressureLog`.
 * @param assessment - What it answered.
 * @param options - Units, `temperature` for the second panel, and {@link PlotOptions}.
 * @returns One `<svg>` element as text, with its own text alternative.
 * @throws {@link InvalidInputError} for a quantity or unit of another kind, readings that are missing or
 * all at one time, or an id that is none.
 *
 * Cautions: the picture is no permission to raise the pressure. Dry nitrogen only, regulator and relief
 * device, never above the lowest marked limit; show the cautions of the assessment beside it.
 *
 * Source: JCGM 106:2012, 8.3; Span et al. (2000), doi:10.1063/1.1349047, for the explained pressure.
 *
 * @example
 * ```ts
 * import { pressureTestPlot } from "hvac-install-math/plots";
 * import { assessPressureTest } from "hvac-install-math/pressure-test";
 * import { deltaF, degF, hour, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const test = {
 *   start: { pressure: psig(500), temperature: degF(80), elapsed: hour(0) },
 *   end: { pressure: psig(479), temperature: degF(60), elapsed: hour(12) },
 *   instruments: { pressure: { accuracy: psi(2) }, temperature: { accuracy: deltaF(1) } },
 *   criterion: { maximumDrop: psi(4) },
 *   atmosphere: standardAtmosphere,
 * };
 * const svg = pressureTestPlot(test, assessPressureTest(test), { id: "line-set-1" });
 * svg.startsWith("<svg "); // => true
 * svg.includes("corrected drop 0.4 psi ± 1.6 psi, limit 4 psi"); // => true
 * ```
 */
export function pressureTestPlot(
  test: PressureTest | PressureTestLog,
  assessment: TwoReadingAssessment | LogAssessment,
  options: PressureTestPlotOptions = {},
): string {
  const frame = frameOf(options, "pressure-test-plot", "Pressure test with dry nitrogen");
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
  const pressureUnit = unitOf(
    "pressureUnit",
    options.pressureUnit as Unit<typeof kind> | undefined,
    first.pressure.unit as Unit<typeof kind>,
  );
  const timeUnit = unitOf("timeUnit", options.timeUnit, timeUnitFor(to - from));
  const time = (seconds: number) => (isTimed ? inUnit(seconds, timeUnit) : seconds);
  const course = (value: (i: number) => number): Point[] =>
    drawn.map((i) => [time(elapsed[i] as number), inUnit(value(i), pressureUnit)]);
  const expected = new Map(drawn.map((i) => [i, explained(readings[i] as TestReading)]));
  const expectedAt = (i: number) => expected.get(i) as number;
  const { per, maximumLeakRate } = (test.criterion ?? {}) as Partial<DropLimit & LeakLimit>;
  const isRate = per !== undefined || maximumLeakRate !== undefined;
  const allowed = (i: number) =>
    (limit ?? 0) * (isRate ? ((elapsed[i] as number) - from) / (to - from) : 1);

  const psi = pressureUnit.difference;
  const shown = (si: number) => figure(si, psi, uncertainty);
  const stated = `limit ${round(limit ?? 0, psi, 6)}`;
  const lines: Line[] = [
    {
      role: "measured",
      label: "readings",
      points: course((i) => pressures[i] as number),
      ...(drawn.length <= 40 && { marks: "dotted line" as const }),
    },
    { role: "model", label: "explained by temperature", points: course(expectedAt) },
    {
      role: "measured",
      label: "found at the end",
      marks: "rings",
      points: [[time(to), inUnit(expectedAt(readings.length - 1) - drop, pressureUnit)]],
    },
  ];
  if (limit !== undefined) {
    lines.splice(2, 0, {
      role: "limit",
      label: stated,
      points: course((i) => expectedAt(i) - allowed(i)),
    });
  }
  const band: Band = {
    role: limit === undefined ? "model" : "limit",
    label: `${limit === undefined ? "no leak proven" : "guard band"}, ±${shown(uncertainty)}`,
    points: drawn.map((i) => {
      const middle = expectedAt(i) - allowed(i);
      return [
        time(elapsed[i] as number),
        inUnit(middle - uncertainty, pressureUnit),
        inUnit(middle + uncertainty, pressureUnit),
      ];
    }),
  };
  const panels: Panel[] = [
    {
      name: `pressure, ${pressureUnit.symbol}`,
      height: 190,
      bands: [band],
      levels: [],
      lines,
      reach: [],
    },
  ];
  const [warm] = [first.temperature].flat() as Quantity<"temperature">[];
  const usual = (warm as Quantity<"temperature">).unit;
  const temperatureUnit = unitOf("temperatureUnit", options.temperatureUnit, usual);
  if (temperature) panels.push(temperaturePanel(rows, time, temperatureUnit));

  const { outcome } = assessment;
  const against = limit === undefined ? "no limit stated" : stated;
  const span = isTimed ? ` over ${round(to - from, timeUnit)}` : "";
  const asRead = ({ pressure, temperature: T }: TestReading) =>
    `${pressure} at ${Array.isArray(T) ? T.join(" and ") : T}`;
  return linePlot({
    frame,
    outcome,
    result: `corrected drop ${shown(drop)} ± ${shown(uncertainty)}, ${against}`,
    description: `${sentences(assessment)} Shown: ${readings.length} readings${span}, from ${asRead(first)} to ${asRead(last)}, beside the pressure that the temperature alone explains.`,
    xName: isTimed ? `time, ${timeUnit.symbol}` : "time not recorded",
    x: [time(from), time(to)],
    ...(!isTimed && { xWords: [[0, "start"] as const, [1, "end"] as const] }),
    panels,
  });
}
