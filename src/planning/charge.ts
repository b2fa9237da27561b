// How much refrigerant goes in, per run and in total, and how much has to be in the van?
// Follows commissioning, which follows the manual's rule. Does not cover a charge by superheat or subcooling.
import { cite } from "../assessment/assessment.ts";
import { type ManualCharge, manualCharge } from "../commissioning/index.ts";
import type { ChargeAssessment } from "../line-set/index.ts";
import { known } from "../quantity/known.ts";
import { Quantity } from "../quantity/quantity.ts";
import { rounded } from "../quantity/rounded.ts";
import type { Refrigerant } from "../refrigerants/index.ts";
import type { Job, PlannedRun } from "./job.ts";
import { check, item, type Needs, type Share, shareOf } from "./share.ts";
import { say, verbatim } from "./statements.ts";

type Mass = Quantity<"mass">;

/** What hoses, scale and a second try take, as a share of what is added; common practice, no source. */
const reserved = 0.1;

/** Where the arguments of the rule stand in the record. */
const paths = {
  portPairs: "equipment.portPairs",
  allowance: "equipment.manual.chargeAllowance",
  preChargedTotal: "equipment.manual.preChargedLength",
  factoryCharge: "equipment.factoryCharge",
  maximumCharge: "equipment.maximumCharge",
};

/** The charge by the manual's rule; none where the circuit is not opened. */
export function chargeShare(job: Job): Share {
  const { refrigerant, construction } = job;
  if (construction !== "split") return {};
  const lacking = known(() => ruleOf(job))?.missing ?? [];
  const needs: Needs = {
    "equipment.refrigerant": refrigerant,
    ...Object.fromEntries(lacking.map((path) => [ofPlan(path), undefined])),
  };
  const make = (): Share => {
    const { assessment } = ruleOf(job);
    return assessment && refrigerant ? chargeOf(assessment, refrigerant, pathsOfLines(job)) : {};
  };
  const ofRuns = job.runs.map((run, i) => pathsOf(run, `lines[${i}].`));
  const ofOnly = job.runs.slice(0, 1).map((run) => pathsOf(run, ""));
  return shareOf("charge", needs, make, Object.assign({}, ...ofRuns, ...ofOnly, paths));
}

/** Where the arguments of one line stand: a figure of the manual with the run, where the run has one of its own. */
function pathsOf({ run, path }: PlannedRun, prefix: string): Readonly<Record<string, string>> {
  const ofManual = (name: "preChargedLength" | "chargeRate") =>
    `${run.manual?.[name] === undefined ? "equipment" : path}.manual.${name}`;
  return {
    [`${prefix}length`]: `${path}.tubing.way`,
    [`${prefix}preChargedLength`]: ofManual("preChargedLength"),
    [`${prefix}rate`]: ofManual("chargeRate"),
    [`${prefix}allowance`]: `${path}.manual.chargeAllowance`,
  };
}

/** The rule for the planned lengths; readings have no part in it. */
export const ruleOf = ({ record: { equipment, runs } }: Job): ManualCharge =>
  manualCharge({ version: 2, equipment, runs });

/** Before the work the length of a run is asked for as its way. */
const ofPlan = (path: string) => path.replace(".tubing.length", ".tubing.way");

/** The runs in their order, where the rule says something of each. */
const pathsOfLines = ({ runs, manual }: Job): readonly string[] =>
  manual.preChargedFor === "sum" ? [] : runs.map(({ path }) => path);

function chargeOf(
  assessment: ChargeAssessment,
  refrigerant: Refrigerant,
  runs: readonly string[],
): Share {
  const { additionalCharge, totalCharge, outcome, reasons, sources, cautions } = assessment;
  const mass = toFourDigits(additionalCharge);
  const { si, unit } = mass;
  const practice = [cite("common-practice")];
  const ofLines = reasons.filter(isOfLine);
  const perLine = ofLines.filter(({ code }) => /\.(add|take-out|nothing-to-add)$/.test(code));
  const isBlend = refrigerant.composition.length > 1;
  const burns = !refrigerant.safetyClass.endsWith("1");
  const added =
    si > 0
      ? say("planning.added", { mass })
      : si < 0
        ? say("planning.taken-out", { mass: new Quantity(-si, unit) })
        : say("planning.nothing-added");
  const brought = say("planning.refrigerant", {
    refrigerant: verbatim(refrigerant.designation),
    mass,
    reserve: toTwoDigits(new Quantity(reserved * si, unit)),
  });
  return {
    bring: [
      ...(si > 0 ? [item("charge", brought, practice)] : []),
      ...(si > 0 && burns ? [item("charge", say("planning.flammable-cylinder"), practice)] : []),
    ],
    set: [
      ...ofLines.map((one) =>
        item("charge", one, sources, outcome === "pass" ? runs[perLine.indexOf(one)] : undefined),
      ),
      ...(si !== 0 || ofLines.length > 1 ? [item("charge", added, sources)] : []),
      ...(totalCharge
        ? [item("charge", say("planning.label", { mass: toFourDigits(totalCharge) }), sources)]
        : []),
      ...(si > 0 && isBlend ? [item("charge", say("planning.blend-as-liquid"), practice)] : []),
    ],
    check:
      outcome === "pass"
        ? []
        : reasons.slice(0, 1).map((one) => check(outcome, "charge", one, sources)),
    cautions,
  };
}

/** What the rule says of a line, or of all. */
const isOfLine = ({ code }: { readonly code: string }) =>
  /\.(add|take-out|nothing-to-add|allowances|nothing-to-add-in-all)$/.test(code);

const toFourDigits = ({ si, unit }: Mass): Mass => rounded(si, unit, 4);
const toTwoDigits = ({ si, unit }: Mass): Mass => rounded(si, unit, 2);
