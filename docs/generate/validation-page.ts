// How does a reader see what the library was checked against? The results of one module as a page.
// Every row with its source, its standing and both figures, the worst first.
// Does not cover the computing: evaluate-checks.ts.
import { allowed, type ModuleResults, type Result } from "./evaluate-checks.ts";
import { figure, sameDigits } from "./figures.ts";
import { count, type Page, page, plain, table, wholeWidth } from "./page.ts";

/** The page of one module. */
export function validationPage({ module, results }: ModuleResults): Page {
  const failed = results.filter(({ ok }) => !ok).length;
  const verdict =
    failed === 0
      ? `All ${count(results.length, "row")} keep their tolerance.`
      : `**${count(failed, "row fails", "rows fail")} of ${results.length}.** They come first.`;
  return page(
    `validation/${module}.md`,
    module,
    [
      `# Checks of ${module}`,
      wholeWidth,
      `${verdict} ${standings(results)} [What the columns mean](../how-do-we-know.md#what-the-columns-mean).`,
      table(
        [
          "what, with which input",
          "source, standing",
          "source says",
          "ours",
          "off by",
          "may be off",
          "share",
        ],
        results.map(row),
        ["left", "left", "right", "right", "right", "right", "right"],
      ),
    ],
    { search: "title" },
  );
}

/** How many figures are of which standing, in words. */
export function standings(results: readonly Result[]): string {
  const counts = new Map<string, number>();
  for (const { check } of results) {
    counts.set(check.standing, (counts.get(check.standing) ?? 0) + 1);
  }
  return `Standing: ${[...counts].map(([name, n]) => `${n} ${name}`).join(", ")}.`;
}

function row(result: Result): string[] {
  const { check, ours, deviation, share, ok } = result;
  const may = allowed(check);
  const exact = may === 0;
  const state = ok ? (exact ? "exact" : `${Math.ceil(share * 100)} %`) : "**FAILS**";
  const unit = check.unit === "" ? "" : `&nbsp;${plain(check.unit)}`;
  return [
    `${words(check.computes)}<br><small>${inputs(check.input)}</small>`,
    `${plain(check.source)}<br><small>**${check.standing}**${check.note ? `. ${plain(check.note)}` : ""}</small>`,
    `${plain(figure(check.expected))}${unit}`,
    plain(sameDigits(ours, may)),
    Number.isFinite(deviation) ? figure(deviation, 2) : "differs",
    exact ? "nothing" : figure(may, 3),
    state,
  ];
}

/** `bubblePressure` as "bubble pressure". */
function words(name: string): string {
  return name.replaceAll(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
}

/** The input on one line, without the marks of JSON. */
function inputs(input: Readonly<Record<string, unknown>>): string {
  const text = Object.entries(input).map(
    ([name, value]) =>
      `${name} ${typeof value === "object" ? JSON.stringify(value).replaceAll('"', "").replaceAll(",", ", ") : String(value)}`,
  );
  return plain(text.join("; "));
}
