// Is this a record? Its form, and that of its history.
// Follows record-shape.ts. Does not cover whether a figure is possible: the steps say that.
import { objectOf } from "../quantity/check.ts";
import type { InstallationRecord } from "./record.ts";
import { shapeAt } from "./record-path.ts";
import { recordShape } from "./record-shape.ts";
import { shaped } from "./shape.ts";

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
  const checked = shaped(
    "",
    objectOf("record", record as object),
    recordShape,
  ) as InstallationRecord;
  if (!checked.history) return checked;
  const history = checked.history.map((entry, i) => {
    const shape = shapeAt(`history[${i}].path`, entry.path);
    if (entry.previous === undefined) return entry;
    const previous = shaped(`history[${i}].previous`, entry.previous, shape);
    return Object.freeze({ ...entry, previous });
  });
  return Object.freeze({ ...checked, history: Object.freeze(history) });
}
