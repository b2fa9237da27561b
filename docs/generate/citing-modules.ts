// Which modules cite a source? Those whose code or comments name its id, its number, its title or its authors.
// Reads the source text. Does not cover the tests, which name sources of their own.
import { readdirSync, readFileSync } from "node:fs";
import { bibliography, type Source, type SourceId } from "hvac-install-math/sources";

const folder = new URL("../../src/", import.meta.url);

/** The modules by source, in alphabetical order. */
export function citingModules(): Map<SourceId, string[]> {
  const texts = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== "sources")
    .map(({ name }) => ({ name, text: textOf(new URL(`${name}/`, folder)) }));
  const entries = Object.entries<Source>(bibliography) as [SourceId, Source][];
  return new Map(
    entries.map(([id, source]) => {
      const patterns = patternsOf(id, source);
      const citing = texts.filter(({ text }) => patterns.some((pattern) => pattern.test(text)));
      return [id, citing.map(({ name }) => name)];
    }),
  );
}

/** How code or a comment may name a work. */
function patternsOf(id: string, { title, edition, doi }: Source): RegExp[] {
  const author = /\(([A-Z]\w+), [A-Z]\./.exec(title)?.[1];
  const year = /\b(19|20)\d\d\b/.exec(edition)?.[0];
  const number =
    /[A-Z]/.test(edition) && /\d/.test(edition) ? edition.split(/[,(:]/)[0]?.trim() : "";
  const words = [title.split(" (")[0], doi, number].filter((word) => word && word.length > 5);
  return [
    ...words.map((word) => new RegExp(`(?<![\\w-])${escaped(word ?? "")}(?!\\w)`)),
    new RegExp(`(?<![\\w-])${id.replaceAll("-", "[ -]")}(?![\\w-])`, "i"),
    ...(author && year ? [new RegExp(`${author}[^\n]{0,60}${year}`)] : []),
  ];
}

function escaped(text: string): string {
  return text.replaceAll(/[\\^$.*+?()[\]{}|]/g, "\\$&");
}

function textOf(module: URL): string {
  return readdirSync(module, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => readFileSync(new URL(name, module), "utf8"))
    .join("\n");
}
