// Which nitrogen tests are planned, and how much gas space is in each?
// Follows the record: tests that cover runs. Does not cover what a valve shuts off: it is left out.
import type { PressureTestPart } from "../commissioning/index.ts";
import { insideDiameter, type TubeSize } from "../line-set/index.ts";
import { testVolume } from "../pressure-test/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type Draft, whole } from "../shapes/index.ts";
import type { Job, PlannedRun } from "./job.ts";
import type { Needs } from "./share.ts";

/** A test with the runs that it covers. */
export interface PlannedTest {
  readonly part: PressureTestPart;
  readonly runs: readonly PlannedRun[];
}

/** The tests: one for all runs where none is recorded. */
export function testsOf({ record, runs }: Job): readonly PlannedTest[] {
  const parts: readonly PressureTestPart[] = record.pressureTests ?? [];
  return (parts.length > 0 ? parts : [{}]).map((part) => {
    const { covers } = part;
    return {
      part,
      runs: covers ? runs.filter(({ run }) => run.name && covers.includes(run.name)) : runs,
    };
  });
}

/** Inner volume of tubes, coils and manifold. */
export const volumeOf = (runs: readonly PlannedRun[]): Quantity<"volume"> =>
  testVolume({
    tubes: runs.flatMap(({ run: { tubing } }) =>
      [tubing?.liquid, tubing?.vapor].map((tube) => ({
        insideDiameter: insideDiameter(whole<TubeSize>(tube ?? {})),
        length: tubing?.length as Quantity<"length">,
      })),
    ),
    vessels: runs.flatMap(({ run: { tubing } }) =>
      tubing?.otherVolume?.si ? [tubing.otherVolume] : [],
    ),
  });

/** What the bore of a tube needs. */
export const tubeNeeds = (
  path: string,
  line: "liquid" | "vapor",
  tube: Draft<TubeSize> | undefined,
): Needs => ({
  [`${path}.tubing.${line}.outsideDiameter`]: tube?.outsideDiameter,
  [`${path}.tubing.${line}.wall`]: tube?.wall,
});

/** What the volume needs. */
export const volumeNeeds = (runs: readonly PlannedRun[]): Needs =>
  Object.fromEntries(
    runs.flatMap(({ run: { tubing }, path }) => [
      [`${path}.tubing.way`, tubing?.length],
      ...Object.entries(tubeNeeds(path, "liquid", tubing?.liquid)),
      ...Object.entries(tubeNeeds(path, "vapor", tubing?.vapor)),
      [`${path}.tubing.otherVolume`, tubing?.otherVolume],
    ]),
  );
