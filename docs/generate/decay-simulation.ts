// What does a vacuum gauge show of a tight, a leaking and a wet system? Invented readings, the same each time.
// Closed forms: a leak rises straight, water levels off, outgassing slows down as a logarithm of time.
// Does not cover real systems: no such reading was ever taken.
import { micron, second } from "hvac-install-math/quantity";
import type { DecayReading } from "hvac-install-math/vacuum-decay";

/** What is true of the invented system; pressures in micron, times in seconds. */
export interface InventedSystem {
  /** Rise per minute by the leak. */
  readonly leak?: number;
  /** What the water adds in the end, and with which time constant. */
  readonly water?: readonly [rise: number, timeConstant: number];
  /** What outgassing adds while the time grows by a factor e, and from when on. */
  readonly outgassing?: readonly [rise: number, since: number];
}

/** Half an hour at five seconds: 280 micron at isolation, 25 of equalization, noise of 1.5 micron. */
export function inventedReadings(
  { leak = 0, water = [0, 1], outgassing = [0, 1] }: InventedSystem,
  seed: number,
): DecayReading[] {
  const normal = noise(seed);
  return Array.from({ length: 361 }, (_, i) => {
    const t = 5 * i;
    const pressure =
      280 -
      25 * Math.expm1(-t / 15) +
      (leak * t) / 60 -
      water[0] * Math.expm1(-t / water[1]) +
      outgassing[0] * Math.log1p(t / outgassing[1]) +
      1.5 * normal();
    return { elapsed: second(t), pressure: micron(Math.round(pressure)) };
  });
}

/** Normal noise of standard deviation 1: mulberry32, Box and Muller. */
function noise(seed: number): () => number {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let x = Math.imul(state ^ (state >>> 15), 1 | state);
    x = (x + Math.imul(x ^ (x >>> 7), 61 | x)) ^ x;
    return ((x ^ (x >>> 14)) >>> 0) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}
