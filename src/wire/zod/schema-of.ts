// How does the shape of a codec look as a schema of zod? Part by part, with the engine's own check at each leaf.
// Follows zod 4 (mini). A test holds these schemas equal to the codecs on valid, mutated and hostile values.
// Does not cover limits beyond those of the codecs, nor repeated fields, which only a text can have.
import * as z from "zod/mini";
import type { InstallationRecord } from "../../commissioning/index.ts";
import {
  errorOf,
  isRecord,
  reading,
  type Shape,
  startWalk,
  type Visit,
  visitOf,
} from "../../shapes/index.ts";
import { type Codec, defaultLimits, recordCodec } from "../index.ts";

type Schema = z.ZodMiniType;

/** A schema that leaves the whole part to the engine. */
const leaf = (visit: Visit): Schema =>
  z.pipe(
    z.unknown(),
    z.transform((value, payload) => {
      const walk = startWalk(defaultLimits, 100);
      const made = visit.of(value, walk);
      for (const one of walk.findings) {
        const { message } = errorOf(one, "it");
        payload.issues.push({ code: "custom", message, path: [...one.path], input: value });
      }
      return walk.findings.length > 0 ? z.NEVER : made;
    }),
  );

/** An object of fields alone: no list, no object of a class, without the fields that are undefined. */
const fieldsOnly = z.pipe(
  z.unknown(),
  z.transform((value, payload) => {
    if (!isRecord(value)) {
      payload.issues.push({ code: "custom", message: "an object", input: value });
      return z.NEVER;
    }
    return Object.fromEntries(Object.entries(value).filter(([, one]) => one !== undefined));
  }),
);

/** Whether a part needs the whole to be read: what stands at a path is of the form that the whole has there. */
const needsWhole = (shape: Shape): boolean =>
  typeof shape === "object" &&
  "fields" in shape &&
  Object.values(shape.fields).some((one) => typeof one === "object" && "at" in one);

function made(shape: Shape, root: Shape): Schema {
  if (typeof shape === "object" && !needsWhole(shape)) {
    if ("list" in shape)
      return z.readonly(
        z.array(made(shape.list, root)).check(z.maxLength(defaultLimits.listItems)),
      );
    if ("fields" in shape) {
      const fields = Object.entries(shape.fields).map(([name, own]) => {
        const schema = made(own, root);
        return [name.replace("?", ""), name.endsWith("?") ? z.optional(schema) : schema];
      });
      return z.pipe(fieldsOnly, z.readonly(z.strictObject(Object.fromEntries(fields))));
    }
    if ("either" in shape) return z.union(shape.either.map((one) => made(one, root)));
  }
  return leaf(visitOf(shape, reading, root));
}

/**
 * The schema of a codec: JSON data in, the value with live quantities out, as {@link Codec.decode} gives it.
 * Compose it with your own: `z.object({ id: z.string(), record: recordSchema })`.
 *
 * @param codec - The codec.
 * @returns A schema of `zod/mini`, which zod itself takes too.
 *
 * @example
 * ```ts
 * import { tubeVolumeInput } from "hvac-install-math/wire";
 * import { schemaOf } from "hvac-install-math/wire/zod";
 *
 * const size = { kind: "length", value: 0.25, unit: "in" };
 * const tube = { outsideDiameter: size, wall: { ...size, value: 0.03 } };
 * const sent = schemaOf(tubeVolumeInput).parse({ tube, length: { ...size, value: 36, unit: "ft" } });
 * sent.length.toString(); // => 36 ft
 * ```
 */
export const schemaOf = <T>(codec: Codec<T>): z.ZodMiniType<T, unknown> =>
  made(codec.shape, codec.shape) as z.ZodMiniType<T, unknown>;

/**
 * The schema of an installation record of the present version; {@link recordCodec} reads older ones too.
 * It is made when it is first used.
 */
export const recordSchema: z.ZodMiniType<InstallationRecord, unknown> = /* @__PURE__ */ z.lazy(() =>
  schemaOf(recordCodec),
);
