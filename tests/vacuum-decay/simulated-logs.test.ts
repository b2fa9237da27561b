import { describe, expect, it } from "vitest";
import { runStudy } from "./run-study.ts";
import { simulateChambers } from "./simulate-chambers.ts";
import { simulateSpectrum } from "./simulate-spectrum.ts";

// The full study is tests/studies/vacuum-decay.study.test.ts; here are enough cases to see a regression.
describe.each([
  ["two chambers integrated in time", simulateChambers],
  ["closed forms added up", simulateSpectrum],
])("simulated logs, %s", (_, simulate) => {
  it("passes nothing bad, fails nothing sound, and names the cause", () => {
    const { outcomes, causes, cases, medianLive } = runStudy(simulate, 20_261, 150, 10);
    expect(outcomes["bad pass"] ?? 0).toBe(0);
    expect(outcomes["sound fail"] ?? 0).toBeLessThanOrEqual(1);
    expect((causes.wrong ?? 0) / cases).toBeLessThan(0.05);
    expect((causes.open ?? 0) / cases).toBeLessThan(0.1);
    expect(medianLive).toBeLessThanOrEqual(0.5);
  });
});
