// Can a pressure test be as it is recorded? Its limit against its pressure, its temperatures against the weather.
// Follows common practice, no source; a doubt leaves the test open, it never fails it.
// Does not cover the drop: see try-pressure-test.ts.
import { deltaK } from "../quantity/units/temperature.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import type { PressureTestPart } from "./record-circuit.ts";
import type { Covering } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

/** Share of the test pressure above which an allowed drop is none; common practice, no source. */
const largestDrop = 0.05;

/** How far two temperatures of one job may lie apart before one is asked about; common practice, no source. */
const farApart = 30; // K

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
  const warmth = [first?.temperature].flat()[0];
  // Tested and evacuated within days: °F for °C, or °C for °F, lies further apart than the weather.
  const later = record.evacuations?.find(
    ({ covers }) => !covers || runs.some(({ run }) => run.name && covers.includes(run.name)),
  )?.ambient;
  if (warmth && later && Math.abs(warmth.si - later.si) > farApart) {
    const reason = say("commissioning.temperatures-apart", {
      test: warmth,
      evacuation: later,
      usual: deltaK(farApart),
    });
    doubts.push(doubt(`${path}.readings[0].temperature`, reason));
  }
  return doubts;
}
