// Can this be what the manual prints for this joint? Held against what published sources print. Internal.
// Follows the tables of flare-torque.ts, assess-flare-diameter.ts and assess-flare-wall.ts; the lines drawn
// around them are the library's own. Does not cover figures that meet theirs: manuals differ, they are believed.
import { type Caution, caution } from "../assessment/caution.ts";
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { mm } from "../quantity/units/geometry.ts";
import { ftLb } from "../quantity/units/mechanics.ts";
import type { FlareLimits } from "./flare-limits.ts";
import { type FlareTube, named } from "./flare-tube.ts";
import { type FlareJointStatement, say } from "./statements.ts";

type Window = FlareLimits<"torque">;

// Newton meters in a foot-pound: the factor by which a window is off when its unit was mistaken.
const mixUp = ftLb.scale; // 1.3558

/** Why the manual's torque cannot decide; nothing where it can. */
export function doubtOfTorque(
  tube: FlareTube,
  manual: Window,
  published: Window,
): readonly FlareJointStatement[] {
  const { unit } = manual.low;
  const values = {
    low: manual.low,
    high: manual.high,
    from: published.low.as(unit),
    to: published.high.as(unit),
    tube: named(tube),
  };
  // Such a window holds a figure in N·m and the same figure in ft·lb. The widest published one is 18/14 = 1.29.
  if (manual.high.si >= mixUp * manual.low.si)
    return [say("flare-joint.manual-range-wide", values)];
  const meets = (factor: number) =>
    manual.low.si * factor <= published.high.si && manual.high.si * factor >= published.low.si;
  if (meets(1)) return [];
  const apart = say("flare-joint.manual-range-apart", values);
  if (meets(1 / mixUp)) return [apart, say("flare-joint.newton-meter-as-foot-pound")];
  return meets(mixUp) ? [apart, say("flare-joint.foot-pound-as-newton-meter")] : [apart];
}

/** What to say of a torque that the manual alone allows. */
export function beyondSources(
  torque: Quantity<"torque">,
  { low, high }: Window,
): readonly Caution<FlareJointStatement>[] {
  if (torque.si >= low.si && torque.si <= high.si) return [];
  const range = { low: low.as(torque.unit), high: high.as(torque.unit) };
  return [caution("finding", say("flare-joint.beyond-sources", { torque, ...range }))];
}

/** Why the manual's diameters cannot decide; nothing where they can. Nothing is published for 5/16. */
export function doubtOfDiameter(
  tube: FlareTube,
  { low, high }: FlareLimits<"length">,
  published: FlareLimits<"length"> | undefined,
): readonly FlareJointStatement[] {
  // Published windows are 0.4 mm wide; common practice, no source, for the line at 1 mm.
  if (!isAtMost(high.si - low.si, 1e-3, mm.scale)) {
    return [say("flare-joint.manual-diameters-wide", { low, high, widest: mm(1).as(low.unit) })];
  }
  if (!published || (low.si <= published.high.si && high.si >= published.low.si)) return [];
  const [from, to] = [published.low.as(low.unit), published.high.as(low.unit)];
  return [say("flare-joint.manual-range-apart", { low, high, from, to, tube: named(tube) })];
}

/** Why the manual's least wall cannot decide; nothing where it can. */
export function doubtOfWall(least: Quantity<"length">): readonly FlareJointStatement[] {
  // Manuals ask for 0.7 mm or more; the thinnest line-set tube on the market has 0.61 mm. Common practice,
  // no source, for the line at 0.5 mm.
  if (least.si >= 0.5e-3) return [];
  return [say("flare-joint.manual-minimum-thin", { least, usual: mm(0.7).as(least.unit) })];
}
