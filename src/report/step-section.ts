// What came of one step? Its checks, figures, assumptions, and what it lacks.
// Follows the assessment of the step, and shows beside it what was recorded.
// Does not cover cautions: they stand together in a section of their own.
import type { InstallationStep, StepCheck, StepName, StepProblem } from "../commissioning/index.ts";
import type { Context } from "./context.ts";
import { figureBlocks } from "./figure-rows.ts";
import { recordBlocks } from "./record-rows.ts";
import { type Block, list, type Section, table, text, type Words } from "./report-document.ts";
import type { ReportPlot } from "./report-options.ts";
import { say, verbatim } from "./statements.ts";
import { capital } from "./words.ts";

/** The parts of the record that belong to a step. */
const partsOfStep = ({ record }: Context, step: StepName): readonly string[] => {
  const each = (list: readonly unknown[] = [], path: string, field = "") =>
    list.map((_, i) => `${path}[${i}]${field}`);
  const { runs, pressureTests, evacuations, power } = record;
  const parts: Readonly<Record<StepName, readonly string[]>> = {
    "line-run": each(runs, "runs", ".tubing"),
    joints: each(runs, "runs", ".joints"),
    "pressure-test": each(pressureTests, "pressureTests"),
    evacuation: each(evacuations, "evacuations"),
    "room-limit": each(runs, "runs", ".room"),
    charge: ["charge"],
    valves: ["valves"],
    circuit: [
      "power.voltage",
      "power.phases",
      "power.system",
      ...each(power?.circuits, "power.circuits"),
    ],
    supply: ["power.supply", "power.energizedAt"],
    drain: each(runs, "runs", ".drain"),
    operation: ["operation"],
  };
  return parts[step];
};

/** All steps in the order of the work. */
export function stepsSection(context: Context, plots: readonly ReportPlot[]): Section {
  const parts = context.assessment.steps.map((step, i) => stepSection(context, step, i + 1, plots));
  return {
    id: "steps",
    title: context.words.of("steps"),
    blocks: [text(context.said(say("report.uncertainty-note")))],
    parts,
  };
}

function stepSection(
  context: Context,
  step: InstallationStep,
  number: number,
  plots: readonly ReportPlot[],
): Section {
  const { said, words } = context;
  const { name, checks, problems, missing } = step;
  const title = capital(words.code(`commissioning.step.${name}`));
  const rows = checks.map((check) => checkRow(context, check));
  const assumed = [
    ...new Set(checks.flatMap(({ assessment }) => assessment.assumptions.map(said))),
  ];
  const head = (["check", "outcome", "why", "by"] as const).map(words.of);
  return {
    id: name,
    title: `${number}. ${title}`,
    mark: words.step(step),
    blocks: [
      ...headsOf(context, step),
      ...table(`${title}: ${words.of("checks")}`, head, rows),
      ...listed(
        said(say("report.not-recorded")),
        missing.map((path) => fieldLine(context, path)),
      ),
      ...listed(
        said(say("report.could-not-be-used")),
        problems.map((one) => problemLine(context, one)),
      ),
      ...checks.flatMap((check) => figureBlocks(context, check)),
      ...plots
        .filter((plot) => plot.step === name)
        .map(({ title: shown, svg }): Block => ({ kind: "picture", title: shown, svg })),
      ...recordBlocks(context, partsOfStep(context, name), `${title}: ${words.of("recorded")}`),
      ...listed(said(say("report.assumed")), assumed),
    ],
  };
}

/** A list under its sentence, or nothing where it is empty. */
const listed = (over: string, items: readonly string[]): Block[] =>
  items.length ? [text(over), ...list(items)] : [];

/** Why a step was left out, or does not count yet. */
function headsOf(
  context: Context,
  { waiver, runWaivers = [], fallsAway, blockedBy }: InstallationStep,
): Block[] {
  const { said } = context;
  const heads: Block[] = [];
  for (const { by, at, reason, note = "" } of [...(waiver ? [waiver] : []), ...runWaivers]) {
    const [who, when] = [verbatim(context.figure(by)), verbatim(context.figure(at))];
    const why = reason ? [`commissioning.waiver.${reason}`] : [];
    const own = note ? [verbatim(context.figure(note))] : [];
    heads.push(text(said(say("report.waived-by", { by: who, at: when, why: [...why, ...own] }))));
  }
  if (fallsAway) heads.push(text(said(fallsAway)));
  if (blockedBy.length > 0) {
    const steps = blockedBy.map((step) => `commissioning.step.${step}` as const);
    heads.push(text(said(say("report.counts-when-passed", { steps }))));
  }
  return heads;
}

/** A missing field as words. */
export const fieldLine = ({ words }: Context, path: string): string => capital(words.field(path));

/** What is wrong with a value, and what to do about it. */
const problemLine = ({ said }: Context, { reason, hint }: StepProblem): string =>
  [reason, ...(hint ? [hint] : [])].map(said).join(" ");

function checkRow(context: Context, { name, path, assessment }: StepCheck): Words[] {
  const { said, words } = context;
  const cause = assessment.cause && causeCode(context, assessment);
  return [
    capital(words.check(name, path)),
    [words.outcome(assessment.outcome)],
    [
      ...assessment.reasons.map(said),
      ...(cause ? [said(say("report.cause", { cause }))] : []),
    ].join(" "),
    context.refs(assessment.sources, true),
  ];
}

/** The code of the word for a cause: a module that gives a reason found it, though not always the first one's. */
function causeCode(
  { words }: Context,
  { cause, reasons }: StepCheck["assessment"],
): string | undefined {
  return reasons
    .map(({ code }) => `${code.slice(0, code.indexOf("."))}.cause.${cause}`)
    .find((code) => words.code(code, "") !== "");
}
