// Where does JSON data leave a JSON Schema? By a validator that is not ours, made when it is first asked.
import Ajv2020 from "ajv/dist/2020.js";
import type { JsonObject } from "hvac-install-math/wire";
import { later } from "../../src/quantity/later.ts";

// To write a schema out in line and to tidy the code takes five times as long, for what is asked a dozen times.
const ajv = new Ajv2020({
  strict: true,
  allowUnionTypes: true,
  inlineRefs: false,
  code: { optimize: false },
});

/** The first mistake of data by the schema, in a list; an empty list where it follows it. */
export function mistakesBy(schema: JsonObject): (json: unknown) => readonly unknown[] {
  const made = later(() => ajv.compile(schema));
  return (json) => (made()(json) ? [] : (made().errors ?? []));
}
