// What does one part add to a plan, and what does it lack? A line whose needs are absent becomes a question.
// Follows the library's own rule: a figure of a manual is never guessed. Does not cover what a part computes.
import type { Citation, Outcome } from "../assessment/assessment.ts";
import type { Caution } from "../assessment/caution.ts";
import type { Single, Statement } from "../assessment/statement.ts";
import type { FieldWord } from "../commissioning/index.ts";
import { isInvalidInputError } from "../quantity/errors.ts";
import type { PlanCheck, PlanItem, PlanQuestion } from "./plan.ts";
import { type PlanPart, say, verbatim } from "./statements.ts";

/** What one part adds. */
export interface Share {
  readonly bring?: readonly PlanItem[];
  readonly set?: readonly PlanItem[];
  readonly check?: readonly PlanCheck[];
  readonly ask?: readonly PlanQuestion[];
  readonly cautions?: readonly Caution[];
}

/** What a part needs, by the paths of the record. */
export type Needs = Readonly<Record<string, unknown>>;

/** A line of the plan. */
export function item(
  part: PlanPart,
  said: Statement,
  sources: readonly Citation[],
  path?: string,
): PlanItem {
  return { ...said, part, sources, ...(path !== undefined && { path }) };
}

/** A line with its outcome. */
export const check = (outcome: Outcome, ...line: Parameters<typeof item>): PlanCheck => ({
  ...item(...line),
  outcome,
});

/** The word for a field of the record. */
const fieldWord = (path: string) =>
  `commissioning.field.${path.replace(/\[\d+\]/g, "")}` as FieldWord;

/** That a field is missing. */
export const question = (path: string, part: PlanPart): PlanQuestion => ({
  ...say("planning.ask", { field: fieldWord(path), changes: [`planning.part.${part}`] }),
  path,
  changes: [part],
});

/**
 * What a part adds once everything is there that it needs; else the questions. A value that can't be used is asked
 * about too: at the field that `paths` names for the argument, else at the field that holds this value.
 */
export function shareOf(
  part: PlanPart,
  needs: Needs,
  make: () => Share,
  paths: Readonly<Record<string, string>> = {},
): Share {
  const absent = Object.keys(needs).filter((path) => needs[path] === undefined);
  if (absent.length > 0) return { ask: absent.map((path) => question(path, part)) };
  try {
    return make();
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    const { argument, value, bound } = error;
    const known = Object.keys(paths).find((one) => argument.startsWith(one));
    const fields = Object.keys(needs);
    const holding = fields.find((one) => bound && needs[one] === bound.value) ?? fields[0];
    const path = (known ? paths[known] : holding) as string;
    const said = say("planning.unusable", { field: fieldWord(path), value: verbatim(value) });
    return { ask: [{ ...said, path, changes: [part] }] };
  }
}

/** The parts together, in their order. */
export const together = (shares: readonly Share[]): Required<Share> => ({
  bring: shares.flatMap((one) => one.bring ?? []),
  set: shares.flatMap((one) => one.set ?? []),
  check: shares.flatMap((one) => one.check ?? []),
  ask: shares.flatMap((one) => one.ask ?? []),
  cautions: shares.flatMap((one) => one.cautions ?? []),
});

/** Each question once: of which runs it is asked, and everything that it changes. */
export function askedOnce(
  questions: readonly PlanQuestion[],
  called: (path: string) => Single | undefined,
): PlanQuestion[] {
  const groups = new Map<string, PlanQuestion[]>();
  for (const one of questions) {
    const key = one.code === "planning.ask" ? fieldWord(one.path) : `${one.code} ${one.path}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].map((same) => {
    const [first] = same as [PlanQuestion];
    if (first.code !== "planning.ask") return first;
    const changes = [...new Set(same.flatMap((one) => one.changes))];
    const runs = [...new Set(same.flatMap(({ path }) => called(path) ?? []))];
    const asked = {
      field: fieldWord(first.path),
      changes: changes.map((part) => `planning.part.${part}` as const),
    };
    const said =
      runs.length > 0
        ? say("planning.ask-of-runs", { ...asked, runs })
        : say("planning.ask", asked);
    return { ...said, path: first.path, changes };
  });
}
