import { markdownReport } from "hvac-install-math/report";
import { expect, it } from "vitest";
import { rich } from "./rich-record.ts";

it("says the verdict first", () => {
  const [title, , , , , , heading] = markdownReport(rich, { system: "inch-pound" }).split("\n");
  expect(title).toBe("# Installation report: Invented house, upper floor");
  expect(heading).toBe("## Verdict: **PASS**");
});
