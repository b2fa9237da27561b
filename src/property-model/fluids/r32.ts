// R-32, difluoromethane: coefficients of the equation of state.
// Follows Tillner-Roth R., Yokozeki A. (1997), doi:10.1063/1.556002.
// Does not cover temperatures outside 136.34 K (triple point) to 435 K, nor pressures above 70 MPa.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { PureFluid } from "../fluid.ts";

/**
 * Difluoromethane (R-32, CH2F2).
 *
 * Source: Tillner-Roth R., Yokozeki A. (1997), J. Phys. Chem. Ref. Data 26:1273-1328, doi:10.1063/1.556002;
 * coefficients transcribed in CoolProp (MIT license), whose density regressions are the start values.
 */
export const R32: PureFluid = /* @__PURE__ */ frozenInPlace({
  kind: "pure",
  id: "R32",
  designation: "R-32",
  molarMass: 0.052024, // kg/mol
  gasConstant: 8.314471, // J/(mol K), as in the paper
  critical: { temperature: 351.255, pressure: 5782000, density: 8150.0846 }, // K, Pa, mol/m3
  reducing: { temperature: 351.255, density: 8150.0846 }, // K, mol/m3
  limits: { minTemperature: 136.34, maxTemperature: 435, maxPressure: 70000000 }, // K, Pa
  saturationLimit: 351.255000449432, // K
  residual: [
    {
      type: "polynomial",
      // n, t, d
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [    1.046634,  0.25, 1],
        [  -0.5451165,     1, 2],
        [-0.002448595, -0.25, 5],
        [ -0.04877002,    -1, 1],
        [  0.03520158,     2, 1],
        [  0.00162275,     2, 3],
        [2.377225e-05,  0.75, 8],
        [    0.029149,  0.25, 4],
      ],
    },
    {
      type: "exponential",
      // n, t, d, c
      // biome-ignore format: kept as a table, to be held beside the paper
      terms: [
        [ 0.003386203,   18, 4, 4],
        [-0.004202444,   26, 4, 3],
        [0.0004782025,   -1, 8, 1],
        [-0.005504323,   25, 3, 4],
        [ -0.02418396, 1.75, 5, 1],
        [   0.4209034,    4, 1, 2],
        [  -0.4616537,    5, 1, 2],
        [   -1.200513,    1, 3, 1],
        [    -2.59155,  1.5, 1, 1],
        [   -1.400145,    1, 2, 1],
        [   0.8263017,  0.5, 3, 1],
      ],
    },
  ],
  ideal: {
    a1: -8.258096,
    a2: 6.353098,
    logTau: 3.004486,
    power: [],
    // n, theta
    // biome-ignore format: kept as a table
    planckEinstein: [
      [1.160761, 2.2718538],
      [2.645151, 11.914421],
      [5.794987, 5.1415638],
      [1.129475, 32.768217],
    ],
  },
  start: {
    temperature: 351.255, // K
    density: 8150.0846, // mol/m3
    vaporOverT: true,
    // n, t
    // biome-ignore format: kept as a table
    liquid: [
      [ 3.02833685572271,  0.358],
      [-13.3075479356812,  0.676],
      [ 53.9703577354824,  0.831],
      [-41.1051508878459,   0.88],
      [0.641001085562982,  2.592],
      [-18.7576524439186, 16.556],
    ],
    // n, t
    // biome-ignore format: kept as a table
    vapor: [
      [-0.0652252285257717,  0.069],
      [  -3.35776436986075,  0.425],
      [  -2.74629971806184,   1.18],
      [  -64.7728901365766,  8.115],
      [   511.334928685585,  12.06],
      [  -1525.31526536616, 16.085],
    ],
  },
  literature: {
    authors: "Tillner-Roth R., Yokozeki A.",
    year: 1997,
    title:
      "An international standard equation of state for difluoromethane (R-32) for temperatures from the triple point at 136.34 K to 435 K and pressures up to 70 MPa",
    journal: "J. Phys. Chem. Ref. Data 26:1273-1328",
    doi: "10.1063/1.556002",
  },
});
