// When a live verdict is renewed, as its doc comment promises; in between the last one stands.
import { degC, micron, minute, second } from "hvac-install-math/quantity";
import { acceptancePolicies, createDecayMonitor } from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";

const policy = acceptancePolicies.commonPractice500; // one checkpoint, after ten minutes

/** Seconds of evidence in the verdict after each reading. */
function evidence(times: readonly number[], pressure: (t: number) => number = () => 300) {
  const monitor = createDecayMonitor({ ambient: degC(20), policy });
  return times.map((t) => {
    const given = { elapsed: second(t), pressure: micron(pressure(t) + ((3 * t) % 7) / 10) };
    return Math.round(monitor.add(given).evidence.in(second));
  });
}

describe("a live verdict is renewed", () => {
  it("when the evidence has grown by a tenth, and by five seconds at least", () => {
    expect(evidence([0, 4, 5, 9, 10])).toEqual([0, 0, 5, 5, 10]);
    expect(evidence([0, 100, 109, 111, 122, 123])).toEqual([0, 100, 100, 111, 111, 123]);
  });

  it("at a checkpoint of the policy", () => {
    expect(evidence([0, 590, 599, 600, 659, 660])).toEqual([0, 590, 590, 600, 600, 660]);
  });

  it("after a step, from there on", () => {
    const times = Array.from({ length: 40 }, (_, i) => 10 * i);
    const after = [...times, 391, 392, 393, 394];
    const seen = evidence(after, (t) => (t > 390 ? 600 : 300));
    // 390 s are not yet a tenth above 360 s; 391 s waits for its confirmation, 392 s confirms it, and the longest
    // stretch stays the evidence
    expect(seen.slice(-5)).toEqual([360, 360, 390, 390, 390]);
  });

  it("after a step that is confirmed just after a reading over the gauge's range", () => {
    const gauge = { range: micron(1000) };
    const monitor = createDecayMonitor({ ambient: degC(20), gauge, policy });
    const evidenceAt = (t: number, p: number) =>
      Math.round(monitor.add({ elapsed: second(t), pressure: micron(p) }).evidence.in(second));
    for (let t = 0; t <= 390; t += 10) evidenceAt(t, 300 + (t % 3));
    expect(evidenceAt(391, 600)).toBe(360);
    evidenceAt(392, 2000);
    expect(evidenceAt(393, 600)).toBe(390);
  });

  it("when a second reading in a row is over the gauge's range", () => {
    const gauge = { range: micron(1000) };
    const monitor = createDecayMonitor({ ambient: degC(20), gauge, policy });
    const codesAt = (t: number, p: number) => {
      const reading = { elapsed: second(t), pressure: micron(p) };
      return monitor.add(reading).reasons.map(({ code }) => code);
    };
    for (let t = 0; t < 200; t += 10) codesAt(t, 300 + (t % 3));
    expect(codesAt(191, 2000)).not.toContain("over-range");
    expect(codesAt(192, 2000)).toContain("over-range");
    expect(codesAt(193, 300)).not.toContain("over-range");
  });

  it("whenever the whole verdict is asked for", () => {
    const monitor = createDecayMonitor({ ambient: degC(20), policy });
    for (const t of [0, 100, 101]) {
      monitor.add({ elapsed: second(t), pressure: micron(300 + (t % 3)) });
    }
    expect(monitor.assessment().evidence.in(minute)).toBeCloseTo(101 / 60, 9);
  });
});
