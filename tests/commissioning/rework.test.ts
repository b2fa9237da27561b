// Which amendments may be of work that was done anew, so that the tests after it are asked for again? What makes a joint,
// whatever its place; a name, a photo or a line make none. Common practice, no source.
import { expect, it } from "vitest";
import type { Amendment } from "../../src/commissioning/amendment.ts";
import { isRework } from "../../src/commissioning/rework.ts";

const of = (path: string, more: Partial<Amendment> = {}): boolean =>
  isRework({ path, previous: 1, by: "N. N.", at: "2026-05-05", reason: "x", ...more });

it.each([
  "runs[0].joints",
  "runs[10].joints[12]",
  "runs[10].joints[12].torque",
  "runs[0].joints[0].flareDiameter",
])("%s may be", (path) => {
  expect(of(path)).toBe(true);
  expect(of(path, { kind: "rework" })).toBe(true);
  expect(of(path, { kind: "correction" })).toBe(false); // by the word of who amended it
  expect(of(path, { previous: undefined })).toBe(false); // recorded for the first time
});

it.each([
  "name",
  "runs[0].joints[0].name",
  "runs[0].joints[0].torqueWindow",
  "runs[0].tubing.length",
  "equipment.runs[0].joints",
])("%s is not", (path) => {
  expect(of(path)).toBe(false);
});
