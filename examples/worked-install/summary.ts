// The commissioning summary as text for a terminal of 80 columns: first what decides and what may not be
// done yet, then every step with its reasons and figures, then cautions and sources.
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
    ...result.steps.map((step, i) =>
      row(`${String(i + 1).padStart(2)}. ${nameOf(step)}`, wordOf(step)),
    ),
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
    ...result.steps.flatMap((step, i) => [...stepLines(record, step, i + 1, show), ""]),
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
      wrapped("  cannot be used: ", `${path}: ${explain(reason, english, show)}`),
    ),
    ...(missing.length ? wrapped("  not recorded: ", `${missing.join(", ")}.`) : []),
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
    const name = key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
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

const stepWord = (name: StepName) => label(`commissioning.step.${name}`, english);
const nameOf = ({ name }: InstallationStep) => capital(stepWord(name));

function wordOf({ state, outcome, missing }: InstallationStep): string {
  const stateWord = label(`commissioning.step-state.${state}`, english);
  if (state === "not-applicable") return stateWord.toUpperCase();
  if (state === "missing") return `${wordFor(outcome)} (${stateWord})`;
  const incomplete = outcome === "inconclusive" && missing.length > 0;
  return incomplete
    ? `${wordFor(outcome)} (${label("commissioning.step-state.partial", english)})`
    : wordFor(outcome);
}

/** With a capital letter. */
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function row(name: string, value: string): string {
  return `  ${`${name} `.padEnd(26, ".")} ${value}`;
}
