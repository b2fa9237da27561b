// Every question of a verdict names the step that it changes: with the answer the step passes, without it it does not.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { complete } from "./complete-record.ts";
import { pathsOf, put, type Segment } from "./mutated-record.ts";
import { quickWren } from "./twelve.ts";

const pathText = (path: readonly Segment[]) =>
  path
    .map((key) => (typeof key === "number" ? `[${key}]` : `.${key}`))
    .join("")
    .slice(1);
const judged = (record: InstallationRecord) => {
  const result = assessInstallation(record);
  const outcomes = new Map(result.steps.map(({ name, outcome }) => [name as string, outcome]));
  return { result, outcomes };
};

/** What a record has to have, and what no verdict asks for. */
const kept = ["version", "photos", "signatures"];

describe.each([
  ["a single split", complete],
  ["a unit with quick couplings", quickWren],
])("%s with a field left out", (_, record) => {
  const whole = judged(record);
  const left = pathsOf(record)
    .filter((path) => !path.includes(1)) // the first of each list will do
    .filter(([first, , third]) => !kept.includes(String(first)) && third !== "readings")
    .map((path) => [pathText(path), put(record, path, undefined) as InstallationRecord] as const);

  it("passes as a whole", () => {
    expect(whole.result.outcome).toBe("pass");
  });

  it("asks at the steps that wait for the answer, and nowhere else", () => {
    const wrong: string[] = [];
    for (const [field, without] of left) {
      const { result, outcomes } = judged(without);
      const asking = result.steps.filter(({ missing }) => missing.length > 0);
      for (const { name } of asking) {
        if (outcomes.get(name) === "pass")
          wrong.push(`${field}: ${name} asks, and is ${outcomes.get(name)}`);
      }
      for (const { step, values, code } of [...result.actions, ...result.deciding]) {
        if (step === undefined && !("hold" in values))
          wrong.push(`${field}: ${code} names no verdict`);
        if (step !== undefined && outcomes.get(step) === "pass")
          wrong.push(`${field}: ${code} at ${step}, which passes`);
      }
      // Silence never passes: where the verdict is no pass, something says what to do.
      if (result.outcome !== "pass" && result.actions.length === 0)
        wrong.push(`${field}: nothing to do`);
    }
    expect(wrong).toEqual([]);
  });
});
