// Random numbers that are the same on every run.

export interface Random {
  (): number;
  between(low: number, high: number): number;
  logBetween(low: number, high: number): number;
  normal(): number;
  pick<T>(from: readonly T[]): T;
}

/** Mulberry32, public domain. */
export function random(seed: number): Random {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let x = Math.imul(state ^ (state >>> 15), 1 | state);
    x = (x + Math.imul(x ^ (x >>> 7), 61 | x)) ^ x;
    return ((x ^ (x >>> 14)) >>> 0) / 2 ** 32;
  };
  return Object.assign(next, {
    between: (low: number, high: number) => low + (high - low) * next(),
    logBetween: (low: number, high: number) => low * (high / low) ** next(),
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    pick: <T>(from: readonly T[]) => from[Math.floor(next() * from.length)] as T,
  });
}
