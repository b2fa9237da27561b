// What does a generated page consist of? A path below docs/generated and Markdown text with its title.
// Markdown as TypeDoc reads it: CommonMark with tables, HTML and front matter.
// Does not cover HTML: TypeDoc renders the pages.

/** One page that the generator writes. */
export interface Page {
  /** Below `docs/generated`. */
  readonly path: string;
  /** Markdown with front matter. */
  readonly text: string;
}

/** What a page can be told beside its text. */
export interface PageOptions {
  /** The pages below it: name in the navigation, and path. */
  readonly children?: Readonly<Record<string, string>>;
  /** The search finds a page of mere figures by its title alone; docs/light-search.mjs sees to it. */
  readonly search?: "title";
}

/** A page from its parts; the title stands in the navigation. */
export function page(
  path: string,
  title: string,
  body: readonly string[],
  { children = {}, search }: PageOptions = {},
): Page {
  const below = Object.entries(children).map(
    ([name, file]) => `  ${JSON.stringify(name)}: ${JSON.stringify(file)}\n`,
  );
  const found = search ? `search: ${search}\n` : "";
  const front = `---\ntitle: ${JSON.stringify(title)}\n${found}${below.length > 0 ? "children:\n" : ""}${below.join("")}---\n\n`;
  return { path, text: `${front}${body.join("\n\n")}\n` };
}

/** Marks a page that is one wide table: docs/style.css gives it the room of the list of headings. */
export const wholeWidth = '<div class="whole-width"></div>';

/** A cell of a table: text with its alignment. */
export type Align = "left" | "right";

/** A Markdown table. Cells are Markdown already: escape text with `plain`. */
export function table(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  align: readonly Align[] = [],
): string {
  const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  const rule = head.map((_, i) => (align[i] === "right" ? "---:" : ":---"));
  return [line(head), line(rule), ...rows.map(line)].join("\n");
}

/** Text that shows in Markdown as it is. */
export function plain(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(/[\\`*_|[\]{}@~#]/g, (mark) => `&#${mark.codePointAt(0)};`)
    .replaceAll(/\s+/g, " ");
}

/** "1 row", "2 rows". */
export function count(n: number, one: string, many: string = `${one}s`): string {
  return `${n.toLocaleString("en-US").replaceAll(",", " ")} ${n === 1 ? one : many}`;
}
