// Which runs has the system, and which of them does a test cover? Each run with its place in the record.
// Follows the record. Does not cover what is judged: see the steps.
import type { Single } from "../assessment/statement.ts";
import { type TubeSize, tubeVolume } from "../line-set/index.ts";
import { siOf } from "../quantity/check.ts";
import { namingArguments } from "../quantity/naming-arguments.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { whole } from "../shapes/index.ts";
import type { InstallationRecord } from "./record.ts";
import type { Run } from "./record-run.ts";
import { verbatim } from "./words.ts";

/** A run and its place. */
export interface PlacedRun {
  readonly run: Run;
  /** Path of the run in the record. */
  readonly path: string;
  /** How it is called in a sentence: its name, or its number. */
  readonly called: Single;
}

/** A part of the record that covers runs, and its place. */
export interface Covering<T> {
  readonly part: T;
  readonly path: string;
  readonly runs: readonly PlacedRun[];
}

/** The runs of a record; one more where none ends at an indoor unit yet, so that what it lacks is named. */
export function runsOf({ runs = [] }: InstallationRecord): readonly PlacedRun[] {
  const own = runs.map(placedRun);
  return own.some(servesIndoorUnit) ? own : [...own, placedRun({}, own.length)];
}

const placedRun = (run: Run, i: number): PlacedRun => ({
  run,
  path: `runs[${i}]`,
  called: run.name === undefined ? i + 1 : verbatim(run.name),
});

/** Whether a run ends at an indoor unit, with its room and drain. */
export const servesIndoorUnit = ({ run }: PlacedRun): boolean => run.serves !== "branch-box";

type Covers = { readonly covers?: readonly string[] | undefined };

/** The runs that a part covers: those that it names, or all of them. */
const coveredBy = ({ covers }: Covers, runs: readonly PlacedRun[]): readonly PlacedRun[] =>
  covers ? runs.filter(({ run }) => covers.some((name) => name === run.name)) : runs;

/** Tests by whether they count. */
interface Counted<T> {
  readonly counting: readonly Covering<T>[];
  /** Those that another one followed on all of their runs. */
  readonly earlier: readonly Covering<T>[];
  readonly all: readonly Covering<T>[];
}

/** The tests that count, each with its runs: of each run the last that covers it. */
export function lastOfEachRun<T extends Covers>(
  parts: readonly T[] | undefined,
  list: string,
  runs: readonly PlacedRun[],
): Counted<T> {
  const all = (parts ?? []).map(
    (part, i): Covering<T> => ({ part, path: `${list}[${i}]`, runs: coveredBy(part, runs) }),
  );
  const last = new Map<PlacedRun, Covering<T>>();
  for (const one of all) for (const run of one.runs) last.set(run, one);
  const counting = new Set(last.values());
  return {
    counting: all.filter((one) => counting.has(one)),
    earlier: all.filter((one) => one.runs.length > 0 && !counting.has(one)),
    all,
  };
}

/** The runs that no part covers. */
export const uncovered = (
  runs: readonly PlacedRun[],
  parts: readonly Covering<unknown>[],
): readonly PlacedRun[] => {
  const covered = new Set(parts.flatMap((one) => one.runs));
  return runs.filter((run) => !covered.has(run));
};

/** The tubes of the runs and the rest, or nothing as long as one of them is unknown; an error names the field itself. */
export function volumeOf(runs: readonly PlacedRun[]): Quantity<"volume"> | undefined {
  let sum: Quantity<"volume"> | undefined;
  for (const { run, path } of runs) {
    const { liquid, vapor, length, otherVolume } = run.tubing ?? {};
    if (!liquid || !vapor || !length || !otherVolume) return undefined;
    siOf(`${path}.tubing.otherVolume`, otherVolume, "volume", { min: 0 });
    let own = otherVolume;
    for (const [line, tube] of Object.entries({ liquid, vapor })) {
      own = namingArguments(
        (argument) => `${path}.tubing.${argument.replace("tube", line)}`,
        () => own.plus(tubeVolume(whole<TubeSize>(tube), length)),
      );
    }
    sum = sum ? sum.plus(own) : own;
  }
  return sum;
}

/** Where the arguments of a volume stand; one too large in all is that of the run with the most besides its tubes. */
export function volumePaths(runs: readonly PlacedRun[]): Readonly<Record<string, string>> {
  const rest = ({ run }: PlacedRun) => run.tubing?.otherVolume?.si ?? 0;
  const [largest] = [...runs].sort((a, b) => rest(b) - rest(a));
  return { runs: "runs", volume: `${largest?.path}.tubing.otherVolume` };
}
