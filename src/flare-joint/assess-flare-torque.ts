// Was the nut tightened right? A torque reading against the manual's window, or what all sources share.
// Follows JCGM 106:2012, 8.3; windows from flare-torque.ts, the manual's held against them by manual-doubts.ts.
// Does not cover whether the joint is tight: a pressure test does.
import { cite } from "../assessment/assessment.ts";
import { askOneOf, objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { ftLb, newtonMeter } from "../quantity/units/mechanics.ts";
import {
  type FlareLimits,
  hullOf,
  limitsFor,
  limitsOf,
  manualWasReadAgain,
} from "./flare-limits.ts";
import { type FlareTorqueConflict, flareTorque } from "./flare-torque.ts";
import type { FlareTube } from "./flare-tube.ts";
import { type FlareAssessment, judge } from "./judge.ts";
import { beyondSources, doubtOfTorque } from "./manual-doubts.ts";
import { type FlareCause, say } from "./statements.ts";

/**
 * What is known of a torque wrench.
 *
 * Source: JCGM 100:2008, 4.3.7 and F.2.2.1.
 */
export interface TorqueWrench {
  /** Limits of error as a fraction of the reading: `percent(4)`. */
  readonly relativeAccuracy?: Quantity<"ratio"> | undefined;
  /** Limits of error as a torque, ±. */
  readonly accuracy?: Quantity<"torque"> | undefined;
  /** Smallest step of the scale. */
  readonly resolution?: Quantity<"torque"> | undefined;
}

/**
 * A tightened flare nut.
 */
export interface FlareTorqueInput {
  /** Outside diameter of the tube. */
  readonly tube: FlareTube;
  /** The torque at which the wrench clicked or which it shows, above 0. */
  readonly torque: Quantity<"torque">;
  /**
   * The window in the unit's manual. It decides alone, unless it is in doubt; without it all published sources
   * decide.
   */
  readonly manual?: FlareLimits<"torque"> | undefined;
  /** Whether the manual was read again and says so: then its window decides, whatever else is published. */
  readonly manualReadAgain?: boolean | undefined;
  /** What is known of the wrench; counted as exact when left out, and the verdict says so. */
  readonly wrench?: TorqueWrench | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/** What is wrong with the torque. Source: see {@link assessFlareTorque}. */
export type FlareTorqueCause = Extract<FlareCause, "under-tightened" | "over-tightened">;

/**
 * The verdict on the torque of a flare nut.
 *
 * Source: see {@link assessFlareTorque}.
 */
export interface FlareTorqueAssessment extends FlareAssessment<"torque", FlareTorqueCause> {
  /** The published sources that conflict for this size; empty when the manual could decide. */
  readonly conflicts: readonly FlareTorqueConflict[];
}

/**
 * Judges the torque of a flare nut. With the manual's window that window decides. Without it the
 * torque passes where every published source allows it, fails where none does, and is `inconclusive`
 * in between.
 *
 * A manual's window is in doubt when it shares nothing with any published window of the size
 * (`flare-joint.manual-range-apart`) or when figures in N·m and in ft·lb both lie in it (`flare-joint.manual-range-wide`). Then
 * nothing passes, what lies beyond manual and sources fails, and the reason asks to read the manual again with
 * its unit; `manualReadAgain` says that it was, whatever the refrigerant. A pass beyond every published window carries the finding `flare-joint.beyond-sources`.
 *
 * @param input - Tube, torque, the manual's window, the wrench.
 * @returns The verdict, with `cause` on a fail.
 * @throws {@link InvalidInputError} when the torque is not above 0, a kind does not fit, or the manual's
 * window is upside down.
 *
 * Cautions: a right torque does not prove a tight joint. Never tighten or loosen under pressure.
 *
 * Source: JCGM 106:2012, 8.3; windows: see {@link flareTorque}.
 *
 * @example
 * ```ts
 * import { assessFlareTorque } from "hvac-install-math/flare-joint";
 * import { ftLb, newtonMeter, percent } from "hvac-install-math/quantity";
 *
 * const joint = { tube: "5/8", wrench: { relativeAccuracy: percent(4) } } as const;
 * assessFlareTorque({ ...joint, torque: ftLb(53) }).outcome; // => pass
 * assessFlareTorque({ ...joint, torque: newtonMeter(80) }).outcome; // => inconclusive
 * assessFlareTorque({ ...joint, torque: newtonMeter(50) }).cause; // => under-tightened
 * ```
 */
export function assessFlareTorque(input: FlareTorqueInput): FlareTorqueAssessment {
  objectOf("input", input);
  const { tube, torque, manual, wrench, confidence } = input;
  const { windows, overlap, conflicts } = flareTorque(tube);
  siOf("torque", torque, "torque", { above: 0 });
  const stated = manual === undefined ? undefined : limitsOf("manual", manual, "torque");
  const published = hullOf(windows);
  const readAgain = manualWasReadAgain(input);
  const doubts = stated && !readAgain.length ? doubtOfTorque(tube, stated, published) : [];
  const decisive = doubts.length ? undefined : stated;
  const named = windows.map(({ source }) => `flare-joint.source.${source}` as const);
  const found = judge({
    argument: "torque",
    value: torque,
    kind: "torque",
    figure: "torque",
    instrument: wrench === undefined ? undefined : wrenchErrors(torque, wrench),
    instrumentArgument: "wrench",
    confidence,
    sure: decisive ?? overlap,
    possible: decisive ?? (stated ? hullOf([stated, published]) : published),
    below: "under-tightened",
    above: "over-tightened",
    remedy: (cause, limits) =>
      cause === "under-tightened"
        ? say("flare-joint.tighten", limitsFor(limits))
        : say("flare-joint.remake-and-tighten", limitsFor(limits)),
    // A nut is not tightened twice to read it better: the manual's window decides, or what the wrench was really off.
    settle: (needed) => [
      ...(decisive ? [] : [say("flare-joint.state-manual-range")]),
      say("flare-joint.check-wrench", { needed }),
    ],
    ...otherScale(torque, decisive ?? published),
    doubts,
    assumptions: stated
      ? readAgain
      : [
          say("flare-joint.published-ranges", { sources: named }),
          ...(windows.length > 1 ? [] : [say("flare-joint.one-source")]),
        ],
    findings: () => beyondSources(torque, published),
    sources: [
      cite("jcgm-106-2012", "8.3"),
      ...(decisive ? [] : windows.map(({ citation }) => citation)),
    ],
  });
  return frozen({ ...found, conflicts: decisive ? [] : conflicts });
}

/** The two scales of a torque wrench. */
const scales = [newtonMeter, ftLb];

/**
 * The same number on the other scale of a wrench, where that would be right: asked about before a good flare is cut off.
 * Said of a fail alone, whose own scale is never right.
 */
function otherScale(torque: Quantity<"torque">, { low, high }: FlareLimits<"torque">) {
  const other = scales
    .map((scale) => new Quantity(torque.in(torque.unit) * scale.scale, scale))
    .find(({ si }) => isAtLeast(si, low.si) && isAtMost(si, high.si));
  if (!other) return {};
  return {
    aside: [say("flare-joint.right-on-other-scale", { other })],
    first: [say("flare-joint.check-scale")],
  };
}

/** The wrench's limits of error at this reading, as one accuracy and a resolution. */
function wrenchErrors(
  torque: Quantity<"torque">,
  wrench: TorqueWrench,
): Omit<TorqueWrench, "relativeAccuracy"> {
  const { relativeAccuracy, accuracy, resolution } = objectOf("wrench", wrench);
  if (relativeAccuracy === undefined) return wrench;
  if (accuracy !== undefined) {
    askOneOf("wrench", "both", ["accuracy", "relativeAccuracy"]);
  }
  const part = siOf("wrench.relativeAccuracy", relativeAccuracy, "ratio", { min: 0, below: 1 });
  const limits = new Quantity(torque.si * part, torque.unit);
  return { accuracy: limits, resolution };
}
