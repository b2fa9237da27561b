// How sure are we? Standard uncertainty of an instrument and its way through a formula.
// Follows JCGM 100:2008 (GUM), 4.3, 5.1 and 5.2. Does not cover strongly non-linear models, for which
// JCGM 101:2008 propagates distributions.

import {
  anyKindOf,
  askOneOf,
  describe,
  listOf,
  numberOf,
  objectOf,
  refuse,
  requireUnit,
  siOf,
  textOf,
} from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import type { DifferenceOf, Kind } from "../quantity/kinds.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";

/**
 * What is known of an instrument, all as differences of the kind that it reads.
 *
 * Source: JCGM 100:2008, 4.3.7 (limits) and F.2.2.1 (resolution).
 */
export interface Instrument<K extends Kind> {
  /** Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution. */
  readonly accuracy?: Quantity<DifferenceOf<K>> | undefined;
  /** Smallest step that the display shows. */
  readonly resolution?: Quantity<DifferenceOf<K>> | undefined;
  /** Standard deviation of repeated readings of the same thing. */
  readonly repeatability?: Quantity<DifferenceOf<K>> | undefined;
}

/**
 * An instrument whose limits of error have a part that grows with the reading: "±(2 % + 5 counts)" is
 * `{ accuracyOfReading: percent(2), accuracy: ampere(0.5), resolution: ampere(0.1) }` on a 0.1 A display.
 *
 * Source: JCGM 100:2008, 4.3.7.
 */
export interface Meter<K extends Kind> extends Instrument<K> {
  /** Limits of error that grow with the reading, ±; added to `accuracy`. */
  readonly accuracyOfReading?: Quantity<"ratio"> | undefined;
}

/** What a meter's limits of error are at one reading: both parts add, and are one rectangle. JCGM 100:2008, 4.3.7. */
export function meterAt<K extends Kind>(meter: Meter<K>, reading: Quantity<K>): Instrument<K> {
  const { accuracyOfReading, accuracy } = meter;
  if (accuracyOfReading === undefined) return meter;
  const most = { min: 0, max: 0.2 };
  const gain = siOf("meter.accuracyOfReading", accuracyOfReading, "ratio", most);
  const limits = (accuracy?.si ?? 0) + gain * reading.si;
  return { ...meter, accuracy: new Quantity(limits, reading.unit.difference) };
}

/**
 * Standard uncertainty of one reading: accuracy limits a as a/√3, display step r as r/√12, and the
 * standard deviation of repeated readings, added as squares.
 *
 * @param instrument - At least one of `accuracy`, `resolution`, `repeatability`, each 0 or more.
 * @param unit - Unit of the answer.
 * @param argument - How an error names the instrument, such as `instruments.pressure`; `instrument` when
 * left out.
 * @returns The standard uncertainty (k = 1).
 * @throws {@link InvalidInputError} when nothing is given, something is negative or of another kind.
 *
 * Source: JCGM 100:2008, 4.3.7, F.2.2.1 and 5.1.2.
 *
 * @example
 * ```ts
 * import { standardUncertainty } from "hvac-install-math/assessment";
 * import { psi } from "hvac-install-math/quantity";
 *
 * standardUncertainty({ accuracy: psi(1), resolution: psi(0.5) }, psi).toString(psi, 3); // => 0.595 psi
 * ```
 */
export function standardUncertainty<K extends Kind>(
  instrument: Instrument<K>,
  unit: Unit<DifferenceOf<K>>,
  argument = "instrument",
): Quantity<DifferenceOf<K>> {
  objectOf(argument, instrument);
  requireUnit("unit", unit, anyKindOf(unit));
  const parts = [
    ["accuracy", 3],
    ["resolution", 12],
    ["repeatability", 1],
  ] as const;
  textOf("argument", argument);
  const squares = parts.flatMap(([name, divisor]) => {
    const part = instrument[name];
    if (part === undefined) return [];
    return siOf(`${argument}.${name}`, part, unit.kind, { min: 0 }) ** 2 / divisor;
  });
  if (squares.length === 0) {
    askOneOf(argument, "nothing", ["accuracy", "resolution", "repeatability"]);
  }
  return new Quantity(Math.sqrt(squares.reduce((sum, square) => sum + square)), unit);
}

/**
 * An input of a formula with its standard uncertainty, as plain numbers in coherent units.
 *
 * Source: JCGM 100:2008, 4.1.
 */
export interface UncertainInput {
  /** Best estimate. */
  readonly value: number;
  /** Standard uncertainty (k = 1), 0 or more. */
  readonly uncertainty: number;
}

/** Inputs of one formula: each costs two calls of it. Source: the library's own limit. */
const mostInputs = 1000;

/**
 * How strongly two inputs err together: positions of both in the list and the correlation, −1 to 1.
 *
 * Source: JCGM 100:2008, 5.2.2.
 */
export type Correlation = readonly [first: number, second: number, coefficient: number];

/**
 * Sends uncertainties through a formula, to first order: each input is moved by ± its uncertainty and
 * half the change of the answer is that input's share.
 *
 * @param formula - A function of the inputs' values; called 1 + 2n times.
 * @param inputs - The inputs with their standard uncertainties, at most 1000.
 * @param correlations - Pairs that err together, such as two readings of one gauge; none when left out.
 * @returns The answer and its combined standard uncertainty.
 * @throws {@link InvalidInputError} when an uncertainty is negative, a correlation is outside −1 to 1,
 * names a pair twice or contradicts the others, or the formula does not give a finite number.
 *
 * Source: JCGM 100:2008, 5.1.3 note 2 (numerical sensitivities), eq. 10 and eq. 16 (correlated inputs).
 *
 * @example
 * ```ts
 * import { propagate } from "hvac-install-math/assessment";
 *
 * const area = propagate(([width = 0, height = 0]) => width * height, [
 *   { value: 3, uncertainty: 0.03 },
 *   { value: 4, uncertainty: 0.04 },
 * ]);
 * area.uncertainty.toFixed(4); // => 0.1697
 * ```
 */
export function propagate(
  formula: (values: readonly number[]) => number,
  inputs: readonly UncertainInput[],
  correlations: readonly Correlation[] = [],
): UncertainInput {
  if (typeof formula !== "function") {
    refuse("formula", formula, "a function");
  }
  const values = listOf("inputs", inputs, mostInputs).map((input, i) =>
    numberOf(`inputs[${i}].value`, input?.value),
  );
  const value = numberOf("formula", formula(values));
  const shares = inputs.map((input, i) => {
    const u = numberOf(`inputs[${i}].uncertainty`, input.uncertainty, { min: 0 });
    const moved = (by: number) => formula(values.map((v, j) => (i === j ? v + by : v)));
    return (numberOf("formula", moved(u)) - numberOf("formula", moved(-u))) / 2;
  });
  const independent = shares.reduce((sum, share) => sum + share * share, 0); // eq. 10
  let variance = independent;
  const pairs = new Set<string>();
  listOf("correlations", correlations, mostInputs ** 2).forEach((correlation, i) => {
    const [first, second, coefficient] = listOf(`correlations[${i}]`, correlation) as Correlation;
    const r = numberOf(`correlations[${i}]`, coefficient, { min: -1, max: 1 });
    variance += 2 * r * shareAt(shares, first, i) * shareAt(shares, second, i); // eq. 16
    const pair = [first, second].sort().join();
    if (first === second || pairs.has(pair)) {
      throw new InvalidInputError({
        argument: `correlations[${i}]`,
        value: `the pair ${pair}`,
        allowed: "each pair of two different inputs once",
      });
    }
    pairs.add(pair);
  });
  if (variance < -1e-12 * independent) {
    throw new InvalidInputError({
      argument: "correlations",
      value: "a set that gives a variance below 0",
      allowed: "coefficients that can hold at the same time",
    });
  }
  return frozen({ value, uncertainty: Math.sqrt(Math.max(0, variance)) });
}

function shareAt(shares: readonly number[], position: number, correlation: number): number {
  const share = Number.isInteger(position) ? shares[position] : undefined;
  if (share !== undefined) return share;
  throw new InvalidInputError({
    argument: `correlations[${correlation}]`,
    value: describe(position),
    allowed: `a position from 0 to ${shares.length - 1}`,
  });
}
