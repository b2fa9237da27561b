// What does a job need before it is begun, on paper? The plan as Markdown or as one printable HTML page.
// Follows planInstallation for the content, in its order. Does not cover a verdict: nothing is judged before the work.
import type { Files, InstallationRecord } from "../commissioning/index.ts";
import { type InstallationPlan, type PlanItem, planInstallation } from "../planning/index.ts";
import { objectOf, oneOf } from "../quantity/check.ts";
import { type SourceId, sourceById } from "../sources/index.ts";
import { type Reader, readerOf, refsTo } from "./context.ts";
import { headOf } from "./head.ts";
import { runOf, runText } from "./places.ts";
import { list, type ReportDocument, type Run, type Section, text } from "./report-document.ts";
import { checkOptions, type ReportOptions } from "./report-options.ts";
import { say } from "./statements.ts";
import { capital } from "./words.ts";
import { writeHtml } from "./write-html.ts";
import { writeMarkdown } from "./write-markdown.ts";

/** How a plan is to be written. */
export interface PlanSheetOptions extends ReportOptions {
  /** `markdown`, or one `html` page to print; Markdown when left out. */
  readonly format?: "markdown" | "html" | undefined;
  /** Equipment and instruments that the record refers to by `onFile`. */
  readonly onFile?: Files | undefined;
  /** The plan of this record, where it was already made; it is not made again, and needs no rule sets. */
  readonly plan?: InstallationPlan | undefined;
}

/**
 * Plans a job with {@link planInstallation} and writes the plan for the van: what to bring, what to set and expect, what was
 * checked, what is still to be asked, cautions and sources. As HTML it is one page that stands alone, about two sheets of
 * A4 for one run and half a sheet for each further one.
 *
 * All text of the record is escaped, and cut where nobody would read on.
 *
 * @param record - The record, in whatever state of filling.
 * @param options - Language, form, units, time of printing; the plan, or rule sets and what is on file to make it with.
 * @returns The sheet as text; the same for the same record and options.
 * @throws {@link InvalidInputError} when it is not a record, or an option is wrong.
 *
 * Cautions: a plan is arithmetic. Nameplate, manufacturer's instructions, local code and licensed practice govern.
 *
 * @example
 * ```ts
 * import { english } from "hvac-install-math/language/en";
 * import { ft, inch } from "hvac-install-math/quantity";
 * import { planSheet } from "hvac-install-math/report";
 *
 * const tube = (size: number) => ({ outsideDiameter: inch(size), wall: inch(0.032) });
 * const record = {
 *   version: 2,
 *   name: "Invented site 7",
 *   runs: [{ name: "A", tubing: { way: ft(21), liquid: tube(0.25), vapor: tube(0.375) } }],
 *   plan: { stock: [ft(16), ft(25)], slack: ft(1) },
 * } as const;
 * const lines = planSheet(record, { language: english, system: "inch-pound" }).split("\n");
 * lines[0]; // => # Plan of the work: Invented site 7
 * lines.some((line) => line.startsWith("- Run A: a 25 ft line set")); // => true
 * ```
 */
export function planSheet(record: InstallationRecord, options: PlanSheetOptions): string {
  const show = checkOptions(options);
  const format = oneOf("options.format", options.format ?? "markdown", ["markdown", "html"]);
  const { rules = [], onFile, language } = options;
  const plan =
    options.plan === undefined
      ? planInstallation(record, { rules, onFile })
      : objectOf("options.plan", options.plan);
  const reader = readerOf(show, language);
  const document = documentOf(record, plan, reader, options.printedAt);
  return format === "html" ? writeHtml(document, language.locale) : writeMarkdown(document);
}

function documentOf(
  record: InstallationRecord,
  plan: InstallationPlan,
  reader: Reader,
  printedAt: string | undefined,
): ReportDocument {
  const { words, said } = reader;
  const works = [...new Set(plan.sources.map(({ source }) => source))];
  const refs = refsTo(works);
  const line = (one: PlanItem): Run[] => [
    { text: [ofRun(one, reader, record), said(one)].filter(Boolean).join(" ") },
    ...(one.sources.length > 0 ? [{ text: " [" }, ...refs(one.sources), { text: "]" }] : []),
  ];
  const asked = plan.ask.map((one) => said(one));
  return {
    ...headOf(record, reader, printedAt),
    title: words.of("plan-title"),
    sections: [
      { id: "plan-bring", title: words.of("bring"), blocks: list(plan.bring.map(line)) },
      { id: "plan-set", title: words.of("set"), blocks: list(plan.set.map(line)) },
      {
        id: "plan-check",
        title: words.of("check"),
        blocks: list(
          plan.check.map((one) => [words.outcome(one.outcome), { text: " " }, ...line(one)]),
        ),
      },
      {
        id: "plan-ask",
        title: words.of("ask"),
        blocks: asked.length > 0 ? list(asked) : [text(said(say("report.nothing-to-ask")))],
      },
      cautionsOf(plan, reader),
      {
        id: "plan-sources",
        title: words.of("sources"),
        blocks: [
          ...list(
            works.map((id, i) => `S${i + 1} ${workOf(id)}`),
            works.map((_, i) => `source-${i + 1}`),
          ),
          text(said(say("report.plan-is-arithmetic"))),
        ],
      },
    ],
  };
}

/** The run of which a statement of another module speaks; those of the plan name it themselves. */
function ofRun(
  { code, path = "" }: PlanItem,
  reader: Reader,
  record: InstallationRecord,
): string | undefined {
  const run = runOf({ record }, path);
  if (run === undefined || code.startsWith("planning.")) return undefined;
  return reader.behind(reader.cut(runText({ record, ...reader }, run), 60));
}

function cautionsOf({ cautions }: InstallationPlan, { words, said, behind }: Reader): Section {
  const danger = behind(capital(words.code("assessment.caution.danger")));
  return {
    id: "cautions",
    title: words.of("cautions"),
    blocks: list(
      cautions.map((one) => (one.kind === "danger" ? `${danger} ${said(one)}` : said(one))),
    ),
  };
}

/** A work; the clauses stand with each line of the plan itself. */
function workOf(id: SourceId): string {
  const { title, edition } = sourceById(id);
  return [title, edition].filter(Boolean).join(", ");
}
