// How warm is the nitrogen after the fill? Each part of the system is a chain of gas, wall, layers of foam and air,
// stepped in time through the fill and after it. Shares no code with the library nor with the other simulators.
//
// Heat: a vessel at uniform pressure that is filled takes up the work of the gas that flows in: per volume dp/dt where
// the gas is (first law of the open system, ideal gas: ρ·c_p·DT/Dt = dp/dt − heat to the wall). What throttling in the
// regulator cools (Joule-Thomson, 0.2 K/bar for nitrogen at 300 K, from the tables of the reference equation of state,
// from memory) counts as far as regulator and hose have not warmed the gas again.

/** A part of the system: a meter of tube, a coil, a shell. */
export interface WarmPart {
  /** Gas, m³; its surface on the wall, m², its width, m, and the Nusselt number between the two. */
  readonly volume: number;
  readonly inner: number;
  readonly width: number;
  readonly nusselt: number;
  /** J/K. */
  readonly wall: number;
  /** Layers of foam outward of the wall: J/K each, and W/K from the one before; the last W/K to the air. */
  readonly layers: readonly { readonly heat: number; readonly from: number }[];
  readonly toAir: number;
}

export interface Fill {
  /** Pa that the fill adds, s that it takes. */
  readonly pressure: number;
  readonly seconds: number;
  /** Pa in the cylinder, and the part of the cold of throttling that reaches the system. */
  readonly cylinder: number;
  readonly cold: number;
}

export interface Foam {
  readonly thickness: number;
  /** W/(m·K) and J/(m³·K). */
  readonly conductivity: number;
  readonly heat: number;
}

// Nitrogen near 300 K and 4 MPa, rounded from the tables of Span et al. (2000), from memory: gas constant, c_v and c_p
// in J/(kg·K), conductivity in W/(m·K), Joule-Thomson coefficient in K/Pa.
const N2 = { R: 296.8, cv: 750, cp: 1090, conductivity: 0.0275, throttling: 2e-6 };
const AIR = 295;
/** Copper, J/(m³·K): 8933 kg/m³ and 385 J/(kg·K), Incropera and DeWitt, table A.1. */
const COPPER = 8933 * 385;

/** Outside diameter and wall, m. */
export interface Tube {
  readonly outside: number;
  readonly wall: number;
}

/** A meter of copper tube in foam, m; the film to the air in W/(m²·K). */
export function tubeOf(
  { outside, wall }: Tube,
  foam: Foam,
  film: number,
  nusselt: number,
): WarmPart {
  const [r0, r1, r2] = [outside / 2 - wall, outside / 2, outside / 2 + foam.thickness];
  const count = 6;
  const radius = (i: number) => r1 + ((r2 - r1) * i) / count;
  const across = (a: number, b: number) => (2 * Math.PI * foam.conductivity) / Math.log(b / a);
  const middle = (i: number) => (i < 0 ? r1 : (radius(i) + radius(i + 1)) / 2);
  return {
    volume: Math.PI * r0 ** 2,
    inner: 2 * Math.PI * r0,
    width: 2 * r0,
    nusselt,
    wall: Math.PI * (r1 ** 2 - r0 ** 2) * COPPER,
    layers: Array.from({ length: count }, (_, i) => ({
      heat: Math.PI * (radius(i + 1) ** 2 - radius(i) ** 2) * foam.heat,
      from: across(middle(i - 1), middle(i)),
    })),
    toAir: 1 / (1 / across(middle(count - 1), r2) + 1 / (film * 2 * Math.PI * r2)),
  };
}

/** Mulberry32 (public domain). */
function draws(seed: number) {
  let state = seed >>> 0;
  const unit = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    unit,
    between: (low: number, high: number) => low + (high - low) * unit(),
    scale: (low: number, high: number) => low * (high / low) ** unit(),
  };
}
type Draws = ReturnType<typeof draws>;

const INCH = 0.0254;
/** Soft tube of ASTM B280, the thinner wall where there are two: 1/4, 3/8, 1/2, 5/8, 3/4 in. */
export const softTubes: readonly Tube[] = (
  [
    [0.25, 0.03],
    [0.375, 0.032],
    [0.5, 0.032],
    [0.625, 0.035],
    [0.75, 0.035],
  ] as const
).map(([outside, wall]) => ({ outside: outside * INCH, wall: wall * INCH }));

/**
 * Heat conduction alone cools gas in a tube as 5.78 does (square of the first zero of J0; Carslaw and Jaeger, 7.6);
 * free convection in dense nitrogen as up to 20 (0.55·Ra^¼ at some kelvin in 5/8 in).
 */
const nusseltIn = (draw: Draws) => draw.scale(5.78, 20);

/**
 * Finned coil: tubes of 5 mm to 9 mm with 1.2 to 3 MJ/K of copper and aluminum per m³ of gas (7 mm tube of 0.25 mm wall,
 * fins of 0.1 mm at 1.3 mm, 20 mm by 17 mm a tube: 2.3). It answers the air in its case in 1 to 7 min (from memory).
 */
function coilOf(draw: Draws, volume: number): WarmPart {
  const width = draw.between(0.005, 0.009);
  const wall = volume * draw.between(1.2e6, 3e6);
  const toAir = wall / draw.between(60, 400);
  const inner = (4 * volume) / width;
  return { volume, inner, width, nusselt: nusseltIn(draw), wall, layers: [], toAir };
}

/**
 * Compressor shell with accumulator: 2 kJ/K to 7 kJ/K of 5 kg to 15 kg of steel and copper, more for more gas; 0.15 m² at
 * 8 W/(m²·K), less in its jacket; free convection inside (Ra 1e9: 0.1·Ra^⅓). From memory.
 */
const shellOf = (draw: Draws, volume: number): WarmPart => ({
  volume,
  inner: draw.between(0.08, 0.2),
  width: 0.12,
  nusselt: draw.between(40, 120),
  wall: draw.between(2e3, 7e3) * Math.max(1, volume / 1.5e-3),
  layers: [],
  toAir: draw.between(0.4, 1.6),
});

/**
 * Foam of ASTM C534: 6 mm to 25 mm, 0.034 to 0.042 W/(m·K) (0.039 at 24 °C), 40 to 75 kg/m³; 1.3 to 1.9 kJ/(kg·K), from
 * memory. Film of 5 to 15 W/(m²·K): 8 to 10 indoors (ISO 12241), less in a chase, more in wind.
 */
const foamOf = (draw: Draws): Foam => ({
  thickness: draw.between(0.006, 0.025),
  conductivity: draw.between(0.034, 0.042),
  heat: draw.between(40, 75) * draw.between(1300, 1900),
});

/** A system, its fill, and the mean warmth of its gas at times in s after the fill, K. */
export interface Warmed {
  readonly fill: Fill;
  readonly isOpen: boolean;
  readonly kelvin: readonly number[];
}

/**
 * Systems by chance: both lines from 3 m to 25 m, an indoor coil, in one of four the outdoor unit too (its valves
 * stay shut in the test of a new pre-charged unit).
 */
export function warmedSystems(seed: number, count: number, times: readonly number[]): Warmed[] {
  const draw = draws(seed);
  return Array.from({ length: count }, () => {
    const vapor = 1 + Math.floor(4 * draw.unit());
    const liquid = Math.min(vapor, Math.floor(2 * draw.unit()));
    const [foam, film, length] = [foamOf(draw), draw.between(5, 15), draw.between(3, 25)];
    const fill = {
      pressure: draw.between(1.5e6, 4.5e6),
      seconds: draw.between(120, 600),
      cylinder: draw.between(5e6, 2e7),
      cold: draw.unit(),
    };
    const parts = [liquid, vapor].map((size) => {
      const part = tubeOf(softTubes[size] as Tube, foam, film, nusseltIn(draw));
      return { part, gas: part.volume * length };
    });
    const add = (part: WarmPart) => parts.push({ part, gas: part.volume });
    add(coilOf(draw, draw.scale(2e-4, 1.5e-3)));
    const isOpen = draw.unit() < 0.25;
    if (isOpen) {
      add(coilOf(draw, draw.scale(4e-4, 2.5e-3)));
      add(shellOf(draw, draw.scale(5e-4, 3e-3)));
    }
    const whole = parts.reduce((sum, { gas }) => sum + gas, 0);
    const courses = parts.map(({ part }) => warmthOf(part, fill, times));
    const kelvin = times.map((_, i) =>
      parts.reduce((sum, { gas }, k) => sum + (gas / whole) * (courses[k]?.[i] as number), 0),
    );
    return { fill, isOpen, kelvin };
  });
}

/** K of the gas above the air at times in s after the end of the fill, in order. */
export function warmthOf(part: WarmPart, fill: Fill, times: readonly number[]): number[] {
  const { volume, inner, width, nusselt, wall, layers, toAir } = part;
  const links = [
    (nusselt * N2.conductivity * inner) / width,
    ...layers.map(({ from }) => from),
    toAir,
  ];
  const solid = [wall, ...layers.map(({ heat }) => heat)];
  const rise = fill.pressure / fill.seconds;
  const gasAt = (p: number) => (volume * N2.cv * p) / (N2.R * AIR);
  let T = new Array<number>(solid.length + 1).fill(0);
  let gas = gasAt(1e5);
  let time = -fill.seconds;
  const found: number[] = [];
  for (const at of times) {
    while (time < at - 1e-6) {
      // The end of the fill and each wanted time are ends of steps.
      const until = time < 0 ? 0 : at;
      const dt = Math.min(until - time, time < 300 ? 2 : 20);
      const p = 1e5 + fill.pressure * Math.min(1, 1 + (time + dt) / fill.seconds);
      // Work of compression, less what comes in cold; gas comes in at the temperature of the air.
      const cold = N2.cp * N2.throttling * fill.cold * Math.max(0, fill.cylinder - p);
      const source = time < 0 ? rise * (1 - cold / (N2.R * AIR)) * volume * dt : 0;
      const heats = [gasAt(p), ...solid];
      const held = T.map((K, i) => (i === 0 ? K * gas + source : K * (heats[i] as number)));
      T = stepped(held, heats, links, dt);
      gas = heats[0] as number;
      time += dt;
    }
    found.push(T[0] as number);
  }
  return found;
}

/** Temperatures after a step of implicit Euler along the chain (Thomas's algorithm), from the heat held before, J. */
function stepped(
  held: readonly number[],
  heats: readonly number[],
  links: readonly number[],
  dt: number,
): number[] {
  const upper: number[] = [];
  const value: number[] = [];
  for (const [i, heat] of heats.entries()) {
    const inward = i === 0 ? 0 : (links[i - 1] as number) * dt;
    const outward = (links[i] as number) * dt;
    const pivot = heat + outward + inward * (1 - (upper[i - 1] ?? 0));
    upper.push(outward / pivot);
    value.push(((held[i] as number) + inward * (value[i - 1] ?? 0)) / pivot);
  }
  for (let i = value.length - 2; i >= 0; i--)
    value[i] = (value[i] as number) + (upper[i] as number) * (value[i + 1] as number);
  return value;
}
