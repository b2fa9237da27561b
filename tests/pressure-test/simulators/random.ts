/** Seeded random numbers: the same seed gives the same tests on every machine. */
export interface Random {
  /** Uniform between two numbers. */
  between(low: number, high: number): number;
  /** Log-uniform between two positive numbers. */
  scale(low: number, high: number): number;
  /** Normal with mean 0. */
  normal(deviation: number): number;
  /** True with a probability. */
  chance(probability: number): boolean;
  pick<T>(list: readonly T[]): T;
}

/** Mulberry32 (public domain), a 32-bit generator. */
export function seeded(seed: number): Random {
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
    scale: (low, high) => Math.exp(between(Math.log(low), Math.log(high))),
    normal: (deviation) =>
      deviation * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    chance: (probability) => next() < probability,
    pick: (list) => list[Math.floor(next() * list.length)] as (typeof list)[number],
  };
}
