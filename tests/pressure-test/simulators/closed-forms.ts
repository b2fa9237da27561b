// Simulator two: every course is a closed form. The air outdoors is a day's wave and its harmonic, tubing answers
// it smaller and later (first-order response), the fill leaves two exponentials, the sun a bell, clouds ripple;
// a leak loses exponentially (molecular) or hyperbolically (laminar). Nitrogen by second and third virial
// coefficients tabulated from the reference equation of state (Span et al. 2000). Sizes of the effects:
// heat of filling p·V over the copper of ASTM B280 tube; film and foam; from the gas to the wall in 5 s to 90 s: heat
// conduction in a closed tube R²/(7.35 α), 1 s in 1/4 in to 20 s in 3/4 in at 4.2 MPa (x·J0(x) = −2(γ − 1)·J1(x)), convection
// only faster; a shell of 10 cm to 20 cm by Churchill and Chu (1975) at 1 K to 5 K 27 s to 140 s, up to half of the gas.
import type { Care, Effect, Row, Simulated, Simulator } from "./simulated.ts";

const R = 8.314462618;
// T (K), B (cm³/mol), C (cm⁶/mol²)
const virials: readonly [number, number, number][] = [
  [253.15, -15.525, 1557.3],
  [273.15, -10.295, 1482.4],
  [293.15, -5.901, 1426.2],
  [300, -4.554, 1410.2],
  [313.15, -2.162, 1383.4],
  [323.15, -0.496, 1365.8],
];
/** B and C at T: Newton's divided differences in 1/T over all nodes. */
function virial(T: number): [number, number] {
  const x = virials.map(([t]) => 1000 / t);
  const at = (column: 1 | 2) => {
    const c = virials.map((row) => row[column]);
    for (let order = 1; order < c.length; order++)
      for (let i = c.length - 1; i >= order; i--)
        c[i] =
          ((c[i] as number) - (c[i - 1] as number)) / ((x[i] as number) - (x[i - order] as number));
    return c.reduceRight((sum, value, i) => value + (1000 / T - (x[i] as number)) * sum, 0);
  };
  return [at(1) * 1e-6, at(2) * 1e-12];
}
/** mol/m³ of nitrogen, by Newton's method. */
export function molesPerVolume(p: number, T: number): number {
  const [B, C] = virial(T);
  let rho = p / (R * T);
  for (let i = 0; i < 4; i++) {
    const excess = rho * R * T * (1 + B * rho + C * rho * rho) - p;
    rho -= excess / (R * T * (1 + 2 * B * rho + 3 * C * rho * rho));
  }
  return rho;
}
interface Zone {
  readonly share: number;
  air(t: number): number;
  tube(t: number): number;
  gas(t: number): number;
}
function common(moles: number, zones: readonly Zone[], t: number): number {
  let [low, high] = [2e5, 6.5e6];
  const held = (p: number) =>
    zones.reduce((sum, z) => sum + z.share * molesPerVolume(p, z.gas(t)), 0);
  // Regula falsi: the amount is nearly proportional to the pressure.
  let [a, b] = [held(low) - moles, held(high) - moles];
  let p = low;
  for (let i = 0; i < 6; i++) {
    p = (low * b - high * a) / (b - a);
    const c = held(p) - moles;
    if (c > 0) [high, b, a] = [p, c, a / 2];
    else [low, a, b] = [p, c, b / 2];
  }
  return p;
}

/** A 32-bit xorshift generator (Marsaglia 2003). */
class Dice {
  private state: number;
  constructor(seed: number) {
    this.state = (seed * 2654435761) >>> 0 || 1;
    for (let i = 0; i < 20; i++) this.unit();
  }
  unit(): number {
    let s = this.state;
    s ^= s << 13;
    s ^= s >>> 17;
    s ^= s << 5;
    this.state = s >>> 0;
    return this.state / 4294967296;
  }
  in(a: number, b: number): number {
    return a + (b - a) * this.unit();
  }
  log(a: number, b: number): number {
    return a * (b / a) ** this.unit();
  }
  /** Bell-shaped: the sum of twelve. */
  bell(sd: number): number {
    let sum = -6;
    for (let i = 0; i < 12; i++) sum += this.unit();
    return sum * sd;
  }
  of<A>(list: readonly A[]): A {
    return list[Math.floor(this.unit() * list.length)] as A;
  }
}

const HOUR = 3600;
const w1 = (2 * Math.PI) / (24 * HOUR);

/** A wave and its answer through first-order lags: amplitude over √(1 + (ωτ)²), later by atan(ωτ). */
const wave = (size: number, omega: number, phase: number, lag: number) => (t: number) =>
  (size / Math.hypot(1, omega * lag)) * Math.sin(omega * t + phase - Math.atan(omega * lag));

function zoneOf(
  dice: Dice,
  on: (e: Effect, p: number) => boolean,
  o: { share: number; outdoors: boolean; hold: number; before: number; fill: number; care: Care },
): Zone {
  const mean = o.outdoors ? dice.in(276, 304) : dice.in(291, 298);
  const size = o.outdoors ? dice.in(2, 9) : dice.in(0, 1.2);
  const wavesOf = [
    [size, w1, dice.in(0, 6.28)],
    [size * dice.in(0, 0.4), 2 * w1, dice.in(0, 6.28)],
    // Clouds and gusts outdoors, the thermostat indoors.
    [
      o.outdoors ? dice.in(0, 0.5) : dice.in(0.1, 0.5),
      (2 * Math.PI) / dice.in(900, 4000),
      dice.in(0, 6.28),
    ],
  ] as const;
  const lag = on("lag", 1) ? dice.log(240, 2000) : 30;
  const gasLag = dice.in(5, 90);
  const airWaves = wavesOf.map(([a, w, f]) => wave(a, w, f, 0));
  const tubeWaves = wavesOf.map(([a, w, f]) => wave(a, w, f, lag));
  const gasWaves = wavesOf.map(([a, w, f]) => wave(a, w, f, lag + gasLag));
  const sum = (list: ((t: number) => number)[], t: number) => list.reduce((s, f) => s + f(t), mean);
  const warm = on("warm-from-fill", 1);
  const ofTube = warm ? (dice.log(0.4, 4.5) * o.fill) / 4e6 : 0;
  const ofGas = warm ? dice.in(0.5, 10) : 0;
  const warmth = (t: number, gas: boolean) => {
    const since = t + o.before;
    return ofTube * Math.exp(-since / lag) + (gas ? ofGas * Math.exp(-since / gasLag) : 0);
  };
  const lit = o.outdoors && on("sun", 0.35);
  const sun = lit ? dice.in(0.5, o.care === "careful" ? 2 : 7) : 0;
  const noon = dice.in(-0.3, 1.3) * o.hold;
  const width = dice.in(0.5, 4) * HOUR;
  const shine = (t: number) => sun * Math.exp(-(((t - noon) / width) ** 2));
  return {
    share: o.share,
    air: (t) => sum(airWaves, t),
    tube: (t) => sum(tubeWaves, t) + warmth(t, false) + shine(t),
    gas: (t) => sum(gasWaves, t) + warmth(t, true) + shine(t),
  };
}

function draw(dice: Dice, care: Care, only?: readonly Effect[]): Simulated {
  const on = (effect: Effect, p: number) =>
    only ? only.includes(effect) : dice.unit() < p || p === 1;
  const careful = care === "careful";
  const hold = (careful ? dice.log(1, 24) : dice.log(0.25, 20)) * HOUR;
  const before = (careful ? dice.in(20, 100) : dice.in(0.5, 4)) * 60;
  const fill = dice.in(1.0e6, 4.1e6);
  const indoorProbe = !careful && on("thermometer-indoors", 0.1);
  const two = indoorProbe || on("gas-elsewhere", 0.6);
  const indoorShare = two ? dice.in(0.2, 0.65) : 0;
  const place = { hold, before, fill, care };
  const zones = [zoneOf(dice, on, { ...place, share: 1 - indoorShare, outdoors: true })];
  if (two) zones.push(zoneOf(dice, on, { ...place, share: indoorShare, outdoors: false }));

  const tight = dice.unit() < 0.4;
  const lost = tight ? 0 : dice.log(0.0005, 0.1);
  const laminar = dice.unit() < 0.7;
  const left = (x: number) => (laminar ? 1 / (1 + (lost / (1 - lost)) * x) : (1 - lost) ** x);
  const moles = zones.reduce((sum, z) => sum + z.share * molesPerVolume(fill, z.gas(0)), 0);
  const drop = tight ? 0 : common(moles, zones, hold) - common(moles * left(1), zones, hold);

  // 1 % of the fill is the coarsest gauge of a careful user.
  const accuracy = dice.of(careful ? [7e3, 14e3, 0.01 * fill] : [7e3, 14e3, 28e3, 55e3]);
  const step = dice.of([500, 1e3, 6894.757 / 10, 6894.757, 6894.757]);
  const drift = Math.max(step / 2, accuracy * (careful ? dice.in(0.1, 0.3) : dice.in(0.1, 0.5)));
  const moved = on("gauge-drift", 1) ? drift * dice.in(-1, 1) : 0;
  const early = dice.unit() < 0.3;
  const stays = accuracy * dice.in(-1, 1);
  const flutter = dice.in(0, 0.5) * step;
  const front = on("weather", 1) ? dice.bell(Math.min(800, 150 * Math.sqrt(hold / HOUR))) : 0;
  const station = dice.in(80e3, 103e3);

  const accuracyT = dice.of([0.3, 0.6, 1]);
  const stepT = dice.of([0.1, 0.1, 0.5]);
  const seen = careful ? zones : [(indoorProbe ? zones[1] : zones[0]) as Zone];
  const probes = seen.map((zone) => {
    const bias = accuracyT * dice.in(-1, 1);
    const [touch, spot, period] = [dice.in(0, 0.2), dice.in(0, 0.4), dice.in(1, 9) * HOUR];
    const reads = (t: number) =>
      careful
        ? zone.tube(t) + touch * (zone.air(t) - zone.tube(t)) + spot * Math.sin((6.28 * t) / period)
        : zone.air(t);
    return { zone, bias, reads };
  });
  const count = Math.round(dice.in(20, 110));
  let farthest = 0;
  const rows: Row[] = Array.from({ length: count + 1 }, (_, i) => {
    // An irregular logger: up to a third of a step early or late, the ends in time.
    const t = ((i + (i % count === 0 ? 0 : dice.in(-0.33, 0.33))) / count) * hold;
    const x = t / hold;
    const zero = stays + moved * (early ? 1 - Math.exp(-8 * x) : x);
    const p = common(moles * left(x), zones, t) - station - front * x + zero + dice.bell(flutter);
    return {
      t,
      p: step * Math.round(p / step),
      T: probes.map(({ zone, bias, reads }) => {
        farthest = Math.max(farthest, Math.abs(reads(t) - zone.gas(t)));
        return stepT * Math.round((reads(t) + bias + dice.bell(0.03)) / stepT);
      }),
    };
  });
  // A careful user states the distance to the gas as a bound, to the next half kelvin; one in ten halves it.
  const follows = Math.max(0.25, Math.ceil(farthest * 2) / 2) * (dice.unit() < 0.1 ? 0.5 : 1);
  const liters = dice.log(0.8, 10);
  return {
    care,
    rows,
    gauge: { accuracy, step, drift },
    thermometer: { accuracy: accuracyT, step: stepT, follows },
    volumes: seen.map((z) => (careful ? z.share : 1) * liters * 1e-3 * (1 + dice.bell(0.1))),
    volumeError: careful && two ? 0.1 : 0,
    atmosphere: station + (careful ? 0 : dice.in(-1500, 1500)),
    copper: false,
    sinceFill: before,
    drop,
    tight,
  };
}

export const closedForms: Simulator = (seed, { care, only }) => {
  const dice = new Dice(seed);
  return () => draw(dice, care, only);
};
