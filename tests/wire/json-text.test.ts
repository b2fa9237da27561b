// What a text is looked through for before anything is made of it, RFC 8259, sections 4, 7 and 9: names, limits, places.
import { recordCodec } from "hvac-install-math/wire";
import { describe, expect, it } from "vitest";
import type { Shape } from "../../src/shapes/index.ts";
import { codecOf } from "../../src/wire/codec.ts";
import { thrownBy } from "./thrown-by.ts";

const of = (shape: Shape) => codecOf<unknown>({ id: "it", name: "it", shape: () => shape });
const any = of("any");

describe("a field that stands twice is refused", () => {
  // A part of version 1 that moves adds a name of its own, which made up for the one that JSON.parse drops.
  it.each([
    ["name", '{"version":1,"name":"a","name":"b","tubing":{"bends":1}}'],
    ["tubing", '{"version":1,"tubing":{},"tubing":{"bends":1}}'],
  ])("in a record of version 1, too: %s", (path, text) => {
    const error = thrownBy(() => recordCodec.parse(text));
    expect([error.argument, error.value]).toEqual([path, "a field that stands twice"]);
  });

  it("where the first of several forms fits up to there", () => {
    const [one, other] = [
      { fields: { a: "number", b: "number" } },
      { fields: { a: "number", b: "text" } },
    ] as const;
    const either = of({ either: [one, other] });
    expect(either.parse('{"a":1,"b":"x"}')).toEqual({ a: 1, b: "x" });
    expect(thrownBy(() => either.parse('{"a":1,"a":1,"b":"x","b":"x"}')).argument).toBe("a");
  });

  it("before what else is wrong, and by the place of the second", () => {
    const error = thrownBy(() => any.parse('[[1],{"a":{"b":[],"b":1e999}}]'));
    expect([error.argument, error.value]).toEqual(["[1].a.b", "a field that stands twice"]);
  });
});

it("what stands in a text or a name counts for nothing", () => {
  const odd = `"${"[".repeat(40)}": {"a":1,"a":1},\\`;
  for (const value of [odd, [odd, odd], { [odd]: odd, b: 1 }]) {
    expect(any.parse(JSON.stringify(value), { depth: 3, listItems: 2, values: 5 })).toEqual(value);
  }
  const twice = `{"b":${JSON.stringify(odd)},"c":[{}],"c":1}`;
  expect(thrownBy(() => any.parse(twice)).argument).toBe("c");
});

// Each would be refused later too, by the walk, at another place or with other words.
describe("a limit ends the text at the first place beyond it:", () => {
  it("a list", () => {
    expect(any.parse("[[1,2],3]", { listItems: 2 })).toEqual([[1, 2], 3]);
    const error = thrownBy(() => any.parse('{"a":[[1],2,3]}', { listItems: 2 }));
    expect([error.argument, error.value]).toEqual(["a[2]", "one item more"]);
    expect(any.parse('{"a":1,"b":2,"c":3}', { listItems: 1 })).toEqual({ a: 1, b: 2, c: 3 });
  });

  it("the depth", () => {
    expect(any.parse('[1,{"a":[2]}]', { depth: 3 })).toEqual([1, { a: [2] }]);
    const error = thrownBy(() => any.parse('[[],{"a":[{}]}]', { depth: 3 }));
    expect([error.argument, error.value]).toEqual(["[1].a[0]", "a value this deep"]);
    expect(thrownBy(() => any.parse("[1,[]]", { depth: 1 })).argument).toBe("[1]");
    expect(thrownBy(() => any.parse("[1,[2]]", { depth: 1 })).argument).toBe("[1]");
  });

  it("all values", () => {
    // Four values have three commas, and are in a list.
    expect(any.parse("[1,2,3,4]", { values: 5 })).toEqual([1, 2, 3, 4]);
    const error = thrownBy(() => any.parse("[1,2,3,4]", { values: 3 }));
    expect([error.argument, error.value]).toEqual(["it", "one value more"]);
  });
});

it("a byte-order mark is left out, and a text of any indentation is read", () => {
  const value = { a: [1, { b: "x" }] };
  expect(any.parse(`\uFEFF${JSON.stringify(value)}`)).toEqual(value);
  for (const spaces of [0, 2, 10]) {
    const text = any.stringify(value, spaces);
    expect(text).toBe(JSON.stringify(value, undefined, spaces)); // ECMA-262, 25.5.2
    expect(any.parse(text)).toEqual(value);
  }
  expect(any.stringify(value)).toBe('{"a":[1,{"b":"x"}]}');
  for (const spaces of [-1, 11]) {
    expect(thrownBy(() => any.stringify(value, spaces)).argument).toBe("spaces");
  }
});

it("a text that would be too long is not written", () => {
  expect(any.stringify("abc", 0, { textLength: 5 })).toBe('"abc"');
  const error = thrownBy(() => any.stringify("abc", 0, { textLength: 4 }));
  expect([error.argument, error.allowed]).toEqual(["it.length", "at most 4"]);
});
