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
    // 3 to 1 for a leak or water, and against the other; common practice, no source
    ["leak", { provenLeak: 0.76, water: 0.24 }],
    ["not-determined", { provenLeak: 0.74 }],
    ["not-determined", { provenLeak: 0.99, water: 0.26 }],
    ["moisture", { water: 0.76, hiddenLeak: 0.24 }],
    ["moisture-leak-not-excluded", { water: 0.76, hiddenLeak: 0.26 }],
    // 10 to 3 for a leak beside water
    ["moisture-leak-not-excluded", { water: 0.99, hiddenLeak: 0.76, provenLeak: 0.92 }],
    ["leak-and-moisture", { water: 0.76, hiddenLeak: 0.78, provenLeak: 0.9 }],
    ["not-determined", { water: 0.74 }],
    ["outgassing", { water: 0.99, outgassing: 0.95, hiddenLeak: 0.1 }],
    ["not-determined", { water: 0.99, outgassing: 0.95, hiddenLeak: 0.3 }],
    ["moisture", { water: 0.99, outgassing: 0.8, hiddenLeak: 0.1 }],
    // 0.88 of the water's share: 0.704 of 0.8
    ["outgassing", { water: 0.8, outgassing: 0.71, hiddenLeak: 0.1 }],
    ["moisture", { water: 0.8, outgassing: 0.69, hiddenLeak: 0.1 }],
  ] as const)("is %s for %o", (cause, given) => {
    expect(causeOf(odds(given))).toBe(cause);
  });
});
