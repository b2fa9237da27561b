// On what does the report stand? For who checks it: every reason with its source, figures, the record.
// Follows the steps in their order. Can be left out of a report.
// Does not cover what a reader acts on: that stands before it.
import type { InstallationStep, StepCheck, StepName } from "../commissioning/index.ts";
import { sourcesSection } from "./closing-sections.ts";
import type { Context } from "./context.ts";
import { figureBlocks } from "./figure-rows.ts";
import { recordBlocks } from "./record-rows.ts";
import { evidenceSections, installationSection } from "./record-sections.ts";
import { list, type Section, table, text, type Words } from "./report-document.ts";
import { say } from "./statements.ts";
import { nameOf } from "./step-section.ts";
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

/** The appendix: a part for each step, then what stands beside the steps. */
export function appendixSection(context: Context): Section {
  const { assessment, said, words } = context;
  const parts = [
    ...assessment.steps.map((step, i) => stepPart(context, step, i + 1)),
    assumptionsPart(context),
    installationSection(context),
    ...evidenceSections(context),
    sourcesSection(context),
  ].filter(({ blocks }) => blocks.length > 0);
  return {
    id: "appendix",
    title: words.of("appendix"),
    blocks: [text(said(say("report.uncertainty-note")))],
    parts,
  };
}

function stepPart(context: Context, step: InstallationStep, number: number): Section {
  const { words } = context;
  const { name, checks } = step;
  const title = capital(words.code(`commissioning.step.${name}`));
  const head = (["check", "outcome", "why", "by"] as const).map(words.of);
  return {
    id: `data-${name}`,
    title: `${number}. ${title}`,
    blocks: [
      ...table(
        `${context.behind(title)} ${words.of("checks")}`,
        head,
        checks.map((check) => checkRow(context, check)),
      ),
      ...figureBlocks(context, checks),
      ...recordBlocks(
        context,
        partsOfStep(context, name),
        `${context.behind(title)} ${words.of("recorded")}`,
      ),
    ],
  };
}

/** What was assumed beyond the steps. */
function assumptionsPart({ assessment, said, words }: Context): Section {
  const ofSteps = assessment.steps.flatMap(({ checks }) =>
    checks.flatMap((one) => one.assessment.assumptions.map(said)),
  );
  const told = new Set(ofSteps);
  const others = assessment.assumptions.map(said).filter((sentence) => !told.has(sentence));
  return { id: "assumptions", title: words.of("assumptions"), blocks: list(others) };
}

function checkRow(context: Context, check: StepCheck): Words[] {
  const { said, words } = context;
  const { assessment } = check;
  const cause = assessment.cause && causeCode(context, assessment);
  return [
    nameOf(context, check),
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
