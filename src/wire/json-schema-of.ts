// What may other languages write? The JSON Schema of a shape.
// Follows JSON Schema draft 2020-12. Quantities stand once, under $defs.
// Does not cover limits, nor values that no quantity can have (−400 °C).
import type { Kind } from "../quantity/kinds.ts";
import type { JsonObject } from "./json-value.ts";
import { unitsOf } from "./units-of.ts";
import type { WireShape } from "./wire-shape.ts";

const object = (properties: JsonObject, required: readonly string[]): JsonObject => ({
  type: "object",
  properties,
  ...(required.length > 0 && { required }),
  additionalProperties: false,
});

const primitives: Readonly<Record<string, JsonObject>> = {
  text: { type: "string" },
  number: { type: "number" },
  flag: { type: "boolean" },
  any: {},
  time: {
    type: "string",
    // ISO 8601-1:2019, calendar date and extended format
    pattern:
      "^\\d{4}-\\d\\d-\\d\\d(T\\d\\d:\\d\\d(:\\d\\d(\\.\\d{1,9})?)?(Z|[+-]\\d\\d:\\d\\d)?)?$",
  },
};

/** The JSON Schema of a shape under a name of its own. */
export function jsonSchemaOf(shape: WireShape, title: string): JsonObject {
  const kinds = new Map<Kind, JsonObject>();
  const made = (own: WireShape): JsonObject => {
    if (typeof own === "string") {
      if (Object.hasOwn(primitives, own)) return primitives[own] as JsonObject;
      const kind = own as Kind;
      const fields = {
        kind: { const: kind },
        value: { type: "number" },
        unit: { enum: [...unitsOf(kind).keys()] },
      };
      kinds.set(kind, object(fields, Object.keys(fields)));
      return { $ref: `#/$defs/${kind}` };
    }
    if ("words" in own) return { enum: own.words };
    if ("list" in own) return { type: "array", items: made(own.list) };
    if ("items" in own) {
      return { type: "array", items: made(own.items), minItems: own.count, maxItems: own.count };
    }
    if ("either" in own) return { anyOf: own.either.map(made) };
    if ("named" in own) return { enum: Object.keys(own.named) };
    if ("each" in own) return { type: "object", additionalProperties: made(own.each) };
    const fields = Object.entries<WireShape>(own.fields).map(([name, field]) => [
      name,
      made(field),
    ]);
    return object(Object.fromEntries(fields), own.required ?? []);
  };
  const schema = made(shape);
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title,
    ...schema,
    $defs: Object.fromEntries(kinds),
  };
}
