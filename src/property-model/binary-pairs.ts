// How do two fluids mix? Reducing parameters of every pair that the model knows.
// Follows Lemmon and Jacobsen (2004), Kunz and Wagner (2012), Bell and Lemmon (2016), Bell (2022, 2023, 2025).
// Does not cover pairs that are not in the table: a mixture with such a pair is refused.
import { frozen } from "../quantity/frozen.ts";
import * as departure from "./departure-functions.ts";
import type { Literature } from "./fluid.ts";
import * as literature from "./mixture-literature.ts";
import type { ResidualBlock } from "./residual-terms.ts";

/**
 * The parameters of one pair: reducing parameters in the form of Kunz and Wagner (2012), the departure
 * function and its weight F, and the paper.
 *
 * Source: see `literature`.
 */
export interface BinaryPair {
  /** Id of the first fluid. */
  readonly first: string;
  /** Id of the second fluid; with the two swapped, β becomes 1/β. */
  readonly second: string;
  /** Reducing parameters, published either as β and γ or as ξ (K) and ζ (m³/mol). */
  readonly reducing:
    | {
        readonly betaT: number;
        readonly gammaT: number;
        readonly betaV: number;
        readonly gammaV: number;
      }
    | { readonly xi: number; readonly zeta: number };
  /** Weight of the departure function. */
  readonly weight: number;
  /** Departure function; none where the pair has only reducing parameters. */
  readonly departure: readonly ResidualBlock[];
  /** Where the parameters were published. */
  readonly literature: Literature;
}

type BetaGammaRow = readonly [
  first: string,
  second: string,
  betaT: number,
  gammaT: number,
  betaV: number,
  gammaV: number,
  weight?: number,
  departure?: readonly ResidualBlock[],
];

type XiZetaRow = readonly [
  first: string,
  second: string,
  xi: number,
  zeta: number,
  weight: number,
  departure: readonly ResidualBlock[],
];

// Lemmon and Jacobsen (2004), table 4: ξ in K, ζ in m³/mol.
// biome-ignore format: kept as a table, to be held beside the paper
const lemmonJacobsen2004: readonly XiZetaRow[] = [
  // first, second, xi, zeta, F, departure function
  ["R32", "R125", 28.95, -6.008e-06, 1, departure.r32R125],
  ["R32", "R134a", 7.909, -2.039e-06, 1, departure.r32R134a],
  ["R125", "R134a", -0.4326, -3.453e-07, 1, departure.generalizedHfc],
  ["R125", "R143a", 5.551, -4.452e-07, 1.1697, departure.generalizedHfc],
  ["R134a", "R143a", 2.324, 6.182e-07, 0.5557, departure.generalizedHfc],
  ["R134a", "R152a", 4.202, 4.223e-06, 2, departure.generalizedHfc],
];

// Kunz O., Wagner W. (2012), doi:10.1021/je300655b.
// biome-ignore format: kept as a table, to be held beside the paper
const kunzWagner2012: readonly BetaGammaRow[] = [
  // first, second, betaT, gammaT, betaV, gammaV, F, departure function
  ["R744", "R290",  1.033620538, 0.908772477, 0.996898004, 1.047596298],
  ["R744", "R600a", 1.023339824, 0.929982936, 1.076551882, 1.081909003],
  ["R290", "R600a", 0.998012298, 1.005250774, 0.999243146, 1.001156119, -0.0551609771024, departure.generalizedAlkane],
];

// Bell I.H., Lemmon E.W. (2016), doi:10.1021/acs.jced.6b00257.
// biome-ignore format: kept as a table, to be held beside the paper
const bellLemmon2016: readonly BetaGammaRow[] = [
  // first, second, betaT, gammaT, betaV, gammaV, F, departure function
  ["R744",    "R125",   1.0115,  0.96741, 1, 1],
  ["R744",    "R134a",  1.01036, 1.01129, 1, 1],
  ["R744",    "R143a",  1.02027, 0.98474, 1, 1],
  ["R744",    "R152a",  1.00224, 1.00646, 1, 1],
  ["R744",    "R22",    1.00394, 1.01254, 1, 1],
  ["R744",    "R227ea", 1.00608, 1.00235, 1, 1],
  ["R744",    "R32",    1.00312, 0.99971, 1, 1],
  ["R290",    "R125",   1.00883, 0.89892, 1, 1],
  ["R290",    "R134a",  1.01148, 0.89674, 1, 1],
  ["R290",    "R143a",  1.00987, 0.91581, 1, 1],
  ["R290",    "R152a",  1.01223, 0.92009, 1, 1],
  ["R290",    "R227ea", 1.02125, 0.91449, 1, 1],
  ["R290",    "R32",    1.00067, 0.86421, 1, 1],
  ["R1234yf", "R143a",  1.00024, 0.99523, 1, 1],
  ["R1234yf", "R227ea", 0.99938, 0.99916, 1, 1],
  ["R125",    "R152a",  0.99429, 1.00282, 1, 1],
  ["R125",    "R227ea", 1.00101, 1.00302, 1, 1],
  ["R134a",   "R22",    0.99975, 0.99196, 1, 1],
  ["R134a",   "R227ea", 1.00135, 0.98915, 1, 1],
  ["R143a",   "R152a",  0.99955, 0.99038, 1, 1],
  ["R143a",   "R32",    0.99734, 0.97488, 1, 1],
  ["R152a",   "R22",    1.00239, 1.01169, 1, 1],
  ["R152a",   "R227ea", 1.0088,  0.99527, 1, 1],
  ["R152a",   "R32",    0.99966, 0.99709, 1, 1],
  ["R227ea",  "R32",    0.98611, 0.97064, 1, 1],
];

// Bell I.H. (2022), doi:10.1063/5.0086060.
// biome-ignore format: kept as a table, to be held beside the paper
const bell2022: readonly BetaGammaRow[] = [
  // first, second, betaT, gammaT, betaV, gammaV, F, departure function
  ["R1234yf", "R134a",    1.000026, 0.987057, 1.000272, 1.003747, 1, departure.r1234yfR134a],
  ["R1234yf", "R1234zeE", 0.998886, 0.999309, 0.999302, 0.99859,  1, departure.r1234yfR1234zeE],
  ["R134a",   "R1234zeE", 0.998593, 0.992009, 0.998995, 0.998621, 1, departure.r134aR1234zeE],
];

// Bell I.H. (2023), doi:10.1063/5.0135368.
// biome-ignore format: kept as a table, to be held beside the paper
const bell2023: readonly BetaGammaRow[] = [
  // first, second, betaT, gammaT, betaV, gammaV, F, departure function
  ["R32",      "R1234yf",  1.011011, 0.966965, 1.007852, 1.037663, 1, departure.r32R1234yf],
  ["R32",      "R1234zeE", 1.005148, 0.946105, 0.999032, 1.029821, 1, departure.r32R1234zeE],
  ["R125",     "R1234yf",  0.999969, 0.998028, 0.998226, 1.006068, 1, departure.r125R1234yf],
  ["R1234yf",  "R152a",    0.995987, 0.978058, 0.99971,  1.008608, 1, departure.r1234yfR152a],
  ["R1234zeE", "R227ea",   1.001247, 0.98918,  0.99929,  1.001581, 1, departure.r1234zeER227ea],
];

// Bell I.H. (2025), doi:10.1021/acs.jced.4c00699.
// biome-ignore format: kept as a table, to be held beside the paper
const bell2025: readonly BetaGammaRow[] = [
  // first, second, betaT, gammaT, betaV, gammaV, F, departure function
  ["R744",     "R1234yf",  1.025281, 0.972965, 1.051991, 1.029336],
  ["R744",     "R1234zeE", 1.008025, 0.973804, 1.142918, 1.076023],
  ["R1234zeE", "R600a",    0.975553, 0.921592, 1.169554, 1.076561],
  ["R290",     "R1234zeE", 1.01347,  0.932901, 0.997417, 1.014015],
  ["R152a",    "R1234zeE", 1.011543, 1.00236,  0.896336, 0.932409],
  ["R290",     "R1234yf",  1.006037, 0.937793, 1.013434, 1.013195],
  ["R125",     "R1234zeE", 0.994388, 1.00124,  1.028287, 0.999334],
  ["R143a",    "R1234zeE", 0.975352, 0.997695, 1.249976, 1.03652],
  ["R744",     "R1233zdE", 1,        1.029404, 1,        1],
  ["R290",     "R22",      1,        0.942193, 1,        1],
  ["R1234yf",  "R1233zdE", 1,        0.988723, 1,        1],
  ["R134a",    "R1233zdE", 1,        0.97102,  1,        1],
  ["R143a",    "R22",      1,        1.000486, 1,        1],
  ["R152a",    "R1233zdE", 1,        0.979525, 1,        1],
  ["R32",      "R22",      1,        0.993276, 1,        1],
];

function betaGamma(rows: readonly BetaGammaRow[], paper: Literature): readonly BinaryPair[] {
  return rows.map(
    ([first, second, betaT, gammaT, betaV, gammaV, weight = 0, terms = []]): BinaryPair => ({
      first,
      second,
      reducing: { betaT, gammaT, betaV, gammaV },
      weight,
      departure: terms,
      literature: paper,
    }),
  );
}

/** Every pair that the library knows. Source: see the `literature` of each pair. */
export const binaryPairs: readonly BinaryPair[] = /* @__PURE__ */ (() =>
  frozen([
    ...lemmonJacobsen2004.map(
      ([first, second, xi, zeta, weight, terms]): BinaryPair => ({
        first,
        second,
        reducing: { xi, zeta },
        weight,
        departure: terms,
        literature: literature.lemmonJacobsen2004,
      }),
    ),
    ...betaGamma(kunzWagner2012, literature.kunzWagner2012),
    ...betaGamma(bellLemmon2016, literature.bellLemmon2016),
    ...betaGamma(bell2022, literature.bell2022),
    ...betaGamma(bell2023, literature.bell2023),
    ...betaGamma(bell2025, literature.bell2025),
  ]))();
