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
  const context = contextOf(record, assessment, show, options.language);
  const plots = plotsOf(record, assessment, options);
  const { name, site, equipment, history = [], signatures = [] } = record;
  const { of } = context.words;
  const shortened = (text: string) => clipped(text, 120);
  const signed = signatures.map(({ name, role, at }) => `${name}, ${role}, ${context.figure(at)}`);
  const facts = [
    [of("site"), site?.name],
    [of("refrigerant"), equipment?.refrigerant],
    [of("outdoor-unit"), equipment?.outdoorUnit?.model],
    [of("signed"), signed.join("; ") || of("nobody")],
    [of("amendments"), history.length ? String(history.length) : of("none")],
    ...(options.printedAt === undefined ? [] : [[of("created"), options.printedAt] as const]),
  ] as const;
  return {
    title: of("title"),
    name: name === undefined || name.trim() === "" ? of("unnamed") : shortened(name),
    contents: of("contents"),
    facts: facts.map(([fact, value]) => [
      fact,
      value === undefined ? of("not-stated") : shortened(value),
    ]),
    sections: [
      verdictSection(context),
      actionsSection(context),
      holdsSection(context),
      overviewSection(context),
      stepsSection(context, plots),
      ...openSections(context),
      cautionsSection(context),
      installationSection(context),
      ...evidenceSections(context),
      sourcesSection(context),
      limitsSection(context),
    ],
  };
}
