import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = join(import.meta.dirname, "../..");
const read = (path: string) => readFileSync(join(root, path), "utf8");

test("the package carries the license notice of the library whose coefficients were transcribed", () => {
  const fluids = readdirSync(join(root, "src/property-model/fluids"));
  const transcribed = fluids.filter((file) =>
    read(`src/property-model/fluids/${file}`).includes("transcribed in CoolProp (MIT license)"),
  );
  expect(transcribed).toEqual(fluids);
  // npm packs LICENSE whatever "files" lists: tests/package/published-package.test.ts looks.
  const license = read("LICENSE").replaceAll(/\s+/g, " ");
  const [ours = "", theirs = ""] = license.split("transcribed from CoolProp");
  // The MIT license (opensource.org/license/mit): its copyright and permission notices are to be in every copy.
  for (const part of [ours, theirs]) {
    expect(part).toMatch(/Copyright \([cC]\) \d{4}/);
    expect(part).toContain(
      "The above copyright notice and this permission notice shall be included",
    );
    expect(part).toContain('THE SOFTWARE IS PROVIDED "AS IS"');
  }
  expect(theirs).toContain("2012-2016 Ian H. Bell and other CoolProp developers");
});
