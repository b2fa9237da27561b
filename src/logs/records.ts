// Where do the rows of the text begin and end, and what stands in their cells? Text by chunks to records.
// Follows RFC 4180 for quoted cells, read by d3-dsv; a byte-order mark and any line ending are taken.
// Does not cover character sets: the text has to be decoded already.
import { dsvFormat } from "d3-dsv";

// The build bundles d3-dsv; the notice stays in the built file and in that of an app.
/*!
 * Contains parts of d3-dsv, Copyright 2013-2026 Mike Bostock.
 *
 * Permission to use, copy, modify, and/or distribute this software for any purpose
 * with or without fee is hereby granted, provided that the above copyright notice
 * and this permission notice appear in all copies.
 *
 * THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH
 * REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF MERCHANTABILITY AND
 * FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT,
 * INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS
 * OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER
 * TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF
 * THIS SOFTWARE.
 */

/** A row of the text: its cells without the space around them, or why it has none. */
export interface TextRecord {
  /** The line on which it begins, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  readonly wrong?: "logs.open-quote" | "logs.long-line" | undefined;
}

/** Takes a text by chunks and gives its records. */
export interface RecordReader {
  add(chunk: string): TextRecord[];
  end(): TextRecord[];
}

/** Longest line, in UTF-16 code units: a text without line breaks does not fill the memory. */
const longestLine = 10_000;
/** Most lines over which a quoted cell may go. */
const mostLines = 20;

/** Reads records whose cells stand between separators. */
export function recordReader(separator: string): RecordReader {
  const { parseRows } = dsvFormat(separator);
  let rest = ""; // of the line that is not complete yet
  let searched = 0; // how much of it holds no line ending
  let isLong = false;
  let started = false;
  let line = 0;
  let open: { readonly line: number; readonly texts: string[] } | undefined;
  const records: TextRecord[] = [];

  const take = (text: string, at: number): void => {
    const whole = open ? `${open.texts.join("\n")}\n${text}` : text;
    const from = open?.line ?? at;
    if (!whole.includes('"') || !endsInQuotes(whole, separator)) {
      open = undefined;
      const cells = parseRows(whole)[0] ?? [""];
      records.push({ line: from, cells: cells.map((cell) => cell.trim()) });
      return;
    }
    const texts = [...(open?.texts ?? []), text];
    open = { line: from, texts };
    if (texts.length >= mostLines || whole.length > longestLine) refuseOpen();
  };
  /** Refuses the line with the quote that nothing closes, and reads the lines behind it by themselves. */
  const refuseOpen = (): void => {
    if (!open) return;
    const { line: first, texts } = open;
    open = undefined;
    records.push({ line: first, cells: [], wrong: "logs.open-quote" });
    texts.slice(1).forEach((text, i) => {
      take(text, first + 1 + i);
    });
  };
  const endOfLine = (text: string): void => {
    line += 1;
    if (isLong || text.length > longestLine) {
      refuseOpen();
      records.push({ line, cells: [], wrong: "logs.long-line" });
    } else take(text, line);
    isLong = false;
  };

  return {
    add(chunk) {
      let text = rest + chunk;
      if (!started && text !== "") {
        started = true;
        if (text.startsWith("\ufeff")) text = text.slice(1);
      }
      const ending = /\r\n?|\n/g;
      ending.lastIndex = searched;
      let from = 0;
      for (let found = ending.exec(text); found; found = ending.exec(text)) {
        if (found[0] === "\r" && ending.lastIndex === text.length) break; // its \n may come yet
        endOfLine(text.slice(from, found.index));
        from = ending.lastIndex;
      }
      rest = text.slice(from);
      searched = Math.max(0, rest.length - 1);
      if (rest.length - Number(rest.endsWith("\r")) > longestLine) {
        isLong = true;
        rest = rest.endsWith("\r") ? "\r" : "";
        searched = 0;
      }
      return records.splice(0);
    },
    end() {
      if (rest !== "" || isLong) endOfLine(rest.replace("\r", "")); // one at most, as the last
      rest = "";
      while (open) refuseOpen();
      return records.splice(0);
    },
  };
}

/** Whether a quoted cell is still open at the end of the text. */
function endsInQuotes(text: string, separator: string): boolean {
  for (let at = 0; at >= 0; ) {
    if (text[at] === '"') {
      let close = text.indexOf('"', at + 1);
      while (close >= 0 && text[close + 1] === '"') close = text.indexOf('"', close + 2);
      if (close < 0) return true;
      at = close + 1;
    }
    const next = text.indexOf(separator, at);
    at = next < 0 ? -1 : next + 1;
  }
  return false;
}
