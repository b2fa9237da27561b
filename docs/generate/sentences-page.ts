// What can the library say? Every sentence and word by its code, module by module.
// The catalogues of src/language as pages, one per module. Does not cover other languages: their tables have the same codes.
import type { Catalogue, Message } from "hvac-install-math/assessment";
import * as en from "hvac-install-math/language/en";
import { count, type Page, page, plain, table, wholeWidth } from "./page.ts";

/** A page of each module's sentences, and the page that leads to them. */
export function sentencesPages(): Page[] {
  const { english, ...rest } = en;
  const all = Object.entries(rest as unknown as Record<string, Catalogue>).map(
    ([name, { messages }]) => ({ name: kebab(name), messages: Object.entries(messages) }),
  );
  const modules = all.filter((one) => !isJoined(one, all));
  const children = Object.fromEntries(
    modules.map(({ name }) => [`Sentences of ${name}`, `sentences/${name}.md`]),
  );
  const index = page(
    "sentences.md",
    "Every sentence",
    [
      "# Every sentence",
      `What the library can say: ${count(Object.keys(english.messages).length, "code")}, each with one sentence. A verdict carries the code and the values; \`explain\` puts them into the sentence of the language that an app imports. A code of two parts is a sentence, one of three parts is a word that stands in sentences. Codes are part of the public interface; sentences are not, and may be worded better in any version.`,
      "The same as JSON for other languages of programming: `hvac-install-math/language/en.json`.",
      table(
        ["module", "sentences", "words"],
        modules.map(({ name, messages }) => {
          const sentences = messages.filter(([code]) => isSentence(code)).length;
          const link = `[${plain(name)}](sentences/${name}.md)`;
          return [link, `${sentences}`, `${messages.length - sentences}`];
        }),
        ["left", "right", "right"],
      ),
    ],
    { children },
  );
  return [index, ...modules.map(modulePage)];
}

/** A catalogue and its messages. */
interface Messages {
  readonly name: string;
  readonly messages: readonly (readonly [string, Message])[];
}

/** A catalogue that only joins others for a module of many sentences: theirs are the pages. */
const isJoined = ({ messages }: Messages, all: readonly Messages[]) => {
  const smaller = all.filter((one) => one.messages.length < messages.length);
  const said = new Set(smaller.flatMap((one) => one.messages.map(([code]) => code)));
  return messages.every(([code]) => said.has(code));
};

const kebab = (name: string) => name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
const isSentence = (code: string) => code.split(".").length === 2;

/** The page of one module: what it says, and the words that stand in it. */
function modulePage(module: Messages): Page {
  const rows = module.messages.map(([code, message]) => [
    `<code>${plain(code)}</code>`,
    textOf(message),
  ]);
  return page(`sentences/${module.name}.md`, `Sentences of ${module.name}`, [
    `# Sentences of ${module.name}`,
    wholeWidth,
    `What a verdict of this module can say, by code. In a sentence \`{…}\` is a value of the verdict; it arrives in the reader's units. [All modules](../sentences.md).`,
    table(["code", "English"], rows),
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
