// How near are the series to the model? Largest deviations at many temperatures between the nodes.
import type { SaturationSeries } from "../refrigerant.ts";
import {
  liquidDensityAt,
  pressureAt,
  temperatureAt,
  vaporDensityAt,
} from "../saturation/saturation-curve.ts";
import type { Reference } from "./reference-curves.ts";

/** Largest deviations: relative in pressure and density, K in temperature. */
export interface Deviations {
  pressure: number;
  density: number;
  temperature: number;
}

/** Compares series and model at `points` temperatures from `min` to `max`, K. */
export function verify(
  series: SaturationSeries,
  reference: Reference,
  { min, max }: { readonly min: number; readonly max: number },
  points: number,
): Deviations {
  const worst: Deviations = { pressure: 0, density: 0, temperature: 0 };
  for (let i = 0; i <= points; i++) {
    const T = min + ((max - min) * i) / points;
    for (const side of ["bubble", "dew"] as const) {
      const { pressure, density } = reference.at(side, T);
      const ours = side === "bubble" ? liquidDensityAt(series, T) : vaporDensityAt(series, T);
      worst.pressure = Math.max(
        worst.pressure,
        Math.abs(pressureAt(series, side, T) / pressure - 1),
      );
      worst.density = Math.max(worst.density, Math.abs(ours / density - 1));
      worst.temperature = Math.max(
        worst.temperature,
        Math.abs(temperatureAt(series, side, pressure) - T),
      );
    }
  }
  return worst;
}
