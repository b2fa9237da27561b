// Every slip gets its right answer, and its unslipped twin passes. The figures by part are printed.
import { describe, expect, it } from "vitest";
import { slips } from "./all.ts";
import { judgeAll, scoreByPart, scoreOf } from "./score.ts";
import type { SlipPart } from "./slip.ts";

/** The parts that the catalogue has to reach, each with ten slips at least. */
const parts: readonly SlipPart[] = [
  "line-set",
  "charge",
  "pressure-test",
  "vacuum-decay",
  "flare-joint",
  "circuit-protection",
  "supply-voltage",
  "condensate",
  "charge-limit",
  "operating-check",
  "refrigerants",
  "read-quantity",
  "logs",
  "record",
];

describe("the slip catalogue", () => {
  const judged = judgeAll(slips);
  const whole = scoreOf(judged);
  console.table({ ...Object.fromEntries(scoreByPart(judged)), all: whole });

  it("has at least 250 slips, each with a name of its own, over all modules and the record", () => {
    expect(slips.length).toBeGreaterThanOrEqual(250);
    expect(new Set(slips.map(({ id }) => id)).size).toBe(slips.length);
    for (const part of parts) {
      expect(slips.filter((one) => one.part === part).length, part).toBeGreaterThanOrEqual(10);
    }
  });

  it.each(judged.map((one) => [one.slip.id, one] as const))("answers %s", (_, one) => {
    const { slip, twin, answer } = one;
    expect(twin.outcome, `twin: ${twin.because.join("; ")}`).toBe("pass");
    expect(one.shown, answer.because.join("; ")).toBe(
      slip.answer === "unknowable" ? "pass" : slip.answer,
    );
  });

  it("lets no slip pass without a finding first, unless nobody can know", () => {
    expect(whole.missed).toBe(0);
  });

  it("stops at least 80 of 100: refused, fail or inconclusive", () => {
    const stopped = whole.refused + whole.fail + whole.inconclusive;
    expect(stopped / whole.slips).toBeGreaterThanOrEqual(0.8);
  });
});
