// Which guide answers which question? The list of docs/guides, in the order of the work.
// Reads the first heading and the question of each guide. Does not cover their text.
import { readdirSync, readFileSync } from "node:fs";
import { type Page, page, table } from "./page.ts";

const folder = new URL("../guides/", import.meta.url);

/** The order of the work on site; guides that are not named come last. */
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

/** The page that the guides hang below. */
export function guidesPage(): Page {
  const place = (name: string) => (order.includes(name) ? order.indexOf(name) : order.length);
  const names = readdirSync(folder)
    .filter((file) => file.endsWith(".md"))
    .map((file) => file.slice(0, -3))
    .sort((a, b) => place(a) - place(b) || a.localeCompare(b));
  return page(
    "guides.md",
    "Guides",
    [
      "# Guides",
      "One per module: the question, how the trade does it, an example that runs as a test, the traps, and where the figures come from.",
      table(
        ["guide", "question"],
        names.map((name) => {
          const { title, question } = headOf(readFileSync(new URL(`${name}.md`, folder), "utf8"));
          return [`[${title}](../guides/${name}.md)`, question];
        }),
      ),
    ],
    { children: Object.fromEntries(names.map((name) => [titleOf(name), `../guides/${name}.md`])) },
  );
}

/** The title before the colon, and the question in one line. */
export function headOf(guide: string): { title: string; question: string } {
  const heading = /^# (.+)$/m.exec(guide)?.[1] ?? "";
  const question = /^\*\*Question\.\*\* ([\s\S]+?)\n\n/m.exec(guide)?.[1] ?? "";
  return { title: heading.split(":")[0] ?? "", question: question.replaceAll(/\s+/g, " ") };
}

/** `pressure-test` as "Pressure test". */
function titleOf(name: string): string {
  return (name.charAt(0).toUpperCase() + name.slice(1)).replaceAll("-", " ");
}
