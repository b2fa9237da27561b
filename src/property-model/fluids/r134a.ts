// R-134a, 1,1,1,2-tetrafluoroethane: coefficients of the equation of state.
// Follows Tillner-Roth R., Baehr H.D. (1994), doi:10.1063/1.555958.
// Does not cover temperatures outside 169.85 K (triple point) to 455 K, nor pressures above 70 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * 1,1,1,2-tetrafluoroethane (R-134a, CH2FCF3).
 *
 * Source: Tillner-Roth R., Baehr H.D. (1994), J. Phys. Chem. Ref. Data 23:657-729, doi:10.1063/1.555958;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R134a: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R134a",
  designation: "R-134a",
  molarMass: 0.102032, // kg/mol
  gasConstant: 8.314471, // J/(mol K), as in the paper
  critical: { temperature: 374.21, pressure: 4059280, density: 5017.053 }, // K, Pa, mol/m3
  reducing: { temperature: 374.18, density: 4978.830171 }, // K, mol/m3
  limits: { minTemperature: 169.85, maxTemperature: 455, maxPressure: 70000000 }, // K, Pa
  saturationLimit: 374.211966584951, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  0.05586817, -0.5, 2],
        [    0.498223,    0, 1],
        [  0.02458698,    0, 3],
        [0.0008570145,    0, 6],
        [0.0004788584,  1.5, 6],
        [   -1.800808,  1.5, 1],
        [   0.2671641,    2, 1],
        [ -0.04781652,    2, 2],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [   0.01423987,  1,  5, 1],
        [    0.3324062,  3,  2, 1],
        [ -0.007485907,  5,  2, 1],
        [ 0.0001017263,  1,  4, 2],
        [   -0.5184567,  5,  1, 2],
        [  -0.08692288,  5,  4, 2],
        [    0.2057144,  6,  1, 2],
        [ -0.005000457, 10,  2, 2],
        [ 0.0004603262, 10,  4, 2],
        [ -0.003497836, 10,  1, 3],
        [  0.006995038, 18,  5, 3],
        [  -0.01452184, 22,  3, 3],
        [-0.0001285458, 50, 10, 4],
      ],
    },
  ],
  ideal: {
    a1: -1.019535,
    a2: 9.047135,
    logTau: -1.629789,
    // n, t
    // biome-ignore format: kept as a table
    power: [
      [-9.723916,  -0.5],
      [ -3.92717, -0.75],
    ],
    planckEinstein: [],
  },
  start: {
    temperature: 374.21, // K
    density: 5017.053, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [   18.77273194093, 0.673],
      [-51.4993947217823, 0.994],
      [ 40.7935364405961, 1.257],
      [ -1481.6500471539, 5.783],
      [ 1600.53443429892, 5.943],
      [-67338.5242373256, 19.94],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-5.14738624076654,  0.476],
      [ 5.34618043286371,  0.966],
      [-7.61101527283843,  1.321],
      [-28.8543643278865,  8.491],
      [-9.07930606713075, 13.463],
      [               64, 13.463],
    ],
  },
  literature: {
    authors: "Tillner-Roth R., Baehr H.D.",
    year: 1994,
    title:
      "An International Standard Formulation for the Thermodynamic Properties of 1,1,1,2-Tetrafluoroethane (HFC-134a) for Temperatures from 170 K to 455 K and Pressures up to 70 MPa",
    journal: "J. Phys. Chem. Ref. Data 23:657-729",
    doi: "10.1063/1.555958",
  },
});
