// How large is the corrected drop, and how sure is it? Plain SI numbers.
// Follows JCGM 100:2008, eq. 10, with the errors common to both readings moved together (5.2.4).
// Does not cover a whole log: that is regression in fit-log.ts.
import { chargeAt, pressureOf, zones } from "./charge.ts";
import { warmthAt } from "./gas-errors.ts";
import type { TestErrors } from "./instruments.ts";
import type { Gas, State } from "./setup.ts";
import type { Share } from "./uncertainty-part.ts";

/** Two states of the test, everything in SI; pressures absolute. */
export interface TwoStates {
  readonly p1: number;
  readonly T1: readonly number[];
  readonly p2: number;
  readonly T2: readonly number[];
  /** Volumes of the zones; needed where there are several temperatures. */
  readonly volumes: readonly number[];
  readonly beta: number;
}

/** The two states of a test, of its first and last reading. */
export const statesOf = (
  first: State,
  last: State,
  volumes: readonly number[],
  beta: number,
): TwoStates => ({
  p1: first.pressure,
  T1: first.temperatures,
  p2: last.pressure,
  T2: last.temperatures,
  volumes,
  beta,
});

/** Absolute pressure to expect in the second state. */
export function expected({ p1, T1, T2, volumes, beta }: TwoStates): number {
  return pressureOf(chargeAt(p1, zones(T1, volumes), beta), zones(T2, volumes), beta);
}

/** Corrected drop: what is missing at the second state, Pa. */
export function drop(states: TwoStates): number {
  return expected(states) - states.p2;
}

const shift = (list: readonly number[], by: number, at?: number) =>
  list.map((v, i) => (at === undefined || at === i ? v + by : v));

/** What the budget needs besides the states; `seconds` 0 when unknown. */
export interface Open {
  readonly errors: TestErrors;
  readonly gas: Gas;
  readonly seconds: number;
  readonly barometer: number;
  readonly expansion: number;
}

/** The budget of the drop: half the change of the answer when an error moves by ± its uncertainty. */
export function budget(states: TwoStates, open: Open): Share[] {
  const { p1, p2, T1, T2, volumes, beta } = states;
  const { errors, gas, barometer, expansion } = open;
  const { pressure: p, temperature: T } = errors;
  // Half a day where the time is unknown: as far as air moves.
  const seconds = open.seconds || 43_200;
  const half = (move: (e: number) => Partial<TwoStates>, u: number) =>
    u === 0 ? 0 : (drop({ ...states, ...move(u) }) - drop({ ...states, ...move(-u) })) / 2;
  const root = (...shares: number[]) => Math.hypot(...shares);
  // The zone elsewhere is the last and has no thermometer; one reading may have one temperature for all the others.
  const isSplit = gas.elsewhere > 0;
  const seen = (list: readonly number[]) => list.length - (isSplit ? 1 : 0);
  const all = (list: readonly number[], e: number) =>
    list.map((v, z) => (z < seen(list) ? v + e : v));
  const zonesOf = (list: readonly number[]) => list.slice(0, seen(list)).map((_, z) => z);
  /** Independent errors of every temperature that was read, of both readings. */
  const temperatures = (u: number) =>
    root(
      ...zonesOf(T1).map((z) => half((e) => ({ T1: shift(T1, e, z) }), u)),
      ...zonesOf(T2).map((z) => half((e) => ({ T2: shift(T2, e, z) }), u)),
    );
  const swings = zonesOf(T2).map(
    (z) => (T2[z] as number) - (T1[Math.min(z, seen(T1) - 1)] as number),
  );
  const swing = swings.reduce((sum, K) => sum + Math.abs(K), 0) / swings.length;
  const settled = gas.warmth.map(
    (part) =>
      warmthAt(part, gas.sinceFill) -
      (open.seconds > 0 ? warmthAt(part, gas.sinceFill + seconds) : 0),
  );
  const shares: Share[] = [
    {
      part: "gauge-reading",
      u: root(
        half((e) => ({ p1: p1 + e }), p.each),
        p.each,
      ),
    },
    { part: "gauge-drift", u: p.between + p.perKelvin * swing },
    {
      // The common error may be an offset or a scale error: both nearly cancel.
      part: "gauge-error",
      u: root(
        half((e) => ({ p1: p1 + e, p2: p2 + e }), p.common),
        half((e) => ({ p1: p1 + e, p2: p2 * (1 + e / p1) }), p.common),
      ),
    },
    { part: "thermometer-reading", u: temperatures(T.each) },
    {
      part: "thermometer-error",
      u: half((e) => ({ T1: all(T1, e), T2: all(T2, e) }), T.common),
    },
    {
      part: "gas-temperature",
      u: root(
        temperatures(gas.between),
        ...swings.map((K, z) => half((e) => ({ T2: shift(T2, e, z) }), gas.missed * K)),
        half((e) => ({ T2: all(T2, e) }), gas.unseen(seconds)),
        isSplit ? half((e) => ({ T2: shift(T2, e, T2.length - 1) }), gas.change(seconds)) : 0,
      ),
    },
    { part: "settling", u: root(...settled.map((K) => half((e) => ({ T1: shift(T1, e) }), K))) },
    { part: "barometer", u: barometer },
    { part: "wall-expansion", u: half((e) => ({ beta: beta + e }), expansion) },
    {
      part: "zone-volumes",
      u: root(
        ...volumes.map((v, i) =>
          half((e) => ({ volumes: shift(volumes, e * v, i) }), gas.zoneError),
        ),
      ),
    },
  ];
  return shares
    .map(({ part, u }) => ({ part, u: Math.abs(u) }))
    .filter(({ u }) => u > 0)
    .sort((a, b) => b.u - a.u);
}

/** Σ of the squares, then the root (JCGM 100:2008, eq. 10). */
export function combined(shares: readonly Share[]): number {
  return Math.hypot(...shares.map(({ u }) => u));
}
