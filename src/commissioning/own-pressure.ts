// Was the test at least as high as what the refrigerant itself will press on the tubing? A doubt, never a limit.
// Follows the saturation pressure of the refrigerants; that a lower test proves too little is common practice, no source.
// Does not cover refrigerants that are not known, or above their critical temperature.
import type { Statement } from "../assessment/statement.ts";
import type { TestReading } from "../pressure-test/index.ts";
import { toGauge } from "../quantity/atmosphere.ts";
import { Quantity } from "../quantity/quantity.ts";
import { degF } from "../quantity/units/temperature.ts";
import { bubblePressure } from "../refrigerants/index.ts";
import { atmosphereOf, type Job } from "./job.ts";
import { type CommissioningStatements, say } from "./statements.ts";
import { verbatim } from "./words.ts";

type BelowRefrigerant = Statement<
  "commissioning.test-below-refrigerant",
  CommissioningStatements["commissioning.test-below-refrigerant"]
>;

/** Least temperature that a system is designed for: ANSI/ASHRAE 15, 9.2.1, low side; from memory. */
const warm: Quantity<"temperature"> = /* @__PURE__ */ degF(80);

/** The first reading below what the refrigerant at rest has at the same temperature, or at 80 °F where that is more. */
export function belowOwnPressure(
  job: Job,
  readings: readonly TestReading[],
  gauge: readonly Quantity<"gaugePressure">[],
): BelowRefrigerant | undefined {
  const { refrigerant } = job;
  if (!refrigerant) return undefined;
  const { min, max } = refrigerant.range;
  const atmosphere = atmosphereOf(job);
  // One saturation pressure per temperature: a log repeats the same few.
  const own = new Map<number, number>();
  for (const [i, pressure] of gauge.entries()) {
    const reading = readings[i] as TestReading;
    // At rest the coldest part sets the pressure; a cold day says nothing of a warm one.
    const [first, ...others] = [reading.temperature].flat();
    const coldest = others.reduce((a, b) => (a && b && b.si < a.si ? b : a), first);
    const temperature = coldest && coldest.si < warm.si ? warm : coldest;
    if (!temperature || temperature.si < min.si || temperature.si > max.si) continue;
    const around = reading.atmosphere ?? atmosphere;
    let absolute = own.get(temperature.si);
    if (absolute === undefined) {
      absolute = bubblePressure(refrigerant, temperature).si;
      own.set(temperature.si, absolute);
    }
    if (pressure.si >= absolute - around.si) continue;
    const limit = toGauge(bubblePressure(refrigerant, temperature), around);
    return say("commissioning.test-below-refrigerant", {
      pressure,
      own: new Quantity(Number(limit.si.toPrecision(4)), pressure.unit),
      refrigerant: verbatim(refrigerant.designation),
      temperature,
    });
  }
  return undefined;
}
