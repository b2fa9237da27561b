// R-1234ze(E), trans-1,3,3,3-tetrafluoroprop-1-ene: coefficients of the equation of state.
// Follows Thol M., Lemmon E.W. (2016), doi:10.1007/s10765-016-2040-6.
// Does not cover temperatures outside 168.62 K (triple point) to 420 K, nor pressures above 100 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * Trans-1,3,3,3-tetrafluoroprop-1-ene (R-1234ze(E), CF3CH=CHF).
 *
 * The gas constant 8.3144621 reproduces the printed check values of the paper. Another transcription
 * carries 8.314472: pressures 1.2 ppm higher; it also carries 15 MPa as the highest pressure, the limit of an older
 * equation. This one is used from 169 K to 420 K up to 100 MPa (Huber and Assael 2016, which rests on it), and the paper
 * prints a check value at 19.95 MPa.
 *
 * Source: Thol M., Lemmon E.W. (2016), Int. J. Thermophys. 37:1-16, doi:10.1007/s10765-016-2040-6;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R1234zeE: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R1234zeE",
  designation: "R-1234ze(E)",
  molarMass: 0.1140415928, // kg/mol
  gasConstant: 8.3144621, // J/(mol K), as in the paper
  critical: { temperature: 382.52, pressure: 3635376.34913, density: 4290 }, // K, Pa, mol/m3
  reducing: { temperature: 382.513, density: 4290 }, // K, mol/m3
  limits: { minTemperature: 168.62, maxTemperature: 420, maxPressure: 100000000 }, // K, Pa
  saturationLimit: 382.513002604652, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [0.03982797,     1, 4],
        [  1.812227, 0.223, 1],
        [ -2.537512, 0.755, 1],
        [-0.5333254,  1.24, 2],
        [ 0.1677031,  0.44, 3],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  -1.323801,   2, 1, 2],
        [ -0.6694654, 2.2, 3, 2],
        [  0.8072718, 1.2, 2, 1],
        [ -0.7740229, 1.5, 2, 2],
        [-0.01843846, 0.9, 7, 1],
      ],
    },
    {
      type: "gaussian",
      // n, t, d, eta, epsilon, beta, gamma
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    1.407916, 1.33, 1,    1, 0.728, 1.21, 0.943],
        [  -0.4237082, 1.75, 1, 1.61,  0.87, 1.37, 0.642],
        [  -0.2270068, 2.11, 3, 1.24, 0.855, 0.98,  0.59],
        [   -0.805213,    1, 3, 9.34,  0.79,  171,   1.2],
        [  0.00994318,  1.5, 2, 5.78,   1.3, 47.4,  1.33],
        [-0.008798793,    1, 1, 3.08,  0.71, 15.4,  0.64],
      ],
    },
  ],
  ideal: {
    a1: -12.5586602313194,
    a2: 8.79132625741231,
    logTau: 3,
    power: [],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [9.3575, 1.34113088966911],
      [10.717, 5.15538034001459],
    ],
  },
  start: {
    temperature: 382.52, // K
    density: 4290, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [-8.42282936179494,             0.07],
      [ 35.5921693151984,            0.096],
      [-27.7484447592039,            0.108],
      [ 3.08693911945863,            0.383],
      [ 0.49297732386263, 2.66666666666667],
      [  2436.2254360953,               25],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [   1.986129542241,            0.105],
      [-3.60191066434768,            0.139],
      [   110.9754419375,           0.3875],
      [ -113.63727224413,           0.3945],
      [-1.70167203939399, 1.33333333333333],
      [-5.76550031205186, 4.16666666666667],
    ],
  },
  literature: {
    authors: "Thol M., Lemmon E.W.",
    year: 2016,
    title:
      "Equation of State for the Thermodynamic Properties of trans-1,3,3,3-Tetrafluoropropene [R-1234ze(E)]",
    journal: "Int. J. Thermophys. 37:1-16",
    doi: "10.1007/s10765-016-2040-6",
  },
});
