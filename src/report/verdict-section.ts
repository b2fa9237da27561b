// What does the record prove, what comes next, and what may not be done yet? The first page of a report.
// Follows the assessment: its outcome, its reasons and actions in their order, its hold points.
// Does not cover a verdict of its own: nothing is judged here.
import type { InstallationStep, Placed } from "../commissioning/index.ts";
import type { Context } from "./context.ts";
import { placeText } from "./places.ts";
import { list, type Run, type Section, steps, table, text, type Words } from "./report-document.ts";
import { say } from "./statements.ts";
import { capital } from "./words.ts";

/** Verdict and the reasons that decide it. What is only not recorded, the actions ask for. */
export function verdictSection(context: Context): Section {
  const { assessment, said, words } = context;
  const { outcome, actions } = assessment;
  const deciding = assessment.deciding.filter(
    ({ code }) => actions.length === 0 || code !== "commissioning.not-recorded",
  );
  return {
    id: "verdict",
    title: words.of("verdict"),
    mark: words.outcome(outcome),
    blocks: [
      text(said(say(`report.lead-${outcome}`))),
      ...list(deciding.map((reason) => placedText(context, reason))),
    ],
  };
}

/** What to do next, in order; not there where nothing is left to do. */
export function actionsSection(context: Context): Section[] {
  const { actions } = context.assessment;
  const blocks = steps(actions.map((action) => placedText(context, action)));
  return blocks.length ? [{ id: "actions", title: context.words.of("actions"), blocks }] : [];
}

/** A statement behind the step and the part of which it speaks. */
export function placedText(context: Context, one: Placed): string {
  const step = one.step && context.words.code(`commissioning.step.${one.step}`);
  const part = one.part && placeText(context, one.part);
  const place = [step, part].filter(Boolean).join(", ");
  return [...(place ? [context.behind(capital(place))] : []), context.said(one)].join(" ");
}

/** Hold points: each with its state and why. */
export function holdsSection({ assessment, said, words }: Context): Section {
  const lines = assessment.holds.map((hold): Words => {
    const name = capital(words.code(`commissioning.hold.${hold.name}`));
    return [words.hold(hold), { text: ` ${name}. ${said(hold.reason)}` }];
  });
  return { id: "holds", title: words.of("hold-points"), blocks: list(lines) };
}

/** Every step in a line, and how the record stands. */
export function overviewSection(context: Context): Section {
  const { assessment, words } = context;
  const rows = assessment.steps.map((step, i): Words[] => {
    const title = `${i + 1}. ${capital(words.code(`commissioning.step.${step.name}`))}`;
    const open = openOf(context, step);
    return [
      [{ text: title, to: step.name }],
      [words.step(step), ...(open ? [{ text: ` (${open})` }] : [])],
    ];
  });
  const head = (["step", "outcome"] as const).map(words.of);
  return {
    id: "overview",
    title: words.of("overview"),
    blocks: [...table(words.of("overview"), head, rows), text(standing(context))],
  };
}

/** Who signed, and whether something was amended. */
function standing({ record, words, figure, behind }: Context): Run[] {
  const { history = [], signatures = [] } = record;
  const signed = signatures.map(({ name, role, at }) => `${name}, ${role}, ${figure(at)}`);
  const facts: readonly [string, string][] = [
    [words.of("signed"), figure(signed.join("; ")) || words.of("nobody")],
    [words.of("amendments"), history.length ? String(history.length) : words.of("none")],
  ];
  return [{ text: facts.map(([name, fact]) => `${behind(name)} ${fact}.`).join(" ") }];
}

/** What a step still lacks, counted. */
function openOf({ said }: Context, { missing, problems, blockedBy }: InstallationStep): string {
  const steps = blockedBy.map((step) => `commissioning.step.${step}` as const);
  const open = [
    missing.length && said(say("report.fields-missing", { count: missing.length })),
    problems.length && said(say("report.values-unusable", { count: problems.length })),
    steps.length && said(say("report.waits-for", { steps })),
  ];
  return open.filter(Boolean).join("; ");
}
