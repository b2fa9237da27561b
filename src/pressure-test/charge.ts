// How much nitrogen is in there, and what pressure does it make at other temperatures? Plain SI numbers.
// Follows Span et al. (2000) through property-model/nitrogen-gas.ts; zones share one pressure.
// Does not cover other gases: residual air of one atmosphere acts like nitrogen within 1e-4.
import { nitrogenDensity } from "../property-model/nitrogen-gas.ts";

/** A part of the system at one temperature: its share of the volume, any common scale, and K. */
export interface Zone {
  readonly share: number;
  readonly temperature: number;
}

/** Temperature at which the walls have the stated volume, K; only ratios of two states are used. */
const T0 = 293.15;

/** Σ share·(1 + β(T − T0))·ρ(p, T): the charge per unit of volume, kg/m³ when the shares add to 1. */
export function chargeAt(pressure: number, zones: readonly Zone[], beta: number): number {
  let sum = 0;
  for (const { share, temperature } of zones) {
    sum += share * (1 + beta * (temperature - T0)) * nitrogenDensity(pressure, temperature);
  }
  return sum;
}

/** The absolute pressure, Pa, at which zones hold a charge. */
export function pressureOf(charge: number, zones: readonly Zone[], beta: number): number {
  // ρ is proportional to p within a few per cent, so that each step gains one to two digits.
  let p = 1e6;
  for (let step = 0; step < 10; step++) p *= charge / chargeAt(p, zones, beta);
  return p;
}

/** Zones of temperatures and volumes; one temperature stands for the whole volume. */
export function zones(temperatures: readonly number[], volumes: readonly number[]): Zone[] {
  const total = volumes.reduce((sum, v) => sum + v, 0);
  return temperatures.map((temperature, i) => ({
    share: temperatures.length === 1 ? 1 : (volumes[i] as number) / total,
    temperature,
  }));
}

/** kg/m³ per Pa of the charge at a state. */
export function slopeAt(pressure: number, at: readonly Zone[], beta: number): number {
  const step = pressure * 1e-4;
  return (chargeAt(pressure + step, at, beta) - chargeAt(pressure - step, at, beta)) / (2 * step);
}
