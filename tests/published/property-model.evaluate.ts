import {
  bubblePoint,
  dewPoint,
  type PseudoPureFluid,
  type PureFluid,
  saturation,
  stateAt,
} from "hvac-install-math/property-model";
import {
  degC,
  kelvin,
  kgPerM3,
  kJPerKg,
  kJPerKgK,
  kPaa,
  MPaa,
  mPerSecond,
} from "hvac-install-math/quantity";
import { modelOf, pressureAt } from "../../src/property-model/helmholtz-model.ts";
import { fluidById } from "../property-model/blends.ts";
import type { Evaluators } from "./check.ts";

interface Row {
  fluid: string;
  K: number;
}

const normal = { pressure: kPaa(101.325) };
const water = (row: { K: number; kgPerM3: number }) =>
  stateAt(fluidById("water"), { temperature: kelvin(row.K), density: kgPerM3(row.kgPerM3) });
const iceLiquid = ({ fluid }: Row) => {
  const temperature = degC(0);
  const density = saturation(fluidById(fluid), temperature).liquidDensity;
  return stateAt(fluidById(fluid), { temperature, density });
};
const at = ({ fluid, K }: Row) => saturation(fluidById(fluid), kelvin(K));

export const evaluators: Evaluators = {
  bubblePressure: (row: Row) => at(row).bubblePressure.in(kPaa),
  dewPressure: (row: Row) => at(row).dewPressure.in(kPaa),
  liquidDensity: (row: Row) => at(row).liquidDensity.in(kgPerM3),
  vaporDensity: (row: Row) => at(row).vaporDensity.in(kgPerM3),
  normalBubbleTemperature: ({ fluid }: Row) =>
    bubblePoint(fluidById(fluid), normal).temperature.in(degC),
  normalDewTemperature: ({ fluid }: Row) => dewPoint(fluidById(fluid), normal).temperature.in(degC),
  pressureOfState: ({ fluid, K, molPerDm3 }: Row & { molPerDm3: number }) => {
    // Check values of the equation itself, some of them beyond its range of validity.
    const model = modelOf(fluidById(fluid) as PureFluid | PseudoPureFluid);
    return pressureAt(model, K, molPerDm3 * 1e3).p / 1e6;
  },
  pressureOfWater: (row) => water(row).pressure.in(MPaa),
  isochoricHeatCapacityOfWater: (row) => water(row).isochoricHeatCapacity.in(kJPerKgK),
  speedOfSoundInWater: (row) => water(row).speedOfSound.in(mPerSecond),
  entropyOfWater: (row) => water(row).entropy.in(kJPerKgK),
  enthalpyOfLiquidAtIcePoint: (row: Row) => iceLiquid(row).enthalpy.in(kJPerKg),
  entropyOfLiquidAtIcePoint: (row: Row) => iceLiquid(row).entropy.in(kJPerKgK),
};
