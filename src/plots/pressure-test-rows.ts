// What was read in a pressure test? Its readings in order of time, in SI, whichever way it was judged.
// Follows no standard. Does not cover the range of the nitrogen model: the assessment has checked it. Internal.

import type { PressureTest, PressureTestLog, TestReading } from "../pressure-test/index.ts";
import { describe, isOfKind, listOf, objectOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { enter } from "../quantity/hints.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { inOrder } from "./thin.ts";

/** The readings of a test. */
export interface TestRows {
  readonly readings: readonly TestReading[];
  /** Seconds, one per reading, rising; 0 and 1 where the times of two readings are unknown. */
  readonly elapsed: readonly number[];
  readonly isTimed: boolean;
  readonly kind: "gaugePressure" | "absolutePressure";
}

/** The readings of a test, checked and sorted. One pass without helpers: a log may have 100 000 rows. */
export function testRowsOf(test: PressureTest | PressureTestLog): TestRows {
  const { readings: log } = objectOf("test", test) as PressureTestLog;
  const { start, end } = test as PressureTest;
  const isLog = log !== undefined;
  const given: readonly TestReading[] = isLog ? listOf("readings", log) : [start, end];
  const kind =
    given[0]?.pressure?.kind === "absolutePressure" ? "absolutePressure" : "gaugePressure";
  const isTimed = isLog || end?.elapsed !== undefined;
  const elapsed = given.map((reading, i) => {
    const problem = problemOf(reading, kind, isLog);
    if (problem) {
      const path = isLog ? `readings[${i}]` : i === 0 ? "start" : "end";
      objectOf(path, reading);
      const [name, value, allowed] = problem;
      siOf(`${path}.${name}`, value as Quantity<typeof allowed>, allowed);
    }
    return isTimed ? (reading.elapsed?.si ?? 0) : i;
  });
  const [readings, times] = inOrder(given, elapsed);
  if (!((times.at(-1) as number) > (times[0] as number))) {
    const value = isLog ? `${given.length} readings` : describe(end?.elapsed);
    const allowed = "readings at two different times or more";
    throw new InvalidInputError({
      argument: isLog ? "readings" : "end.elapsed",
      value,
      allowed,
      hint: enter("two-times"),
    });
  }
  return { readings, elapsed: times, isTimed, kind };
}

/** What of a reading cannot be used, and the kind that it should have. */
function problemOf(
  reading: TestReading,
  kind: TestRows["kind"],
  isLog: boolean,
): [name: string, value: unknown, kind: Kind] | undefined {
  const { pressure, temperature, elapsed } = reading ?? {};
  if (!isOfKind(pressure, kind)) return ["pressure", pressure, kind];
  if (Array.isArray(temperature)) {
    const wrong = temperature.findIndex((one) => !isOfKind(one, "temperature"));
    if (wrong >= 0 || temperature.length === 0) {
      return ["temperature", temperature[wrong], "temperature"];
    }
  } else if (!isOfKind(temperature, "temperature")) {
    return ["temperature", temperature, "temperature"];
  }
  const isMissing = elapsed === undefined && !isLog;
  return isMissing || isOfKind(elapsed, "duration") ? undefined : ["elapsed", elapsed, "duration"];
}

/** The temperature of a zone of a reading, K; a single one stands for every zone. */
export function zoneTemperature({ temperature }: TestReading, zone: number): number {
  if (!Array.isArray(temperature)) return (temperature as Quantity<"temperature">).si;
  return (temperature[zone] ?? (temperature.at(-1) as Quantity<"temperature">)).si;
}

/** How many zones a reading tells apart. */
export const zonesOf = ({ temperature }: TestReading): number =>
  Array.isArray(temperature) ? temperature.length : 1;
