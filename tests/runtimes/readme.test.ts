import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { versions } from "./installed.ts";

const readme = readFileSync(join(import.meta.dirname, "../../README.md"), "utf8");
const [, claims = ""] = /\n## Runs on\n([\s\S]*?)\n## /.exec(readme) ?? [];

it("states in the README the versions that are tried, and no others", () => {
  const stated = claims.match(/\d+\.\d+(\.\d+)*/g) ?? [];
  expect(stated.sort()).toEqual(Object.values(versions).sort());
});
