// What does this library catch, and what can't it? The slip catalogue as a page, part by part.
// Reads the data of tests/studies/slips; the study there holds the library to every answer that stands here.
// Does not cover how often a slip happens: nobody has counted.
import { slips } from "../../tests/studies/slips/all.ts";
import type { RightAnswer, Slip } from "../../tests/studies/slips/slip.ts";
import { count, type Page, page, plain, table, wholeWidth } from "./page.ts";

const answers: Readonly<Record<RightAnswer, string>> = {
  refused: "refused",
  fail: "fail",
  inconclusive: "inconclusive",
  finding: "passes, with a finding first",
  unknowable: "passes: it can’t be known",
};

/** The page. */
export function slipsPage(): Page {
  const parts = [...new Set(slips.map(({ part }) => part))];
  const unknowable = slips.filter(({ answer }) => answer === "unknowable");
  const stopped = slips.filter(({ answer }) => !["finding", "unknowable"].includes(answer));
  const share = Math.floor((100 * stopped.length) / slips.length);
  return page("slips.md", "What it catches, and what it can’t", [
    "# What this library catches, and what it can’t",
    wholeWidth,
    `${count(slips.length, "slip")} of the kind that a person makes in a hurry: a unit confused, a factor of ten, a row copied, a column swapped, a proof forgotten. Each was put into a sound input, a whole record or one call, that passes without it. The right answer was decided from physics and the order of the work before the library was asked; \`npm run studies\` asks it, and fails where the library answers anything else.`,
    `**${share} % are stopped**: the value is refused with its place and what would be allowed, or the verdict is a fail, or it is inconclusive with the question. ${count(slips.length - stopped.length - unknowable.length, "slip passes", "slips pass")} with a finding that names them first. **${count(unknowable.length, "slip passes", "slips pass")} unseen**, because what was typed could as well be true: for these only a photo, a second reading or a second person helps.`,
    figures(parts),
    "The catalogue says nothing of how often a slip happens, and it is not complete: a slip of a kind that is not listed here may pass. A sound record that passes is still no proof that what it says was done.",
    "The same as JSON: `hvac-install-math/slips.json`.",
    "## What it can’t know",
    table(
      ["what is typed", "part", "why nobody can know"],
      unknowable.map(({ slip, part, because }) => [plain(slip), plain(part), plain(because)]),
    ),
    ...parts.flatMap((part) => [
      `## ${plain(part)}`,
      table(
        ["what is typed", "in", "answer", "because"],
        slips.filter((one) => one.part === part && one.answer !== "unknowable").map(row),
      ),
    ]),
  ]);
}

const row = ({ slip, sound, answer, because }: Slip): string[] => [
  plain(slip),
  plain(sound),
  answers[answer],
  plain(because),
];

/** How many of each part get which answer. */
function figures(parts: readonly string[]): string {
  const kinds = Object.keys(answers) as RightAnswer[];
  const rowOf = (name: string, own: readonly Slip[]) => [
    name,
    String(own.length),
    ...kinds.map((kind) => String(own.filter(({ answer }) => answer === kind).length)),
  ];
  return table(
    ["part", "slips", ...kinds.map((kind) => answers[kind])],
    [
      ...parts.map((part) =>
        rowOf(
          plain(part),
          slips.filter((one) => one.part === part),
        ),
      ),
      rowOf("**all**", slips),
    ],
    ["left", ...["slips", ...kinds].map(() => "right" as const)],
  );
}
