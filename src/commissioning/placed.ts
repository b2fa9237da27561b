// Of which step and part of the record does a statement speak? Its place, beside the statement and not in it.
// Follows no standard. Does not cover what it says: each module words its own.
import type { Caution } from "../assessment/caution.ts";
import type { Statement } from "../assessment/statement.ts";
import type { StepName } from "./names.ts";

/**
 * A statement of a verdict on an installation, with the step and the part of the record of which it speaks.
 */
export interface Placed extends Statement {
  /** The step; missing where it is about the whole record. */
  readonly step?: StepName | undefined;
  /** Path of the part, such as `joints[0]`. */
  readonly part?: string | undefined;
}

/** A caution with its place. */
export type PlacedCaution = Caution<Placed>;

/** A statement at its place. */
export function placed<S extends Statement>(said: S, step: StepName, part?: string): S & Placed {
  return { ...said, step, ...(part !== undefined && { part }) };
}

/** Each statement once at each place. */
export function eachOnceAtItsPlace<S extends Placed>(all: readonly S[]): S[] {
  return [...new Map(all.map((one) => [JSON.stringify(one), one])).values()];
}

/** Each statement once, at its first place. */
export function eachOnce<S extends Statement>(all: readonly S[]): S[] {
  const said = new Map<string, S>();
  for (const one of all) {
    const key = JSON.stringify([one.code, one.values]);
    if (!said.has(key)) said.set(key, one);
  }
  return [...said.values()];
}
