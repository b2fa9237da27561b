// Are rows missing? A step of time that is much longer than those before it.
// Common practice, no source: longer than 1.8 times the median of the nine steps before.
// Does not cover a logger that writes at changes only: each of its steps is as usual as the next.

import { second } from "../quantity/units/time.ts";
import { type LineStatement, say } from "./statements.ts";

/** Looks at the time of one row after the other, in s. */
export type GapWatch = (at: number, line: number, mayBeSet: boolean) => LineStatement | undefined;

/** Makes a watch. */
export function gapWatch(): GapWatch {
  let last = Number.NaN;
  const steps: number[] = [];
  return (at, line, mayBeSet) => {
    const step = at - last;
    last = at;
    if (Number.isNaN(step)) return undefined;
    const sorted = [...steps].sort((a, b) => a - b);
    const usual = sorted[sorted.length >> 1] as number;
    steps.push(step);
    if (steps.length > 9) steps.shift();
    if (steps.length < 4 || step <= 1.8 * usual) return undefined; // three steps tell nothing yet
    const hour = Math.abs(step - usual - 3600) < Math.max(1, usual / 10);
    if (mayBeSet && hour) return say("logs.clock-set-forward", { line });
    return say("logs.gap", { line, gap: second(step), usual: second(usual) });
  };
}
