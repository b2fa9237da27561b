// What do the weighed models say together? Mean, spread and bounds of one figure over all of them.
// Follows Burnham & Anderson (2002), 4.3 (from memory): spread within plus spread between the models.
// Does not cover errors that all models share, such as the gauge's scale: the caller adds them.
import type { Component } from "./curve/index.ts";

/** A figure as each model gives it, with its uncertainty and weight, and over all of them. */
export interface Mixture {
  readonly values: Float64Array;
  /** Slopes of the logistic curves that stand for the normal ones: Φ(z) ≈ 1/(1 + e^(−1.702 z)), within 0.01. */
  readonly steepness: Float64Array;
  readonly weights: Float64Array;
  readonly mean: number;
  readonly u: number;
}

/** A figure over the models; `extra` is an uncertainty that all share. */
export function mixtureOf(
  components: readonly Component[],
  value: (one: Component) => number,
  uncertainty: (one: Component) => number,
  extra = 0,
): Mixture {
  const n = components.length;
  const values = new Float64Array(n);
  const steepness = new Float64Array(n);
  const weights = new Float64Array(n);
  let sum = 0;
  let mean = 0;
  let square = 0;
  for (let i = 0; i < n; i++) {
    const one = components[i] as Component;
    const x = value(one);
    const u = uncertainty(one);
    const { weight } = one;
    values[i] = x;
    steepness[i] = 1.702 / (Math.sqrt(u * u + extra * extra) + 1e-12);
    weights[i] = weight;
    sum += weight;
    mean += weight * x;
    square += weight * (x * x + u * u + extra * extra);
  }
  if (sum > 0) {
    mean /= sum;
    for (let i = 0; i < n; i++) weights[i] = (weights[i] as number) / sum;
  }
  const u = sum > 0 ? Math.sqrt(Math.max(0, square / sum - mean * mean)) : 0;
  return { values, steepness, weights, mean, u };
}

/** The value that the figure stays below with a probability. */
export function boundOf(mixture: Mixture, probability: number): number {
  const { values, steepness, weights, mean, u } = mixture;
  const n = values.length;
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < n; i++) {
    const x = values[i] as number;
    const reach = 10.2 / (steepness[i] as number); // six standard deviations
    low = Math.min(low, x - reach);
    high = Math.max(high, x + reach);
  }
  // Newton's method inside a shrinking bracket
  let x = Math.min(high, Math.max(low, mean + (probability > 0.5 ? 1.7 : -1.7) * u));
  for (let step = 0; step < 30; step++) {
    let below = -probability;
    let density = 0;
    for (let i = 0; i < n; i++) {
      const steep = steepness[i] as number;
      const share = 1 / (1 + Math.exp(((values[i] as number) - x) * steep));
      const part = (weights[i] as number) * share;
      below += part;
      density += part * (1 - share) * steep;
    }
    if (below < 0) low = x;
    else high = x;
    if (Math.abs(below) < 1e-5 || high - low < 1e-5 * u) break;
    const next = x - below / density;
    x = next > low && next < high ? next : (low + high) / 2;
  }
  return x;
}
