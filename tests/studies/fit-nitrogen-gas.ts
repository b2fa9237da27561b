// Fits the reduced equation of src/property-model/nitrogen-gas.ts to the reference equation of state and
// prints the coefficients and the worst deviations. Run: npx tsx tests/studies/fit-nitrogen-gas.ts
import { nitrogenDensity, nitrogenPressure } from "../../src/property-model/nitrogen.ts";
import * as reduced from "../../src/property-model/nitrogen-gas.ts";

const R = 8.31451 / 0.02801348; // J/(kg K), Span et al. (2000)
const powers: [density: number, temperature: number][] = [
  [1, 0],
  [1, 1],
  [1, 2],
  [1, 3],
  [2, 0],
  [2, 1],
  [2, 2],
  [3, 0],
  [3, 1],
];
const pressures = Array.from({ length: 60 }, (_, i) => 0.05e6 + (7.2e6 - 0.05e6) * (i / 59) ** 1.2);
const temperatures = Array.from({ length: 60 }, (_, i) => 228 + (348 - 228) * (i / 59));

/** Solves the symmetric system by Gauss elimination with pivoting. */
function solve(matrix: number[][], right: number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] as number]);
  const n = rows.length;
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k; i < n; i++) {
      if (Math.abs(rows[i]?.[k] ?? 0) > Math.abs(rows[pivot]?.[k] ?? 0)) pivot = i;
    }
    [rows[k], rows[pivot]] = [rows[pivot] as number[], rows[k] as number[]];
    const top = rows[k] as number[];
    for (let i = k + 1; i < n; i++) {
      const row = rows[i] as number[];
      const factor = (row[k] as number) / (top[k] as number);
      for (let j = k; j <= n; j++) row[j] = (row[j] as number) - factor * (top[j] as number);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const row = rows[i] as number[];
    let rest = row[n] as number;
    for (let j = i + 1; j < n; j++) rest -= (row[j] as number) * (x[j] as number);
    x[i] = rest / (row[i] as number);
  }
  return x;
}

const normal = powers.map(() => powers.map(() => 0));
const right = powers.map(() => 0);
for (const p of pressures) {
  for (const T of temperatures) {
    const rho = nitrogenDensity(p, T);
    const z = p / (rho * R * T) - 1;
    const row = powers.map(([i, j]) => (rho / 100) ** i * (300 / T) ** j);
    for (const [a, x] of row.entries()) {
      right[a] = (right[a] as number) + x * z;
      const line = normal[a] as number[];
      for (const [b, y] of row.entries()) line[b] = (line[b] as number) + x * y;
    }
  }
}
const coefficients = solve(normal, right);
for (const [k, [i, j]] of powers.entries()) {
  console.log(`[${i}, ${j}] ${coefficients[k]?.toFixed(7)}`);
}

let worstPressure = 0;
let worstDensity = 0;
let worstRatio = 0;
for (let i = 0; i <= 200; i++) {
  const p = 0.1e6 + (5.9e6 * i) / 200;
  for (let T = 233; T <= 343; T += 2) {
    const rho = nitrogenDensity(p, T);
    worstPressure = Math.max(worstPressure, Math.abs(reduced.nitrogenPressure(rho, T) / p - 1));
    worstDensity = Math.max(worstDensity, Math.abs(reduced.nitrogenDensity(p, T) / rho - 1));
    for (const later of [233, 263, 293, 343]) {
      const exact = nitrogenPressure(rho, later);
      if (exact > 6e6) continue;
      const fast = reduced.nitrogenPressure(reduced.nitrogenDensity(p, T), later);
      worstRatio = Math.max(worstRatio, Math.abs(fast / exact - 1));
    }
  }
}
console.log("worst deviation: pressure", worstPressure, "density", worstDensity);
console.log("worst deviation of the pressure after a temperature change", worstRatio);
