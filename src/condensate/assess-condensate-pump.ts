// Does this pump keep up? Its flow at the lift against the condensate.
// Follows the pump's own curve, straight between its printed points; margin by common practice.
// Does not cover friction in long hoses: add what the pump's manual says to the lift.
import { cite, verdict } from "../assessment/assessment.ts";
import { type Limits, numberOf, objectOf, siOf } from "../quantity/check.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { minute } from "../quantity/units/time.ts";
import { requireList } from "./arguments.ts";
import { drainCautions } from "./drain-cautions.ts";
import { type CondensateStatement, say, type Verdict } from "./statements.ts";

/**
 * A point of a pump's curve.
 *
 * Source: the pump's data sheet.
 */
export interface PumpPoint {
  /** Lift, 0 or more. */
  readonly lift: Quantity<"length">;
  /** Flow at that lift, 0 or more. */
  readonly flow: Quantity<"volumeFlow">;
}

/**
 * A condensate pump and what it has to do.
 */
export interface CondensatePumpInput {
  /** Water that comes, above 0: from `condensateRate`, at the wettest conditions. */
  readonly condensate: Quantity<"volumeFlow">;
  /** Height from the water to the highest point of the hose, 0 or more. */
  readonly lift: Quantity<"length">;
  /** At least two points, by rising lift, the flow not rising. */
  readonly curve: readonly PumpPoint[];
  /** Volume between the switch points of its float, above 0. */
  readonly reservoir?: Quantity<"volume"> | undefined;
  /** How many times the condensate the pump has to move, 1 or more; 2 when left out. */
  readonly margin?: number | undefined;
}

/** What is wrong with a pump. Source: see {@link assessCondensatePump}. */
export type CondensatePumpCause = "lift-too-high" | "too-slow";

/**
 * The verdict on a condensate pump.
 *
 * Source: see {@link assessCondensatePump}.
 */
export interface CondensatePumpAssessment extends Verdict<CondensatePumpCause> {
  /** Flow at the lift; 0 beyond the curve. */
  readonly flowAtLift: Quantity<"volumeFlow">;
  /** Flow that is needed: margin times condensate. */
  readonly requiredFlow: Quantity<"volumeFlow">;
  /** Share of the time that the pump runs; only where it moves more than the condensate. */
  readonly dutyCycle?: Quantity<"ratio"> | undefined;
  /** Time from start to start; only where a reservoir was given and the pump moves more than the condensate. */
  readonly startInterval?: Quantity<"duration"> | undefined;
}

/**
 * Judges whether a pump lifts the condensate away, and how often it runs.
 *
 * @param input - Condensate, lift, the pump's curve, its reservoir, the margin.
 * @returns The verdict with the duty point, duty cycle and time between starts.
 * @throws {@link InvalidInputError} when the curve has fewer than two points, does not rise in lift or
 * rises in flow, or a kind or range does not fit.
 *
 * Cautions: isolate before opening the pump. Wire its level switch so that the unit stops.
 *
 * Source: the pump's curve; the margin of 2 is common practice, no source.
 *
 * @example
 * ```ts
 * import { assessCondensatePump } from "hvac-install-math/condensate";
 * import { literPerHour, m, mL } from "hvac-install-math/quantity";
 *
 * const curve = [
 *   { lift: m(0), flow: literPerHour(15) },
 *   { lift: m(10), flow: literPerHour(5) },
 * ]; // an invented pump
 * const pump = assessCondensatePump({ condensate: literPerHour(2), lift: m(6), curve, reservoir: mL(30) });
 * pump.outcome; // => pass
 * pump.flowAtLift.toString(); // => 9 L/h
 * pump.dutyCycle?.toString(undefined, 0); // => 22 %
 * pump.startInterval?.toString(undefined, 2); // => 1.16 min
 * ```
 */
export function assessCondensatePump(input: CondensatePumpInput): CondensatePumpAssessment {
  objectOf("input", input);
  const { condensate, lift, reservoir, margin = 2 } = input;
  numberOf("margin", margin, { min: 1, max: 100 });
  const inflow = siOf("condensate", condensate, "volumeFlow", { above: 0 });
  const h = siOf("lift", lift, "length", { min: 0 });
  const volume =
    reservoir === undefined ? undefined : siOf("reservoir", reservoir, "volume", { above: 0 });
  const curve = curveOf(input.curve);
  const flow = flowAt(curve, h);
  const highest = curve.at(-1)?.[0] ?? 0;
  const required = margin * inflow;
  const slow = !isAtLeast(flow, required);
  const cause = !isAtMost(h, highest) ? "lift-too-high" : slow ? "too-slow" : undefined;
  const figures = {
    flowAtLift: new Quantity(flow, condensate.unit),
    requiredFlow: new Quantity(required, condensate.unit),
  };
  const empties = !isAtMost(flow, inflow);
  // Fills in V/inflow, empties in V/(flow − inflow).
  const interval = volume && empties ? volume / inflow + volume / (flow - inflow) : undefined;
  const values = { lift, flow: figures.flowAtLift, required: figures.requiredFlow };
  const reasons = {
    "keeps-up": say("condensate.pump-keeps-up", values),
    "too-slow": say("condensate.pump-too-slow", values),
    "lift-too-high": say("condensate.pump-lift-too-high", {
      lift,
      highest: new Quantity(highest, lift.unit),
    }),
  };
  return verdict({
    outcome: cause ? "fail" : "pass",
    ...(cause && { cause }),
    reasons: [reasons[cause ?? "keeps-up"] as CondensateStatement],
    assumptions: [say("condensate.pump-margin", { margin }), say("condensate.pump-curve-straight")],
    cautions: drainCautions(),
    actions: cause ? [say("condensate.other-pump", { lift, required: values.required })] : [],
    sources: [cite("common-practice")],
    ...figures,
    ...(empties && { dutyCycle: percent((100 * inflow) / flow) }),
    ...(interval && { startInterval: minute(interval / 60) }),
  });
}

type Point = readonly [lift: number, flow: number];

function curveOf(curve: readonly PumpPoint[]): Point[] {
  requireList("curve", curve, 2);
  let limits: Limits = { min: 0 };
  let most: Limits = { min: 0 };
  return curve.map((point, i) => {
    const lift = siOf(`curve[${i}].lift`, point?.lift, "length", limits);
    const flow = siOf(`curve[${i}].flow`, point.flow, "volumeFlow", most);
    limits = { above: lift };
    most = { min: 0, max: flow };
    return [lift, flow];
  });
}

/** Below the first point its flow; between two points a straight line; beyond the last nothing. */
function flowAt(curve: readonly Point[], h: number): number {
  const next = curve.findIndex(([lift]) => isAtMost(h, lift));
  const [point, before] = [curve[next], curve[next - 1]];
  if (!point || !before) return point?.[1] ?? 0;
  const along = (Math.min(h, point[0]) - before[0]) / (point[0] - before[0]);
  return before[1] + (point[1] - before[1]) * along;
}
