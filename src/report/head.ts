// What stands over a report or a plan? Its name, and in a line what it is about. Internal.
// Follows the record. Does not cover the title: each kind of paper has its own.
import type { InstallationRecord } from "../commissioning/index.ts";
import type { Reader } from "./context.ts";
import type { ReportDocument } from "./report-document.ts";

/** The name of a record, and in a line what it is about. */
export function headOf(
  { name = "", site, equipment }: InstallationRecord,
  { behind, cut, words }: Reader,
  printedAt: string | undefined,
): Pick<ReportDocument, "name" | "about" | "colon"> {
  const about = [site?.name, equipment?.refrigerant, equipment?.outdoorUnit?.model, printedAt];
  return {
    name: name.trim() === "" ? words.of("unnamed") : cut(name, 120),
    colon: behind(""),
    about: about.flatMap((one) => (one?.trim() ? [cut(one, 120)] : [])),
  };
}
