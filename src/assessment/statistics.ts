// How likely is it? The normal and Student distributions that the decision rule needs.
// Follows Abramowitz & Stegun (1964), 26.2 and 26.7; Marsaglia, J. Stat. Softw. 11(4) (2004);
// NIST DLMF 8.17. Does not cover extreme tails: probabilities below 1e-300 come back as 0, and none below
// 1e-100 has a quantile.
import { numberOf } from "../quantity/check.ts";

/** Probabilities that have a quantile; below, the squares of Student's t overflow. */
const probabilities = { min: 1e-100, below: 1 };

/**
 * The probability that a standard normal variable is at most z.
 *
 * @param z - A finite number.
 * @returns Φ(z), within 1e-15.
 * @throws {@link InvalidInputError} when z is not finite.
 *
 * Source: Marsaglia, J. Stat. Softw. 11(4) (2004), doi:10.18637/jss.v011.i04, for the center;
 * Abramowitz & Stegun (1964), 26.2.14, for the tails.
 *
 * @example
 * ```ts
 * import { normalProbability } from "hvac-install-math/assessment";
 *
 * normalProbability(1.96).toFixed(4); // => 0.9750
 * ```
 */
export function normalProbability(z: number): number {
  numberOf("z", z);
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  const size = Math.abs(z);
  if (size < 3) {
    // Φ = ½ + φ(z)(z + z³/3 + z⁵/(3·5) + …)
    let term = z;
    let sum = z;
    for (let n = 3; Math.abs(term) > 1e-17 * Math.abs(sum); n += 2) {
      term *= (z * z) / n;
      sum += term;
    }
    return 0.5 + density * sum;
  }
  // 26.2.14: 1 − Φ = φ/(z + 1/(z + 2/(z + 3/(z + …))))
  let fraction = size;
  for (let n = 200; n >= 1; n--) fraction = size + n / fraction;
  const tail = density / fraction;
  return z < 0 ? tail : 1 - tail;
}

/**
 * The value that a standard normal variable stays below with a given probability: 1.645 for 95 %.
 *
 * @param probability - From 1e-100 to below 1.
 * @returns z with Φ(z) = probability, within 1e-12 relative for probabilities from 1e-12 to 1 − 1e-12.
 * @throws {@link InvalidInputError} when the probability is outside its range.
 *
 * Source: Newton's method on ln Φ by {@link normalProbability}.
 *
 * @example
 * ```ts
 * import { normalQuantile } from "hvac-install-math/assessment";
 *
 * normalQuantile(0.95).toFixed(4); // => 1.6449
 * ```
 */
export function normalQuantile(probability: number): number {
  numberOf("probability", probability, probabilities);
  if (probability > 0.5) return -normalQuantile(1 - probability);
  // ln Φ is concave, so that each step from the left stays left, up to where binary digits end; Φ(z) < exp(−z²/2) says
  // where to start.
  let z = Number.NEGATIVE_INFINITY;
  let next = -Math.sqrt(-2 * Math.log(probability));
  while (next > z) {
    z = next;
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const reached = normalProbability(z);
    next = z - (Math.log(reached / probability) * reached) / density;
  }
  return z;
}

/**
 * The value that a Student variable stays below with a given probability.
 *
 * @param probability - From 1e-100 to below 1.
 * @param degreesOfFreedom - 1 or more; need not be whole.
 * @returns t with that probability below it, within 1e-9 relative.
 * @throws {@link InvalidInputError} when an argument is outside its range.
 *
 * Source: Abramowitz & Stegun (1964), 26.7.1, 26.5.27 and, above 100 000 degrees of freedom, 26.7.5;
 * incomplete beta function by NIST DLMF 8.17.22.
 *
 * @example
 * ```ts
 * import { studentQuantile } from "hvac-install-math/assessment";
 *
 * studentQuantile(0.975, 10).toFixed(3); // => 2.228
 * ```
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  numberOf("probability", probability, probabilities);
  const nu = numberOf("degreesOfFreedom", degreesOfFreedom, { min: 1 });
  if (nu > 1e5) {
    // 26.7.5: the next term is below 1e-10 of t for probabilities from 1e-15 to 1 − 1e-15
    const z = normalQuantile(probability);
    return z + (z ** 3 + z) / (4 * nu) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * nu * nu);
  }
  // The tail probability falls as t grows: bracket, then halve.
  const tail = Math.min(probability, 1 - probability);
  const beyond = (t: number) => incompleteBeta(nu / (nu + t * t), nu / 2, 0.5) / 2; // 26.5.27
  let high = 2;
  while (beyond(high) > tail) high *= 2;
  let low = 0;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (beyond(middle) > tail) low = middle;
    else high = middle;
  }
  return (Math.sign(probability - 0.5) * (low + high)) / 2;
}

/** Regularised incomplete beta function I_x(a, b), DLMF 8.17.22 as a continued fraction. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a); // 8.17.4
  const front = Math.exp(
    a * Math.log(x) +
      b * Math.log1p(-x) -
      Math.log(a) +
      logGamma(a + b) -
      logGamma(a) -
      logGamma(b),
  );
  let fraction = 1;
  for (let m = 400; m >= 1; m--) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    fraction = 1 + even / (1 + odd / fraction);
  }
  return front / (1 + (-(a + b) * x) / (a + 1) / fraction);
}

/** ln Γ(x) for x > 0 by Stirling's series after shifting x above 15 (DLMF 5.11.1, 5.5.1). */
function logGamma(x: number): number {
  let shift = 0;
  let y = x;
  for (; y < 15; y++) shift -= Math.log(y);
  const r = 1 / (y * y);
  const series = (1 / 12 - r * (1 / 360 - r * (1 / 1260 - r / 1680))) / y;
  return shift + (y - 0.5) * Math.log(y) - y + Math.log(2 * Math.PI) / 2 + series;
}
