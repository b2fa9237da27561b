// What is wrong with a value that no check could use? A statement, made from the refusal of the module.
// Follows quantity/errors.ts. Does not cover what may stand there: the modules say.
import type { Statement } from "../assessment/statement.ts";
import { isOfKind } from "../quantity/check.ts";
import type { InvalidInputError } from "../quantity/errors.ts";
import type { AnyQuantity } from "../quantity/json.ts";
import { segmentsOf } from "../shapes/index.ts";
import { valueAt } from "./format/index.ts";
import type { CheckName } from "./names.ts";
import type { InstallationRecord } from "./record.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import { fieldWord, verbatim } from "./words.ts";

/** A value that no check could use. */
export interface StepProblem {
  /** The check that could not be made. */
  readonly check: CheckName;
  /** Path of the field of the record. */
  readonly path: string;
  /** What is wrong with what stands there. */
  readonly reason: CommissioningStatement;
  /** What to do about it, where there is something to say. */
  readonly hint?: Statement | undefined;
}

/** A value that a module refused. */
export interface Refusal {
  readonly check: CheckName;
  readonly path: string;
  readonly error: InvalidInputError;
}

/** What a refusal is about, in the words of the record. */
export function problemOf(
  record: InstallationRecord,
  { check, path, error }: Refusal,
): StepProblem {
  const { hint } = error;
  return { check, path, reason: reasonOf(record, path, error), ...(hint && { hint }) };
}

function reasonOf(
  record: InstallationRecord,
  path: string,
  { argument, bound }: InvalidInputError,
): CommissioningStatement {
  const field = fieldWord(path);
  // A list is told by its length, which is a number; a length of line is a quantity.
  if (bound && typeof bound.value === "number" && argument.endsWith(".length")) {
    const { value: count, limit } = bound as { value: number; limit: number };
    return say(`commissioning.${count < limit ? "too-few-entries" : "too-many-entries"}`, {
      field,
      count,
      limit,
    });
  }
  if (bound) {
    const { value, is, limit } = bound;
    return say(`commissioning.value-${sides[is]}`, { field, value, limit });
  }
  const value = valueAt(record, segmentsOf("path", path));
  if (value === undefined || (typeof value === "object" && !isOfKind(value))) {
    return say("commissioning.unusable-part", { field });
  }
  const shown =
    typeof value === "number" || isOfKind(value)
      ? (value as AnyQuantity | number)
      : verbatim(String(value));
  return say("commissioning.unusable-value", { field, value: shown });
}

const sides = { min: "too-low", above: "not-above", max: "too-high", below: "not-below" } as const;
