// How does a record become a report? Judged once, then told in one order for every form of the report.
// Follows the reader: the verdict first, then what waits, the steps, the evidence, the sources.
// Does not cover how it looks: see the writers.
import { assessInstallation, type InstallationRecord } from "../commissioning/index.ts";
import {
  cautionsSection,
  limitsSection,
  openSections,
  sourcesSection,
} from "./closing-sections.ts";
import { contextOf } from "./context.ts";
import { clipped } from "./plain-text.ts";
import { plotsOf } from "./plots-of.ts";
import { evidenceSections, installationSection } from "./record-sections.ts";
import type { ReportDocument } from "./report-document.ts";
import { checkOptions, type HtmlReportOptions } from "./report-options.ts";
import { stepsSection } from "./step-section.ts";
import { holdsSection, overviewSection, verdictSection } from "./verdict-section.ts";

/** The report of a record. */
export function reportDocumentOf(
  record: InstallationRecord,
  options: HtmlReportOptions,
): ReportDocument {
  const show = checkOptions(options);
  const assessment = assessInstallation(record, { rules: options.rules ?? [] });
  const context = contextOf(record, assessment, show);
  const plots = plotsOf(record, assessment, options);
  const { name, site, equipment, history = [], signatures = [] } = record;
  const shortened = (text: string) => clipped(text, 120);
  const signed = signatures.map(({ name, role, at }) => `${name}, ${role}, ${context.figure(at)}`);
  const facts = [
    ["Site", site?.name],
    ["Refrigerant", equipment?.refrigerant],
    ["Outdoor unit", equipment?.outdoorUnit?.model],
    ["Signed, as stated", signed.join("; ") || "by nobody"],
    ["Amendments", history.length ? String(history.length) : "none"],
    ...(options.printedAt === undefined ? [] : [["Printed", options.printedAt] as const]),
  ] as const;
  return {
    title: "Installation report",
    name: name === undefined || name.trim() === "" ? "Unnamed installation" : shortened(name),
    facts: facts.map(([fact, value]) => [
      fact,
      value === undefined ? "not stated" : shortened(value),
    ]),
    sections: [
      verdictSection(context),
      holdsSection(context),
      overviewSection(context),
      stepsSection(context, plots),
      ...openSections(context),
      cautionsSection(context),
      installationSection(context),
      ...evidenceSections(context),
      sourcesSection(context),
      limitsSection,
    ],
  };
}
