// How does the record of an installation travel as JSON?
// Follows recordShape of commissioning, which is derived from the type of the record.
// Does not cover what the record proves: assessInstallation says that.
import { recordShape } from "../commissioning/format/index.ts";
import type { InstallationRecord } from "../commissioning/index.ts";
import { type Codec, codecOf } from "./codec.ts";
import { recordFormat } from "./record-format.ts";

/**
 * JSON of an installation record, format version 2. What comes back is a checked, frozen record with live
 * quantities; a record of an older version comes back in the present one.
 *
 * A quantity is `{"kind", "value", "unit"}`. Refused, each with its path: an unknown field, a field that
 * stands twice, a value of another form, a newer version, `__proto__`, anything beyond {@link WireLimits}.
 *
 * Cautions: a record that can be read need not be true, and nothing here proves who wrote it.
 *
 * Source: RFC 8259 for JSON; the format is the library's own, version 2.
 *
 * @example
 * ```ts
 * import { ft } from "hvac-install-math/quantity";
 * import { recordCodec } from "hvac-install-math/wire";
 *
 * const text = recordCodec.stringify({ version: 2, runs: [{ tubing: { length: ft(36) } }] });
 * text; // => {"version":2,"runs":[{"tubing":{"length":{"kind":"length","value":36,"unit":"ft"}}}]}
 * recordCodec.parse(text).runs?.[0]?.tubing?.length?.toString(); // => 36 ft
 * ```
 */
export const recordCodec: Codec<InstallationRecord> = /* @__PURE__ */ codecOf({
  id: `record-${recordFormat.version}`,
  name: "record",
  shape: () => recordShape,
  format: recordFormat,
});
