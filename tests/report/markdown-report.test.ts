import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { markdownReport } from "hvac-install-math/report";
import { describe, expect, it } from "vitest";
import { rules } from "../commissioning/assess.ts";
import { hostile } from "./hostile.ts";
import { hostileRecord } from "./hostile-record.ts";
import { kindsOf } from "./markdown-shape.ts";
import { failing, half, rich } from "./rich-record.ts";

const options = { language: english, system: "inch-pound", rules } as const;
const report = (record: InstallationRecord) => markdownReport(record, options);

it("says the verdict first", () => {
  const [title, , about, , heading] = report(rich).split("\n");
  expect(title).toBe("# Installation report: Invented house, upper floor");
  expect(about).toMatch(/^Invented street 7, invented town · R\\?-410A · /);
  expect(heading).toBe("## Verdict: **PASS**");
});

it.each<[string, InstallationRecord]>([
  ["rich", rich],
  ["failing", failing],
  ["half", half],
  ["empty", { version: 2 }],
])("has tables in which every row has as many cells as the head: %s", (_, record) => {
  const lines = report(record).split("\n");
  const kinds = kindsOf(report(record));
  const rules = kinds.flatMap((kind, i) => (kind === "rule" ? [i] : []));
  expect(rules.length).toBeGreaterThan(2);
  for (const at of rules) {
    const cells = (lines[at]?.match(/---/g) ?? []).length;
    expect(kinds[at - 2]).toBe("blank");
    expect(kinds[at - 1]).toBe(`row ${cells}`);
    for (let i = at + 1; kinds[i] !== "blank" && i < kinds.length - 1; i++) {
      expect(kinds[i]).toBe(`row ${cells}`);
    }
  }
});

describe("hostile text", () => {
  const honest = kindsOf(report(hostileRecord("honest")));

  it.each(hostile.map((text) => [text.slice(0, 40), text]))("stays text: %j", (_, text) => {
    const markdown = report(hostileRecord(text));
    expect(kindsOf(markdown)).toEqual(honest);
    // Nothing that opens a tag, code, a link, a picture or an address is left bare.
    const bare = markdown.replace(/\\[!-/:-@[-`{-~]/g, "");
    expect(bare).not.toMatch(/[<>`[\]~$]|https?:\/\/|www\./);
    expect(bare.replaceAll("**", "")).not.toMatch(/_|\*[^\n]*\*[^\n]*\*/);
    expect(bare).not.toMatch(/&(?!amp;|lt;|gt;|#124;)/);
    for (const whole of markdown.split("\n")) {
      const line = whole.replace(/^\d+\. /, "- "); // as many as the honest one has, each with its number
      const cell = line.replace(/^(#+|-|\|) /, "");
      if (!line.startsWith("- ")) expect(line).not.toMatch(/^(\+|=|\d+[.)] |---)/);
      expect(cell).not.toMatch(/^([-+] |#{1,6} |\d+[.)] )/);
    }
    expect(markdown).not.toMatch(/[^\n\P{Cc}]|[\u202a-\u202e\u2066-\u2069\u200b]|\p{Cs}/u);
  });
});
