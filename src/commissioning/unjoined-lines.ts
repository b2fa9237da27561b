// Does each line have a joint of its size? A doubt that an entry was copied, never a limit.
// Follows the sizes of flare-joint; that a line without a flare of its size is asked about is common practice, no source.
// Does not cover brazed and pressed joints, whose tube is not recorded, or joints that are still missing.
import { doubt } from "./doubt.ts";
import type { PlacedRun } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";
import { sizeOf } from "./try-line-run.ts";
import { verbatim } from "./words.ts";

/** The lines of which no flare is recorded, where every joint is a flare with a size of its own. */
export function unjoinedLines({ run, path }: PlacedRun, count: number): Trial[] {
  const { joints = [], tubing } = run;
  // A joint that is still missing may be the one.
  if (joints.length === 0 || joints.length < count) return [];
  if (joints.some(({ kind, tube }) => kind !== "flare" || tube === undefined)) return [];
  return (["liquid", "vapor"] as const).flatMap((line): Trial[] => {
    const diameter = tubing?.[line]?.outsideDiameter;
    if (!diameter || joints.some(({ tube }) => tube === sizeOf(diameter))) return [];
    const tubes = [...new Set(joints.map(({ tube }) => tube ?? ""))].map(verbatim);
    const word = { line: `commissioning.line.${line}` } as const;
    const reason = say("commissioning.no-flare-of-line", { ...word, diameter, tubes });
    const action = say("commissioning.see-joints-of-line", word);
    return [doubt(`${path}.tubing.${line}.outsideDiameter`, reason, action, "joint-sizes")];
  });
}
