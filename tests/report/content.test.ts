// What both forms of the report have to tell, whatever the record.
import { type Assessment, explain, type Figure } from "hvac-install-math/assessment";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { figureText } from "hvac-install-math/display";
import { english } from "hvac-install-math/language/en";
import { isQuantity, m } from "hvac-install-math/quantity";
import { htmlReport, markdownReport } from "hvac-install-math/report";
import { sourceById } from "hvac-install-math/sources";
import { describe, expect, it } from "vitest";
import { assessInstallation, rules } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";
import { bundle } from "../package/bundle.ts";
import { elementsOf } from "./page-shape.ts";
import { failing, half, rich } from "./rich-record.ts";

const options = { language: english, system: "inch-pound", rules } as const;
const show = figureText(options);
/** As a person writes a power of ten. */
const powers = (text: string) =>
  text.replace(/E(−?)(\d)\b/g, (_, sign, power) => ` × 10${sign && "⁻"}${"⁰¹²³⁴⁵⁶⁷⁸⁹"[power]}`);
const told = (record: InstallationRecord) => elementsOf(htmlReport(record, options)).text;

describe("a report", () => {
  it("tells every reason, assumption, caution and problem in the reader's units", () => {
    for (const record of [rich, failing, half]) {
      const text = told(record);
      const { steps, cautions, actions } = assessInstallation(record);
      for (const one of [...cautions, ...actions]) {
        if (Object.keys(one.values).length === 0) expect(text).toContain(explain(one, english));
      }
      for (const { checks, problems } of steps) {
        for (const { assessment } of checks) {
          const { reasons, assumptions }: Assessment<string> = assessment;
          for (const said of [...reasons, ...assumptions]) {
            const isText = (value: unknown) =>
              typeof value === "string" || (typeof value === "object" && !isQuantity(value));
            if (Object.values(said.values).some(isText)) continue;
            const beside = Object.values(said.values) as Figure[];
            const sentence = explain(said, english, (value) => show(value, undefined, beside));
            expect(text).toContain(powers(sentence.replace(/\s+/g, " ")));
          }
        }
        for (const { reason } of problems) {
          expect(text).toContain(explain(reason, english, (value) => show(value)));
        }
      }
    }
  });

  it("cites every source in full, and says what was read from memory", () => {
    const text = told(rich);
    const { sources } = assessInstallation(rich);
    expect(sources.length).toBeGreaterThan(20);
    for (const { source, clause } of sources) {
      const { title, edition, doi } = sourceById(source);
      expect(text).toContain(title);
      expect(text).toContain(edition);
      expect(text).toContain(clause);
      if (doi) expect(text).toContain(`doi:${doi}`);
    }
    expect(text).toContain("from memory; check against the text");
  });

  it("shows what was recorded: texts, figures with limits and instrument, amendments", () => {
    const text = told(rich);
    for (const shown of [
      "36 ft ± 1/2 in (limits)",
      "500.0 psig",
      "test gauge ± 2.5 psi (limits)",
      "11.50 ft·lb ± 0.53 ft·lb (k = 2)",
      "1/4 in",
      "2 lb 7.5 oz",
      "elbow at the riser",
      "X-0002",
      "G-17",
      "photos/plate-outdoor.jpg",
      "none: a swapped picture would not show",
      "2026-05-05 16:10",
      "one bend behind the unit was overlooked",
    ]) {
      expect(text).toContain(shown);
    }
  });

  it("loses no text of the record, and says its closed words in the language", () => {
    const text = told(rich).replace(/\s+/g, " ");
    const { history: _, photos = [], ...rest } = rich;
    const now = { ...rest, photos: photos.map(({ of, ...photo }) => photo) }; // the field is worded
    const lost: string[] = [];
    const messages: Readonly<Record<string, unknown>> = english.messages;
    const walk = (value: unknown, field = ""): void => {
      if (typeof value === "string") {
        const lists = ["report.choice", "commissioning", "charge-limit"];
        const codes = lists.map((list) => `${list}.${field}.${value}`);
        const word = codes.map((code) => messages[code]).find((one) => typeof one === "string");
        const shown = String(word ?? value.replace(/(\d)T(\d\d:)/, "$1 $2"));
        if (!text.includes(shown)) lost.push(`${field}: ${shown}`);
      } else if (Array.isArray(value)) {
        if (value.length <= 11) for (const one of value) walk(one, field);
      } else if (typeof value === "object" && value !== null && !isQuantity(value)) {
        for (const [key, one] of Object.entries(value)) walk(one, key);
      }
    };
    walk(now);
    expect(lost).toEqual([]);
  });

  it("says how many readings of a long log it shows", () => {
    expect(told(rich)).toContain("(11 of 61 shown)");
  });

  it("is the same for the same record, and leaves the record as it is", () => {
    const before = JSON.stringify(rich);
    expect(htmlReport(rich, options)).toBe(htmlReport(rich, options));
    expect(markdownReport(rich, options)).toBe(markdownReport(rich, options));
    expect(JSON.stringify(rich)).toBe(before);
  });

  it("shows a figure that is too large for the reader's unit in its own", () => {
    expect(told({ version: 2, runs: [{ tubing: { length: m(1e300) } }] })).toMatch(
      /1e\+?300 m|1 × 10³⁰⁰/,
    );
  });

  it("shows a waived step as that, with who says so", () => {
    const [{ drain: _, ...rest } = {}] = complete.runs ?? [];
    const waiver = { step: "drain", reason: "heats-only", by: "N. N.", at: "2026-05-04" } as const;
    const record: InstallationRecord = {
      ...complete,
      equipment: { ...complete.equipment, duty: "heating" },
      runs: [rest],
      operation: [{ ...complete.operation?.[0], mode: "heating" }],
      waivers: [waiver],
    };
    const page = htmlReport(record, options);
    expect(page).toMatch(
      /<h3 id="head-drain">10\. Drain <strong class="mark none">NOT APPLICABLE</,
    );
    expect(page).toContain("Waived by N. N., 2026-05-04: the unit never cools.");
  });
});

it("brings neither the parser nor the plots", async () => {
  const { inputs } = await bundle(
    `import * as report from "hvac-install-math/report"; globalThis.used = report;`,
  );
  expect(inputs.filter((name) => /mathjs|field-text|src\/plots|d3-|zod/.test(name))).toEqual([]);
});
