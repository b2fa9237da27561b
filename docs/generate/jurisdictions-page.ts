// How well is each country covered? The checks of rules by jurisdiction and standing.
// Counts rows by their own words. Does not cover the rules themselves: circuit-rules-page.ts.
import { isWorked, jurisdictions } from "../../tests/published/jurisdictions.ts";
import type { ModuleResults } from "./evaluate-checks.ts";
import { type Page, page, table } from "./page.ts";
import { standingNames } from "./summary-page.ts";

/** The page. */
export function jurisdictionsPage(modules: readonly ModuleResults[]): Page {
  const rows = jurisdictions.flatMap((jurisdiction) =>
    modules.flatMap(({ module, results }) => {
      const own = results.filter(({ check }) => check.jurisdiction === jurisdiction);
      const of = (standing: string) =>
        String(own.filter(({ check }) => check.standing === standing).length);
      const worked = own.filter(({ check }) => isWorked(check)).length;
      return own.length === 0
        ? []
        : [
            [
              jurisdiction,
              `[${module}](validation/${module}.md)`,
              String(own.length),
              String(worked),
              ...standingNames.map(of),
              String(own.filter(({ ok }) => !ok).length),
            ],
          ];
    }),
  );
  return page("checks-by-jurisdiction.md", "Checks by jurisdiction", [
    "# Checks by jurisdiction",
    "Rules of a country are held against texts of that country. A row is one figure from outside; **worked** rows work out a case, the others read a cell of a table. Which rule of which country is confirmed: [circuit rules](circuit-rules.md). IEC stands for IEC and ISO texts as countries adopt them. Rows that belong to no country (physics, manuals) are on the pages of the modules.",
    table(["jurisdiction", "module", "rows", "worked", ...standingNames, "fail"], rows, [
      "left",
      "left",
      ...Array.from({ length: standingNames.length + 3 }, () => "right" as const),
    ]),
  ]);
}
