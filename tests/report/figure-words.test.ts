// Every figure of a verdict has a name in the report's language; the compiler asks for each of them.
import { gzipSync } from "node:zlib";
import { choices, english, figures } from "hvac-install-math/language/en";
import { markdownReport } from "hvac-install-math/report";
import { describe, expect, it } from "vitest";
import { rules } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";
import { threeHeads } from "../commissioning/three-heads.ts";
import { failing, half, rich } from "./rich-record.ts";

const told = [complete, threeHeads, rich, failing, half].map((record) =>
  markdownReport(record, { language: english, system: "inch-pound", rules }),
);

/** Words that read the same in a record and in English. */
const wordsInUse = new Set<string>(Object.values(choices.messages).map(String));

describe("the figures of a report", () => {
  it("are named by the language, never by a path of the verdict", () => {
    for (const text of told) {
      const rows = text.split("\n").filter((line) => line.startsWith("|"));
      expect(
        rows.filter((row) => /report\.|\b(?!kVA|kPa|mAh)[a-z]+[A-Z][a-z]+\b/.test(row)),
      ).toEqual([]);
    }
  });

  it("name the parts of an uncertainty, the sides and the outcomes by the words of their modules", () => {
    const [text = ""] = told;
    expect(text).toMatch(
      /Parts of the uncertainty \| (?=.*gas temperature )(?=.*drift of the gauge )/,
    );
    expect(text).toMatch(/Results \| nameplate PASS; supply PASS/);
    expect(text).toMatch(/Range of the rise from a leak \| \S+ microns\/min to \S+ microns\/min/);
  });

  it("say the words that a field picks, never as they stand in the record", () => {
    const [text = "", , ofRich = ""] = told;
    const cells = told.join("\n").match(/(?<=[|;,] )[a-z]+(?:-[a-z0-9]+)+(?= [|;,])/g) ?? [];
    const picked = Object.keys(choices.messages).map((code) => code.split(".").slice(3).join("."));
    expect(cells.filter((cell) => picked.includes(cell) && !wordsInUse.has(cell))).toEqual([]);
    expect(text).toContain("electronic expansion valve");
    expect(ofRich).toContain("NEC 2023 (NFPA 70)");
  });

  it.each([
    ["figures", figures],
    ["choices", choices],
  ])("take at most 3 kB of words for %s", (_, { messages }) => {
    expect(gzipSync(JSON.stringify(messages)).length).toBeLessThanOrEqual(3000);
  });
});
