// Records as long as they may be, which take seconds. The limits are those that the documentation of checkRecord names.
import { checkRecord, type InstallationRecord } from "hvac-install-math/commissioning";
import { second } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { argumentOf } from "../argument-of.ts";
import { assessInstallation } from "./assess.ts";
import { complete } from "./complete-record.ts";

it("judges a log of 200 000 readings, and a test by it", () => {
  const [test] = complete.pressureTests ?? [];
  const [start, end] = test?.readings ?? [];
  const readings = Array.from({ length: 200_000 }, (_, i) => ({
    ...(i < 100_000 ? start : end),
    elapsed: second(i / 4),
  }));
  const record = { ...complete, pressureTests: [{ ...test, readings }] };
  const steps = assessInstallation(record as InstallationRecord).steps;
  const names = steps.flatMap(({ checks }) => checks.map(({ name }) => name));
  expect(names).toContain("test-hold");
});

it("ends a history at 100 000 amendments", () => {
  const who = { by: "N. N.", at: "2026-05-06", reason: "corrected" };
  const entry = { ...who, path: "runs[0].tubing.bends", previous: 4 };
  const history = (n: number) => ({ ...complete, history: Array(n).fill(entry) });
  expect(() => checkRecord(history(100_000))).not.toThrow();
  expect(argumentOf(() => checkRecord(history(100_001)))).toBe("history.length");
});
