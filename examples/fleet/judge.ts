// What did a change of the rules do to a record? The verdicts on its circuits under
// the rules that it names, and under those that came.
import { type Assessment, overallOutcome } from "hvac-install-math/assessment";
import {
  assessInstallation,
  type CircuitRulesName,
  circuitRules,
  type InstallationRecord,
} from "hvac-install-math/commissioning";
import { recordCodec } from "hvac-install-math/wire";

/** The change: another rule set for the circuits that name one, or the same at a later day, when a date in it has come. */
export interface RuleChange {
  readonly from: CircuitRulesName;
  readonly to: CircuitRulesName;
  /** The day on which the circuits are taken to be installed; that of the record when left out. */
  readonly at?: string | undefined;
}

/** The circuits of a record before and after the change. */
export interface Judged {
  readonly name: string;
  readonly before: string;
  readonly after: string;
  /** The codes of what only one of the two verdicts says. */
  readonly gone: readonly string[];
  readonly fresh: readonly string[];
}

const rules = Object.values(circuitRules);

/** A record with the new rules for each circuit that named the old ones. */
function moved(record: InstallationRecord, { from, to, at }: RuleChange): InstallationRecord {
  if (!record.power?.circuits) return record;
  const circuits = record.power.circuits.map((one) =>
    one.rules === from ? { ...one, rules: to, ...(at && { at }) } : one,
  );
  return { ...record, power: { ...record.power, circuits } };
}

/** The verdicts on the circuits alone: what else was done, and when, did not change. */
function circuitsOf(record: InstallationRecord) {
  const { steps } = assessInstallation(record, { rules });
  const step = steps.find(({ name }) => name === "circuit");
  const verdicts: readonly Assessment<string>[] = step?.checks.map((one) => one.assessment) ?? [];
  const said = verdicts.flatMap(({ reasons, cautions, actions }) => [
    ...reasons,
    ...cautions,
    ...(actions ?? []),
  ]);
  const outcome = verdicts.length > 0 ? overallOutcome(verdicts.map((one) => one.outcome)) : "none";
  return { outcome, codes: [...new Set(said.map(({ code }) => code))] };
}

/** Judges a record twice. One that cannot be read is named as such, and the others are judged. */
export function judgeAgain(text: string, change: RuleChange): Judged {
  let record: InstallationRecord;
  try {
    record = recordCodec.parse(text);
  } catch (error) {
    const name = `unreadable: ${(error as Error).message}`;
    return { name, before: "unreadable", after: "unreadable", gone: [], fresh: [] };
  }
  const [before, after] = [circuitsOf(record), circuitsOf(moved(record, change))];
  return {
    name: record.name ?? "",
    before: before.outcome,
    after: after.outcome,
    gone: before.codes.filter((code) => !after.codes.includes(code)),
    fresh: after.codes.filter((code) => !before.codes.includes(code)),
  };
}
