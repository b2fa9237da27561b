// R-718, water: coefficients of the equation of state.
// Follows Wagner W., Pruss A. (2002), doi:10.1063/1.1461829.
// Does not cover temperatures outside 273.16 K (triple point) to 2000 K, nor pressures above 1000 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * Water (R-718, H2O).
 *
 * Source: Wagner W., Pruss A. (2002), J. Phys. Chem. Ref. Data 31:387-535, doi:10.1063/1.1461829;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const water: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "water",
  designation: "R-718",
  molarMass: 0.018015268, // kg/mol
  gasConstant: 8.314371357587, // J/(mol K), as in the paper
  critical: { temperature: 647.096, pressure: 22064000, density: 17873.7279956 }, // K, Pa, mol/m3
  reducing: { temperature: 647.096, density: 17873.7279956 }, // K, mol/m3
  limits: { minTemperature: 273.16, maxTemperature: 2000, maxPressure: 1000000000 }, // K, Pa
  saturationLimit: 647.095999999987, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  0.012533547935523,  -0.5, 1],
        [    7.8957634722828, 0.875, 1],
        [   -8.7803203303561,     1, 1],
        [   0.31802509345418,   0.5, 2],
        [  -0.26145533859358,  0.75, 2],
        [-0.0078199751687981, 0.375, 3],
        [ 0.0088089493102134,     1, 4],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [   -0.66856572307965,  4,  1, 1],
        [    0.20433810950965,  6,  1, 1],
        [-6.6212605039687e-05, 12,  1, 1],
        [   -0.19232721156002,  1,  2, 1],
        [   -0.25709043003438,  5,  2, 1],
        [    0.16074868486251,  4,  3, 1],
        [  -0.040092828925807,  2,  4, 1],
        [ 3.9343422603254e-07, 13,  4, 1],
        [-7.5941377088144e-06,  9,  5, 1],
        [ 0.00056250979351888,  3,  7, 1],
        [-1.5608652257135e-05,  4,  9, 1],
        [ 1.1537996422951e-09, 11, 10, 1],
        [ 3.6582165144204e-07,  4, 11, 1],
        [-1.3251180074668e-12, 13, 13, 1],
        [-6.2639586912454e-10,  1, 15, 1],
        [   -0.10793600908932,  7,  1, 2],
        [   0.017611491008752,  1,  2, 2],
        [    0.22132295167546,  9,  2, 2],
        [   -0.40247669763528, 10,  2, 2],
        [    0.58083399985759, 10,  3, 2],
        [  0.0049969146990806,  3,  4, 2],
        [  -0.031358700712549,  7,  4, 2],
        [   -0.74315929710341, 10,  4, 2],
        [     0.4780732991548, 10,  5, 2],
        [   0.020527940895948,  6,  6, 2],
        [   -0.13636435110343, 10,  6, 2],
        [   0.014180634400617, 10,  7, 2],
        [  0.0083326504880713,  1,  9, 2],
        [  -0.029052336009585,  2,  9, 2],
        [   0.038615085574206,  3,  9, 2],
        [  -0.020393486513704,  4,  9, 2],
        [ -0.0016554050063734,  8,  9, 2],
        [  0.0019955571979541,  6, 10, 2],
        [ 0.00015870308324157,  9, 10, 2],
        [ -1.638856834253e-05,  8, 12, 2],
        [   0.043613615723811, 16,  3, 3],
        [   0.034994005463765, 22,  4, 3],
        [  -0.076788197844621, 23,  4, 3],
        [   0.022446277332006, 23,  5, 3],
        [-6.2689710414685e-05, 10, 14, 4],
        [-5.5711118565645e-10, 50,  3, 6],
        [   -0.19905718354408, 44,  6, 6],
        [    0.31777497330738, 46,  6, 6],
        [   -0.11841182425981, 50,  6, 6],
      ],
    },
    {
      type: "gaussian",
      // n, t, d, eta, epsilon, beta, gamma
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [-31.306260323435, 0, 3, 20, 1, 150, 1.21],
        [ 31.546140237781, 1, 3, 20, 1, 150, 1.21],
        [-2521.3154341695, 4, 3, 20, 1, 250, 1.25],
      ],
    },
    {
      type: "nonAnalytic",
      // n, a, b, beta, A, B, C, D
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [-0.14874640856724, 3.5, 0.85, 0.3, 0.32, 0.2, 28, 700],
        [ 0.31806110878444, 3.5, 0.95, 0.3, 0.32, 0.2, 32, 800],
      ],
    },
  ],
  ideal: {
    a1: -8.3204464837497,
    a2: 6.6832105275932,
    logTau: 3.00632,
    power: [],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [0.012436, 1.28728967],
      [ 0.97315, 3.53734222],
      [  1.2795, 7.74073708],
      [ 0.96956, 9.24437796],
      [ 0.24873, 27.5075105],
    ],
  },
  start: {
    temperature: 647.096, // K
    density: 17873.7279956091, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [0.815702135501934,  0.276],
      [ 2.04347121770067,  0.455],
      [-78.5827837249631,  7.127],
      [ 1026.42739400703,  9.846],
      [-2290.56427793777, 11.707],
      [ 8420.14140821032, 17.805],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [0.979174933536579,   0.21],
      [-2.61906790427702,  0.262],
      [-3.91664437123652,  0.701],
      [-20.3133068216366,  3.909],
      [ 16.4975894900437,  4.076],
      [-125.365804584321, 17.459],
    ],
  },
  literature: {
    authors: "Wagner W., Pruss A.",
    year: 2002,
    title:
      "The IAPWS Formulation 1995 for the Thermodynamic Properties of Ordinary Water Substance for General and Scientific Use",
    journal: "J. Phys. Chem. Ref. Data 31:387-535",
    doi: "10.1063/1.1461829",
  },
});
