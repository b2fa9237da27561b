// What does the record prove, and what may not be done yet? The first page of a report.
// Follows the assessment: its outcome, its reasons in their order, its hold points.
// Does not cover a verdict of its own: nothing is judged here.
import type { Outcome } from "../assessment/index.ts";
import type { HoldName, InstallationStep } from "../commissioning/index.ts";
import type { Context } from "./context.ts";
import { list, type Section, table, text } from "./report-document.ts";
import { capital, fieldWords, holdMark, outcomeMark, plainWords, stepMark } from "./words.ts";

const leads: Readonly<Record<Outcome, string>> = {
  pass: "As far as the record shows, the installation keeps every limit that it was held to.",
  fail: "The record shows that the installation does not keep a limit, or that something was done before its proof.",
  inconclusive: "Nothing in the record fails, but it does not prove enough for a pass.",
};

/** Verdict and the reasons that decide it. */
export function verdictSection(context: Context): Section {
  const { outcome, steps, deciding } = context.assessment;
  const counts = new Map<string, number>();
  for (const step of steps) {
    const { text: word } = stepMark(step);
    counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  const counted = [...counts].map(([word, count]) => `${count} ${word.toLowerCase()}`).join(", ");
  return {
    id: "verdict",
    title: "Verdict",
    mark: outcomeMark(outcome),
    blocks: [
      text(`${leads[outcome]} Of ${steps.length} steps: ${counted}.`),
      ...(deciding.length
        ? [text(outcome === "pass" ? "To be known with it:" : "What decides it:")]
        : []),
      ...list(
        deciding.map((reason) => {
          const { step, part } = reason;
          const place = [step && plainWords(step), part && fieldWords(part)].filter(Boolean);
          return capital([...place, context.said(reason)].join(": "));
        }),
      ),
    ],
  };
}

const waits: Readonly<Record<HoldName, string>> = {
  "open-valves": "opening the service valves",
  "add-charge": "adding refrigerant",
  "power-on": "switching on",
};

/** Hold points. */
export function holdsSection({ assessment, said }: Context): Section {
  const rows = assessment.holds.map((hold) => [
    capital(waits[hold.name]),
    [holdMark(hold)],
    hold.waitsFor.map(plainWords).join(", ") || "nothing",
    said(hold.reason),
  ]);
  const cleared = assessment.steps.some(({ state }) => state === "not-applicable")
    ? "has passed or was declared not applicable"
    : "has passed";
  const held = assessment.holds.filter(({ state }) => state !== "released");
  return {
    id: "holds",
    title: "What may not be done yet",
    blocks: [
      text(
        held.length
          ? `Not to be done, or not to have been done: ${held.map(({ name }) => waits[name]).join(", ")}.`
          : `Nothing is held any more: what each hold point waits for ${cleared}.`,
      ),
      ...table("Hold points", ["What", "State", "Waits for", "Why"], rows),
    ],
  };
}

/** Every step in a line. */
export function overviewSection({ assessment }: Context): Section {
  const rows = assessment.steps.map((step, i) => [
    [{ text: `${i + 1}. ${capital(plainWords(step.name))}`, to: step.name }],
    [stepMark(step)],
    openOf(step),
  ]);
  const head = ["Step", "Outcome", "Open"];
  return {
    id: "overview",
    title: "The steps at a glance",
    blocks: table("Steps in the order of the work", head, rows),
  };
}

/** What a step still lacks, counted. */
function openOf({ missing, problems, blockedBy }: InstallationStep): string {
  const said = [
    missing.length && `${counted(missing.length, "field")} not recorded`,
    problems.length && `${counted(problems.length, "value")} of no use to a check`,
    blockedBy.length && `waits for ${blockedBy.map(plainWords).join(", ")}`,
  ];
  return said.filter(Boolean).join("; ") || "—";
}

const counted = (count: number, what: string) => `${count} ${what}${count === 1 ? "" : "s"}`;
