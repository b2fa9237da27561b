// A TypeDoc plugin: the type of a module's statements as one table, code and values, in place of a section for each
// of up to a thousand codes, which a phone can't open. The sentences stand on pages of their own.
import { Comment, Converter, ReflectionKind } from "typedoc";
import ts from "typescript";

/** The values of a code, each with its type; many words of one list are the list. */
const valuesOf = (symbol, checker) =>
  checker
    .getPropertiesOfType(checker.getTypeOfSymbol(symbol))
    .map((value) => {
      const type = checker.getTypeOfSymbol(value);
      const words = checker.typeToString(type, undefined, ts.TypeFormatFlags.NoTruncation);
      return `${value.name}: ${words}`
        .replaceAll(/readonly |import\("[^"]*"\)\./g, "")
        .replaceAll(/"([\w-]+\.[\w-]+)\.[^"]*"(?: \| "\1\.[^"]*"){3,}/g, "a word of $1");
    })
    .join("; ");

const escaped = (words) => words.replaceAll("|", "\\|").replaceAll("`", "");

/** Sentences with their values first; the words of a list share a row. */
function tableOf(codes, context) {
  const sentences = codes.filter(({ name }) => name.split(".").length === 2);
  const checker = context.programs[0].getTypeChecker();
  const lists = new Map();
  for (const { name } of codes.filter((one) => !sentences.includes(one))) {
    const parts = name.split(".");
    const list = parts.slice(0, 2).join(".");
    lists.set(list, [...(lists.get(list) ?? []), parts.slice(2).join(".")]);
  }
  return [
    "| code of a sentence | its values |",
    "| :--- | :--- |",
    ...sentences.map((code) => {
      const values = valuesOf(context.getSymbolFromReflection(code), checker);
      return `| \`${code.name}\` | ${values ? `\`${escaped(values)}\`` : "none"} |`;
    }),
    ...(lists.size > 0 ? ["", "| list of words | its words |", "| :--- | :--- |"] : []),
    ...[...lists].map(([list, words]) => `| \`${list}\` | ${words.join(", ")} |`),
  ].join("\n");
}

/** @param {import("typedoc").Application} app */
export function load(app) {
  const tabled = new Set();
  app.converter.on(Converter.EVENT_RESOLVE_END, (context) => {
    const { project } = context;
    for (const one of project.getReflectionsByKind(ReflectionKind.Interface)) {
      if (!/Statements$/.test(one.name) || !one.children) continue;
      const codes = [...one.children];
      one.comment ??= new Comment([]);
      one.comment.summary.push({ kind: "text", text: `\n\n${tableOf(codes, context)}` });
      for (const code of codes) project.removeReflection(code);
      one.extendedTypes = undefined;
      tabled.add(one);
    }
  });
  app.renderer.on("endPage", (page) => {
    // Without its codes the type would show as an empty one.
    if (tabled.has(page.model))
      page.contents = page.contents.replace(/<div class="tsd-signature">[\s\S]*?<\/div>/, "");
  });
}
