import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, it } from "vitest";
import { apiReports } from "./api-report.ts";

const root = join(import.meta.dirname, "../..");
const modules = readdirSync(join(root, "src"), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .filter((name) => name !== "language" && name !== "shapes"); // words alone, and what is inside
const reports = apiReports(root, modules, join(inject("consumer"), "api"));

it.each([...reports.keys()])("promises the types of %s as committed", async (module) => {
  await expect(
    reports.get(module),
    `the public types of ${module} changed: "npm run api" accepts it, the diff is to be reviewed, CHANGELOG.md names it`,
  ).toMatchFileSnapshot(`api/${module}.api.md`);
});

it("keeps no report of a module that is gone", () => {
  const files = readdirSync(join(import.meta.dirname, "api"));
  expect(files.filter((name) => !reports.has(name.replace(".api.md", "")))).toEqual([]);
});
