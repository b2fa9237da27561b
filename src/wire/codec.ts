// How does a value travel as JSON and come back? One codec for one shape.
// Follows RFC 8259 (JSON) and JSON Schema draft 2020-12.
// Does not cover how it is stored or sent, nor whether its figures are right.
import * as z from "zod/mini";
import { numberOf } from "../quantity/check.ts";
import { throwFirst } from "./first-problem.ts";
import { type Format, inPresentVersion } from "./format.ts";
import { jsonSchemaOf } from "./json-schema-of.ts";
import type { JsonObject, JsonValue } from "./json-value.ts";
import { limitsOf, type WireLimits } from "./limits.ts";
import { plainCopy } from "./plain-copy.ts";
import { readable, refuse, shown } from "./refuse.ts";
import { scanText } from "./scan-text.ts";
import { schemaOf } from "./schema-of.ts";
import type { FormOf, WireShape } from "./wire-shape.ts";

/**
 * JSON in and out for one type. Unknown fields are refused, a field that stands twice is refused, and
 * every error is an {@link InvalidInputError} that names the path.
 *
 * Source: RFC 8259, sections 3, 4 and 9; JSON Schema, draft 2020-12.
 */
export interface Codec<T> {
  /**
   * Reads JSON text. A number nearer to 0 than a double can be (1e-400) is read as 0, as `JSON.parse` does and
   * RFC 8259, section 6, allows; no instrument shows one. One beyond the largest double is refused.
   *
   * @param text - The text.
   * @param limits - How much is read; {@link defaultLimits} for what is left out.
   * @returns The value, with live quantities.
   * @throws {@link InvalidInputError} that names the path where the text is not such a value.
   */
  parse(text: string, limits?: Partial<WireLimits>): T;
  /**
   * Reads JSON data that something else has parsed; it is left as it was. A field that stood twice in its
   * text can no longer be seen.
   *
   * @param json - What `JSON.parse` gave.
   * @param limits - How much is read; {@link defaultLimits} for what is left out.
   * @returns The value, with live quantities.
   * @throws {@link InvalidInputError} that names the path where the data are not such a value.
   */
  decode(json: unknown, limits?: Partial<WireLimits>): T;
  /**
   * Writes JSON data: each quantity in its own unit, to twelve significant digits; fields in the order of
   * the type.
   *
   * @param value - The value; it is left as it was.
   * @param limits - How much is written; {@link defaultLimits} for what is left out.
   * @returns JSON data that {@link Codec.decode} reads.
   * @throws {@link InvalidInputError} that names the path where the value is not of its type.
   */
  encode(value: T, limits?: Partial<WireLimits>): JsonValue;
  /**
   * Writes JSON text.
   *
   * @param value - The value; it is left as it was.
   * @param spaces - Spaces of indentation, 0 to 10; all on one line when left out.
   * @param limits - How much is written; {@link defaultLimits} for what is left out.
   * @returns Text that {@link Codec.parse} reads.
   * @throws {@link InvalidInputError} as {@link Codec.encode}, and beyond the limits.
   */
  stringify(value: T, spaces?: number, limits?: Partial<WireLimits>): string;
  /**
   * The form, for programs in other languages.
   *
   * @returns JSON Schema, draft 2020-12. Values that only a computation can refuse (−500 °F, 30 February)
   * are allowed by it.
   */
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
      const shape = schema();
      const write = () => {
        const checked = check(value);
        const written = z.safeEncode(shape, checked as never);
        if (!written.success) throwFirst(written.error.issues, checked, name);
        return written.data;
      };
      const data = readable(write, () =>
        refuse(name, "an object that cannot be read", "a value of its type"),
      );
      return plainCopy(data, limitsOf(limits), name) as JsonValue;
    },
    stringify(value, spaces = 0, limits) {
      numberOf("spaces", spaces, { min: 0, max: 10 });
      const text = JSON.stringify(codec.encode(value, limits), undefined, spaces);
      scanText(text, limitsOf(limits), name);
      return text;
    },
    jsonSchema: () =>
      jsonSchemaOf(shape() as WireShape, format ? `${name}, version ${format.version}` : name),
  };
  return codec;
}
