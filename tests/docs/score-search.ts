// Scores the built search on a list of queries: how many have their right page among the first three?
// Reads docs/site as `npm run docs` wrote it. `npx tsx tests/docs/score-search.ts queries.json` prints the misses.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Found, find, indexFrom } from "../../docs/search/find.mjs";

const here = import.meta.dirname;

/** What came of one query. */
export interface Scored {
  readonly query: string;
  readonly right: readonly string[];
  readonly first: readonly string[];
  readonly found: boolean;
}

/** The search as a page has it. */
export function searchOfSite(): (query: string) => Found[] {
  const script = readFileSync(join(here, "../../docs/site/assets/search-index.js"), "utf8");
  const json: string = JSON.parse(script.slice("window.docsIndex=".length));
  const index = indexFrom(json);
  return (query) => find(index, query);
}

/** Each query with what came first, and whether a right page is among the first three. */
export function score(file: string, search: (query: string) => Found[] = searchOfSite()): Scored[] {
  const { queries }: { queries: [string, ...string[]][] } = JSON.parse(
    readFileSync(join(here, file), "utf8"),
  );
  return queries.map(([query, ...right]) => {
    const first = search(query)
      .slice(0, 3)
      .map(({ id }) => id);
    return { query, right, first, found: first.some((id) => right.includes(id)) };
  });
}

if (process.argv[1] === import.meta.filename) {
  const results = score(process.argv[2] ?? "queries.json");
  for (const { query, right, first, found } of results)
    if (!found) console.log(`${query}: ${first.join(", ")} instead of ${right.join(" or ")}`);
  console.log(`${results.filter(({ found }) => found).length} of ${results.length}`);
}
