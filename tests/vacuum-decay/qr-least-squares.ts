// Which curve fits best? Weighted least squares of a model that is linear in all but one parameter.
// Follows variable projection: Golub & Pereyra (1973), from memory, with Householder QR and the derivative of
// the sum of squares set to zero. Does not cover several non-linear parameters.

/** A linear fit: coefficients, their standard deviations, residual sum of squares. */
export interface LinearFit {
  readonly coefficients: number[];
  readonly deviations: number[];
  readonly rss: number;
  readonly residuals: number[];
  /** Unscaled covariance (AᵀA)⁻¹. */
  readonly inverse: number[][];
}

/** Least squares by Householder QR; `columns` are the basis functions at the points, fewer than there are points. */
export function linearLeastSquares(columns: readonly number[][], y: readonly number[]): LinearFit {
  const n = y.length;
  const m = columns.length;
  const A = columns.map((column) => [...column]);
  const b = [...y];
  const R: number[][] = columns.map(() => new Array<number>(m).fill(0));
  for (let k = 0; k < m; k++) {
    const v = A[k] as number[];
    let norm = 0;
    for (let i = k; i < n; i++) norm += (v[i] as number) ** 2;
    norm = Math.sqrt(norm);
    const alpha = (v[k] as number) > 0 ? -norm : norm;
    const head = (v[k] as number) - alpha;
    v[k] = head;
    let square = 0;
    for (let i = k; i < n; i++) square += (v[i] as number) ** 2;
    const reflect = (x: number[]) => {
      let dot = 0;
      for (let i = k; i < n; i++) dot += (v[i] as number) * (x[i] as number);
      const factor = (2 * dot) / square;
      for (let i = k; i < n; i++) x[i] = (x[i] as number) - factor * (v[i] as number);
    };
    (R[k] as number[])[k] = alpha;
    for (let j = k + 1; j < m; j++) {
      reflect(A[j] as number[]);
      (R[k] as number[])[j] = (A[j] as number[])[k] as number;
    }
    reflect(b);
  }
  const solve = (right: readonly number[]) => {
    const x = new Array<number>(m).fill(0);
    for (let k = m - 1; k >= 0; k--) {
      let sum = right[k] as number;
      for (let j = k + 1; j < m; j++) sum -= ((R[k] as number[])[j] as number) * (x[j] as number);
      x[k] = sum / ((R[k] as number[])[k] as number);
    }
    return x;
  };
  const coefficients = solve(b);
  const residuals = y.map((value, i) =>
    columns.reduce(
      (rest, column, k) => rest - (column[i] as number) * (coefficients[k] as number),
      value,
    ),
  );
  const rss = residuals.reduce((sum, r) => sum + r * r, 0);
  // rows of R⁻¹ give (AᵀA)⁻¹ = R⁻¹R⁻ᵀ
  const unit = (k: number) => solve(R.map((_, i) => (i === k ? 1 : 0)));
  const inverseR = R.map((_, k) => unit(k)); // column k of R⁻¹
  const inverse = R.map((_, i) =>
    R.map((__, j) =>
      inverseR.reduce((sum, column) => sum + (column[i] as number) * (column[j] as number), 0),
    ),
  );
  const variance = rss / (n - m);
  const deviations = inverse.map((line, k) => Math.sqrt(variance * (line[k] as number)));
  return { coefficients, deviations, rss, residuals, inverse };
}

/** A fit with one non-linear parameter, its standard deviation last. */
export interface SeparableFit extends LinearFit {
  readonly parameter: number;
}

/**
 * Fits y ≈ Σ cₖ·fₖ(x; θ): for each θ the c follow linearly; θ is where the sum of squares no longer changes,
 * dRSS/dθ = −2 rᵀ(∂F/∂θ)c = 0, found by bisection of that derivative inside the best bracket of a scan on a
 * logarithmic grid from `low` to `high`. `slope` gives ∂fₖ/∂θ at the points.
 */
export function separableLeastSquares(
  y: readonly number[],
  columns: (theta: number) => number[][],
  slopes: (theta: number) => number[][],
  low: number,
  high: number,
): SeparableFit {
  const gradient = (theta: number) => {
    const { coefficients, residuals } = linearLeastSquares(columns(theta), y);
    return -slopes(theta).reduce(
      (sum, column, k) =>
        sum +
        (coefficients[k] as number) *
          column.reduce((s, f, i) => s + f * (residuals[i] as number), 0),
      0,
    );
  };
  const steps = 80;
  const grid = Array.from({ length: steps + 1 }, (_, i) => low * (high / low) ** (i / steps));
  const sums = grid.map((theta) => linearLeastSquares(columns(theta), y).rss);
  const best = sums.indexOf(Math.min(...sums));
  let left = grid[Math.max(0, best - 1)] as number;
  let right = grid[Math.min(steps, best + 1)] as number;
  for (let step = 0; step < 200; step++) {
    const middle = (left + right) / 2;
    if (middle === left || middle === right) break;
    if (gradient(middle) < 0) left = middle;
    else right = middle;
  }
  const parameter = (left + right) / 2;
  const F = columns(parameter);
  const fit = linearLeastSquares(F, y);
  // full Jacobian for the standard deviations
  const atParameter = slopes(parameter);
  const last = y.map((_, i) =>
    atParameter.reduce(
      (sum, column, k) => sum + (fit.coefficients[k] as number) * (column[i] as number),
      0,
    ),
  );
  const full = linearLeastSquares([...F, last], y);
  const variance = fit.rss / (y.length - F.length - 1);
  return {
    ...fit,
    parameter,
    inverse: full.inverse,
    deviations: full.inverse.map((line, k) => Math.sqrt(variance * (line[k] as number))),
  };
}

/**
 * Akaike's criterion with the correction for few points, n ln(RSS/n) + 2K + 2K(K + 1)/(n − K − 1), where K
 * counts the variance. Source: Burnham & Anderson (2002), 2.4, from memory.
 */
export function aiccOf(rss: number, n: number, K: number): number {
  return n * Math.log(rss / n) + 2 * K + (2 * K * (K + 1)) / (n - K - 1);
}
