import { describe, expect, it } from "vitest";
import { simulateBalance } from "./simulators/balance.ts";
import { simulateClosedForm } from "./simulators/closed-form.ts";
import { type FieldEffect, fieldEffects, type Truth } from "./simulators/log.ts";
import { addScore, emptyScore } from "./simulators/score.ts";

const truths: readonly Truth[] = ["sound", "leak", "water", "both"];

// The full study is tests/studies/vacuum-decay.study.test.ts; here are enough cases to see a regression.
describe.each([
  ["a gas balance stepped through time", simulateBalance],
  ["closed forms added up", simulateClosedForm],
])("simulated logs, %s", (_, simulate) => {
  const score = (effects: readonly FieldEffect[], each: number) => {
    const tally = emptyScore();
    let seed = 700_000;
    for (const effect of effects) {
      for (let i = 0; i < each; i++) {
        const truth = truths[i % 4] as Truth;
        const log = simulate(seed++, truth, effect);
        addScore(tally, `#${seed} ${effect}`, log, truth, i % 10 === 0);
      }
    }
    return tally;
  };

  it("passes nothing bad, fails nothing sound, and names the cause", () => {
    const tally = score(["none"], 100);
    expect(tally.misses.filter((miss) => miss.includes("MISSED"))).toEqual([]);
    expect([tally.badPassed, tally.soundFailed, tally.livePassWrong]).toEqual([0, 0, 0]);
    expect(tally.undecided / tally.logs).toBeLessThan(0.1);
    expect(tally.wrong / tally.logs).toBeLessThan(0.06);
  });

  it("passes nothing bad with what happens at a site, but a pump valve that weeps", () => {
    const tally = score(
      fieldEffects.filter((effect) => effect !== "pump-valve-weeps"),
      8,
    );
    expect(tally.badPassed).toBe(0);
    expect(tally.soundFailed).toBeLessThanOrEqual(1);
  });
});
