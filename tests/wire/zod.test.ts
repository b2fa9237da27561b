// The schemas of zod take, refuse and give what the codecs do: valid, mutated and hostile values.
import fc from "fast-check";
import { isInvalidInputError, kelvin } from "hvac-install-math/quantity";
import * as wire from "hvac-install-math/wire";
import { type Codec, jsonSchemaOf } from "hvac-install-math/wire";
import { recordSchema, schemaOf } from "hvac-install-math/wire/zod";
import { expect, it } from "vitest";
import * as z from "zod/mini";
import { complete } from "../commissioning/complete-record.ts";
import { pathsOf, put } from "../commissioning/mutated-record.ts";
import { arbitraryJson } from "./arbitrary-json.ts";

const codecs = Object.entries(wire).filter(([name]) =>
  /(Input|Result)$|^changeCodec$/.test(name),
) as unknown as [name: string, codec: Codec<unknown>][];

/** What both make of a value; the same, or the test fails. */
function same(codec: Codec<unknown>, schema: z.ZodMiniType, value: unknown): void {
  const read = schema.safeParse(value);
  let decoded: unknown;
  let refused = false;
  try {
    decoded = codec.decode(value);
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    refused = true;
  }
  expect(read.success).toBe(!refused);
  if (read.success) expect(read.data).toEqual(decoded);
}

const hostile = [
  null,
  undefined,
  7,
  "text",
  [],
  {},
  new Date(0),
  new Map(),
  kelvin(1),
  () => 1,
  Symbol("a"),
  Object.create({ version: 2 }),
  JSON.parse('{"version":2,"__proto__":{"a":1}}'),
  { version: 2, name: undefined, other: undefined },
  { version: 2, joints: new Array(2) },
];

it.each(codecs)("%s", (_, codec) => {
  const schema = schemaOf(codec);
  const [valid] = fc.sample(arbitraryJson(jsonSchemaOf(codec)), 1);
  same(codec, schema, valid);
  for (const one of hostile) same(codec, schema, one);
  fc.assert(
    fc.property(
      fc.constantFrom<(string | number)[]>([], ...pathsOf(valid)),
      fc.anything(),
      (at, other) => {
        same(codec, schema, put(valid, at, other));
      },
    ),
    { numRuns: 10 },
  );
});

it("a record, whole, mutated and composed", () => {
  const json = wire.recordCodec.encode(complete);
  const codec = wire.recordCodec as Codec<unknown>;
  for (const one of hostile) same(codec, recordSchema as z.ZodMiniType, one);
  fc.assert(
    fc.property(fc.constantFrom(...pathsOf(json)), fc.anything(), (at, other) => {
      same(codec, recordSchema as z.ZodMiniType, put(json, at, other));
    }),
    { numRuns: 200 },
  );
  const job = z.object({ id: z.string(), record: recordSchema });
  expect(job.parse({ id: "a", record: json }).record).toEqual(complete);
});
