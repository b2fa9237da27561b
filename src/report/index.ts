/**
 * The record of an installation as a report for people: Markdown, and one printable HTML page.
 *
 * @module report
 */
export { htmlReport } from "./html-report.ts";
export { markdownReport } from "./markdown-report.ts";
export { partText } from "./part-text.ts";
export { type PlanSheetOptions, planSheet } from "./plan-sheet.ts";
export type { HtmlReportOptions, ReportOptions, ReportPlot } from "./report-options.ts";
