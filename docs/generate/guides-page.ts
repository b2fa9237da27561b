// Which guide answers which question, and which page has its method? The lists of docs/guides and docs/methods, in the
// order of the work. Reads the first heading and the question of each. Does not cover their text.
import { readdirSync, readFileSync } from "node:fs";
import { type Page, page, table } from "./page.ts";

/** The order of the work on site; pages that are not named come last. */
const order = [
  "planning",
  "line-set",
  "flare-joint",
  "pressure-test",
  "vacuum-decay",
  "refrigerants",
  "charge-limit",
  "circuit-protection",
  "supply-voltage",
  "condensate",
  "operating-check",
  "commissioning",
];

/** The page that the pages of a folder hang below. */
function listPage({
  folder,
  title,
  about,
  column,
}: Record<"folder" | "title" | "about" | "column", string>): Page {
  const place = (name: string) => order.indexOf(name) + (order.includes(name) ? 0 : order.length);
  const there = new URL(`../${folder}/`, import.meta.url);
  const names = readdirSync(there)
    .filter((file) => file.endsWith(".md"))
    .map((file) => file.slice(0, -3))
    .sort((a, b) => place(a) - place(b) || a.localeCompare(b));
  return page(
    `${folder}.md`,
    title,
    [
      `# ${title}`,
      about,
      table(
        ["page", column],
        names.map((name) => {
          const head = headOf(readFileSync(new URL(`${name}.md`, there), "utf8"));
          return [`[${head.title}](../${folder}/${name}.md)`, head.question];
        }),
      ),
    ],
    {
      children: Object.fromEntries(names.map((name) => [titleOf(name), `../${folder}/${name}.md`])),
    },
  );
}

/** The page that the guides hang below. */
export function guidesPage(): Page {
  return listPage({
    folder: "guides",
    title: "Guides",
    about:
      "One per module: the question, how the trade does it, an example that runs as a test, the traps, and where the figures come from. Equations and statistics stand apart, under [Methods](methods.md).",
    column: "question",
  });
}

/** The page that the methods hang below. */
export function methodsPage(): Page {
  return listPage({
    folder: "methods",
    title: "Methods",
    about:
      "What stands behind the [guides](guides.md): equations, rules of decision, statistics, how well a check does, and the details of its sources.",
    column: "what it holds",
  });
}

/** The title before the colon, and the question, or what a method page holds, in one line. */
export function headOf(text: string): { title: string; question: string } {
  const heading = /^# (.+)$/m.exec(text)?.[1] ?? "";
  const question = /^\*\*(?:Question|Holds)\.\*\* ([\s\S]+?)\n\n/m.exec(text)?.[1] ?? "";
  return { title: heading.split(":")[0] ?? "", question: question.replaceAll(/\s+/g, " ") };
}

/** `pressure-test` as "Pressure test". */
function titleOf(name: string): string {
  return (name.charAt(0).toUpperCase() + name.slice(1)).replaceAll("-", " ");
}
