// How do we know? What was checked against the outside, in numbers, module by module.
// Counts rows by their standing, as the rows themselves state it.
// Does not cover the rows: validation-page.ts, reference-page.ts and the pressure-temperature pages.
import type { ModuleResults } from "./evaluate-checks.ts";
import { figure } from "./figures.ts";
import { count, type Page, page, plain, table } from "./page.ts";

/** The words for how a figure was come by. */
export const standingNames = [
  "published",
  "secondary",
  "computed",
  "from memory",
  "common practice",
] as const;

/** The page that the pages of the modules hang below. */
export function summaryPage(
  modules: readonly ModuleResults[],
  referenceSummary: string,
  below: Readonly<Record<string, string>>,
): Page {
  const all = modules.flatMap(({ results }) => results);
  const number = (standing: string) =>
    all.filter(({ check }) => check.standing === standing).length;
  const failed = all.filter(({ ok }) => !ok);
  const secondHand = all.filter(({ check }) => check.note?.startsWith("Second-hand")).length;
  const share = Math.round((100 * number("from memory")) / all.length);
  const failures =
    failed.length === 0
      ? "None fails."
      : `**${count(failed.length, "row fails", "rows fail")}: ${failed.map(({ check }) => plain(check.id)).join(", ")}.**`;
  return page(
    "how-do-we-know.md",
    "How do we know",
    [
      "# How do we know",
      `The library is held against ${count(all.length, "figure")} from outside: worked examples, tables and formulas of standards, handbooks, papers and manuals. ${failures} The figures on these pages were computed when this site was built; the same rows run as tests.`,
      `**${number("from memory")} of them (${share} %) are from memory**: the figure is remembered, not read. ${number("published")} were read in a publication, ${secondHand} of these second-hand, in a transcription. ${number("secondary")} rest on one transcription or on a text of the trade about the source. ${number("computed")} were computed from a published formula outside this library. ${number("common practice")} are what the trade does, without a source. The paid text of the standards was not at hand: “published” means an open reproduction, an extract or a manual that prints it ([bibliography](bibliography.md)).`,
      "## Module by module",
      table(
        ["module", "rows", ...standingNames, "fail", "most of a tolerance used"],
        modules.map(({ module, results }) => {
          const worst = results.find(({ ok, share: used }) => ok && Number.isFinite(used));
          return [
            `[${module}](validation/${module}.md)`,
            String(results.length),
            ...standingNames.map((name) =>
              String(results.filter(({ check }) => check.standing === name).length),
            ),
            String(results.filter(({ ok }) => !ok).length),
            worst ? `${figure(100 * worst.share, 2)} %` : "–",
          ];
        }),
        ["left", ...Array.from({ length: 8 }, () => "right" as const)],
      ),
      "A row that uses nearly all of its tolerance is no sign of trouble by itself: the tolerance is mostly half of the last digit that the source prints, and any rounding uses a part of it.",
      "## What the columns mean",
      [
        "- **what, with which input**: what the library computes, and from what, with units in the names.",
        "- **source, standing**: the publication with clause or table; `published`, `secondary`, `computed`, `from memory` or `common practice` as above; and what there is to say about the figure.",
        "- **off by** and **may be off**: in the unit of the row. “Nothing” means that the answer has to be the same word, size or number.",
        "- **share**: off by, over may be off, rounded up. The rows of a page are sorted by it, failures first.",
      ].join("\n"),
      "## Refrigerants against reference values",
      referenceSummary,
      "## What else holds it",
      "Property tests draw random cases for every module; type tests hold what must not compile; two simulators of different physics judge the vacuum and pressure verdicts ([vacuum decay](../methods/vacuum-decay.md#how-well-it-does)). What none of this shows: that a figure in a standard is right for your installation. The nameplate, the manufacturer's instructions and the adopted code come first.",
    ],
    { children: below },
  );
}
