// What does an import weigh in an app? The section "Sizes" of the README, which a test holds to the build.
// Does not cover what an app shares between imports: each figure stands alone.
import { readFileSync } from "node:fs";
import { type Page, page } from "./page.ts";

/** The page of the sizes. */
export function weightsPage(): Page {
  const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
  const [, sizes] = /^## Sizes$([\s\S]*?)^## /m.exec(readme) ?? [];
  if (!sizes) throw new Error('README.md has no section "Sizes"');
  return page("weights.md", "What an import weighs", [
    "# What an import weighs",
    sizes.replaceAll(/<!--.*?-->/g, "").trim(),
  ]);
}
