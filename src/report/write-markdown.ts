// How is a report written as Markdown? Headings, paragraphs, lists and tables, all text escaped.
// Follows CommonMark 0.31.2 (2.4, 6.1) and GitHub Flavored Markdown 0.29 (4.10, tables); from memory.
// Does not cover pictures: a Markdown reader need not show SVG.
import { visible } from "./plain-text.ts";
import type { Block, ReportDocument, Run, Section, Table, Words } from "./report-document.ts";

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  "|": "&#124;",
};

/** Text that Markdown shows as it is: no mark-up, no link, no tag, no cell. */
export function markdownText(text: string): string {
  return visible(text)
    .replace(/[\\`*_{}[\]~$#]/g, "\\$&")
    .replace(/[&<>|]/g, (mark) => entities[mark] as string)
    .replace(/:(?=\/\/)|(?<=www)\.|@/gi, "\\$&") // no link is made of a bare address
    .replace(/^ ?(?:[-+=!]|(\d+)(?=[.)](?:\s|$)))/, (mark, digits) =>
      digits ? `${mark}\\` : `\\${mark}`,
    );
}

/** The report as Markdown. */
export function writeMarkdown({ title, name, about, colon, sections }: ReportDocument): string {
  const lines = [
    `# ${markdownText(title)}${colon} ${markdownText(name)}`,
    ...(about.length ? [about.map(markdownText).join(" · ")] : []),
    ...sections.flatMap((section) => sectionText(section, 2, colon)),
  ];
  return `${lines.join("\n\n")}\n`;
}

function sectionText(
  { title, mark, blocks, parts = [] }: Section,
  level: number,
  colon: string,
): string[] {
  const word = mark ? `${colon} ${wordsText([mark])}` : "";
  return [
    `${"#".repeat(level)} ${markdownText(title)}${word}`,
    ...blocks.flatMap((block) => blockText(block, title)),
    ...parts.flatMap((part) => sectionText(part, level + 1, colon)),
  ];
}

/** A block; a table that is called like its section has no caption of its own. */
function blockText(block: Block, title: string): string[] {
  switch (block.kind) {
    case "text":
    case "note":
      return [wordsText(block.text)];
    case "list": {
      const mark = (i: number) => (block.isOrdered ? `${i + 1}.` : "-");
      return [block.items.map((item, i) => `${mark(i)} ${wordsText(item)}`).join("\n")];
    }
    case "picture":
      return [];
    case "table":
      return [
        ...(block.caption !== title ? [`*${markdownText(block.caption)}*`] : []),
        tableText(block),
      ];
  }
}

function tableText({ head, rows }: Table): string {
  const row = (cells: readonly Words[]) =>
    `| ${cells.map((cell) => wordsText(cell)).join(" | ")} |`;
  return [row(head), `|${" --- |".repeat(head.length)}`, ...rows.map(row)].join("\n");
}

function wordsText(words: Words): string {
  if (typeof words === "string") return markdownText(words);
  return words.map(runText).join("");
}

/** Words of a verdict stand out; links are left to the numbers. */
function runText({ text, tone }: Run): string {
  if (tone) return `**${markdownText(text)}**`;
  return text.trim() ? markdownText(text) : text;
}
