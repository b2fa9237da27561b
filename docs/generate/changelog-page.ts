// What changed, and which version is this? CHANGELOG.md with the version of package.json.
// Follows Keep a Changelog. Does not cover the tags of a repository.
import { readFileSync } from "node:fs";
import { type Page, page } from "./page.ts";

const root = new URL("../../", import.meta.url);

/** The page of the changelog. */
export function changelogPage(): Page {
  const { version } = JSON.parse(readFileSync(new URL("package.json", root), "utf8")) as {
    version: string;
  };
  const [, ...rest] = readFileSync(new URL("CHANGELOG.md", root), "utf8").split(/^# .*$/m);
  return page("changelog.md", "Changelog", [
    "# Changelog",
    `This site describes version **${version}**.`,
    rest.join("").trim(),
  ]);
}
