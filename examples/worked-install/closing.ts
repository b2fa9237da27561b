// Which cautions and sources does a person read at the end of a summary? Every caution, and the sources that are used
// most; `--all` prints every source, and so does the report.
import { type Caution, label } from "hvac-install-math/assessment";
import type { InstallationAssessment } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { sourceById } from "hvac-install-math/sources";

/** Findings, dangers, and who governs; a danger is marked as one. */
export function cautionTexts(
  { cautions }: InstallationAssessment,
  say: (caution: Caution) => string,
): string[] {
  return cautions.map((one) =>
    one.kind === "danger"
      ? `${label("assessment.caution.danger", english)}: ${say(one)}`
      : say(one),
  );
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
