// Where do the numbers of an axis stand? Round ticks and how they are written. Internal.
// Follows the common 1-2-5 rule of axes, no source; the tests hold it to d3-scale, which would bring 11 kB,
// most of it for colours. Does not cover logarithmic axes: a straight rise has to look straight.

/** Where a value lies, the values at its ends, and those that get a number. */
export interface Axis {
  readonly at: (value: number) => number;
  readonly ends: readonly [low: number, high: number];
  readonly ticks: readonly (readonly [value: number, word: string])[];
}

/** The step 1, 2 or 5 times a power of ten that divides a span into about so many parts. */
function stepOf(span: number, count: number): { factor: number; power: number } {
  const power = Math.floor(Math.log10(span / count));
  const rest = span / count / 10 ** power;
  // Steps change at the geometric means of their neighbours.
  const factor =
    rest >= Math.sqrt(50) ? 10 : rest >= Math.sqrt(10) ? 5 : rest >= Math.SQRT2 ? 2 : 1;
  return factor === 10 ? { factor: 1, power: power + 1 } : { factor, power };
}

/** A multiple of a step without the noise of binary fractions. */
const times = (k: number, { factor, power }: ReturnType<typeof stepOf>) =>
  power < 0 ? (k * factor) / 10 ** -power : k * factor * 10 ** power;

/** A number of an axis: thousands apart, a real minus sign. */
function wordOf(value: number, decimals: number): string {
  const [whole = "", part] = Math.abs(value).toFixed(decimals).split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return `${value < 0 ? "−" : ""}${grouped}${part === undefined ? "" : `.${part}`}`;
}

/** An axis over the values, from one coordinate to another; `round` lets it begin and end at a tick. */
export function axisOf(
  values: readonly number[],
  [from, to]: readonly [number, number],
  count: number,
  round = true,
): Axis {
  let [low, high] = [Infinity, -Infinity];
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  // Nothing varies: a little room above and below, so that the line stands in the middle.
  const least = Math.max(Math.abs(low), Math.abs(high)) * 1e-6 || 1;
  if (high - low < least) [low, high] = [low - least, high + least];
  let step = stepOf(high - low, count);
  const size = () => times(1, step);
  const slip = 1e-9; // an end that misses a tick by rounding only is that tick
  // Rounding the ends outwards may call for a wider step; after two rounds it has settled.
  for (let again = round ? 4 : 0; again > 0; again--) {
    low = times(Math.floor(low / size() + slip), step);
    high = times(Math.ceil(high / size() - slip), step);
    step = stepOf(high - low, count);
  }
  const ticks: [number, string][] = [];
  const last = Math.floor(high / size() + slip);
  for (let k = Math.ceil(low / size() - slip); k <= last; k++) {
    const value = times(k, step) + 0; // no −0
    ticks.push([value, wordOf(value, Math.max(0, -step.power))]);
  }
  return {
    at: (value) => from + ((value - low) / (high - low)) * (to - from),
    ends: [low, high],
    ticks,
  };
}
