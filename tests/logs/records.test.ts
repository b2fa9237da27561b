import { dsvFormat } from "d3-dsv";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { recordReader } from "../../src/logs/records.ts";

/** The records of a text that comes in the chunks. */
function recordsOf(chunks: readonly string[], separator = ",") {
  const reader = recordReader(separator);
  return [...chunks.flatMap((chunk) => reader.add(chunk)), ...reader.end()];
}
const cellsOf = (text: string) => recordsOf([text]).map(({ cells }) => cells);

describe("records of a text", () => {
  // RFC 4180, 2.1 to 2.7, and what files have besides it.
  it.each<[string, string, string[][]]>([
    [
      "line ending of either kind",
      "a,b\r\nc,d\ne,f\rg,h",
      [
        ["a", "b"],
        ["c", "d"],
        ["e", "f"],
        ["g", "h"],
      ],
    ],
    [
      "last line without an ending",
      "a,b\nc,d",
      [
        ["a", "b"],
        ["c", "d"],
      ],
    ],
    ["quoted cell with a separator", '"a,b",c', [["a,b", "c"]]],
    ["quoted cell that ends in a separator", '"a,",c', [["a,", "c"]]],
    [
      "quoted cell with a line break",
      '"a\nb",c\nd,e',
      [
        ["a\nb", "c"],
        ["d", "e"],
      ],
    ],
    ["doubled quotation mark before a line break", '"a "",\nb",c', [['a ",\nb', "c"]]],
    ["doubled quotation mark", '"a ""b""",c', [['a "b"', "c"]]],
    [
      "quotation mark within a cell",
      'tube 3/8",c\nd,e',
      [
        ['tube 3/8"', "c"],
        ["d", "e"],
      ],
    ],
    ["byte-order mark", "\ufeffa,b", [["a", "b"]]],
    ["blank line", "a,b\n\nc,d\n", [["a", "b"], [""], ["c", "d"]]],
    ["space around cells", " a , b ", [["a", "b"]]],
    ["nothing", "", []],
  ])("%s", (_, text, cells) => expect(cellsOf(text)).toEqual(cells));

  it("keep the line on which they begin", () => {
    const found = recordsOf(['a,b\n"c\nd\ne",f\n\ng,h\n']);
    expect(found.map(({ line }) => line)).toEqual([1, 2, 5, 6]);
  });

  it("a quotation mark that nothing closes costs its own line, not the rest of the file", () => {
    const rows = Array.from({ length: 50 }, (_, i) => `${i},1`).join("\n");
    const found = recordsOf([`x,y\n"broken,2\n${rows}\n`]);
    expect(found.filter(({ wrong }) => wrong)).toEqual([
      { line: 2, cells: [], wrong: "logs.open-quote" },
    ]);
    expect(found.map(({ line }) => line)).toEqual(Array.from({ length: 52 }, (_, i) => i + 1));
    expect(found.at(-1)).toEqual({ line: 52, cells: ["49", "1"] });
  });

  it("a line without an end costs itself, not the memory", () => {
    const reader = recordReader(",");
    for (let i = 0; i < 1000; i++) expect(reader.add("x".repeat(1000))).toEqual([]);
    expect([...reader.add("\na,b\n"), ...reader.end()]).toEqual([
      { line: 1, cells: [], wrong: "logs.long-line" },
      { line: 2, cells: ["a", "b"] },
    ]);
  });
});

const piece = fc.constantFrom(
  "a",
  "1.5",
  ",",
  ",",
  "\n",
  "\r\n",
  '"',
  '""',
  '"x,y"',
  '"p\nq"',
  " ",
  "é",
);
const text = fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join(""));

it("chunks cut anywhere give what the whole text gives", () => {
  fc.assert(
    fc.property(text, fc.array(fc.nat(80)), (whole, places) => {
      const cuts = [0, ...[...places].sort((a, b) => a - b), whole.length];
      const chunks = cuts.slice(1).map((to, i) => whole.slice(cuts[i], to));
      expect(recordsOf(chunks)).toEqual(recordsOf([whole]));
    }),
    { numRuns: 1000 },
  );
});

it("well-formed text is read as d3-dsv reads it whole", () => {
  const cell = fc.constantFrom("a", "1.5", "", "é", "x,y", 'say ""', "p\nq");
  const { formatRows, parseRows } = dsvFormat(",");
  fc.assert(
    fc.property(
      fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { maxLength: 8 }),
      (rows) => {
        const whole = formatRows(rows);
        expect(cellsOf(whole)).toEqual(parseRows(whole));
      },
    ),
    { numRuns: 500 },
  );
});
