// Is it tight? The pressure tests of a record, each for its runs: drop, hold, pressure against manual and plates.
// Follows pressure-test, which decides; that the test keeps the marked pressure is common practice, no source.
// Does not cover where a leak is.

import {
  assessPressureLog,
  assessPressureTest,
  type LogReading,
  leakGas,
  type RefrigerantInService,
} from "../pressure-test/index.ts";
import { siOf } from "../quantity/check.ts";
import { isAtLeast } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { copiedLogs } from "./copied-logs.ts";
import { uncoveredRuns, unknownRuns } from "./coverage.ts";
import { atmosphereNeed, atmosphereOf, type Job } from "./job.ts";
import { type OwnVerdict, ownVerdict } from "./own-verdict.ts";
import { doubtsOfPressures } from "./pressure-doubts.ts";
import type { PressureTestPart } from "./record-circuit.ts";
import { type Covering, lastOfEachRun, volumeOf, volumePaths } from "./runs.ts";
import { doubtsOfSite } from "./site-doubts.ts";
import { spread } from "./spread.ts";
import { say } from "./statements.ts";
import { present, type Trial, type Tried, tryAll } from "./step.ts";
import { doubtsOfTest } from "./test-doubts.ts";
import { pressureTrials } from "./test-pressures.ts";

/** Is it tight? */
export function tryPressureTest(job: Job): Tried {
  const { counting, all } = lastOfEachRun(job.record.pressureTests, "pressureTests", job.runs);
  const none: Covering<PressureTestPart> = { part: {}, path: "pressureTests[0]", runs: job.runs };
  const parts = counting.length > 0 ? counting : [none];
  return tryAll("pressure-test", [
    ...parts.flatMap((one) => [
      tested(job, one),
      holdTrial(job, one),
      ...pressureTrials(job, one),
      ...doubtsOfTest(job, one),
    ]),
    ...doubtsOfPressures(job),
    ...doubtsOfSite(job),
    ...uncoveredRuns("pressure-test", job.runs, counting),
    ...unknownRuns(job, all),
    ...copiedLogs(counting),
  ]);
}

/** The drop of a test. */
function tested(job: Job, { part, path, runs }: Covering<PressureTestPart>): Trial {
  const { readings, criterion, wall, sinceFill, elsewhere, zoneShares } = part;
  const { testGauge, gasThermometer } = job.record.instruments ?? {};
  const [start, end] = readings ?? [];
  const isZoned = readings?.some(({ temperature }) => Array.isArray(temperature));
  return {
    name: "pressure-test",
    path,
    needs: {
      ...atmosphereNeed(job),
      [`${path}.readings`]: start,
      [`${path}.readings[1]`]: end,
      [`${path}.criterion`]: criterion,
      "instruments.testGauge": testGauge,
      "instruments.gasThermometer": gasThermometer,
      ...(isZoned && { [`${path}.zoneShares`]: zoneShares }),
    },
    paths: {
      readings: `${path}.readings`,
      start: `${path}.readings[0]`,
      end: `${path}.readings[1]`,
      sinceFill: `${path}.sinceFill`,
      elsewhere: `${path}.elsewhere`,
      atmosphere: "site.atmosphere",
      altitude: "site.altitude",
      "instruments.pressure": "instruments.testGauge",
      "instruments.temperature": "instruments.gasThermometer",
      ...volumePaths(runs),
      zoneShares: `${path}.zoneShares`,
    },
    run: () => {
      const setup = {
        atmosphere: atmosphereOf(job),
        instruments: present({ pressure: testGauge, temperature: gasThermometer }),
        criterion,
        wall,
        sinceFill,
        elsewhere,
        refrigerant: inService(job.refrigerant?.designation),
        required: {}, // the trials of hold and pressures hold the test against manual and markings
        volume: volumeOf(runs),
        zoneShares: isZoned ? zoneShares : undefined,
      };
      return readings?.length === 2
        ? assessPressureTest(present({ ...setup, start, end }))
        : assessPressureLog(present({ ...setup, readings: readings as LogReading[] }));
    },
  };
}

/** What a leak would lose in service, where the refrigerant's vapor is in the table. */
function inService(designation = ""): RefrigerantInService | undefined {
  const gas = Object.entries(leakGas).find(([name]) => name === designation.replace("-", ""))?.[1];
  return gas?.pressureAtRest && { gas, pressure: gas.pressureAtRest };
}

/** The hold against the manual, or against what was asked for where the manual says nothing. */
function holdTrial({ record }: Job, { part, path }: Covering<PressureTestPart>): Trial {
  const { readings = [], requirement } = part;
  const ofManual = record.equipment?.manual?.testHold;
  const from =
    ofManual || !requirement?.hold ? "equipment.manual.testHold" : `${path}.requirement.hold`;
  const required = ofManual ?? requirement?.hold;
  const times = readings.map((one) => one.elapsed);
  const last = Math.max(1, times.length - 1);
  return {
    name: "test-hold",
    path: `${path}.readings`,
    needs: { [`${path}.readings[${last}].elapsed`]: times[last], [from]: required },
    paths: { required: from },
    run: () => held(times, times[last] as Quantity<"duration">, required as Quantity<"duration">),
  };
}

function held(
  times: readonly (Quantity<"duration"> | undefined)[],
  { unit }: Quantity<"duration">, // as the readings were timed
  required: Quantity<"duration">,
): OwnVerdict {
  siOf("required", required, "duration", { above: 0 });
  const seconds = spread(times.flatMap((one) => (one ? [one.si] : [])));
  const values = { held: new Quantity(seconds, unit), required };
  return isAtLeast(seconds, required.si)
    ? ownVerdict("pass", say("commissioning.held-long-enough", values))
    : ownVerdict(
        "inconclusive",
        say("commissioning.held-too-short", values),
        say("commissioning.hold-longer", { required }),
      );
}
