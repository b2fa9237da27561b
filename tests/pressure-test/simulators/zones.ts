// Simulator two: closed forms. Indoor and outdoor parts of their own temperature, a leak that loses
// exponentially (molecular) or hyperbolically (laminar), nitrogen by a virial equation from a table.
import type { Random } from "./random.ts";
import { type Row, rounded, type Simulated } from "./simulated.ts";

const R = 8.314462618;
const COPPER = 49.5e-6; // cubic expansion, 1/K
// B (cm³/mol) and C (cm⁶/mol²) of nitrogen as quadratics in 1000 K/T: fitted to tabulated virials,
// 243 K to 333 K, within 7.6e-5 of the reference equation up to 5 MPa.
const virials = (T: number): [number, number] => {
  const x = 1000 / T;
  return [
    (-0.918938 * x * x - 11.08944 * x + 42.62033) * 1e-6,
    (61.5023 * x * x - 209.357 * x + 1424.654) * 1e-12,
  ];
};
/** mol/m³ at p and T by bisection. */
function molarDensity(p: number, T: number): number {
  const [B, C] = virials(T);
  let [low, high] = [0, (1.2 * p) / (R * T)];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (middle * R * T * (1 + B * middle + C * middle * middle) > p) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
/** Pressure of n mol in volumes at temperatures, by bisection. */
function pressureOf(n: number, volumes: readonly number[], T: readonly number[]): number {
  let [low, high] = [1e4, 1.2e7];
  for (let i = 0; i < 46; i++) {
    const middle = (low + high) / 2;
    const held = volumes.reduce((sum, V, z) => sum + V * molarDensity(middle, T[z] as number), 0);
    if (held > n) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

export function simulateZones(random: Random): Simulated {
  const seconds = random.scale(0.25, 24) * 3600;
  const count = Math.round(random.between(20, 160));
  const split = random.chance(0.5);
  const shares = split ? [random.between(0.2, 0.8)] : [];
  shares.push(1 - (shares[0] ?? 0));
  const total = random.scale(0.5e-3, 10e-3);

  // Outdoor: knots every few hours joined by cosines; indoor: a thermostat's saw.
  const knotTime = random.between(1.5, 7) * 3600;
  const span = random.between(0, 14);
  const base = random.between(273, 308);
  const knots = Array.from(
    { length: Math.ceil(seconds / knotTime) + 2 },
    () => base + span * random.between(-1, 1),
  );
  const outdoor = (t: number) => {
    const at = t / knotTime;
    const i = Math.floor(at);
    const [a, b] = [knots[i] as number, knots[i + 1] as number];
    return a + ((b - a) * (1 - Math.cos(Math.PI * (at - i)))) / 2;
  };
  const set = random.between(291, 298);
  const period = random.between(1200, 4000);
  const indoor = (t: number) => set + 0.6 * (Math.abs(((t / period) % 1) - 0.5) - 0.25);
  const temperatures = (t: number) => (split ? [indoor(t), outdoor(t)] : [outdoor(t)]);

  const atmosphere = random.between(80e3, 103e3);
  const fill = random.between(0.9e6, 4.1e6);
  const tight = random.chance(0.4);
  const wanted = tight ? 0 : random.scale(0.0005, 0.3);
  const laminar = random.chance(0.7);
  const left = (x: number) => (laminar ? 1 / (1 + (wanted / (1 - wanted)) * x) : (1 - wanted) ** x);
  const volumesAt = (T: readonly number[]) =>
    shares.map((share, z) => share * total * (1 + COPPER * ((T[z] as number) - 293.15)));
  const T1 = temperatures(0);
  const held = volumesAt(T1).reduce((n, V, z) => n + V * molarDensity(fill, T1[z] as number), 0);
  const pressure = (t: number, leak: boolean) => {
    const T = temperatures(t);
    return pressureOf(held * (leak ? left(t / seconds) : 1), volumesAt(T), T);
  };
  const drop = tight ? 0 : pressure(seconds, false) - pressure(seconds, true);

  const accuracy = random.pick([7e3, 14e3, 28e3, 55e3]);
  const step = random.pick([500, 1e3, 6894.757 / 10, 6894.757]);
  const drift = Math.max(step, accuracy * random.between(0.1, 0.4));
  const offset = accuracy * random.between(-1, 1);
  // The zero moves with the gauge's own warmth, along the night or in one early step.
  const moved = drift * random.between(-1, 1);
  const early = random.chance(0.3);
  const zero = (x: number) => offset + moved * (early ? 1 - Math.exp(-8 * x) : x);
  const noise = random.between(0, 0.5) * step;
  const front = random.normal(Math.min(800, 150 * Math.sqrt(seconds / 3600)));

  const thermometer = {
    accuracy: random.pick([0.3, 0.6, 1.1]),
    step: random.pick([0.1, 0.1, 0.5]),
    follows: random.pick([0.25, 0.5, 1, 1.5]),
  };
  // Each thermometer has its error, a contact that lets some air through, and the sun now and then.
  const probes = temperatures(0).map((_, z) => {
    const { follows: f } = thermometer;
    const wave = random.between(0.6, 5) * 3600;
    return {
      z,
      bias: thermometer.accuracy * random.between(-1, 1),
      contact: (f / Math.max(4, span * 1.4)) * random.between(-1, 1),
      size: f * random.between(0, 1.05),
      phase: random.between(0, 2 * Math.PI),
      wave,
      sunAt: seconds * random.between(-1, 2),
      sun: random.chance(0.25) ? f * random.between(0, 1.2) : 0,
      sunFor: random.between(900, 5400),
    };
  });
  const rows: Row[] = [];
  for (let i = 0; i <= count; i++) {
    // An irregular logger: up to a third of a step early or late, the ends in time.
    const jitter = i === 0 || i === count ? 0 : random.between(-0.33, 0.33);
    const t = ((i + jitter) / count) * seconds;
    const T = temperatures(t);
    rows.push({
      t,
      p: rounded(
        pressure(t, true) -
          atmosphere -
          (front * t) / seconds +
          zero(t / seconds) +
          random.normal(noise),
        step,
      ),
      T: probes.map(({ z, bias, contact, size, phase, wave, sunAt, sun, sunFor }) => {
        const gas = T[z] as number;
        const off =
          contact * (gas - base) +
          size * Math.sin((2 * Math.PI * t) / wave + phase) * 0.8 +
          sun * Math.exp(-(((t - sunAt) / sunFor) ** 2));
        return rounded(gas + bias + off + random.normal(0.03), thermometer.step);
      }),
    });
  }
  const volumeError = split ? 0.1 : 0;
  return {
    rows,
    gauge: { accuracy, step, drift },
    thermometer,
    volumes: shares.map((share) => share * total * (1 + random.normal(volumeError))),
    volumeError,
    atmosphere,
    copper: random.chance(0.5),
    limit: fill * random.scale(0.002, 0.05),
    drop,
    tight,
  };
}
