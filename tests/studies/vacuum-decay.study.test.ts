// 2 × 2 × 1500 simulated vacuum logs. The thresholds were chosen on simulator 1, seed 1; a shape and two
// thresholds after a first look at simulator 2, seed 2. A first run of this study on seeds 101 to 808 found
// a two mistakes in the rise since isolation, and moved one threshold. None of these seeds is used here.
import { describe, expect, it } from "vitest";
import { runStudy, type StudyResult } from "../vacuum-decay/run-study.ts";
import { simulateChambers } from "../vacuum-decay/simulate-chambers.ts";
import { simulateSpectrum } from "../vacuum-decay/simulate-spectrum.ts";

const part = (result: StudyResult, key: string, of: RegExp) => {
  const whole = Object.entries(result.outcomes)
    .filter(([name]) => of.test(name))
    .reduce((sum, [, n]) => sum + n, 0);
  return (result.outcomes[key] ?? 0) / whole;
};

describe.each([
  ["two chambers", simulateChambers, 909],
  ["two chambers", simulateChambers, 1010],
  ["closed forms", simulateSpectrum, 1111],
  ["closed forms", simulateSpectrum, 1212],
])("%s", (name, simulate, seed) => {
  it(`seed ${seed}`, { timeout: 600_000 }, () => {
    const result = runStudy(simulate, seed, 1500, 5);
    console.log(name, seed, JSON.stringify(result, null, 1));
    const share = (key: string) => (result.causes[key] ?? 0) / result.cases;
    expect(result.outcomes["bad pass"] ?? 0).toBe(0);
    expect(part(result, "sound fail", /^sound/)).toBeLessThanOrEqual(0.01);
    const open =
      ((result.outcomes["sound inconclusive"] ?? 0) + (result.outcomes["bad inconclusive"] ?? 0)) /
      result.cases;
    expect(open).toBeLessThanOrEqual(0.05);
    expect(share("open")).toBeLessThanOrEqual(0.1);
    expect(share("wrong")).toBeLessThanOrEqual(0.02);
    for (const [truth, { n, hits }] of Object.entries(result.coverage)) {
      // target 0.9; outgassing is missed on simulator 2: see docs/guides/vacuum-decay.md
      expect(hits / n, truth).toBeGreaterThanOrEqual(truth === "outgassing" ? 0.85 : 0.9);
    }
    expect(result.medianLive).toBeLessThanOrEqual(0.5);
  });
});
