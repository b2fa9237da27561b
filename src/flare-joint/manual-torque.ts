// Can this be the manual's torque window for this nut? Held against what published sources print. Internal.
// Follows the windows of flare-torque.ts, whose widest is 18/14 = 1.29 (1/4 in); the lines drawn from them are
// the library's own. Does not cover a window that meets a published one: manuals differ, it is believed.
import { type Caution, type Reason, statement } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ftLb } from "../quantity/units/mechanics.ts";
import type { FlareTube } from "./flare-tube.ts";
import type { FlareLimits } from "./judge.ts";

type Window = FlareLimits<"torque">;

// Newton metres in a foot-pound: the factor by which a window is off when its unit was mistaken.
const mixUp = ftLb.scale; // 1.3558

/** Why the manual's window cannot decide, if it cannot. */
export function doubtOf(tube: FlareTube, manual: Window, published: Window): Reason | undefined {
  const { unit } = manual.low;
  const values = {
    low: manual.low,
    high: manual.high,
    from: published.low.as(unit),
    to: published.high.as(unit),
    tube,
  };
  const known = "the {from} to {to} that published sources print for {tube} in";
  const again = "read the manual again, with its unit";
  // Such a window holds a figure in N·m and the same figure in ft·lb.
  if (manual.high.si >= mixUp * manual.low.si) {
    return statement(
      "manual-window-wide",
      `{low} to {high} is too wide to tell N·m from ft·lb and decides nothing, beside ${known}: ${again}.`,
      values,
    );
  }
  const meets = (factor: number) =>
    manual.low.si * factor <= published.high.si && manual.high.si * factor >= published.low.si;
  if (meets(1)) return undefined;
  const slip = meets(1 / mixUp)
    ? " It is about 1.36 times as much: N·m taken for ft·lb?"
    : meets(mixUp)
      ? " They are about 1.36 times as much: ft·lb taken for N·m?"
      : "";
  return statement(
    "manual-window-apart",
    `{low} to {high} of the manual shares nothing with ${known}: ${again}.${slip}`,
    values,
  );
}

/** What to say of a torque that the manual alone allows. */
export function beyondSources(
  torque: Quantity<"torque">,
  { low, high }: Window,
): Caution | undefined {
  if (torque.si >= low.si && torque.si <= high.si) return undefined;
  return statement(
    "beyond-sources",
    "{torque} is right by the manual alone; published sources print {low} to {high}. Look at size and unit again.",
    { torque, low: low.as(torque.unit), high: high.as(torque.unit) },
  );
}
