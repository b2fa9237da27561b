// What stands beside the readings of a pressure test? The drop that was found, the explained pressure, the
// temperatures. Follows the pressure-test module. Does not cover units and words: pressure-test-plot.ts. Internal.
import {
  expectedTestPressure,
  type LogAssessment,
  type PressureTest,
  type PressureTestLog,
  type TestPressure,
  type TestReading,
  type TwoReadingAssessment,
} from "../pressure-test/index.ts";
import { listOf, objectOf, siOf } from "../quantity/check.ts";
import { Quantity, type Unit } from "../quantity/quantity.ts";
import { type TestRows, zonesOf, zoneTemperature } from "./pressure-test-rows.ts";
import { inUnit, type Reader } from "./reader.ts";
import type { Line, Panel } from "./shapes.ts";
import { say } from "./statements.ts";
import { thinned } from "./thin.ts";

/** The figures of the verdict, SI. */
export function foundOf(assessment: TwoReadingAssessment | LogAssessment): {
  readonly drop: number;
  readonly uncertainty: number;
  readonly limit: number | undefined;
} {
  const { correctedDrop, limit } = objectOf("assessment", assessment);
  const path = "assessment.correctedDrop";
  const { value, expandedUncertainty } = objectOf(path, correctedDrop);
  const si = (name: string, one: Quantity<"pressureDifference">, limits = {}) =>
    siOf(name, one, "pressureDifference", limits);
  return {
    drop: si(`${path}.value`, value),
    uncertainty: si(`${path}.expandedUncertainty`, expandedUncertainty, { min: 0 }),
    limit: limit === undefined ? undefined : si("assessment.limit", limit, { above: 0 }),
  };
}

/**
 * The pressure that each reading would have shown without a leak, Pa as read. Two readings are seen from
 * the first; a log from the level that its fit begins with, so that one noisy row does not shift it.
 */
export function explainedBy(
  test: PressureTest | PressureTestLog,
  { readings, elapsed, kind }: TestRows,
  assessment: TwoReadingAssessment | LogAssessment,
  drop: number,
): (reading: TestReading) => number {
  const { corrected } = assessment as LogAssessment;
  const isFitted = corrected !== undefined && readings.length > 2;
  const base = readings[isFitted ? readings.length - 1 : 0] as TestReading;
  let { pressure } = base;
  if (isFitted) {
    const [from, to] = [elapsed[0] as number, elapsed.at(-1) as number];
    let sum = 0;
    listOf("assessment.corrected", corrected).forEach((point, i) => {
      const path = `assessment.corrected[${i}]`;
      const level = point?.pressure as Quantity<typeof kind>;
      const part = (siOf(`${path}.elapsed`, point?.elapsed, "duration") - from) / (to - from);
      sum += siOf(`${path}.pressure`, level, kind) + drop * part;
    });
    pressure = new Quantity(sum / corrected.length, pressure.unit as never) as TestPressure;
  }
  const { atmosphere, volume, wall } = test;
  return ({ temperature, atmosphere: later = atmosphere }) =>
    expectedTestPressure({
      pressure: pressure as Quantity<"gaugePressure">,
      temperature: base.temperature,
      laterTemperature: temperature,
      atmosphere: base.atmosphere ?? atmosphere,
      laterAtmosphere: later,
      ...(volume !== undefined && { volume }),
      ...(wall !== undefined && { wall }),
    }).si;
}

/** The temperatures over the same time, one line for each zone. */
export function temperaturePanel(
  { readings, elapsed }: TestRows,
  time: (seconds: number) => number,
  reader: Reader,
): Panel {
  const count = readings.reduce((most, reading) => Math.max(most, zonesOf(reading)), 1);
  const [warm] = [(readings[0] as TestReading).temperature].flat();
  const unit: Unit<"temperature"> = reader.unitFor(warm as Quantity<"temperature">);
  const roles = ["second", "guide", "limit", "model"] as const;
  const lines = Array.from({ length: count }, (_, zone): Line => {
    const values = readings.map((reading) => zoneTemperature(reading, zone));
    const drawn = thinned(elapsed, values);
    return {
      role: roles[zone % roles.length] as (typeof roles)[number],
      ...(count > 1 && { label: reader.say(say("plots.zone", { zone: zone + 1 })) }),
      points: drawn.map((i) => [time(elapsed[i] as number), inUnit(values[i] as number, unit)]),
    };
  });
  const name = reader.say(
    say("plots.gas-temperature-axis", { unit: reader.unitName(unit as never) }),
  );
  return { name, height: 70, bands: [], levels: [], lines, reach: [] };
}
