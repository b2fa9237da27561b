// How much water comes off the coil? From the air on both sides, or from the load.
// Follows ASHRAE Handbook, Fundamentals (2021), chapter 1, moist-air cooling and dehumidifying, from
// memory. Does not cover frost (leaving air below 0 °C) nor water that the fan carries off.

import { objectOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { choose } from "../quantity/hints.ts";
import { Quantity } from "../quantity/quantity.ts";
import { kW, tonRefrigeration } from "../quantity/units/electricity.ts";
import { gallonPerHour, literPerHour } from "../quantity/units/flow.ts";
import { kgPerHour, kgPerSecond } from "../quantity/units/mass.ts";
import { fraction } from "../quantity/units/ratio.ts";
import {
  type AirState,
  atmosphereOf,
  type MoistAir,
  moistAir,
  ratioOf,
  waterVaporPressure,
} from "./moist-air.ts";

const waterDensity = 998.2; // kg/m³ at 20 °C, from memory
const heatOfVaporization = 2454e3; // J/kg at 20 °C, from memory

/**
 * Air through a cooling coil.
 *
 * Source: see {@link condensateRate}.
 */
export interface CoilAir {
  /** Air that enters the coil. */
  readonly entering: AirState;
  /** Air that leaves the coil, not warmer and not wetter. */
  readonly leaving: AirState;
  /** Volume flow of the air as it enters, above 0. */
  readonly airFlow: Quantity<"volumeFlow">;
  /** Atmospheric pressure on site, 30 to 120 kPa. */
  readonly atmosphere: Quantity<"absolutePressure">;
}

/**
 * Water per time.
 *
 * Source: see {@link condensateRate}.
 */
export interface CondensateFlow {
  /** By mass. */
  readonly massFlow: Quantity<"massFlow">;
  /** By volume, at 20 °C. */
  readonly volumeFlow: Quantity<"volumeFlow">;
}

/**
 * What a cooling coil takes from the air.
 *
 * Source: see {@link condensateRate}.
 */
export interface CondensateRate extends CondensateFlow {
  /** Dry air through the coil. */
  readonly dryAirFlow: Quantity<"massFlow">;
  /** Water per dry air before the coil. */
  readonly enteringHumidityRatio: Quantity<"ratio">;
  /** Water per dry air behind the coil. */
  readonly leavingHumidityRatio: Quantity<"ratio">;
  /** Heat taken from the air, after the heat that leaves with the condensate. */
  readonly totalCooling: Quantity<"power">;
  /** Share of it that only cools. */
  readonly sensibleHeatRatio: Quantity<"ratio">;
  /** Whether the coil is dry: the leaving air is as wet as the entering, as far as hygrometers tell. */
  readonly isDry: boolean;
}

function flow(massFlow: number): CondensateFlow {
  return {
    massFlow: new Quantity(massFlow, kgPerHour),
    volumeFlow: new Quantity(massFlow / waterDensity, literPerHour),
  };
}

/**
 * The condensate that a coil makes, from the air before and behind it. The air flow is counted per
 * kilogram of dry air by the volume of the moist air that carries it; taking dry air for that overstates
 * the answer by about 2 %.
 *
 * A dry coil leaves the water of the air as it was, and two hygrometers of ±3 points then read now more, now less behind
 * it. Leaving air that is wetter by no more than that counts as just as wet: `isDry`, and no water.
 *
 * @param coil - Entering and leaving air, air flow at the entering state, site atmosphere.
 * @returns Condensate, dry-air flow, humidity ratios, total cooling and sensible heat ratio.
 * @throws {@link InvalidInputError} when the leaving air is warmer than the entering air, or wetter beyond ±3 points of
 * relative humidity on both.
 * @throws {@link OutOfRangeError} outside 0 to 60 °C or 30 to 120 kPa.
 *
 * Cautions: a fraction of a degree on the leaving air or a few percent of humidity move the answer much;
 * size a drain or a pump with a margin.
 *
 * Source: ASHRAE Handbook, Fundamentals (2021), chapter 1, cooling and dehumidification, from memory; the ±3 points are
 * common practice, no source.
 *
 * @example
 * ```ts
 * import { condensateRate } from "hvac-install-math/condensate";
 * import { cfm, degF, gallonPerHour, percent, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const { massFlow, volumeFlow } = condensateRate({
 *   entering: { dryBulb: degF(80), relativeHumidity: percent(50) },
 *   leaving: { dryBulb: degF(55), relativeHumidity: percent(95) },
 *   airFlow: cfm(400),
 *   atmosphere: standardAtmosphere,
 * });
 * massFlow.toString(undefined, 2); // => 1.73 kg/h
 * volumeFlow.toString(gallonPerHour, 2); // => 0.46 gal/h
 * ```
 */
export function condensateRate(coil: CoilAir): CondensateRate {
  objectOf("coil", coil);
  const p = atmosphereOf(coil.atmosphere);
  const air1 = moistAir("entering", coil.entering, p);
  const air2 = moistAir("leaving", coil.leaving, p);
  const V1 = siOf("airFlow", coil.airFlow, "volumeFlow", { above: 0 });
  // ±3 points of each reading, both the wrong way.
  const points = ({ t }: MoistAir) => ratioOf(0.03 * waterVaporPressure(t + 273.15), p);
  const doubt = points(air1) + points(air2);
  const isDry = air2.W >= air1.W;
  if (air2.t > air1.t || air2.W > air1.W + doubt) {
    const shown = ({ t, W }: MoistAir) => `${t.toFixed(1)} °C, ${W.toFixed(5)} kg/kg`;
    throw new InvalidInputError({
      argument: "leaving",
      value: shown(air2),
      allowed: `at most the entering ${shown(air1)}`,
      hint: choose(["entering", "leaving"], "matching"),
    });
  }
  const dryAir = V1 / air1.v; // ṁ_da = V̇1/v1
  const W2 = Math.min(air1.W, air2.W);
  const water = dryAir * (air1.W - W2); // ṁ_w = ṁ_da (W1 − W2)
  const sensible = dryAir * (1.006 + 1.86 * W2) * (air1.t - air2.t);
  const total = isDry ? sensible : dryAir * (air1.h - air2.h) - water * 4.186 * air2.t; // kW; h_w2 = 4.186 t2
  return frozen({
    ...flow(water),
    dryAirFlow: kgPerSecond(dryAir),
    enteringHumidityRatio: fraction(air1.W),
    leavingHumidityRatio: fraction(air2.W),
    totalCooling: kW(total),
    sensibleHeatRatio: fraction(total > 0 ? sensible / total : 1),
    isDry,
  });
}

/**
 * The condensate that a unit makes at a load, from the share of it that dries the air.
 *
 * @param load - Total cooling, above 0, and the sensible heat ratio, 0 to 1.
 * @returns Condensate by mass and volume: latent load divided by 2454 kJ/kg.
 * @throws {@link InvalidInputError} when an argument is outside its range.
 *
 * Source: latent heat of water at 20 °C, 2454 kJ/kg, from memory.
 *
 * @example
 * ```ts
 * import { condensateFromLoad } from "hvac-install-math/condensate";
 * import { kW, percent } from "hvac-install-math/quantity";
 *
 * const { massFlow } = condensateFromLoad({ totalCooling: kW(3.5), sensibleHeatRatio: percent(75) });
 * massFlow.toString(undefined, 2); // => 1.28 kg/h
 * ```
 */
export function condensateFromLoad(load: {
  /** Total cooling, sensible and latent. */
  readonly totalCooling: Quantity<"power">;
  /** Share of it that only cools. */
  readonly sensibleHeatRatio: Quantity<"ratio">;
}): CondensateFlow {
  objectOf("load", load);
  const q = siOf("totalCooling", load.totalCooling, "power", { above: 0 });
  const SHR = siOf("sensibleHeatRatio", load.sensibleHeatRatio, "ratio", { min: 0, max: 1 });
  return frozen(flow((q * (1 - SHR)) / heatOfVaporization)); // q_latent = q (1 − SHR)
}

/**
 * What the trade reckons with where nothing is known: 0.3 to 0.8 gallons per hour and ton of cooling.
 * A coil in dry air makes none at all.
 *
 * @param totalCooling - `power`, above 0.
 * @returns The low and the high figure, in gal/h.
 * @throws {@link InvalidInputError} when it is not above 0.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { condensateRuleOfThumb } from "hvac-install-math/condensate";
 * import { btuPerHour } from "hvac-install-math/quantity";
 *
 * condensateRuleOfThumb(btuPerHour(12000)).high.toString(undefined, 1); // => 0.8 gal/h
 * ```
 */
export function condensateRuleOfThumb(totalCooling: Quantity<"power">): {
  /** 0.3 gal/h per ton. */
  readonly low: Quantity<"volumeFlow">;
  /** 0.8 gal/h per ton. */
  readonly high: Quantity<"volumeFlow">;
} {
  const tons = siOf("totalCooling", totalCooling, "power", { above: 0 }) / tonRefrigeration.scale;
  return frozen({ low: gallonPerHour(0.3 * tons), high: gallonPerHour(0.8 * tons) });
}
