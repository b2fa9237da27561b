// R-717, ammonia: coefficients of the equation of state.
// Follows Gao K., Wu J., Bell I.H., Lemmon E.W. (2020), doi:10.1063/1.5128269.
// Does not cover temperatures outside 195.49 K (triple point) to 725 K, nor pressures above 1000 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * Ammonia (R-717, NH3).
 *
 * The gas constant 8.314462618 reproduces the printed check values of the paper. Another transcription
 * carries 8.3144598: pressures 0.34 ppm lower.
 *
 * Source: Gao K., Wu J., Bell I.H., Lemmon E.W. (2020), J. Phys. Chem. Ref. Data 49:013102, doi:10.1063/1.5128269;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R717: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R717",
  designation: "R-717",
  molarMass: 0.01703052, // kg/mol
  gasConstant: 8.314462618, // J/(mol K), as in the paper
  critical: { temperature: 405.56, pressure: 11363391.1628, density: 13696 }, // K, Pa, mol/m3
  reducing: { temperature: 405.56, density: 13696 }, // K, mol/m3
  limits: { minTemperature: 195.49, maxTemperature: 725, maxPressure: 1000000000 }, // K, Pa
  saturationLimit: 405.559999973264, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [0.006132232,     1, 4],
        [  1.7395866, 0.382, 1],
        [ -2.2261792,     1, 1],
        [-0.30127553,     1, 2],
        [ 0.08967023, 0.677, 3],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [-0.076387037, 2.915, 3, 2],
        [ -0.84063963,  3.51, 2, 2],
        [ -0.27026327, 1.063, 3, 1],
      ],
    },
    {
      type: "gaussian",
      // n, t, d, eta, epsilon, beta, gamma
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [     6.212578,  0.655, 1, 0.42776, -0.0726,  1.708,   1.036],
        [   -5.7844357,    1.3, 1,  0.6424, -0.1274, 1.4865,  1.2777],
        [    2.4817542,    3.1, 1,  0.8175,  0.7527, 2.0915,   1.083],
        [   -2.3739168, 1.4395, 2,  0.7995,    0.57,   2.43,  1.2906],
        [   0.01493697,  1.623, 2,    0.91,     2.2,  0.488,   0.928],
        [   -3.7749264,  0.643, 1,  0.3574,  -0.243,    1.1,   0.934],
        [ 0.0006254348,   1.13, 3,    1.21,    2.96,   0.85,   0.919],
        [  -1.7359e-05,    4.5, 3,    4.14,    3.02,   1.14,   1.852],
        [  -0.13462033,      1, 1,   22.56,  0.9574, 945.64, 1.05897],
        [0.07749072839,      4, 1,   22.68,  0.9576, 993.85, 1.05277],
      ],
    },
    {
      type: "gaoB",
      // n, t, d, eta, epsilon, beta, gamma, b
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [-1.6909858, 4.3315, 1, 2.8452,  0.4478, 0.3696, 1.108,  1.244],
        [0.93739074,  4.015, 1, 2.8342, 0.44689, 0.2962, 1.313, 0.6826],
      ],
    },
  ],
  ideal: {
    a1: -6.59406093943886,
    a2: 5.60101151987913,
    logTau: 3,
    power: [],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [ 2.224, 4.05858565933524],
      [ 3.148, 9.77660518788835],
      [0.9579, 17.8296676200809],
    ],
  },
  start: {
    temperature: 405.56, // K
    density: 13696, // mol/m3
    vaporOverT: false,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [  2.447, 0.384],
      [ 5.8341,  1.65],
      [-25.944,   2.2],
      [ 53.383,  2.75],
      [-54.411,  3.35],
      [ 22.771,     4],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-0.053296,  0.14],
      [  -3.4589,  0.44],
      [  -6.7572, 1.314],
      [   -17.26, 3.225],
      [   -43.12,   6.4],
      [  -115.18,    14],
    ],
  },
  literature: {
    authors: "Gao K., Wu J., Bell I.H., Lemmon E.W.",
    year: 2020,
    title:
      "Thermodynamic Properties of Ammonia for Temperatures from the Melting Line to 725 K and Pressures to 1000 MPa",
    journal: "J. Phys. Chem. Ref. Data 49:013102",
    doi: "10.1063/1.5128269",
  },
});
