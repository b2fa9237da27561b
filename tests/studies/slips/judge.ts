// What does the library answer to a slip, and to its unslipped twin?
// A record is judged whole, with every rule set; a function is called. Does not cover what is right: the data says that.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { isInvalidInputError } from "hvac-install-math/quantity";
import { valueAt, withValue } from "../../../src/commissioning/format/path-values.ts";
import { segmentsOf } from "../../../src/shapes/index.ts";
import { assessInstallation } from "../../commissioning/assess.ts";
import type { Change, RightAnswer, Slip } from "./slip.ts";
import { calls, records, refrigerants, type Said } from "./sound.ts";

/** What came of an input. */
export interface Answer {
  readonly outcome: "refused" | "fail" | "inconclusive" | "pass";
  /** Codes of what decided, or what was refused. */
  readonly because: readonly string[];
  /** Codes of its findings. */
  readonly findings: readonly string[];
}

/** The answer to a slip, as the catalogue sorts them. */
export type Shown = Exclude<RightAnswer, "unknowable"> | "pass";

/** The input of the twin: the sound one with what the slip needs beside it. */
export const twinOf = ({ sound, given }: Slip): unknown =>
  spoiled(records[sound] ?? calls[sound]?.input, given);

/** The input with the slip in it. */
export const slippedOf = (slip: Slip): unknown => spoiled(twinOf(slip), slip.typed);

/** A copy of the input with other values at some paths; what is typed as null is left out. */
function spoiled(input: unknown, changes: Change): unknown {
  let result = input;
  for (const [path, typed] of Object.entries(changes)) {
    const value = typed === null ? undefined : copied(input, typed);
    result = withValue(result, segmentsOf("path", path), value);
  }
  return result;
}

/** `= runs[0]` is what stands there, `= R22` a refrigerant. */
function copied(input: unknown, typed: unknown): unknown {
  if (typeof typed !== "string" || !typed.startsWith("= ")) return typed;
  const from = typed.slice(2);
  return refrigerants[from] ?? valueAt(input, segmentsOf("path", from));
}

/** What the library answers to an input of this name. */
export function answerTo(sound: string, input: unknown): Answer {
  try {
    return records[sound]
      ? ofRecord(input as InstallationRecord)
      : ofCall(calls[sound]?.call(input) ?? {});
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    return { outcome: "refused", because: [`${error.argument}: ${error.allowed}`], findings: [] };
  }
}

function ofCall({ outcome = "pass", reasons = [], cautions = [], ...rest }: Said): Answer {
  return {
    outcome: "refused" in rest ? "refused" : outcome,
    because: reasons.map(({ code }) => code),
    findings: findingsOf(cautions),
  };
}

/** A value of a record that no check can use is refused where it stands, and the other steps are judged. */
function ofRecord(record: InstallationRecord): Answer {
  const { outcome, deciding, cautions, steps, missing } = assessInstallation(record);
  const problems = steps.flatMap((step) => step.problems);
  const refused = outcome === "inconclusive" && problems.length > 0;
  return {
    outcome: refused ? "refused" : outcome,
    because: [
      ...problems.map(({ path, reason }) => `${path}: ${reason.code}`),
      ...deciding.map(({ code }) => code),
      ...missing,
    ],
    findings: findingsOf(cautions),
  };
}

const findingsOf = (
  cautions: readonly { readonly kind?: string | undefined; readonly code: string }[],
) => cautions.filter(({ kind }) => kind === "finding").map(({ code }) => code);

/** How the answer to a slip is sorted, beside the answer to its twin. */
export function shown(slipped: Answer, twin: Answer): Shown {
  if (slipped.outcome !== "pass") return slipped.outcome;
  return slipped.findings.some((code) => !twin.findings.includes(code)) ? "finding" : "pass";
}
