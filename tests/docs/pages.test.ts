// The generated pages say what the checks, the bibliography and the library say.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { bibliography } from "hvac-install-math/sources";
import { describe, expect, it } from "vitest";
import { allPages } from "../../docs/generate/all-pages.ts";
import { decayCases } from "../../docs/generate/decay-curves-page.ts";
import { evaluate, evaluateAll, worstFirst } from "../../docs/generate/evaluate-checks.ts";
import { headOf } from "../../docs/generate/guides-page.ts";
import { summaryPage } from "../../docs/generate/summary-page.ts";
import { validationPages } from "../../docs/generate/validation-page.ts";
import type { Check, CheckFile } from "../published/check.ts";

const root = join(import.meta.dirname, "..", "..");
const pages = await allPages();
const modules = await evaluateAll();
const textOf = (path: string) => pages.find((page) => page.path === path)?.text ?? "";
/** The rows of the first table of a page, as cells. */
const rowsOf = (text: string): string[][] =>
  text
    .split("\n")
    .filter((line) => line.startsWith("| "))
    .slice(2)
    .map((line) => line.slice(2, -2).split(" | "));

describe("the site", () => {
  const json = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const frontOf = (text: string) => /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? "";

  it("has every generated page in its navigation", () => {
    const listed: string[] = json.typedocOptions.projectDocuments
      .filter((path: string) => path.startsWith("docs/generated/"))
      .map((path: string) => path.replace("docs/generated/", ""));
    for (const path of listed) {
      const children = [...frontOf(textOf(path)).matchAll(/^ {2}.*: "(.+\.md)"$/gm)];
      listed.push(...children.map(([, child = ""]) => join(dirname(path), child)));
    }
    for (const { path } of pages) expect(listed, path).toContain(path);
  });

  it("has every page that its guides name", () => {
    const titles = pages.map(({ text }) => /^title: "(.*)"$/m.exec(frontOf(text))?.[1]);
    for (const name of readdirSync(join(root, "docs/guides"))) {
      const text = readFileSync(join(root, "docs/guides", name), "utf8").replace(/\s+/g, " ");
      for (const [, title] of text.matchAll(/\bpage "([^"]+)"/g))
        expect(titles, name).toContain(title);
    }
  });
});

describe("the validation pages", () => {
  it.each(modules.map(({ module }) => module))("%s: one line per check", (module) => {
    const file = join(root, "tests/published", `${module}.json`);
    const { checks }: CheckFile = JSON.parse(readFileSync(file, "utf8"));
    const own = pages.filter(({ path }) => /^validation\/([^/.]+)/.exec(path)?.[1] === module);
    const rows = own.flatMap(({ text }) => rowsOf(text)).filter((row) => row.length > 3);
    expect(rows.length).toBe(checks.length);
    for (const row of rows) expect(row.length).toBe(7);
  });

  it("show the worst first, and every standing beside its figure", () => {
    for (const { results } of modules) {
      const shares = results.map(({ ok, share }) => (ok ? share : Number.POSITIVE_INFINITY));
      expect(shares).toEqual([...shares].sort((a, b) => b - a));
      const rows = validationPages({ module: "any", results }).flatMap(({ text }) => rowsOf(text));
      for (const standing of ["published", "computed", "from memory", "common practice"]) {
        const cells = rows.filter((row) => row[1]?.includes(`**${standing}**`));
        expect(cells.length).toBe(
          results.filter(({ check }) => check.standing === standing).length,
        );
      }
    }
  });

  const check: Check = {
    id: "forced",
    computes: "two",
    input: {},
    expected: 2,
    unit: "psi",
    tolerance: { absolute: 0.1 },
    source: "invented | <b>",
    standing: "from memory",
  };

  it("show a failing row as a failure, before all others, and count it", () => {
    const good = evaluate(check, { two: () => 2.09 });
    const off = evaluate({ ...check, id: "off" }, { two: () => 2.2 });
    const broken = evaluate(
      { ...check, id: "broken" },
      {
        two: () => {
          throw new Error("no such thing");
        },
      },
    );
    const missing = evaluate({ ...check, id: "missing", computes: "three" }, {});
    const results = worstFirst([good, off, broken, missing]);
    expect(results.map(({ ok }) => ok)).toEqual([false, false, false, true]);
    const [{ text = "" } = {}] = validationPages({ module: "any", results });
    expect(text).toContain("**3 rows fail of 4.** They come first.");
    expect(text.split("**FAILS**").length - 1).toBe(3);
    expect(text).toContain("error: no such thing");
    expect(text).toContain("invented &#124; &lt;b>");
    const summary = summaryPage([{ module: "any", results }], "", {}).text;
    expect(summary).toContain("**3 rows fail:");
    expect(summary).toContain("**4 of them (100 %) are from memory**");
  });

  it("treat a wrong word as a failure and a right one as exact", () => {
    const { tolerance: _, ...rest } = check;
    const word = { ...rest, expected: "20 A", unit: "" };
    expect(evaluate(word, { two: () => "25 A" })).toMatchObject({ ok: false, share: Infinity });
    expect(evaluate(word, { two: () => "20 A" })).toMatchObject({ ok: true, share: 0 });
  });
});

it("the summary counts what the modules hold", () => {
  const total = modules.reduce((sum, { results }) => sum + results.length, 0);
  const text = textOf("how-do-we-know.md");
  expect(text).toContain(`held against ${total.toLocaleString("en-US").replace(",", " ")} figures`);
  expect(rowsOf(text).length).toBe(modules.length);
  expect(text).toContain("None fails.");
  expect(text).toContain("724 states of 34 fluids");
});

it("the bibliography lists every source with how it was read", () => {
  const rows = rowsOf(textOf("bibliography.md"));
  expect(rows.length).toBe(Object.keys(bibliography).length);
  const memory = Object.values(bibliography).filter(({ readAs }) => readAs === "memory").length;
  expect(rows.filter((row) => row[2]?.includes("from memory")).length).toBe(memory);
});

describe("a pressure-temperature page", () => {
  it("has the figures that published tables have", () => {
    // R-22 at 40 °F: 68.5 psig, and R-410A at 40 °F about 118 psig, as every field chart prints them.
    expect(textOf("pressure-temperature/R22.md")).toContain("| 40 | 68.6 |");
    expect(textOf("pressure-temperature/R410A.md")).toMatch(/\| 40 \| 11[89]\.\d \| 11[78]\.\d \|/);
  });

  it("stands for every refrigerant, states atmosphere, source and accuracy, and has its plot", () => {
    const found = pages.filter(({ path }) => path.startsWith("pressure-temperature/"));
    expect(found.length).toBe(25);
    for (const { text } of found) {
      expect(text).toContain("101.325 kPa (14.696 psia)");
      expect(text).toContain("**Equation of state**");
      expect(text).toContain("**Against the model**");
      expect(text).toContain("<svg");
      expect(text).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

it("the decay curves get the verdict that the page was written for", () => {
  const text = textOf("decay-curves.md");
  for (const { title, cause } of decayCases) {
    const section = text.split(`## ${title}\n`)[1]?.split("\n## ")[0] ?? "";
    expect(section, title).toMatch(new RegExp(`Verdict:\\*\\* \\w+, ${cause}\\.`));
  }
});

describe("the Ask pages", () => {
  const day: { step: string; questions: { ask: string }[] }[] = JSON.parse(
    readFileSync(join(root, "docs/ask/day.json"), "utf8"),
  );

  it("are one per step of the day, each question once and with an anchor", () => {
    const asks = day.flatMap(({ questions }) => questions.map(({ ask }) => ask));
    expect(new Set(asks).size).toBe(asks.length);
    for (const { step, questions } of day) {
      const text = textOf(`ask/${step}.md`);
      for (const { ask } of questions) expect(text).toContain(`## ${ask}`);
      expect(textOf("ask.md")).toContain(`(ask/${step}.md#`);
    }
  });

  it("and every method page hangs below Methods, with a guide that leads to it", () => {
    for (const file of readdirSync(join(root, "docs/methods"))) {
      expect(textOf("methods.md")).toContain(`../methods/${file}`);
      expect(readFileSync(join(root, "docs/guides", file), "utf8")).toContain(`../methods/${file}`);
    }
  });
});

describe("every module", () => {
  const names = readdirSync(join(root, "src"), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .filter((name) => name !== "language" && name !== "shapes"); // words, and what is inside

  it.each(names)("%s has a guide with a question, an example, cautions and sources", (name) => {
    const file = join(root, "docs/guides", `${name}.md`);
    expect(existsSync(file), `docs/guides/${name}.md`).toBe(true);
    const guide = readFileSync(file, "utf8");
    expect(headOf(guide).question.length).toBeGreaterThan(20);
    expect(guide).toContain("```ts");
    expect(guide).toMatch(/caution/i);
    expect(guide).toMatch(/source/i);
    expect(textOf("guides.md")).toContain(`../guides/${name}.md`);
    expect(guide.split(/\s+/).length, "words of the guide").toBeLessThanOrEqual(900);
  });

  it.each(names)("%s has a main function that its module page opens with", (name) => {
    const main = JSON.parse(readFileSync(join(root, "docs/ask/main-functions.json"), "utf8"));
    expect(main[name]?.length).toBeGreaterThan(0);
  });

  it("is an entry point of the API pages", () => {
    const { typedocOptions } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
    expect([...typedocOptions.entryPoints].sort()).toEqual(
      [...names, "language/en", "language/es", "language/fr", "wire/zod"]
        .map((name) => `src/${name}/index.ts`)
        .sort(),
    );
    expect(typedocOptions.treatWarningsAsErrors).toBe(true);
    expect(typedocOptions.validation.notDocumented).toBe(true);
  });
});

it("the README stands alone on a registry: no relative link, install and a result on its first screen", () => {
  const readme = readFileSync(join(root, "README.md"), "utf8");
  expect(readme.match(/\]\((?!https?:)[^)]*\)/g)).toBeNull();
  const screen = readme.split("\n").slice(0, 26).join("\n");
  expect(screen).toContain("npm install hvac-install-math");
  expect(screen).toContain("test.outcome; // => pass");
});
