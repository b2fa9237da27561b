// Collects what a check finds and turns it into the common verdict.
// Follows no standard; the shape is the library's own.
// Does not cover the cautions that every result carries: those are in work-cautions.ts.
import {
  type Assessment,
  type Outcome,
  type Statement,
  statement,
} from "../assessment/assessment.ts";

type Values = Statement["values"];

/**
 * What a circuit can fail on, and what is checked.
 *
 * Source: none; the library's own names.
 */
export type CircuitPart =
  | "device-rating"
  | "device-kind"
  | "device-poles"
  | "device-voltage"
  | "conductor"
  | "equipment-grounding"
  | "disconnect-rating"
  | "disconnect-fuse"
  | "disconnect-place"
  | "working-space"
  | "voltage-drop";

/** The open list of one assessment. */
export interface Findings {
  readonly failed: (Statement & { readonly part: CircuitPart })[];
  readonly open: Statement[];
  readonly met: Statement[];
  readonly assumptions: Statement[];
  readonly cautions: Statement[];
}

/** Starts an empty list. */
export const noFindings = (): Findings => ({
  failed: [],
  open: [],
  met: [],
  assumptions: [],
  cautions: [],
});

/** Notes a requirement as met or not met. */
export function judge(
  findings: Findings,
  ok: boolean,
  part: CircuitPart,
  text: string,
  values: Values = {},
): void {
  if (ok) findings.met.push(statement(`${part}-met`, `Met: ${text}`, values));
  else findings.failed.push({ ...statement(`${part}-not-met`, `Not met: ${text}`, values), part });
}

/** The verdict: what failed first, then what is open, then what is met. */
export function verdict(findings: Findings): Omit<Assessment<CircuitPart>, "sources"> {
  const { failed, open, met, assumptions, cautions } = findings;
  const outcome: Outcome = failed.length ? "fail" : open.length ? "inconclusive" : "pass";
  const [first] = failed;
  return {
    outcome,
    ...(first && { cause: first.part }),
    reasons: [...failed.map(({ part: _, ...reason }) => reason), ...open, ...met],
    assumptions,
    cautions,
  };
}
