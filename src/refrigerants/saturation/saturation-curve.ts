// What do the saturation curves say, in plain SI numbers? The functions behind every typed one.
// Follows the series of each refrigerant's data file: ln p, ρ′, ln ρ″ over √(1 − T/Tr), T over √(ln(pr/p)).
// Does not cover range checks: outside its interval a series is meaningless, and the callers refuse.

import type { SaturationSeries } from "../refrigerant.ts";
import { chebyshev } from "./chebyshev.ts";

/** Bubble or dew: where the liquid begins to boil, where the vapor begins to condense. */
export type Side = "bubble" | "dew";

/** Saturation pressure, Pa absolute, at T in K. */
export function pressureAt(series: SaturationSeries, side: Side, T: number): number {
  const terms = side === "bubble" ? series.bubble : series.dew;
  return Math.exp(chebyshev(terms, series.x, Math.sqrt(1 - T / series.temperature)));
}

/** Saturation temperature, K, at p in Pa absolute. */
export function temperatureAt(series: SaturationSeries, side: Side, p: number): number {
  const { s, terms } = side === "bubble" ? series.bubbleInverse : series.dewInverse;
  return chebyshev(terms, s, Math.sqrt(Math.log(series.pressure / p)));
}

/** Density of the saturated liquid, kg/m³, at T in K. */
export function liquidDensityAt(series: SaturationSeries, T: number): number {
  return chebyshev(series.liquid, series.x, Math.sqrt(1 - T / series.temperature));
}

/** Density of the saturated vapor, kg/m³, at T in K. */
export function vaporDensityAt(series: SaturationSeries, T: number): number {
  return Math.exp(chebyshev(series.vapor, series.x, Math.sqrt(1 - T / series.temperature)));
}
