// First maker of simulated vacuum tests: a gas balance, stepped through time. Two volumes with a throat between
// them hold air and water vapor; walls, wet spots, ice, leaks, hoses and a pump valve feed or drain them.
// Sources: V dp/dt = sum of flows (vacuum practice); desorption from sites with rates spread over decades gives
// the 1/t law; vapor pressure by Magnus' formula (WMO-No. 8, annex 4.B); amounts are common practice, no source.
import {
  type FieldEffect,
  type SimulatedLog,
  type TestedPolicy,
  type Truth,
  testedPolicies,
} from "./log.ts";

/** Mulberry32: uniform numbers in [0, 1). */
function mulberry(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Vapor pressure in micron: over ice below 0 °C, over water above. */
const magnus = (celsius: number): number =>
  (celsius < 0
    ? 611.2 * Math.exp((22.46 * celsius) / (272.62 + celsius))
    : 611.2 * Math.exp((17.62 * celsius) / (243.12 + celsius))) / 0.133322;

const magnusInverse = (microns: number): number => {
  let [low, high] = [-80, 60];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (magnus(middle) < microns) low = middle;
    else high = middle;
  }
  return low;
};

interface Plant {
  readonly liters: number;
  /** Volume at the gauge, and how fast the throat evens both out, minutes. */
  readonly near: number;
  readonly evening: number;
  /** Micron, near and far, air and vapor together, at isolation. */
  readonly start: { readonly near: number; readonly far: number; readonly vapor: number };
  /** micron·L/min. */
  readonly leak: number;
  readonly leakNear: boolean;
  /** Wall water: micron·L on sites of each time constant (minutes). */
  readonly sites: readonly { amount: number; readonly time: number }[];
  /** A wet or icy spot: micron·L left, evaporation in L/min, its surroundings in °C, cooling per micron·L, warming per minute. */
  readonly spot?: {
    amount: number;
    rate: number;
    around: number;
    cooling: number;
    warming: number;
  };
  /** Hoses: steady permeation and what fades with the root of time, micron·L/min. */
  readonly hoses: { readonly steady: number; readonly fading: number };
  /** A pump valve that weeps: L/min toward the pump's pressure in micron. */
  readonly weep: { readonly rate: number; readonly pump: number };
  /** Swing of the temperature: K and minutes. */
  readonly swing: { readonly kelvin: number; readonly period: number };
}

/** Total pressure and vapor at the gauge, each `step` minutes. */
function run(plant: Plant, minutes: number, step: number): { total: number; vapor: number }[] {
  const far = plant.liters - plant.near;
  const share = plant.start.vapor / plant.start.far;
  const air = { near: plant.start.near * (1 - share), far: plant.start.far * (1 - share) };
  const vapor = { near: plant.start.near * share, far: plant.start.far * share };
  const keep = Math.exp(-step / plant.evening);
  const even = (gas: { near: number; far: number }) => {
    const mean = (gas.near * plant.near + gas.far * far) / plant.liters;
    const difference = (gas.far - gas.near) * keep;
    gas.near = mean - (difference * far) / plant.liters;
    gas.far = mean + (difference * plant.near) / plant.liters;
  };
  const spot = plant.spot === undefined ? undefined : { ...plant.spot, celsius: plant.spot.around };
  const sites = plant.sites.map((site) => ({ ...site }));
  const out: { total: number; vapor: number }[] = [];
  for (let t = 0; t <= minutes + 2 * step; t += step) {
    const warmer = plant.swing.kelvin * Math.sin((2 * Math.PI * t) / plant.swing.period);
    const expand = 1 + warmer / 293;
    out.push({ total: (air.near + vapor.near) * expand, vapor: vapor.near * expand });
    const hose = plant.hoses.steady + plant.hoses.fading / Math.sqrt(1 + t);
    if (plant.leakNear) air.near += ((plant.leak + hose) * step) / plant.near;
    else {
      air.far += (plant.leak * step) / far;
      air.near += (hose * step) / plant.near;
    }
    for (const site of sites) {
      const gone = site.amount * (1 - Math.exp((-step * Math.exp(0.06 * warmer)) / site.time));
      site.amount -= gone;
      vapor.far += gone / far;
    }
    if (spot !== undefined) {
      const wanted = spot.rate * (magnus(spot.celsius) - vapor.far) * step;
      const moved = Math.min(spot.amount, wanted);
      spot.amount -= moved;
      vapor.far += moved / far;
      spot.celsius +=
        spot.warming * (spot.around + warmer - spot.celsius) * step - spot.cooling * moved;
    }
    even(air);
    even(vapor);
    const pulled = Math.exp((-plant.weep.rate * step) / far);
    const before = air.far + vapor.far;
    const after = plant.weep.pump + (before - plant.weep.pump) * pulled;
    air.far *= after / before;
    vapor.far *= after / before;
  }
  return out;
}

/** Draws plants and gauges. */
class Draw {
  constructor(readonly random: () => number) {}
  between = (low: number, high: number): number => low + (high - low) * this.random();
  spread = (low: number, high: number): number => low * (high / low) ** this.random();
  pick = <T>(list: readonly T[]): T => list[Math.floor(this.random() * list.length)] as T;
  normal = (): number =>
    Math.sqrt(-2 * Math.log(1 - this.random())) * Math.cos(2 * Math.PI * this.random());
}

function plantOf(
  draw: Draw,
  truth: Truth,
  effect: FieldEffect,
  policy: TestedPolicy,
  ambient: number,
): Plant {
  const liters =
    effect === "hoses"
      ? draw.between(0.3, 0.6)
      : effect === "slow-equalization"
        ? draw.spread(6, 14)
        : draw.spread(1, 8);
  const near =
    effect === "slow-equalization" ? liters * draw.between(0.3, 0.6) : Math.min(0.05, liters / 8);
  const start = policy.target * draw.between(0.35, 0.9);
  const wall = draw.between(1, effect === "outgassing" ? 45 : 12) * liters;
  const leaks = truth === "leak" || truth === "both";
  const wet = truth === "water" || truth === "both";
  const plateau = wet ? draw.spread(650, 5000) : 0;
  const frozen = effect === "ice" && wet;
  const film = !frozen && draw.random() < 0.5;
  const time = frozen ? draw.spread(8, 40) : draw.spread(1.5, 25);
  const vapor = start * draw.between(0.1, 0.8);
  const sites = [0.3, 0.9, 2.7, 8, 24, 73, 220].map((t) => ({ amount: wall * 1.1, time: t }));
  if (!wet) sites.push({ amount: draw.between(0, 60) * liters, time: draw.spread(1, 15) });
  if (film) sites.push({ amount: plateau * liters, time });
  const around = Math.min(ambient, magnusInverse(plateau + vapor));
  const spot = {
    amount: 1e9,
    rate: liters / time,
    around,
    cooling: frozen ? draw.spread(0.0003, 0.003) / liters : 0,
    warming: frozen ? draw.between(0.1, 0.5) : 1,
  };
  const weeps = effect === "pump-valve-weeps";
  const closed = effect === "valve-opened-late" ? draw.pick([0, draw.spread(50, 4000)]) : 0;
  const gap =
    closed + (effect === "slow-equalization" ? draw.between(50, 300) : draw.between(5, 90));
  return {
    liters,
    near,
    evening: effect === "slow-equalization" ? draw.between(2.5, 6) : draw.between(0.1, 0.7),
    start: { near: start, far: start + gap, vapor },
    leak: (leaks ? draw.spread(14, 140) : draw.between(0, 0.7)) * liters,
    leakNear: effect === "slow-equalization" && draw.random() < 0.3,
    sites,
    ...(wet && !film ? { spot } : {}),
    hoses:
      effect === "hoses"
        ? { steady: draw.between(0.3, 2), fading: draw.between(0, 10) }
        : { steady: draw.between(0, 0.1), fading: draw.between(0, 3) },
    weep: {
      rate: weeps ? liters / draw.spread(0.8, 12) : 0,
      pump: start * draw.between(0.2, 0.95),
    },
    swing: {
      kelvin:
        effect === "temperature-swing"
          ? draw.between(3, 10) * draw.pick([-1, 1])
          : draw.between(-0.5, 0.5),
      period: draw.between(40, 200),
    },
  };
}

/** What the gauge makes of it: lag, response to vapor, gain, drift, correlated noise, late valve, pumping again, jumps. */
function measured(
  draw: Draw,
  plant: Plant,
  effect: FieldEffect,
  policy: TestedPolicy,
  step: number,
) {
  const fine = 1 / 60;
  const byHand = effect === "typed-by-hand";
  const each = Math.max(1, Math.floor(policy.hold / draw.between(4, 11)));
  const minutes = byHand
    ? Math.ceil(policy.hold / each) * each
    : policy.hold * draw.between(1, 1.15);
  const late = effect === "valve-opened-late" ? minutes * draw.between(0.2, 0.7) : 0;
  const again =
    effect === "pumped-again" ? minutes * draw.between(0.2, 0.6) : Number.POSITIVE_INFINITY;
  const shut = draw.random() < 0.5;
  const course = run(plant, minutes + late, fine);
  const gain = 1 + draw.normal() * 0.04;
  const response = effect === "vapor-response" ? draw.between(0.7, 1.5) : 1;
  const lag = Math.exp(-fine / draw.between(0.02, 0.2));
  const scatter = draw.spread(0.2, 2);
  const memory = draw.pick([0, 0, 0.3, 0.6]);
  const jump =
    effect === "gauge-jump"
      ? { at: minutes * draw.between(0.1, 0.9), by: draw.between(-0.06, 0.06) }
      : undefined;
  const drift = effect === "gauge-drift" ? draw.between(-0.002, 0.002) : 0;
  const every = byHand ? each : draw.pick([1, 5, 10, 15, 30, 60]) / 60;
  const rows: { minute: number; micron: number }[] = [];
  let [shown, noise, fall] = [plant.start.near, 0, 0];
  for (let i = 0, next = 0; i < course.length && i * fine <= minutes + 1e-6; i++) {
    const t = i * fine;
    const inside = late > 0 && t < late ? plant.start.near + 0.3 * t : undefined;
    const { total, vapor } = course[i] as { total: number; vapor: number };
    if (t >= again && fall === 0) fall = shut ? 1 : Math.max(1, total - plant.start.near * 0.8);
    const real = inside ?? total - vapor + response * vapor;
    const pulled = t < again ? real : shut ? plant.start.near * 0.9 : real - fall;
    shown = pulled + (shown - pulled) * (inside === undefined ? lag : 0);
    if (t + 1e-9 < next) continue;
    next += every;
    noise = memory * noise + Math.sqrt(1 - memory ** 2) * draw.normal();
    const factor = gain * (1 + (jump !== undefined && t > jump.at ? jump.by : 0) + drift * t);
    const value = Math.max(1, shown * factor + noise * (scatter + 0.001 * shown));
    const typed = byHand ? Math.max(5, step) : step;
    rows.push({ minute: byHand ? Math.round(t) : t, micron: Math.round(value / typed) * typed });
  }
  return rows;
}

/** The plain-truth test number `seed`, or one with an effect of the field. */
export function simulateBalance(seed: number, truth: Truth, effect: FieldEffect): SimulatedLog {
  const draw = new Draw(mulberry(seed * 7919 + 17));
  for (;;) {
    const policy = draw.pick(testedPolicies);
    const ambient = draw.between(5, 38);
    const plant = plantOf(draw, truth, effect, policy, ambient);
    const step = draw.pick([0.1, 1, 1, 1, 5]);
    const rows = measured(draw, plant, effect, policy, step);
    const last = rows.at(-1)?.micron ?? 0;
    const ceiling = "limit" in policy ? policy.limit : (rows[0]?.micron ?? 0) + policy.rise;
    if (truth === "sound" && last > 0.9 * ceiling) continue; // a sound one keeps its policy's limit
    if (truth === "sound" && effect === "outgassing" && last > 0.8 * ceiling) continue;
    const wet = truth === "water" || truth === "both";
    const water = !wet
      ? 0
      : plant.spot === undefined
        ? Number(plant.sites.at(-1)?.amount) / plant.liters
        : magnus(plant.spot.around) - plant.start.vapor;
    return {
      rows,
      ambient,
      liters: plant.liters,
      step,
      policy,
      effect,
      truth: { leak: plant.leak / plant.liters, water },
    };
  }
}
