// Does each language agree with its nouns and set its marks? What a reader of Spanish and French stumbles over.
// Genders and spacing: dictionaries and Canadian usage (a no-break space before a colon), from memory.
import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { spanish, spanishOfSpain } from "hvac-install-math/language/es";
import { french, frenchOfFrance } from "hvac-install-math/language/fr";
import { recordPlots, supplyVoltagePlot } from "hvac-install-math/plots";
import { volt } from "hvac-install-math/quantity";
import { markdownReport } from "hvac-install-math/report";
import { assessSupplyVoltage } from "hvac-install-math/supply-voltage";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";

const supply = assessSupplyVoltage({
  nameplate: { rated: [volt(230)], range: { minimum: volt(207), maximum: volt(264) } },
  supply: { voltage: volt(240), phases: 1 },
  readings: [{ voltage: volt(247) }],
  measuredAt: "service",
  voltmeter: { accuracyOfReading: undefined },
} as never);
const texts = (svg: string) => svg.replace(/<[^>]+>/g, " ");

describe("French", () => {
  it("has a no-break space before the colons of report and pictures", () => {
    const report = markdownReport(complete, { language: french, system: "SI" });
    const heads = report.split("\n").filter((line) => line.startsWith("#"));
    const colons = heads.filter((line) => line.includes(":"));
    expect(colons.length).toBeGreaterThan(3);
    for (const line of colons) expect(line).toMatch(/[\u00a0 ]:/);
    expect(report).not.toMatch(/Corrections: |indication: /);
    const plots = recordPlots(complete, assessInstallation(complete), {
      language: french,
      system: "SI",
    });
    for (const { svg } of plots) expect(texts(svg)).not.toMatch(/\p{L}: /u);
  });

  it("calls the vacuum mise sous vide, and the drain évacuation", () => {
    const { messages } = french;
    expect(messages["commissioning.step.evacuation"]).toBe("mise sous vide");
    expect(messages["commissioning.step.drain"]).toBe("évacuation des condensats");
  });
});

it.each([
  [english, "none"],
  [spanish, "no hay"],
  [french, "néant"],
])("no amendment is said in a word of no gender: %#", (language, word) => {
  const report = markdownReport(complete, { language, system: "SI" });
  expect(report).toMatch(
    new RegExp(`(?:Amendments|Correcciones|Corrections)[\\u00a0 ]?: ${word}\\.`),
  );
});

describe("a supply", () => {
  it.each([
    [english, "within Range A of ANSI C84.1"],
    [spanish, "dentro del rango A de ANSI C84.1"],
    [french, "dans la plage A de ANSI C84.1"],
  ])("names the range of its standard: %#", (language, said) => {
    const all = supply.reasons.map((one) => explain(one, language)).join(" ");
    expect(all).toContain(said);
  });

  it.each([english, spanish, french])("of one reading is no range: %#", (language) => {
    const svg = texts(supplyVoltagePlot(supply, { language, system: "SI" }));
    expect(svg).not.toMatch(/247(?:[.,]0)? V (?:to|a|à) 247/);
  });
});

it("Spanish of the Americas says voltaje for a figure, that of Spain tensión", () => {
  for (const [code, message] of Object.entries(spanish.messages)) {
    if (code.startsWith("safety.") || code.startsWith("commissioning.heed")) continue; // ausencia de tensión
    expect(JSON.stringify(message), code).not.toMatch(/(?<!ausencia de )tensión/);
  }
  for (const message of Object.values(spanishOfSpain.messages)) {
    expect(JSON.stringify(message)).not.toMatch(/voltaje|\b(?:un|el|del) tensión/);
  }
});

// Source: French grammar, from memory: these are elided before a vowel, but not the pronoun of an imperative.
it.each([french, frenchOfFrance])("no article stands before a vowel: %#", ({ messages }) => {
  const wrong = /(?<![\p{L}-])(?:le|la|de|du|au|que|ne|se) [aeiouyéèêâôî]\p{L}+/giu;
  const texts = Object.values(messages).map((message) => JSON.stringify(message));
  expect(texts.flatMap((text) => text.match(wrong) ?? [])).toEqual([]);
});
