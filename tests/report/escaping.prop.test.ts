// Whatever a text holds, the reports hold the same elements, lines and cells as with an honest one.

import fc from "fast-check";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { htmlReport, markdownReport } from "hvac-install-math/report";
import { describe, expect, it } from "vitest";
import { rules } from "../commissioning/assess.ts";
import { hostile } from "./hostile.ts";
import { kindsOf } from "./markdown-shape.ts";
import { elementsOf } from "./page-shape.ts";

/** A small record with a text in each kind of place: heading, facts, tables, lists, sentences, foot. */
const holding = (text: string): InstallationRecord => ({
  version: 2,
  name: text,
  site: { name: text },
  equipment: { refrigerant: text, outdoorUnit: { model: text, serialNumber: text } },
  instruments: { tape: { name: text, serialNumber: text } },
  runs: [{ name: text, joints: [{ kind: "flare", name: text }] }],
  photos: [{ reference: text, of: text, caption: text, digest: text }],
  signatures: [{ name: text, role: text, at: "2026-05-05" }],
  history: [{ path: "site.name", previous: text, by: text, at: "2026-05-09", reason: text }],
  waivers: [{ step: "drain", note: text, by: text, at: "2026-05-04" }],
});

/** Marks of HTML, Markdown, CSS and of lines, and any character at all. */
const piece = fc.oneof(
  fc.constantFrom(
    ...[
      "<",
      ">",
      "&",
      '"',
      "'",
      "`",
      "|",
      "\\",
      "*",
      "_",
      "#",
      "-",
      "+",
      "=",
      "~",
      "$",
      "!",
      "[",
      "]",
    ],
    ...[
      "(",
      ")",
      "{",
      "}",
      ":",
      "/",
      "@",
      ".",
      "1.",
      "1)",
      " ",
      "\n",
      "\r\n",
      "\t",
      "\u0000",
      "\u2028",
    ],
    ...[
      "\u202e",
      "\u200b",
      "\ufeff",
      "\ud800",
      "&#x3c;",
      "&lt;",
      "<!--",
      "-->",
      "<b>",
      "</td>",
      "<script>",
    ],
    ...[
      "</style>",
      "</title>",
      "url(",
      "http://",
      "www.",
      "{inStep}",
      "$&",
      "$1",
      "---",
      "```",
      "![",
      "](",
    ],
  ),
  fc.string({ unit: "binary", maxLength: 3 }),
  fc.constantFrom(...hostile.map((text) => text.slice(0, 60))),
);
/** Begins and ends with a letter, so that no name counts as none. */
const text = fc.array(piece, { minLength: 1, maxLength: 12 }).map((all) => all.join(""));
const anywhere = fc.oneof(
  text,
  text.map((it) => `a${it}`),
);
const isNamed = (it: string) => /[\p{L}\p{N}]/u.test(it); // no name, and nobody declares or signs by it

const options = {
  rules,
  language: english,
  system: "inch-pound",
  printedAt: "2026-05-09",
} as const;
const runs = { numRuns: 150 };

describe("any text stays text (property)", () => {
  it("on the page", () => {
    const honest = elementsOf(htmlReport(holding("honest"), options));
    const shape = honest.elements.map(({ name }) => name);
    const keys = honest.elements.map(({ attributes }) => [...attributes.keys()].join());
    fc.assert(
      fc.property(anywhere.filter(isNamed), (hostileText) => {
        const page = htmlReport(holding(hostileText), options);
        const { elements } = elementsOf(page);
        expect(elements.map(({ name }) => name)).toEqual(shape);
        expect(elements.map(({ attributes }) => [...attributes.keys()].join())).toEqual(keys);
        expect(page).not.toMatch(/[^\n\P{Cc}]|[\u202a-\u202e\u2066-\u2069\u200b\ufeff]|\p{Cs}/u);
        const foot = /@bottom-left\{content:"((?:[\w ]|\\[\da-f]+ )*)";/.exec(page);
        expect(foot).not.toBeNull();
      }),
      runs,
    );
  });

  it("in Markdown", () => {
    const honest = kindsOf(markdownReport(holding("honest"), options));
    fc.assert(
      fc.property(anywhere.filter(isNamed), (hostileText) => {
        const markdown = markdownReport(holding(hostileText), options);
        expect(kindsOf(markdown)).toEqual(honest);
        const bare = markdown.replace(/\\[!-/:-@[-`{-~]/g, "e").replace(/^#+ |\*\*/gm, "");
        expect(bare).not.toMatch(/[<>`[\]~$_]|https?:\/\/|www\./);
        expect(bare).not.toMatch(/&(?!amp;|lt;|gt;|#124;)/);
      }),
      runs,
    );
  });
});
