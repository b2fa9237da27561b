// What is dangerous, cited, and outside this report? The last sections.
// Follows the assessment and the bibliography. Does not cover advice beyond the cautions of the checks.
import { type Source, sourceById } from "../sources/index.ts";
import type { Context } from "./context.ts";
import { list, type Section, table, text } from "./report-document.ts";
import { say } from "./statements.ts";
import { placedText } from "./verdict-section.ts";

/** Cautions: findings, dangers, then what governs, each with the step of which it speaks. */
export function cautionsSection(context: Context): Section {
  const { assessment, said, words } = context;
  const kinds = ["finding", "danger", "governing"] as const;
  const parts = kinds.flatMap((kind, i): Section[] => {
    const own = assessment.cautions.filter((one) => (one.kind ?? "finding") === kind);
    const lines = own.map((one) => (kind === "finding" ? placedText(context, one) : said(one)));
    const title = words.code(`assessment.caution.${kind}`);
    return lines.length ? [{ id: `cautions-${i + 1}`, title, blocks: list(lines) }] : [];
  });
  return { id: "cautions", title: words.of("cautions"), blocks: [], parts };
}

/** How a work was read: a word for the table, and what that asks of the reader. */
const readings = {
  reproduction: ["reproduction", "report.read-in-reproduction"],
  memory: ["memory", "report.read-from-memory"],
  none: [undefined, "report.no-text"],
} as const satisfies Readonly<Record<Source["readAs"], unknown>>;

/** Every cited work in full. */
export function sourcesSection({ assessment, works, words, said }: Context): Section {
  const rows = works.map((id, i) => {
    const { title, edition, publisher, doi, readAs } = sourceById(id);
    const clauses = assessment.sources.filter(({ source, clause }) => source === id && clause);
    const [word] = readings[readAs];
    return [
      `S${i + 1}`,
      [title, edition, publisher, doi && `doi:${doi}`].filter(Boolean).join(". "),
      clauses.map(({ clause }) => clause).join("; ") || "—",
      word ? words.of(word) : "—",
    ];
  });
  const ids = works.map((_, i) => `source-${i + 1}`);
  const head = (["number", "work", "clauses", "read"] as const).map(words.of);
  const ways = [...new Set(works.map((id) => readings[sourceById(id).readAs][1]))];
  return {
    id: "sources",
    title: words.of("sources"),
    blocks: rows.length
      ? [
          text(ways.map((way) => said(say(way))).join(" ")),
          ...table(words.of("sources"), head, rows, ids),
        ]
      : [],
  };
}

/** What the report cannot say, and what was left out of it. */
export function limitsSection({ words, said }: Context, hasAppendix: boolean): Section {
  return {
    id: "limits",
    title: words.of("limits"),
    blocks: list([
      said(say("report.judges-a-record")),
      said(say("report.repeats-what-was-stated")),
      said(say("report.what-a-pass-means")),
      said(say("report.what-plus-minus-means")),
      ...(hasAppendix ? [] : [said(say("report.appendix-left-out"))]),
      said(say("report.standing")),
    ]),
  };
}
