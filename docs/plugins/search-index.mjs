// A TypeDoc plugin: the index of the search and the script that reads it, in place of TypeDoc's own. Both are files that
// a page fetches when somebody searches. The words of the trade for a page stand in docs/search/words.json.
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import MiniSearch from "minisearch";
import { ReflectionKind } from "typedoc";
import { options } from "../search/find.mjs";
import { descriptionOf } from "./page-shell.mjs";

const read = (path) => JSON.parse(readFileSync(new URL(path, import.meta.url), "utf8"));
const tradeWords = read("../search/words.json");
const mainFunctions = read("../ask/main-functions.json");
const day = read("../ask/day.json");

/** Pages of mere figures are found by their title, so that the index stays small enough for a phone. */
const onlyTitle = (model) =>
  model.frontmatter?.search === "title" ||
  /^(Changelog|How do we know|Bibliography|Every sentence|Sentences of )/.test(model.name);

function kindOf(model) {
  if (model.isDocument?.()) {
    const above = model.parent?.name;
    if (above === "Guides") return "guide";
    if (above === "Methods") return "method";
    if (above === "Ask" || model.name === "Ask") return "ask";
    return above === "How do we know" || onlyTitle(model) ? "record" : "page";
  }
  if (mainFunctions[model.parent?.name]?.includes(model.name)) return "main";
  const { kind } = model;
  if (kind === ReflectionKind.Module) return "module";
  if (kind === ReflectionKind.Function) return "function";
  return kind === ReflectionKind.Variable ? "variable" : "type";
}

/** The name by which docs/search/words.json and the tests know a page. */
export function idOf(model) {
  if (!model.isDocument?.())
    return model.parent?.isProject?.()
      ? `module ${model.name}`
      : `${model.parent.name}.${model.name}`;
  const above = model.parent?.name;
  const slug = model.name.toLowerCase().replaceAll(" ", "-");
  if (above === "Guides") return `guide ${slug}`;
  if (above === "Methods") return `method ${slug}`;
  return above === "Ask" ? `ask ${model.name}` : `page ${model.name}`;
}

const plain = (html) =>
  html
    .replaceAll(/<(script|style|svg)[\s\S]*?<\/\1>/g, " ")
    .replaceAll(/<[^>]*>/g, " ")
    .replaceAll(/&[#\w]+;/g, " ")
    .replaceAll(/\s+/g, " ");

/** What a page gives to the index. */
function entryOf({ url, model, contents }) {
  const kind = kindOf(model);
  const id = idOf(model);
  const content = /<main[^>]*>([\s\S]*)<\/main>/.exec(contents)?.[1] ?? "";
  const asked = day
    .flatMap(({ questions }) => questions)
    .filter(
      ({ functions }) =>
        ["main", "function", "variable"].includes(kind) && functions.includes(model.name),
    );
  const isText = ["guide", "method", "ask", "page"].includes(kind) && !onlyTitle(model);
  return {
    id,
    url,
    title: model.name,
    kind,
    module: model.isDocument?.() || model.parent?.isProject?.() ? "" : model.parent.name,
    about: descriptionOf(model).replace(/^[^:.]*(?: \([^)]*\))?[:.] /, ""),
    words: tradeWords[id] ?? "",
    asks: asked.map(({ ask }) => ask).join(" "),
    summary: descriptionOf(model),
    headings: isText
      ? [...content.matchAll(/<h[1-4][^>]*>([\s\S]*?)<\/h/g)].map(([, h]) => plain(h)).join(" ")
      : "",
    // A word counts once: how often it stands in a page decides nothing, and the file stays small.
    text: isText
      ? [
          ...new Set(
            plain(content.replaceAll(/<pre[\s\S]*?<\/pre>/g, ""))
              .toLowerCase()
              .match(/\p{L}{3,}/gu) ?? [],
          ),
        ].join(" ")
      : "",
  };
}

/** @param {import("typedoc").Application} app */
export function load(app) {
  const entries = [];
  app.renderer.on("endPage", (page) => {
    if (page.contents && page.url.endsWith(".html") && !page.model.isProject())
      entries.push(entryOf(page));
  });
  app.renderer.postRenderAsyncJobs.push(async ({ outputDirectory }) => {
    const known = new Set(entries.map(({ id }) => id));
    for (const id of Object.keys(tradeWords))
      if (!known.has(id)) app.logger.warn(`docs/search/words.json names ${id}, which is no page`);
    const index = new MiniSearch(options);
    index.addAll(entries);
    const assets = join(outputDirectory, "assets");
    rmSync(join(assets, "search.js"), { force: true });
    rmSync(join(assets, "hierarchy.js"), { force: true });
    writeFileSync(
      join(assets, "search-index.js"),
      `window.docsIndex=${JSON.stringify(JSON.stringify(index))}`,
    );
    await build({
      entryPoints: [new URL("../search/dialog.mjs", import.meta.url).pathname],
      outfile: join(assets, "find.js"),
      bundle: true,
      minify: true,
      format: "iife",
      legalComments: "inline",
    });
  });
}
