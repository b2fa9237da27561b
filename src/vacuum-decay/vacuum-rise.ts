// Would this leak show in a vacuum? The rise that a leak of a pressure test makes in an isolated vacuum.
// Follows the viscous law of leak-testing handbooks, Q ∝ (p1² − p2²)/η. Does not cover molecular leaks, which
// fall less, nor leaks that only open under pressure.
import { objectOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { micronPerMinute, pascalPerSecond } from "../quantity/units/pressure.ts";

const etaNitrogen = 17.57e-6; // Pa·s at 20 °C, from the reference equation of state
const etaAir = 18.2e-6; // Pa·s at 20 °C, vacuum handbooks

/**
 * How fast an isolated vacuum rises through a leak that is known from a nitrogen pressure test. A leak of
 * 1 psi a day at 500 psig raises the vacuum by a third of a micron in ten minutes: no vacuum gauge shows
 * it. This is why a vacuum decay does not replace the pressure test.
 *
 * @param input - Leak as `throughput` of nitrogen at the (absolute) test pressure, atmosphere, volume.
 * @returns The `pressureRate`, in micron/min; order of magnitude.
 * @throws {@link InvalidInputError} when the test pressure is not above the atmosphere or a value is not above 0.
 *
 * Cautions: an order of magnitude; a real leak has several paths and need not obey the viscous law.
 *
 * Source: leak-testing handbooks (viscous law).
 *
 * @example
 * ```ts
 * import { liter, micronPerMinute, paM3PerS, psig, standardAtmosphere, toAbsolute } from "hvac-install-math/quantity";
 * import { vacuumRiseOfLeak } from "hvac-install-math/vacuum-decay";
 *
 * const rise = vacuumRiseOfLeak({
 *   leak: paM3PerS(1.596e-4),
 *   testPressure: toAbsolute(psig(500), standardAtmosphere),
 *   atmosphere: standardAtmosphere,
 *   volume: liter(2),
 * });
 * rise.toString(micronPerMinute, 4); // => 0.0283 micron/min
 * ```
 */
export function vacuumRiseOfLeak(input: {
  readonly leak: Quantity<"throughput">;
  readonly testPressure: Quantity<"absolutePressure">;
  readonly atmosphere: Quantity<"absolutePressure">;
  readonly volume: Quantity<"volume">;
}): Quantity<"pressureRate"> {
  const { leak, testPressure, atmosphere, volume } = objectOf("input", input);
  const pa = siOf("atmosphere", atmosphere, "absolutePressure", { above: 0 });
  const p = siOf("testPressure", testPressure, "absolutePressure", { above: pa });
  const Q = siOf("leak", leak, "throughput", { above: 0 });
  const V = siOf("volume", volume, "volume", { above: 0 });
  const inVacuum = (Q * (etaNitrogen / etaAir) * pa ** 2) / (p ** 2 - pa ** 2);
  return pascalPerSecond(inVacuum / V).as(micronPerMinute);
}
