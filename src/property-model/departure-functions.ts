// What does a pair of fluids do that its members do not? Departure functions of the mixture model.
// Follows the papers named with each; form of Lemmon and Jacobsen (2004), eq. 15, and Kunz and Wagner (2012).
// Does not cover pairs without a fitted function: they mix by their reducing parameters alone.
import type { ResidualBlock } from "./residual-terms.ts";

/** Departure function GeneralizedAlkane. Source: Kunz O., Wagner W. (2012), doi:10.1021/je300655b. */
export const generalizedAlkane: readonly ResidualBlock[] = [
  {
    type: "gerg",
    // n, t, d, eta, epsilon, beta, gamma
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [    2.5574776844118,    1, 1, 0, 0, 0, 0],
      [   -7.9846357136353, 1.55, 1, 0, 0, 0, 0],
      [    4.7859131465806,  1.7, 1, 0, 0, 0, 0],
      [  -0.73265392369587, 0.25, 2, 0, 0, 0, 0],
      [    1.3805471345312, 1.35, 2, 0, 0, 0, 0],
      [   0.28349603476365,    0, 3, 0, 0, 0, 0],
      [  -0.49087385940425, 1.25, 3, 0, 0, 0, 0],
      [  -0.10291888921447,    0, 4, 0, 0, 0, 0],
      [   0.11836314681968,  0.7, 4, 0, 0, 0, 0],
      [5.5527385721943e-05,  5.4, 4, 0, 0, 0, 0],
    ],
  },
];

/** Departure function GeneralizedHFC. Source: Lemmon E.W., Jacobsen R.T (2004), doi:10.1063/1.1649997. */
export const generalizedHfc: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [ -0.013073,  7.4,  1, 1],
      [  0.018259, 0.35,  3, 1],
      [8.1299e-06,   10, 11, 2],
      [ 0.0078496,  5.3,  2, 3],
    ],
  },
];

/** Departure function R1234yf-R1234ze(E). Source: Bell I.H. (2022), doi:10.1063/5.0086060. */
export const r1234yfR1234zeE: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [  0.07264, 0.012645, 1, 1],
      [-0.024746, 3.992829, 2, 2],
    ],
  },
];

/** Departure function R1234yf-R134a. Source: Bell I.H. (2022), doi:10.1063/5.0086060. */
export const r1234yfR134a: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [   0.0519, 2.477314, 1, 1],
      [-0.011472, 0.070541, 2, 2],
    ],
  },
];

/** Departure function R1234yf-R152a. Source: Bell I.H. (2023), doi:10.1063/5.0135368. */
export const r1234yfR152a: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [ 0.009165, 3.221227, 1, 1],
      [ 0.014392, 1.007082, 2, 1],
      [-0.014246, 3.790953, 3, 1],
    ],
  },
];

/** Departure function R1234ze(E)-R227ea. Source: Bell I.H. (2023), doi:10.1063/5.0135368. */
export const r1234zeER227ea: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [-0.057178, 1.290298, 1, 1],
      [ 0.031318, 0.038796, 2, 1],
      [-0.027496, 2.640532, 3, 1],
    ],
  },
];

/** Departure function R125-R1234yf. Source: Bell I.H. (2023), doi:10.1063/5.0135368. */
export const r125R1234yf: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [-0.032013, 0.00803, 1, 1],
    ],
  },
];

/** Departure function R134a-R1234ze(E). Source: Bell I.H. (2022), doi:10.1063/5.0086060. */
export const r134aR1234zeE: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [ 0.068889, 3.184446, 1, 1],
      [-0.004831, 2.034344, 2, 2],
    ],
  },
];

/** Departure function R32-R1234yf. Source: Bell I.H. (2023), doi:10.1063/5.0135368. */
export const r32R1234yf: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [ 0.449487, 2.538296, 1, 1],
      [-0.099708, 3.208604, 2, 1],
      [ 0.098897, 0.456509, 3, 1],
    ],
  },
];

/** Departure function R32-R1234ze(E). Source: Bell I.H. (2023), doi:10.1063/5.0135368. */
export const r32R1234zeE: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [ 0.295192, 0.500457, 1, 1],
      [-0.737904, 3.104735, 2, 1],
      [ 0.542962,  3.20172, 3, 1],
      [-0.201951, 2.567118, 4, 1],
    ],
  },
];

/** Departure function R32-R125. Source: Lemmon E.W., Jacobsen R.T (2004), doi:10.1063/1.1649997. */
export const r32R125: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [-0.0072955,  4.5, 2, 1],
      [  0.078035, 0.57, 5, 1],
      [   0.61007,  1.9, 1, 2],
      [   0.64246,  1.2, 3, 2],
      [  0.014965,  0.5, 9, 2],
      [  -0.34049,  2.6, 2, 3],
      [  0.085658, 11.4, 3, 3],
      [ -0.064429,  4.5, 6, 3],
    ],
  },
];

/** Departure function R32-R134a. Source: Lemmon E.W., Jacobsen R.T (2004), doi:10.1063/1.1649997. */
export const r32R134a: readonly ResidualBlock[] = [
  {
    type: "exponential",
    // n, t, d, c
    // biome-ignore format: kept as a table, to be held beside the paper
    terms: [
      [   0.22909,  1.9, 1, 1],
      [  0.094074, 0.25, 3, 1],
      [0.00039876, 0.07, 8, 1],
      [  0.021113,    2, 1, 2],
    ],
  },
];
