// R-290, propane: coefficients of the equation of state.
// Follows Lemmon E.W., McLinden M.O., Wagner W. (2009), doi:10.1021/je900217v.
// Does not cover temperatures outside 85.525 K (triple point) to 650 K, nor pressures above 1000 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * Propane (R-290, CH3CH2CH3).
 *
 * Source: Lemmon E.W., McLinden M.O., Wagner W. (2009), J. Chem. Eng. Data 54:3141-3180, doi:10.1021/je900217v;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R290: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R290",
  designation: "R-290",
  molarMass: 0.04409562, // kg/mol
  gasConstant: 8.314472, // J/(mol K), as in the paper
  critical: { temperature: 369.89, pressure: 4251200, density: 5000 }, // K, Pa, mol/m3
  reducing: { temperature: 369.89, density: 5000 }, // K, mol/m3
  limits: { minTemperature: 85.525, maxTemperature: 650, maxPressure: 1000000000 }, // K, Pa
  saturationLimit: 369.890008950963, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [0.042910051,    1, 4],
        [  1.7313671, 0.33, 1],
        [ -2.4516524,  0.8, 1],
        [ 0.34157466, 0.43, 2],
        [-0.46047898,  0.9, 2],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [-0.66847295, 2.46, 1, 1],
        [ 0.20889705, 2.09, 3, 1],
        [ 0.19421381, 0.88, 6, 1],
        [-0.22917851, 1.09, 6, 1],
        [-0.60405866, 3.25, 2, 2],
        [0.066680654, 4.62, 3, 2],
      ],
    },
    {
      type: "gaussian",
      // n, t, d, eta, epsilon, beta, gamma
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [ 0.017534618, 0.76, 1, 0.963,  1.283,  2.33, 0.684],
        [  0.33874242,  2.5, 1, 1.977, 0.6936,  3.47, 0.829],
        [  0.22228777, 2.75, 1, 1.917,  0.788,  3.15, 1.419],
        [ -0.23219062, 3.05, 2, 2.307,  0.473,  3.19, 0.817],
        [ -0.09220694, 2.55, 2, 2.546, 0.8577,  0.92,   1.5],
        [ -0.47575718,  8.4, 4,  3.28,  0.271,  18.8, 1.426],
        [-0.017486824, 6.75, 1,  14.6,  0.948, 547.8, 1.093],
      ],
    },
  ],
  ideal: {
    a1: -4.970583,
    a2: 4.29352,
    logTau: 3,
    power: [],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [3.043,  1.062478],
      [5.874,  3.344237],
      [9.337,  5.363757],
      [7.922, 11.762957],
    ],
  },
  start: {
    temperature: 369.89, // K
    density: 5000, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [ 2.10406805228043,  0.368],
      [0.337189241162209,  0.875],
      [0.440122381096425,  3.009],
      [-3.56790189892606,   9.51],
      [ 59.9388969706139, 15.381],
      [-70.9402469085883, 17.001],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [  -3.4013608451329,  0.431],
      [ -1.94436537953805,  1.339],
      [-0.410121145970953,  2.091],
      [ -15.5983742065442,  6.822],
      [  15.8448678061849,  8.214],
      [  -15.298907422332, 19.706],
    ],
  },
  literature: {
    authors: "Lemmon E.W., McLinden M.O., Wagner W.",
    year: 2009,
    title:
      "Thermodynamic Properties of Propane. III. A Reference Equation of State for Temperatures from the Melting Line to 650 K and Pressures up to 1000 MPa",
    journal: "J. Chem. Eng. Data 54:3141-3180",
    doi: "10.1021/je900217v",
  },
});
