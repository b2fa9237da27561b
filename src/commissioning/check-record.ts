// Is this a record? Its form, and that of its history.
// Follows recordShape, which is derived from the type. Does not cover whether a figure is possible: the steps say that.
import { checkOf } from "../shapes/index.ts";
import { recordShape } from "./generated/record-shape.ts";
import type { InstallationRecord } from "./record.ts";

/**
 * Checks the form of a record that came from outside: every field known and of its form. The copy that
 * comes back holds nothing else and is frozen. What the figures mean is not judged.
 *
 * @param record - Anything.
 * @returns A frozen copy.
 * @throws {@link InvalidInputError} that names the path where it is not a record.
 *
 * Source: none; the library's own format, version 1.
 *
 * @example
 * ```ts
 * import { checkRecord } from "hvac-install-math/commissioning";
 * import { m } from "hvac-install-math/quantity";
 *
 * checkRecord({ version: 1, tubing: { length: m(9) } }).tubing?.length?.toString(); // => 9 m
 * ```
 */
export function checkRecord(record: unknown): InstallationRecord {
  return check(record, "record");
}

const check = /* @__PURE__ */ checkOf<InstallationRecord>(recordShape);
