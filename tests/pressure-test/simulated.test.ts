// A fast part of the study in tests/studies/pressure-test.study.test.ts, on seeds of its own.
import { describe, expect, it } from "vitest";
import { simulateBalance } from "./simulators/balance.ts";
import { seeded } from "./simulators/random.ts";
import { score } from "./simulators/score.ts";
import { simulateZones } from "./simulators/zones.ts";

const CASES = 60;

describe.each([
  { name: "balance", simulate: simulateBalance, seed: 31 },
  { name: "zones", simulate: simulateZones, seed: 32 },
])("pressure tests of the simulator $name", ({ simulate, seed }) => {
  it.each(["two readings", "log"] as const)("judged by %s", (by) => {
    const s = score(simulate, seed, CASES, by);
    expect(s.tight).toBeGreaterThan(12);
    expect(s.above).toBeGreaterThan(12);
    expect(s.tightFailed).toBeLessThanOrEqual(1);
    expect(s.abovePassed).toBeLessThanOrEqual(1);
    expect(s.wellAbovePassed).toBe(0);
    expect(s.covered / s.cases).toBeGreaterThan(0.87); // 95 %, less three deviations of 60 cases
    expect(s.tightPassed / s.tight).toBeGreaterThan(0.5);
    expect(s.aboveFailed / s.above).toBeGreaterThan(0.7);
  });

  it("gives the same tests for the same seed", () => {
    const first = JSON.stringify(simulate(seeded(seed)));
    expect(JSON.stringify(simulate(seeded(seed)))).toBe(first);
    expect(JSON.stringify(simulate(seeded(seed + 1)))).not.toBe(first);
  });
});
