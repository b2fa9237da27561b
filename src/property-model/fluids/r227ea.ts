// R-227ea, 1,1,1,2,3,3,3-heptafluoropropane: coefficients of the equation of state.
// Follows Lemmon E.W., Span R. (2015), doi:10.1021/acs.jced.5b00684.
// Does not cover temperatures outside 146.35 K (triple point) to 475 K, nor pressures above 60 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * 1,1,1,2,3,3,3-heptafluoropropane (R-227ea, CF3CHFCF3).
 *
 * Source: Lemmon E.W., Span R. (2015), J. Chem. Eng. Data 60:3745-3758, doi:10.1021/acs.jced.5b00684;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R227ea: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R227ea",
  designation: "R-227ea",
  molarMass: 0.17002886, // kg/mol
  gasConstant: 8.3144621, // J/(mol K), as in the paper
  critical: { temperature: 374.9, pressure: 2925242.23394, density: 3495 }, // K, Pa, mol/m3
  reducing: { temperature: 374.9, density: 3495 }, // K, mol/m3
  limits: { minTemperature: 146.35, maxTemperature: 475, maxPressure: 60000000 }, // K, Pa
  saturationLimit: 374.90010344525, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  2.024341, 0.34, 1],
        [  -2.60593, 0.77, 1],
        [ 0.4957216, 0.36, 2],
        [ -0.824082,  0.9, 2],
        [0.06543703,    1, 4],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  -1.02461, 2.82, 1, 1],
        [ 0.6247065,  2.1, 3, 1],
        [ 0.2997521,  0.9, 6, 1],
        [ -0.353917, 1.13, 6, 1],
        [ -1.232043,  3.8, 2, 2],
        [-0.8824483, 2.75, 3, 2],
      ],
    },
    {
      type: "gaussian",
      // n, t, d, eta, epsilon, beta, gamma
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [   0.1349661, 1.5, 1, 0.83,  1.13, 1.72, 0.414],
        [  -0.2662928, 2.5, 2, 2.19,  0.71,  5.2, 1.051],
        [   0.1764733, 2.5, 1, 2.44,   1.2, 2.31, 1.226],
        [  0.01536163, 5.4, 1, 3.65,   1.7, 1.02,   1.7],
        [-0.004667185,   4, 4, 8.88, 0.546, 5.63, 0.904],
        [   -11.70854,   1, 2, 8.23, 0.896, 50.9,  1.42],
        [   0.9114512, 3.5, 1, 2.01, 0.747, 1.56, 0.926],
      ],
    },
  ],
  ideal: {
    a1: -15.8291124137,
    a2: 11.0879509962,
    logTau: 3,
    power: [],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [11.43, 1.07495332088557],
      [12.83, 3.80901573753001],
    ],
  },
  start: {
    temperature: 374.9, // K
    density: 3495, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [-0.0371806362670618,   0.12],
      [   2.25652604113259,   0.35],
      [   16.7777718350651,  2.248],
      [  -22.3137160956093,  2.467],
      [   6.79331068139087,  3.208],
      [  -10.8930685210258, 12.192],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      // biome-ignore lint/suspicious/noApproximativeNumericConstant: a fitted number
      [-6.94705022528572,  0.434],
      [ 123.406534880611,  0.676],
      [-122.565151864038,  0.691],
      [-9.99488561844055,  4.287],
      [ 3.47887902981899,  4.613],
      [ 245.617261936055, 19.251],
    ],
  },
  literature: {
    authors: "Lemmon E.W., Span R.",
    year: 2015,
    title: "Thermodynamic Properties of R-227ea, R-365mfc, R-115, and R-13I1",
    journal: "J. Chem. Eng. Data 60:3745-3758",
    doi: "10.1021/acs.jced.5b00684",
  },
});
