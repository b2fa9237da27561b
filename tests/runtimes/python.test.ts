// The package's JSON in another language of programming: a record is checked, and its verdict worded as here.
import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, inject, it } from "vitest";
import { explain } from "../../src/assessment/index.ts";
import { english } from "../../src/language/en/index.ts";
import { assessInstallationResult } from "../../src/wire/index.ts";

const root = join(import.meta.dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "hvac-install-math-"));
const files = ["record", "verdict"].map((name) => join(folder, `${name}.json`));
execFileSync("npx", ["tsx", join(root, "examples/python/make-files.ts"), folder], { cwd: root });

const words = (record: string, verdict: string) =>
  spawnSync(
    "python3",
    [
      join(root, "examples/python/words.py"),
      join(inject("consumer"), "node_modules/hvac-install-math"),
      "en",
      record,
      verdict,
    ],
    { encoding: "utf8" },
  );

const [record = "", verdict = ""] = files;

it("says what the library says, line by line", () => {
  const { stdout, stderr, status } = words(record, verdict);
  expect(stderr).toBe("");
  expect(status).toBe(0);
  const said = assessInstallationResult.parse(readFileSync(verdict, "utf8"));
  const plain = (text: string) => text.replaceAll(/[\d.,]+(e[-+]?\d+)?/g, "#"); // the digits of a figure are the reader's
  const expected = (["reasons", "actions", "cautions", "assumptions"] as const).flatMap((section) =>
    said[section].map((one) => `${section}: ${explain(one, english)}`),
  );
  const printed = stdout.trim().split("\n");
  expect(printed[0]).toBe("PASS");
  expect(printed.slice(1).map(plain)).toEqual(expected.map(plain));
});

it("refuses a record with a field that is none, by its path", () => {
  const bad = join(folder, "bad.json");
  writeFileSync(bad, readFileSync(record, "utf8").replace('"bends"', '"bendz"'));
  const { stderr, status } = words(bad, verdict);
  expect(status).toBe(1);
  expect(stderr).toContain("$.runs[0].tubing: ");
});
