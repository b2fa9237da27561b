import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type CheckFile, compare, type Evaluators } from "./check.ts";

// MODULE=line-set holds the run to one module's rows, as the mutation tests want it.
const files = readdirSync(import.meta.dirname).filter((name) =>
  name.endsWith(process.env.MODULE ? `${process.env.MODULE}.json` : ".json"),
);
const standings = ["published", "secondary", "computed", "from memory", "common practice"];

for (const file of files) {
  const { module, checks }: CheckFile = JSON.parse(
    readFileSync(`${import.meta.dirname}/${file}`, "utf8"),
  );

  describe(`${module} agrees with its published sources`, async () => {
    const { evaluators }: { evaluators: Evaluators } = await import(`./${module}.evaluate.ts`);

    it.each(checks)("$id: $computes, $source", (check) => {
      const evaluate = evaluators[check.computes];
      expect(evaluate, `${module}.evaluate.ts has no ${check.computes}`).toBeDefined();
      const ours = evaluate?.(check.input) as number | string | boolean;
      const { deviation, ok } = compare(check, ours);
      expect(ok, `ours ${ours}, source ${check.expected} ${check.unit}, off by ${deviation}`).toBe(
        true,
      );
    });

    it("names a source and a standing for every row, once per id, and why a row stays from memory", () => {
      expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
      for (const { id, source, standing, note = "" } of checks) {
        expect(source.length).toBeGreaterThan(3);
        expect(standings).toContain(standing);
        if (standing === "from memory") expect(note, `${id}: why it stays`).not.toBe("");
      }
    });
  });
}
