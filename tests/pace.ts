// How fast is this machine just now, next to the one that the budgets in milliseconds are stated for?
// A loop of known work gives the pace. Does not cover memory, disk and network.

/** What {@link loop} takes at best on the machine that they are stated for, ms; measured. */
const STATED = 3.4;

/** Known work: a hundred thousand exponentials, each waiting for the one before. Plain, so that a browser can run it. */
export function loop(): number {
  const before = performance.now();
  let sum = 0;
  for (let i = 1; i < 100_000; i++) sum += Math.exp(-sum / i) / i;
  return sum > 0 ? performance.now() - before : 0;
}

/** How many times slower than that machine, from times of the loop; 1 where it is as fast or faster. */
export const paceOf = (times: readonly number[]): number =>
  Math.max(1, Math.min(...times) / STATED);

/** The same for this process, now. */
export const pace = (): number => paceOf(Array.from({ length: 10 }, loop));
