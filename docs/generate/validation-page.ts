// How does a reader see what the library was checked against? The results of a module as pages.
// Every row with its source, its standing and both figures, the worst first.
// Does not cover the computing: evaluate-checks.ts.
import { allowed, type ModuleResults, type Result } from "./evaluate-checks.ts";
import { figure, sameDigits } from "./figures.ts";
import { count, type Page, page, plain, table, wholeWidth } from "./page.ts";

/** More rows than a phone takes at once: a page of each jurisdiction then. */
const MOST_ROWS = 400;

/** The page of one module, or one of each jurisdiction and the page that leads to them. */
export function validationPages({ module, results }: ModuleResults): Page[] {
  const path = `validation/${module}.md`;
  if (results.length <= MOST_ROWS) return [rowsPage({ path, title: module, results, up: "../" })];
  const jurisdictions = [...new Set(results.map(({ check }) => check.jurisdiction ?? "anywhere"))];
  const parts = jurisdictions.map((jurisdiction) => ({
    jurisdiction,
    path: `validation/${module}/${jurisdiction.toLowerCase().replaceAll(" ", "-")}.md`,
    title: `${module}, ${jurisdiction}`,
    results: results.filter(({ check }) => (check.jurisdiction ?? "anywhere") === jurisdiction),
    up: "../../",
  }));
  const below = (file: string) => file.replace("validation/", "");
  const children = Object.fromEntries(parts.map((one) => [one.title, below(one.path)]));
  const index = page(
    path,
    module,
    [
      `# Checks of ${module}`,
      `${verdictOn(results)} ${standings(results)}`,
      table(
        ["jurisdiction", "rows", "fail"],
        parts.map((one) => [
          `[${plain(one.jurisdiction)}](${below(one.path)})`,
          `${one.results.length}`,
          `${one.results.filter(({ ok }) => !ok).length}`,
        ]),
        ["left", "right", "right"],
      ),
    ],
    { search: "title", children },
  );
  return [index, ...parts.map(rowsPage)];
}

const verdictOn = (results: readonly Result[]) => {
  const failed = results.filter(({ ok }) => !ok).length;
  return failed === 0
    ? `All ${count(results.length, "row")} keep their tolerance.`
    : `**${count(failed, "row fails", "rows fail")} of ${results.length}.** They come first.`;
};

/** A page of rows; `up` leads to the folder of the generated pages. */
function rowsPage(shown: {
  readonly path: string;
  readonly title: string;
  readonly results: readonly Result[];
  readonly up: string;
}): Page {
  const { path, title, results, up } = shown;
  const head = ["what, with which input", "source, standing", "source says"];
  return page(
    path,
    title,
    [
      `# Checks of ${title}`,
      wholeWidth,
      `${verdictOn(results)} ${standings(results)} [What the columns mean](${up}how-do-we-know.md#what-the-columns-mean).`,
      table([...head, "ours", "off by", "may be off", "share"], results.map(row), [
        "left",
        "left",
        "right",
        "right",
        "right",
        "right",
        "right",
      ]),
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
