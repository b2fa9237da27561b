// The runs of a plan against the manual's limits, each line whole. Every figure of a manual is invented.
import type { InstallationRecord, Manual, Run } from "hvac-install-math/commissioning";
import { m, watt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { partOf } from "./part.ts";

const run = { maximumLength: m(25), maximumLift: m(15) };
const head = (length: number | undefined, lift: number, more: Run = {}): Run => ({
  tubing: { ...(length && { length: m(length) }), lift: m(lift), outdoorUnit: "below" },
  indoorUnits: [{ capacity: watt(2600) }],
  ...more,
});
const lines = (runs: readonly Run[], manual: Manual) => {
  const record: InstallationRecord = {
    version: 2,
    equipment: { manual: { run, ...manual } },
    runs,
  };
  const { check, ask } = partOf("lines", record);
  // Tubes and stock are another question of the same part.
  return { check, ask: ask.filter((one) => !/outsideDiameter|stock/.test(one)) };
};
/** What concerns all runs: these lines stand after those of each run. */
const together = (runs: readonly Run[], manual: Manual) =>
  lines(runs, manual).check.filter((one) => one.includes("equipment.manual"));
const manuals = "[manufacturer-manuals]";
const judged = "[manufacturer-manuals + jcgm-106-2012 8.2 and 8.3]";

describe("one run", () => {
  it("is held against length and height", () => {
    expect(lines([head(20, 3)], {})).toEqual({
      check: [
        `pass: runs[0]: within-maximum, figure figure.length, limit 25 m, value 20 m ${judged}`,
        `pass: runs[0]: within-maximum, figure figure.height-difference, limit 15 m, value 3 m ${judged}`,
      ],
      ask: [],
    });
  });

  it("is told each limit by itself, whatever the others come to", () => {
    // 20 m of 25 m are kept where a height of 16 m of 15 m is not, and bends that nobody counted stay open.
    expect(
      lines([head(20, 16)], { run: { ...run, minimumLength: m(3), maximumBends: 10 } }).check,
    ).toEqual([
      `fail: runs[0]: above-maximum, figure figure.height-difference, limit 15 m, value 16 m ${judged}`,
      `inconclusive: runs[0]: bends-not-counted, most 10 ${judged}`,
      `pass: runs[0]: within-maximum, figure figure.length, limit 25 m, value 20 m ${judged}`,
      `pass: runs[0]: above-minimum, figure figure.length, limit 3 m, value 20 m ${judged}`,
    ]);
    const bent = head(20, 3);
    const tubing = { ...bent.tubing, bends: 4 };
    expect(
      lines([{ ...bent, tubing }], { run: { ...run, maximumLength: m(19), maximumBends: 10 } })
        .check,
    ).toEqual([
      `fail: runs[0]: above-maximum, figure figure.length, limit 19 m, value 20 m ${judged}`,
      `pass: runs[0]: within-maximum, figure figure.height-difference, limit 15 m, value 3 m ${judged}`,
      `pass: runs[0]: bends-within-maximum, count 4, most 10 ${judged}`,
    ]);
  });

  it("asks for the figure that cannot be", () => {
    // No line of 20 m rises by 30 m.
    expect(lines([head(20, 30)], {})).toEqual({
      check: [],
      ask: ["runs[0].tubing.lift: unusable, field field.runs.tubing.lift, value 30 m"],
    });
    expect(lines([head(20, 3)], { run: { ...run, maximumLift: m(-1) } })).toEqual({
      check: [],
      ask: ["equipment.manual.run: unusable, field field.equipment.manual.run, value -1 m"],
    });
  });

  it("is no sum, whatever the manual says of sums", () => {
    const sums = {
      maximumTotalLength: m(40),
      mostConnected: watt(5200),
      leastConnected: watt(3000),
    };
    expect(together([head(20, 3)], sums)).toEqual([]);
  });
});

describe("several runs together", () => {
  // 20 + 20 m, 5 − 3 m, 2600 + 2600 W: a limit that is just met is kept.
  it("keep limits that are as large as the sum", () => {
    const manual = {
      maximumTotalLength: m(40),
      maximumIndoorLift: m(2),
      mostConnected: watt(5200),
      leastConnected: watt(5200),
    };
    expect(together([head(20, 3), head(20, 5)], manual)).toEqual([
      `pass: equipment.manual.maximumTotalLength: total-length-within, limit 40 m, total 40 m ${manuals}`,
      `pass: equipment.manual.maximumIndoorLift: indoor-lift-within, lift 2 m, limit 2 m ${manuals}`,
      `pass: equipment.manual: connected-within, limit 5200 W, total 5200 W ${manuals}`,
      `pass: equipment.manual: connected-enough, limit 5200 W, total 5200 W ${manuals}`,
    ]);
  });

  it("fail limits that are smaller, and a least capacity that is larger", () => {
    const manual = {
      maximumTotalLength: m(39),
      maximumIndoorLift: m(1),
      mostConnected: watt(5000),
      leastConnected: watt(6000),
    };
    expect(together([head(20, 3), head(20, 5)], manual)).toEqual([
      `fail: equipment.manual.maximumTotalLength: total-length-above, limit 39 m, total 40 m ${manuals}`,
      `fail: equipment.manual.maximumIndoorLift: indoor-lift-above, lift 2 m, limit 1 m ${manuals}`,
      `fail: equipment.manual: connected-above, limit 5000 W, total 5200 W ${manuals}`,
      `fail: equipment.manual: connected-below, limit 6000 W, total 5200 W ${manuals}`,
    ]);
  });

  it("ask for limits that the manual was not read for, of height only where the units are not level", () => {
    const field = (name: string) =>
      `equipment.manual.${name}: ask, changes part.lines, field field.equipment.manual.${name}`;
    const apart = lines([head(20, 3), head(20, 5)], {}).ask;
    expect(apart).toEqual(["maximumTotalLength", "maximumIndoorLift", "mostConnected"].map(field));
    const level = lines([head(20, 3), head(20, 3)], {}).ask;
    expect(level).toEqual(["maximumTotalLength", "mostConnected"].map(field));
    expect(together([head(20, 3), head(20, 3)], { maximumIndoorLift: m(1) })).toEqual([
      `pass: equipment.manual.maximumIndoorLift: indoor-lift-within, lift 0 m, limit 1 m ${manuals}`,
    ]);
  });

  it("have no total while the length of one is not known", () => {
    const { check, ask } = lines([head(20, 3), head(undefined, 3)], {
      maximumTotalLength: m(40),
      mostConnected: watt(5200),
    });
    expect(check.slice(2)).toEqual([
      `pass: equipment.manual: connected-within, limit 5200 W, total 5200 W ${manuals}`,
    ]);
    expect(ask).toEqual([
      "runs[1].tubing.way: ask-of-runs, changes part.lines + part.pressure-test + part.charge, field field.runs.tubing.way, runs 2",
    ]);
  });

  // 20 + 10 m; the run to the box has no head of its own, so that one head is left.
  it("count the line to a branch box, but no head there", () => {
    const boxed = [head(20, 3, { serves: "branch-box" }), head(10, 3)];
    expect(together(boxed, { maximumTotalLength: m(40), mostConnected: watt(5200) })).toEqual([
      `pass: equipment.manual.maximumTotalLength: total-length-within, limit 40 m, total 30 m ${manuals}`,
    ]);
  });
});
