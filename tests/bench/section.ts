// How are the figures shown? A section of docs/speed.md: a heading, what it says, a table.

export interface Section {
  readonly title: string;
  readonly text: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The section as Markdown, the table padded so that it also reads in a terminal. */
export function markdown({ title, text, columns, rows }: Section): string {
  const table = [columns, columns.map(() => ""), ...rows];
  const widths = columns.map((_, i) => Math.max(...table.map((row) => (row[i] ?? "").length), 3));
  const line = (row: readonly string[], blank: string) =>
    `| ${widths.map((width, i) => (i ? (row[i] ?? "").padStart(width, blank) : (row[i] ?? "").padEnd(width, blank))).join(" | ")} |`;
  const rule = `| ${widths.map((width, i) => (i ? `${"-".repeat(width - 1)}:` : "-".repeat(width))).join(" | ")} |`;
  return [
    `## ${title}`,
    "",
    text,
    "",
    line(columns, " "),
    rule,
    ...rows.map((row) => line(row, " ")),
    "",
  ].join("\n");
}
