// Which versions has the format of the installation record? Data only.
// Follows no standard. Does not cover the fields: commissioning's recordShape holds them.
import type { Format } from "./format.ts";

/**
 * Version 1 is the first. A change that old records do not survive makes version 2: raise `version`, and add
 * `{ from: 1, change }`. A field that is new and may be missing needs no version.
 */
export const recordFormat: Format = { version: 1, steps: [] };
