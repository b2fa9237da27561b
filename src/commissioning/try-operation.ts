// Does the system run as it should? Gauges, or air and current where no gauge belongs.
// Follows operating-check for gauges; the differences of air are the manual's, or common practice, no source.
// Does not cover what a short run cannot show: defrost, the hottest day.
import { airSideTrials } from "./air-side.ts";
import { uncoveredRuns, unknownRuns } from "./coverage.ts";
import { gaugeTrials } from "./gauge-trials.ts";
import type { Job } from "./job.ts";
import { doubtsOfAir, doubtsOfGauge } from "./operation-doubts.ts";
import type { OperatingReading } from "./record-operation.ts";
import { type Covering, servesIndoorUnit } from "./runs.ts";
import { type Tried, tryAll } from "./step.ts";

/** Does it run as it should? */
export function tryOperation(job: Job): Tried {
  const { operation = [] } = job.record;
  const parts = operation.map((part, i): Covering<OperatingReading> => {
    const { covers } = part;
    const runs = covers
      ? job.runs.filter(({ run }) => run.name && covers.includes(run.name))
      : job.runs;
    return { part, path: `operation[${i}]`, runs };
  });
  const trials = parts.flatMap(({ part, path }) => {
    const air = part.airSide ? airSideTrials(job, part, path) : [];
    const isAirAlone = part.airSide && !part.pressure && !part.charge;
    return [
      ...(isAirAlone ? [] : gaugeTrials(job, part, path)),
      ...air,
      ...doubtsOfAir(part, path),
      ...doubtsOfGauge(job, part),
    ];
  });
  return tryAll(
    "operation",
    [
      ...trials,
      ...uncoveredRuns("operation", job.runs.filter(servesIndoorUnit), parts),
      ...unknownRuns(job, parts),
    ],
    operation.length === 0 ? ["operation[0]"] : [],
  );
}
