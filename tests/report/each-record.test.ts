// Each part of a record left out in turn: what is missing is listed, and nothing passes without it.
import type { InstallationAssessment, InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { isQuantity } from "hvac-install-math/quantity";
import { htmlReport } from "hvac-install-math/report";
import { expect, it } from "vitest";
import { rules } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";
import { elementsOf } from "./page-shape.ts";
import { failing, half } from "./rich-record.ts";

const options = { language: english, system: "inch-pound", rules } as const;

/** The record with each of its parts left out in turn, at every level. */
function* without(record: object): Generator<object> {
  for (const [key, value] of Object.entries(record)) {
    if (key === "version" || value === undefined) continue;
    const { [key]: _, ...rest } = record as Record<string, unknown>;
    yield rest;
    if (typeof value !== "object" || isQuantity(value)) continue;
    if (Array.isArray(value)) {
      yield { ...record, [key]: [] };
      continue;
    }
    for (const less of without(value)) yield { ...record, [key]: less };
  }
}
// Signatures and entries of the history cannot be without their fields.
const readings = complete.evacuations?.[0]?.readings?.filter((_, i) => i % 6 === 0);
const short = { ...complete, evacuations: [{ ...complete.evacuations?.[0], readings }] };
const all = [...without({ ...short, signatures: [], photos: [] })] as InstallationRecord[];
const halves = all.filter((_, i) => i % 4 === 0);

type FieldCode = Extract<keyof typeof english.messages, `commissioning.field.${string}`>;

it("lists every missing field by its words, and shows no pass where one is missing", () => {
  expect(halves.length).toBeGreaterThan(20);
  const wrong: string[] = [];
  for (const record of [{ version: 2 } as const, half, failing, ...halves]) {
    const judged: InstallationAssessment[] = [];
    const plots = (_: unknown, assessment: InstallationAssessment) => {
      judged.push(assessment);
      return [];
    };
    const page = htmlReport(record, { ...options, plots });
    const { missing = [], steps = [], outcome } = judged[0] ?? {};
    const { text } = elementsOf(page);
    const word = (path: string) =>
      english.messages[`commissioning.field.${path.replace(/\[\d+\]/g, "")}` as FieldCode];
    wrong.push(
      ...missing.filter((path) => !text.toLowerCase().includes(String(word(path)).toLowerCase())),
    );
    if (missing.length > 0 && outcome === "pass") wrong.push("a pass with missing fields");
    for (const { name } of steps.filter((one) => one.outcome !== "pass")) {
      const head = new RegExp(`<h3 id="head-${name}">.*</h3>`).exec(page)?.[0] ?? "PASS";
      if (/PASS|mark pass/.test(head)) wrong.push(head);
    }
  }
  expect(wrong).toEqual([]);
});
