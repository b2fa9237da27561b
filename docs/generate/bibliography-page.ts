// Which works stand behind the figures, in which edition, and how were they read?
// The entries of src/sources as a page. Does not cover clauses: those stand beside each rule.
import { bibliography, type Source, type SourceId } from "hvac-install-math/sources";
import { citingModules } from "./citing-modules.ts";
import { count, type Page, page, plain, table, wholeWidth } from "./page.ts";

const readAs: Record<Source["readAs"], string> = {
  reproduction: "in a reproduction",
  memory: "**from memory**",
  none: "no text",
};

/** The page of every source. */
export function bibliographyPage(): Page {
  const modules = citingModules();
  const entries = Object.entries<Source>(bibliography) as [SourceId, Source][];
  const number = (way: Source["readAs"]) =>
    entries.filter(([, source]) => source.readAs === way).length;
  return page("bibliography.md", "Bibliography", [
    "# Bibliography",
    wholeWidth,
    `${count(entries.length, "work")} that the library cites. ${number("reproduction")} were read in a reproduction (another publication, an extract, an open data set), **${number("memory")} are from memory**, and ${count(number("none"), "has", "have")} no text behind it, such as a habit of the trade. The paid text of the standards was not at hand, and local law may adopt another edition: check a figure that matters against the text that applies to you.`,
    "In code, `sourceById` finds an entry by the id that a verdict's `sources` carry.",
    table(
      ["work", "edition, publisher", "how it was read", "named in"],
      entries.map(([id, source]) => [
        `${plain(source.title)}<br><small><code>${id}</code></small>`,
        `${plain(source.edition)}<br>${plain(source.publisher)}${doi(source)}`,
        readAs[source.readAs],
        modules.get(id)?.join(", ") || "–",
      ]),
    ),
  ]);
}

function doi({ doi: id }: Source): string {
  return id ? `<br><a href="https://doi.org/${id}">doi:${plain(id)}</a>` : "";
}
