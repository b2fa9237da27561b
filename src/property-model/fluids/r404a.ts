// R-404A, blend treated as one fluid: coefficients of the equation of state.
// Follows Lemmon E.W. (2003), doi:10.1023/A:1025048800563.
// Does not cover temperatures outside 200 K (lower limit of the equation) to 500 K, nor pressures above 50 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PseudoPureFluid } from "../fluid.ts";

/**
 * R-404A as a pseudo-pure fluid.
 *
 * Source: Lemmon E.W. (2003), Int. J. Thermophys. 24:991-1006, doi:10.1023/A:1025048800563;
 * coefficients transcribed in CoolProp (MIT license).
 */
export const R404A: PseudoPureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pseudo-pure",
  id: "R404A",
  designation: "R-404A",
  molarMass: 0.0976038, // kg/mol
  gasConstant: 8.314472, // J/(mol K), as in the paper
  critical: { temperature: 345.27, pressure: 3734800, density: 4940 }, // K, Pa, mol/m3
  reducing: { temperature: 345.27, density: 4940 }, // K, mol/m3
  limits: { minTemperature: 200, maxTemperature: 500, maxPressure: 50000000 }, // K, Pa
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    6.10984, 0.67, 1],
        [   -7.79453, 0.91, 1],
        [  0.0183377, 5.96, 1],
        [    0.26227,  0.7, 2],
        [-0.00351688,    6, 2],
        [  0.0116181,  0.3, 4],
        [ 0.00105992,  0.7, 6],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [   0.850922,  1.7, 1, 1],
        [  -0.520084,  3.3, 1, 1],
        [ -0.0464225,    7, 1, 1],
        [    0.62119, 2.05, 2, 1],
        [  -0.195505,  4.3, 2, 1],
        [   0.336159,  2.7, 3, 1],
        [ -0.0376062,  1.8, 4, 1],
        [-0.00636579, 1.25, 7, 1],
        [ -0.0758262,   12, 2, 2],
        [ -0.0221041,    6, 3, 2],
        [  0.0310441,  8.7, 4, 2],
        [  0.0132798, 11.6, 4, 2],
        [  0.0689437,   13, 2, 3],
        [ -0.0507525,   17, 3, 3],
        [  0.0161382,   16, 5, 3],
      ],
    },
  ],
  ideal: {
    a1: 7.00407,
    a2: 7.98695,
    logTau: -1,
    // n, t
    // biome-ignore format: kept as a table
    power: [
      [-18.8664, -0.3],
    ],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [0.63078, 1.19617],
      [ 3.5979, 2.32861],
      [ 5.0335, 5.00188],
    ],
  },
  // n, t
  // biome-ignore format: kept as a table
  bubble: [
    [0.061067,  0.54],
    [ -6.5646, 0.965],
    [ -3.6162,   3.7],
    [ -3.9771,     9],
  ],
  // n, t
  // biome-ignore format: kept as a table
  dew: [
    [-0.00026863,   0.1],
    [    -6.5757, 0.972],
    [    -4.1802,   3.8],
    [    -7.9102,     9],
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
