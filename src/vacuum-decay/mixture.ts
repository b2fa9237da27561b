// What do the weighed models say together? Mean, spread and bounds of one figure over all of them.
// Follows Burnham & Anderson (2002), 4.3 (from memory): spread within plus spread between the models.
// Does not cover errors that all models share, such as the gauge's scale: verdict.ts adds them.
import type { Component } from "./evidence.ts";

type Figure = (one: Component) => readonly [value: number, uncertainty: number];

/** Mean and standard deviation of a figure over the models. */
export function meanOf(
  components: readonly Component[],
  figure: Figure,
): { mean: number; u: number } {
  let sum = 0;
  let mean = 0;
  for (const one of components) {
    sum += one.weight;
    mean += one.weight * figure(one)[0];
  }
  if (sum === 0) return { mean: 0, u: 0 };
  mean /= sum;
  let variance = 0;
  for (const one of components) {
    const [value, u] = figure(one);
    variance += (one.weight / sum) * (u * u + (value - mean) ** 2);
  }
  return { mean, u: Math.sqrt(variance) };
}

/** The value that the figure stays below with a probability; `extra` is an uncertainty that all share. */
export function boundOf(
  components: readonly Component[],
  figure: Figure,
  probability: number,
  extra: number,
): number {
  let low = Infinity;
  let high = -Infinity;
  const normals = components.map((one) => {
    const [value, u] = figure(one);
    const sd = Math.sqrt(u * u + extra * extra) + 1e-12;
    low = Math.min(low, value - 6 * sd);
    high = Math.max(high, value + 6 * sd);
    return [value, 1.702 / sd, one.weight] as const; // Φ(z) ≈ 1/(1 + e^(−1.702 z)), within 0.01
  });
  for (let step = 0; step < 18; step++) {
    const middle = (low + high) / 2;
    let below = 0;
    for (const [value, steep, weight] of normals) {
      below += weight / (1 + Math.exp((value - middle) * steep));
    }
    if (below < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
