// R-1233zd(E), trans-1-chloro-3,3,3-trifluoroprop-1-ene: coefficients of the equation of state.
// Follows Akasaka R., Lemmon E.W. (2022), doi:10.1063/5.0083026.
// Does not cover temperatures outside 165.75 K (triple point) to 450 K, nor pressures above 100 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * Trans-1-chloro-3,3,3-trifluoroprop-1-ene (R-1233zd(E), CF3CH=CHCl).
 *
 * Source: Akasaka R., Lemmon E.W. (2022), J. Phys. Chem. Ref. Data 51:023101, doi:10.1063/5.0083026;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R1233zdE: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R1233zdE",
  designation: "R-1233zd(E)",
  molarMass: 0.1304962, // kg/mol
  gasConstant: 8.314462618, // J/(mol K), as in the paper
  critical: { temperature: 438.86, pressure: 3582800, density: 3704 }, // K, Pa, mol/m3
  reducing: { temperature: 438.86, density: 3704 }, // K, mol/m3
  limits: { minTemperature: 165.75, maxTemperature: 450, maxPressure: 100000000 }, // K, Pa
  saturationLimit: 438.860000000042, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [      0.04394257,      1, 4],
        [        1.062919,  0.182, 1],
        [-1.2879140374971,  0.865, 1],
        [-0.8088618920845, 1.0924, 2],
        [       0.2372427,   0.49, 3],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    -1.9403, 1.958, 1, 2],
        [  -2.831967,  2.05, 3, 2],
        [   0.373421, 0.658, 2, 1],
        [  -1.515798, 2.051, 2, 2],
        [-0.02755627, 0.862, 7, 1],
      ],
    },
    {
      type: "gaussian",
      // n, t, d, eta, epsilon, beta, gamma
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    4.24023, 1.852, 1,  1.532, 0.8834, 0.2912, 1.7171],
        [-0.03152671,  1.92, 2,  0.635,  1.386, 0.6245,   0.63],
        [  -1.366494, 1.936, 3, 1.4056, 0.5196,  0.669, 0.7852],
        [   2.647143, 1.515, 1,  1.451,  1.133, 0.5798,  2.251],
        [  -2.325463, 2.668, 1,  1.395, 0.9788, 0.4643,  1.821],
        [ -0.2541521, 1.755, 1,  2.259,  1.166,  2.449,  2.074],
        [  0.1330834, 0.526, 1,   24.3, 0.9244, 1061.4, 1.0797],
        [ -0.1569217,  2.98, 1,   23.6, 0.9372,  917.8,  1.084],
      ],
    },
  ],
  ideal: {
    a1: -17.291229931888,
    a2: 10.404947446884,
    logTau: 3,
    power: [],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [  13.7, 1.73403818985553],
      [7.0974, 6.53967096568382],
    ],
  },
  start: {
    temperature: 438.86, // K
    density: 3704, // mol/m3
    vaporOverT: false,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [0.61448, 0.22],
      [ 2.6345, 0.55],
      [ -1.316, 0.94],
      [0.86885,  1.4],
      [0.34071,  6.8],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-0.80785, 0.24],
      [ -3.2355, 0.59],
      [ -2.7567,    1],
      [ -10.863,  2.2],
      [ -33.456,  4.7],
      [  -69.31,    9],
    ],
  },
  literature: {
    authors: "Akasaka R., Lemmon E.W.",
    year: 2022,
    title:
      "An International Standard Formulation for trans-1-Chloro-3,3,3-trifluoroprop-1-ene [R1233zd(E)] Covering Temperatures from the Triple-point Temperature to 450 K and Pressures up to 100 MPa",
    journal: "J. Phys. Chem. Ref. Data 51:023101",
    doi: "10.1063/5.0083026",
  },
});
