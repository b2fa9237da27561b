// What came of one step? Its checks, figures, assumptions, and what it lacks.
// Follows the assessment of the step, and shows beside it what was recorded.
// Does not cover cautions: they stand together in a section of their own.
import type { InstallationStep, StepCheck, StepName } from "../commissioning/index.ts";
import type { Context } from "./context.ts";
import { figureBlocks } from "./figure-rows.ts";
import { recordBlocks } from "./record-rows.ts";
import { type Block, list, type Section, table, text, type Words } from "./report-document.ts";
import type { ReportPlot } from "./report-options.ts";
import { capital, checkTitle, fieldWords, outcomeMark, plainWords, stepMark } from "./words.ts";

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
    title: "Step by step",
    blocks: [
      text(
        "What stands behind ± is the uncertainty: “limits” are the limits of error of the instrument as stated, k = 2 marks the expanded uncertainty that follows from them, about 95 %. A figure without ± is a rule, a count, or was stated without one. S1, S2 and so on are the sources.",
      ),
    ],
    parts,
  };
}

function stepSection(
  context: Context,
  step: InstallationStep,
  number: number,
  plots: readonly ReportPlot[],
): Section {
  const { name, checks, problems, missing, blockedBy, waiver, fallsAway } = step;
  const title = capital(plainWords(name));
  const rows = checks.map((check) => checkRow(context, check));
  const assumed = [
    ...new Set(checks.flatMap(({ assessment }) => assessment.assumptions.map(context.said))),
  ];
  const heads: Block[] = [];
  if (waiver) {
    const { by, at, reason = "", note = "" } = waiver;
    const why = [plainWords(reason), context.figure(note)].filter(Boolean).join("; ");
    heads.push(text(`Waived by ${context.figure(by)} (${at}): ${why}. Nothing of it was checked.`));
  }
  if (fallsAway) heads.push(text(context.said(fallsAway)));
  if (blockedBy.length > 0) {
    heads.push(text(`Not to be done before these pass: ${blockedBy.map(plainWords).join(", ")}.`));
  }
  return {
    id: name,
    title: `${number}. ${title}`,
    mark: stepMark(step),
    blocks: [
      ...heads,
      ...table(`${title}: checks`, ["Check", "Outcome", "Why", "By"], rows),
      ...(missing.length ? [text("Not recorded:"), ...list(missing.map(fieldLine))] : []),
      ...(problems.length
        ? [
            text("Recorded, but of no use to a check:"),
            ...list(
              problems.map(({ check, path, value, allowed, hint }) =>
                context.figure(
                  `${capital(fieldWords(path))} (${path}) is ${value}; allowed: ${allowed}. Not made: ${plainWords(check)}. ${hint}`,
                ),
              ),
            ),
          ]
        : []),
      ...checks.flatMap((check) => figureBlocks(context, check)),
      ...plots
        .filter((plot) => plot.step === name)
        .map(({ title: shown, svg }): Block => ({ kind: "picture", title: shown, svg })),
      ...recordBlocks(context, partsOfStep(context, name), `${title}: as recorded`),
      ...(assumed.length ? [text("Assumed, because it was not given:"), ...list(assumed)] : []),
    ],
  };
}

/** A missing field as words, and by its path for whoever fills the record in. */
export const fieldLine = (path: string): string => `${capital(fieldWords(path))} (${path})`;

function checkRow(context: Context, { name, path, assessment }: StepCheck): Words[] {
  const cause = assessment.cause ? [`Cause: ${plainWords(assessment.cause)}.`] : [];
  return [
    capital(checkTitle(name, path)),
    [outcomeMark(assessment.outcome)],
    [...assessment.reasons.map(context.said), ...cause].join(" "),
    context.refs(assessment.sources, true),
  ];
}
