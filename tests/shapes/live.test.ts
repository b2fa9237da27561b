// A live value is checked as it is: what a caller of the library passes stays what it is, in a frozen copy of its own.
import { kg, mm } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { checkOf, type Shape } from "../../src/shapes/index.ts";
import { thrownBy } from "../wire/thrown-by.ts";

const helium = { mass: 4 };
const shape: Shape = {
  fields: {
    "size?": "length",
    "of?": "quantity",
    "sold?": { unit: "mass" },
    "gas?": { named: () => ({ helium }) },
  },
};
const check = checkOf<object>(shape);

it("keeps quantities, units and objects themselves, and copies what holds them", () => {
  const given = { size: mm(3), of: kg(1), sold: kg, gas: helium };
  const checked = check(given, "lamp");
  expect(checked).toEqual(given);
  expect(checked).not.toBe(given);
  expect(Object.isFrozen(checked)).toBe(true);
  expect((checked as typeof given).gas).toBe(helium);
  expect(Object.isFrozen(given)).toBe(false);
});

it.each([
  ["size", kg(1), "the kind length"],
  ["size", { kind: "length", value: 1, unit: "m" }, "the kind length"],
  ["of", 1, "a quantity"],
  ["sold", mm, "a unit of mass"],
  ["sold", "kg", "a unit of mass"],
  ["gas", "helium", "an object"],
  ["gas", null, "an object"],
])("refuses %s %o, and names it under the path of the whole", (field, value, allowed) => {
  const wrong = { [field]: value };
  expect(thrownBy(() => check(wrong, "lamp"))).toMatchObject({ argument: field, allowed });
  expect(thrownBy(() => check(wrong, "lamp", ["rooms", 2])).argument).toBe(`rooms[2].${field}`);
});

it("tells what a person enters there: a figure of the kind, or of any", () => {
  const asked = (wrong: object) => thrownBy(() => check(wrong, "lamp")).hint?.code;
  expect(asked({ size: 3 })).toBe("quantity.enter.length");
  expect(asked({ of: 3 })).toBe("quantity.enter.quantity");
});

it("ends a ring, which has no end of its own", () => {
  const ring: Record<string, unknown> = {};
  ring.ring = ring;
  expect(thrownBy(() => checkOf("any")(ring, "it")).allowed).toBe("at most 500 deep");
});
