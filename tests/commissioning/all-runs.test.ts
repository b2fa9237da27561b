// All runs together against the manual, measured with one tape. It errs the same way on each run, so that three lengths
// of ±1 ft have a standard uncertainty of 3 · 1 ft/√3 (JCGM 100:2008, 4.3.7 and 5.2.2), and what lies within 1.645 of
// these beyond a limit has not failed yet (JCGM 106:2012, 8.3.3).
import { ft } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";
import { threeHeads } from "./three-heads.ts";

const outcome = (name: "total-length" | "indoor-lift", changes: Change) =>
  assessInstallation(changed(changes, threeHeads))
    .steps.flatMap(({ checks }) => checks)
    .find((check) => check.name === name)?.assessment.outcome;
const tape = { "instruments.tape.accuracy": ft(1) };

// 41 ft + 18 ft + 33 ft = 92 ft; 1.645 · 3 ft/√3 = 2.85 ft, and 1.90 ft where one length is nominal.
it.each([
  [89.2, tape, "inconclusive"],
  [89.1, tape, "fail"],
  [90.2, { ...tape, "runs[1].tubing.lengthIs": "nominal" }, "inconclusive"],
  [90, { ...tape, "runs[1].tubing.lengthIs": "nominal" }, "fail"],
  [91.9, { "instruments.tape": {} }, "fail"],
] as const)("92 ft in all against %f ft with %j is %s", (limit, changes, expected) => {
  const manual = { "equipment.manual.maximumTotalLength": ft(limit) };
  expect(outcome("total-length", { ...changes, ...manual })).toBe(expected);
});

// 19 ft − 9 ft = 10 ft; 1.645 · 2 ft/√3 = 1.90 ft.
it.each([
  [8.2, "inconclusive"],
  [8, "fail"],
])("heads 10 ft above each other against %f ft are %s", (limit, expected) => {
  const manual = { "equipment.manual.maximumIndoorLift": ft(limit) };
  const changes = { ...tape, ...manual, "runs[0].tubing.lift": ft(19) };
  expect(outcome("indoor-lift", changes)).toBe(expected);
});

it("the total is judged once every length is known", () => {
  const changes = {
    "equipment.manual.maximumTotalLength": ft(50),
    "runs[1].tubing.length": undefined,
  };
  expect(outcome("total-length", changes)).toBeUndefined();
});
