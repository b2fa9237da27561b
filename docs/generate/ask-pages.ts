// What does a person on site ask, and which function answers? One page for each step of the day.
// Reads docs/ask/day.json. Does not cover the way back, from a function to its questions: docs/plugins/both-ways.mjs.
import { readFileSync } from "node:fs";
import { type Page, page } from "./page.ts";

/** One question with its answer. */
interface Question {
  readonly ask: string;
  readonly answer: string;
  readonly functions: readonly string[];
}

/** One step of the day. */
interface Step {
  readonly step: string;
  readonly title: string;
  readonly guides: readonly string[];
  readonly questions: readonly Question[];
}

const day: readonly Step[] = JSON.parse(
  readFileSync(new URL("../ask/day.json", import.meta.url), "utf8"),
);

const caution =
  "The nameplate, the manufacturer's instructions, the adopted local codes and licensed practice come before every answer here. Pressurized nitrogen, refrigerants and line voltage injure and kill.";

/** "pressure-test" as a link to its guide, seen from a page of one step. */
const guideLink = (name: string, up: string) =>
  `[${name.replaceAll("-", " ")}](${up}../guides/${name}.md)`;

/** The anchor that TypeDoc gives a heading. */
const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}\s-]/gu, "")
    .replaceAll(/\s/g, "-");

function stepPage({ step, title, guides, questions }: Step): Page {
  return page(`ask/${step}.md`, title, [
    `# ${title}`,
    ...questions.map(({ ask, answer, functions }) =>
      [
        `## ${ask}`,
        answer,
        `Functions: ${functions.map((name) => `{@link ${name}}`).join(", ")}`,
      ].join("\n\n"),
    ),
    `Guides of this step: ${guides.map((name) => guideLink(name, "../")).join(", ")}.`,
    `> **Caution.** ${caution}`,
  ]);
}

/** The page of all questions, and one below it for each step. */
export function askPages(): Page[] {
  const all = page(
    "ask.md",
    "Ask",
    [
      "# Ask",
      "What comes up on site, in the order of the day. Each question leads to the function that answers it.",
      ...day.map(({ step, title, questions }) =>
        [
          `## [${title}](ask/${step}.md)`,
          questions.map(({ ask }) => `- [${ask}](ask/${step}.md#${anchorOf(ask)})`).join("\n"),
        ].join("\n\n"),
      ),
    ],
    { children: Object.fromEntries(day.map(({ step, title }) => [title, `ask/${step}.md`])) },
  );
  return [all, ...day.map(stepPage)];
}
