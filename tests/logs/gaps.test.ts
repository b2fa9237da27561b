// Rows that are missing: longer than 1.8 times the median of the nine steps before (the module's own rule, common
// practice, no source), and an hour that a clock without a zone leaves out in spring.

import { describe, expect, it } from "vitest";
import { gapWatch } from "../../src/logs/gaps.ts";

/** What is said of a row by line, where the rows are so many seconds apart. */
function noted(steps: readonly number[], mayBeSet = false) {
  const watch = gapWatch();
  let at = 1000;
  return [0, ...steps].flatMap((step, i) => {
    at += step;
    const said = watch(at, i + 1, mayBeSet);
    if (!said) return [];
    if (said.code !== "logs.gap") return [`${said.code} ${said.values.line}`];
    const { line, gap, usual } = said.values;
    return [`gap ${line}: ${gap.toString()}, ${usual.toString()}`];
  });
}
const usual = (step: number, count = 9) => Array.from({ length: count }, () => step);

describe("a gap", () => {
  it.each<[string, number[], string[]]>([
    ["just within 1.8 times the usual step", [...usual(10), 18, 10], []],
    ["just above it", [...usual(10), 18.5, 10], ["gap 11: 18.5 s, 10 s"]],
    ["after three steps", [...usual(10, 3), 60], ["gap 5: 60 s, 10 s"]],
    ["after two steps, which tell nothing yet", [10, 10, 60], []],
    ["beside a step that is far shorter", [...usual(10), 1, 10], []],
    // The new step is the usual one once it is that of five of nine.
    [
      "while a logger slows down",
      [...usual(5, 20), ...usual(60, 20)],
      [22, 23, 24, 25, 26].map((line) => `gap ${line}: 60 s, 5 s`),
    ],
    ["as numbers, not as texts", [8, 8, 9, 9, 9, 10, 10, 10, 10, 99], ["gap 11: 99 s, 9 s"]],
  ])("%s", (_, steps, said) => expect(noted(steps)).toEqual(said));
});

describe("a clock that may have been set: an hour, within a tenth of the usual step and at least 1 s", () => {
  const set = ["logs.clock-set-forward 11"];
  it.each<[number, number, boolean]>([
    [300, 3900, true],
    [300, 3900 + 29.5, true],
    [300, 3900 - 29.5, true],
    [300, 3900 + 30, false],
    [300, 3900 - 30, false],
    [5, 3605.9, true],
    [5, 3604.1, true],
    [5, 3606, false],
    [5, 7205, false],
  ])("a step of %d s, then one of %d s: %s", (step, long, isSet) => {
    const gap = [`gap 11: ${long} s, ${step} s`];
    expect(noted([...usual(step), long], true)).toEqual(isSet ? set : gap);
    expect(noted([...usual(step), long], false)).toEqual(gap);
  });
});
