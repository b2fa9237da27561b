// What is missing, assumed, dangerous, cited, and outside this report? The last sections.
// Follows the assessment and the bibliography. Does not cover advice beyond the cautions of the checks.
import type { Caution } from "../assessment/index.ts";
import { type Source, sourceById } from "../sources/index.ts";
import type { Context } from "./context.ts";
import { list, type Section, table, text } from "./report-document.ts";
import { fieldLine } from "./step-section.ts";
import { capital, plainWords } from "./words.ts";

/** Every missing field and every assumption. */
export function openSections({ assessment, said }: Context): Section[] {
  const { missing, assumptions, steps } = assessment;
  const ofSteps = steps.flatMap(({ checks }) =>
    checks.flatMap((one) => one.assessment.assumptions),
  );
  const told = new Set(ofSteps.map(said));
  const others = assumptions.map(said).filter((sentence) => !told.has(sentence));
  return [
    {
      id: "missing",
      title: "Not recorded",
      blocks: missing.length
        ? [
            text(`${missing.length} fields that a check needs. None of them counts as passed.`),
            ...list(missing.map(fieldLine)),
          ]
        : [text("Every field that a check needs is recorded.")],
    },
    {
      id: "assumptions",
      title: "Assumed of the whole",
      blocks: others.length
        ? [text("Beside what each step assumes:"), ...list(others)]
        : [text("Nothing beside what each step assumes.")],
    },
  ];
}

/** Codes of cautions that say who has the last word. */
const governs =
  /^(manual-decides|others-govern|instructions-govern|nameplate-first|local-code|record-only)$/;

/** Cautions: what governs, then those of each step, then those of the record; each once. */
export function cautionsSection({ assessment, said }: Context): Section {
  const groups = new Map<string, Set<string>>();
  const placed = new Set<string>();
  const place = (name: string, caution: Caution) => {
    const sentence = said(caution);
    if (placed.has(sentence)) return;
    placed.add(sentence);
    groups.set(name, (groups.get(name) ?? new Set()).add(sentence));
  };
  const first = assessment.cautions.filter(({ code }) => governs.test(code));
  for (const caution of first) place("What governs", caution);
  for (const { name, checks } of assessment.steps) {
    const own = checks.flatMap((check) => check.assessment.cautions);
    for (const caution of own) place(capital(plainWords(name)), caution);
  }
  for (const caution of assessment.cautions) place("This record", caution);
  const parts = [...groups].map(
    ([title, sentences], i): Section => ({
      id: `cautions-${i + 1}`,
      title,
      blocks: list([...sentences]),
    }),
  );
  return { id: "cautions", title: "Cautions", blocks: [], parts };
}

/** How a work was read, and what that asks of the reader. */
const readings: Readonly<Record<Source["readAs"], readonly [short: string, means: string]>> = {
  reproduction: [
    "reproduction",
    "read in a reproduction: check a figure that matters against the text itself",
  ],
  memory: ["memory", "from memory: check against the text"],
  none: ["—", "no text to check against"],
};

/** Every cited work in full. */
export function sourcesSection({ assessment, works }: Context): Section {
  const rows = works.map((id, i) => {
    const { title, edition, publisher, doi, readAs } = sourceById(id);
    const clauses = assessment.sources.filter(({ source, clause }) => source === id && clause);
    return [
      `S${i + 1}`,
      [title, edition, publisher, doi && `doi:${doi}`].filter(Boolean).join(". "),
      clauses.map(({ clause }) => clause).join("; ") || "—",
      readings[readAs][0],
    ];
  });
  const ids = works.map((_, i) => `source-${i + 1}`);
  const head = ["No.", "Work and edition", "Clauses used", "Read"];
  const ways = [...new Set(works.map((id) => readings[sourceById(id).readAs]))];
  return {
    id: "sources",
    title: "Sources",
    blocks: rows.length
      ? [
          text(`${ways.map(([short, means]) => `${short}: ${means}`).join(". ")}.`),
          ...table("Works cited", head, rows, ids),
        ]
      : [text("No check was made, so that nothing is cited.")],
  };
}

/** What the report cannot say. */
export const limitsSection: Section = {
  id: "limits",
  title: "Limits of this report",
  blocks: list([
    "It judges a record, not the work: what was not recorded, or not recorded truly, it cannot see.",
    "Names, times, photos and signatures are repeated as they were stated; none of them was verified.",
    "A pass says that the recorded figures keep the limits that they were held to, with the stated uncertainty. It is no permission to pressurise, charge or energise.",
    "Nameplate, manufacturer's instructions, adopted local code, the authority having jurisdiction and licensed practice come before every figure here.",
  ]),
};
