// A fast part of the study in tests/studies/pressure-test.study.test.ts, on seeds of its own.
import { describe, expect, it } from "vitest";
import { closedForms, molesPerVolume } from "./simulators/closed-forms.ts";
import { score } from "./simulators/score.ts";
import { amount, thermalNetwork } from "./simulators/thermal-network.ts";

const CASES = 60;

describe.each([
  { name: "thermal network", simulate: thermalNetwork, seed: 31 },
  { name: "closed forms", simulate: closedForms, seed: 32 },
])("pressure tests of the simulator $name", ({ simulate, seed }) => {
  it.each(["two readings", "log"] as const)("careful, judged by %s", (by) => {
    const s = score(simulate(seed, { care: "careful" }), CASES, by);
    expect(s.tight).toBeGreaterThan(12);
    expect(s.above).toBeGreaterThan(12);
    expect(s.tightFailed).toBeLessThanOrEqual(1);
    expect(s.abovePassed).toBeLessThanOrEqual(1);
    expect(s.wellAbovePassed).toBe(0);
    expect(s.covered / s.cases).toBeGreaterThan(0.87); // 95 %, less three deviations of 60 cases
    expect(s.tightPassed / s.tight).toBeGreaterThan(0.7);
    expect(s.aboveFailed / s.above).toBeGreaterThan(0.8);
  });

  it.each(["two readings", "log"] as const)("hurried, judged by %s", (by) => {
    const s = score(simulate(seed, { care: "hurried" }), CASES, by);
    expect(s.tightFailed).toBeLessThanOrEqual(2);
    expect(s.wellAbovePassed).toBe(0);
    expect(s.covered / s.cases).toBeGreaterThan(0.87);
  });

  it("gives the same tests for the same seed", () => {
    const first = JSON.stringify(simulate(seed, { care: "hurried" })());
    expect(JSON.stringify(simulate(seed, { care: "hurried" })())).toBe(first);
    expect(JSON.stringify(simulate(seed + 1, { care: "hurried" })())).not.toBe(first);
  });
});

it("has two equations of state that agree within 1e-4 (tables of one reference, read two ways)", () => {
  for (let p = 1e6; p <= 4.4e6; p += 4e5) {
    for (let T = 255; T < 322; T += 6) {
      expect(Math.abs(amount(p, T) / 8.314462618 / molesPerVolume(p, T) - 1)).toBeLessThan(1e-4);
    }
  }
});
