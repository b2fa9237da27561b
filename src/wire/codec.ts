// How does a value travel as JSON and come back? One codec for one shape.
// Follows RFC 8259 (JSON) and JSON Schema draft 2020-12.
// Does not cover how it is stored or sent, nor whether its figures are right.
import * as z from "zod/mini";
import { throwFirst } from "./first-problem.ts";
import { type Format, inPresentVersion } from "./format.ts";
import { jsonSchemaOf } from "./json-schema-of.ts";
import type { JsonObject, JsonValue } from "./json-value.ts";
import { limitsOf, type WireLimits } from "./limits.ts";
import { plainCopy } from "./plain-copy.ts";
import { refuse, shown } from "./refuse.ts";
import { scanText } from "./scan-text.ts";
import { schemaOf } from "./schema-of.ts";
import type { FormOf, WireShape } from "./wire-shape.ts";

/**
 * JSON in and out for one type. Unknown fields are refused, a field that stands twice is refused, and
 * every error is an {@link InvalidInputError} that names the path.
 *
 * Source: RFC 8259; JSON Schema draft 2020-12.
 */
export interface Codec<T> {
  /** Reads JSON text. */
  parse(text: string, limits?: Partial<WireLimits>): T;
  /** Reads JSON data that something else has parsed. */
  decode(json: unknown, limits?: Partial<WireLimits>): T;
  /** Writes JSON data; each quantity in its own unit, to twelve significant digits. */
  encode(value: T, limits?: Partial<WireLimits>): JsonValue;
  /** Writes JSON text, indented by so many spaces. */
  stringify(value: T, spaces?: number, limits?: Partial<WireLimits>): string;
  /** The form as JSON Schema, draft 2020-12, for programs in other languages. */
  jsonSchema(): JsonObject;
}

/** What a codec is made of. */
export interface CodecParts<T> {
  /** What the whole is called in errors. */
  readonly name: string;
  /** Its shape, made when it is first needed. */
  readonly shape: () => FormOf<T>;
  /** Versions, where the format has them. */
  readonly format?: Format;
  /** What else has to hold; runs after reading and before writing. */
  readonly check?: (value: T) => T;
}

/** The codec of a shape. */
export function codecOf<T>({
  name,
  shape,
  format,
  check = (value) => value,
}: CodecParts<T>): Codec<T> {
  let made: z.ZodMiniType | undefined;
  const schema = () => {
    made ??= schemaOf(shape() as WireShape);
    return made;
  };
  const codec: Codec<T> = {
    parse(text, limits) {
      if (typeof text !== "string") refuse(name, shown(text), "a JSON text");
      scanText(text, limitsOf(limits), name);
      let json: unknown;
      try {
        json = JSON.parse(text);
      } catch (error) {
        refuse(name, shown(text), "a JSON text", (error as Error).message.slice(0, 120));
      }
      return codec.decode(json, limits);
    },
    decode(given, limits) {
      const copy = plainCopy(given, limitsOf(limits), name);
      const json = format ? inPresentVersion(copy, format) : copy;
      const read = z.safeDecode(schema(), json as never);
      if (!read.success) throwFirst(read.error.issues, json, name);
      return check(read.data as T);
    },
    encode(value, limits) {
      const checked = check(value);
      const written = z.safeEncode(schema(), checked as never);
      if (!written.success) throwFirst(written.error.issues, checked, name);
      return plainCopy(written.data, limitsOf(limits), name) as JsonValue;
    },
    stringify(value, spaces = 0, limits) {
      const text = JSON.stringify(codec.encode(value, limits), undefined, spaces);
      scanText(text, limitsOf(limits), name);
      return text;
    },
    jsonSchema: () =>
      jsonSchemaOf(shape() as WireShape, format ? `${name}, version ${format.version}` : name),
  };
  return codec;
}
