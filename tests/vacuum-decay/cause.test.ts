// The word for shares of the evidence; the thresholds are common practice, no source, as tuning.ts states them.
import { describe, expect, it } from "vitest";
import { causeOf } from "../../src/vacuum-decay/cause.ts";
import type { Odds } from "../../src/vacuum-decay/odds.ts";

const odds = (more: Partial<Odds>): Odds => ({
  leak: 0,
  provenLeak: 0,
  hiddenLeak: 0,
  water: 0,
  bad: 1,
  provenBad: 1,
  outgassing: 0,
  ...more,
});

describe("the cause", () => {
  it.each([
    ["dry-and-tight", { bad: 0.09, leak: 0.05 }],
    ["not-determined", { bad: 0.11, leak: 0.1 }],
    ["leak", { provenLeak: 0.81, water: 0.11 }],
    ["not-determined", { provenLeak: 0.79 }],
    ["not-determined", { provenLeak: 0.99, water: 0.13 }],
    ["moisture", { water: 0.61, hiddenLeak: 0.24 }],
    // 3 to 1 beside water, for the leak and against it alike; common practice, no source
    ["moisture-leak-not-excluded", { water: 0.61, hiddenLeak: 0.26 }],
    ["moisture-leak-not-excluded", { water: 0.99, hiddenLeak: 0.74, provenLeak: 0.92 }],
    ["leak-and-moisture", { water: 0.61, hiddenLeak: 0.76, provenLeak: 0.9 }],
    ["not-determined", { water: 0.59 }],
    ["outgassing", { water: 0.99, outgassing: 0.95, hiddenLeak: 0.1 }],
    ["not-determined", { water: 0.99, outgassing: 0.95, hiddenLeak: 0.3 }],
    ["moisture", { water: 0.99, outgassing: 0.8, hiddenLeak: 0.1 }],
  ] as const)("is %s for %o", (cause, given) => {
    expect(causeOf(odds(given))).toBe(cause);
  });
});
