// Simulator one: balances stepped in time. One body of gas follows the air with a lag, a laminar leak
// takes mass, the reference equation of state of nitrogen gives the pressure.
import { nitrogenDensity, nitrogenPressure } from "../../../src/property-model/nitrogen.ts";
import type { Random } from "./random.ts";
import { type Row, rounded, type Simulated } from "./simulated.ts";

const COPPER = 49.5e-6; // cubic expansion, 1/K

export function simulateBalance(random: Random): Simulated {
  const hours = random.scale(0.25, 24);
  const seconds = hours * 3600;
  const steps = 240;
  const dt = seconds / steps;

  // The air: a day's swing of up to ± 7 K (14 K from end to end, more in the tails), weather, gusts.
  const middle = random.between(275, 305);
  const amplitude = random.between(0, 14);
  const phase = random.between(0, 2 * Math.PI);
  const trend = random.normal(1) / 24;
  let gust = 0;
  const air = Array.from({ length: steps + 1 }, (_, i) => {
    const t = (i * dt) / 3600;
    gust += (-gust * dt) / 1200 + random.normal(0.3 * Math.sqrt(Math.min(1, dt / 1200)));
    gust *= Math.min(1, 3 / Math.max(1e-9, Math.abs(gust)));
    return middle + amplitude * Math.sin((2 * Math.PI * t) / 24 + phase) + trend * t + gust;
  });
  const lag = random.scale(60, 900);
  const gas = [air[0] as number];
  for (let i = 1; i <= steps; i++) {
    const before = gas[i - 1] as number;
    gas.push(before + ((air[i] as number) - before) * (1 - Math.exp(-dt / lag)));
  }

  // The leak: dm/dt ∝ p² − pa², sized for a drop of 0.05 % to 30 % of the absolute pressure.
  const atmosphere = random.between(80e3, 103e3);
  const fill = random.between(1.0e6, 4.2e6);
  const tight = random.chance(0.4);
  const wanted = tight ? 0 : random.scale(0.0005, 0.3);
  const copper = random.chance(0.5);
  const volumeAt = (T: number) => 1 + COPPER * (T - (gas[0] as number));
  const density0 = nitrogenDensity(fill, gas[0] as number);
  const run = (strength: number) => {
    let mass = density0;
    return gas.map((T, i) => {
      if (i > 0) {
        // Midpoint rule for the loss over the step.
        const loss = (m: number) => {
          const p = nitrogenPressure(m / volumeAt(T), T);
          return (strength * density0 * (p * p - atmosphere ** 2)) / fill ** 2 / steps;
        };
        mass -= loss(mass - loss(mass) / 2);
      }
      return nitrogenPressure(mass / volumeAt(T), T);
    });
  };
  // −ln(1 − w) is exact for an exponential loss; the laminar law needs w/(1 − w).
  const pressures = run(wanted / (1 - wanted));
  const T2 = gas.at(-1) as number;
  const sealed = nitrogenPressure(density0 / volumeAt(T2), T2);
  const drop = sealed - (pressures.at(-1) as number);

  // The instruments, within their datasheets.
  const range = 5.5e6;
  const accuracy = range * random.pick([0.0025, 0.005, 0.01]);
  const step = random.pick([1e3, 6894.757 / 10, 6894.757, 5e3]);
  const drift = accuracy * random.between(0.1, 0.4);
  const offset = accuracy * random.between(-0.6, 0.6);
  const scale = (accuracy / range) * random.between(-0.4, 0.4);
  const wandered = drift * random.between(-1, 1);
  const noise = random.between(0, 0.6) * step;
  let weather = 0;
  const barometer = air.map((_, i) => {
    if (i > 0) weather += random.normal(140 * Math.sqrt(dt / 3600));
    return weather;
  });
  const thermometer = {
    accuracy: random.pick([0.3, 0.5, 1]),
    step: 0.1,
    follows: random.pick([0.2, 0.4, 0.7, 1.2]),
  };
  const bias = thermometer.accuracy * random.between(-1, 1);
  const off = distance(random, gas, dt, thermometer.follows);
  const shownEvery = Math.max(1, Math.round(random.between(0, 4)));
  const rows: Row[] = [];
  for (let i = 0; i <= steps; i++) {
    if (i % shownEvery !== 0 && i !== steps) continue;
    const gauge = (pressures[i] as number) - atmosphere - (barometer[i] as number);
    const shown = gauge * (1 + scale) + offset + (wandered * i) / steps + random.normal(noise);
    rows.push({
      t: i * dt,
      p: rounded(shown, step),
      T: [rounded((gas[i] as number) + bias + (off[i] as number), thermometer.step)],
    });
  }
  return {
    rows,
    gauge: { accuracy, step, drift },
    thermometer,
    volumes: [random.scale(0.5e-3, 10e-3)],
    volumeError: 0,
    atmosphere,
    copper,
    limit: fill * random.scale(0.002, 0.05),
    drop,
    tight,
  };
}

/** How far the thermometer is from the gas: part of the swing, a lag, and a slow wander, together of f/√3. */
function distance(random: Random, gas: readonly number[], dt: number, f: number): number[] {
  const mean = gas.reduce((sum, T) => sum + T, 0) / gas.length;
  const spread = Math.sqrt(gas.reduce((sum, T) => sum + (T - mean) ** 2, 0) / gas.length);
  const weights = [random.between(0, 1), random.between(0, 1), random.between(0.2, 1)] as const;
  const norm = f / Math.sqrt(3) / Math.hypot(...weights);
  const missed = Math.min(0.15, (weights[0] * norm) / Math.max(spread, 1e-9)) * random.normal(1);
  const memory = random.scale(1200, 3 * 3600);
  const lag = random.normal(120);
  let wander = random.normal(1);
  return gas.map((T, i) => {
    const keep = Math.exp(-dt / memory);
    if (i > 0) wander = wander * keep + random.normal(Math.sqrt(1 - keep * keep));
    const speed = i > 0 ? (T - (gas[i - 1] as number)) / dt : 0;
    const bound = f;
    const sum = missed * (T - mean) - lag * speed * weights[1] + weights[2] * norm * wander;
    return Math.max(-bound, Math.min(bound, sum));
  });
}
