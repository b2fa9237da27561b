// Second maker of simulated vacuum tests: the course is written down as a sum of known curves, never stepped.
// Line for a leak; stretched or hyperbolic approach for water; logarithm or root for walls and polymers; an
// exponential for equalization. What the gauge adds has heavy tails, and its clock is not exact.
// Sources: rise laws of vacuum practice; Kohlrausch's stretched exponential for drying films; amounts are common
// practice, no source. The pump valve that weeps follows V dp/dt = Q - S (p - pump), solved.
import type { FieldEffect, SimulatedLog, Truth } from "./log.ts";
import { testedPolicies } from "./log.ts";

type Curve = (minute: number) => number;

/** A linear congruential generator of 48 bits (the constants of POSIX drand48). */
function congruential(seed: bigint): () => number {
  let state = (seed << 16n) + 0x330en;
  const next = () => {
    state = (state * 0x5deece66dn + 0xbn) & 0xffffffffffffn;
    return Number(state >> 16n) / 2 ** 32;
  };
  for (let i = 0; i < 8; i++) next();
  return next;
}

/** A scatter with heavy tails: Laplace with variance 1. */
function laplace(u: () => number): number {
  const x = u() - 0.5;
  return (-Math.sign(x) * Math.log(1 - 2 * Math.abs(x) * 0.999999)) / Math.SQRT2;
}

const sum =
  (curves: readonly Curve[]): Curve =>
  (t) =>
    curves.reduce((total, curve) => total + curve(t), 0);

/** Approaches of water to its end value: simple, stretched, hyperbolic, and ice that starts slowly. */
function waterCurve(u: () => number, plateau: number, icy: boolean): Curve {
  const tau = (icy ? 6 : 1.5) * (icy ? 7 : 14) ** u();
  const kind = icy ? 3 : Math.floor(u() * 3);
  const beta = 0.7 + 0.25 * u();
  if (kind === 0) return (t) => plateau * (1 - Math.exp(-t / tau));
  if (kind === 1) return (t) => plateau * (1 - Math.exp(-((t / tau) ** beta)));
  if (kind === 2) return (t) => (plateau * t) / (t + tau);
  // ice: what evaporates first cools the spot, then it follows the heat that reaches it
  const early = 0.1 + 0.2 * u();
  return (t) =>
    plateau * (early * (1 - Math.exp(-t / 2)) + (1 - early) * (1 - Math.exp(-t / (2 * tau))));
}

/** Walls and polymers: ln(1 + t/s), a root, or a power a little off the logarithm. */
function wallCurve(u: () => number, amount: number): Curve {
  const s = 0.5 + 3 * u();
  const kind = Math.floor(u() * 3);
  if (kind === 0) return (t) => amount * Math.log1p(t / s);
  if (kind === 1) return (t) => amount * 0.6 * (Math.sqrt(t + 4 * s) - Math.sqrt(4 * s));
  const power = 0.15;
  return (t) => (amount * ((1 + t / s) ** power - 1)) / power;
}

/** What pulls, leaks and shifts at the site, on top of the plain course. */
function fieldCurve(
  effect: FieldEffect,
  course: Curve,
  u: () => number,
  hold: number,
  start: number,
): Curve {
  const at = hold * (0.15 + 0.6 * u());
  const size = u();
  const sign = u() < 0.5 ? -1 : 1;
  switch (effect) {
    case "valve-opened-late": {
      const lift = size < 0.5 ? 0 : 60 * 50 ** u();
      return (t) => (t < at ? start : lift * (1 - Math.exp(-(t - at) / 0.05)) + course(t - at));
    }
    case "pumped-again": {
      const floor = start * (0.7 + 0.3 * size);
      const still = sign < 0;
      return (t) => (t < at ? course(t) : still ? floor : floor + course(t) - course(at));
    }
    case "gauge-jump":
      return (t) => course(t) * (t < at ? 1 : 1 + sign * (0.01 + 0.05 * size));
    case "gauge-drift":
      return (t) => course(t) * (1 + (sign * 0.03 * size * t) / hold);
    case "temperature-swing": {
      const period = 30 + 150 * u();
      const phase = 6.283 * u();
      const wave = (t: number) => Math.sin((6.283 * t) / period + phase) - Math.sin(phase);
      return (t) => course(t) * (1 + (0.01 + 0.02 * size) * wave(t));
    }
    case "slow-equalization": {
      const tau = 2.5 + 4 * u();
      return (t) => course(t) + (40 + 260 * size) * (1 - Math.exp(-t / tau));
    }
    case "outgassing":
      return sum([
        course,
        wallCurve(u, 10 + 35 * size),
        (t) => 20 * size * (1 - Math.exp(-t / 20)),
      ]);
    case "vapor-response":
      return (t) => start + (course(t) - start) * (0.7 + 0.8 * size);
    default:
      return course;
  }
}

/** The pump pulls through its valve: each part of the course relaxes toward the pump's pressure with S/V. */
function weeping(course: Curve, u: () => number, start: number): Curve {
  const tau = 0.8 * 15 ** u();
  const pump = start * (0.2 + 0.75 * u());
  const fine = 0.05;
  // exact for a course that is a straight line within each piece of 3 seconds
  return (t) => {
    let p = start;
    const pieces = Math.ceil(t / fine);
    const d = t / Math.max(1, pieces);
    const keep = Math.exp(-d / tau);
    for (let i = 0; i < pieces; i++) {
      const inflow = (course((i + 1) * d) - course(i * d)) / Math.max(d, 1e-9);
      p = pump + inflow * tau + (p - pump - inflow * tau) * keep;
    }
    return p;
  };
}

/** The test number `seed` as a sum of curves. */
export function simulateClosedForm(seed: number, truth: Truth, effect: FieldEffect): SimulatedLog {
  const u = congruential(BigInt(seed) * 104729n + 31n);
  const within = (low: number, high: number) => low + (high - low) * u();
  const across = (low: number, high: number) => low * (high / low) ** u();
  while (true) {
    const policy = testedPolicies[
      Math.floor(u() * testedPolicies.length)
    ] as SimulatedLog["policy"];
    const liters =
      effect === "hoses"
        ? within(0.3, 0.6)
        : effect === "slow-equalization"
          ? across(6, 14)
          : across(0.8, 8);
    const start = policy.target * within(0.3, 0.92);
    const leaky = truth === "leak" || truth === "both";
    const wet = truth === "water" || truth === "both";
    // a leak is a throughput: a larger system shows less of the same hole
    const leak = leaky ? across(14, 120) * Math.min(1, 3 / liters) : within(0, 0.7);
    const water = wet ? across(650, 4500) : 0;
    const curves: Curve[] = [() => start, (t) => leak * t];
    if (wet) curves.push(waterCurve(u, water, effect === "ice"));
    else {
      const [film, tau] = [within(0, 50), across(0.8, 12)];
      curves.push((t) => film * (1 - Math.exp(-t / tau)));
    }
    curves.push(wallCurve(u, within(0, 13)));
    const [gap, even] = [within(0, 80), within(0.15, 0.7)];
    curves.push((t) => gap * (1 - Math.exp(-t / even)));
    if (effect === "hoses") {
      const [steady, fading] = [within(0.4, 2) / liters, within(0, 8) / liters];
      curves.push((t) => steady * t + 2 * fading * (Math.sqrt(1 + t) - 1));
    }
    const plain = effect === "pump-valve-weeps" ? weeping(sum(curves), u, start) : sum(curves);
    const course = fieldCurve(effect, plain, u, policy.hold, start);
    const step = [0.1, 1, 1, 2, 5, 10][Math.floor(u() * 6)] as number;
    const hand = effect === "typed-by-hand";
    const rows = readRows(u, course, policy.hold, hand, step);
    const ceiling = "limit" in policy ? policy.limit : start + policy.rise;
    if (truth === "sound" && (rows.at(-1)?.micron ?? 0) > 0.9 * ceiling) continue;
    const ambient = within(5, 38);
    return { rows, ambient, liters, step, policy, effect, truth: { leak, water } };
  }
}

function readRows(u: () => number, course: Curve, hold: number, hand: boolean, step: number) {
  const rows: { minute: number; micron: number }[] = [];
  const gain = 1 + 0.05 * laplace(u);
  const zero = 4 * laplace(u);
  const [fixed, relative] = [0.2 * 8 ** u(), 0.002 * u()];
  const spacing = hand
    ? Math.max(1, Math.floor(hold / (4 + Math.floor(u() * 9))))
    : ([1, 2, 5, 15, 30, 60][Math.floor(u() * 6)] as number) / 60;
  const shown = hand ? (u() < 0.5 ? Math.max(5, step) : Math.max(1, step)) : step;
  const minutes = hand ? Math.ceil(hold / spacing) * spacing : hold * (1 + 0.1 * u());
  for (let i = 0; i * spacing <= minutes; i++) {
    const real = Math.max(0, i * spacing + (hand ? 0.15 : 0.01) * (u() - 0.5));
    const p = course(real);
    const value = Math.max(1, gain * p + zero + (fixed + relative * p) * laplace(u));
    rows.push({ minute: i * spacing, micron: Math.round(value / shown) * shown });
  }
  return rows;
}
