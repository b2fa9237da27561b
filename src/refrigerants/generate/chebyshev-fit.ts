// Which Chebyshev series follows a function? Interpolation at the Chebyshev nodes, cut and rounded.
// Follows Boyd, Chebyshev and Fourier Spectral Methods, 2nd ed. (2001), ch. 4, and NIST DLMF 3.11(ii).
// Does not cover functions with singularities inside the interval.

const nodes = 64;

/**
 * Coefficients of the series of `f` over [from, to], cut where the rest sums to less than `tolerance`, and
 * rounded to the decimals that matter at that tolerance.
 */
export function chebyshevFit(
  f: (x: number) => number,
  [from, to]: readonly [from: number, to: number],
  tolerance: number,
): number[] {
  const values: number[] = [];
  for (let k = 0; k < nodes; k++) {
    const y = Math.cos((Math.PI * (k + 0.5)) / nodes);
    values.push(f((from + to) / 2 + ((to - from) / 2) * y));
  }
  const terms = values.map((_, j) => {
    const sum = values.reduce(
      (total, value, k) => total + value * Math.cos((Math.PI * j * (k + 0.5)) / nodes),
      0,
    );
    return ((j === 0 ? 1 : 2) * sum) / nodes;
  });
  let rest = 0;
  let length = terms.length;
  while (length > 1) {
    rest += Math.abs(terms[length - 1] as number);
    if (rest > tolerance) break;
    length--;
  }
  // A coefficient is rounded by at most half its last decimal; thirty of them add up as a random walk.
  const decimals = Math.ceil(-Math.log10(tolerance / 2));
  return terms.slice(0, length).map((term) => Number(term.toFixed(decimals)) + 0);
}
