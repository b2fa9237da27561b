// How long does it take to reach the target? Pump-down through hoses, and dilution by repeated evacuation.
// Follows vacuum handbooks: V·dp/dt = −S_eff(p)·(p − p_ult). Does not cover water, which sets the pace below
// about 2000 micron in a wet system, nor the refrigerant in the oil.
import { listOf, numberOf, objectOf, refuse, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { fraction } from "../quantity/units/ratio.ts";
import { second } from "../quantity/units/time.ts";
import { tubeConductanceSi, type VacuumTube } from "./conductance.ts";

/** Options of {@link pumpDownTime}. */
export interface PumpDownInput {
  /** Volume of the system. */
  readonly volume: Quantity<"volume">;
  /** Speed of the pump at its inlet, free air displacement for a mechanical pump. */
  readonly pump: Quantity<"volumeFlow">;
  /** Hoses, cores and lines between system and pump in series; none when the speed is that at the system. */
  readonly tubes?: readonly VacuumTube[] | undefined;
  /** Pressure at the start and at the end. */
  readonly from: Quantity<"absolutePressure">;
  /** Pressure to reach. */
  readonly to: Quantity<"absolutePressure">;
  /** Lowest pressure that the pump reaches here, what leaks and vapor included; 0 when left out. */
  readonly ultimate?: Quantity<"absolutePressure"> | undefined;
  /** Gas temperature, only needed with tubes. */
  readonly temperature?: Quantity<"temperature"> | undefined;
}

/**
 * Time to pump air or nitrogen down, through hoses whose conductance falls with the pressure.
 *
 * Without tubes it is (V/S)·ln[(p1 − p_ult)/(p2 − p_ult)]; with tubes that law is summed over 400 small
 * steps of pressure, each with its own conductance. Water in the system takes longer, often much longer.
 *
 * @param input - Volume, pump, tubes, pressures.
 * @returns The time, in s.
 * @throws {@link InvalidInputError} when the target is not between the ultimate and the starting pressure,
 * tubes come without a temperature, or a value is outside its range.
 *
 * Source: vacuum handbooks.
 *
 * @example
 * ```ts
 * import { cfm, liter, micron, second, standardAtmosphere } from "hvac-install-math/quantity";
 * import { pumpDownTime } from "hvac-install-math/vacuum-decay";
 *
 * const job = { volume: liter(8), from: standardAtmosphere, to: micron(500) };
 * pumpDownTime({ ...job, pump: cfm(4) }).toString(second, 1); // => 31.0 s
 * ```
 */
export function pumpDownTime(input: PumpDownInput): Quantity<"duration"> {
  const { volume, pump, tubes = [], from, to, ultimate, temperature } = objectOf("input", input);
  const V = siOf("volume", volume, "volume", { above: 0 });
  const S = siOf("pump", pump, "volumeFlow", { above: 0 });
  const low = ultimate === undefined ? 0 : siOf("ultimate", ultimate, "absolutePressure");
  const p2 = siOf("to", to, "absolutePressure", { above: low });
  const p1 = siOf("from", from, "absolutePressure", { min: p2 });
  listOf("tubes", tubes, 100);
  if (tubes.length === 0) return second((V / S) * Math.log((p1 - low) / (p2 - low)));
  if (temperature === undefined) {
    refuse("temperature", undefined, "a temperature, with tubes", "temperature");
  }
  const T = siOf("temperature", temperature, "temperature", { min: 200, max: 400 });
  const sizes = tubes.map(
    (tube, i) =>
      [
        siOf(`tubes[${i}].bore`, tube?.bore, "length", { min: 1e-4, max: 1 }),
        siOf(`tubes[${i}].length`, tube?.length, "length", { min: 1e-4, max: 1000 }),
      ] as const,
  );
  const steps = 400;
  const ratio = ((p2 - low) / (p1 - low)) ** (1 / steps);
  let time = 0;
  for (let i = 0; i < steps; i++) {
    const p = low + (p1 - low) * ratio ** (i + 0.5);
    time += (V * -Math.log(ratio)) / throughTubes(S, sizes, p, T);
  }
  return second(time);
}

/** Speed at the system; the mean pressure of the tubes is found with the pressure at the pump, p·S_eff/S. */
function throughTubes(
  S: number,
  sizes: readonly (readonly [number, number])[],
  p: number,
  T: number,
): number {
  let speed = S;
  for (let round = 0; round < 30; round++) {
    const mean = (p + (p * speed) / S) / 2;
    const resistance = sizes.reduce(
      (sum, [d, l]) => sum + 1 / tubeConductanceSi(d, l, mean, T).total,
      1 / S,
    );
    speed = (speed + 1 / resistance) / 2;
  }
  return speed;
}

/** One evacuation and the break with dry nitrogen after it. */
export interface EvacuationCycle {
  /** Pressure that was reached. */
  readonly vacuum: Quantity<"absolutePressure">;
  /** Pressure to which it was broken. */
  readonly brokenTo: Quantity<"absolutePressure">;
}

/**
 * What is left of the air (or any gas that was in the system) after evacuations with nitrogen breaks, as a
 * fraction of what filled the system at the starting pressure: Π vacuum/break.
 *
 * It dilutes gas; water needs time and heat.
 *
 * Cautions: break with dry nitrogen from a regulator only, never oxygen or compressed air.
 *
 * @param input - The cycles, the last vacuum, and the pressure at which the system was full of air.
 * @returns The fraction that is left.
 * @throws {@link InvalidInputError} when a vacuum is not below its break, or nothing is above 0.
 *
 * Source: gas dilution at constant temperature, computed; common practice calls it triple evacuation.
 *
 * @example
 * ```ts
 * import { micron, psig, standardAtmosphere, toAbsolute } from "hvac-install-math/quantity";
 * import { residualGasFraction } from "hvac-install-math/vacuum-decay";
 *
 * const cycle = { vacuum: micron(1500), brokenTo: toAbsolute(psig(2), standardAtmosphere) };
 * const left = residualGasFraction({
 *   cycles: [cycle, cycle],
 *   last: micron(500),
 *   start: standardAtmosphere,
 * });
 * left.si.toExponential(1); // => 2.0e-9
 * ```
 */
export function residualGasFraction(input: {
  readonly cycles: readonly EvacuationCycle[];
  readonly last: Quantity<"absolutePressure">;
  readonly start: Quantity<"absolutePressure">;
}): Quantity<"ratio"> {
  const { cycles, last, start } = objectOf("input", input);
  let full = siOf("start", start, "absolutePressure", { above: 0 });
  let left = 1;
  for (const [i, cycle] of listOf("cycles", cycles).entries()) {
    const path = `cycles[${i}]`;
    const { vacuum, brokenTo } = objectOf(path, cycle);
    left *= siOf(`${path}.vacuum`, vacuum, "absolutePressure", { above: 0, below: full }) / full;
    full = siOf(`${path}.brokenTo`, brokenTo, "absolutePressure", { above: vacuum.si });
  }
  numberOf("cycles", cycles.length, { max: 100 });
  return fraction(
    (left * siOf("last", last, "absolutePressure", { above: 0, below: full })) / full,
  );
}
