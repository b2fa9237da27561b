// JSON data of any form, drawn from a JSON Schema as the codecs write it: what another language may send.
// Numbers are thousandths above 0, so that twelve digits hold them and every quantity can have them.
import fc from "fast-check";
import type { JsonObject, JsonValue } from "hvac-install-math/wire";

const thousandths = fc.integer({ min: 1, max: 10_000_000 }).map((n) => n / 1000);
const texts = fc.oneof(
  fc.string(),
  fc.constantFrom("__proto__", 'quote " and \\', "é ½ 管 \u2028"),
);
const times = fc.constantFrom("2026-05-04", "2026-05-04T14:30", "2026-05-04T14:30:00.5+02:00");

/** JSON data that the schema allows; what it leaves open (`{}`) is left out. */
export function arbitraryJson(root: JsonObject): fc.Arbitrary<JsonValue> {
  const drawn = (schema: JsonObject): fc.Arbitrary<unknown> => {
    const { $ref, const: only, enum: words, anyOf, type, items, prefixItems, pattern } = schema;
    if ($ref) return drawn((root.$defs as JsonObject)[`${$ref}`.slice(8)] as JsonObject);
    if (only !== undefined) return fc.constant(only);
    if (words) return fc.constantFrom(...(words as JsonValue[]));
    if (anyOf) return fc.oneof(...(anyOf as JsonObject[]).map(drawn));
    if (type === "string") return pattern ? times : texts;
    if (type === "number") return thousandths;
    if (type === "boolean") return fc.boolean();
    if (type === "array") {
      if (prefixItems) return fc.tuple(...(prefixItems as JsonObject[]).map(drawn));
      return fc.array(drawn(items as JsonObject), { maxLength: 3 });
    }
    if (type !== "object") return fc.constant(undefined);
    const { properties, required = [], additionalProperties } = schema;
    if (!properties) {
      const names = fc.string({ unit: fc.constantFrom(..."abcxyz"), minLength: 1 });
      const own = drawn(additionalProperties as JsonObject);
      return fc.dictionary(names, own, { maxKeys: 3, noNullPrototype: true });
    }
    const fields = Object.entries(properties as JsonObject)
      .filter(([, own]) => Object.keys(own as JsonObject).length > 0)
      .map(([name, own]) => [name, drawn(own as JsonObject)]);
    return fc.record(Object.fromEntries(fields), {
      requiredKeys: required as never[],
      noNullPrototype: true,
    });
  };
  return drawn(root) as fc.Arbitrary<JsonValue>;
}
