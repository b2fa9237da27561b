// What was read in a pressure test? Its readings in order of time, in SI, whichever way it was judged.
// Source: none. Does not cover the range of the nitrogen model: the assessment has checked it. Internal.
import type { PressureTest, PressureTestLog, TestReading } from "../pressure-test/index.ts";
import { describe, isOfKind, listOf, objectOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";

/** The readings of a test. */
export interface TestRows {
  readonly readings: readonly TestReading[];
  /** Seconds, one per reading, rising; 0 and 1 where the times of two readings are unknown. */
  readonly elapsed: readonly number[];
  readonly isTimed: boolean;
  readonly kind: "gaugePressure" | "absolutePressure";
}

const temperatureList = ({ temperature }: TestReading): readonly Quantity<"temperature">[] =>
  Array.isArray(temperature) ? temperature : [temperature as Quantity<"temperature">];

/** The readings of a test, checked and sorted. */
export function testRowsOf(test: PressureTest | PressureTestLog): TestRows {
  const { readings: log } = objectOf("test", test) as PressureTestLog;
  const { start, end } = test as PressureTest;
  const isLog = log !== undefined;
  const given: readonly TestReading[] = isLog ? listOf("readings", log) : [start, end];
  const pathOf = (i: number) => (isLog ? `readings[${i}]` : i === 0 ? "start" : "end");
  const kind =
    given[0]?.pressure?.kind === "absolutePressure" ? "absolutePressure" : "gaugePressure";
  const isTimed = isLog || end?.elapsed !== undefined;
  const rows = given.map((reading, i) => {
    const { pressure, elapsed } = objectOf(pathOf(i), reading);
    if (!isOfKind(pressure, kind)) {
      siOf<typeof kind>(`${pathOf(i)}.pressure`, pressure as Quantity<typeof kind>, kind);
    }
    for (const one of temperatureList(reading)) {
      if (!isOfKind(one, "temperature")) siOf(`${pathOf(i)}.temperature`, one, "temperature");
    }
    if (elapsed === undefined && !isLog) return { reading, at: isTimed ? 0 : i };
    const at = siOf(`${pathOf(i)}.elapsed`, elapsed as Quantity<"duration">, "duration");
    return { reading, at: isTimed ? at : i };
  });
  rows.sort((one, other) => one.at - other.at);
  const elapsed = rows.map(({ at }) => at);
  if (!((elapsed.at(-1) as number) > (elapsed[0] as number))) {
    const value = isLog ? `${rows.length} readings` : describe(end?.elapsed);
    const allowed = "readings at two different times or more";
    throw new InvalidInputError({ argument: isLog ? "readings" : "end.elapsed", value, allowed });
  }
  return { readings: rows.map(({ reading }) => reading), elapsed, isTimed, kind };
}

/** The temperatures of a reading, K: one, or one per zone. */
export const temperaturesOf = (reading: TestReading): number[] =>
  temperatureList(reading).map(({ si }) => si);
