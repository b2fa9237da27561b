// R-407C, blend treated as one fluid: coefficients of the equation of state.
// Follows Lemmon E.W. (2003), doi:10.1023/A:1025048800563.
// Does not cover temperatures outside 200 K (lower limit of the equation) to 500 K, nor pressures above 50 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PseudoPureFluid } from "../fluid.ts";

/**
 * R-407C as a pseudo-pure fluid.
 *
 * Two transcriptions of the published table disagree in the last exponential coefficient: −0.003615
 * (used here) against −0.00361575. Pressures are not affected; the saturated liquid density changes by
 * 1.3e-7 at 330 K, 4e-6 at 350 K and 1.5e-5 at 355 K (relative).
 *
 * Source: Lemmon E.W. (2003), Int. J. Thermophys. 24:991-1006, doi:10.1023/A:1025048800563;
 * coefficients transcribed in CoolProp (MIT license).
 */
export const R407C: PseudoPureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pseudo-pure",
  id: "R407C",
  designation: "R-407C",
  molarMass: 0.0862036, // kg/mol
  gasConstant: 8.314472, // J/(mol K), as in the paper
  critical: { temperature: 359.345, pressure: 4631700, density: 5260 }, // K, Pa, mol/m3
  reducing: { temperature: 359.345, density: 5260 }, // K, mol/m3
  limits: { minTemperature: 200, maxTemperature: 500, maxPressure: 50000000 }, // K, Pa
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    1.0588, 0.241, 1],
        [  -1.12018,  0.69, 1],
        [  0.629064,  2.58, 1],
        [ -0.351953,  1.15, 2],
        [0.00455978, 0.248, 5],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    -1.75725, 2.15, 1, 1],
        [    -1.12009, 2.43, 2, 1],
        [   0.0277353,  5.3, 2, 1],
        [    0.898881, 0.76, 3, 1],
        [    -1.17591, 1.48, 3, 1],
        [   0.0818591, 0.24, 5, 1],
        [  -0.0794097, 2.86, 5, 1],
        [-1.04047e-05,    8, 5, 1],
        [    0.233779,  3.3, 1, 2],
        [    -0.29179,  4.7, 1, 2],
        [   0.0154776, 0.45, 4, 2],
        [  -0.0314579,  8.4, 4, 2],
        [ -0.00442552, 16.2, 2, 3],
        [  -0.0101254,   26, 4, 3],
        [  0.00915953,   16, 5, 3],
        [   -0.003615,  8.7, 6, 3],
      ],
    },
  ],
  ideal: {
    a1: 2.13194,
    a2: 8.05008,
    logTau: -1,
    // n, t
    // biome-ignore format: kept as a table
    power: [
      [-14.3914, -0.4],
    ],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [1.4245, 2.40437],
      [3.9419, 5.25122],
      [3.1209, 13.3632],
    ],
  },
  // n, t
  // biome-ignore format: kept as a table
  bubble: [
    [0.48722,  0.54],
    [-6.6959, 0.925],
    [-1.4165,   2.7],
    [-2.5109,   4.7],
  ],
  // n, t
  // biome-ignore format: kept as a table
  dew: [
    [-0.086077,   0.4],
    [  -6.6364, 0.965],
    [  -2.4648,   3.1],
    [  -3.4776,     5],
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
