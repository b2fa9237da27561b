// What does the equation of state say along the saturation curve? The functions that the series follow.
// Follows property-model; remembers the last mixture solution so that neighbors are found quickly.
import type { Fluid } from "../../property-model/index.ts";
import type { MixtureEquilibrium } from "../../property-model/mixture-equilibrium.ts";
import { mixtureModelOf } from "../../property-model/mixture-phase.ts";
import { mixtureSaturation } from "../../property-model/mixture-saturation.ts";
import { pointAtPressure, pointAtTemperature } from "../../property-model/saturation-at.ts";
import type { Side } from "../saturation/saturation-curve.ts";

/** Pressure (Pa) and density (kg/m³) of the saturated bulk. */
export interface ReferencePoint {
  readonly pressure: number;
  readonly density: number;
}

/** The model's own saturation curve. */
export interface Reference {
  at(side: Side, T: number): ReferencePoint;
  temperatureAt(side: Side, p: number): number;
}

/** The saturation curve of a fluid as functions of plain SI numbers. */
export function referenceOf(fluid: Fluid): Reference {
  const missing = (what: string): never => {
    throw new Error(`${fluid.id}: the model has no saturation point at ${what}`);
  };
  const temperatureAt = (side: Side, p: number): number =>
    (pointAtPressure(fluid, side, p) ?? missing(`${p} Pa`)).temperature;
  if (fluid.kind !== "mixture") {
    return {
      at(side, T) {
        const point = pointAtTemperature(fluid, side, T) ?? missing(`${T} K`);
        return { pressure: point.pressure, density: point.density * fluid.molarMass };
      },
      temperatureAt,
    };
  }
  const model = mixtureModelOf(fluid);
  const last: Partial<Record<Side, MixtureEquilibrium>> = {};
  return {
    at(side, T) {
      const from = last[side];
      const point = mixtureSaturation(model, side, T, from) ?? missing(`${T} K`);
      last[side] = point;
      const density = side === "bubble" ? point.liquid : point.vapor;
      return { pressure: point.pressure, density: density * fluid.molarMass };
    },
    temperatureAt,
  };
}
