// What stands in a report, whatever it is written in? Sections of text, lists, tables and pictures.
// Follows the content model of HTML as far as Markdown has it too. Internal.
// Does not cover escaping: texts are plain here, and each writer escapes for its own language.

/** How a word of a verdict looks; the word says the same. */
export type Tone = "pass" | "fail" | "open" | "none";

/** A piece of a line: plain, a word of a verdict, or a link to a place in the report. */
export interface Run {
  readonly text: string;
  readonly tone?: Tone | undefined;
  readonly to?: string | undefined;
}

/** A line of text. */
export type Words = string | readonly Run[];

/** A table; the first cell of each row is its head. */
export interface Table {
  readonly kind: "table";
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly Words[])[];
  /** Where each row can be linked to. */
  readonly ids?: readonly string[] | undefined;
}

/** What a section is made of. */
export type Block =
  | Table
  | { readonly kind: "text" | "note"; readonly text: Words }
  | {
      readonly kind: "list";
      readonly items: readonly Words[];
      /** Whether the order of the items counts. */
      readonly isOrdered?: boolean;
      /** Where each item can be linked to. */
      readonly ids?: readonly string[];
    }
  | { readonly kind: "picture"; readonly title: string; readonly svg: string };

/** A section with its parts. */
export interface Section {
  readonly id: string;
  readonly title: string;
  readonly mark?: Run | undefined;
  readonly blocks: readonly Block[];
  readonly parts?: readonly Section[] | undefined;
}

/** A whole report. */
export interface ReportDocument {
  readonly title: string;
  /** Name of the record, for the foot of the pages. */
  readonly name: string;
  /** What it is about, in a line: site, refrigerant, unit. */
  readonly about: readonly string[];
  /** What stands between a heading and the word behind it, as the language sets it. */
  readonly colon: string;
  readonly sections: readonly Section[];
}

/** A table, or nothing where it has no rows. */
export function table(
  caption: string,
  head: readonly string[],
  rows: Table["rows"],
  ids?: readonly string[],
): Block[] {
  return rows.length ? [{ kind: "table", caption, head, rows, ...(ids && { ids }) }] : [];
}

/** A list, or nothing where it has no items. */
export function list(items: readonly Words[], ids?: readonly string[]): Block[] {
  return items.length ? [{ kind: "list", items, ...(ids && { ids }) }] : [];
}

/** A list of what is done one after the other. */
export function steps(items: readonly Words[]): Block[] {
  return items.length ? [{ kind: "list", items, isOrdered: true }] : [];
}

/** A paragraph. */
export function text(words: Words): Block {
  return { kind: "text", text: words };
}
