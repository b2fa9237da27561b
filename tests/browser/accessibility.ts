// axe-core on a page: what it reports as a violation, in one line each.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";

const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** The violations of the page as it stands, with the first places where they are. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(source);
  const results = await page.evaluate<AxeResults>("axe.run(document)");
  return results.violations.map(
    ({ id, impact, nodes }) =>
      `${id} (${impact}): ${nodes
        .slice(0, 3)
        .map(({ html }) => html.slice(0, 120))
        .join(" | ")}`,
  );
}
