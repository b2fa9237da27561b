// Is it tight? The pressure test of a record, its hold, and its pressure against manual and plates.
// Follows pressure-test, which decides; that the test keeps the marked pressure is common practice, no source.
// Does not cover where a leak is.
import type { Assessment } from "../assessment/assessment.ts";
import { assessPressureLog, assessPressureTest, type TestReading } from "../pressure-test/index.ts";
import { toGauge } from "../quantity/atmosphere.ts";
import { requireKind, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { whole } from "../shapes/index.ts";
import { atmosphereNeed, atmosphereOf, stated, volumeOf } from "./job.ts";
import { belowOwnPressure } from "./own-pressure.ts";
import type { InstallationRecord } from "./record.ts";
import { spread } from "./spread.ts";
import { given, type Trial, type Tried, tryAll } from "./step.ts";

/** Is it tight? */
export function tryPressureTest(record: InstallationRecord): Tried {
  const { pressureTest, instruments, equipment } = record;
  const { readings, criterion, wall } = pressureTest ?? {};
  const { testGauge, gasThermometer } = instruments ?? {};
  const marked = equipment?.lowestMarkedPressure;
  const { testPressure, testHold } = equipment?.manual ?? {};
  const [start, end] = readings ?? [];
  const needs = { ...atmosphereNeed(record), "pressureTest.readings": start };
  const paths = {
    readings: "pressureTest.readings",
    atmosphere: "site.atmosphere",
    altitude: "site.altitude",
  };
  const trials: Trial[] = [
    {
      name: "pressure-test",
      path: "pressureTest",
      needs: {
        ...needs,
        "pressureTest.readings[1]": end,
        "pressureTest.criterion": criterion,
        "instruments.testGauge": testGauge,
        "instruments.gasThermometer": gasThermometer,
      },
      paths: {
        ...paths,
        start: "pressureTest.readings[0]",
        end: "pressureTest.readings[1]",
        "instruments.pressure": "instruments.testGauge",
        "instruments.temperature": "instruments.gasThermometer",
        volume: "tubing.otherVolume",
        tube: "tubing.liquid",
        length: "tubing.length",
      },
      run: () => {
        const setup = {
          atmosphere: atmosphereOf(record),
          instruments: given({ pressure: testGauge, temperature: gasThermometer }),
          criterion,
          wall,
          volume: volumeOf(record),
        };
        return readings?.length === 2
          ? assessPressureTest(given({ ...setup, start, end }))
          : assessPressureLog(given({ ...setup, readings }));
      },
    },
  ];
  const elapsed = readings?.map((one) => one.elapsed);
  trials.push({
    name: "test-hold",
    path: "pressureTest.readings",
    needs: {
      "pressureTest.readings[1].elapsed": elapsed?.[1] && elapsed.at(-1),
      "equipment.manual.testHold": testHold,
    },
    paths: { testHold: "equipment.manual.testHold" },
    run: () => {
      const asked = testHold as Quantity<"duration">;
      siOf("testHold", asked, "duration", { above: 0 });
      const seconds = spread((elapsed ?? []).flatMap((one) => (one ? [one.si] : [])));
      return stated(
        seconds >= asked.si * (1 - 1e-12) ? "pass" : "inconclusive",
        "test-hold",
        "Held for {held}; {asked} is asked for.",
        { held: new Quantity(seconds, asked.unit), asked },
      );
    },
  });
  for (const [path, limit, name, text, above] of [
    [
      "equipment.lowestMarkedPressure",
      marked,
      "marked-pressure",
      "The test went up to {pressure}; the lowest marked is {limit}.",
      true,
    ],
    [
      "equipment.manual.testPressure",
      testPressure,
      "test-pressure",
      "Tested at {pressure}; at least {limit} is asked for.",
      false,
    ],
  ] as const) {
    trials.push({
      name,
      path: "pressureTest.readings",
      needs: { ...needs, [path]: limit },
      paths: { ...paths, limit: path },
      run: () =>
        heldPressure(
          record,
          whole<TestReading[]>(readings ?? []),
          limit as Quantity<"gaugePressure">,
          name,
          text,
          above,
        ),
    });
  }
  return tryAll("pressure-test", trials);
}

/** The highest reading under the marked pressure, or the lowest above what the manual asks for. */
function heldPressure(
  record: InstallationRecord,
  readings: readonly TestReading[],
  limit: Quantity<"gaugePressure">,
  code: string,
  text: string,
  above: boolean,
): Assessment {
  siOf("limit", limit, "gaugePressure", { above: 0 });
  const shown = readings.map(({ pressure, atmosphere }, i) => {
    if (pressure?.kind === "absolutePressure") {
      const read = pressure as Quantity<"absolutePressure">;
      return toGauge(read, atmosphere ?? atmosphereOf(record));
    }
    requireKind(`readings[${i}].pressure`, pressure, "gaugePressure");
    return pressure as Quantity<"gaugePressure">;
  });
  const sorted = [...shown].sort((a, b) => a.si - b.si);
  const pressure = (above ? sorted.at(-1) : sorted[0]) as Quantity<"gaugePressure">;
  // A hair of binary arithmetic breaks no limit.
  const hair = 1e-9 * Math.abs(limit.si);
  const keeps = above ? pressure.si <= limit.si + hair : pressure.si >= limit.si - hair;
  const outcome = keeps ? "pass" : above ? "fail" : "inconclusive";
  const found = stated(outcome, code, text, { pressure, limit });
  if (above) return found;
  const low = belowOwnPressure(record, readings, shown);
  return low ? { ...found, outcome: "inconclusive", reasons: [low, ...found.reasons] } : found;
}
