// What does the record of an installation say, as a page? The report as one HTML file.
// Follows report-document-of.ts for the content.
// Does not cover drawing: pictures come from the caller.
import type { InstallationRecord } from "../commissioning/index.ts";
import { reportDocumentOf } from "./report-document-of.ts";
import type { HtmlReportOptions } from "./report-options.ts";
import { writeHtml } from "./write-html.ts";

/**
 * Judges a record with {@link assessInstallation} and tells the result as one HTML page that stands alone: no
 * script, no request, one style sheet; light and dark, readable on a phone, printable on A4 and Letter with the
 * record's name at the foot of each page. The content is that of {@link markdownReport}, and pictures.
 *
 * The record is judged here and nowhere else, so that report and verdict cannot disagree. All text of the
 * record is escaped; texts of more than 500 characters are cut, and say so. A picture is taken over as it is
 * when it is one `<svg>` element of shapes and text; one with scripts, links, styles or images is refused, and
 * one with an id that another picture or the report itself has.
 *
 * Numbers follow the locale, sentences and labels the language.
 *
 * @param record - The record, in whatever state of filling.
 * @param options - Language, system of units, units of single kinds, locale of the numbers, time of printing, pictures.
 * @returns The page as text; the same for the same record and options.
 * @throws {@link InvalidInputError} when it is not a record, or an option or a picture is wrong.
 *
 * Cautions: the report judges a record, not the work. Nameplate, manufacturer's instructions, local code and
 * licensed practice govern.
 *
 * @example
 * ```ts
 * import { english } from "hvac-install-math/language/en";
 * import { htmlReport } from "hvac-install-math/report";
 *
 * const record = { version: 2, name: "<script>alert(1)</script>" } as const;
 * const page = htmlReport(record, { language: english, system: "inch-pound", printedAt: "2026-05-06 09:30" });
 * page.includes('<html lang="en-US">'); // => true
 * page.includes("<script"); // => false
 * ```
 */
export function htmlReport(record: InstallationRecord, options: HtmlReportOptions): string {
  const page = reportDocumentOf(record, options);
  return writeHtml(page, options.language.locale);
}
