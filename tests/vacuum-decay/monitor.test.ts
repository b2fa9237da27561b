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
  it("with each of the first eight readings, then with six more and a tenth of the time", () => {
    const times = Array.from({ length: 20 }, (_, i) => 10 * i);
    expect(evidence(times).slice(0, 6)).toEqual([0, 10, 20, 30, 40, 50]);
    expect(evidence(times).slice(6)).toEqual([
      60, 70, 70, 70, 70, 70, 70, 130, 130, 130, 130, 130, 130, 190,
    ]);
    // seven readings within a tenth of the time are not enough
    const dense = [...times.slice(0, 8), 71, 72, 73, 74, 75, 76, 77];
    expect(evidence(dense).slice(7)).toEqual([70, 70, 70, 70, 70, 70, 70, 77]);
  });

  it("with each of the first eight where they come each second, too", () => {
    expect(evidence([0, 1, 2, 3, 4, 5, 6, 7])).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  });

  it("at a checkpoint of the policy", () => {
    expect(evidence([0, 590, 599, 600, 601])).toEqual([0, 590, 590, 600, 600]);
  });

  it("at each checkpoint of a policy of two", () => {
    const two = {
      ...policy,
      checkpoints: [{ at: minute(5), limit: micron(500) }, ...policy.checkpoints],
    };
    const monitor = createDecayMonitor({ ambient: degC(20), policy: two });
    const seen = [0, 290, 299, 301, 590, 599, 601].map((t) => {
      const reading = { elapsed: second(t), pressure: micron(300 + (t % 3)) };
      return Math.round(monitor.add(reading).evidence.in(second));
    });
    expect(seen).toEqual([0, 290, 290, 301, 590, 590, 601]);
  });

  it("before there is any evidence, where the first reading is set aside", () => {
    const monitor = createDecayMonitor({ ambient: degC(20), policy });
    const early = monitor.add({ elapsed: second(-5), pressure: micron(300) });
    expect([early.outcome, early.evidence.in(second)]).toEqual(["inconclusive", 0]);
  });

  it("after a step, from there on", () => {
    const times = Array.from({ length: 40 }, (_, i) => 10 * i);
    const after = [...times, 391, 392, 393, 394];
    const seen = evidence(after, (t) => (t > 390 ? 600 : 300));
    // 391 s waits for its confirmation, 392 s confirms it, and the stretch from there on is the evidence
    expect(seen.slice(-4)).toEqual([320, 1, 1, 1]);
  });

  it("after a step that is confirmed just after a reading over the gauge's range", () => {
    const gauge = { range: micron(1000) };
    const monitor = createDecayMonitor({ ambient: degC(20), gauge, policy });
    const evidenceAt = (t: number, p: number) =>
      Math.round(monitor.add({ elapsed: second(t), pressure: micron(p) }).evidence.in(second));
    for (let t = 0; t <= 390; t += 10) evidenceAt(t, 300 + (t % 3));
    expect(evidenceAt(391, 600)).toBeGreaterThan(300);
    evidenceAt(392, 2000);
    expect(evidenceAt(393, 600)).toBe(2);
  });

  it("when a second reading in a row is over the gauge's range", () => {
    const gauge = { range: micron(1000) };
    const monitor = createDecayMonitor({ ambient: degC(20), gauge, policy });
    const codesAt = (t: number, p: number) => {
      const reading = { elapsed: second(t), pressure: micron(p) };
      return monitor.add(reading).reasons.map(({ code }) => code);
    };
    for (let t = 0; t < 200; t += 10) codesAt(t, 300 + (t % 3));
    expect(codesAt(191, 2000)).not.toContain("vacuum-decay.over-range");
    expect(codesAt(192, 2000)).toContain("vacuum-decay.over-range");
    expect(codesAt(193, 300)).not.toContain("vacuum-decay.over-range");
  });

  it("whenever the whole verdict is asked for", () => {
    const monitor = createDecayMonitor({ ambient: degC(20), policy });
    for (const t of [0, 100, 101]) {
      monitor.add({ elapsed: second(t), pressure: micron(300 + (t % 3)) });
    }
    expect(monitor.assessment().evidence.in(minute)).toBeCloseTo(101 / 60, 9);
  });
});
