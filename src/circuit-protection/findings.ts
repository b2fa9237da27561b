// What does a check find? One form for all of them, and the verdict that they make together.
// Follows the standing of the rules: a point that is not confirmed decides only where its rule set allows it.
// Does not cover what is checked: the files named judge-… do.
import {
  type Assessment,
  type Citation,
  verdict as finish,
  type Outcome,
} from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { danger } from "../assessment/safety.ts";
import type { CircuitRules, RulePoint } from "./rules/index.ts";
import { type CircuitPart, type CircuitProtectionStatement, say, verbatim } from "./statements.ts";

type Said = CircuitProtectionStatement;

/** One thing that a check found. */
export type Finding =
  | {
      readonly as: Outcome;
      readonly part?: CircuitPart | undefined;
      readonly said: Said;
      readonly actions?: readonly Said[] | undefined;
    }
  | { readonly as: "assumption" | "finding"; readonly said: Said }
  | { readonly as: "memory"; readonly clause: string }
  | Unconfirmed;

/** A point that this library does not know well enough, which leaves the outcome open until somebody verified it. */
export interface Unconfirmed {
  readonly as: "unconfirmed";
  readonly clause: string;
  readonly part: CircuitPart;
  readonly said: Said;
  readonly actions: readonly Said[];
  /** What stands all the same once it was verified. */
  readonly besides: readonly Finding[];
  /** Whether nothing waits for it: by what is held of it here it is met, and it need not have been stated. */
  readonly isNoted?: boolean;
}

/** Asks for what is missing, or says why it cannot be decided. */
export const open = (said: Said, ...actions: readonly Said[]): Finding => ({
  as: "inconclusive",
  said,
  actions,
});
/** Lists what was taken because it was not stated. */
export const assumed = (said: Said): Finding => ({ as: "assumption", said });
/** Says what a pass would hide. */
export const noted = (said: Said): Finding => ({ as: "finding", said });

/** How a requirement reads when it is met, when it is not, and what to do then. */
export interface Wording {
  readonly met: Said;
  readonly broken: Said;
  readonly actions: readonly Said[];
}

/** A requirement judged by its points, which decide nothing where they are not good enough for the rule set. */
export function judged(
  rules: CircuitRules,
  points: readonly RulePoint[],
  part: CircuitPart,
  ok: boolean,
  { met, broken, actions }: Wording,
): Finding[] {
  const weak = points.filter((point) => rules.points[point]?.standing !== "confirmed");
  const undecided = weak.filter((point) => !decides(rules, point));
  if (undecided.length > 0) {
    // What rests on nothing else is noted; where a confirmed figure counts too, nobody's word covers it.
    const short = undecided.length < points.length ? open(broken, ...actions) : noted(broken);
    return undecided.map((point) => notConfirmed(rules, point, part, ok ? [] : [short]));
  }
  const memory = weak.filter((point) => rules.points[point]?.standing === "memory");
  return [
    ok ? { as: "pass", part, said: met } : { as: "fail", part, said: broken, actions },
    ...memory.map((point): Finding => ({ as: "memory", clause: clauseOf(rules, point) })),
  ];
}

/** Whether a point decides under its rule set. */
export function decides({ points, onlyConfirmed }: CircuitRules, point: RulePoint): boolean {
  const standing = points[point]?.standing;
  return standing === "confirmed" || (!onlyConfirmed && standing !== "missing" && !!standing);
}

/** Where a point stands in the rule book. */
export const clauseOf = ({ points }: CircuitRules, point: RulePoint): string =>
  points[point]?.clause ?? "";

/** A point that decides nothing, with its clause. */
export function notConfirmed(
  set: CircuitRules,
  point: RulePoint,
  part: CircuitPart,
  besides: readonly Finding[] = [],
): Unconfirmed {
  const [clause, rules] = [verbatim(clauseOf(set, point)), verbatim(set.name)];
  const said = say("circuit-protection.not-confirmed", {
    point: `circuit-protection.point.${point}`,
    clause,
    rules,
  });
  return toVerify(set, clauseOf(set, point), part, said, besides);
}

/** What has to be checked by the text of a clause. */
export function toVerify(
  { name }: CircuitRules,
  clause: string,
  part: CircuitPart,
  said: Said,
  besides: readonly Finding[] = [],
): Unconfirmed {
  const where = { clause: verbatim(clause), rules: verbatim(name) };
  const actions = [say("circuit-protection.ask-authority", where)];
  return { as: "unconfirmed", clause, part, said, actions, besides };
}

/** The verdict: what failed first, then what is open, then what is met; each thing said once. */
export function verdictOf(
  findings: readonly Finding[],
  sources: readonly Citation[],
): Assessment<CircuitPart, CircuitProtectionStatement> {
  const of = (outcome: Outcome) =>
    findings.flatMap((one) => (one.as === outcome ? [one as Judgment] : []));
  const [failed, met] = [of("fail"), of("pass")];
  const unconfirmed = unconfirmedOf(findings);
  const asked = [...of("inconclusive"), ...unconfirmed];
  const said = (as: "assumption" | "finding") =>
    once(findings.flatMap((one) => (one.as === as ? [(one as { said: Said }).said] : [])));
  const idle = findings.flatMap((one) =>
    one.as === "unconfirmed" && one.isNoted ? [one.said] : [],
  );
  const remembered = findings.flatMap((one) => (one.as === "memory" ? [one.clause] : []));
  const clauses = [...new Set(remembered)].map(verbatim);
  const isLeftToVerify = asked.length > 0 && asked.length === unconfirmed.length;
  const cause = failed[0]?.part ?? (isLeftToVerify ? ("not-confirmed" as const) : undefined);
  return finish({
    outcome: failed.length ? "fail" : asked.length ? "inconclusive" : "pass",
    ...(cause && { cause }),
    reasons: once([...failed, ...asked, ...met].map((one) => one.said)),
    assumptions: said("assumption"),
    cautions: [
      ...[
        ...said("finding"),
        ...idle,
        ...(clauses[0] ? [say("circuit-protection.from-memory", { clauses })] : []),
      ].map((one) => caution("finding", one)),
      danger("safety.line-voltage"),
    ],
    actions: once([...failed, ...asked].flatMap(({ actions = [] }) => actions)),
    sources,
  });
}

/** The points that wait to be verified. */
export const unconfirmedOf = (findings: readonly Finding[]): readonly Unconfirmed[] =>
  findings.flatMap((one) => (one.as === "unconfirmed" && !one.isNoted ? [one] : []));

type Judgment = Extract<Finding, { readonly as: Outcome }>;

/** Each statement once. */
const once = (statements: readonly Said[]): Said[] => [
  ...new Map(statements.map((one) => [JSON.stringify(one), one])).values(),
];
