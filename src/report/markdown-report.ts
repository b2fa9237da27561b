// What does the record of an installation say, as text? The report in Markdown.
// Follows report-document-of.ts for the content.
// Does not cover pictures: see html-report.ts.
import type { InstallationRecord } from "../commissioning/index.ts";
import { reportDocumentOf } from "./report-document-of.ts";
import type { ReportOptions } from "./report-options.ts";
import { writeMarkdown } from "./write-markdown.ts";

/**
 * Judges a record with {@link assessInstallation} and tells the result as Markdown: the verdict with what decides
 * it, what may not be done yet, every step with its figures, what is missing and assumed, cautions, equipment,
 * instruments, evidence, sources.
 *
 * The record is judged here and nowhere else, so that report and verdict cannot disagree. All text of the
 * record is escaped; texts of more than 500 characters are cut, and say so.
 *
 * @param record - The record, in whatever state of filling.
 * @param options - System of units, units of single kinds, locale of the numbers, time of printing.
 * @returns Markdown with GitHub's tables; the same for the same record and options.
 * @throws {@link InvalidInputError} when it is not a record, or an option is wrong.
 *
 * Cautions: the report judges a record, not the work. Nameplate, manufacturer's instructions, local code and
 * licensed practice govern.
 *
 * @example
 * ```ts
 * import { english } from "hvac-install-math/language/en";
 * import { ft } from "hvac-install-math/quantity";
 * import { markdownReport } from "hvac-install-math/report";
 *
 * const record = { version: 2, name: "Invented site 7", runs: [{ tubing: { length: ft(36) } }] } as const;
 * const lines = markdownReport(record, { language: english, system: "SI" }).split("\n");
 * lines[0]; // => # Installation report: Invented site 7
 * lines.find((line) => line.startsWith("## Verdict")); // => ## Verdict: **INCONCLUSIVE**
 * lines.some((line) => line.includes("10.97 m")); // => true
 * ```
 */
export function markdownReport(record: InstallationRecord, options: ReportOptions): string {
  return writeMarkdown(reportDocumentOf(record, options));
}
