import { pressureTestPlot, vacuumDecayPlot } from "hvac-install-math/plots";
import { assessPressureLog } from "hvac-install-math/pressure-test";
import { micron, second } from "hvac-install-math/quantity";
import { assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { expect, it } from "vitest";
import { decays, nightLog, reader } from "./samples.ts";

/** Processor time of the fastest of a few calls, so that a busy machine does not count. */
function milliseconds(act: () => unknown): number {
  const each = Array.from({ length: 6 }, () => {
    const before = process.cpuUsage();
    act();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return Math.min(...each);
}

it("draws 100 000 rows in less than 100 ms, with 600 points", () => {
  const night = nightLog(0.4, 100_000);
  const verdict = assessPressureLog(night);
  expect(milliseconds(() => pressureTestPlot(night, verdict, reader))).toBeLessThan(100);
  const readings = Array.from({ length: 100_000 }, (_, i) => ({
    elapsed: second(i / 50),
    pressure: micron(300 + i / 200 + 5 * Math.sin(i)),
  }));
  const decay = { ...(decays.leak as (typeof decays)[string]), readings };
  const found = assessVacuumDecay(decay);
  expect(milliseconds(() => vacuumDecayPlot(decay, found, reader))).toBeLessThan(100);
  for (const svg of [
    pressureTestPlot(night, verdict, reader),
    vacuumDecayPlot(decay, found, reader),
  ]) {
    for (const [, d = ""] of svg.matchAll(/ d="([^"]*)"/g)) {
      expect(d.split(/[ML]/).length).toBeLessThanOrEqual(2 * 600 + 2);
    }
  }
});
