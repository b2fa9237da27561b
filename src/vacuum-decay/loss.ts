// What would a leak that a vacuum may pass with lose under pressure? A range, for R-410A at 20 °C.
// Follows the viscous and the molecular law of leak-testing handbooks (NASA leakage testing handbook, from memory).
// Does not cover leaks that open under pressure, or where liquid stands at the leak: these lose more.

const eta = { air: 18.2e-6, refrigerant: 13.0e-6 }; // Pa·s at 20 °C: vacuum handbooks; R-410A vapor, reference equation of state
const molar = { air: 0.0289647, refrigerant: 0.0725854 }; // kg/mol
const saturation = 1.443e6; // Pa, R-410A at 20 °C, reference equation of state
const atmosphere = 101_325; // Pa
const RT = 8.314462618 * 293.15; // J/mol

/** Least and most loss in kg/s of a leak that lets in a throughput of air, Pa·m³/s. */
export function lossOf(throughput: number): readonly [number, number] {
  const ratio = saturation / atmosphere;
  const molecular = throughput * Math.sqrt(molar.air / molar.refrigerant) * (ratio - 1);
  const viscous = throughput * (eta.air / eta.refrigerant) * (ratio ** 2 - 1);
  const mass = (Q: number) => (Q * molar.refrigerant) / RT;
  return [mass(molecular), mass(viscous)];
}
