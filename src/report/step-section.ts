// What came of one step? Its checks in a few lines with their deciding reasons, its picture, and what it lacks.
// Follows the assessment of the step. Runs stand side by side.
// Does not cover sources, figures and what was recorded: the appendix has them.
import type { InstallationStep, StepCheck, StepProblem } from "../commissioning/index.ts";
import type { Context } from "./context.ts";
import { fieldText, placeText, runOf, runText } from "./places.ts";
import { type Block, list, type Run, type Section, table, text } from "./report-document.ts";
import type { ReportPlot } from "./report-options.ts";
import { say, verbatim } from "./statements.ts";
import { capital } from "./words.ts";

/** Reasons of a check that its step tells, the deciding one first; of one that passed like others beside it, one. */
const told = 4;

/** All steps in the order of the work. */
export function stepsSection(context: Context, plots: readonly ReportPlot[]): Section {
  const parts = context.assessment.steps.map((step, i) => stepSection(context, step, i + 1, plots));
  return { id: "steps", title: context.words.of("steps"), blocks: [], parts };
}

function stepSection(
  context: Context,
  step: InstallationStep,
  number: number,
  plots: readonly ReportPlot[],
): Section {
  const { said, words } = context;
  const { name, problems, missing } = step;
  const title = `${number}. ${capital(words.code(`commissioning.step.${name}`))}`;
  return {
    id: name,
    title,
    mark: words.step(step),
    blocks: [
      ...plots
        .filter((plot) => plot.step === name)
        .map(({ title, svg }): Block => ({ kind: "picture", title, svg })),
      ...headsOf(context, step),
      ...checksOf(context, step, title),
      ...(missing.length > 0
        ? [
            text(
              `${said(say("report.not-recorded"))} ${missing.map((path) => fieldText(context, path)).join(", ")}.`,
            ),
          ]
        : []),
      ...listed(
        said(say("report.could-not-be-used")),
        problems.map((one) => problemLine(context, one)),
      ),
      ...assumedOf(context, step),
    ],
  };
}

/** A list under its sentence, or nothing where it is empty. */
const listed = (over: string, items: readonly string[]): Block[] =>
  items.length ? [text(over), ...list(items)] : [];

/** Checks of the runs of a job as columns, the others as lines. */
function checksOf(
  context: Context,
  { name: step, checks }: InstallationStep,
  caption: string,
): Block[] {
  const { words } = context;
  const others: StepCheck[] = [];
  const rows = new Map<string, Map<number, StepCheck>>();
  for (const check of checks) {
    const run = runOf(context, check.path);
    const row = rowOf(context, check);
    const cells = rows.get(row) ?? new Map<number, StepCheck>();
    if (run === undefined || cells.has(run)) others.push(check);
    else rows.set(row, cells.set(run, check));
  }
  const runs = [...new Set([...rows.values()].flatMap((cells) => [...cells.keys()]))].sort();
  const cells = [...rows].map(([row, of]) => [
    row,
    ...runs.map((run) => reasonsOf(context, of.get(run), 1)),
  ]);
  const head = [words.of("check"), ...runs.map((run) => runText(context, run))];
  const title = capital(words.code(`commissioning.step.${step}`));
  const lines = others.map((check) => {
    const isAlone = others.filter(({ name }) => name === check.name).length === 1;
    const reasons = reasonsOf(context, check, isAlone ? told : 1);
    const name = nameOf(context, check);
    return name === title ? reasons : [{ text: `${context.behind(name)} ` }, ...reasons];
  });
  return [...table(caption, head, cells), ...list(lines)];
}

/** What stands before a row of runs: the check, and which of several in a run. */
function rowOf(context: Context, { name, path }: StepCheck): string {
  const place = placeText(context, path).replace(/^[^,]*(, )?/, "");
  return [capital(context.words.code(`commissioning.check.${name}`)), place]
    .filter(Boolean)
    .join(", ");
}

/** A check by its name, and by its place where there are several. */
export function nameOf(context: Context, { name, path }: StepCheck): string {
  const word = capital(context.words.code(`commissioning.check.${name}`));
  return [word, placeText(context, path)].filter(Boolean).join(", ");
}

/** What a check found: its outcome where it is no pass, and its first reasons. */
function reasonsOf(
  { said, words }: Context,
  check: StepCheck | undefined,
  most: number,
): readonly Run[] {
  if (!check) return [{ text: "—" }];
  const { outcome, reasons } = check.assessment;
  const sentences = {
    text: reasons
      .slice(0, outcome === "pass" ? most : told)
      .map(said)
      .join(" "),
  };
  return outcome === "pass" ? [sentences] : [words.outcome(outcome), { text: " " }, sentences];
}

/** What the checks of a step assumed, in a paragraph. */
function assumedOf({ said }: Context, { checks }: InstallationStep): Block[] {
  const all = checks.flatMap(({ assessment }) => assessment.assumptions.map(said));
  if (all.length === 0) return [];
  const sentences = [...new Set(all)].join(" ");
  return [{ kind: "note", text: `${said(say("report.assumed"))} ${sentences}` }];
}

/** Why a step was left out, or does not count yet. */
function headsOf(
  context: Context,
  { waiver, runWaivers = [], fallsAway, blockedBy, outcome }: InstallationStep,
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
  if (blockedBy.length > 0 && outcome === "pass") {
    const steps = blockedBy.map((step) => `commissioning.step.${step}` as const);
    heads.push(text(said(say("report.counts-when-passed", { steps }))));
  }
  return heads;
}

/** What is wrong with a value, and what to do about it. */
const problemLine = ({ said }: Context, { reason, hint }: StepProblem): string =>
  [reason, ...(hint ? [hint] : [])].map(said).join(" ");
