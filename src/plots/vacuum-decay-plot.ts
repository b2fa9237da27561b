// What did the vacuum do? Readings, fitted curve, what the policy accepts, and what the course means.
// Follows the decay picture of installation manuals: straight up leaks, leveling off is wet, flat is tight.
// Does not cover the verdict: the assessment brings it, and the picture shows it.
import { objectOf, oneOf, requireUnit, siOf } from "../quantity/check.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { micronPerMinute, pascalPerSecond } from "../quantity/units/pressure.ts";
import type { DecayCause, VacuumDecayAssessment, VacuumDecayInput } from "../vacuum-decay/index.ts";
import { acceptedOf } from "./accepted-vacuum.ts";
import { linePlot } from "./line-plot.ts";
import { frameOf, type PlotOptions } from "./plot-options.ts";
import { inUnit } from "./reader.ts";
import { type PlotStatements, say } from "./statements.ts";
import { acceptedBand, type DecayView, levelsOf, linesOf } from "./vacuum-decay-course.ts";
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
  const { cause } = objectOf("assessment", assessment);
  oneOf("assessment.cause", cause, causes);
  const rows = rowsOf(readings, assessment);
  const { t, p } = rows;
  const accepted = acceptedOf(policy, p[0] as number);
  const hold = (accepted.at(-1) as (typeof accepted)[number]).at;
  const end = Math.max(t.at(-1) as number, hold);
  const timeUnit = reader.timeUnitFor(end);
  const unit = reader.unitFor(policy.target);
  const { secondPressureUnit: second } = options;
  if (second !== undefined) requireUnit("secondPressureUnit", second, "absolutePressure");
  const view: DecayView = { reader, unit, timeUnit, accepted, hold, end, rows };
  const levels = levelsOf(policy, assessment, view);
  const lines = linesOf(policy, assessment, levels, view);
  const named = (one: Unit<"absolutePressure">) => reader.unitName(one as never);
  const { outcome, sentences } = reader.verdict(assessment);
  const course =
    cause === "leak"
      ? say("plots.leak-course", { rate: rateOf(assessment, unit) })
      : say("plots.course", { course: `plots.course.${cause}` });
  const [first, last] = [p[0] as number, p.at(-1) as number].map((si) => new Quantity(si, unit));
  const seen = { count: t.length, first, last } as PlotStatements["plots.decay-shown"];
  return linePlot({
    frame,
    outcome,
    result: reader.say(course),
    description: `${sentences} ${reader.say(say("plots.decay-shown", seen))}`,
    xName: reader.say(
      say("plots.time-since-isolation-axis", { unit: reader.unitName(timeUnit as never) }),
    ),
    x: [0, inUnit(end, timeUnit)],
    panels: [
      {
        name: reader.say(say("plots.pressure-axis", { unit: named(unit) })),
        height: 230,
        bands: [acceptedBand(view)],
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
