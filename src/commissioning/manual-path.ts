// Where does a figure of the manual stand that counts for a run? Among its own, or among those of all runs.
// Follows the record. Does not cover what the figure is: see the steps.
import { valueAt } from "./format/index.ts";
import type { PlacedRun } from "./runs.ts";

/** The path of a figure of the manual: that of the run itself, where the run has one. */
export function manualPath({ run, path }: PlacedRun, ...field: readonly string[]): string {
  const isOwn = valueAt(run.manual, field) !== undefined;
  return `${isOwn ? path : "equipment"}.manual.${field.join(".")}`;
}
