// How are cells and numbers of this text kept apart? Separator, remark, header and decimal mark, with their reasons.
// Common practice of loggers and spreadsheets, no source.
// Does not cover what the columns mean: guess-columns.ts looks at those.
import { recordReader, type TextRecord } from "./records.ts";
import { filled, isNothing, sameCells } from "./row-taker.ts";
import { type LogsStatement, type SeparatorWord, say } from "./statements.ts";

/** What was found, why, and what is not sure. */
export interface Findings {
  readonly reasons: LogsStatement[];
  readonly doubts: LogsStatement[];
}

const separators: Readonly<Record<string, SeparatorWord>> = {
  "\t": "tab",
  ";": "semicolon",
  ",": "comma",
  "|": "bar",
};

/** The records of the beginning of a text, by its likeliest separator. */
export interface Layout {
  readonly separator: string;
  readonly remark?: string | undefined;
  /** The line of the titles. */
  readonly header?: number | undefined;
  /** The titles as they stand. */
  readonly titles: readonly string[];
  /** The same with the units that a line of their own gives them. */
  readonly unitTitles: readonly string[];
  /** The rows below the header. */
  readonly rows: readonly TextRecord[];
}

/** Whether a cell holds figures: a number, a date, a time. */
export const isFigures = (cell: string): boolean =>
  /^[+\-−]?[\d.,]/.test(cell) && !/\p{L}{4}/u.test(cell);

/** Finds the separator by which most lines have equally many cells, and the header above the first figures. */
export function layoutOf(text: string, { reasons, doubts }: Findings): Layout {
  const first = /[^\s\ufeff]/.exec(text)?.[0] ?? "";
  const remark = /[#%!]/.test(first) ? first : undefined;
  const found = Object.keys(separators).filter((separator) => text.includes(separator));
  const candidates = found.map((separator) => {
    const reader = recordReader(separator);
    const records = [...reader.add(text), ...reader.end()].filter(
      ({ cells }) => !isNothing(cells, remark),
    );
    const counts = new Map<number, number>();
    for (const { cells } of records) {
      const count = filled(cells);
      counts.set(count, (counts.get(count) ?? 0) + 1);
    }
    counts.delete(1);
    const [width = 1, lines = 0] = [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? [];
    return { separator, records, width, lines };
  });
  const [best] = candidates.sort((a, b) => b.lines - a.lines);
  const { separator = ",", records = [], width = 1 } = best ?? {};
  const word = separators[separator] as SeparatorWord;
  if (width > 1) {
    reasons.push(say("logs.separator", { separator: `logs.separator.${word}`, columns: width }));
  } else doubts.push(say("logs.no-separator"));

  const wide = records.filter(({ cells }) => cells.length >= width);
  const firstRow = wide.findIndex(({ cells }) => {
    const there = cells.filter((cell) => cell !== "");
    return 2 * there.filter(isFigures).length >= there.length; // words of a state beside the figures
  });
  // A line of units may stand between the titles and the first row.
  const above = wide
    .slice(0, Math.max(0, firstRow))
    .filter(({ cells }) => cells.every((c) => !/^\d/.test(c)));
  const units =
    above.length > 1 && isUnitsLine(above.at(-1) as TextRecord) ? above.pop() : undefined;
  const title = above.at(-1);
  if (title) reasons.push(say("logs.header", { line: title.line }));
  else doubts.push(say("logs.no-header"));
  const titles = title?.cells ?? [];
  return {
    separator,
    remark,
    header: title?.line,
    titles,
    unitTitles: titles.map((cell, i) => (units ? `${cell} [${units.cells[i]}]` : cell)),
    rows: firstRow < 0 ? [] : wide.slice(firstRow).filter(({ cells }) => !sameCells(cells, titles)),
  };
}

/** Whether a line under the titles holds units: short cells, some of them in brackets or blank. */
function isUnitsLine({ cells }: TextRecord): boolean {
  return cells.every((cell) => cell.length <= 8);
}

/** Finds the decimal mark in the cells of the rows. */
export function decimalOf(layout: Layout, { reasons, doubts }: Findings): "." | "," {
  const cells = layout.rows.flatMap((row) => row.cells);
  const numbers = cells.filter((cell) => /^[+\-−]?\d+[.,]\d+$/.test(cell));
  const sure = numbers.find((cell) => !/[.,]\d{3}$/.test(cell) || /^[+\-−]?0[.,]/.test(cell));
  const seen = sure ?? numbers[0];
  const mark = seen?.includes(",") ? "," : ".";
  if (sure)
    reasons.push(say("logs.decimal-mark", { mark: { verbatim: mark }, cell: { verbatim: sure } }));
  else if (seen) doubts.push(say("logs.thousands-or-decimal", { cell: { verbatim: seen } }));
  // Between commas a decimal comma would make a cell of its own.
  else if (layout.separator !== ",") doubts.push(say("logs.decimal-unsure"));
  return mark;
}
