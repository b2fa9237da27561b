// R-125, pentafluoroethane: coefficients of the equation of state.
// Follows Lemmon E.W., Jacobsen R.T (2005), doi:10.1063/1.1797813.
// Does not cover temperatures outside 172.52 K (triple point) to 500 K, nor pressures above 60 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * Pentafluoroethane (R-125, CHF2CF3).
 *
 * Source: Lemmon E.W., Jacobsen R.T (2005), J. Phys. Chem. Ref. Data 34:69-108, doi:10.1063/1.1797813;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R125: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R125",
  designation: "R-125",
  molarMass: 0.1200214, // kg/mol
  gasConstant: 8.314472, // J/(mol K), as in the paper
  critical: { temperature: 339.173, pressure: 3617700, density: 4779 }, // K, Pa, mol/m3
  reducing: { temperature: 339.173, density: 4779 }, // K, mol/m3
  limits: { minTemperature: 172.52, maxTemperature: 500, maxPressure: 60000000 }, // K, Pa
  saturationLimit: 339.177282456105, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [   5.28076, 0.669, 1],
        [  -8.67658,  1.05, 1],
        [ 0.7501127,  2.75, 1],
        [ 0.7590023, 0.956, 2],
        [0.01451899,     1, 4],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [   4.777189,    2, 1, 1],
        [  -3.330988, 2.75, 1, 1],
        [   3.775673, 2.38, 2, 1],
        [  -2.290919, 3.37, 2, 1],
        [  0.8888268, 3.47, 3, 1],
        [ -0.6234864, 2.63, 4, 1],
        [-0.04127263, 3.45, 5, 1],
        [-0.08455389, 0.72, 1, 2],
        [ -0.1308752, 4.23, 5, 2],
        [0.008344962,  0.2, 1, 3],
      ],
    },
    {
      type: "exponentialDeltaTau",
      // n, t, d, c, m
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [  -1.532005, 4.5, 2, 2, 1.7],
        [-0.05883649,  29, 3, 3,   7],
        [ 0.02296658,  24, 5, 3,   6],
      ],
    },
  ],
  ideal: {
    a1: 37.2674,
    a2: 8.88404,
    logTau: -1,
    // n, t
    // biome-ignore format: kept as a table
    power: [
      [-49.8651, -0.1],
    ],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      // biome-ignore lint/suspicious/noApproximativeNumericConstant: a fitted number
      [2.303, 0.92578],
      [5.086, 2.22895],
      [  7.3, 5.03283],
    ],
  },
  start: {
    temperature: 339.173, // K
    density: 4779, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [ 2.20160161012182, 0.356],
      [ 9.66884730895765, 2.347],
      [-38.7409252962579, 3.224],
      [ 45.9018509595541,  4.03],
      [-68.7747102916736, 7.525],
      [ 3782.01267614069, 16.03],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-2.03014082675552,  0.352],
      [ -1.7694859385413,  0.604],
      [-2.66520428063493,  1.327],
      [-2012.38029282603,  9.866],
      [  4435.1668195985, 10.986],
      [-67300.5672048697, 18.158],
    ],
  },
  literature: {
    authors: "Lemmon E.W., Jacobsen R.T",
    year: 2005,
    title:
      "A New Functional Form and New Fitting Techniques for Equations of State with Application to Pentafluoroethane (HFC-125)",
    journal: "J. Phys. Chem. Ref. Data 34:69-108",
    doi: "10.1063/1.1797813",
  },
});
