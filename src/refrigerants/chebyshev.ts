// How is a curve evaluated from its Chebyshev coefficients? Clenshaw's recurrence.
// Follows NIST Digital Library of Mathematical Functions, 3.11(ii).
// Does not cover the fit; the generator makes the coefficients.

/** Sum of c_k T_k(y) with y = x mapped from [from, to] to [−1, 1]. */
export function chebyshev(
  terms: readonly number[],
  [from, to]: readonly [from: number, to: number],
  x: number,
): number {
  const twice = (2 * (2 * x - from - to)) / (to - from); // 2 y
  let b1 = 0;
  let b2 = 0;
  for (let k = terms.length - 1; k > 0; k--) {
    const b = twice * b1 - b2 + (terms[k] as number);
    b2 = b1;
    b1 = b;
  }
  return (twice / 2) * b1 - b2 + (terms[0] as number);
}
