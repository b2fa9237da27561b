import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { CheckFile } from "./check.ts";
import { isWorked, jurisdictions } from "./jurisdictions.ts";

const read = (module: string): CheckFile =>
  JSON.parse(readFileSync(`${import.meta.dirname}/${module}.json`, "utf8"));
const rules = ["circuit-protection", "charge-limit", "supply-voltage"].map(read);

test("every jurisdiction has twelve worked examples at least", () => {
  const all = rules.flatMap(({ checks }) => checks);
  const worked = jurisdictions.map(
    (one) => all.filter((check) => check.jurisdiction === one && isWorked(check)).length,
  );
  for (const [i, one] of jurisdictions.entries()) {
    expect(worked[i], one).toBeGreaterThanOrEqual(12);
  }
});

test("every circuit row says of which jurisdiction it is", () => {
  for (const check of rules[0]?.checks ?? []) {
    expect(jurisdictions, check.id).toContain(check.jurisdiction);
  }
});

test("no row rests on a page that is not named for its text: an address is no source", () => {
  for (const check of rules.flatMap(({ checks }) => checks)) {
    expect(check.source, check.id).not.toMatch(/\w\.(com|org|net)\b|\b(quiz|forum|calculator)/i);
  }
});
