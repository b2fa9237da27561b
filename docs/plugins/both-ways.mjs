// A TypeDoc plugin: guides and functions lead to each other. A module's page opens with the question of its guide,
// its main functions, an example and the guide; a function names its guide and the questions that it answers; a guide
// links each export that it names in code, and ends with the functions of its module.
import { readFileSync } from "node:fs";
import { Comment, CommentTag, Converter, ReflectionKind } from "typedoc";

const read = (path) => readFileSync(new URL(path, import.meta.url), "utf8");
const mainFunctions = JSON.parse(read("../ask/main-functions.json"));
const day = JSON.parse(read("../ask/day.json"));

const text = (words) => ({ kind: "text", text: words });
const link = (target, words = target.name, tag = "@link") => ({
  kind: "inline-tag",
  tag,
  text: words,
  target,
});
/** `parts` with `between` between them. */
const joined = (parts, between) =>
  parts.flatMap((part, i) => (i === 0 ? [part] : [text(between), part]));

/** The comment of a function is that of its first signature. */
const commentOf = (one) => one.comment ?? one.signatures?.[0]?.comment;

/** The question in bold at the head of a guide. */
function questionOf(guide) {
  const words = guide.content.map((part) => part.text).join("");
  return /\*\*Question\.\*\* ([\s\S]+?)\n\n/.exec(words)?.[1];
}

/** The first paragraph of a comment, as parts. */
export function firstParagraph(comment) {
  const parts = [];
  for (const part of comment?.summary ?? []) {
    const end = part.kind === "text" ? part.text.search(/\n\s*\n/) : -1;
    if (end < 0) parts.push(part);
    else {
      parts.push({ ...part, text: part.text.slice(0, end) });
      break;
    }
  }
  return parts;
}

function openModule(module, functions, guide) {
  const example = commentOf(functions[0])?.getTag("@example")?.content;
  module.comment ??= new Comment([]);
  const asked = guide && questionOf(guide);
  module.comment.summary = [
    ...(asked ? [text(`*${asked.replaceAll(/\s+/g, " ")}*\n\n`)] : []),
    ...module.comment.summary,
    text("\n\n**Main functions:** "),
    ...joined(
      functions.map((one) => link(one)),
      ", ",
    ),
    ...(example ? [text("\n\n"), ...example] : []),
    ...(guide ? [text("\n\n**Guide:** "), link(guide)] : []),
  ];
}

/** Where a function is explained and asked for, below its comment. */
function leadBack(one, guide, pages) {
  const comment = commentOf(one);
  if (!comment) return;
  const steps = day.filter(({ questions }) =>
    questions.some(({ functions }) => functions.includes(one.name)),
  );
  const lines = steps.flatMap(({ title, questions }) =>
    questions
      .filter(({ functions }) => functions.includes(one.name))
      .map(({ ask }) => [text(`\n- ${ask} `), link(pages.get(title), title)]),
  );
  if (guide) lines.unshift([text("\n- Guide: "), link(guide)]);
  if (lines.length > 0) comment.blockTags.push(new CommentTag("@see", lines.flat()));
}

/** The first naming of each export in the code of a sentence becomes a link. */
function linkNames(page, exported) {
  const seen = new Set();
  page.content = page.content.map((part) => {
    const name = part.kind === "code" ? /^`(\w+)`$/.exec(part.text)?.[1] : undefined;
    const target = name === undefined || seen.has(name) ? undefined : exported.get(name);
    if (!target) return part;
    seen.add(name);
    return link(target, name, "@linkcode");
  });
}

/** The functions of the module at the end of its guide, main ones first. */
function endGuide(guide, module, main) {
  const others = (module.children ?? []).filter(
    (one) => one.kind === ReflectionKind.Function && !main.includes(one),
  );
  guide.content.push(
    text("\n\n## Functions\n"),
    ...[...main, ...others].flatMap((one) => [
      text("\n- "),
      link(one),
      text(": "),
      ...firstParagraph(commentOf(one)),
    ]),
    text("\n\nAll of it, with its types: "),
    link(module, `module ${module.name}`),
    text(".\n"),
  );
}

/** @param {import("typedoc").Application} app */
export function load(app) {
  app.converter.on(Converter.EVENT_RESOLVE_END, ({ project }) => {
    const documents = project.getReflectionsByKind(ReflectionKind.Document);
    const pages = new Map(documents.map((page) => [page.name, page]));
    const guides = new Map(
      documents
        .filter(({ parent }) => parent.name === "Guides")
        .map((page) => [page.name.toLowerCase().replaceAll(" ", "-"), page]),
    );
    const modules = project.children ?? [];
    const named = new Map();
    for (const one of modules.flatMap(({ children = [] }) => children)) {
      named.set(one.name, named.has(one.name) ? undefined : one);
    }
    for (const page of documents) if (page.parent.name !== "Ask") linkNames(page, named);
    for (const module of modules) {
      const guide = guides.get(module.name.split("/")[0]);
      const main = (mainFunctions[module.name] ?? []).map((name) => module.getChildByName([name]));
      if (guide && guides.has(module.name)) endGuide(guide, module, main);
      for (const one of module.children ?? []) {
        if (one.kind === ReflectionKind.Function || main.includes(one)) leadBack(one, guide, pages);
      }
      if (main.length > 0) openModule(module, main, guide);
    }
  });
}
