// What does nitrogen in a closed vessel do when its temperature changes? A short form for apps.
// Follows Span et al. (2000), doi:10.1063/1.1349047, by a fit of a virial expansion to that equation.
// Does not cover pressures above 6 MPa or temperatures outside 233 K to 343 K; the caller checks them.

// Specific gas constant, J/(kg K): molar gas constant and molar mass of Span et al. (2000).
const R = 8.31451 / 0.02801348;

// Z − 1 = Σ c d^i t^j with d = ρ/(100 kg/m³) and t = 300 K/T. Least squares against the reference
// equation on 60 × 60 states of 0.05 MPa to 7.2 MPa and 228 K to 348 K, by
// tests/studies/fit-nitrogen-gas.ts. Worst deviation up to 6 MPa and from 233 K to 343 K: 4.6e-6 in
// pressure and in density, 5.2e-6 in the pressure after a temperature change at constant density.
const B = [0.1461313, -0.1145046, -0.0531574, 0.0053217] as const; // i = 1, j = 0 to 3
const C = [0.0165893, -0.0064264, 0.0074285] as const; // i = 2, j = 0 to 2
const D = [0.0016517, -0.0007342] as const; // i = 3, j = 0 to 1

/** Lowest and highest temperature (K) and absolute pressure (Pa) of the stated accuracy. */
export const nitrogenGasRange: {
  readonly minTemperature: number;
  readonly maxTemperature: number;
  readonly minPressure: number;
  readonly maxPressure: number;
} = { minTemperature: 233, maxTemperature: 343, minPressure: 0, maxPressure: 6e6 };

/** Absolute pressure of gaseous nitrogen, Pa, at a density (kg/m³) and a temperature (K). */
export function nitrogenPressure(densityKgM3: number, temperatureK: number): number {
  const [b, c, e] = virials(temperatureK);
  const d = densityKgM3 / 100;
  return densityKgM3 * R * temperatureK * (1 + d * (b + d * (c + d * e)));
}

/** Density of gaseous nitrogen, kg/m³, at an absolute pressure (Pa) and a temperature (K). */
export function nitrogenDensity(pressurePa: number, temperatureK: number): number {
  const [b, c, e] = virials(temperatureK);
  const ideal = pressurePa / (R * temperatureK) / 100;
  let d = ideal;
  // Newton on d Z(d) = ideal; Z stays within 7 % of 1 in the range, so that five steps are exact.
  for (let step = 0; step < 5; step++) {
    const excess = d * (1 + d * (b + d * (c + d * e))) - ideal;
    d -= excess / (1 + d * (2 * b + d * (3 * c + d * 4 * e)));
  }
  return d * 100;
}

/** Second, third and fourth virial coefficient at T, for d = ρ/(100 kg/m³). */
function virials(temperatureK: number): [b: number, c: number, d: number] {
  const t = 300 / temperatureK;
  return [B[0] + t * (B[1] + t * (B[2] + t * B[3])), C[0] + t * (C[1] + t * C[2]), D[0] + t * D[1]];
}
