// How does a value travel as JSON and come back? One codec for one shape.
// Follows RFC 8259 (JSON) and Standard Schema, version 1.
// Does not cover how it is stored or sent, nor whether its figures are right.
import { numberOf } from "../quantity/check.ts";
import { type InputProblem, InvalidInputError, isInvalidInputError } from "../quantity/errors.ts";
import { frozenInPlace } from "../quantity/frozen.ts";
import { type Later, later } from "../quantity/later.ts";
import {
  errorOf,
  type Finding,
  pathText,
  reading,
  type Shape,
  saidBy,
  shown,
  startWalk,
  type Visit,
  visitOf,
} from "../shapes/index.ts";
import { type Format, inPresentVersion } from "./format.ts";
import type { JsonValue } from "./json-value.ts";
import { limitsOf, type WireLimits } from "./limits.ts";
import { namesIn, pathAt } from "./scan-text.ts";
import type { StandardProps } from "./standard-schema.ts";
import { writing } from "./write-json.ts";

/**
 * JSON in and out for one type. Unknown fields are refused, a field that stands twice is refused, and
 * every error is an {@link InvalidInputError} that names the path.
 *
 * Source: RFC 8259, sections 3, 4 and 9; Standard Schema, version 1.
 */
export interface Codec<T> {
  /**
   * Reads JSON text; a byte-order mark before it is left out. A number nearer to 0 than a double can be (1e-400)
   * is read as 0, as `JSON.parse` does and RFC 8259, section 6, allows; no instrument shows one. One beyond the
   * largest double is refused.
   *
   * @param text - The text.
   * @param limits - How much is read; {@link defaultLimits} for what is left out.
   * @returns The value, frozen, with live quantities.
   * @throws {@link InvalidInputError} that names the path where the text is not such a value.
   */
  parse(text: string, limits?: Partial<WireLimits>): T;
  /**
   * Reads JSON data that something else has parsed; it is left as it was. A field that stood twice in its
   * text can no longer be seen.
   *
   * @param json - What `JSON.parse` gave.
   * @param limits - How much is read; {@link defaultLimits} for what is left out.
   * @returns The value, frozen, with live quantities.
   * @throws {@link InvalidInputError} that names the path where the data are not such a value.
   */
  decode(json: unknown, limits?: Partial<WireLimits>): T;
  /**
   * Everything that is wrong with JSON data, at most 1000 places: for a form that marks each field.
   *
   * @param json - What `JSON.parse` gave.
   * @param limits - How much is read; {@link defaultLimits} for what is left out.
   * @returns Each place with its path, what stands there and what is allowed; none when {@link Codec.decode}
   * reads it.
   */
  problems(json: unknown, limits?: Partial<WireLimits>): readonly InputProblem[];
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
  /** Its own name: that of its JSON Schema, which {@link jsonSchemaOf} writes. */
  readonly id: string;
  /** What the whole is called, with the version where the format has them. */
  readonly title: string;
  /** The form as data, from which all of this is made. */
  readonly shape: Shape;
  /** JSON data in, for form libraries and servers that take any validator. */
  readonly "~standard": StandardProps<T>;
}

/** What a codec is made of. */
export interface CodecParts {
  /** Its own name: that of its JSON Schema. */
  readonly id: string;
  /** What the whole is called in errors. */
  readonly name: string;
  /** Its form, made when the codec is first used. */
  readonly shape: Later<Shape>;
  /** Versions, where the format has them. */
  readonly format?: Format | undefined;
}

/** How many problems are listed. */
const most = 1000;

/** What reading or writing came to. */
interface Walked {
  readonly value: unknown;
  readonly findings: readonly Finding[];
  /** How many names of fields were seen; none where an earlier version had others. */
  readonly names: number;
}

/** The codec of a shape. */
export function codecOf<T>(parts: CodecParts): Codec<T> {
  const { id, name, format } = parts;
  const shape = later(() => frozenInPlace(parts.shape()));
  const readVisit = later(() => visitOf(shape(), reading));
  const writeVisit = later(() => visitOf(shape(), writing));

  const read = (json: unknown, limits: WireLimits, upTo = 1): Walked =>
    walked(readVisit(), json, limits, upTo, format);

  const whole = <V>({ value, findings: [first] }: Walked): V => {
    if (first) throw errorOf(first, name);
    return value as V;
  };

  const codec: Codec<T> = {
    id,
    title: format ? `${name}, version ${format.version}` : name,
    get shape() {
      return shape();
    },
    parse(given, stated) {
      const limits = limitsOf(stated);
      if (typeof given !== "string") throw notJson(name, shown(given));
      const text = given.startsWith("\uFEFF") ? given.slice(1) : given;
      const names = namesIn(text, limits, name);
      const result = read(parsed(text, name), limits);
      // As many names in the text as in what was made of it: then none stood twice. Else it is looked for.
      if (result.names !== names) pathAt(text, text.length, name);
      return whole(result);
    },
    decode: (json, stated) => whole(read(json, limitsOf(stated))),
    problems: (json, stated) =>
      lookedAt(json, limitsOf(stated)).findings.map(({ path, ...problem }) => ({
        argument: pathText(path, name),
        ...problem,
      })),
    encode: (value, stated) => whole(walked(writeVisit(), value, limitsOf(stated), 1)),
    stringify(value, spaces = 0, stated = {}) {
      numberOf("spaces", spaces, { min: 0, max: 10 });
      const limits = limitsOf(stated);
      const text = JSON.stringify(codec.encode(value, limits), undefined, spaces);
      numberOf(`${name}.length`, text.length, { max: limits.textLength });
      return text;
    },
    "~standard": Object.freeze<StandardProps<T>>({
      version: 1,
      vendor: "hvac-install-math",
      validate(json) {
        const { value, findings } = lookedAt(json, limitsOf());
        const issues = findings.map((one) => ({
          message: errorOf(one, name).message,
          path: one.path,
        }));
        return issues.length > 0 ? { issues } : { value: value as T };
      },
    }),
  };

  /** What a visit of all values comes to, as far as it is asked for. */
  function walked(
    visit: Visit,
    given: unknown,
    limits: WireLimits,
    upTo: number,
    versions?: Format,
  ): Walked {
    const walk = startWalk(limits, upTo);
    try {
      const document = versions ? inPresentVersion(given, versions) : given;
      const value = visit.of(document, walk);
      const names = document === given ? walk.names : Number.NaN;
      return { value, findings: walk.findings, names };
    } catch (error) {
      if (isInvalidInputError(error)) throw error;
      // A getter or a proxy of the caller's.
      throw new InvalidInputError({
        argument: name,
        value: "an object that cannot be read",
        allowed: "data that can be read",
      });
    }
  }

  /** What reading comes to, with all that is wrong: also with the whole, or its version. */
  function lookedAt(json: unknown, limits: WireLimits): Pick<Walked, "value" | "findings"> {
    try {
      return read(json, limits, most);
    } catch (error) {
      const said = error as InvalidInputError; // a walk throws nothing else
      const path = said.argument === name ? [] : [said.argument];
      return { value: undefined, findings: [{ path, ...saidBy(said) }] };
    }
  }

  return Object.freeze(codec);
}

function parsed(text: string, name: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw notJson(name, `${shown(text)} (${(error as Error).message})`);
  }
}

const notJson = (argument: string, value: string) =>
  new InvalidInputError({ argument, value, allowed: "a JSON text" });
