// Every figure of a verdict has a name in the report's language; the compiler asks for each of them.
import { gzipSync } from "node:zlib";
import { english, figures } from "hvac-install-math/language/en";
import { markdownReport } from "hvac-install-math/report";
import { describe, expect, it } from "vitest";
import { rules } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";
import { threeHeads } from "../commissioning/three-heads.ts";
import { failing, half, rich } from "./rich-record.ts";

const told = [complete, threeHeads, rich, failing, half].map((record) =>
  markdownReport(record, { language: english, system: "inch-pound", rules }),
);

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

  it("take at most 3 kB of words", () => {
    expect(gzipSync(JSON.stringify(figures.messages)).length).toBeLessThanOrEqual(3000);
  });
});
