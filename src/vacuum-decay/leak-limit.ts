// Which leak is too large for a vacuum that passes? The policy's limit, or less where the caller states less.
// Common practice, no source, where the policy names none. Does not cover what a leak loses: loss.ts.

import { siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import { micronPerMinute } from "../quantity/units/pressure.ts";
import { commonLeakLimit } from "./policies/index.ts";
import { usualVolume } from "./tuning.ts";

/** A leak limit, in Pa·m³/s and, for the volume, in Pa/s. */
export interface LeakLimit {
  readonly throughput: number;
  readonly rate: number;
  /** Whether the caller stated it: then a leak above it fails even where it would not matter otherwise. */
  readonly stated: boolean;
}

/**
 * The limit that counts: the policy's, else the common one; the caller's where it is less, never where it is more. What
 * nobody stated falls with the volume below the usual one: a leak of so many micron a minute then is as large a part of a
 * charge that is as much smaller.
 */
export function leakLimitOf(
  stated: Quantity<"throughput"> | Quantity<"pressureRate"> | undefined,
  ofPolicy: Quantity<"throughput"> | undefined,
  volume: number,
): LeakLimit {
  const most =
    ofPolicy === undefined
      ? commonLeakLimit.si
      : siOf("policy.leakLimit", ofPolicy, "throughput", { above: 0 });
  if (stated === undefined) {
    const rate = most / Math.max(volume, usualVolume);
    return { throughput: rate * volume, rate, stated: false };
  }
  const asRate = stated?.kind === "pressureRate";
  const throughput = asRate
    ? siOf("leakLimit", stated as Quantity<"pressureRate">, "pressureRate", { above: 0 }) * volume
    : siOf("leakLimit", stated as Quantity<"throughput">, "throughput", { above: 0 });
  if (!isAtMost(throughput, most)) {
    const limit = asRate ? new Quantity(most / volume, micronPerMinute) : paM3PerS(most);
    throw new InvalidInputError({
      argument: "leakLimit",
      value: stated.toString(),
      allowed: `at most ${limit}, which the policy allows`,
      bound: { value: stated, is: "max", limit },
    });
  }
  return { throughput, rate: throughput / volume, stated: true };
}
