// Which versions has the format of the installation record? Data only.
// Follows no standard. Does not cover the fields: commissioning's recordShape holds them.
import { fromVersion1 } from "../commissioning/format/index.ts";
import type { Format } from "./format.ts";
import type { JsonObject } from "./json-value.ts";

/**
 * Version 1 had one line set, version 2 has runs. A change that old records do not survive makes the next version:
 * raise `version`, and add `{ from, change }`. A field that is new and may be missing needs no version.
 */
export const recordFormat: Format = {
  version: 2,
  steps: [{ from: 1, change: (json) => fromVersion1(json) as JsonObject }],
};
