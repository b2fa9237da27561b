// Simulator 2: closed forms added up. Water leaves over a wide, continuous spectrum of time constants or by
// second order; liquid evaporates by an exponential towards saturation and stops when it is gone; outgassing
// follows t^−α with α between ½ and 1.1; the restriction gives two exponentials; the leak is the tanh law.

import { saturation } from "./saturation.ts";
import {
  observe,
  type Random,
  type SimulatedCase,
  siteOf,
  type Truth,
  truthOf,
} from "./simulation.ts";

export function simulateSpectrum(rng: Random, wanted?: Truth): SimulatedCase {
  const site = siteOf(rng);
  const truth = wanted ?? truthOf(rng);
  const { allowed, hold, start } = site;
  const rate = allowed / hold;
  const leakRate = truth.startsWith("leak") ? rate * rng.logBetween(0.4, 30) : 0;
  const atmosphere = 101_325 * rng.between(0.8, 1.02);
  const leak = (t: number) => atmosphere * Math.tanh((leakRate * t) / atmosphere);

  const psat = saturation(site.ambient - rng.between(0, 3));
  const rise =
    truth === "moisture" || truth === "leak-and-moisture"
      ? Math.min(allowed * rng.logBetween(0.5, 25), 0.9 * psat)
      : 0;
  const middle = rng.logBetween(100, 1100);
  const spread = rng.between(0.2, 0.8);
  const form = rng();
  const stop = rng.between(0.5, 0.98);
  const taus = [-1.5, -0.75, 0, 0.75, 1.5].map(
    (z) => [middle * Math.exp(spread * z), Math.exp((-z * z) / 2)] as const,
  );
  const whole = taus.reduce((sum, [, weight]) => sum + weight, 0);
  const water = (t: number) => {
    if (form < 0.5)
      return (
        rise *
        taus.reduce((sum, [tau, weight]) => sum + (weight / whole) * -Math.expm1(-t / tau), 0)
      );
    if (form < 0.75) return (rise * (t / middle)) / (1 + t / middle);
    return rise * Math.min(stop, -Math.expm1(-t / middle));
  };

  const alpha = rng.between(0.5, 1.1);
  const pumped = rng.logBetween(300, 5400);
  const integral = (t: number) =>
    Math.abs(alpha - 1) < 1e-6
      ? Math.log1p(t / pumped)
      : ((1 + t / pumped) ** (1 - alpha) - 1) / (1 - alpha);
  const outgas =
    truth === "outgassing" ? allowed * rng.logBetween(0.4, 2.5) : allowed * rng.between(0, 0.06);
  const gas = (t: number) => (outgas * integral(t)) / integral(hold);

  const fast = rng.logBetween(2, 40);
  const size = start * rng.between(-0.15, 0.5);
  const second = rng.between(0, 0.3);
  const settle = (t: number) =>
    -size * ((1 - second) * Math.exp(-t / fast) + second * Math.exp(-t / (2.2 * fast)));

  const pressureAt = (t: number) => start + settle(t) + leak(t) + water(t) + gas(t);
  return observe(
    rng,
    site,
    truth,
    leakRate,
    rise === 0 ? 0 : water(site.duration),
    pressureAt,
    "wandering",
  );
}
