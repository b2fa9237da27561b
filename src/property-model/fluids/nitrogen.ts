// R-728, nitrogen: coefficients of the equation of state.
// Follows Span R., Lemmon E.W., Jacobsen R.T, Wagner W., Yokozeki A. (2000), doi:10.1063/1.1349047.
// Does not cover temperatures outside 63.151 K (triple point) to 2000 K, nor pressures above 2200 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * Nitrogen (R-728, N2).
 *
 * Source: Span R., Lemmon E.W., Jacobsen R.T, Wagner W., Yokozeki A. (2000), J. Phys. Chem. Ref. Data 29:1361-1433, doi:10.1063/1.1349047;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const nitrogen: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "nitrogen",
  designation: "R-728",
  molarMass: 0.02801348, // kg/mol
  gasConstant: 8.31451, // J/(mol K), as in the paper
  critical: { temperature: 126.192, pressure: 3395800, density: 11183.9014646 }, // K, Pa, mol/m3
  reducing: { temperature: 126.192, density: 11183.9014646 }, // K, mol/m3
  limits: { minTemperature: 63.151, maxTemperature: 2000, maxPressure: 2200000000 }, // K, Pa
  saturationLimit: 126.191999999586, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  0.924803575275,  0.25, 1],
        [ -0.492448489428, 0.875, 1],
        [  0.661883336938,   0.5, 2],
        [  -1.92902649201, 0.875, 2],
        [-0.0622469309629, 0.375, 3],
        [  0.349943957581,  0.75, 3],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    0.564857472498,  0.5, 1, 1],
        [    -1.61720005987, 0.75, 1, 1],
        [   -0.481395031883,    2, 1, 1],
        [    0.421150636384, 1.25, 3, 1],
        [  -0.0161962230825,  3.5, 3, 1],
        [    0.172100994165,    1, 4, 1],
        [  0.00735448924933,  0.5, 6, 1],
        [   0.0168077305479,    3, 6, 1],
        [ -0.00107626664179,    0, 7, 1],
        [  -0.0137318088513, 2.75, 7, 1],
        [ 0.000635466899859, 0.75, 8, 1],
        [  0.00304432279419,  2.5, 8, 1],
        [  -0.0435762336045,    4, 1, 2],
        [  -0.0723174889316,    6, 2, 2],
        [   0.0389644315272,    6, 3, 2],
        [   -0.021220136391,    3, 4, 2],
        [  0.00408822981509,    3, 5, 2],
        [-5.51990017984e-05,    6, 8, 2],
        [  -0.0462016716479,   16, 4, 3],
        [ -0.00300311716011,   11, 5, 3],
        [   0.0368825891208,   15, 5, 3],
        [  -0.0025585684622,   12, 8, 3],
        [  0.00896915264558,   12, 3, 4],
        [  -0.0044151337035,    7, 5, 4],
        [  0.00133722924858,    4, 6, 4],
        [ 0.000264832491957,   16, 9, 4],
      ],
    },
    {
      type: "gaussian",
      // n, t, d, eta, epsilon, beta, gamma
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  19.6688194015, 0, 1, 20, 1, 325, 1.16],
        [  -20.911560073, 1, 1, 20, 1, 325, 1.16],
        [0.0167788306989, 2, 3, 15, 1, 300, 1.13],
        [  2627.67566274, 3, 2, 25, 1, 275, 1.25],
      ],
    },
  ],
  ideal: {
    a1: -12.76952708,
    a2: -0.00784163,
    logTau: 2.5,
    // n, t
    // biome-ignore format: kept as a table
    power: [
      [-0.0001934819, -1],
      [-1.247742e-05, -2],
      [ 6.678326e-08, -3],
    ],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [1.012941, 26.6578784709015],
    ],
  },
  start: {
    temperature: 126.192, // K
    density: 11183.9014645806, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [  3.42378827560401, 0.396],
      [ -2.96646730749577, 0.549],
      [  12.0959261193414, 1.037],
      [ -13.6818230507846, 1.209],
      [  4.19110684294756, 1.682],
      [-0.624139600865529, 2.819],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-2.41238765316514, 0.369],
      [ 1.25359635726015, 0.556],
      [-6.37530021253501, 0.878],
      [ 3.25710672829122, 1.049],
      [-3.26364567926574, 4.174],
      [ 1.26734479050583, 6.303],
    ],
  },
  literature: {
    authors: "Span R., Lemmon E.W., Jacobsen R.T, Wagner W., Yokozeki A.",
    year: 2000,
    title:
      "A Reference Equation of State for the Thermodynamic Properties of Nitrogen for Temperatures from 63.151 to 1000 K and Pressures to 2200 MPa",
    journal: "J. Phys. Chem. Ref. Data 29:1361-1433",
    doi: "10.1063/1.1349047",
  },
});
