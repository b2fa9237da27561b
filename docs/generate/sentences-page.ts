// What can the library say? Every sentence and word by its code, module by module.
// The catalogues of src/language as a page. Does not cover other languages: their tables have the same codes.
import type { Catalogue, Message } from "hvac-install-math/assessment";
import * as en from "hvac-install-math/language/en";
import { count, type Page, page, plain, table, wholeWidth } from "./page.ts";

/** The page of every sentence. */
export function sentencesPage(): Page {
  const { english, ...modules } = en;
  const parts = Object.entries(modules as unknown as Record<string, Catalogue>).flatMap(
    ([name, { messages }]) => [
      `## ${plain(name)}`,
      table(
        ["code", "English"],
        Object.entries(messages).map(([code, message]) => [
          `<code>${plain(code)}</code>`,
          textOf(message),
        ]),
      ),
    ],
  );
  return page("sentences.md", "Every sentence", [
    "# Every sentence",
    wholeWidth,
    `What the library can say: ${count(Object.keys(english.messages).length, "code")}, each with one sentence. A verdict carries the code and the values; \`explain\` puts them into the sentence of the language that an app imports. A code of two parts is a sentence, one of three parts is a word that stands in sentences. Codes are part of the public interface; sentences are not, and may be worded better in any version.`,
    "The same as JSON for other languages of programming: `hvac-install-math/language/en.json`.",
    ...parts,
  ]);
}

/** A message with its variants below each other. */
function textOf(message: Message): string {
  if (typeof message === "string") return plain(message);
  const { by, ...variants } = message;
  return Object.entries(variants)
    .map(([name, text]) => `<small>${plain(by)} ${plain(name)}:</small> ${plain(text)}`)
    .join("<br>");
}
