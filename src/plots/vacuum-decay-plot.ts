// What did the vacuum do? Readings, fitted curve, what the policy accepts, and what the course means.
// Follows the decay picture of installation manuals: straight up leaks, levelling off is wet, flat is tight.
// Does not cover the verdict: the assessment brings it, and the picture shows it.
import { describe, listOf, objectOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { micron, micronPerMinute, pascalAbsolute } from "../quantity/units/pressure.ts";
import {
  type DecayCause,
  decayCurve,
  type VacuumDecayAssessment,
  type VacuumDecayInput,
} from "../vacuum-decay/index.ts";
import { acceptedOf } from "./accepted-vacuum.ts";
import { linePlot } from "./line-plot.ts";
import { frameOf, type PlotOptions } from "./plot-options.ts";
import { inUnit, timeUnitFor, unitOf } from "./reader-units.ts";
import type { Level, Line, Point } from "./shapes.ts";
import { thinned } from "./thin.ts";
import { rowsOf } from "./vacuum-rows.ts";
import { round, sentences } from "./words.ts";

/** Units and looks of {@link vacuumDecayPlot}. Source: none; the library's own type. */
export interface VacuumDecayPlotOptions extends PlotOptions {
  /** Unit of the pressures; micron when left out. */
  readonly pressureUnit?: Unit<"absolutePressure">;
  /** Unit of the axis on the right; pascal when left out, micron where the first one is pascal. */
  readonly secondPressureUnit?: Unit<"absolutePressure">;
  /** Unit of the time; one that suits the hold when left out. */
  readonly timeUnit?: Unit<"duration">;
}

/** What the course of the curve means, as the decay pictures of manuals put it. */
const courses: Readonly<Record<DecayCause, string>> = {
  "dry-and-tight": "flat, dry and tight",
  leak: "straight up, a leak",
  moisture: "levels off, moisture",
  "leak-and-moisture": "bends, then keeps rising: leak and moisture",
  "moisture-leak-not-excluded": "levels off, moisture; a leak is not excluded",
  outgassing: "slows down, outgassing",
  undecided: "cause undecided",
};

/** Points of the fitted curve. */
const curvePoints = 160;

/**
 * Draws a vacuum decay: the readings since isolation, the fitted curve where there is one, continued to
 * the end of the hold, and what the policy wants: its target, its limits with the time at which each has
 * to hold, the level from which it speaks of water or a leak. The shaded part is accepted. Readings that
 * were set aside are crosses; one that lies above the picture is left out of it.
 *
 * The second line says the outcome and what the course means: straight up is a leak, levelling off is
 * moisture, flat is tight. A log is drawn with at most 600 points, the lowest and highest of each
 * stretch among them.
 *
 * @param test - What was given to `assessVacuumDecay`: its readings and policy.
 * @param assessment - What it answered.
 * @param options - Units and {@link PlotOptions}.
 * @returns One `<svg>` element as text, with its own text alternative.
 * @throws {@link InvalidInputError} for a quantity or unit of another kind, no usable reading, a policy
 * without checkpoints, or an id that is none.
 *
 * Cautions: a vacuum decay does not replace the pressure test; show the cautions of the assessment
 * beside the picture.
 *
 * Source: none for the picture; the policy and the assessment name theirs.
 *
 * @example
 * ```ts
 * import { vacuumDecayPlot } from "hvac-install-math/plots";
 * import { degC, micron, second } from "hvac-install-math/quantity";
 * import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";
 *
 * // invented: 300 micron at isolation, rising 50 micron a minute
 * const readings = Array.from({ length: 121 }, (_, i) => ({
 *   elapsed: second(5 * i),
 *   pressure: micron(300 + Math.round((50 / 60) * 5 * i)),
 * }));
 * const test = { readings, ambient: degC(20), policy: acceptancePolicies.splitManualA };
 * const svg = vacuumDecayPlot(test, assessVacuumDecay(test));
 * svg.includes("straight up, a leak"); // => true
 * ```
 */
export function vacuumDecayPlot(
  test: VacuumDecayInput,
  assessment: VacuumDecayAssessment,
  options: VacuumDecayPlotOptions = {},
): string {
  const frame = frameOf(options, "vacuum-decay-plot", "Vacuum decay after isolation");
  const { readings, policy } = objectOf("test", test);
  const { cause, outcome, fit, plateau, steps, leak } = objectOf("assessment", assessment);
  if (!Object.hasOwn(courses, cause)) {
    const allowed = Object.keys(courses).join(", ");
    throw new InvalidInputError({ argument: "assessment.cause", value: describe(cause), allowed });
  }
  const description = sentences(assessment);
  const { t, p, aside } = rowsOf(readings, assessment);
  const last = t.at(-1) as number;
  const accepted = acceptedOf(policy, p[0] as number);
  const hold = (accepted.at(-1) as (typeof accepted)[number]).at;
  const end = Math.max(last, hold);
  const timeUnit = unitOf("timeUnit", options.timeUnit, timeUnitFor(end));
  const unit = unitOf("pressureUnit", options.pressureUnit, micron);
  const second = unitOf(
    "secondPressureUnit",
    options.secondPressureUnit,
    unit.scale === 1 ? micron : pascalAbsolute,
  );
  const point = (seconds: number, pascals: number): Point => [
    inUnit(seconds, timeUnit),
    inUnit(pascals, unit),
  ];
  const say = (pascals: number) => round(pascals, unit);

  const drawn = thinned(t, p);
  const levels: Level[] = [];
  const level = (
    words: string,
    pascals: number,
    from: number,
    to: number,
    more: Pick<Level, "role" | "stop">,
  ) =>
    levels.push({
      label: words,
      from: inUnit(from, timeUnit),
      to: inUnit(to, timeUnit),
      y: inUnit(pascals, unit),
      ...more,
    });
  for (const { since, at, limit, words, failAbove } of accepted) {
    const when = round(at, timeUnit);
    level(`${words} ${say(limit)} at ${when}`, limit, since, at, { role: "limit", stop: true });
    if (failAbove > 0) {
      level(`fails from ${say(failAbove)}`, failAbove, since, end, { role: "second" });
    }
  }
  const target = siOf("policy.target", policy.target, "absolutePressure", { above: 0 });
  level(`target ${say(target)}`, target, 0, end, { role: "guide" });
  if (plateau) {
    const at = siOf(
      "assessment.plateau.pressure.value",
      plateau.pressure.value,
      "absolutePressure",
    );
    level(`levels off near ${say(at)}`, at, 0, end, { role: "second" });
  }
  const highest = Math.max(
    ...drawn.map((i) => p[i] as number),
    ...levels.map(({ y }) => y * unit.scale),
  );
  const lines: Line[] = [
    {
      role: "measured",
      label: "readings",
      points: drawn.map((i) => point(t[i] as number, p[i] as number)),
      ...(drawn.length <= 160 && { marks: fit ? ("dots" as const) : ("dotted line" as const) }),
    },
  ];
  if (fit) {
    const until =
      last < hold ? { until: policy.checkpoints.at(-1)?.at as Quantity<"duration"> } : {};
    const curve = decayCurve(fit, { points: curvePoints, ...until });
    const leaves = curve.findIndex(({ pressure }) => pressure.si > 1.2 * highest);
    lines.push({
      role: "model",
      label: last < hold ? "fitted curve and forecast" : "fitted curve",
      points: curve
        .slice(0, leaves < 0 ? curvePoints : Math.max(2, leaves))
        .map(({ elapsed, pressure }) => point(elapsed.si, pressure.si)),
    });
  }
  const crosses = aside.filter(([at, value]) => at >= 0 && at <= end && value <= 1.2 * highest);
  if (crosses.length > 0) {
    const points = thinned(
      crosses.map(([at]) => at),
      crosses.map(([, value]) => value),
      100,
    ).map((i) => point(...(crosses[i] as [number, number])));
    lines.push({ role: "limit", label: "set aside", marks: "crosses", points });
  }
  listOf("assessment.steps", steps).forEach(({ elapsed }, i) => {
    const at = siOf(`assessment.steps[${i}].elapsed`, elapsed, "duration");
    const words = i === 0 ? { label: "valve or hose moved" } : {};
    lines.push({ role: "second", ...words, points: [point(at, 0), point(at, highest)] });
  });
  const rate =
    cause === "leak"
      ? `, ${round(siOf("assessment.leak.value", leak?.value, "pressureRate"), micronPerMinute, 2)}`
      : "";
  return linePlot({
    frame,
    outcome,
    result: `${courses[cause]}${rate}`,
    description: `${description} Shown: ${t.length} readings from ${say(p[0] as number)} to ${say(p.at(-1) as number)}.`,
    xName: `time since isolation, ${timeUnit.symbol}`,
    x: [0, inUnit(end, timeUnit)],
    panels: [
      {
        name: `pressure, ${unit.symbol}`,
        height: 230,
        bands: [
          {
            role: "guide",
            label: "accepted",
            points: accepted.flatMap(({ since, at, limit }) =>
              [since, at].map((one) => [inUnit(one, timeUnit), 0, inUnit(limit, unit)] as const),
            ),
          },
        ],
        levels,
        lines,
        reach: [0],
        right: { name: second.symbol, factor: unit.scale / second.scale },
      },
    ],
  });
}
