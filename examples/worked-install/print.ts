// The commissioning summary as text: each step with its verdict, why, figures, assumptions, cautions
// and sources.
import { type Citation, explain, type Outcome, type Statement } from "hvac-install-math/assessment";
import { sourceById } from "hvac-install-math/sources";
import type { Figure } from "./reader-units.ts";
import type { Installation, Step } from "./steps.ts";

type Show = (value: Figure) => string;

const verdictWords: Record<Outcome, string> = {
  pass: "PASS",
  fail: "FAIL",
  inconclusive: "UNDECIDED",
};

/** The whole summary. */
export function summary(
  { title, about, steps }: Installation,
  outcome: Outcome,
  show: Show,
): string {
  const lines = [
    title,
    "=".repeat(title.length),
    ...about.map(([name, value]) =>
      row(name, isStatement(value) ? explain(value, show) : show(value)),
    ),
    "",
  ];
  steps.forEach((step, i) => {
    lines.push(...stepLines(step, i + 1, show), "");
  });
  lines.push(...cautionLines(steps, show), "", ...sourceLines(steps), "");
  lines.push(`Overall: ${verdictWords[outcome]}`);
  return lines.join("\n");
}

function stepLines({ title, verdict, figures }: Step, number: number, show: Show): string[] {
  const head = `${number}. ${title}: ${verdictWords[verdict.outcome]}`;
  return [
    head,
    "-".repeat(head.length),
    ...verdict.reasons.flatMap((reason) => sentence("  ", reason, show)),
    ...figures.map(([name, value]) => row(name, show(value))),
    ...verdict.assumptions.flatMap((assumption) => sentence("  assumed: ", assumption, show)),
  ];
}

/** Every caution once, with the steps that raise it. */
function cautionLines(steps: readonly Step[], show: Show): string[] {
  const texts = new Set(
    steps.flatMap(({ verdict }) => verdict.cautions.map((one) => explain(one, show))),
  );
  return ["Cautions", "--------", ...[...texts].flatMap((text) => wrapped("  - ", text))];
}

/** Every source once, with the clauses that were used. */
function sourceLines(steps: readonly Step[]): string[] {
  const clauses = new Map<Citation["source"], Set<string>>();
  for (const { source, clause } of steps.flatMap(({ verdict }) => verdict.sources)) {
    const known = clauses.get(source) ?? new Set();
    if (clause) known.add(clause);
    clauses.set(source, known);
  }
  const lines = [...clauses].map(([id, used]) => {
    const { title, edition } = sourceById(id);
    const name = [edition, title].filter(Boolean).join(", ");
    return used.size ? `${name}: ${[...used].join("; ")}` : name;
  });
  return ["Sources", "-------", ...lines.sort().flatMap((text) => wrapped("  - ", text))];
}

function isStatement(value: Figure | Statement): value is Statement {
  return typeof value === "object" && "text" in value;
}

function row(name: string, value: string): string {
  return `  ${`${name} `.padEnd(34, ".")} ${value}`;
}

function sentence(lead: string, said: Statement, show: Show): string[] {
  return wrapped(lead, explain(said, show));
}

/** Text in lines of at most 100 characters, hanging under its first word. */
function wrapped(lead: string, text: string): string[] {
  const lines = [lead.trimEnd()];
  if (lead.trim() === "") lines[0] = lead.slice(0, -1);
  for (const word of text.split(" ")) {
    const last = lines.at(-1) ?? "";
    if (last.length + word.length + 1 > 100) lines.push(" ".repeat(lead.length) + word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}
