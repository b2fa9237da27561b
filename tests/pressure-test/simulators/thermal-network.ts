// Simulator one: a thermal network stepped in time from the end of the fill. Each part of the system has air,
// a wall and gas; the wall takes up heat of the fill and of the sun and follows the air, the gas follows the
// wall. Nitrogen by compressibility factors tabulated from the reference equation of state (Span et al. 2000).
// Sizes of the effects: heat of filling p·V shared with the copper (3.8 K at 3.5 MPa in 5/8 in, 4.7 K in thin 3/4 in),
// film coefficients of 5 to 10 W/(m²·K) in still air and insulation of 1/4 in to 1 in: time constants of 5 to 30 min.
// Gas to wall, 5 s to 90 s for the mean of a part. Nitrogen at 293 K (Span et al. 2000; Lemmon and Jacobsen 2004; rounded,
// from memory): 3 MPa 34.6 kg/m³, c_p 1.09 kJ/(kg·K), c_p/c_v 1.455, 27 mW/(m·K), 18 µPa·s, so α = 7.2e-7, ν = 5.2e-7 m²/s;
// 4.2 MPa α = 5.1e-7.
// - Conduction, cylinder (Carslaw and Jaeger, 7.6: J0(x) = 0, x² = 5.78). In a closed system the pressure follows the mean:
//   ρ·c_p·θ' = k·∇²θ + p', so x·J0(x) = −2(γ − 1)·J1(x), x² = 7.35: τ = R²/(7.35 α) is 1.1 s in 1/4 in (4.8 mm inside),
//   9 s in 5/8 in, 14 s in 3/4 in (17.3 mm) at 3 MPa, 20 s in 3/4 in at 4.2 MPa. No tube of this size is slower.
// - Free convection in it, Nu = 0.55·Ra^¼ (Evans and Stefany 1966, from memory), τ = D²/(4·Nu·α): Ra = 4.8e5 at 1 K in
//   3/4 in, Nu = 14, 7 s at 3 MPa and 9 s at 4.2 MPa; at 0.1 K no faster than conduction.
// - A shell of 10 cm to 20 cm, half as high again: Churchill and Chu (1975), vertical wall, at 1 K Ra = 1e8 to 1e9, Nu = 60 to 140, 45 s
//   to 140 s; at 5 K, where the fill leaves it, 27 s to 90 s; at 0.1 K, which moves no gauge, up to 240 s. It holds up to half of a part's gas.
import type { Care, Effect, Row, Simulated, Simulator } from "./simulated.ts";

// Z of nitrogen, rows T (K), columns p (MPa).
const P = [0.101325, 1, 2, 3, 4, 4.5];
const T = [253.15, 273.15, 293.15, 300, 313.15, 323.15];
const Z = [
  [0.99926, 0.99293, 0.98649, 0.98073, 0.9757, 0.97347],
  [0.99954, 0.99574, 0.99203, 0.9889, 0.98638, 0.98534],
  [0.99976, 0.99782, 0.99611, 0.99489, 0.99418, 0.99401],
  [0.99982, 0.9984, 0.99725, 0.99657, 0.99635, 0.99642],
  [0.99992, 0.99937, 0.99916, 0.99935, 0.99997, 1.00044],
  [0.99998, 1.0, 1.00039, 1.00115, 1.0023, 1.00302],
];
/** Lagrange's weights of four neighboring nodes. */
function weights(nodes: readonly number[], x: number): number[] {
  const first = Math.min(2, Math.max(0, nodes.findIndex((node) => node > x) - 2));
  return nodes.map((a, i) => {
    if (i < first || i > first + 3) return 0;
    let product = 1;
    for (let j = first; j < first + 4; j++)
      if (j !== i) product *= (x - (nodes[j] as number)) / (a - (nodes[j] as number));
    return product;
  });
}
/** p/(Z·T): amount of gas per volume, up to the gas constant. */
export function amount(p: number, temperature: number): number {
  const byP = weights(P, p / 1e6);
  const byT = weights(T, temperature);
  let z = 0;
  for (const [i, row] of Z.entries())
    if (byT[i] !== 0)
      for (const [j, value] of row.entries()) z += (byT[i] as number) * (byP[j] as number) * value;
  return p / (z * temperature);
}

/** Mulberry32 (public domain). */
function draws(seed: number) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const between = (low: number, high: number) => low + (high - low) * next();
  return {
    between,
    scale: (low: number, high: number) => Math.exp(between(Math.log(low), Math.log(high))),
    normal: (sd: number) =>
      sd * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    chance: (p: number) => next() < p,
    pick: <A>(list: readonly A[]): A => list[Math.floor(next() * list.length)] as A,
  };
}
type Draws = ReturnType<typeof draws>;
type Has = (effect: Effect, probability: number) => boolean;

interface Part {
  readonly share: number;
  readonly outdoors: boolean;
  /** At each step: air (with gusts), wall and gas, K. */
  readonly air: number[];
  readonly wall: number[];
  readonly gas: number[];
}

/** Air temperature of a part at each step. */
function airOf(draw: Draws, outdoors: boolean, steps: number, dt: number): number[] {
  const middle = outdoors ? draw.between(276, 304) : draw.between(291, 298);
  // A day's swing of 4 K to 18 K outdoors from end to end; a thermostat's setback indoors.
  const amplitude = outdoors ? draw.between(2, 9) : draw.between(0, 1.5);
  const phase = draw.between(0, 2 * Math.PI);
  const trend = draw.normal(outdoors ? 1.5 : 0.3) / 24;
  let gust = 0;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const hours = (i * dt) / 3600;
    const keep = Math.exp(-dt / 1200);
    gust = gust * keep + draw.normal((outdoors ? 0.3 : 0.15) * Math.sqrt(1 - keep * keep));
    return middle + amplitude * Math.sin((2 * Math.PI * hours) / 24 + phase) + trend * hours + gust;
  });
}

function partOf(
  draw: Draws,
  has: Has,
  care: Care,
  share: number,
  outdoors: boolean,
  steps: number,
  dt: number,
  pressure: number,
): Part {
  const air = airOf(draw, outdoors, steps, dt);
  const slow = has("lag", 1) ? draw.scale(300, 1800) : 60;
  const gasLag = draw.between(5, 90);
  const warm = has("warm-from-fill", 1);
  // Heat of the fill in the wall: up to 4 K in suction tubing at 35 bar; the gas itself some K above the wall, by
  // conduction dp/dt·R²/(8·k), 12 K in 3/4 in filled within 2 min.
  const wallExcess = warm ? (draw.between(0.3, 4) * pressure) / 3.5e6 : 0;
  const gasExcess = warm ? draw.between(1, 12) : 0;
  const lit = outdoors && has("sun", 0.35);
  const sun = lit ? draw.between(2, care === "careful" ? 4 : 12) * draw.between(0.2, 0.7) : 0;
  const from = draw.between(-0.5, 1) * steps;
  const until = from + draw.between(0.2, 1) * steps;
  const wall = [(air[0] as number) + wallExcess];
  const gas = [(wall[0] as number) + gasExcess];
  for (let i = 1; i <= steps; i++) {
    const drive = (air[i] as number) + (i > from && i < until ? sun : 0);
    const w = wall[i - 1] as number;
    wall.push(w + (drive - w) * (1 - Math.exp(-dt / slow)));
    const g = gas[i - 1] as number;
    gas.push(g + ((wall[i] as number) - g) * (1 - Math.exp(-dt / gasLag)));
  }
  return { share, outdoors, air, wall, gas };
}

/** Pressure of an amount per volume in parts of different temperature; a few secant steps. */
function pressureOf(n: number, parts: readonly Part[], i: number, guess: number): number {
  let p = guess;
  for (let k = 0; k < 5; k++) {
    const held = parts.reduce(
      (sum, part) => sum + part.share * amount(p, part.gas[i] as number),
      0,
    );
    p *= n / held;
  }
  return p;
}

function one(draw: Draws, care: Care, only?: readonly Effect[]): Simulated {
  const has: Has = (effect, probability) =>
    only ? only.includes(effect) : probability === 1 || draw.chance(probability);
  const careful = care === "careful";
  const hold = (careful ? draw.scale(1, 24) : draw.scale(0.25, 20)) * 3600;
  const sinceFill = careful ? draw.between(20, 90) * 60 : draw.between(0.5, 5) * 60;
  const dt = Math.min(60, (hold + sinceFill) / 240);
  const first = Math.round(sinceFill / dt);
  const steps = first + Math.round(hold / dt);
  const fill = draw.between(1.1e6, 4.2e6);

  // Where the gas is and where the thermometers are.
  const inside = !careful && has("thermometer-indoors", 0.1);
  const split = inside || has("gas-elsewhere", 0.6);
  const indoors = split ? draw.between(0.15, 0.7) : 0;
  const parts = [partOf(draw, has, care, 1 - indoors, true, steps, dt, fill)];
  if (split) parts.push(partOf(draw, has, care, indoors, false, steps, dt, fill));

  // A laminar leak, dn/dt ∝ p² − pa²; both with and without it from the same fill.
  const atmosphere = draw.between(80e3, 103e3);
  const tight = draw.chance(0.4);
  const wanted = tight ? 0 : draw.scale(0.0005, 0.1);
  const n0 = parts.reduce(
    (sum, part) => sum + part.share * amount(fill, part.gas[first] as number),
    0,
  );
  const stride = Math.max(1, Math.floor((steps - first) / Math.round(draw.between(24, 120))));
  const run = (strength: number) => {
    let n = n0;
    let p = fill;
    const at: number[] = [];
    for (let i = first; i <= steps; i += stride) {
      p = pressureOf(n, parts, i, p);
      at.push(p);
      n -= ((n0 * strength * (p * p - atmosphere ** 2)) / fill ** 2) * (stride / (steps - first));
    }
    return at;
  };
  const sealed = run(0);
  const leaking = tight ? sealed : run(wanted);
  const drop = (sealed.at(-1) as number) - (leaking.at(-1) as number);

  // The gauge: an error within its data sheet that stays, and a zero that moves.
  // Careful: the smallest range with the fill in its middle third (B31.5); hurried: what hangs on the hose.
  const range = careful ? ([3.4e6, 5.5e6, 6.9e6].find((r) => r >= 1.5 * fill) ?? 6.9e6) : 5.5e6;
  const accuracy = range * draw.pick([0.0025, 0.005, 0.01]);
  const step = draw.pick([1e3, 6894.757 / 10, 6894.757, 6894.757, 5e3]);
  const drift = accuracy * (careful ? draw.between(0.1, 0.3) : draw.between(0.1, 0.5));
  const moves = has("gauge-drift", 1) ? drift * draw.between(-1, 1) : 0;
  const offset = accuracy * draw.between(-0.6, 0.6);
  const scale = (accuracy / range) * draw.between(-0.4, 0.4);
  const noise = draw.between(0, 0.6) * step;
  const front = has("weather", 1) ? draw.normal(Math.min(800, 150 * Math.sqrt(hold / 3600))) : 0;

  // The thermometers: on the tubing when careful, else one in the air.
  const thermometer = { accuracy: draw.pick([0.3, 0.5, 1]), step: draw.pick([0.1, 0.1, 0.5]) };
  const measured = careful ? parts : [(inside ? parts[1] : parts[0]) as Part];
  let worst = 0;
  const probes = measured.map((part) => {
    const bias = thermometer.accuracy * draw.between(-0.9, 0.9);
    const contact = draw.between(0.8, 1);
    const spot = draw.normal(0.15);
    const turn = draw.between(0, 2 * Math.PI);
    return (i: number) => {
      const air = part.air[i] as number;
      const there = careful
        ? air + contact * ((part.wall[i] as number) - air) + spot * Math.sin((i * dt) / 7000 + turn)
        : air;
      worst = Math.max(worst, Math.abs(there - (part.gas[i] as number)));
      return Math.round((there + bias) / thermometer.step) * thermometer.step;
    };
  });
  const rows: Row[] = leaking.map((p, k) => {
    const i = first + k * stride;
    const x = (i - first) / (steps - first);
    const gauge = p - atmosphere - front * x;
    const shown = gauge * (1 + scale) + offset + moves * x + draw.normal(noise);
    return {
      t: (i - first) * dt,
      p: Math.round(shown / step) * step,
      T: probes.map((probe) => probe(i)),
    };
  });
  // What a careful user states as a bound: the next round figure, too small by one step in one case of ten.
  const bounds = [0.25, 0.5, 1, 1.5, 2, 3, 4, 6];
  const enough = bounds.findIndex((bound) => bound >= worst);
  const follows = bounds[
    Math.max(0, (enough < 0 ? 7 : enough) - (draw.chance(0.1) ? 1 : 0))
  ] as number;
  const volume = draw.scale(0.8e-3, 10e-3);
  return {
    care,
    rows,
    gauge: { accuracy, step, drift },
    thermometer: { ...thermometer, follows },
    volumes: measured.map((part) => (careful ? part.share : 1) * volume * (1 + draw.normal(0.1))),
    volumeError: careful && split ? 0.1 : 0,
    atmosphere: atmosphere + (careful ? 0 : draw.between(-1500, 1500)),
    copper: false,
    sinceFill,
    drop,
    tight,
  };
}

export const thermalNetwork: Simulator = (seed, { care, only }) => {
  const draw = draws(seed);
  return () => one(draw, care, only);
};
