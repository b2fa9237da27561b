// The commissioning summary as text for a terminal of 80 columns, in the order of the report: what decides, what to do
// next, what may not be done yet, every step in a line; then the steps with their figures, what fails first; then cautions
// and sources.
import {
  type Assessment,
  explain,
  label,
  type Outcome,
  type Statement,
} from "hvac-install-math/assessment";
import type {
  CheckName,
  InstallationAssessment,
  InstallationRecord,
  InstallationStep,
  Placed,
  StepName,
} from "hvac-install-math/commissioning";
import { figureText, type UnitSystem } from "hvac-install-math/display";
import { english } from "hvac-install-math/language/en";
import { ft, isQuantity, m, type Quantity } from "hvac-install-math/quantity";
import { cautionTexts, sourceTexts } from "./closing.ts";
import { bullets, title, wrapped } from "./text.ts";

const wordFor = (outcome: Outcome) => label(`assessment.outcome.${outcome}`, english);

/** The whole summary; with `all` also the sources that few people read. */
export function summary(
  record: InstallationRecord,
  result: InstallationAssessment,
  system: UnitSystem,
  all: boolean,
): string {
  const show = figureText({ system });
  const say = (said: Statement) => explain(said, english, show);
  const sayPlaced = (said: Placed) => {
    const place = [said.step && capital(stepWord(said.step)), jointOf(record, said.part)];
    return [...place.filter(Boolean), say(said)].join(": ");
  };
  const verdict = `Overall: ${wordFor(result.outcome)}`;
  const { deciding, actions } = result;
  return [
    ...title(`Commissioning summary: ${record.site?.name ?? "no site named"}`, "="),
    ...wrapped("", record.name ?? ""),
    ...wrapped(
      "",
      aboutText(record, (altitude) => show(altitude, system === "SI" ? m(1) : ft(1))),
    ),
    "",
    verdict,
    "",
    ...(deciding.length
      ? [...title("What decides", "-"), ...bullets(deciding.map(sayPlaced)), ""]
      : []),
    ...(actions.length
      ? [...title("What to do next", "-"), ...bullets(actions.map(sayPlaced)), ""]
      : []),
    ...title("Hold points", "-"),
    ...result.holds.flatMap(({ name, state, reason }) =>
      wrapped(
        `  ${capital(label(`commissioning.hold.${name}`, english))}: `,
        `${label(`commissioning.hold-state.${state}`, english).toUpperCase()}. ${say(reason)}`,
      ),
    ),
    "",
    ...result.steps.map((step, i) =>
      row(`${String(i + 1).padStart(2)}. ${nameOf(step)}`, wordOf(step)),
    ),
    "",
    ...failingFirst(result.steps).flatMap((step) => [
      ...stepLines(record, step, result.steps.indexOf(step) + 1, show),
      "",
    ]),
    ...title("Assumed", "-"),
    ...bullets(result.assumptions.map(say)),
    "",
    ...title("Cautions", "-"),
    ...bullets(cautionTexts(result, say)),
    "",
    ...title("Sources", "-"),
    ...bullets(sourceTexts(result, all)),
    "",
    verdict,
  ].join("\n");
}

/** What fails, then what is open, then what passed, each in the order of the work. */
function failingFirst(steps: readonly InstallationStep[]): InstallationStep[] {
  const place = ({ outcome, state }: InstallationStep) =>
    state === "not-applicable" ? 3 : ["fail", "inconclusive", "pass"].indexOf(outcome);
  return [...steps].sort((a, b) => place(a) - place(b));
}

/** Unit, refrigerant and place in a line. */
function aboutText(
  { site, equipment }: InstallationRecord,
  show: (altitude: Quantity<"length">) => string,
): string {
  const { outdoorUnit, refrigerant } = equipment ?? {};
  const high = site?.altitude && `${show(site.altitude)} above the sea`;
  return [outdoorUnit?.model, refrigerant, high].filter(Boolean).join(", ");
}

type Show = ReturnType<typeof figureText>;

function stepLines(
  record: InstallationRecord,
  step: InstallationStep,
  number: number,
  show: Show,
): string[] {
  const { checks, problems, missing, blockedBy, waiver } = step;
  const several = checks.length > 1;
  return [
    ...title(`${number}. ${nameOf(step)}: ${wordOf(step)}`, "-"),
    ...(waiver
      ? wrapped(
          "  ",
          `${waiver.reason && capital(label(`commissioning.waiver.${waiver.reason}`, english))}: ${waiver.by}, ${waiver.at}.`,
        )
      : []),
    ...(step.name === "pressure-test" ? gaugeLines(record, show) : []),
    ...checks.flatMap(({ name, path, assessment }) => {
      const reasons = assessment.reasons.map((reason) => explain(reason, english, show));
      const indent = several ? "    " : "  ";
      return [
        ...(several ? [`  ${checkName(record, name, path)}: ${wordFor(assessment.outcome)}`] : []),
        ...reasons.flatMap((text) => wrapped(indent, text)),
        ...figuresOf(assessment, show)
          .filter(([, figure]) => !reasons.some((text) => text.includes(figure)))
          .map(([figureName, figure]) => `${indent.slice(2)}${row(figureName, figure)}`),
      ];
    }),
    ...problems.flatMap(({ path, reason }) =>
      wrapped("  cannot be used: ", `${fieldWord(path)}: ${explain(reason, english, show)}`),
    ),
    ...(missing.length ? wrapped("  not recorded: ", `${missing.map(fieldWord).join(", ")}.`) : []),
    ...(blockedBy.length ? wrapped("  waits for: ", `${blockedBy.map(stepWord).join(", ")}.`) : []),
  ];
}

/** What the gauge showed: a pressure that rose with the weather can hide a leak. */
function gaugeLines({ pressureTests = [] }: InstallationRecord, show: Show): string[] {
  const [first, ...more] = pressureTests[0]?.readings ?? [];
  const last = more.at(-1);
  if (!first || !last) return [];
  const known = (figure: Parameters<Show>[0] | undefined) =>
    figure === undefined ? "?" : show(figure);
  const warm = ({ temperature }: typeof first) => [temperature].flat().map(known);
  const text = (reading: typeof first) =>
    `${known(reading.pressure)} at ${warm(reading).join(" and ")}`;
  return wrapped("  ", `The gauge showed ${text(first)} first, ${text(last)} last.`);
}

/** The figures of a verdict, with their uncertainty where they have one, by name. */
function figuresOf(assessment: Assessment<string>, show: Show): [name: string, figure: string][] {
  return Object.entries(assessment).flatMap(([key, one]) => {
    const name = wordOr(`report.figure.${key}`, key);
    if (isQuantity(one)) return one.si === 0 ? [] : [[name, show(one)]];
    if (!isQuantity(one?.value) || !isQuantity(one?.expandedUncertainty)) return [];
    const k = Number(one.coverageFactor.toPrecision(3));
    return [[name, `${show(one.value)} ± ${show(one.expandedUncertainty)} (k = ${k})`]];
  });
}

/** A check by its name, and by the joint that it is about. */
function checkName(record: InstallationRecord, name: CheckName, path: string): string {
  const joint = jointOf(record, path);
  return [capital(label(`commissioning.check.${name}`, english)), joint].filter(Boolean).join(", ");
}

/** The name of the joint that a path of the record means. */
function jointOf({ runs = [] }: InstallationRecord, path = ""): string | undefined {
  const [, run, joint] = /^runs\[(\d+)\]\.joints\[(\d+)\]$/.exec(path) ?? [];
  return joint === undefined ? undefined : runs[Number(run)]?.joints?.[Number(joint)]?.name;
}

/** A word of the language; what it has none for stays as it is. */
const wordOr = (code: string, otherwise: string) =>
  Object.hasOwn(english.messages, code) ? label(code, english) : otherwise;

/** A field of the record in words. */
const fieldWord = (path: string) =>
  wordOr(`commissioning.field.${path.replace(/\[\d+\]/g, "")}`, path);

const stepWord = (name: StepName) => label(`commissioning.step.${name}`, english);
const nameOf = ({ name }: InstallationStep) => capital(stepWord(name));

/** The outcome of a step; beside it what keeps it from counting. */
function wordOf({ state, outcome, missing, blockedBy }: InstallationStep): string {
  const stateWord = label(`commissioning.step-state.${state}`, english);
  if (state === "not-applicable") return stateWord.toUpperCase();
  if (outcome === "pass" && blockedBy.length > 0) {
    return `${wordFor(outcome)} (${label("report.label.not-yet", english)})`;
  }
  const isIncomplete = outcome === "inconclusive" && (state === "missing" || missing.length > 0);
  return isIncomplete ? `${wordFor(outcome)} (${stateWord})` : wordFor(outcome);
}

/** With a capital letter. */
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function row(name: string, value: string): string {
  return `  ${`${name} `.padEnd(26, ".")} ${value}`;
}
