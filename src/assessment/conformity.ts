// Pass, fail, or cannot tell? The decision rule for a measured value against its limits.
// Follows JCGM 106:2012, clauses 7 and 8, with guard bands (ISO 14253-1:2017 uses the same idea).
// Does not cover shared risk (simple acceptance), which passes half of what lies on the limit.

import { askOneOf, numberOf, objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { DifferenceOf, Kind } from "../quantity/kinds.ts";
import { isAtLeast, isAtMost, noiseAt } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Outcome } from "./assessment.ts";
import { normalProbability, normalQuantile } from "./statistics.ts";

/**
 * A measured value, its uncertainty and the limits that it should keep.
 *
 * Source: JCGM 106:2012, 3.3.
 */
export interface ConformityInput<K extends Kind> {
  /** The measured value. */
  readonly value: Quantity<K>;
  /** Its standard uncertainty (k = 1), 0 or more. */
  readonly standardUncertainty: Quantity<DifferenceOf<K>>;
  /** Smallest value that conforms. */
  readonly lowerLimit?: Quantity<K> | undefined;
  /** Largest value that conforms. */
  readonly upperLimit?: Quantity<K> | undefined;
  /** How sure a pass or a fail has to be, 0.5 to below 1; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/**
 * What the decision rule says.
 *
 * Source: JCGM 106:2012, 7.2 and 8.3.
 */
export interface Conformity {
  /** `pass` inside the guarded limits, `fail` beyond them, `inconclusive` within a guard band. */
  readonly outcome: Outcome;
  /** Probability that the true value keeps the limits, 0 to 1. */
  readonly conformanceProbability: number;
}

/**
 * Judges a measured value against limits with guard bands: it passes only when the limit is kept even
 * after allowing for the uncertainty, it fails only when it is broken even so, and otherwise the
 * evidence cannot tell. Each guard band is k·u with the one-sided coverage factor of the confidence,
 * 1.645 for 95 %.
 *
 * A value equal to its limit keeps it, also when the two were entered in different units: the noise of binary
 * arithmetic, 1e-11 of the value and 1e-10 of its unit, does not decide.
 *
 * @param input - Value, uncertainty, one or two limits, confidence.
 * @returns The outcome and the probability that the limits are kept.
 * @throws {@link InvalidInputError} when no limit is given, the limits cross, the uncertainty is
 * negative, the confidence is outside 0.5 to 1, or a kind does not fit.
 *
 * Source: JCGM 106:2012, 7.3 (conformance probability), 8.3.2 (guarded acceptance), 8.3.3 (guarded
 * rejection).
 *
 * @example
 * ```ts
 * import { conformity } from "hvac-install-math/assessment";
 * import { kPa, kPaa } from "hvac-install-math/quantity";
 *
 * const result = conformity({
 *   value: kPaa(509.7),
 *   standardUncertainty: kPa(8.6),
 *   lowerLimit: kPaa(490),
 * });
 * result.outcome; // => pass
 * result.conformanceProbability.toFixed(3); // => 0.989
 * ```
 */
export function conformity<K extends Kind>(input: ConformityInput<K>): Conformity {
  const {
    value,
    standardUncertainty,
    lowerLimit,
    upperLimit,
    confidence = 0.95,
  } = objectOf("input", input);
  const y = siOf("value", value, value?.kind);
  const { kind } = value;
  const u = siOf("standardUncertainty", standardUncertainty, value.unit.difference.kind, {
    min: 0,
  });
  const low = lowerLimit !== undefined ? siOf("lowerLimit", lowerLimit, kind) : -Infinity;
  const high = upperLimit !== undefined ? siOf("upperLimit", upperLimit, kind) : Infinity;
  if (low === -Infinity && high === Infinity) {
    askOneOf("lowerLimit, upperLimit", "nothing", ["lowerLimit", "upperLimit"]);
  }
  if (lowerLimit !== undefined) siOf("lowerLimit", lowerLimit, kind, { max: high });
  const k = normalQuantile(numberOf("confidence", confidence, { min: 0.5, below: 1 }));
  const guard = k * u;
  const { scale } = value.unit;
  if (guard <= noiseAt(y, low > -Infinity ? low : high, scale)) {
    const keeps = isAtLeast(y, low, scale) && isAtMost(y, high, scale);
    return frozen({ outcome: keeps ? "pass" : "fail", conformanceProbability: Number(keeps) });
  }
  const outcome =
    y >= low + guard && y <= high - guard
      ? "pass"
      : y < low - guard || y > high + guard
        ? "fail"
        : "inconclusive";
  return frozen({ outcome, conformanceProbability: probabilityInside(y, u, low, high) });
}

/** JCGM 106:2012, eq. 7: Φ((T_U − y)/u) − Φ((T_L − y)/u). */
function probabilityInside(y: number, u: number, low: number, high: number): number {
  const below = (limit: number) => {
    const z = (limit - y) / u;
    return z === Infinity ? 1 : z === -Infinity ? 0 : normalProbability(z);
  };
  return Math.max(0, below(high) - below(low));
}
