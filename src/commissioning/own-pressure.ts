// Was the test at least as high as what the refrigerant itself will press on the tubing? A doubt, never a limit.
// Follows the saturation pressure of the refrigerants; that a lower test proves too little is common practice, no source.
// Does not cover refrigerants that are not known, or above their critical temperature.
import { type Reason, statement } from "../assessment/assessment.ts";
import type { TestReading } from "../pressure-test/index.ts";
import { toGauge } from "../quantity/atmosphere.ts";
import { isInvalidInputError } from "../quantity/errors.ts";
import { Quantity } from "../quantity/quantity.ts";
import { degF } from "../quantity/units/temperature.ts";
import { bubblePressure, type Refrigerant } from "../refrigerants/index.ts";
import { atmosphereOf, refrigerantOf } from "./job.ts";
import type { InstallationRecord } from "./record.ts";

/** Least temperature that a system is designed for: ANSI/ASHRAE 15, 9.2.1, low side; from memory. */
const warm: Quantity<"temperature"> = /* @__PURE__ */ degF(80);

/** The first reading below what the refrigerant at rest has at the same temperature, or at 80 °F where that is more. */
export function belowOwnPressure(
  record: InstallationRecord,
  readings: readonly TestReading[],
  gauge: readonly Quantity<"gaugePressure">[],
): Reason | undefined {
  const refrigerant = knownRefrigerant(record);
  if (!refrigerant) return undefined;
  const { min, max } = refrigerant.range;
  for (const [i, pressure] of gauge.entries()) {
    const { temperature: zones, atmosphere } = readings[i] as TestReading;
    // At rest the coldest part sets the pressure; a cold day says nothing of a warm one.
    const [coldest] = [zones].flat().sort((a, b) => a.si - b.si);
    const temperature = coldest && coldest.si < warm.si ? warm : coldest;
    if (!temperature || temperature.si < min.si || temperature.si > max.si) continue;
    const own = toGauge(
      bubblePressure(refrigerant, temperature),
      atmosphere ?? atmosphereOf(record),
    );
    if (pressure.si >= own.si) continue;
    const text =
      "Tested at {pressure}, below the {own} that {refrigerant} has at rest at {temperature}: no test of what the tubing will carry. See the manual's figure again.";
    const shown = new Quantity(Number(own.si.toPrecision(4)), pressure.unit);
    const { designation } = refrigerant;
    const values = { pressure, own: shown, refrigerant: designation, temperature };
    return statement("test-below-own-pressure", text, values);
  }
  return undefined;
}

function knownRefrigerant(record: InstallationRecord): Refrigerant | undefined {
  try {
    return refrigerantOf(record);
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    return undefined;
  }
}
