// What does a nitrogen leak mean in grams of refrigerant a year?
// Follows the laminar and molecular laws of scale-leak.ts; mass by m = Q M/(R T).
// Does not cover liquid at the leak, which loses several times more mass, or choked flow.

import { type Caution, caution } from "../assessment/caution.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import { gPerYear } from "../quantity/units/mass.ts";
import { pascalAbsolute } from "../quantity/units/pressure.ts";
import { kelvin } from "../quantity/units/temperature.ts";
import { type LeakGas, nitrogen } from "./leak-gas.ts";
import type { RefrigerantEquivalent } from "./refrigerant-loss.ts";
import { gasOf, scaleLeak } from "./scale-leak.ts";
import type { PressureTestSetup } from "./setup.ts";
import { type PressureTestStatement, say } from "./statements.ts";
import { massFlowOfThroughput } from "./throughput.ts";
import type { PressureTestAssessment } from "./verdict.ts";

/**
 * The refrigerant that would leave through the leak that the nitrogen test found: an order of magnitude,
 * as a range between the laminar and the molecular law.
 *
 * @param leak - `nitrogenLeak` (`throughput`, 0 or more) at `testPressure` (`absolutePressure`), the
 * `refrigerant` (molar mass and viscosity of its vapor, such as `leakGas.R410A`) at its
 * `refrigerantPressure` in the machine (`absolutePressure`, such as the saturation pressure at rest), the
 * `outside` pressure (the atmosphere) and the `temperature` that the throughput refers to.
 * @returns Mass per year by both laws, and the range.
 * @throws {@link InvalidInputError} when a value is missing, of another kind or out of its range, or a
 * pressure is not above the one outside.
 *
 * Cautions: liquid refrigerant at the leak loses several times more mass; the result says so.
 *
 * Source: leak-testing handbooks of instrument makers for the laws; 40 CFR 1065.644 for the mass.
 *
 * @example
 * ```ts
 * import { leakGas, refrigerantEquivalent } from "hvac-install-math/pressure-test";
 * import { degC, MPaa, paM3PerS, psia, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const loss = refrigerantEquivalent({
 *   nitrogenLeak: paM3PerS(1.596e-4),
 *   testPressure: psia(514.7),
 *   refrigerant: leakGas.R410A,
 *   refrigerantPressure: MPaa(1.443),
 *   outside: standardAtmosphere,
 *   temperature: degC(20),
 * });
 * loss.low.toString(undefined, 0); // => 33 g/yr
 * loss.high.toString(undefined, 0); // => 36 g/yr
 * ```
 */
export function refrigerantEquivalent(leak: {
  readonly nitrogenLeak: Quantity<"throughput">;
  readonly testPressure: Quantity<"absolutePressure">;
  readonly refrigerant: LeakGas;
  readonly refrigerantPressure: Quantity<"absolutePressure">;
  readonly outside: Quantity<"absolutePressure">;
  readonly temperature: Quantity<"temperature">;
}): RefrigerantEquivalent {
  const { nitrogenLeak, testPressure, refrigerant, refrigerantPressure, outside, temperature } =
    objectOf("leak", leak);
  const above = siOf("outside", outside, "absolutePressure");
  siOf("testPressure", testPressure, "absolutePressure", { above });
  siOf("nitrogenLeak", nitrogenLeak, "throughput", { min: 0 });
  gasOf("refrigerant", refrigerant);
  siOf("refrigerantPressure", refrigerantPressure, "absolutePressure", { above });
  const scaled = scaleLeak({
    throughput: nitrogenLeak,
    from: { ...nitrogen, pressure: testPressure, outside },
    to: { ...refrigerant, pressure: refrigerantPressure, outside },
  });
  const { gramsPerMole } = refrigerant;
  const mass = (throughput: Quantity<"throughput">) =>
    massFlowOfThroughput({ throughput, temperature, gramsPerMole });
  const [viscous, molecular] = [mass(scaled.viscous), mass(scaled.molecular)];
  const [low, high] = viscous < molecular ? [viscous, molecular] : [molecular, viscous];
  return frozen({
    viscous,
    molecular,
    low: low.as(gPerYear),
    high: high.as(gPerYear),
    referenceTemperature: temperature,
    cautions: doubts,
  });
}

const doubts: readonly Caution<PressureTestStatement>[] = /* @__PURE__ */ (() => [
  caution("finding", say("pressure-test.order-of-magnitude")),
  caution("finding", say("pressure-test.liquid-leaks-more")),
])();

/** The two losses of a verdict; nothing when no refrigerant, volume or time was stated. */
export function refrigerantLoss(
  { refrigerant, atmosphere }: PressureTestSetup,
  { leakRate, correctedDrop, noLeakAbove }: PressureTestAssessment,
  testPressure: number,
  temperatures: readonly number[],
): Pick<PressureTestAssessment, "refrigerantLoss" | "refrigerantLossAtMost"> {
  if (refrigerant === undefined || leakRate === undefined) return {};
  const { gas, pressure } = objectOf("refrigerant", refrigerant);
  gasOf("refrigerant.gas", gas);
  siOf("refrigerant.pressure", pressure, "absolutePressure", { above: atmosphere.si });
  const perPascal = leakRate.value.si / correctedDrop.value.si || 0;
  const mean = temperatures.reduce((sum, T) => sum + T, 0) / temperatures.length;
  const of = (drop: number) =>
    refrigerantEquivalent({
      nitrogenLeak: paM3PerS(Math.max(0, drop) * perPascal),
      testPressure: pascalAbsolute(testPressure),
      refrigerant: gas,
      refrigerantPressure: pressure,
      outside: atmosphere,
      temperature: kelvin(mean),
    });
  return {
    refrigerantLoss: of(correctedDrop.value.si),
    refrigerantLossAtMost: of(noLeakAbove.si),
  };
}
