// R-22, chlorodifluoromethane: coefficients of the equation of state.
// Follows Kamei A., Beyerlein S.W., Jacobsen R.T (1995), doi:10.1007/BF02081283.
// Does not cover temperatures outside 115.73 K (triple point) to 550 K, nor pressures above 60 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * Chlorodifluoromethane (R-22, CHClF2).
 *
 * Source: Kamei A., Beyerlein S.W., Jacobsen R.T (1995), Int. J. Thermophys. 16:1155-1164, doi:10.1007/BF02081283;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R22: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R22",
  designation: "R-22",
  molarMass: 0.086468, // kg/mol
  gasConstant: 8.31451, // J/(mol K), as in the paper
  critical: { temperature: 369.295, pressure: 4990000, density: 6058.22 }, // K, Pa, mol/m3
  reducing: { temperature: 369.295, density: 6058.22 }, // K, mol/m3
  limits: { minTemperature: 115.73, maxTemperature: 550, maxPressure: 60000000 }, // K, Pa
  saturationLimit: 369.295000008027, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [   0.0695645445236,   -1, 1],
        [     25.2275419999, 1.75, 1],
        [    -202.351148311, 2.25, 1],
        [     350.063090302,  2.5, 1],
        [    -223.134648863, 2.75, 1],
        [     48.8345904592,    3, 1],
        [   0.0108874958556,  5.5, 1],
        [    0.590315073614,  1.5, 2],
        [   -0.689043767432, 1.75, 2],
        [    0.284224445844,  3.5, 2],
        [    0.125436457897,    1, 3],
        [  -0.0113338666416,  4.5, 3],
        [   -0.063138895917,  1.5, 4],
        [  0.00974021015232,  0.5, 5],
        [-0.000408406844722,  4.5, 6],
        [  0.00074194877357,    1, 7],
        [ 0.000315912525922,    4, 7],
        [ 8.76009723338e-06,    5, 7],
        [-0.000110343340301, -0.5, 8],
        [-7.05323356879e-05,  3.5, 8],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [     0.23585073151,   5, 2, 2],
        [   -0.192640494729,   7, 2, 2],
        [  0.00375218008557,  12, 2, 2],
        [-4.48926036678e-05,  15, 2, 2],
        [   0.0198120520635, 3.5, 3, 3],
        [  -0.0356958425255, 3.5, 4, 2],
        [   0.0319594161562,   8, 4, 2],
        [ 2.60284291078e-06,  15, 4, 2],
        [ -0.00897629021967,  25, 4, 4],
        [   0.0345482791645,   3, 6, 2],
        [ -0.00411831711251,   9, 6, 2],
        [  0.00567428536529,  19, 6, 4],
        [ -0.00563368989908,   2, 8, 2],
        [  0.00191384919423,   7, 8, 2],
        [ -0.00178930036389,  13, 8, 4],
      ],
    },
  ],
  ideal: {
    a1: -11.8534209226286,
    a2: 8.08689498210687,
    logTau: 3.00526140446,
    // n, t
    // biome-ignore format: kept as a table
    power: [
      [-0.0222800387550675, -1],
    ],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [1, 11.7854547177731],
      [1, 5.24014432905942],
      [1, 5.11157573213826],
      [1, 4.58950930827658],
      [1, 4.34795618678834],
      [1, 3.14798261552417],
      [1, 2.32202678075793],
      [1, 1.64022361526693],
      [1, 1.43763067466389],
    ],
  },
  start: {
    temperature: 369.295, // K
    density: 6058.22, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [  1.8541944393759,  0.351],
      [0.582563184349943,  0.588],
      [ 3.17407365602252,  3.365],
      [-10.1174734436569,  5.022],
      [ 12.0210239524755,  6.849],
      [-39.8199785471683, 16.221],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-1.78991917999566, 0.343],
      [-1.33218388915202, 0.528],
      [-2.56266540312763, 1.104],
      [ -5.6750215901719, 4.839],
      [0.605987969574722, 7.214],
      [ 3.49923590142311, 11.11],
    ],
  },
  literature: {
    authors: "Kamei A., Beyerlein S.W., Jacobsen R.T",
    year: 1995,
    title:
      "Application of Nonlinear Regression in the Development of a Wide Range Formulation for HCFC-22",
    journal: "Int. J. Thermophys. 16:1155-1164",
    doi: "10.1007/BF02081283",
  },
});
