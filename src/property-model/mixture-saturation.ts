// Where does a blend boil or condense? Bubble and dew curve, traced upwards in temperature.
// Follows the usual continuation of a phase boundary, Michelsen (1980), Fluid Phase Equilib. 4:1.
// Does not cover the immediate surroundings of the critical point nor retrograde states.

import {
  type MixtureEquilibrium,
  refineEquilibrium,
  type SaturationSide,
} from "./mixture-equilibrium.ts";
import type { MixtureModel } from "./mixture-phase.ts";
import { pureSaturation } from "./pure-saturation.ts";

/**
 * The bubble or dew point at T (K), or undefined where the curve cannot be followed so far.
 *
 * The start is an ideal solution (Raoult's law) at most at 0.75 of the lowest critical temperature, where
 * only one root exists. From there the solution is followed in steps whose densities and compositions
 * change little, so that neither the trivial nor a spurious root near the critical point is met.
 *
 * @param from - A solution at a nearby temperature, to save the way up.
 */
export function mixtureSaturation(
  model: MixtureModel,
  side: SaturationSide,
  T: number,
  from?: MixtureEquilibrium,
): MixtureEquilibrium | undefined {
  let point = from ?? start(model, side, T);
  let before: MixtureEquilibrium | undefined;
  let step = 15; // K
  while (point !== undefined && point.temperature !== T) {
    const way = T - point.temperature;
    const next = Math.abs(way) <= step ? T : point.temperature + Math.sign(way) * step;
    const found = refineEquilibrium(model, side, predict(point, before, next));
    if (found === undefined || !near(point, found)) {
      step /= 2;
      if (step < 1e-3) return undefined;
      continue;
    }
    before = point;
    point = found;
    step = Math.min(15, step * 1.5);
  }
  return point;
}

/** The bubble or dew point at p (Pa), or undefined where the curve cannot be followed so far. */
export function mixtureSaturationAtPressure(
  model: MixtureModel,
  side: SaturationSide,
  p: number,
): MixtureEquilibrium | undefined {
  let point = mixtureSaturation(model, side, lowestCritical(model) * 0.75);
  // Newton on ln p over 1/T with the slope of the last step keeps the way short; Newton at fixed pressure
  // finishes it. A step that leads beyond the curve's end is halved.
  let slope = 11 * lowestCritical(model); // −d ln p/d(1/T), K, Trouton's rule
  let reach = 0.08;
  for (let i = 0; i < 80 && point !== undefined && reach > 1e-6; i++) {
    const distance = Math.log(p / point.pressure);
    if (Math.abs(distance) < 0.02) {
      const found = refineEquilibrium(model, side, point, p);
      if (found !== undefined && near(point, found)) return found;
    }
    const change = (distance * point.temperature) / slope;
    const T = point.temperature * (1 + Math.max(-reach, Math.min(reach, change)));
    if (T < 0.2 * lowestCritical(model)) return undefined;
    const next = mixtureSaturation(model, side, T, point);
    if (next === undefined || next.temperature === point.temperature) {
      reach /= 2;
      continue;
    }
    slope =
      Math.log(next.pressure / point.pressure) / (1 / point.temperature - 1 / next.temperature);
    point = next;
  }
  return undefined;
}

function lowestCritical({ mixture }: MixtureModel): number {
  return Math.min(...mixture.components.map((fluid) => fluid.saturationLimit));
}

/** An ideal solution at T or at the safe temperature, refined. */
function start(
  model: MixtureModel,
  side: SaturationSide,
  target: number,
): MixtureEquilibrium | undefined {
  const { components, moleFractions: z } = model.mixture;
  const T = Math.min(target, 0.75 * lowestCritical(model));
  const pure = components.map((fluid) => pureSaturation(fluid, T));
  let total = 0; // Σ z p (bubble) or Σ z/p (dew): Raoult's law
  let liquidVolume = 0;
  const weights: number[] = [];
  for (const [i, phases] of pure.entries()) {
    if (phases === undefined) return undefined;
    const weight = (z[i] as number) * (side === "bubble" ? phases.pressure : 1 / phases.pressure);
    weights.push(weight);
    total += weight;
    liquidVolume += (z[i] as number) / phases.liquid;
  }
  const pressure = side === "bubble" ? total : 1 / total;
  return refineEquilibrium(model, side, {
    temperature: T,
    pressure,
    liquid: 1 / liquidVolume,
    vapor: pressure / (8.314 * T),
    incipient: Float64Array.from(weights, (weight) => weight / total),
  });
}

/** A linear extrapolation of the logarithms through the last two points, or the last point itself. */
function predict(
  point: MixtureEquilibrium,
  before: MixtureEquilibrium | undefined,
  T: number,
): MixtureEquilibrium {
  if (before === undefined) return { ...point, temperature: T };
  const share = (T - point.temperature) / (point.temperature - before.temperature);
  const along = (now: number, then: number) => now * (now / then) ** share;
  return {
    temperature: T,
    pressure: along(point.pressure, before.pressure),
    liquid: along(point.liquid, before.liquid),
    vapor: along(point.vapor, before.vapor),
    incipient: point.incipient.map((w, i) => along(w, before.incipient[i] as number)),
  };
}

/** Whether two points can lie next to each other on one branch, and not on a spurious one. */
function near(a: MixtureEquilibrium, b: MixtureEquilibrium): boolean {
  const gap = Math.log(a.liquid / a.vapor);
  const change = Math.abs(Math.log(b.liquid / b.vapor) - gap);
  const composition = a.incipient.reduce(
    (max, w, i) => Math.max(max, Math.abs(w - (b.incipient[i] as number))),
    0,
  );
  const hotter = b.temperature > a.temperature;
  const pressureRises = b.pressure > a.pressure;
  return (
    change < 0.3 * gap + 0.02 &&
    composition < 0.08 &&
    (hotter === pressureRises || a.pressure === b.pressure)
  );
}
