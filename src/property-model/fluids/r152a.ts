// R-152a, 1,1-difluoroethane: coefficients of the equation of state.
// Follows Outcalt S.L., McLinden M.O. (1996), doi:10.1063/1.555979.
// Does not cover temperatures outside 154.56 K (triple point) to 500 K, nor pressures above 58 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * 1,1-difluoroethane (R-152a, CH3CHF2).
 *
 * Published as a 32-term MBWR equation; given here in the equivalent Helmholtz form, whose terms with
 * d = 0 cancel in the limit of zero density.
 *
 * Source: Outcalt S.L., McLinden M.O. (1996), J. Phys. Chem. Ref. Data 25:605-636, doi:10.1063/1.555979;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R152a: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R152a",
  designation: "R-152a",
  molarMass: 0.066051, // kg/mol
  gasConstant: 8.314471, // J/(mol K), as in the paper
  critical: { temperature: 386.411, pressure: 4520000, density: 5571.45236257 }, // K, Pa, mol/m3
  reducing: { temperature: 386.411, density: 5571.45 }, // K, mol/m3
  limits: { minTemperature: 154.56, maxTemperature: 500, maxPressure: 58000000 }, // K, Pa
  saturationLimit: 386.410997777211, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    -3.54657950018517,   3, 0],
        [   -0.364631279956363,   4, 0],
        [   0.0333233330611281,   5, 0],
        [   -0.680968433830186,   0, 1],
        [     7.35212648102803, 0.5, 1],
        [    -11.2473063780571,   1, 1],
        [     5.49916714297658,   2, 1],
        [    -2.40186327021366,   3, 1],
        [  -0.0709036446439474,   0, 2],
        [    -0.21320088682137,   1, 2],
        [    0.197839736732846,   2, 2],
        [     1.82494769826598,   3, 2],
        [   -0.086054647670446,   0, 3],
        [      0.8881373668542,   1, 3],
        [   -0.966127347140777,   2, 3],
        [  -0.0985223478529555,   1, 4],
        [   0.0183419368634183,   2, 5],
        [  -0.0338550204068823,   3, 5],
        [   0.0124921100857805,   2, 6],
        [ -0.00221056707103771,   2, 7],
        [  0.00216879133277942,   3, 7],
        [-0.000233597690470269,   3, 8],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    3.54657950018517, 3,  0, 2],
        [   0.364631279956363, 4,  0, 2],
        [ -0.0333233330611281, 5,  0, 2],
        [    2.76133830401687, 3,  2, 2],
        [ -0.0691185710236728, 4,  2, 2],
        [ -0.0333233330611281, 5,  2, 2],
        [   0.782761326856154, 3,  4, 2],
        [ -0.0345592855118364, 4,  4, 2],
        [   0.137813532066887, 5,  4, 2],
        [   0.186173125815216, 3,  6, 2],
        [ -0.0341119392899272, 4,  6, 2],
        [  0.0459378440222956, 5,  6, 2],
        [  0.0216470012706059, 3,  8, 2],
        [-0.00852798482248179, 4,  8, 2],
        [ 0.00620394039717185, 5,  8, 2],
        [ 0.00185210291148746, 3, 10, 2],
        [ 0.00101674662708817, 4, 10, 2],
        [ 0.00124078807943437, 5, 10, 2],
      ],
    },
  ],
  ideal: {
    a1: -7.95050677162796,
    a2: 6.87007865654072,
    logTau: 2.354951,
    // n, t
    // biome-ignore format: kept as a table
    power: [
      [ -2.12265049999983, -1],
      [-0.622541333332824, -2],
      [ 0.134021166666437, -3],
    ],
    planckEinstein: [],
  },
  start: {
    temperature: 386.411, // K
    density: 5571.45236256832, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [0.276361636999504,  0.091],
      [ 2.51276463353483,  0.499],
      [ 162.808651281114, 16.122],
      [ 345.167605178491, 16.122],
      [-475.595368025309,  19.05],
      [-1773.74547340262, 19.528],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-24.0562994253568, 0.162],
      [ 24.5999131415499, 0.168],
      [-10.7465203766869, 0.621],
      [ 5.86362610412505, 0.787],
      [-3.70632750455897, 2.442],
      [-4.90496235948709, 7.345],
    ],
  },
  literature: {
    authors: "Outcalt S.L., McLinden M.O.",
    year: 1996,
    title:
      "A Modified Benedict-Webb-Rubin Equation of State for the Thermodynamic Properties of R152a (1,1-difluoroethane)",
    journal: "J. Phys. Chem. Ref. Data 25:605-636",
    doi: "10.1063/1.555979",
  },
});
