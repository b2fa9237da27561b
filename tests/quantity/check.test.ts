// The checks that every module makes of its arguments, one by one: what each lets through as it came, and what
// its error says. The expected sentences follow the pattern "argument: value is not allowed; allowed: …".
import {
  degC,
  degF,
  isInvalidInputError,
  m,
  OutOfRangeError,
  psi,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import {
  flagOf,
  listOf,
  numberOf,
  objectOf,
  oneOf,
  siOf,
  textOf,
  wholeNumberOf,
} from "../../src/quantity/check.ts";

// biome-ignore lint/suspicious/noExplicitAny: a JavaScript caller sees no types.
const any = (value: unknown): any => value;

/** What the call throws, without the part that all errors share. */
function refusal(call: () => unknown): string {
  try {
    return `no error, but ${String(call())}`;
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    const { name, argument, value, allowed, hint } = error;
    expect(name).toBe("InvalidInputError");
    return `${argument}: ${value}; ${allowed}${hint ? `. ${hint.code}` : ""}`;
  }
}

/** A list of three with nothing at all at one place. */
const holed = (at: number): number[] => {
  const list = [1, 2, 3];
  delete list[at];
  return list;
};

describe("what fits is given back as it came", () => {
  it("an object, a list, a text, a switch, a number, a word", () => {
    const [options, list] = [{ a: 1 }, [3, 1]];
    expect(objectOf("options", options)).toBe(options);
    expect(listOf("readings", list)).toBe(list);
    expect(listOf("readings", list, 2)).toBe(list);
    expect(listOf("readings", [])).toEqual([]);
    expect(listOf("readings", [undefined])).toHaveLength(1); // there, if with nothing in it
    expect(textOf("name", "")).toBe("");
    expect(flagOf("visible", false)).toBe(false);
    expect(numberOf("share", -0.5)).toBe(-0.5);
    expect(wholeNumberOf("count", 3, { min: 1 })).toBe(3);
    expect(oneOf("phases", 3, [1, 3])).toBe(3);
  });
});

describe("what does not fit is named, with what would", () => {
  it.each<[string, () => unknown, string]>([
    ["nothing for an object", () => objectOf("o", any(undefined)), "o: undefined; an object"],
    ["null for an object", () => objectOf("o", any(null)), "o: null; an object"],
    ["an array for an object", () => objectOf("o", any([1])), "o: an array; an object"],
    ["a text for an object", () => objectOf("o", any("x")), 'o: the text "x"; an object'],
    [
      "a function for an object",
      () =>
        objectOf(
          "o",
          any(() => 1),
        ),
      "o: a function; an object",
    ],
    ["an object for a list", () => listOf("l", any({ length: 1 })), "l: an object; an array"],
    ["a hole at the start of a list", () => listOf("l", holed(0)), "l[0]: undefined; a value"],
    ["a hole at the end of a list", () => listOf("l", holed(2)), "l[2]: undefined; a value"],
    ["a list too long", () => listOf("l", [1, 2, 3], 2), "l.length: 3; at most 2"],
    ["a number for a text", () => textOf("t", any(3)), "t: 3; a text. quantity.enter.text"],
    [
      "a text for a switch",
      () => flagOf("f", any("no")),
      'f: the text "no"; true or false. quantity.enter.yes-or-no',
    ],
    [
      "nothing for a switch",
      () => flagOf("f", any(undefined)),
      "f: undefined; true or false. quantity.enter.yes-or-no",
    ],
    [
      "a fraction for a count",
      () => wholeNumberOf("n", 2.5, {}),
      "n: 2.5; a whole number. quantity.enter.whole-number",
    ],
    ["a count too small", () => wholeNumberOf("n", 0, { min: 1 }), "n: 0; at least 1"],
    [
      "a text for a number",
      () => numberOf("n", any("3")),
      'n: the text "3"; a finite number. quantity.enter.number',
    ],
    [
      "another word",
      () => oneOf("w", any("x"), ["a", "b"]),
      'w: the text "x"; a, b. quantity.enter.choice',
    ],
    [
      "another word, with what to do",
      () => oneOf("w", any("x"), ["a", "b"], { code: "a.hint", values: {} }),
      'w: the text "x"; a, b. a.hint',
    ],
  ])("%s", (_, call, message) => {
    expect(refusal(call)).toBe(message);
  });
});

describe("limits", () => {
  it("take their own value with min and max, and leave it out with above and below", () => {
    const inside = { min: 1, max: 2 };
    const between = { above: 1, below: 2 };
    expect([1, 1.5, 2].map((value) => numberOf("n", value, inside))).toEqual([1, 1.5, 2]);
    expect(numberOf("n", 1.5, between)).toBe(1.5);
    expect(refusal(() => numberOf("n", 0.9, inside))).toBe("n: 0.9; at least 1 and at most 2");
    expect(refusal(() => numberOf("n", 2.1, inside))).toBe("n: 2.1; at least 1 and at most 2");
    expect(refusal(() => numberOf("n", 1, between))).toBe("n: 1; more than 1 and less than 2");
    expect(refusal(() => numberOf("n", 2, between))).toBe("n: 2; more than 1 and less than 2");
  });

  it("are told in the caller's unit, on its own zero", () => {
    // 140 °F = 60 °C = 333.15 K
    const limits = { max: 333.15 };
    expect(siOf("t", degF(140), "temperature", limits)).toBeCloseTo(333.15, 9);
    expect(refusal(() => siOf("t", degF(150), "temperature", limits))).toBe(
      "t: 150 °F; at most 140 °F",
    );
    expect(refusal(() => siOf("t", degC(61), "temperature", limits))).toBe(
      "t: 61 °C; at most 60 °C",
    );
  });

  it("take their own value in whatever unit it is written, and nothing that differs in the twelfth digit", () => {
    // −40 °C and −40 °F, 60 °C and 140 °F: in binary each is a little off the other.
    const limits = { min: 233.15, max: 333.15 };
    for (const edge of [degC(-40), degF(-40), degC(60), degF(140)]) {
      expect(siOf("t", edge, "temperature", limits)).toBe(edge.si);
    }
    for (const beyond of [degC(-40 - 1e-8), degC(60 + 1e-8), degF(-40 - 1e-8), degF(140 + 1e-8)]) {
      expect(() => siOf("t", beyond, "temperature", limits)).toThrow("at least -40");
    }
    // A plain number has no unit to come from.
    expect(refusal(() => numberOf("n", 1 + 2e-16, { max: 1 }))).toContain("at most 1");
  });

  it("can be a model's range, which is an error of its own", () => {
    const beyond = () => siOf("drop", psi(3), "pressureDifference", { max: 1 }, OutOfRangeError);
    expect(beyond).toThrow(OutOfRangeError);
    expect(() => numberOf("share", 2, { max: 1 }, OutOfRangeError)).toThrow(OutOfRangeError);
  });

  it("hold every quantity to sizes whose products and quotients a number can hold", () => {
    expect(siOf("l", m(1e30), "length")).toBe(1e30);
    expect(siOf("l", m(-1e30), "length")).toBe(-1e30);
    expect(siOf("l", m(1e-31), "length")).toBe(1e-31);
    expect(siOf("l", m(1e-29), "length", { above: 0 })).toBe(1e-29);
    expect(refusal(() => siOf("l", m(1.1e30), "length"))).toBe("l: 1.1e+30 m; at most 1e+30 m");
    expect(refusal(() => siOf("l", m(-1.1e30), "length"))).toBe("l: -1.1e+30 m; at most 1e+30 m");
    expect(refusal(() => siOf("l", m(1e-31), "length", { above: 0 }))).toBe(
      "l: 1e-31 m; more than 1e-30 m and at most 1e+30 m",
    );
    expect(refusal(() => siOf("l", m(0), "length", { above: 0 }))).toBe("l: 0 m; more than 0 m");
  });
});
