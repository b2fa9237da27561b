// Which steps come before which, and does one still hold another up? The order of the work.
// Follows the order of the work in manuals; common practice, no source.
// Does not cover dates: see hold-points.ts and order-of-work.ts.
import type { HoldName, StepName } from "./names.ts";
import type { Tried } from "./step.ts";
import type { HoldWord } from "./words.ts";

/** The word for a hold point. */
export const holdWord = (name: HoldName): HoldWord => `commissioning.hold.${name}`;

/** The steps that have to pass before each step. */
export const before: Readonly<Record<StepName, readonly StepName[]>> = {
  "line-run": [],
  joints: [],
  "pressure-test": ["joints"],
  evacuation: ["pressure-test"],
  "room-limit": [],
  charge: ["pressure-test", "evacuation", "room-limit"],
  valves: ["pressure-test", "evacuation", "room-limit"],
  circuit: [],
  supply: ["circuit"],
  drain: [],
  operation: ["valves", "circuit", "supply"],
};

/**
 * The steps that must not have failed before a step. The tests of tightness and dryness stand in for what was not
 * recorded of a joint, but not for a defect: a nut too loose or too tight can hold for a day and let go or crack in
 * service (manufacturers' manuals), and no such test shows the scale of brazing without nitrogen. Before there is
 * refrigerant, making it anew costs little. Common practice, no source.
 */
const unfailed: Partial<Record<StepName, readonly StepName[]>> = {
  charge: ["joints"],
  valves: ["joints"],
};

/** The steps that a step waits for: those that have to pass, and those that have failed and must not. */
export function needsOf(name: StepName, steps: readonly Tried[]): readonly Tried[] {
  return steps.filter(
    (step) =>
      before[name].includes(step.name) ||
      (step.outcome === "fail" && unfailed[name]?.includes(step.name)),
  );
}

/** Whether a step holds nothing up: it passed, or it does not apply. */
export function clears({ outcome, state }: Tried): boolean {
  return outcome === "pass" || state === "not-applicable";
}

/** The names of the steps that hold something up. */
export const uncleared = (needs: readonly Tried[]): StepName[] =>
  needs.filter((step) => !clears(step)).map((step) => step.name);

/** The earlier steps that are in the way of a step. */
export const blockersOf = (name: StepName, steps: readonly Tried[]): StepName[] =>
  uncleared(needsOf(name, steps));
