// How rough is the flow? The Darcy friction factor of a round tube.
// Follows Hagen-Poiseuille, f = 64/Re, below Re = 2300, and Colebrook (1939) above, solved to the last
// digits. Does not cover two-phase flow and the critical zone: between 2300 and 4000, where flow may be
// either, the turbulent value is returned, which is the larger.
import { numberOf, objectOf } from "../quantity/check.ts";

/**
 * Reynolds number and roughness of a flow.
 *
 * Source: Colebrook (1939).
 */
export interface FlowCondition {
  /** Reynolds number, ρ·v·d/μ, more than 0, up to 1e9. */
  readonly reynolds: number;
  /** Roughness over inside diameter, 0 (smooth) to 0.05. */
  readonly relativeRoughness: number;
}

/**
 * Darcy friction factor of a round tube (four times Fanning's).
 *
 * @param condition - Reynolds number and relative roughness.
 * @returns The friction factor f in Δp = f·(L/d)·ρv²/2.
 * @throws {@link InvalidInputError} when a number is not finite or outside its range.
 *
 * Source: Colebrook (1939), doi:10.1680/ijoti.1939.13150, for turbulent flow; Hagen-Poiseuille for
 * laminar flow.
 *
 * @example
 * ```ts
 * import { frictionFactor } from "hvac-install-math/line-set";
 *
 * frictionFactor({ reynolds: 1e5, relativeRoughness: 0 }).toFixed(4); // => 0.0180
 * ```
 */
export function frictionFactor(condition: FlowCondition): number {
  const { reynolds, relativeRoughness } = objectOf("condition", condition);
  const Re = numberOf("reynolds", reynolds, { min: 1e-30, max: 1e9 });
  const rough = numberOf("relativeRoughness", relativeRoughness, { min: 0, max: 0.05 }) / 3.7;
  if (Re < 2300) return 64 / Re;
  // x = 1/√f by Colebrook. A step leaves less than a fifth of the error, 0.87/(x + rough·Re/2.51), from any
  // start: 30 of them leave nothing.
  let x = 8;
  for (let step = 0; step < 30; step++) x = -2 * Math.log10(rough + (2.51 * x) / Re);
  return 1 / x ** 2;
}
