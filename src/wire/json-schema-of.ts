// What may other languages write? The JSON Schema of a codec.
// Follows JSON Schema draft 2020-12. Quantities and types with a name stand once, under $defs.
// Does not cover limits, nor values that no quantity can have (−400 °C).
import { everyKind, unitsBySymbol } from "../quantity/catalogue.ts";
import { objectOf, refuse } from "../quantity/check.ts";
import type { Kind } from "../quantity/kinds.ts";
import {
  casesOf,
  type FieldsShape,
  isoTime,
  type SchemaWords,
  type Shape,
} from "../shapes/index.ts";
import type { Codec } from "./codec.ts";
import type { JsonObject, JsonValue } from "./json-value.ts";

const object = (properties: JsonObject, required: readonly string[]): JsonObject => ({
  type: "object",
  properties,
  ...(required.length > 0 && { required }),
  additionalProperties: false,
});

const primitives: Readonly<Record<string, JsonObject>> = {
  text: { type: "string" },
  path: { type: "string" },
  number: { type: "number" },
  flag: { type: "boolean" },
  any: {},
  time: { type: "string", pattern: isoTime.source },
};

const described = (text: string | undefined): JsonObject => (text ? { description: text } : {});

/** The symbols of the units of a kind. */
const unitsOf = (kind: Kind): JsonObject => ({ enum: [...unitsBySymbol("kind", kind).keys()] });

/**
 * The form of a codec as JSON Schema, for programs in other languages and for OpenAPI.
 *
 * @param codec - The codec, such as {@link recordCodec}.
 * @param words - What each type and field is, for the descriptions of a record: {@link recordWords}. Apart, so
 * that a schema without them doesn't carry them.
 * @returns JSON Schema, draft 2020-12. Values that only a computation can refuse (−500 °F, 30 February) are
 * allowed by it.
 * @throws {@link InvalidInputError} if `codec` is none, or `words` is no object.
 *
 * Source: JSON Schema, draft 2020-12.
 *
 * @example
 * ```ts
 * import { jsonSchemaOf, recordCodec } from "hvac-install-math/wire";
 *
 * const schema = jsonSchemaOf(recordCodec);
 * schema.title; // => record, version 2
 * JSON.stringify(schema.required); // => ["version"]
 * ```
 */
export function jsonSchemaOf(
  codec: Pick<Codec<never>, "id" | "title" | "shape">,
  words: SchemaWords = {},
): JsonObject {
  const { id, title, shape } = objectOf("codec", codec);
  if (!shape) refuse("codec", codec, "a codec of this library");
  objectOf("words", words);
  const definitions = new Map<string, JsonValue>();

  /** What a type is called in the schema, defined once. */
  const defined = (name: string, make: () => JsonObject): JsonObject => {
    if (!definitions.has(name)) {
      definitions.set(name, {}); // keeps its place in the order
      definitions.set(name, make());
    }
    return { $ref: `#/$defs/${name}` };
  };

  const quantity = (kind: Kind): JsonObject =>
    defined(kind, () => {
      const parts = { kind: { const: kind }, value: { type: "number" }, unit: unitsOf(kind) };
      return object(parts, Object.keys(parts));
    });

  const fields = ({ type = "", fields: own, docs }: FieldsShape): JsonObject => {
    const texts = docs ?? words[type] ?? {};
    const names = Object.keys(own).map((name) => [name, name.replace("?", "")] as const);
    const properties = names.map(([name, plain]) => {
      return [plain, { ...made(own[name] as Shape), ...described(texts[plain]) }];
    });
    const required = names.filter(([name, plain]) => name === plain).map(([name]) => name);
    return { ...described(texts[""]), ...object(Object.fromEntries(properties), required) };
  };

  /** A shape where it is mentioned. */
  const made = (own: Shape): JsonObject =>
    typeof own === "object" && "type" in own && own.type
      ? defined(own.type, () => written(own))
      : written(own);

  const anyOf = (all: readonly Shape[]): JsonObject => ({ anyOf: all.map(made) });

  function written(own: Shape): JsonObject {
    if (typeof own === "string") {
      if (Object.hasOwn(primitives, own)) return primitives[own] as JsonObject;
      return own === "quantity" ? { anyOf: everyKind().map(quantity) } : quantity(own as Kind);
    }
    if ("words" in own) return { enum: own.words };
    if ("fields" in own) return fields(own);
    if ("list" in own) return { type: "array", items: made(own.list) };
    if ("items" in own) {
      const count = own.items.length;
      const prefixItems = own.items.map(made);
      return { type: "array", prefixItems, items: false, minItems: count, maxItems: count };
    }
    if ("either" in own) return anyOf(own.either);
    if ("cases" in own) return anyOf([...new Set(Object.values(own.cases))]);
    if ("statements" in own) return made(casesOf(own));
    if ("named" in own) return { enum: Object.keys(own.named()) };
    if ("unit" in own) return unitsOf(own.unit);
    if ("each" in own) return { type: "object", additionalProperties: made(own.each) };
    return {}; // what the path beside it allows
  }

  const whole = written(shape);
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    $id: `urn:hvac-install-math:${id}`,
    title,
    ...whole,
    $defs: Object.fromEntries(definitions),
  };
}
