// Is it dry, and tight in vacuum? The watch after each evacuation, for the runs that it covers.
// Follows vacuum-decay, which decides. Does not cover how the vacuum was pulled.
import { acceptancePolicies, assessVacuumDecay } from "../vacuum-decay/index.ts";
import { copiedLogs } from "./copied-logs.ts";
import { uncoveredRuns, unknownRuns } from "./coverage.ts";
import type { Job } from "./job.ts";
import type { Evacuation } from "./record-circuit.ts";
import { type Covering, lastOfEachRun, volumeOf, volumePaths } from "./runs.ts";
import { present, type Trial, type Tried, tryAll } from "./step.ts";
import { doubtsOfEvacuation } from "./test-doubts.ts";

/** Is it dry, and tight in vacuum? */
export function tryEvacuation(job: Job): Tried {
  const { evacuations } = job.record;
  const { counting, all } = lastOfEachRun(evacuations, "evacuations", job.runs);
  const none: Covering<Evacuation> = { part: {}, path: "evacuations[0]", runs: job.runs };
  const parts = counting.length > 0 ? counting : [none];
  return tryAll("evacuation", [
    ...parts.flatMap((one) => [watched(job, one), ...doubtsOfEvacuation(one)]),
    ...uncoveredRuns("evacuation", job.runs, counting),
    ...unknownRuns(job, all),
    ...copiedLogs(counting),
  ]);
}

function watched({ record }: Job, { part, path, runs }: Covering<Evacuation>): Trial {
  const { readings, policy, ambient, coldest, leakLimit, isolation, hoses, blankTest } = part;
  const { accuracy, resolution, range } = record.instruments?.vacuumGauge ?? {};
  return {
    name: "vacuum-decay",
    path,
    needs: {
      [`${path}.readings`]: readings?.[0],
      [`${path}.policy`]: policy,
      [`${path}.ambient`]: ambient,
      "instruments.vacuumGauge": record.instruments?.vacuumGauge,
    },
    paths: { gauge: "instruments.vacuumGauge", ...volumePaths(runs) },
    run: () =>
      assessVacuumDecay(
        present({
          readings,
          policy: policy && acceptancePolicies[policy],
          ambient,
          coldest,
          leakLimit,
          isolation,
          hoses,
          blankTest,
          volume: volumeOf(runs),
          gauge: present({ accuracy, resolution, range }),
        }),
      ),
  };
}
