// R-410A, blend treated as one fluid: coefficients of the equation of state.
// Follows Lemmon E.W. (2003), doi:10.1023/A:1025048800563.
// Does not cover temperatures outside 200 K (lower limit of the equation) to 500 K, nor pressures above 50 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PseudoPureFluid } from "../fluid.ts";

/**
 * R-410A as a pseudo-pure fluid.
 *
 * Source: Lemmon E.W. (2003), Int. J. Thermophys. 24:991-1006, doi:10.1023/A:1025048800563;
 * coefficients transcribed in CoolProp (MIT license).
 */
export const R410A: PseudoPureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pseudo-pure",
  id: "R410A",
  designation: "R-410A",
  molarMass: 0.0725854, // kg/mol
  gasConstant: 8.314472, // J/(mol K), as in the paper
  critical: { temperature: 344.494, pressure: 4901200, density: 6324 }, // K, Pa, mol/m3
  reducing: { temperature: 344.494, density: 6324 }, // K, mol/m3
  limits: { minTemperature: 200, maxTemperature: 500, maxPressure: 50000000 }, // K, Pa
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  0.987252, 0.44, 1],
        [  -1.03017,  1.2, 1],
        [   1.17666, 2.97, 1],
        [ -0.138991, 2.95, 2],
        [0.00302373,  0.2, 5],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    -2.53639, 1.93, 1, 1],
        [     -1.9668, 1.78, 2, 1],
        [    -0.83048,    3, 3, 1],
        [    0.172477,  0.2, 5, 1],
        [   -0.261116, 0.74, 5, 1],
        [  -0.0745473,    3, 5, 1],
        [    0.679757,  2.1, 1, 2],
        [   -0.652431,  4.3, 1, 2],
        [   0.0553849, 0.25, 4, 2],
        [   -0.071097,    7, 4, 2],
        [-0.000875332,  4.7, 9, 2],
        [    0.020076,   13, 2, 3],
        [  -0.0139761,   16, 2, 3],
        [   -0.018511,   25, 4, 3],
        [   0.0171939,   17, 5, 3],
        [ -0.00482049,  7.4, 6, 3],
      ],
    },
  ],
  ideal: {
    a1: 36.8871,
    a2: 7.15807,
    logTau: -1,
    // n, t
    // biome-ignore format: kept as a table
    power: [
      [-46.87575, -0.1],
    ],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [2.0623, 2.02326],
      [5.9751, 5.00154],
      [1.5612, 11.2484],
    ],
  },
  // n, t
  // biome-ignore format: kept as a table
  bubble: [
    [-7.2818,   1],
    [ 2.5093, 1.8],
    [-3.2695, 2.4],
    [-2.8022, 4.9],
  ],
  // n, t
  // biome-ignore format: kept as a table
  dew: [
    [-7.4411,   1],
    [ 1.9883, 1.6],
    [-2.4925, 2.4],
    [-3.2633,   5],
  ],
  literature: {
    authors: "Lemmon E.W.",
    year: 2003,
    title:
      "Pseudo-Pure Fluid Equations of State for the Refrigerant Blends R-410A, R-404A, R-507A, and R-407C",
    journal: "Int. J. Thermophys. 24:991-1006",
    doi: "10.1023/A:1025048800563",
  },
});
