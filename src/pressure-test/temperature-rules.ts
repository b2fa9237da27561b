// How wrong are the printed rules for temperature? A comparison, not a method.
// Follows UFGS 15182 and 15217N and makers' manuals for the rules, Span et al. (2000) for the truth.
// Does not cover use of the rules: they fail tight systems that cool and hide leaks that warm.

import { type Citation, cite } from "../assessment/assessment.ts";
import { objectOf, requireKind } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import { expected } from "./drop.ts";
import { absoluteSi, atmosphereSi, temperatureSi } from "./reading.ts";

/** Names of the printed rules. Source: see {@link compareTemperatureRules}. */
export type TemperatureRule =
  | "ideal gas, absolute pressure"
  | "ideal gas, gauge pressure"
  | "0.3 psi per °F"
  | "2 kPa per °C"
  | "0.01 MPa per °C"
  | "no correction";

/** What a rule says beside the truth. */
export interface RuleComparison {
  /** The rule. */
  readonly rule: TemperatureRule;
  /** What it expects at the later temperature. */
  readonly expected: Quantity<"gaugePressure">;
  /** Its expectation less that of real nitrogen: positive makes a tight system look leaking, negative hides a leak. */
  readonly error: Quantity<"pressureDifference">;
  /** Where it is printed. */
  readonly source: Citation;
}

/**
 * What the printed rules for temperature expect, and how far each is off real nitrogen. For comparison
 * only: on cooling the per-degree rules predict too small a drop (a tight system fails), on warming too
 * small a rise (a leak hides).
 *
 * @param change - `pressure` (`gaugePressure`, up to 6 MPa absolute), `temperature` and
 * `laterTemperature` (−40 °C to 70 °C), `atmosphere`.
 * @returns One row per rule.
 * @throws {@link OutOfRangeError} beyond the range of the nitrogen equation.
 * @throws {@link InvalidInputError} when a value is missing or of another kind.
 *
 * Source: UFGS 15217N, 3.2.6.4 (ideal gas); UFGS 15182 and 15652A (0.3 psi per °F, also printed as 2 kPa
 * per °C); makers' manuals (0.01 MPa per °C); Span et al. (2000).
 *
 * @example
 * ```ts
 * import { compareTemperatureRules } from "hvac-install-math/pressure-test";
 * import { degF, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const rows = compareTemperatureRules({
 *   pressure: psig(500),
 *   temperature: degF(95),
 *   laterTemperature: degF(65),
 *   atmosphere: standardAtmosphere,
 * });
 * rows.map(({ error }) => error.toString(psi, 1)).join(", "); // => 2.1 psi, 2.9 psi, 21.0 psi, 25.1 psi, 5.8 psi, 30.0 psi
 * ```
 */
export function compareTemperatureRules(change: {
  readonly pressure: Quantity<"gaugePressure">;
  readonly temperature: Quantity<"temperature">;
  readonly laterTemperature: Quantity<"temperature">;
  readonly atmosphere: Quantity<"absolutePressure">;
}): RuleComparison[] {
  const { pressure } = objectOf("change", change);
  const air = atmosphereSi("atmosphere", change.atmosphere);
  requireKind("pressure", pressure, "gaugePressure");
  const p1 = absoluteSi("pressure", pressure, air);
  const T1 = temperatureSi("temperature", change.temperature);
  const T2 = temperatureSi("laterTemperature", change.laterTemperature);
  const real = expected({ p1, T1: [T1], p2: 0, T2: [T2], volumes: [], beta: 0 }) - air;
  const gauge = p1 - air;
  const psi = (0.45359237 * 9.80665) / 0.0254 ** 2;
  const rules: [TemperatureRule, number, Citation][] = [
    ["ideal gas, absolute pressure", (p1 * T2) / T1 - air, cite("ufgs-15217n", "3.2.6.4")],
    ["ideal gas, gauge pressure", (gauge * T2) / T1, cite("common-practice")],
    ["0.3 psi per °F", gauge + 0.3 * psi * 1.8 * (T2 - T1), cite("ufgs-15182")],
    ["2 kPa per °C", gauge + 2e3 * (T2 - T1), cite("ufgs-15182")],
    ["0.01 MPa per °C", gauge + 1e4 * (T2 - T1), cite("manufacturer-manuals")],
    ["no correction", gauge, cite("common-practice")],
  ];
  const { unit } = pressure;
  return frozen(
    rules.map(([rule, value, source]) => ({
      rule,
      expected: new Quantity(value, unit),
      error: new Quantity(value - real, unit.difference),
      source,
    })),
  );
}
