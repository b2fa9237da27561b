// What has to be heeded? Findings of the case first, then what can hurt someone, then who governs.
// Common practice, no source.
// Does not cover what to do next: the actions of a verdict say that.
import { frozen } from "../quantity/frozen.ts";
import type { Statement } from "./statement.ts";

/**
 * What a caution is: a `finding` of this case, which a pass would hide; a `danger`, which can hurt someone in this
 * work; or what is `governing`: nameplate, manual, code and license.
 */
export type CautionKind = "finding" | "danger" | "governing";

/**
 * Something to heed, with its kind.
 */
export type Caution<S extends Statement = Statement> = S & {
  /** Whether it is found in this case, can hurt someone, or governs. */
  readonly kind?: CautionKind | undefined;
};

/** A statement as a caution of a kind. */
export function caution<S extends Statement>(kind: CautionKind, said: S): Caution<S> {
  return frozen({ ...said, kind });
}

/** Findings, dangers, then what governs; what is said twice is left once, where it was said first. */
export function inOrder<S extends Statement>(cautions: readonly Caution<S>[]): Caution<S>[] {
  const said = new Set<string>();
  const all = cautions.filter(({ code, values }) => {
    const key = JSON.stringify([code, values]);
    return !said.has(key) && said.add(key);
  });
  return order.flatMap((kind) => all.filter((one) => (one.kind ?? "finding") === kind));
}

const order: readonly CautionKind[] = ["finding", "danger", "governing"];
