// How is a report written as one HTML page? Elements that say what they are, one style sheet, nothing else.
// Follows the HTML Living Standard and WCAG 2.2 (1.3.1, 1.4.1, 1.4.10); from memory.
// Does not cover a way to change the record: a report is for reading.
import { visible } from "./plain-text.ts";
import type { Block, ReportDocument, Run, Section, Table, Words } from "./report-document.ts";
import { pageFoot, styleSheet } from "./style-sheet.ts";

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text as HTML may hold it, in an element or in a quoted attribute. */
export function htmlText(text: string): string {
  return visible(text)
    .replace(/ (?=[:;?!»])|(?<=«) /g, "\u00a0") // French marks stay on the line of their word
    .replace(/[&<>"']/g, (mark) => entities[mark] as string);
}

/** The page may load nothing, run nothing and send nothing. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** The report as an HTML page. */
export function writeHtml(
  { title, name, about, colon, sections }: ReportDocument,
  lang: string,
): string {
  const verdict = sections.find(({ mark }) => mark)?.mark?.text;
  const head = [verdict, `${name}. ${title}`].filter(Boolean).join(`${colon} `);
  return `<!doctype html>
<html lang="${htmlText(lang)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${htmlText(head)}</title>
<style>${styleSheet}${pageFoot(visible(name))}</style>
</head>
<body>
<header>
<p class="over">${htmlText(title)}</p>
<h1>${htmlText(name)}</h1>
${about.length ? `<p class="about">${about.map(htmlText).join(" · ")}</p>\n` : ""}</header>
<main>
${sections.map((section) => sectionHtml(section, 2)).join("\n")}
</main>
</body>
</html>
`;
}

function sectionHtml({ id, title, mark, blocks, parts = [] }: Section, level: number): string {
  const word = mark ? ` ${runHtml(mark)}` : "";
  return `<section id="part-${id}"${level > 2 ? ' class="part"' : ""} aria-labelledby="head-${id}">
<h${level} id="head-${id}">${htmlText(title)}${word}</h${level}>
${[...blocks.map(blockHtml), ...parts.map((part) => sectionHtml(part, level + 1))].join("\n")}
</section>`;
}

function blockHtml(block: Block): string {
  switch (block.kind) {
    case "text":
      return `<p>${wordsHtml(block.text)}</p>`;
    case "note":
      return `<p class="note">${wordsHtml(block.text)}</p>`;
    case "list":
      return listHtml(block);
    case "picture":
      return `<figure>${block.svg}<figcaption>${htmlText(block.title)}</figcaption></figure>`;
    case "table":
      return tableHtml(block);
  }
}

function listHtml({ items, ids, isOrdered }: Extract<Block, { kind: "list" }>): string {
  const name = isOrdered ? "ol" : "ul";
  return `<${name}>${items.map((item, i) => listItem(item, ids?.[i])).join("")}</${name}>`;
}

const listItem = (item: Words, id: string | undefined): string =>
  `<li${id === undefined ? "" : ` id="part-${id}"`}>${wordsHtml(item)}</li>`;

/** A table that stays one for screen readers when a narrow screen stacks its cells. */
function tableHtml({ caption, head, rows, ids }: Table): string {
  const names = head.map(htmlText);
  const heads = names.map((name) => `<th scope="col" role="columnheader">${name}</th>`);
  const lines = rows.map((cells, i) => {
    const [first = "", ...others] = cells;
    const id = ids ? ` id="part-${ids[i]}"` : "";
    const rest = others.map(
      (cell, j) => `<td role="cell" data-head="${names[j + 1] ?? ""}">${wordsHtml(cell)}</td>`,
    );
    return `<tr role="row"${id}><th scope="row" role="rowheader">${wordsHtml(first)}</th>${rest.join("")}</tr>`;
  });
  return `<table role="table"${head.length > 3 ? ' class="wide"' : ""}><caption>${htmlText(caption)}</caption>
<thead role="rowgroup"><tr role="row">${heads.join("")}</tr></thead>
<tbody role="rowgroup">${lines.join("\n")}</tbody></table>`;
}

function wordsHtml(words: Words): string {
  return typeof words === "string" ? htmlText(words) : words.map(runHtml).join("");
}

function runHtml({ text, tone, to }: Run): string {
  if (tone) return `<strong class="mark ${tone}">${htmlText(text)}</strong>`;
  if (to) return `<a href="#part-${to}">${htmlText(text)}</a>`;
  return text.trim() ? htmlText(text) : text;
}
