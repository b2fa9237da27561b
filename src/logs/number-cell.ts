// Which number stands in this cell? In the notation of the file, stated beforehand.
// Follows ISO 80000-1:2022, 7.3: one decimal mark.
// Does not cover numbers as people type them, with fractions: read-quantity does.

/** The marks of the file's numbers. */
export interface CellMarks {
  readonly decimal: "." | ",";
  readonly group?: "." | "," | " " | "'" | undefined;
}

/** The number, NaN where the cell holds none; the unit's own symbol may stand behind it. */
export function numberIn(cell: string, { decimal, group }: CellMarks, symbol = ""): number {
  let text = cell.replace(/[−–]/g, "-");
  if (symbol !== "" && text.endsWith(symbol)) text = text.slice(0, -symbol.length).trimEnd();
  if (group !== undefined) {
    const [whole = "", ...more] = text.replace(/[\u00a0\u2009\u202f]/g, " ").split(decimal);
    const parts = whole.split(group);
    const isGrouped = parts.every((part, i) => (i ? /^\d{3}$/ : /^[+-]?\d{1,3}$/).test(part));
    if (parts.length > 1) text = isGrouped ? [parts.join(""), ...more].join(decimal) : "";
  }
  if (decimal === ",") text = text.includes(".") ? "" : text.replace(",", ".");
  return /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d{1,3})?$/i.test(text) ? Number(text) : Number.NaN;
}
