// What stands beside the readings of a pressure test? The drop that was found, the explained pressure, the
// temperatures. Follows the pressure-test module. Does not cover units and words: pressure-test-plot.ts. Internal.
import {
  type DropLimit,
  expectedTestPressure,
  type LeakLimit,
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
import type { Line, Panel, Point } from "./shapes.ts";
import { say } from "./statements.ts";
import { thinned } from "./thin.ts";

/** What the verdict found, in SI. */
interface Found {
  readonly drop: number;
  readonly uncertainty: number;
  readonly limit: number | undefined;
}

/** The figures of the verdict, SI. */
export function foundOf(assessment: TwoReadingAssessment | LogAssessment): Found {
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
function explainedBy(
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

/** How the lines of a test are seen. */
interface View {
  readonly rows: TestRows;
  readonly found: Found;
  readonly time: (seconds: number) => number;
  readonly pressureUnit: Unit<TestRows["kind"]>;
  readonly reader: Reader;
}

/** The readings, what temperature explains, the limit where there is one, and what was found at the end. */
export function pressureLines(
  test: PressureTest | PressureTestLog,
  assessment: TwoReadingAssessment | LogAssessment,
  { rows, found: { drop, uncertainty, limit }, time, pressureUnit, reader }: View,
): Line[] {
  const { readings, elapsed } = rows;
  const [from, to] = [elapsed[0] as number, elapsed.at(-1) as number];
  const pressures = readings.map(({ pressure }) => pressure.si);
  const drawn = thinned(elapsed, pressures);
  const explained = explainedBy(test, rows, assessment, drop);
  const course = (value: (i: number) => number): Point[] =>
    drawn.map((i) => [time(elapsed[i] as number), inUnit(value(i), pressureUnit)]);
  const expected = new Map(drawn.map((i) => [i, explained(readings[i] as TestReading)]));
  const expectedAt = (i: number) => expected.get(i) as number;
  const { per, maximumLeakRate } = (test.criterion ?? {}) as Partial<DropLimit & LeakLimit>;
  const isRate = per !== undefined || maximumLeakRate !== undefined;
  const difference = (si: number): Quantity<"pressureDifference"> =>
    new Quantity(si, pressureUnit.difference);
  const allowed = (i: number) =>
    (limit ?? 0) * (isRate ? ((elapsed[i] as number) - from) / (to - from) : 1);
  return [
    {
      role: "measured",
      label: reader.word("plots.readings"),
      points: course((i) => pressures[i] as number),
      ...(drawn.length <= 40 && { marks: "dotted line" as const }),
    },
    {
      role: "model",
      label: reader.word("plots.explained-by-temperature"),
      points: course(expectedAt),
    },
    ...(limit === undefined
      ? []
      : [
          {
            role: "limit" as const,
            label: reader.say(say("plots.limit", { limit: difference(limit) })),
            points: course((i) => expectedAt(i) - allowed(i)),
          },
        ]),
    {
      role: "measured",
      label: reader.say(say("plots.found-at-end", { uncertainty: difference(uncertainty) })),
      marks: "rings",
      whisker: uncertainty / pressureUnit.scale,
      points: [[time(to), inUnit(expectedAt(readings.length - 1) - drop, pressureUnit)]],
    },
  ];
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
