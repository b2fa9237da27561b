// What does the record prove, what comes next, and what may not be done yet? The first page of a report.
// Follows the assessment: its outcome, its reasons and actions in their order, its hold points.
// Does not cover a verdict of its own: nothing is judged here.
import type { InstallationStep, Placed } from "../commissioning/index.ts";
import type { Context } from "./context.ts";
import { list, type Section, table, text } from "./report-document.ts";
import { say } from "./statements.ts";
import { capital } from "./words.ts";

/** Verdict and the reasons that decide it. */
export function verdictSection(context: Context): Section {
  const { assessment, said, words } = context;
  const { outcome, deciding } = assessment;
  return {
    id: "verdict",
    title: words.of("verdict"),
    mark: words.outcome(outcome),
    blocks: [
      text(said(say(`report.lead-${outcome}`))),
      ...(deciding.length
        ? [text(said(say(outcome === "pass" ? "report.known-with-it" : "report.what-decides")))]
        : []),
      ...list(deciding.map((reason) => placedText(context, reason))),
    ],
  };
}

/** What to do next, in order; not there on a clean pass. */
export function actionsSection(context: Context): Section {
  const { assessment, said, words } = context;
  const { actions } = assessment;
  return {
    id: "actions",
    title: words.of("actions"),
    blocks: actions.length
      ? list(actions.map((action) => placedText(context, action)))
      : [text(said(say("report.nothing-to-do")))],
  };
}

/** A statement behind the step and the part of which it speaks. */
function placedText({ said, words }: Context, one: Placed): string {
  const place = [
    one.step && words.code(`commissioning.step.${one.step}`),
    one.part && words.field(one.part),
  ];
  return [...place.filter(Boolean).map((word) => capital(word as string)), said(one)].join(": ");
}

/** Hold points. */
export function holdsSection({ assessment, said, words }: Context): Section {
  const rows = assessment.holds.map((hold) => [
    capital(words.code(`commissioning.hold.${hold.name}`)),
    [words.hold(hold)],
    hold.waitsFor.map((step) => words.code(`commissioning.step.${step}`)).join(", ") || "—",
    said(hold.reason),
  ]);
  const held = assessment.holds.filter(({ state }) => state !== "released");
  const holds = held.map(({ name }) => `commissioning.hold.${name}` as const);
  const head = (["what", "state", "waits-for", "why"] as const).map(words.of);
  return {
    id: "holds",
    title: words.of("hold-points"),
    blocks: [
      text(said(holds.length ? say("report.on-hold", { holds }) : say("report.nothing-held"))),
      ...table(words.of("hold-points"), head, rows),
    ],
  };
}

/** Every step in a line. */
export function overviewSection(context: Context): Section {
  const { assessment, words } = context;
  const rows = assessment.steps.map((step, i) => [
    [
      {
        text: `${i + 1}. ${capital(words.code(`commissioning.step.${step.name}`))}`,
        to: step.name,
      },
    ],
    [words.step(step)],
    openOf(context, step),
  ]);
  const head = (["step", "outcome", "open"] as const).map(words.of);
  return {
    id: "overview",
    title: words.of("overview"),
    blocks: table(words.of("overview"), head, rows),
  };
}

/** What a step still lacks, counted. */
function openOf({ said }: Context, { missing, problems, blockedBy }: InstallationStep): string {
  const steps = blockedBy.map((step) => `commissioning.step.${step}` as const);
  const open = [
    missing.length && said(say("report.fields-missing", { count: missing.length })),
    problems.length && said(say("report.values-unusable", { count: problems.length })),
    steps.length && said(say("report.waits-for", { steps })),
  ];
  return open.filter(Boolean).join("; ") || "—";
}
