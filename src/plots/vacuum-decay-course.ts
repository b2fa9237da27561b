// What stands beside the readings of a vacuum decay? What the policy accepts, the fitted curve, what was set aside, and the
// pressure at the end of the hold. Follows the vacuum-decay module.
// Does not cover the words around the picture: vacuum-decay-plot.ts. Internal.
import { listOf, siOf } from "../quantity/check.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { decayCurve } from "../vacuum-decay/curve/index.ts";
import type { AcceptancePolicy, VacuumDecayAssessment } from "../vacuum-decay/index.ts";
import type { Accepted } from "./accepted-vacuum.ts";
import { inUnit, type Reader } from "./reader.ts";
import type { Band, Level, Line, Point } from "./shapes.ts";
import { type PlotStatement, say } from "./statements.ts";
import { thinned } from "./thin.ts";
import type { rowsOf } from "./vacuum-rows.ts";

/** How a decay is seen: s and Pa, shown in the reader's units. */
export interface DecayView {
  readonly reader: Reader;
  readonly unit: Unit<"absolutePressure">;
  readonly timeUnit: Unit<"duration">;
  readonly accepted: readonly Accepted[];
  /** The end of the hold, and of the picture. */
  readonly hold: number;
  readonly end: number;
  readonly rows: ReturnType<typeof rowsOf>;
}

/** Points of the fitted curve. */
const curvePoints = 160;

/** How far above the highest level and reading a point may lie and still be drawn. */
const headroom = 1.2;

/** What the policy accepts, as an area. */
export const acceptedBand = ({ reader, accepted, unit, timeUnit }: DecayView): Band => ({
  role: "guide",
  label: reader.word("plots.accepted"),
  points: accepted.flatMap(({ since, at, limit }) =>
    [since, at].map((one) => [inUnit(one, timeUnit), 0, inUnit(limit, unit)] as const),
  ),
});

/** The limits with their times, the target, and where the curve levels off. */
export function levelsOf(
  policy: AcceptancePolicy,
  { plateau }: VacuumDecayAssessment,
  { reader, unit, timeUnit, accepted, end }: DecayView,
): Level[] {
  const pressure = (pascals: number) => new Quantity(pascals, unit);
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
  const target = siOf("policy.target", policy.target, "absolutePressure", { above: 0 });
  const aim = say("plots.target", { target: pressure(target) });
  level(aim, { from: 0, to: end, y: target, role: "guide" });
  if (plateau) {
    const y = siOf("assessment.plateau.pressure.value", plateau.pressure.value, "absolutePressure");
    const said = say("plots.levels-off", { plateau: pressure(y) });
    level(said, { from: 0, to: end, y, role: "second" });
  }
  return levels;
}

/** The pressure at the end of the hold on top, then the readings, the fitted curve, what was set aside, valves moved. */
export function linesOf(
  policy: AcceptancePolicy,
  assessment: VacuumDecayAssessment,
  levels: readonly Level[],
  view: DecayView,
): Line[] {
  const { reader, unit, timeUnit, end, rows } = view;
  const { t, p, aside } = rows;
  const point = (seconds: number, pascals: number): Point => [
    inUnit(seconds, timeUnit),
    inUnit(pascals, unit),
  ];
  const drawn = thinned(t, p);
  const highest = Math.max(
    ...drawn.map((i) => p[i] as number),
    ...levels.map(({ y }) => y * unit.scale),
  );
  const readings: Line = {
    role: "measured",
    label: reader.word("plots.readings"),
    points: drawn.map((i) => point(t[i] as number, p[i] as number)),
    ...(drawn.length <= 160 && {
      marks: assessment.fit ? ("dots" as const) : ("dotted line" as const),
    }),
  };
  const crosses = aside.filter(([at, y]) => at >= 0 && at <= end && y <= headroom * highest);
  const times = crosses.map(([at]) => at);
  const values = crosses.map(([, value]) => value);
  const setAside: Line = {
    role: "limit",
    label: reader.word("plots.set-aside"),
    marks: "crosses",
    points: thinned(times, values, 100).map((i) => point(times[i] as number, values[i] as number)),
  };
  const moved = listOf("assessment.steps", assessment.steps).map(({ elapsed }, i): Line => {
    const at = siOf(`assessment.steps[${i}].elapsed`, elapsed, "duration");
    const words = i === 0 ? { label: reader.word("plots.valve-moved") } : {};
    return { role: "second", ...words, points: [point(at, 0), point(at, highest)] };
  });
  return [
    ...endOf(assessment, view, highest, point),
    readings,
    ...curveOf(policy, assessment, view, highest, point),
    ...(crosses.length > 0 ? [setAside] : []),
    ...moved,
  ];
}

type ToPoint = (seconds: number, pascals: number) => Point;

/** The figure that decides, ringed. After a step it is that of the evidence since, which may end elsewhere than this hold. */
function endOf(
  { atHoldEnd, steps }: VacuumDecayAssessment,
  { reader, hold }: DecayView,
  highest: number,
  point: ToPoint,
): Line[] {
  if (atHoldEnd?.value === undefined || steps.length > 0) return [];
  const y = siOf("assessment.atHoldEnd.value", atHoldEnd.value, "absolutePressure");
  const label = reader.word("plots.at-hold-end");
  return y <= headroom * highest
    ? [{ role: "measured", label, marks: "rings", points: [point(hold, y)] }]
    : [];
}

/** The fitted curve where there is one, continued to the end of the hold, as far as it stays in the picture. */
function curveOf(
  { checkpoints }: AcceptancePolicy,
  { fit }: VacuumDecayAssessment,
  { reader, hold, rows }: DecayView,
  highest: number,
  point: ToPoint,
): Line[] {
  if (!fit) return [];
  const isForecast = (rows.t.at(-1) as number) < hold;
  const until = isForecast ? { until: checkpoints.at(-1)?.at as Quantity<"duration"> } : {};
  const curve = decayCurve(fit, { points: curvePoints, ...until });
  const leaves = curve.findIndex(({ pressure }) => pressure.si > headroom * highest);
  return [
    {
      role: "model",
      label: reader.word(isForecast ? "plots.fitted-curve-and-forecast" : "plots.fitted-curve"),
      points: curve
        .slice(0, leaves < 0 ? curvePoints : Math.max(2, leaves))
        .map(({ elapsed, pressure }) => point(elapsed.si, pressure.si)),
    },
  ];
}
