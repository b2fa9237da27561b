// How does a record become a report? Judged once, then told in one order for every form of the report.
// Follows the reader: the verdict, what to do, what waits, the steps in a few lines; what only an auditor reads comes last.
// Does not cover how it looks: see the writers.
import { assessInstallation, type InstallationRecord } from "../commissioning/index.ts";
import { appendixSection } from "./appendix.ts";
import { cautionsSection, limitsSection } from "./closing-sections.ts";
import { contextOf } from "./context.ts";
import { headOf } from "./head.ts";
import { plotsOf } from "./plots-of.ts";
import type { ReportDocument } from "./report-document.ts";
import { checkOptions, type HtmlReportOptions } from "./report-options.ts";
import { stepsSection } from "./step-section.ts";
import {
  actionsSection,
  holdsSection,
  overviewSection,
  verdictSection,
} from "./verdict-section.ts";

/** The report of a record. */
export function reportDocumentOf(
  record: InstallationRecord,
  options: HtmlReportOptions,
): ReportDocument {
  const show = checkOptions(options);
  const assessment = assessInstallation(record, { rules: options.rules ?? [] });
  const context = contextOf(record, assessment, show, options);
  const plots = plotsOf(record, assessment, options);
  const { of } = context.words;
  const { appendix = true, printedAt } = options;
  return {
    ...headOf(record, context, printedAt),
    title: of("title"),
    sections: [
      verdictSection(context),
      ...actionsSection(context),
      holdsSection(context),
      overviewSection(context),
      stepsSection(context, plots),
      cautionsSection(context),
      limitsSection(context, appendix),
      ...(appendix ? [appendixSection(context)] : []),
    ],
  };
}
