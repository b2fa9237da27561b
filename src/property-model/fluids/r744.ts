// R-744, carbon dioxide: coefficients of the equation of state.
// Follows Span R., Wagner W. (1996), doi:10.1063/1.555991.
// Does not cover temperatures outside 216.592 K (triple point) to 2000 K, nor pressures above 800 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * Carbon dioxide (R-744, CO2).
 *
 * Source: Span R., Wagner W. (1996), J. Phys. Chem. Ref. Data 25:1509-1596, doi:10.1063/1.555991;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R744: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R744",
  designation: "R-744",
  molarMass: 0.0440098, // kg/mol
  gasConstant: 8.31451, // J/(mol K), as in the paper
  critical: { temperature: 304.1282, pressure: 7377300, density: 10624.9063 }, // K, Pa, mol/m3
  reducing: { temperature: 304.1282, density: 10624.9063 }, // K, mol/m3
  limits: { minTemperature: 216.592, maxTemperature: 2000, maxPressure: 800000000 }, // K, Pa
  saturationLimit: 304.128200002981, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [ 0.388568232032,    0, 1],
        [  2.93854759427, 0.75, 1],
        [  -5.5867188535,    1, 1],
        [-0.767531995925,    2, 1],
        [ 0.317290055804, 0.75, 2],
        [ 0.548033158978,    2, 2],
        [ 0.122794112203, 0.75, 3],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [     2.16589615432, 1.5,  1, 1],
        [     1.58417351097, 1.5,  2, 1],
        [   -0.231327054055, 2.5,  4, 1],
        [   0.0581169164314,   0,  5, 1],
        [   -0.553691372054, 1.5,  5, 1],
        [    0.489466159094,   2,  5, 1],
        [  -0.0242757398435,   0,  6, 1],
        [   0.0624947905017,   1,  6, 1],
        [   -0.121758602252,   2,  6, 1],
        [   -0.370556852701,   3,  1, 2],
        [  -0.0167758797004,   6,  1, 2],
        [    -0.11960736638,   3,  4, 2],
        [  -0.0456193625088,   6,  4, 2],
        [   0.0356127892703,   8,  4, 2],
        [ -0.00744277271321,   6,  7, 2],
        [ -0.00173957049024,   0,  8, 2],
        [  -0.0218101212895,   7,  2, 3],
        [   0.0243321665592,  12,  3, 3],
        [  -0.0374401334235,  16,  3, 3],
        [    0.143387157569,  22,  5, 4],
        [   -0.134919690833,  24,  5, 4],
        [  -0.0231512250535,  16,  6, 4],
        [   0.0123631254929,  24,  7, 4],
        [  0.00210583219729,   8,  8, 4],
        [-0.000339585190264,   2, 10, 4],
        [  0.00559936517716,  28,  4, 5],
        [-0.000303351180556,  14,  8, 6],
      ],
    },
    {
      type: "gaussian",
      // n, t, d, eta, epsilon, beta, gamma
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [-213.654886883, 1, 2, 25, 1, 325, 1.16],
        [ 26641.5691493, 0, 2, 25, 1, 300, 1.19],
        [-24027.2122046, 1, 2, 25, 1, 300, 1.19],
        [ -283.41603424, 3, 3, 15, 1, 275, 1.25],
        [ 212.472844002, 3, 3, 20, 1, 275, 1.22],
      ],
    },
    {
      type: "nonAnalytic",
      // n, a, b, beta, A, B, C, D
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [-0.666422765408, 3.5, 0.875, 0.3, 0.7, 0.3,   10, 275],
        [ 0.726086323499, 3.5, 0.925, 0.3, 0.7, 0.3,   10, 275],
        [0.0550686686128,   3, 0.875, 0.3, 0.7,   1, 12.5, 275],
      ],
    },
  ],
  ideal: {
    a1: -6.1248710624319,
    a2: 5.11559631801453,
    logTau: 2.5,
    power: [],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [1.99427042,  3.15163],
      [0.62105248,   6.1119],
      [0.41195293,  6.77708],
      [1.04028922, 11.32384],
      [0.08327678, 27.08792],
    ],
  },
  start: {
    temperature: 304.1282, // K
    density: 10624.9063, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [0.861951794789174, 0.264],
      [ 5.53579509871957, 0.672],
      [-21.7663737646054, 0.986],
      [ 20.0141699927833, 1.092],
      [-2.22186472207869, 1.714],
      [ 888.238784851986, 9.902],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-1.16355878115695, 0.306],
      [-3.64216164754343, 0.569],
      [ 2.77731180757132, 0.677],
      [-3.25738484946245, 0.891],
      [-1.97391046825089, 3.206],
      [-16.0573199946591, 6.093],
    ],
  },
  literature: {
    authors: "Span R., Wagner W.",
    year: 1996,
    title:
      "A New Equation of State for Carbon Dioxide Covering the Fluid Region from the Triple Point Temperature to 1100 K at Pressures up to 800 MPa",
    journal: "J. Phys. Chem. Ref. Data 25:1509-1596",
    doi: "10.1063/1.555991",
  },
});
