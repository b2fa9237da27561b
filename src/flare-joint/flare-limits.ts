// What may a figure of a flare be? Two limits, and what a caller's manual may say of them.
// Follows no standard: arithmetic on limits. Does not cover whether a figure keeps them: judge.ts.

import { flagOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type FlareJointStatement, say } from "./statements.ts";

/** What is measured at a flare. */
export type FlareKind = "torque" | "angle" | "length";

/**
 * The smallest and the largest figure that a source allows.
 */
export interface FlareLimits<K extends FlareKind> {
  /** Smallest figure allowed. */
  readonly low: Quantity<K>;
  /** Largest figure allowed. */
  readonly high: Quantity<K>;
}

/** The limits of a remedy as a sentence takes them. */
export function limitsFor<K extends FlareKind>({
  low,
  high,
}: Partial<FlareLimits<K>>): {
  low: Quantity<"torque">;
  high: Quantity<"torque">;
} {
  return { low: low as unknown as Quantity<"torque">, high: high as unknown as Quantity<"torque"> };
}

/** From the smallest to the largest figure that any of the windows, one or more, allows. */
export function hullOf<K extends FlareKind>(windows: readonly FlareLimits<K>[]): FlareLimits<K> {
  return windows.reduce((hull, { low, high }) => ({
    low: low.si < hull.low.si ? low : hull.low,
    high: high.si > hull.high.si ? high : hull.high,
  }));
}

/** Two limits from the caller's manual, checked. */
export function limitsOf<K extends FlareKind>(
  argument: string,
  limits: FlareLimits<K>,
  kind: K,
): FlareLimits<K> {
  siOf(`${argument}.low`, limits?.low, kind, { above: 0 });
  const high = siOf(`${argument}.high`, limits.high, kind, { above: 0 });
  siOf(`${argument}.low`, limits.low, kind, { max: high });
  return limits;
}

/** What a verdict by a manual says where it was read again; nothing where it was not. */
export function manualWasReadAgain({
  manualReadAgain = false,
}: {
  readonly manualReadAgain?: boolean | undefined;
}): readonly FlareJointStatement[] {
  flagOf("manualReadAgain", manualReadAgain);
  return manualReadAgain ? [say("flare-joint.manual-read-again")] : [];
}
