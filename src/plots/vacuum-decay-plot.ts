// What did the vacuum do? Readings, fitted curve, what the policy accepts, and what the course means.
// Follows the decay picture of installation manuals: straight up leaks, leveling off is wet, flat is tight.
// Does not cover the verdict: the assessment brings it, and the picture shows it.
import { listOf, objectOf, oneOf, requireUnit, siOf } from "../quantity/check.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { micronPerMinute, pascalPerSecond } from "../quantity/units/pressure.ts";
import {
  type DecayCause,
  decayCurve,
  type VacuumDecayAssessment,
  type VacuumDecayInput,
} from "../vacuum-decay/index.ts";
import { acceptedOf } from "./accepted-vacuum.ts";
import { linePlot } from "./line-plot.ts";
import { frameOf, type PlotOptions } from "./plot-options.ts";
import { inUnit } from "./reader.ts";
import type { Level, Line, Point } from "./shapes.ts";
import { type PlotStatement, say } from "./statements.ts";
import { thinned } from "./thin.ts";
import { rowsOf } from "./vacuum-rows.ts";

/** Language, units and looks of {@link vacuumDecayPlot}. */
export interface VacuumDecayPlotOptions extends PlotOptions {
  /** Unit of an axis on the right, for a reader who thinks in two; none when left out. */
  readonly secondPressureUnit?: Unit<"absolutePressure"> | undefined;
}

/** What a course can mean; the words are the language's, as the decay pictures of manuals put it. */
const causes: readonly DecayCause[] = [
  "dry-and-tight",
  "leak",
  "moisture",
  "leak-and-moisture",
  "moisture-leak-not-excluded",
  "outgassing",
  "not-determined",
];

/** Points of the fitted curve. */
const curvePoints = 160;

/**
 * Draws a vacuum decay: the readings since isolation, the fitted curve where there is one, continued to
 * the end of the hold, and what the policy wants: its target, its limits with the time at which each has
 * to hold, the level from which it speaks of water or a leak. The shaded part is accepted. Readings that
 * were set aside are crosses; one that lies above the picture is left out of it.
 *
 * The second line says the outcome and what the course means: straight up is a leak, leveling off is
 * moisture, flat is tight. A log is drawn with at most 600 points, the lowest and highest of each
 * stretch among them.
 *
 * @param test - What was given to `assessVacuumDecay`: its readings and policy.
 * @param assessment - What it answered.
 * @param options - Language, units and looks ({@link PlotOptions}), a second unit.
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
 * import { english } from "hvac-install-math/language/en";
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
 * const reader = { language: english, system: "inch-pound" } as const;
 * const svg = vacuumDecayPlot(test, assessVacuumDecay(test), reader);
 * svg.includes("keeps rising, a leak"); // => true
 * ```
 */
export function vacuumDecayPlot(
  test: VacuumDecayInput,
  assessment: VacuumDecayAssessment,
  options: VacuumDecayPlotOptions,
): string {
  const frame = frameOf(options, "vacuum-decay-plot", say("plots.vacuum-decay"));
  const { reader } = frame;
  const { readings, policy } = objectOf("test", test);
  const { cause, fit, plateau, steps } = objectOf("assessment", assessment);
  oneOf("assessment.cause", cause, causes);
  const { outcome, sentences } = reader.verdict(assessment);
  const { t, p, aside } = rowsOf(readings, assessment);
  const last = t.at(-1) as number;
  const accepted = acceptedOf(policy, p[0] as number);
  const hold = (accepted.at(-1) as (typeof accepted)[number]).at;
  const end = Math.max(last, hold);
  const timeUnit = reader.timeUnitFor(end);
  const target = siOf("policy.target", policy.target, "absolutePressure", { above: 0 });
  const unit = reader.unitFor(policy.target);
  const { secondPressureUnit: second } = options;
  if (second !== undefined) requireUnit("secondPressureUnit", second, "absolutePressure");
  const point = (seconds: number, pascals: number): Point => [
    inUnit(seconds, timeUnit),
    inUnit(pascals, unit),
  ];
  const pressure = (pascals: number) => new Quantity(pascals, unit);

  const drawn = thinned(t, p);
  const levels: Level[] = [];
  const level = (said: PlotStatement, at: Pick<Level, "from" | "to" | "y" | "role" | "stop">) =>
    levels.push({
      ...at,
      label: reader.say(said),
      from: inUnit(at.from, timeUnit),
      to: inUnit(at.to, timeUnit),
      y: inUnit(at.y, unit),
    });
  for (const { since, at, limit, isRise, failAbove } of accepted) {
    const values = { limit: pressure(limit), at: new Quantity(at, timeUnit) };
    const said = isRise ? say("plots.rise-limit-at", values) : say("plots.limit-at", values);
    level(said, { from: since, to: at, y: limit, role: "limit", stop: true });
    if (failAbove > 0) {
      const fails = say("plots.fails-from", { limit: pressure(failAbove) });
      level(fails, { from: since, to: end, y: failAbove, role: "second" });
    }
  }
  const aim = say("plots.target", { target: pressure(target) });
  level(aim, { from: 0, to: end, y: target, role: "guide" });
  if (plateau) {
    const y = siOf("assessment.plateau.pressure.value", plateau.pressure.value, "absolutePressure");
    const said = say("plots.levels-off", { plateau: pressure(y) });
    level(said, { from: 0, to: end, y, role: "second" });
  }
  const highest = Math.max(
    ...drawn.map((i) => p[i] as number),
    ...levels.map(({ y }) => y * unit.scale),
  );
  const lines: Line[] = [
    {
      role: "measured",
      label: reader.word("plots.readings"),
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
      label: reader.word(last < hold ? "plots.fitted-curve-and-forecast" : "plots.fitted-curve"),
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
    lines.push({ role: "limit", label: reader.word("plots.set-aside"), marks: "crosses", points });
  }
  listOf("assessment.steps", steps).forEach(({ elapsed }, i) => {
    const at = siOf(`assessment.steps[${i}].elapsed`, elapsed, "duration");
    const words = i === 0 ? { label: reader.word("plots.valve-moved") } : {};
    lines.push({ role: "second", ...words, points: [point(at, 0), point(at, highest)] });
  });
  const atEnd = assessment.atHoldEnd?.value;
  // After a step the figure is that of the evidence since, which may end elsewhere than this hold.
  if (atEnd !== undefined && steps.length === 0) {
    const y = siOf("assessment.atHoldEnd.value", atEnd, "absolutePressure");
    const label = reader.word("plots.at-hold-end");
    if (y <= 1.2 * highest) {
      lines.unshift({ role: "measured", label, marks: "rings", points: [point(hold, y)] });
    }
  }
  const course =
    cause === "leak"
      ? say("plots.leak-course", { rate: rateOf(assessment, unit) })
      : say("plots.course", { course: `plots.course.${cause}` });
  const seen = say("plots.decay-shown", {
    count: t.length,
    first: pressure(p[0] as number),
    last: pressure(p.at(-1) as number),
  });
  const named = (one: Unit<"absolutePressure">) => reader.unitName(one as never);
  return linePlot({
    frame,
    outcome,
    result: reader.say(course),
    description: `${sentences} ${reader.say(seen)}`,
    xName: reader.say(
      say("plots.time-since-isolation-axis", { unit: reader.unitName(timeUnit as never) }),
    ),
    x: [0, inUnit(end, timeUnit)],
    panels: [
      {
        name: reader.say(say("plots.pressure-axis", { unit: named(unit) })),
        height: 230,
        bands: [
          {
            role: "guide",
            label: reader.word("plots.accepted"),
            points: accepted.flatMap(({ since, at, limit }) =>
              [since, at].map((one) => [inUnit(one, timeUnit), 0, inUnit(limit, unit)] as const),
            ),
          },
        ],
        levels,
        lines,
        reach: [0],
        ...(second && {
          right: { name: named(second).verbatim, factor: unit.scale / second.scale },
        }),
      },
    ],
  });
}

/** The rate of a leak, in the reader's unit of a vacuum. */
function rateOf(
  { leak }: VacuumDecayAssessment,
  { symbol }: Unit<"absolutePressure">,
): Quantity<"pressureRate"> {
  const rate = siOf(
    "assessment.leak.value",
    leak?.value as Quantity<"pressureRate">, // a leak is named only where it is known
    "pressureRate",
  );
  return new Quantity(rate, symbol === "micron" ? micronPerMinute : pascalPerSecond);
}
