// A TypeDoc plugin: each page as Markdown beside its HTML, and llms.txt, which says where to begin.
// Turndown writes the Markdown from the page's own content, so that the two can't differ.
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import TurndownService from "turndown";
import { gfm } from "turndown-plugin-gfm";
import { descriptionOf } from "./page-shell.mjs";

const service = new TurndownService({
  headingStyle: "atx",
  codeBlockStyle: "fenced",
  bulletListMarker: "-",
});
service.use(gfm);
service.addRule("nothing to read", {
  filter: (node) =>
    ["SVG", "BUTTON", "SCRIPT", "STYLE"].includes(node.nodeName.toUpperCase()) ||
    /tsd-anchor-icon|tsd-breadcrumb|playground/.test(node.getAttribute("class") ?? ""),
  replacement: () => "",
});
service.addRule("code", {
  filter: "pre",
  replacement: (_, node) => {
    const language =
      /\b(tsx?|sh|json|html|js)\b/.exec(
        node.querySelector("code")?.getAttribute("class") ?? "",
      )?.[1] ?? "";
    const button = node.querySelector("button");
    button?.parentNode.removeChild(button);
    const lines = (node.querySelector("code") ?? node).innerHTML
      .replaceAll(/<br\s*\/?>/g, "\n")
      .replaceAll(/<[^>]*>/g, "")
      .replaceAll("&lt;", "<")
      .replaceAll("&gt;", ">")
      .replaceAll("&quot;", '"')
      .replaceAll("&#39;", "'")
      .replaceAll("&nbsp;", " ")
      .replaceAll("&amp;", "&");
    return `\n\n\`\`\`${language}\n${lines.trimEnd()}\n\`\`\`\n\n`;
  },
});
service.addRule("links between pages", {
  filter: (node) => node.nodeName === "A" && node.getAttribute("href") !== null,
  replacement: (words, node) => {
    const to = node.getAttribute("href");
    const there = /^[a-z]+:/.test(to) ? to : to.replace(/\.html(?=#|$)/, ".md");
    return words.trim() === "" ? "" : `[${words}](${there})`;
  },
});

/** The Markdown of a page's content. */
export function markdownOf(html) {
  const content = /<main[^>]*>([\s\S]*)<\/main>/.exec(html)?.[1] ?? "";
  return `${service
    .turndown(
      content.replaceAll(
        /<ul class="tsd-signatures[^"]*">\s*<li[^>]*>|<svg class="tsd-kind-icon"[\s\S]*?<\/svg>|<svg [^>]*viewBox="0 0 24 24"[\s\S]*?<\/svg>/g,
        "",
      ),
    )
    .replaceAll(/[ \t]+$/gm, "")
    .replaceAll(/\n{3,}/g, "\n\n")}\n`;
}

const groups = [
  ["By what comes up on site", /^documents\/Ask[.]/],
  ["Guides", /^documents\/Guides\./],
  ["Methods", /^documents\/Methods\./],
  ["Modules", /^modules\//],
  ["Figures and records", /^documents\/[^.]+\.html$/],
];

function llmsText(pages) {
  const taken = new Set();
  const sections = groups.map(([title, path]) => {
    const lines = pages
      .filter(({ url }) => path.test(url) && !taken.has(url))
      .map(({ url, name, about }) => {
        taken.add(url);
        return `- [${name}](${encodeURI(url.replace(/html$/, "md")).replaceAll("(", "%28").replaceAll(")", "%29")}): ${about}`;
      });
    return `## ${title}\n\n${lines.join("\n")}`;
  });
  return `# hvac-install-math

> A TypeScript library with the arithmetic of installing a small split air conditioner or heat pump. Install it with \`npm install hvac-install-math\`; each module is a subpath, such as \`hvac-install-math/pressure-test\`. Quantities carry their kind: a gauge pressure is not an absolute one. A verdict is pass, fail or inconclusive, with reasons, actions, cautions and sources.

The nameplate, the manufacturer's instructions, the adopted local codes and licensed practice come before every figure. Every page of these docs has its Markdown beside it: \`.md\` in place of \`.html\`.

${sections.join("\n\n")}
`;
}

/** @param {import("typedoc").Application} app */
export function load(app) {
  const pages = [];
  app.renderer.on("endPage", (page) => {
    if (!page.contents || !page.url.endsWith(".html")) return;
    const file = join(app.options.getValue("out"), page.url.replace(/html$/, "md"));
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, markdownOf(page.contents));
    pages.push({ url: page.url, name: page.model.name, about: descriptionOf(page.model) });
  });
  app.renderer.on("endRender", ({ outputDirectory }) => {
    pages.sort((a, b) => a.url.localeCompare(b.url, "en"));
    writeFileSync(join(outputDirectory, "llms.txt"), llmsText(pages));
  });
}
