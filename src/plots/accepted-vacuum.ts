// What does a policy accept, as levels over time? Its checkpoints in SI. Internal.
// Source: the policy's own. Does not cover the guard band, which the assessment has applied.
import { listOf, objectOf, siOf } from "../quantity/check.ts";
import type { AcceptancePolicy } from "../vacuum-decay/index.ts";

/** A stretch of the hold: s, and Pa. */
export interface Accepted {
  readonly since: number;
  readonly at: number;
  readonly limit: number;
  /** Whether the level is a rise from the first reading. */
  readonly isRise: boolean;
  /** 0 where the policy has none. */
  readonly failAbove: number;
}

/** The stretches that the checkpoints make; a rise counts from the first reading. */
export function acceptedOf(policy: AcceptancePolicy, first: number): Accepted[] {
  const { checkpoints } = objectOf("policy", policy);
  listOf("policy.checkpoints", checkpoints, Infinity, 1);
  let before = 0;
  return (checkpoints as AcceptancePolicy["checkpoints"]).map((one, i) => {
    const path = `policy.checkpoints[${i}]`;
    const { at, limit, rise, failAbove } = objectOf(path, one);
    const since = before;
    before = siOf(`${path}.at`, at, "duration", { above: before });
    const level =
      limit !== undefined
        ? siOf(`${path}.limit`, limit, "absolutePressure", { above: 0 })
        : first + siOf(`${path}.rise`, rise as never, "pressureDifference", { min: 0 });
    return {
      since,
      at: before,
      limit: level,
      isRise: limit === undefined,
      failAbove:
        failAbove === undefined ? 0 : siOf(`${path}.failAbove`, failAbove, "absolutePressure"),
    };
  });
}
