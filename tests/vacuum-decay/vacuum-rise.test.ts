// The rise that a leak of a pressure test makes in a vacuum, by the viscous law: Q ∝ (p₁² − p₂²)/η, leak-testing handbooks.
import { liter, paM3PerS, pascalAbsolute, standardAtmosphere } from "hvac-install-math/quantity";
import { vacuumRiseOfLeak } from "hvac-install-math/vacuum-decay";
import { expect, it } from "vitest";

it.each([2, 3, 10])(
  "falls to 1/(n² − 1) of what %d atmospheres drive outward, of air for nitrogen",
  (n) => {
    const rise = vacuumRiseOfLeak({
      leak: paM3PerS(1e-3),
      testPressure: pascalAbsolute(n * 101_325),
      atmosphere: standardAtmosphere,
      volume: liter(2),
    });
    // 1e-3 Pa·m³/s in 2 L are 0.5 Pa/s; 17.57 µPa·s of nitrogen and 18.2 µPa·s of air at 20 °C
    expect(rise.si).toBeCloseTo((0.5 * (17.57 / 18.2)) / (n ** 2 - 1), 9);
  },
);
