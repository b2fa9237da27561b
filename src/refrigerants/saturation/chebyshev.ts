// How is a curve evaluated from its Chebyshev coefficients? Clenshaw's recurrence, two terms at a time.
// Follows NIST Digital Library of Mathematical Functions, 3.11(ii), for the even and the odd terms apart.
// Does not cover the fit; the generator makes the coefficients.

/** Sum of two or more terms c_k T_k(y) with y = x mapped from [from, to] to [−1, 1]. */
export function chebyshev(
  coefficients: readonly number[],
  interval: readonly [from: number, to: number],
  x: number,
): number {
  const from = interval[0]; // by index: taking a pair apart costs more than the sum
  const to = interval[1];
  return sumOf(packed(coefficients), (2 * x - from - to) / (to - from));
}

/**
 * The sum at y from −1 to 1.
 *
 * With z = 2y² − 1, T_2k(y) = T_k(z) and T_2k+1(y) = y V_k(z), where V_0 = 1 and V_1 = 2z − 1 obey the same
 * recurrence (DLMF 18.7(ii)). The two sums do not wait for each other, which halves the time.
 */
export function sumOf(terms: Float64Array, y: number): number {
  const z = 2 * y * y - 1;
  const twice = 2 * z;
  let even1 = 0;
  let even2 = 0;
  let odd1 = 0;
  let odd2 = 0;
  let k = terms.length - 1;
  if (k % 2 === 0) {
    even1 = terms[k] as number;
    k--;
  }
  for (; k > 1; k -= 2) {
    const odd = twice * odd1 + ((terms[k] as number) - odd2);
    const even = twice * even1 + ((terms[k - 1] as number) - even2);
    odd2 = odd1;
    odd1 = odd;
    even2 = even1;
    even1 = even;
  }
  const odd0 = twice * odd1 + ((terms[1] as number) - odd2);
  return z * even1 + ((terms[0] as number) - even2) + y * (odd0 - odd1);
}

/** Coefficients for a loop: a frozen list of numbers is read at half the speed. Those of what nobody can change are kept. */
export function packed(terms: readonly number[]): Float64Array {
  let numbers = kept.get(terms);
  if (numbers === undefined) {
    numbers = Float64Array.from(terms);
    if (Object.isFrozen(terms)) kept.set(terms, numbers);
  }
  return numbers;
}

const kept = /* @__PURE__ */ new WeakMap<readonly number[], Float64Array>();
