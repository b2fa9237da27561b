// R-143a, 1,1,1-trifluoroethane: coefficients of the equation of state.
// Follows Lemmon E.W., Jacobsen R.T (2000), doi:10.1063/1.1318909.
// Does not cover temperatures outside 161.34 K (triple point) to 650 K, nor pressures above 150 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * 1,1,1-trifluoroethane (R-143a, CH3CF3).
 *
 * Source: Lemmon E.W., Jacobsen R.T (2000), J. Phys. Chem. Ref. Data 29:521-552, doi:10.1063/1.1318909;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R143a: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R143a",
  designation: "R-143a",
  molarMass: 0.084041, // kg/mol
  gasConstant: 8.314472, // J/(mol K), as in the paper
  critical: { temperature: 345.857, pressure: 3761000, density: 5128.45 }, // K, Pa, mol/m3
  reducing: { temperature: 345.857, density: 5128.45 }, // K, mol/m3
  limits: { minTemperature: 161.34, maxTemperature: 650, maxPressure: 150000000 }, // K, Pa
  saturationLimit: 345.857000867862, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [   7.7736443,  0.67, 1],
        [    -8.70185, 0.833, 1],
        [ -0.27779799,   1.7, 1],
        [   0.1460922,  1.82, 2],
        [0.0089581616,  0.35, 5],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [ -0.20552116,  3.9, 1, 1],
        [  0.10653258, 0.95, 3, 1],
        [ 0.023270816,    0, 5, 1],
        [-0.013247542, 1.19, 7, 1],
        [ -0.04279387,  7.2, 1, 2],
        [  0.36221685,  5.9, 2, 2],
        [ -0.25671899, 7.65, 2, 2],
        [-0.092326113,  7.5, 3, 2],
        [ 0.083774837, 7.45, 4, 2],
        [ 0.017128445, 15.5, 2, 3],
        [ -0.01725611,   22, 3, 3],
        [0.0049080492,   19, 5, 3],
      ],
    },
  ],
  ideal: {
    a1: 5.90304811943168,
    a2: 7.30725062149164,
    logTau: -1,
    // n, t
    // biome-ignore format: kept as a table
    power: [
      [-16.591049152079, -0.33],
    ],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [4.4402, 5.17844080067774],
      [3.7515, 2.37959619148955],
    ],
  },
  start: {
    temperature: 345.857, // K
    density: 5128.45, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [  2.66478095991992,  0.381],
      [-0.254772168947589,  0.463],
      [  97.8447490893873,  3.927],
      [ -105.130475740837,  4.049],
      [  13272.9420397973, 16.046],
      [ -116968.312299538,  19.95],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-6.21806993981039, 0.454],
      [ 4.25938169894919, 0.587],
      [-4.41781018199165, 1.058],
      [ 23.7023483031177, 3.611],
      [-50.9863250201334, 4.279],
      [ 29.1081437549216, 5.478],
    ],
  },
  literature: {
    authors: "Lemmon E.W., Jacobsen R.T",
    year: 2000,
    title:
      "An International Standard Formulation for the Thermodynamic Properties of 1,1,1-Trifluoroethane (HFC-143a) for Temperatures From 161 to 450 K and Pressures to 50 MPa",
    journal: "J. Phys. Chem. Ref. Data 29:521-552",
    doi: "10.1063/1.1318909",
  },
});
