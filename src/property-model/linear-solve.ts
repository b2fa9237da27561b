// What solves the linear system of a Newton step? Gauss elimination with partial pivoting.
// Follows any textbook on numerical analysis; common practice, no source.
// Does not cover large or badly scaled systems: ours have at most a dozen rows.

/** Solves the n × n system in place; rows of `matrix` are n + 1 long, the right side last. */
export function solveLinear(matrix: Float64Array[]): Float64Array | undefined {
  const n = matrix.length;
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) {
      if (Math.abs(cell(matrix, i, k)) > Math.abs(cell(matrix, pivot, k))) pivot = i;
    }
    if (!(Math.abs(cell(matrix, pivot, k)) > 0)) return undefined;
    const top = matrix[pivot] as Float64Array;
    matrix[pivot] = matrix[k] as Float64Array;
    matrix[k] = top;
    for (let i = k + 1; i < n; i++) {
      const row = matrix[i] as Float64Array;
      const factor = (row[k] as number) / (top[k] as number);
      for (let j = k; j <= n; j++) row[j] = (row[j] as number) - factor * (top[j] as number);
    }
  }
  const x = new Float64Array(n);
  for (let i = n - 1; i >= 0; i--) {
    let rest = cell(matrix, i, n);
    for (let j = i + 1; j < n; j++) rest -= cell(matrix, i, j) * (x[j] as number);
    x[i] = rest / cell(matrix, i, i);
  }
  return x;
}

function cell(matrix: Float64Array[], i: number, j: number): number {
  return (matrix[i] as Float64Array)[j] as number;
}
