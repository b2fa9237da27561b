// Causes as the decay picture of installation manuals has them: a leak keeps rising, water rises and levels off, a
// dry and tight system stays. What counts as material and as sure is common practice, no source: tuning.ts.
import { describe, expect, it } from "vitest";
import { causeOf, sharesOf } from "../../src/vacuum-decay/cause.ts";
import type { Component } from "../../src/vacuum-decay/component.ts";
import { slowShapes } from "../../src/vacuum-decay/shapes.ts";
import { model } from "./model.ts";

const shares = { steady: 0, leak: 0, moisture: 0, outgassing: 0, both: 0 };
const shape = (name: (typeof slowShapes)[number], amplitude: number, tau = 200) => ({
  shape: slowShapes.indexOf(name),
  amplitude,
  tau,
});
/** Ten minutes' hold and log, 1 Pa material. */
const sorted = (more: Partial<Component>) =>
  sharesOf([model(more)], { material: 1, hold: 600, first: 0, T: 600 });

describe("the shares of the evidence", () => {
  it.each([
    ["a constant", {}, "steady"],
    ["a line that rises by less than is material", { slope: 0.9 / 600 }, "steady"],
    ["a line that rises by exactly what is material", { slope: 1 / 600 }, "steady"],
    ["a line that rises by more", { slope: 1.1 / 600 }, "leak"],
    ["a saturating rise that is not material", shape("saturating", 0.9), "steady"],
    // the half-order rise is over after 2 τ
    ["a rise by exactly what is material", shape("halfOrder", 1), "moisture"],
    [
      "a line with a bend of exactly what is material",
      { slope: 5 / 600, ...shape("halfOrder", 1) },
      "leak",
    ],
    ["a saturating rise", shape("saturating", 3), "moisture"],
    ["a half-order rise", shape("halfOrder", 3), "moisture"],
    ["a logarithmic rise", shape("logarithmic", 3), "outgassing"],
    ["a square-root rise", shape("squareRoot", 3), "outgassing"],
    ["a line with a bend", { slope: 5 / 600, ...shape("saturating", 3) }, "both"],
    [
      "a line with a bend that is not material",
      { slope: 5 / 600, ...shape("saturating", 1) },
      "leak",
    ],
    // 2 of 102 Pa may be the gauge's bent scale
    [
      "a steep line with a bend below 5 % of it",
      { slope: 100 / 600, ...shape("saturating", 2) },
      "leak",
    ],
    [
      "a steep line with a bend above 5 % of it",
      { slope: 100 / 600, ...shape("saturating", 9) },
      "both",
    ],
    // within ten minutes a slow curve is as straight as a line: f(T) − T·f′(T) of 3 Pa at 10 τ is 0.01 Pa
    [
      "a line with a curve too slow to bend",
      { slope: 5 / 600, ...shape("saturating", 3, 6000) },
      "leak",
    ],
  ] as const)("count %s as it is", (_, more, share) => {
    expect(sorted(more)).toEqual({ ...shares, [share]: 1 });
  });

  it("reckon the rise from the first reading", () => {
    // 41 Pa of 44 have risen before the first reading at 60 s: the bend of 2 Pa is more than 5 % of the rest
    const early = { slope: 20 / 600, fast: 0, fast1: 41, ...shape("saturating", 3) };
    const of = (first: number) =>
      sharesOf([model(early)], { material: 1, hold: 600, first, T: 600 });
    expect(of(0).leak + of(60).both).toBe(2);
  });

  it("add up the weights", () => {
    const all = sharesOf(
      [model({ weight: 0.25 }), model({ weight: 0.5 }), model({ weight: 0.25, slope: 1 })],
      { material: 1, hold: 600, first: 0, T: 600 },
    );
    expect(all).toEqual({ ...shares, steady: 0.75, leak: 0.25 });
  });
});

describe("the cause", () => {
  it.each([
    [{ steady: 0.81, leak: 0.19 }, "dry-and-tight"],
    [{ steady: 0.8, leak: 0.2 }, "undecided"],
    [{ steady: 0.19, leak: 0.81 }, "leak"],
    [{ leak: 0.8, moisture: 0.2 }, "undecided"],
    [{ leak: 0.3, moisture: 0.4, both: 0.3 }, "undecided"],
    [{ steady: 0.2, moisture: 0.4, both: 0.4 }, "moisture-leak-not-excluded"],
    [{ moisture: 0.9, outgassing: 0.1 }, "undecided"],
    [{ moisture: 0.99, outgassing: 0.01 }, "moisture-leak-not-excluded"],
    [{ moisture: 0.3, outgassing: 0.7 }, "outgassing"],
    [{ moisture: 0.5, outgassing: 0.5 }, "undecided"],
    [{ both: 0.8, outgassing: 0.2 }, "undecided"],
    [{ both: 0.74, outgassing: 0.26 }, "outgassing"],
    [{ both: 0.75, outgassing: 0.25 }, "undecided"],
  ])("of %o is %s", (given, cause) => {
    expect(causeOf({ ...shares, ...given }, false, false)).toBe(cause);
  });

  it("is a leak beside moisture when it is proven, and moisture alone when it is excluded", () => {
    const wet = { ...shares, moisture: 0.5, both: 0.5 };
    expect(causeOf(wet, true, false)).toBe("leak-and-moisture");
    expect(causeOf(wet, false, true)).toBe("moisture");
    expect(causeOf(wet, false, false)).toBe("moisture-leak-not-excluded");
  });
});
