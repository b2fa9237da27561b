// Every form that a shape can have, in one small invented document: reading, writing, JSON Schema and zod agree on it.
// What is right is said here by hand, from the words of the shapes; the validator of JSON Schema is not ours.
import { isQuantity, kg, mm, type Unit } from "hvac-install-math/quantity";
import { jsonSchemaOf } from "hvac-install-math/wire";
import { schemaOf } from "hvac-install-math/wire/zod";
import { describe, expect, it } from "vitest";
import type { FieldsShape, Shape } from "../../src/shapes/index.ts";
import { codecOf } from "../../src/wire/codec.ts";
import { mistakesBy } from "./mistakes-by.ts";
import { thrownBy } from "./thrown-by.ts";

const held = { helium: { mass: 4 }, argon: { mass: 40 } };
const wood = { fields: { made: { words: ["wood"] }, age: "number" } } as const;
const steel = { fields: { made: { words: ["steel"] }, painted: "flag" } } as const;
const first = { fields: { issue: { words: [1] }, pages: "number" } } as const;

const shape: FieldsShape = {
  type: "Lamp",
  fields: {
    name: "text",
    "height?": "length",
    "measured?": "quantity",
    "count?": "number",
    "lit?": "flag",
    "hungAt?": "time",
    "color?": { words: ["red", "green"] },
    "phases?": { words: [1, 3] },
    "tags?": { list: "text" },
    "pair?": { items: ["text", "number"] },
    "free?": "any",
    "where?": "path",
    "prices?": { each: "number" },
    "post?": { by: "made", cases: { wood, steel } },
    "manual?": { by: "issue", cases: { 1: first } },
    "said?": { statements: [{ "lamp.hot": { heat: "temperature" }, "lamp.off": {} }] },
    "sold?": { unit: "mass" },
    "gas?": { named: () => held },
    "size?": { either: ["length", "text", { list: "length" }] },
    "rate?": { either: ["length", { fields: { per: "length" } }] },
    "change?": { type: "Change", fields: { path: "path", value: { at: "path" } } },
  },
};
const of = (shape: Shape) =>
  codecOf<Record<string, unknown>>({ id: "lamp", name: "lamp", shape: () => shape });
const codec = of(shape);
const schema = schemaOf(codec);
const mistakes = mistakesBy(jsonSchemaOf(codec));

const m = (value: unknown, unit = "m") => ({ kind: "length", value, unit });
const hot = { code: "lamp.hot", values: { heat: { kind: "temperature", value: 90, unit: "°C" } } };

describe("a document that the shape allows", () => {
  it.each<[string, object]>([
    ["texts", { name: "" }],
    ["a quantity of its kind", { height: m(2) }],
    ["a quantity of any kind", { measured: { kind: "mass", value: 1, unit: "kg" } }],
    ["numbers", { count: -0.5 }],
    ["nought", { count: 0 }],
    ["flags", { lit: false }],
    ["a day", { hungAt: "2026-05-04" }],
    ["a moment", { hungAt: "2026-05-04T14:30:00Z" }],
    ["words", { color: "green" }],
    ["numbers as words", { phases: 3 }],
    ["a list", { tags: ["a", "b"] }],
    ["an empty list", { tags: [] }],
    ["just so many items", { pair: ["a", 1] }],
    ["any data", { free: [null, true, "a", 1, { b: [m(1)] }] }],
    ["a path", { where: "post.age" }],
    ["names of its writer's own", { prices: { USD: 3, EUR: 2 } }],
    ["one of two objects", { post: { made: "wood", age: 3 } }],
    ["the other", { post: { made: "steel", painted: true } }],
    ["one that a number tells", { manual: { issue: 1, pages: 9 } }],
    ["what is said", { said: hot }],
    ["what is said without values", { said: { code: "lamp.off", values: {} } }],
    ["a unit", { sold: "kg" }],
    ["what goes by its name", { gas: "argon" }],
    ["the first of several forms", { size: m(1) }],
    ["the second", { size: "large" }],
    ["the third", { size: [m(1), m(2, "ft")] }],
    ["what stands at a path", { change: { path: "count", value: 4 } }],
    ["what stands at a deeper path", { change: { path: "post.age", value: 4 } }],
    ["what stands in one of several forms", { change: { path: "rate.per", value: m(1) } }],
    ["what stands in a list", { change: { path: "tags[12]", value: "b" } }],
    [
      "what stands in the field of either object",
      { change: { path: "post.made", value: "steel" } },
    ],
  ])("has %s", (_, own) => {
    const json = { name: "a lamp", ...own };
    const value = codec.decode(json);
    expect(codec.encode(value)).toEqual(json);
    expect(codec.parse(codec.stringify(value))).toEqual(value);
    expect(codec.problems(json)).toEqual([]);
    expect(Object.isFrozen(value)).toBe(true);
    expect(mistakes(json)).toEqual([]);
    expect(schema.parse(json)).toEqual(value);
  });

  it("comes alive", () => {
    const { height, sold, gas, post } = codec.decode({
      name: "a",
      height: m(2),
      sold: "kg",
      gas: "argon",
      post: { made: "wood", age: 3 },
    });
    expect(isQuantity(height, "length")).toBe(true);
    expect((sold as Unit<"mass">).symbol).toBe(kg.symbol);
    expect(gas).toBe(held.argon);
    expect(Object.isFrozen(post)).toBe(true);
    expect(Object.isFrozen(codec.shape)).toBe(true); // all codecs of a shape share it
  });

  it("has no negative nought, which JSON cannot tell from nought in every language", () => {
    expect(codec.decode({ name: "a", count: -0 }).count).toBe(0);
    expect(codec.encode({ name: "a", count: -0 })).toEqual({ name: "a", count: 0 });
  });

  it("has what goes by its name under its own, though another says the same", () => {
    const alike = { first: { mass: 4 }, second: { mass: 4 } };
    const names = of({ list: { named: () => alike } });
    const json = ["first", "second", "first"];
    expect(names.encode(names.decode(json))).toEqual(json);
  });

  // Another copy of the package makes objects of its own, with units of its own; JSON leaves both out.
  it("has what goes by its name by the units in it, too", () => {
    const scales = { small: { reads: mm }, large: { reads: kg } };
    const names = of({ each: { named: () => scales } });
    expect(names.encode({ a: { reads: kg }, b: { reads: mm } })).toEqual({
      a: "large",
      b: "small",
    });
  });

  it("may have fields that are undefined, as JavaScript has them: they are left out", () => {
    const given = { name: "a", height: undefined, unknown: undefined };
    expect(Object.keys(codec.decode(given))).toEqual(["name"]);
    expect(Object.keys(schema.parse(given) as object)).toEqual(["name"]);
    expect(codec.encode(given)).toEqual({ name: "a" });
  });
});

/** What the shape refuses and JSON Schema cannot see: what is said of days, numbers and paths. */
const unseen = [/^a day that is none$/, /^(no|a) path /, /^(not )?what stands /];

describe("a document that the shape refuses is named by its place:", () => {
  it.each<[string, unknown, string]>([
    ["a list", [], "lamp"],
    ["a text", "lamp", "lamp"],
    ["nothing", null, "lamp"],
    ["a missing field", { name: undefined }, "name"],
    ["a field that is not known", { colour: "red" }, "colour"],
    ["a number for a text", { name: 1 }, "name"],
    ["another kind", { height: { kind: "mass", value: 1, unit: "kg" } }, "height.kind"],
    [
      "another kind with a unit of the right one",
      { height: { ...m(1), kind: "mass" } },
      "height.kind",
    ],
    ["another unit", { height: m(1, "kg") }, "height.unit"],
    ["a quantity of a text", { height: m("1") }, "height.value"],
    ["a quantity of more fields", { height: { ...m(1), about: "x" } }, "height.about"],
    ["a bare number for a quantity", { height: 1 }, "height"],
    ["a bare number for a quantity of any kind", { measured: 1 }, "measured"],
    ["nothing for a quantity of any kind", { measured: null }, "measured"],
    ["a kind that is none", { measured: { ...m(1), kind: "width" } }, "measured"],
    ["a unit of another kind", { measured: { ...m(1), kind: "mass" } }, "measured.unit"],
    ["a quantity that no number has", { measured: m(null) }, "measured.value"],
    ["a text for a number", { count: "1" }, "count"],
    ["a text for a flag", { lit: "true" }, "lit"],
    ["a day that is none", { hungAt: "2026-02-30" }, "hungAt"],
    ["another word", { color: "blue" }, "color"],
    ["a text for a number as a word", { phases: "3" }, "phases"],
    ["an object for a list", { tags: { 0: "a" } }, "tags"],
    ["another item", { tags: ["a", 1] }, "tags[1]"],
    ["an item too few", { pair: ["a"] }, "pair"],
    ["an item too many", { pair: ["a", 1, 2] }, "pair"],
    ["items in another order", { pair: [1, "a"] }, "pair[0]"],
    ["no path of the whole", { where: "post.wheels" }, "where"],
    ["a path into a text", { where: "name[0]" }, "where"],
    ["a path to what every object has", { where: "post.constructor" }, "where"],
    ["a path to the item of an object", { where: "post[0]" }, "where"],
    ["a path into what is said", { where: "said.code" }, "where"],
    ["no path at all", { where: "post..age" }, "where"],
    ["no path but nothing", { where: null }, "where"],
    ["no path but a list of one", { where: ["name"] }, "where"],
    ["a price that is none", { prices: { USD: "3" } }, "prices.USD"],
    ["an object of neither kind", { post: { made: "brick" } }, "post.made"],
    ["an object that does not tell its kind", { post: { age: 3 } }, "post.made"],
    ["an object where a word tells", { post: { made: Object.create(null) } }, "post.made"],
    ["a text where a number tells", { manual: { issue: "1", pages: 9 } }, "manual.issue"],
    [
      "a field of the other kind",
      { post: { made: "wood", age: 3, painted: true } },
      "post.painted",
    ],
    ["what is not said", { said: { code: "lamp.cold", values: {} } }, "said.code"],
    ["values that are missing", { said: { ...hot, values: {} } }, "said.values.heat"],
    ["a unit of another kind", { sold: "m" }, "sold"],
    ["a name that is not held", { gas: "neon" }, "gas"],
    ["a name that every object has", { gas: "constructor" }, "gas"],
    ["none of several forms", { size: 3 }, "size"],
    ["no path to what stands there", { change: { path: "wheels", value: 4 } }, "change.path"],
    ["not what stands at the path", { change: { path: "count", value: "4" } }, "change.value"],
    [
      "what stands in neither object",
      { change: { path: "post.made", value: "oak" } },
      "change.value",
    ],
  ])("%s", (what, own, argument) => {
    const isPart = typeof own === "object" && own !== null && !Array.isArray(own);
    const json = isPart ? { name: "a lamp", ...own } : own;
    expect(thrownBy(() => codec.decode(json)).argument).toBe(argument);
    expect(codec.problems(json).map((one) => one.argument)).toContain(argument);
    expect(schema.safeParse(json).success).toBe(false);
    if (!unseen.some((one) => one.test(what))) expect(mistakes(json)).not.toEqual([]);
  });

  it("with place and words in the issues of zod, too", () => {
    const { error } = schema.safeParse({ name: 1, tags: ["a", 2] });
    expect(error?.issues.map(({ code, path }) => [code, path])).toEqual([
      ["custom", ["name"]],
      ["custom", ["tags", 1]],
    ]);
    expect(error?.issues[0]?.message).toContain("a text");
  });

  it("where it is written, too: what is no unit of the kind", () => {
    for (const sold of [mm, "kg", { kind: "mass" }, kg(1), () => 1]) {
      expect(thrownBy(() => codec.encode({ name: "a", sold })).argument).toBe("sold");
    }
    expect(codec.encode({ name: "a", sold: kg })).toEqual({ name: "a", sold: "kg" });
  });

  it("where a limit is none", () => {
    expect(thrownBy(() => codec.decode({ name: "a" }, { values: 0 })).argument).toBe(
      "limits.values",
    );
  });

  it("with the names that are held", () => {
    expect(thrownBy(() => codec.decode({ name: "a", gas: "neon" })).allowed).toBe("helium, argon");
    expect(thrownBy(() => codec.decode({ name: "a", sold: "m" })).allowed).toMatch(/\bkg\b/);
  });

  it("with the number of items, where there are just so many", () => {
    expect(thrownBy(() => codec.decode({ name: "a", pair: ["a"] })).allowed).toBe("2 items");
    const either = of({ either: ["flag", { items: ["text", "number"] }] });
    expect(thrownBy(() => either.decode("a")).allowed).toBe("true, false or 2 items");
  });

  it("with what stands there", () => {
    expect(thrownBy(() => codec.decode([])).value).toBe("a list");
    expect(thrownBy(() => codec.decode({ name: {} })).value).toBe("an object");
    expect(thrownBy(() => codec.decode({ name: null })).value).toBe("null");
  });

  it("an object of a class, be it all of the fields", () => {
    class Lamp {
      name = "a lamp";
    }
    expect(thrownBy(() => codec.decode(new Lamp())).value).toBe("an object of a class");
    expect(schema.safeParse(new Lamp()).success).toBe(false);
  });

  // A document of a million mistakes costs no more than one.
  it("and nothing behind it is looked at", () => {
    const unread = {
      enumerable: true,
      get: () => {
        throw new RangeError("it was looked at");
      },
    };
    const behind = (given: object, name: string) => Object.defineProperty(given, name, unread);
    for (const [given, place] of [
      [behind({ name: 1 }, "height"), "name"],
      [behind({ name: "a", colour: 1 }, "height"), "colour"],
      [behind({ name: "a", colour: 1 }, "shade"), "colour"],
      [{ name: "a", tags: behind([1, "b"], "1") }, "tags[0]"],
      [{ name: "a", prices: behind({ USD: "3" }, "EUR") }, "prices.USD"],
    ] as const) {
      expect(thrownBy(() => codec.decode(given)).argument).toBe(place);
    }
  });

  it("each wrong part of a quantity, and no other", () => {
    const places = (height: object) =>
      codec.problems({ name: "a", height }).map((one) => one.argument);
    expect(places({ kind: "mass", value: 1, unit: "kg" })).toEqual(["height.kind"]);
    expect(places({ kind: "length", value: "1", unit: "kg" })).toEqual([
      "height.value",
      "height.unit",
    ]);
  });

  it("a quantity that cannot be written: the whole, as nobody knows what it is", () => {
    const toJSON = () => {
      throw new RangeError("of the app");
    };
    const height = Object.create(mm(1), { toJSON: { value: toJSON } });
    expect(thrownBy(() => codec.encode({ name: "a", height }))).toMatchObject({
      argument: "lamp",
      value: "an object that cannot be read",
    });
  });

  it("a number that is none, which JSON has not", () => {
    for (const count of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(thrownBy(() => codec.decode({ name: "a", count })).argument).toBe("count");
      expect(thrownBy(() => codec.encode({ name: "a", count })).argument).toBe("count");
    }
  });

  it("in a list that is the whole, by its position first", () => {
    const lamps = of({ list: shape });
    expect(thrownBy(() => lamps.decode([{ name: "a" }, { name: 1 }])).argument).toBe("[1].name");
    expect(thrownBy(() => lamps.decode({})).argument).toBe("lamp");
  });
});

describe("limits", () => {
  const decode = (own: object, limits: object) => () => codec.decode({ name: "a", ...own }, limits);

  it("of depth count the whole and what lies in it", () => {
    expect(decode({ free: [[1]] }, { depth: 3 })).not.toThrow();
    expect(thrownBy(decode({ free: [[[1]]] }, { depth: 3 })).argument).toBe("free[0][0]");
    expect(thrownBy(decode({ free: { a: { b: {} } } }, { depth: 3 })).argument).toBe("free.a.b");
  });

  it("of texts count a name of the writer's own too", () => {
    expect(decode({ prices: { abcd: 1 } }, { stringLength: 4 })).not.toThrow();
    expect(thrownBy(decode({ prices: { abcde: 1 } }, { stringLength: 4 })).argument).toBe(
      "prices.abcde",
    );
    expect(thrownBy(decode({ free: "abcde" }, { stringLength: 4 })).argument).toBe("free");
  });

  it("of lists and of all values hold to the last one", () => {
    expect(decode({ tags: ["a", "b"] }, { listItems: 2 })).not.toThrow();
    expect(thrownBy(decode({ tags: ["a", "b", "c"] }, { listItems: 2 })).argument).toBe("tags");
    // The whole, its name, the list and two items are five.
    expect(decode({ tags: ["a", "b"] }, { values: 5 })).not.toThrow();
    expect(thrownBy(decode({ tags: ["a", "b"] }, { values: 4 })).allowed).toBe(
      "at most 4 values in all",
    );
  });

  it("of all values count what stands in fields of the writer's own, and none that is undefined", () => {
    // The whole, its name, the prices and two of them are five.
    const given = { prices: { a: 1, left: undefined, b: 2 } };
    expect(codec.encode({ name: "a", ...given }, { values: 5 })).toStrictEqual({
      name: "a",
      prices: { a: 1, b: 2 },
    });
    expect(decode(given, { values: 5 })).not.toThrow();
    const error = thrownBy(decode(given, { values: 4 }));
    expect([error.argument, error.allowed]).toEqual(["prices", "at most 4 values in all"]);
  });

  it("count the three fields of a quantity, read or written, up to the value that is too many", () => {
    // The whole, its name, the quantity with three fields, and a number are seven.
    const json = { name: "a", height: m(2), count: 1 };
    const value = codec.decode(json, { values: 7 });
    expect(codec.encode(value, { values: 7 })).toEqual(json);
    for (const act of [codec.decode, codec.encode] as ((
      it: unknown,
      limits: object,
    ) => unknown)[]) {
      const given = act === codec.decode ? json : value;
      expect(thrownBy(() => act(given, { values: 6 })).argument).toBe("count");
    }
  });

  it("end the list of problems where there are too many values", () => {
    const found = codec.problems({ name: "a", count: "1", lit: "no" }, { values: 2 });
    expect(found.map(({ argument, allowed }) => [argument, allowed])).toEqual([
      ["count", "at most 2 values in all"],
    ]);
  });
});

describe("of several forms that it may have,", () => {
  const box = { fields: { width: "number", height: "number" } } as const;
  const ball = { fields: { diameter: "number", weight: "number", color: "text" } } as const;
  const flat = { fields: { part: "number" } } as const;
  const deep = { fields: { part: { fields: { width: "number" } } } } as const;
  const places = (either: Shape[], json: unknown) =>
    of({ either })
      .problems(json)
      .map(({ argument }) => argument)
      .sort();

  it.each([[[box, ball]], [[ball, box]]])(
    "the one with the least to complain of was meant",
    (either) => {
      expect(places(either, { width: 1, hight: 2 })).toEqual(["height", "hight"]);
      expect(of({ either }).decode({ width: 1, height: 2 })).toEqual({ width: 1, height: 2 });
    },
  );

  it.each([[[flat, deep]], [[deep, flat]]])(
    "and of two alike, the one that gets farther",
    (either) => {
      expect(places(either, { part: { width: "wide" } })).toEqual(["part.width"]);
    },
  );

  it("and gets farther by its farthest mistake", () => {
    const near = { fields: { a: "number", b: "number" } } as const;
    const far = { fields: { a: "number", b: { fields: { c: "number" } } } } as const;
    const json = { a: "x", b: { c: "y" } };
    expect(places([near, far], json)).toEqual(["a", "b.c"]);
    expect(places([far, near], json)).toEqual(["a", "b.c"]);
  });

  // Who may be meant by several is told a few mistakes of the likeliest; who can only be meant by one, all.
  it("of one that alone it can be, each mistake is told", () => {
    const json = Array.from({ length: 20 }, () => "x");
    expect(places(["flag", { list: "number" }], json)).toHaveLength(20);
  });

  it("one may have several forms of its own, or any", () => {
    const nested = of({ either: ["flag", { either: ["number", { list: "text" }] }] });
    for (const json of [true, 7, ["a"]]) expect(nested.decode(json)).toEqual(json);
    expect(thrownBy(() => nested.decode("a")).allowed).toBe(
      "true, false or a finite number or a list",
    );
    expect(of({ either: ["flag", "any"] }).decode("a")).toBe("a");
  });

  it("what goes by its name is a text", () => {
    const { allowed } = thrownBy(() =>
      of({ either: [{ named: () => held }, "number"] }).decode(true),
    );
    expect(allowed).toBe("helium, argon or a finite number");
  });

  it("any data is asked for as such", () => {
    expect(thrownBy(() => of({ fields: { free: "any" } }).decode({})).allowed).toBe("data");
  });

  const deepBox = { fields: { ...box.fields, depth: "number" } } as const;
  it.each<[string, Shape, object]>([
    ["several forms", { either: [box, deepBox] }, { width: "x", height: "y" }],
    ["quantities", "length", { kind: "length", value: "x", unit: "kg" }],
  ])("of %s with two mistakes each, no more than 1000 are told", (_, shape, wrong) => {
    const json = [true, ...Array.from({ length: 1000 }, () => wrong)];
    expect(of({ list: shape }).problems(json)).toHaveLength(1000);
  });

  it("only what was seen of the one that is meant counts", () => {
    const one = { fields: { a: "number", b: "number" } } as const;
    const other = { fields: { a: "number", b: "text" } } as const;
    const items = of({ list: { either: [one, other] } });
    const json = [
      { a: 1, b: "x" },
      { a: 2, b: "y" },
    ];
    // The list, and each item with two fields, are seven values.
    expect(items.decode(json, { values: 7 })).toEqual(json);
    expect(thrownBy(() => items.decode(json, { values: 6 })).argument).toBe("[1].b");
  });

  it("and of two that are as likely, the first", () => {
    const [number, flag] = [{ fields: { on: "number" } }, { fields: { on: "flag" } }] as const;
    const allowed = (either: Shape[]) => of({ either }).problems({ on: "x" })[0]?.allowed;
    expect(allowed([number, flag])).toBe("a finite number");
    expect(allowed([flag, number])).toBe("true, false");
  });

  it("where it has none, all are named, and what a person enters is the first that asks", () => {
    const { allowed, hint } = thrownBy(() =>
      of({ either: ["flag", { list: "number" }] }).decode(7),
    );
    expect(allowed).toBe("true, false or a list");
    const figure = of({ either: ["number", { list: "number" }] });
    expect(thrownBy(() => figure.decode("7")).allowed).toBe("a finite number or a list");
    expect(hint?.code).toBe("quantity.enter.yes-or-no");
  });
});

// Sixty words are read at a glance, more are not: common practice, no source.
it("of many words an error names a few", () => {
  const words = (count: number) => Array.from({ length: count }, (_, i) => `w${i + 1}`);
  const allowed = (count: number) =>
    thrownBy(() => of({ words: words(count) }).decode("other")).allowed;
  expect(allowed(60)).toBe(words(60).join(", "));
  expect(allowed(61)).toBe("one of 61 words, such as w1, w2, w3, w4, w5");
});
