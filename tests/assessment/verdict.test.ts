import {
  explain,
  type Outcome,
  overallOutcome,
  type Statement,
} from "hvac-install-math/assessment";
import { kPa, psi, psig } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { cite, estimate, statement } from "../../src/assessment/assessment.ts";

describe("explain", () => {
  const said = (text: string, values: Statement["values"] = {}) =>
    statement("a-code", text, values);

  it("puts figures, numbers and words where their names stand", () => {
    const values = { drop: psi(2.9), times: 3, where: "the flare nut" };
    expect(explain(said("Fell {drop} {times} times at {where}; {drop}.", values))).toBe(
      "Fell 2.9 psi 3 times at the flare nut; 2.9 psi.",
    );
  });

  it("prints in the reader's units when told how", () => {
    const show = (value: unknown) =>
      psi(1)
        .plus(value as never)
        .toString(kPa, 1);
    expect(explain(said("{drop}", { drop: psi(1) }), show)).toBe("13.8 kPa");
  });

  it("leaves a name without a figure standing, so that the gap is seen", () => {
    expect(explain(said("It fell by {drop}."))).toBe("It fell by {drop}.");
  });

  it("does not take what every object inherits for a figure", () => {
    const text = "{constructor} {toString} {__proto__} {hasOwnProperty}";
    expect(explain(said(text))).toBe(text);
  });

  it("takes such a name when it is a figure, also of an object without a prototype", () => {
    const values = Object.assign(Object.create(null), { constructor: 1, toString: "two" });
    expect(explain(said("{constructor} {toString}", values))).toBe("1 two");
  });

  it("does not read a figure as a pattern or as another name", () => {
    const values = { a: "$& $1 {b}", b: "no" };
    expect(explain(said("{a}", values))).toBe("$& $1 {b}");
  });

  it("prints 0 and an empty word as they are", () => {
    expect(explain(said("[{zero}{nothing}]", { zero: 0, nothing: "" }))).toBe("[0]");
  });

  it("leaves text without names alone", () => {
    expect(explain(said("100 % {} { drop } {a-b}"))).toBe("100 % {} { drop } {a-b}");
  });
});

describe("overallOutcome", () => {
  it.each<[Outcome[], Outcome]>([
    [["pass"], "pass"],
    [["pass", "pass"], "pass"],
    [["pass", "inconclusive"], "inconclusive"],
    [["inconclusive", "fail", "pass"], "fail"],
    [["fail"], "fail"],
    [[], "inconclusive"],
  ])("of %j is %s", (outcomes, whole) => {
    expect(overallOutcome(outcomes)).toBe(whole);
  });

  it("does not let a word that it does not know pass", () => {
    expect(() => overallOutcome(["pass", "failed" as Outcome])).toThrow(
      'outcomes[1]: the text "failed" is not allowed; allowed: pass, fail, inconclusive',
    );
    expect(() => overallOutcome([undefined as never])).toThrow("outcomes[0]: undefined");
  });
});

describe("the short forms for modules", () => {
  it("an estimate carries k = 2 and the unit of the difference", () => {
    const { value, standardUncertainty, expandedUncertainty, coverageFactor } = estimate(
      psig(118),
      psi(0.5).si,
    );
    expect(value.toString()).toBe("118 psig");
    expect(standardUncertainty.toString()).toBe("0.5 psi");
    expect(expandedUncertainty.toString()).toBe("1 psi");
    expect(coverageFactor).toBe(2);
  });

  it("a citation may name no clause", () => {
    expect(cite("span-2000")).toEqual({ source: "span-2000", clause: "" });
  });
});

it("names what is missing when JavaScript passes no statement and no list", () => {
  for (const nothing of [undefined, null, 3, "text", []]) {
    expect(() => explain(nothing as never)).toThrow(/^said: .* allowed: an object$/);
  }
  expect(() => explain({ code: "a", text: "a" } as never)).toThrow(/^said\.values: /);
  expect(() => overallOutcome(undefined as never)).toThrow(/^outcomes: .* allowed: an array$/);
});
