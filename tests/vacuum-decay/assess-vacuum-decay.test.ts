import { degC, liter, micron, micronPerMinute, percent, second } from "hvac-install-math/quantity";
import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";

const log = (pressure: (t: number) => number, until = 900, step = 5) =>
  Array.from({ length: Math.floor(until / step) + 1 }, (_, i) => ({
    elapsed: second(step * i),
    pressure: micron(Math.round(pressure(step * i))),
  }));
const options = {
  ambient: degC(20),
  volume: liter(3),
  gauge: { accuracy: percent(5) },
  policy: acceptancePolicies.commonPractice500,
  isolation: "isolation-valve",
} as const;

describe("assessVacuumDecay", () => {
  it("passes a vacuum that stays, and says which leak it could have shown", () => {
    const result = assessVacuumDecay({ ...options, readings: log((t) => 320 + (t % 3)) });
    expect([result.outcome, result.cause]).toEqual(["pass", "dry-and-tight"]);
    expect(result.smallestLeak?.in(micronPerMinute)).toBeGreaterThan(0);
  });

  it("calls a straight rise a leak with its rate", () => {
    const result = assessVacuumDecay({ ...options, readings: log((t) => 300 + t) });
    expect([result.outcome, result.cause]).toEqual(["fail", "leak"]);
    expect(result.leak?.value.in(micronPerMinute)).toBeCloseTo(60, 0);
  });

  it("calls a rise that levels off moisture, with its plateau", () => {
    const readings = log((t) => 300 + 2000 * -Math.expm1(-t / 200), 1500);
    const result = assessVacuumDecay({ ...options, readings });
    expect([result.outcome, result.cause]).toEqual(["fail", "moisture"]);
    expect(result.plateau?.pressure.value.in(micron)).toBeCloseTo(2300, -2);
  });

  it("tells leak and moisture apart when both are there", () => {
    const readings = log((t) => 300 + 2000 * -Math.expm1(-t / 120) + 1.5 * t, 1500);
    const result = assessVacuumDecay({ ...options, readings });
    expect([result.outcome, result.cause]).toEqual(["fail", "leak-and-moisture"]);
  });
});
