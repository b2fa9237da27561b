// Can this be what the manual prints for this joint? Held against what published sources print. Internal.
// Follows the tables of flare-torque.ts, assess-flare-diameter.ts and assess-flare-wall.ts; the lines drawn
// around them are the library's own. Does not cover figures that meet theirs: manuals differ, they are believed.
import { type Caution, type Reason, statement } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { mm } from "../quantity/units/geometry.ts";
import { ftLb } from "../quantity/units/mechanics.ts";
import type { FlareTube } from "./flare-tube.ts";
import type { FlareLimits } from "./judge.ts";

type Window = FlareLimits<"torque">;

const again = "read the manual again, with its unit";

// Newton metres in a foot-pound: the factor by which a window is off when its unit was mistaken.
const mixUp = ftLb.scale; // 1.3558

/** Why the manual's torque cannot decide, if it cannot. */
export function doubtOfTorque(
  tube: FlareTube,
  manual: Window,
  published: Window,
): Reason | undefined {
  const { unit } = manual.low;
  const values = {
    low: manual.low,
    high: manual.high,
    from: published.low.as(unit),
    to: published.high.as(unit),
    tube,
  };
  const known = "the {from} to {to} that published sources print for {tube} in";
  // Such a window holds a figure in N·m and the same figure in ft·lb. The widest published one is 18/14 = 1.29.
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

/** Why the manual's diameters cannot decide, if they cannot; nothing is published for 5/16. */
export function doubtOfDiameter(
  tube: FlareTube,
  { low, high }: FlareLimits<"length">,
  published: FlareLimits<"length"> | undefined,
): Reason | undefined {
  // Published windows are 0.4 mm wide; common practice, no source, for the line at 1 mm.
  if (high.si - low.si > 1e-3 * (1 + 1e-9)) {
    const text = `{low} to {high} is too wide to decide on a flare, whose limits lie within {widest}: ${again}.`;
    return statement("manual-window-wide", text, { low, high, widest: mm(1).as(low.unit) });
  }
  if (!published || (low.si <= published.high.si && high.si >= published.low.si)) return undefined;
  return statement(
    "manual-window-apart",
    `{low} to {high} of the manual shares nothing with the {from} to {to} of published flares of {tube} in: ${again}.`,
    { low, high, from: published.low.as(low.unit), to: published.high.as(low.unit), tube },
  );
}

/** Why the manual's least wall cannot decide, if it cannot. */
export function doubtOfWall(least: Quantity<"length">): Reason | undefined {
  // Manuals ask for 0.7 mm or more; the thinnest line-set tube on the market has 0.61 mm. Common practice,
  // no source, for the line at 0.5 mm.
  if (least.si >= 0.5e-3) return undefined;
  return statement(
    "manual-minimum-thin",
    `A wall of {least} asks nothing of any tube on the market, where manuals ask for {usual} or more: ${again}.`,
    { least, usual: mm(0.7).as(least.unit) },
  );
}
