// The JSON Schema of each form that a shape can have, written by hand from JSON Schema, draft 2020-12, sections 10.2
// (anyOf), 10.3 (items, properties) and 8.2.4 ($defs): a program in another language relies on each keyword.
import { describe, expect, it } from "vitest";
import { unitsBySymbol } from "../../src/quantity/catalogue.ts";
import { isoTime, type Shape } from "../../src/shapes/index.ts";
import { codecOf } from "../../src/wire/codec.ts";
import { jsonSchemaOf } from "../../src/wire/json-schema-of.ts";
import { mistakesBy } from "./mistakes-by.ts";

const of = (shape: Shape) => codecOf({ id: "of-this-test", name: "it", shape: () => shape });
/** The keywords of the form itself. */
const written = (shape: Shape) => {
  const { $schema: _, $id: __, title: ___, $defs, ...own } = jsonSchemaOf(of(shape));
  return Object.keys($defs as object).length > 0 ? { ...own, $defs } : own;
};

const text = { type: "string" };
const wood = { fields: { made: { words: ["wood"] } } } as const;
const steel = { fields: { made: { words: ["steel"] } } } as const;
const object = (properties: object, ...required: string[]) => ({
  type: "object",
  properties,
  ...(required.length > 0 && { required }),
  additionalProperties: false,
});
const duration = object(
  {
    kind: { const: "duration" },
    value: { type: "number" },
    unit: { enum: [...unitsBySymbol("kind", "duration").keys()] },
  },
  "kind",
  "value",
  "unit",
);

describe("the JSON Schema of", () => {
  it.each<[what: string, shape: Shape, schema: object]>([
    ["a text", "text", text],
    ["a path", "path", text],
    ["a number", "number", { type: "number" }],
    ["a flag", "flag", { type: "boolean" }],
    ["any data", "any", {}],
    ["a time", "time", { type: "string", pattern: isoTime.source }],
    ["words", { words: ["red", 1] }, { enum: ["red", 1] }],
    ["a list", { list: "text" }, { type: "array", items: text }],
    [
      "just so many items",
      { items: ["text", "flag"] },
      {
        type: "array",
        prefixItems: [text, { type: "boolean" }],
        items: false,
        minItems: 2,
        maxItems: 2,
      },
    ],
    ["fields", { fields: { a: "text", "b?": "text" } }, object({ a: text, b: text }, "a")],
    ["fields that may all be missing", { fields: { "b?": "text" } }, object({ b: text })],
    ["names of the writer's own", { each: "text" }, { type: "object", additionalProperties: text }],
    ["several forms", { either: ["text", "flag"] }, { anyOf: [text, { type: "boolean" }] }],
    [
      "cases, each once",
      { by: "made", cases: { wood, oak: wood, steel } },
      {
        anyOf: [
          object({ made: { enum: ["wood"] } }, "made"),
          object({ made: { enum: ["steel"] } }, "made"),
        ],
      },
    ],
    [
      "statements, with what else they have",
      { statements: [{ "lamp.off": { by: "text" } }], with: { "step?": "text" } },
      {
        anyOf: [
          object(
            { code: { enum: ["lamp.off"] }, values: object({ by: text }, "by"), step: text },
            "code",
            "values",
          ),
        ],
      },
    ],
    [
      "what goes by its name",
      { named: () => ({ helium: {}, argon: {} }) },
      { enum: ["helium", "argon"] },
    ],
    ["a unit", { unit: "duration" }, { enum: [...unitsBySymbol("kind", "duration").keys()] }],
    ["a quantity", "duration", { $ref: "#/$defs/duration", $defs: { duration } }],
    [
      "types with a name, which stand once, also inside themselves",
      { list: { type: "Part", fields: { "whole?": { type: "Part", fields: {} } } } },
      {
        type: "array",
        items: { $ref: "#/$defs/Part" },
        $defs: { Part: object({ whole: { $ref: "#/$defs/Part" } }) },
      },
    ],
    [
      "docs, of the type and of its fields",
      { type: "Part", fields: { a: "text", "b?": "text" }, docs: { "": "A part.", a: "Its a." } },
      {
        description: "A part.",
        ...object({ a: { ...text, description: "Its a." }, b: text }, "a"),
      },
    ],
  ])("%s", (_, shape, schema) => {
    expect(written(shape)).toEqual(schema);
  });

  it("a whole says which draft it follows, its own name and what it is called", () => {
    expect(jsonSchemaOf(of("text"))).toEqual({
      $schema: "https://json-schema.org/draft/2020-12/schema",
      $id: "urn:hvac-install-math:of-this-test",
      title: "it",
      type: "string",
      $defs: {},
    });
    const format = { version: 7, steps: [] };
    const later = codecOf({ id: "later", name: "it", shape: () => "text", format });
    expect(jsonSchemaOf(later).title).toBe("it, version 7");
  });

  it("a quantity of any kind refuses what none is, and one in the unit of another kind", () => {
    const mistakes = mistakesBy(jsonSchemaOf(of("quantity")));
    expect(mistakes({ kind: "mass", value: 1, unit: "kg" })).toEqual([]);
    for (const wrong of [1, {}, { kind: "mass", value: 1, unit: "m" }, { kind: "m", value: 1 }]) {
      expect(mistakes(wrong)).not.toEqual([]);
    }
  });
});
