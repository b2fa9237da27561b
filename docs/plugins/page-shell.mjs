// A TypeDoc plugin: what stands around the content of a page. Its own description, its Markdown beside it, the links to
// license and repository, no data that a page doesn't use; and the page for an address that leads nowhere.
// Where the site and the code live is read from `homepage` and `repository` of package.json, nowhere else.
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ReflectionKind } from "typedoc";
import { firstParagraph } from "./both-ways.mjs";

const root = new URL("../../", import.meta.url);
const { homepage, repository, license, version } = JSON.parse(
  readFileSync(new URL("package.json", root), "utf8"),
);
const code = (repository?.url ?? repository)?.replace(/^git\+|\.git$/g, "").replace(/\.git$/, "");

const escaped = (words) =>
  words.replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("<", "&lt;");

/** Markdown as words, on one line, cut at a word. */
function inWords(markdown) {
  const words = markdown
    .replaceAll(/<[^>]*>|!?\[([^\]]*)\]\([^)]*\)/g, "$1")
    .replaceAll(/[`*_]|&#\d+;/g, "")
    .replaceAll(/\s+/g, " ")
    .trim();
  return words.length <= 160 ? words : `${words.slice(0, 157).replace(/\s\S*$/, "")} …`;
}

const textOf = (parts) => parts.map((part) => part.text).join("");

/** What a page is about, in at most 160 characters. */
export function descriptionOf(model) {
  if (model.isProject?.())
    return "The arithmetic of installing a small split air conditioner or heat pump: unit-safe, sourced, with a verdict and its uncertainty.";
  if (model.isDocument?.()) {
    const questions = [...textOf(model.content).matchAll(/^## (.*\?)$/gm)].map(
      ([, asked]) => asked,
    );
    if (model.parent?.name === "Ask") return inWords(`${model.name}. ${questions.join(" ")}`);
    const body = textOf(model.content).replace(/^[\s\S]*?^# .*$/m, "");
    const paragraph =
      body.split(/\n\s*\n/).find((one) => /^\s*[\w*“"]/.test(one) && one.trim() !== "") ?? "";
    return inWords(`${model.name}. ${paragraph.replace("**Question.** ", "")}`);
  }
  const comment = model.comment ?? model.signatures?.[0]?.comment;
  const place = model.parent?.isProject?.() ? "" : ` (${model.parent?.name})`;
  const words = inWords(textOf(firstParagraph(comment)));
  return inWords(`${model.name}${place}: ${words || "part of hvac-install-math"}`);
}

const footer = (base) =>
  [
    `hvac-install-math ${version}`,
    `<a href="${base}LICENSE.txt">${license} license</a>`,
    `<a href="${base}llms.txt">For language models</a>`,
    ...(code ? [`<a href="${code}">Code</a>`] : []),
  ].join(" · ");

const notFound = (
  base,
) => `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"/><title>Not found | hvac-install-math</title>
<meta name="viewport" content="width=device-width, initial-scale=1"/><meta name="description" content="No page of the hvac-install-math docs has this address."/>
<base href="${base}"/><style>:root{color-scheme:light dark}body{font:1rem/1.5 system-ui,sans-serif;max-width:40rem;margin:15vh auto;padding:0 1rem;color:#23261f;background:#fcfcfa}a{color:#1d5f4a}@media(prefers-color-scheme:dark){body{color:#e4e6de;background:#1b1d1a}a{color:#8fcfb4}}</style></head>
<body><main><h1>No page has this address</h1><p>Names change between versions. From here you get to everything:</p>
<ul><li><a href="index.html">The front page, with the search</a></li><li><a href="documents/Ask.html">Ask: by what comes up on site</a></li>
<li><a href="documents/Guides.html">Guides</a></li><li><a href="documents/Changelog.html">Changelog</a></li></ul></main></body></html>
`;

/** The navigation leads to pages, modules and functions; types and data, most of its weight, are on a module's page. */
const beside = [ReflectionKind.Interface, ReflectionKind.TypeAlias, ReflectionKind.Variable];
const brief = (entries) =>
  entries
    .filter(({ kind }) => !beside.includes(kind))
    .map(({ children, ...entry }) => (children ? { ...entry, children: brief(children) } : entry));

/** @param {import("typedoc").Application} app */
export function load(app) {
  app.renderer.on("beginRender", ({ project }) => {
    const { theme } = app.renderer;
    const whole = theme.buildNavigation(project);
    theme.buildNavigation = () => brief(whole);
  });
  if (homepage) app.on("bootstrapEnd", () => app.options.setValue("hostedBaseUrl", homepage));
  app.renderer.on("endPage", (page) => {
    if (!page.contents || !page.url.endsWith(".html")) return;
    const base = "../".repeat(page.url.split("/").length - 1);
    page.contents = page.contents
      .replace(
        /<meta name="description" content="[^"]*"\/>/,
        () =>
          `<meta name="description" content="${escaped(descriptionOf(page.model))}"/><link rel="alternate" type="text/markdown" href="${escaped(encodeURI(page.url.split("/").at(-1).replace(/html$/, "md")))}"/>`,
      )
      // A long name may break where its words do.
      .replace(
        /<h1>([A-Z]\w+ )(\w+)/,
        (_, kind, name) => `<h1>${kind}${name.replaceAll(/([a-z])([A-Z])/g, "$1<wbr/>$2")}`,
      )
      // The search and its words come when somebody searches: docs/page.js.
      .replace(
        /<script async src="[^"]*search\.js" id="tsd-search-script"><\/script>/,
        '<script type="text/plain" id="tsd-search-script"></script>',
      )
      .replace(/<script async src="[^"]*hierarchy\.js"[^>]*><\/script>/, "")
      // Only a site that is opened as a folder needs its icons as a script: docs/page.js.
      .replace(/<script async src="[^"]*icons\.js"[^>]*><\/script>/, "")
      .replace("Preparing search index...", "")
      .replace(
        '<ul role="listbox" id="tsd-search-results"></ul>',
        '<div role="listbox" id="tsd-search-results" aria-label="Found"></div>',
      )
      .replace(/<footer>/, () => `<footer><p>${footer(base)}</p>`);
  });
  app.renderer.on("endRender", ({ outputDirectory }) => {
    copyFileSync(new URL("LICENSE", root), join(outputDirectory, "LICENSE.txt"));
    const base = homepage ? new URL(homepage).pathname.replace(/\/?$/, "/") : "/";
    writeFileSync(join(outputDirectory, "404.html"), notFound(base));
  });
}
