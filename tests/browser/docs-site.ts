// What does the built site link to? Its pages, their anchors and everything that they refer to.
// Reads docs/site as `npm run docs` wrote it. Does not cover links that a script makes.
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative } from "node:path";

/** The folder of the site. */
export const site: string = join(import.meta.dirname, "..", "..", "docs", "site");

if (!existsSync(join(site, "index.html"))) throw new Error("docs/site is missing: npm run docs");

/** Paths of all pages below the site. */
export const pages: readonly string[] = readdirSync(site, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".html"))
  .sort();

/** The HTML of one page. */
export function htmlOf(page: string): string {
  return readFileSync(join(site, page), "utf8");
}

const anchors = new Map<string, Set<string>>();

function anchorsOf(page: string): Set<string> {
  const known = anchors.get(page);
  if (known) return known;
  const found = new Set([...htmlOf(page).matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id ?? ""));
  anchors.set(page, found);
  return found;
}

/** Every href and src of a page, decoded. */
export function referencesOf(page: string): string[] {
  const html = htmlOf(page).replace(/<base [^>]*>/, ""); // says where links start, is none
  return [...html.matchAll(/\s(?:href|src)="([^"]*)"/g)].map(([, url]) =>
    (url ?? "").replaceAll("&amp;", "&"),
  );
}

/** Why a reference within the site leads nowhere, or nothing. */
export function brokenReference(page: string, url: string): string | undefined {
  const [path = "", anchor = ""] = url.split("#").map(decodeURIComponent);
  const target = path === "" ? page : relative(site, join(site, dirname(page), path));
  const file = join(site, target);
  if (!existsSync(file) || !statSync(file).isFile()) return `${page}: ${url} is not there`;
  if (anchor === "" || !target.endsWith(".html")) return undefined;
  return anchorsOf(target).has(anchor) ? undefined : `${page}: ${url} has no such anchor`;
}
