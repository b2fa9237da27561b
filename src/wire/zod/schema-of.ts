// How is a codec a schema of zod? The codec reads; zod hears what it found wrong, each at its path.
// Follows zod 4 (mini). Does not cover fields that stand twice, which only a text can have.
import * as z from "zod/mini";
import type { InstallationRecord } from "../../commissioning/index.ts";
import { type Codec, recordCodec } from "../index.ts";

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
  z.pipe(
    z.unknown(),
    z.transform((input, { issues }): T => {
      const result = codec["~standard"].validate(input);
      if (!result.issues) return result.value;
      for (const { message, path } of result.issues) {
        issues.push({ code: "custom", message, path: [...path], input });
      }
      return z.NEVER;
    }),
  );

/** The schema of an installation record, of whatever version {@link recordCodec} reads. */
export const recordSchema: z.ZodMiniType<InstallationRecord, unknown> =
  /* @__PURE__ */ schemaOf(recordCodec);
