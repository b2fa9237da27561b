// R-1234yf, 2,3,3,3-tetrafluoroprop-1-ene: coefficients of the equation of state.
// Follows Lemmon E.W., Akasaka R. (2022), doi:10.1007/s10765-022-03015-y.
// Does not cover temperatures outside 121.6 K (triple point) to 410 K, nor pressures above 100 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * 2,3,3,3-tetrafluoroprop-1-ene (R-1234yf, CF3CF=CH2).
 *
 * Source: Lemmon E.W., Akasaka R. (2022), Int. J. Thermophys. 43:119, doi:10.1007/s10765-022-03015-y;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R1234yf: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R1234yf",
  designation: "R-1234yf",
  molarMass: 0.1140416, // kg/mol
  gasConstant: 8.314462618, // J/(mol K), as in the paper
  critical: { temperature: 367.85, pressure: 3384400, density: 4180 }, // K, Pa, mol/m3
  reducing: { temperature: 367.85, density: 4180 }, // K, mol/m3
  limits: { minTemperature: 121.6, maxTemperature: 410, maxPressure: 100000000 }, // K, Pa
  saturationLimit: 367.849999999948, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [       0.0340387,     1, 4],
        [        1.912859, 0.222, 1],
        [-2.1984719881617,  0.61, 1],
        [-0.8147645305033, 1.122, 2],
        [       0.2288282,   0.5, 3],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  -1.65436,  2.14, 1, 2],
        [ -1.446628, 2.284, 3, 2],
        [ 0.5961722,  1.05, 2, 1],
        [-0.6148209,  2.33, 2, 2],
        [-0.0180069, 0.778, 7, 1],
      ],
    },
    {
      type: "gaussian",
      // n, t, d, eta, epsilon, beta, gamma
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [ 0.2845275,     1, 1,  28.1,  0.96, 1016, 1.061],
        [-0.3050809,     2, 1,    28,  0.96, 1000, 1.062],
        [  2.198935, 1.236, 1, 1.307, 0.853, 1.16,   1.3],
        [-0.4270329,   1.6, 1,  1.96,  1.15,  1.2,  1.04],
        [-0.4015581,  1.85, 1,  1.25,   1.3, 1.26,     1],
        [ 0.1179587,   0.7, 1,     1,   1.5,  1.6,  1.14],
        [-0.3141002,  1.75, 1,   2.2, 0.762, 0.87,   1.1],
      ],
    },
  ],
  ideal: {
    a1: -12.081525543189,
    a2: 8.52896238365,
    logTau: 3,
    power: [],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [8.65, 1.39187168682887],
      [9.75, 4.26804403969009],
      [2.11, 12.2332472475194],
    ],
  },
  start: {
    temperature: 367.85, // K
    density: 4180, // mol/m3
    vaporOverT: false,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [ 3.392, 0.4],
      [-4.119, 0.7],
      [ 8.932, 1.1],
      [-8.525, 1.5],
      [ 3.384, 2.1],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [ -3.616, 0.426],
      [ -74.91,     2],
      [  197.7,   2.4],
      [-152.76,   2.7],
      [-61.062,   7.5],
      [-115.53,    15],
    ],
  },
  literature: {
    authors: "Lemmon E.W., Akasaka R.",
    year: 2022,
    title:
      "Equation of State for the Thermodynamic Properties of 2,3,3,3-Tetrafluoroprop-1-ene (R1234yf)",
    journal: "Int. J. Thermophys. 43:119",
    doi: "10.1007/s10765-022-03015-y",
  },
});
