// Which cautions and sources does a person read at the end of a summary? The gravest and the most used; `--all`
// prints every one of them, and so does the report.
import type { Caution } from "hvac-install-math/assessment";
import type { InstallationAssessment } from "hvac-install-math/commissioning";
import { sourceById } from "hvac-install-math/sources";

/** What can kill comes first; of cautions that warn of the same, one. Codes are stable, sentences are not. */
const gravest = [
  /^mains/,
  /^flammable$/,
  /^dry-nitrogen-only$/,
  /^nameplate-limits$/,
  /^(oxygen|vent-outdoors)$/,
  /^pressure$/,
  /^height$/,
];

/** What is wrong with this record, the gravest cautions of its steps, and who has the last word. */
export function cautionTexts(
  { cautions, steps }: InstallationAssessment,
  say: (caution: Caution) => string,
  all: boolean,
): string[] {
  if (all) return cautions.map(say);
  const checks = steps.flatMap((step) => step.checks);
  const ofSteps = new Set(checks.flatMap(({ assessment }) => assessment.cautions.map(say)));
  const ofRecord = cautions.filter((one) => !ofSteps.has(say(one)));
  const last = ofRecord.pop(); // what this judges and what governs
  const grave = gravest.flatMap((code) => cautions.find((one) => code.test(one.code)) ?? []);
  const chosen = new Set([...ofRecord, ...grave, ...(last ? [last] : [])].map(say));
  return [...chosen, ...more(cautions.length - chosen.size)];
}

/** Every source once: those that most steps and clauses stand on, or all with the clauses that were used. */
export function sourceTexts({ sources, steps }: InstallationAssessment, all: boolean): string[] {
  const ids = [...new Set(sources.map(({ source }) => source))];
  const nameOf = (id: (typeof ids)[number]) => {
    const { title, edition } = sourceById(id);
    return [edition, title].filter(Boolean).join(", ");
  };
  const clausesOf = (id: string) =>
    sources.flatMap(({ source, clause }) => (source === id && clause) || []);
  if (all)
    return ids
      .map((id) => [nameOf(id), clausesOf(id).join("; ")].filter(Boolean).join(": "))
      .sort();
  const cites = ({ checks }: (typeof steps)[number], id: string) =>
    checks.some(({ assessment }) => assessment.sources.some(({ source }) => source === id));
  const weight = (id: string) =>
    clausesOf(id).length + steps.filter((step) => cites(step, id)).length;
  const first = ids.sort((a, b) => weight(b) - weight(a)).slice(0, 8);
  return [...first.map(nameOf), ...more(ids.length - first.length)];
}

const more = (count: number): string[] =>
  count > 0 ? [`${count} more: add --all, or write the report.`] : [];
