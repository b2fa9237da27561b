/**
 * JSON in and out: strict codecs for records, inputs and results, and their JSON Schema.
 *
 * Start with {@link recordCodec}. The codecs of a function are `<function>Input` and `<function>Result`; schemas of
 * zod of the same shapes are in `hvac-install-math/wire/zod`.
 *
 * @module wire
 */

export type { SchemaWords } from "../shapes/index.ts";
export type { ArgumentsOf, InputOf, ResultOf } from "./arguments-of.ts";
export type { Codec } from "./codec.ts";
export * from "./generated/index.ts";
export { recordWords } from "./generated/record-words.ts";
export { jsonSchemaOf } from "./json-schema-of.ts";
export type { JsonObject, JsonValue } from "./json-value.ts";
export { defaultLimits, type WireLimits } from "./limits.ts";
export { recordCodec } from "./record-codec.ts";
export type { StandardIssue, StandardProps, StandardResult } from "./standard-schema.ts";
