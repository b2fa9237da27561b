// Can a pressure test be as it is recorded? Its limit against its pressure, its temperatures against the weather.
// Follows common practice, no source; a doubt leaves the test open, it never fails it.
// Does not cover the drop: see try-pressure-test.ts.
import { Quantity } from "../quantity/quantity.ts";
import { deltaK } from "../quantity/units/temperature.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import { oddFigure } from "./odd-figure.ts";
import type { Evacuation, PressureTestPart } from "./record-circuit.ts";
import { type Covering, lastOfEachRun } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

/** Share of the test pressure above which an allowed drop is none; common practice, no source. */
const largestDrop = 0.05;

/** How far the evacuated system may be from every temperature of its test before one is asked about; common practice, no source. */
const farApart = 20; // K

const apart = (a: Quantity<"temperature">, b: Quantity<"temperature">) => Math.abs(a.si - b.si);

/** What cannot be right of a test. */
export function doubtsOfTest(
  { record }: Job,
  { part, path, runs }: Covering<PressureTestPart>,
): Trial[] {
  const { readings = [], criterion } = part;
  const [first] = readings;
  const limit = criterion && "maximumDrop" in criterion ? criterion.maximumDrop : undefined;
  const doubts: Trial[] = [];
  if (limit && first?.pressure && limit.si > largestDrop * first.pressure.si) {
    const reason = say("commissioning.allowed-drop-large", { limit });
    doubts.push(doubt(`${path}.criterion.maximumDrop`, reason));
  }
  // Tested and evacuated within days: °F for °C, or °C for °F, lies further apart than the weather.
  const later = record.evacuations?.find(
    ({ covers }) => !covers || runs.some(({ run }) => run.name && covers.includes(run.name)),
  )?.ambient;
  let nearest: Quantity<"temperature"> | undefined;
  for (const one of readings.flatMap(({ temperature }) => temperature ?? [])) {
    if (later && (!nearest || apart(one, later) < apart(nearest, later))) nearest = one;
  }
  if (nearest && later && apart(nearest, later) > farApart) {
    const reason = say("commissioning.temperatures-apart", {
      test: nearest,
      evacuation: later,
      usual: deltaK(farApart),
    });
    doubts.push(doubt(`${path}.readings[0].temperature`, reason));
  }
  return doubts;
}

/** What cannot be right of an evacuation: a part far colder than the air and than the gas of its test. */
export function doubtsOfEvacuation(
  { record, runs: all }: Job,
  { part: { ambient, coldest }, path, runs }: Covering<Evacuation>,
): Trial[] {
  if (!ambient || !coldest) return [];
  const gas = lastOfEachRun(record.pressureTests, "pressureTests", all)
    .counting.filter((test) => test.runs.some((run) => runs.includes(run)))
    .flatMap(({ part }) => part.readings ?? [])
    .flatMap(({ temperature }) => temperature ?? []);
  const coolest = Math.min(ambient.si, ...gas.map(({ si }) => si));
  const low = new Quantity(coolest - farApart, coldest.unit);
  // That a part is warmer than the air, vacuum-decay refuses.
  const high = coldest.si > ambient.si ? coldest : ambient;
  return oddFigure(`${path}.coldest`, coldest, [low, high]);
}
