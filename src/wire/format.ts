// In which version of the format was this written, and how does it become the present one?
// Follows no standard. Does not cover versions to come: they are refused by name.

import { numberOf, wholeNumberOf } from "../quantity/check.ts";
import { isRecord } from "../shapes/index.ts";
import { wireHint } from "./hints.ts";
import type { JsonObject } from "./json-value.ts";

/** How a document of one version becomes one of the next: a pure function on JSON data, which it leaves as it is. */
export interface FormatStep {
  /** The version that it reads; it writes the next. */
  readonly from: number;
  /** The change, `version` included. Paths in `history` and `photos` have to follow a field that moves. */
  readonly change: (json: JsonObject) => JsonObject;
}

/** The versions of a format: the present one, and a step from each earlier one in their order. */
export interface Format {
  readonly version: number;
  readonly steps: readonly FormatStep[];
}

/** The document in the present version of its format. */
export function inPresentVersion(json: unknown, { version, steps }: Format): unknown {
  if (!isRecord(json)) return json; // the shape says so
  const written = json.version;
  wholeNumberOf("version", written as number, { min: 1 });
  numberOf("version", written as number, { max: version, hint: wireHint("wire.newer-version") });
  let document = json as JsonObject;
  for (const { from, change } of steps) {
    if (from >= (written as number)) document = change(document);
  }
  return document;
}
