// R-507A, blend treated as one fluid: coefficients of the equation of state.
// Follows Lemmon E.W. (2003), doi:10.1023/A:1025048800563.
// Does not cover temperatures outside 200 K (lower limit of the equation) to 500 K, nor pressures above 50 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PseudoPureFluid } from "../fluid.ts";

/**
 * R-507A as a pseudo-pure fluid.
 *
 * The reducing density is the published 4.964 mol/dm³, which reproduces the printed check value at 250 K
 * and 13 mol/dm³. Another transcription carries 4964.0297 mol/m³: densities 6 ppm higher.
 *
 * Source: Lemmon E.W. (2003), Int. J. Thermophys. 24:991-1006, doi:10.1023/A:1025048800563;
 * coefficients transcribed in CoolProp (MIT license).
 */
export const R507A: PseudoPureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pseudo-pure",
  id: "R507A",
  designation: "R-507A",
  molarMass: 0.0988592, // kg/mol
  gasConstant: 8.314472, // J/(mol K), as in the paper
  critical: { temperature: 343.765, pressure: 3704900, density: 4964 }, // K, Pa, mol/m3
  reducing: { temperature: 343.765, density: 4964 }, // K, mol/m3
  limits: { minTemperature: 200, maxTemperature: 500, maxPressure: 50000000 }, // K, Pa
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    6.24982, 0.692, 1],
        [   -8.07855, 0.943, 1],
        [  0.0264843,   5.8, 1],
        [   0.286215,  0.77, 2],
        [-0.00507076,  5.84, 2],
        [  0.0109552,  0.24, 4],
        [ 0.00116124,  0.69, 6],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [   1.38469,    2, 1, 1],
        [ -0.922473,    3, 1, 1],
        [-0.0503562,    7, 1, 1],
        [  0.822098,  2.2, 2, 1],
        [ -0.277727,  4.3, 2, 1],
        [  0.358172,  2.7, 3, 1],
        [-0.0126426,  1.2, 4, 1],
        [-0.0060701, 1.23, 7, 1],
        [-0.0815653,   12, 2, 2],
        [-0.0233323,    6, 3, 2],
        [ 0.0352952,  8.5, 4, 2],
        [ 0.0159566, 11.5, 4, 2],
        [ 0.0755927,   13, 2, 3],
        [-0.0542007,   17, 3, 3],
        [ 0.0170451, 16.2, 5, 3],
      ],
    },
  ],
  ideal: {
    a1: 9.93523802324716,
    a2: 7.99848056329701,
    logTau: -1,
    // n, t
    // biome-ignore format: kept as a table
    power: [
      [-21.6054, -0.25],
    ],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [0.95006, 1.05886],
      [ 4.1887, 2.37081],
      [ 5.5184, 5.14305],
    ],
  },
  // n, t
  // biome-ignore format: kept as a table
  bubble: [
    [-7.4853,   1],
    [ 2.0115, 1.5],
    [-2.0141, 2.2],
    [-3.7763, 4.6],
  ],
  // n, t
  // biome-ignore format: kept as a table
  dew: [
    [-7.5459,   1],
    [  2.338, 1.5],
    [ -2.237, 2.1],
    [-4.1535, 4.7],
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
