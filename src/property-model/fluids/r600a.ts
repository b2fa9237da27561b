// R-600a, 2-methylpropane (isobutane): coefficients of the equation of state.
// Follows Buecker D., Wagner W. (2006), doi:10.1063/1.1901687.
// Does not cover temperatures outside 113.73 K (triple point) to 575 K, nor pressures above 35 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * 2-methylpropane (isobutane) (R-600a, CH(CH3)3).
 *
 * Source: Buecker D., Wagner W. (2006), J. Phys. Chem. Ref. Data 35:929-1019, doi:10.1063/1.1901687;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R600a: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R600a",
  designation: "R-600a",
  molarMass: 0.0581222, // kg/mol
  gasConstant: 8.314472, // J/(mol K), as in the paper
  critical: { temperature: 407.817, pressure: 3629000, density: 3879.75678828 }, // K, Pa, mol/m3
  reducing: { temperature: 407.81, density: 3879.75678828 }, // K, mol/m3
  limits: { minTemperature: 113.73, maxTemperature: 575, maxPressure: 35000000 }, // K, Pa
  saturationLimit: 407.810000000005, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  2.0686820727966,  0.5, 1],
        [ -3.6400098615204,    1, 1],
        [ 0.51968754427244,  1.5, 1],
        [ 0.17745845870123,    0, 2],
        [-0.12361807851599,  0.5, 3],
        [0.045145314010528,  0.5, 4],
        [ 0.03047647996598, 0.75, 4],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [   0.75508387706302,   2,  1, 1],
        [  -0.85885381015629, 2.5,  1, 1],
        [  0.036324009830684, 2.5,  2, 1],
        [  -0.01954879945055, 1.5,  7, 1],
        [ -0.004445239290496,   1,  8, 1],
        [  0.004641076366646, 1.5,  8, 1],
        [ -0.071444097992825,   4,  1, 2],
        [ -0.080765060030713,   7,  2, 2],
        [   0.15560460945053,   3,  3, 2],
        [ 0.0020318752160332,   7,  3, 2],
        [  -0.10624883571689,   3,  4, 2],
        [  0.039807690546305,   1,  5, 2],
        [  0.016371431292386,   6,  5, 2],
        [0.00053212200682628,   0, 10, 2],
        [-0.0078681561156387,   6,  2, 3],
        [-0.0030981191888963,  13,  6, 3],
      ],
    },
    {
      type: "gaussian",
      // n, t, d, eta, epsilon, beta, gamma
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [ -0.042276036810382, 2, 1, 10, 0.85, 150, 1.16],
        [-0.0053001044558079, 0, 2, 10,    1, 200, 1.13],
      ],
    },
  ],
  ideal: {
    a1: -5.9995093886994,
    a2: 5.0189458104439,
    logTau: 3.05956619,
    power: [],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [4.94641014, 0.951277902],
      [4.09475197, 2.387895885],
      [15.6632824, 4.346904269],
      [9.73918122, 10.36885864],
    ],
  },
  start: {
    temperature: 407.817, // K
    density: 3879.75678828399, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [ 2.04181472241885,  0.356],
      [0.436392289397443,  0.824],
      // biome-ignore lint/suspicious/noApproximativeNumericConstant: a fitted number
      [  1.9152614245212,  3.142],
      [ -2.1807762762122,  3.696],
      [ 1.06866485036236,  6.863],
      [-6.81624793817493, 18.441],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-2.86568555593863,   0.37],
      [ 0.73304581892872,  0.502],
      [-4.25461328867513,  1.021],
      [ 2.99562351802265,  2.003],
      [-5.67164141755825,  3.403],
      [0.143610225681339, 10.717],
    ],
  },
  literature: {
    authors: "Buecker D., Wagner W.",
    year: 2006,
    title:
      "Reference Equations of State for the Thermodynamic Properties of Fluid Phase n-Butane and Isobutane",
    journal: "J. Phys. Chem. Ref. Data 35:929-1019",
    doi: "10.1063/1.1901687",
  },
});
