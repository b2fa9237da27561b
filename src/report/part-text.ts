// What does a person call the part of the record of which a statement speaks?
// Follows places.ts, as the report itself does.
// Does not cover the step: its word is `commissioning.step.<name>` of the language, by `label`.
import type { InstallationRecord } from "../commissioning/index.ts";
import { objectOf, textOf } from "../quantity/check.ts";
import { placeText } from "./places.ts";
import type { ReportOptions } from "./report-options.ts";
import { wordsOf } from "./words.ts";

/**
 * Names the part of a record of which a reason, an action or a caution of {@link assessInstallation} speaks, as the
 * report does: by the name of its run or joint, or by a number where the record has several.
 *
 * @param part - The path of the part: `part` of a statement or `path` of a check.
 * @param record - The record that was judged.
 * @param language - The language of the reader.
 * @returns The words, such as `Run office`; empty for a statement on the whole record, and for what the record has once.
 * @throws {@link InvalidInputError} when the part is no text, or the record or the language is no object.
 *
 * @example
 * ```ts
 * import { english } from "hvac-install-math/language/en";
 * import { partText } from "hvac-install-math/report";
 *
 * // invented: two heads, each tested by itself
 * const record = {
 *   version: 2,
 *   runs: [{ name: "bedroom" }, { name: "office" }],
 *   pressureTests: [{ covers: ["bedroom"] }, { covers: ["office"] }],
 * } as const;
 * partText("pressureTests[1]", record, english); // => Run office
 * partText("runs[0].joints[1]", record, english); // => Run bedroom, joint 2
 * partText("charge", record, english) === ""; // => true
 * ```
 */
export function partText(
  part: string | undefined,
  record: InstallationRecord,
  language: ReportOptions["language"],
): string {
  const words = wordsOf(objectOf("language", language));
  return placeText(
    { record: objectOf("record", record), words, figure: String },
    textOf("part", part ?? ""),
  );
}
