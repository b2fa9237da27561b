// What may not be done yet, and was it done all the same? The hold points of an installation.
// Follows the order of the work in manuals; common practice, no source.
// Does not cover who may release a hold: licensed practice and local code say that.
import { type Statement, statement } from "../assessment/assessment.ts";
import type { IsoTime } from "../shapes/index.ts";
import { surelyBefore } from "../shapes/index.ts";
import type { InstallationRecord } from "./record.ts";
import type { StepName, Tried } from "./step.ts";

/** What waits for proof. Source: common practice, no source. */
export type HoldName = "open-valves" | "add-charge" | "power-on";

/** A point at which the work waits until steps have passed. Source: none; the library's own type. */
export interface HoldPoint {
  /** What waits. */
  readonly name: HoldName;
  /** `held`: not yet. `released`: may be done. `breached`: was done although it was held, or before its proof. */
  readonly state: "held" | "released" | "breached";
  /** The steps that have not passed: those that have to, and `joints` where one of them fails. */
  readonly waitsFor: readonly StepName[];
  /** Why, in a sentence. */
  readonly reason: Statement;
}

/** The steps that have to pass before each step. */
const before: Readonly<Record<StepName, readonly StepName[]>> = {
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
function needsOf(name: StepName, steps: readonly Tried[]): readonly Tried[] {
  return steps.filter(
    (step) =>
      before[name].includes(step.name) ||
      (step.outcome === "fail" && unfailed[name]?.includes(step.name)),
  );
}

/** Whether a step holds nothing up: it passed, or it does not apply. */
function clears({ outcome, state }: Tried): boolean {
  return outcome === "pass" || state === "not-applicable";
}

const uncleared = (needs: readonly Tried[]): StepName[] =>
  needs.filter((step) => !clears(step)).map((step) => step.name);

/** The earlier steps that are in the way of a step. */
export const blockersOf = (name: StepName, steps: readonly Tried[]): StepName[] =>
  uncleared(needsOf(name, steps));

/**
 * A hold point, whether the record shows by itself that it was broken, and whether the dates of what was
 * done leave open that it came first.
 */
export interface Held {
  readonly hold: HoldPoint;
  readonly proven: boolean;
  readonly undated: boolean;
}

const texts: Record<HoldName, readonly [done: string, wait: string]> = {
  "open-valves": ["The valves were opened", "Keep the valves closed"],
  "add-charge": ["Refrigerant was added", "Add no refrigerant"],
  "power-on": ["The unit was switched on", "Keep the power off"],
};

/** The step of the valves: that they were opened is no pass where they should have stayed closed. */
export function valvesHeld(step: Tried, held: readonly Held[]): Tried {
  const breach = held.find(({ hold }) => hold.name === "open-valves" && hold.state === "breached");
  if (!breach) return step;
  const outcome = breach.proven ? "fail" : "inconclusive";
  const checks = step.checks.map(({ assessment, ...check }) => ({
    ...check,
    assessment: { ...assessment, outcome, reasons: [breach.hold.reason, ...assessment.reasons] },
  }));
  return { ...step, outcome, checks } as Tried;
}

/** When something was done, as often as it was; a date may be unknown. */
type Dates = readonly (IsoTime | undefined)[];

/** The hold points of a record whose steps were tried. */
export function holdsOf(record: InstallationRecord, steps: readonly Tried[]): readonly Held[] {
  const { valves, charge, power, pressureTest, evacuation, operation = [] } = record;
  const { readings = [], at: suppliedAt } = power?.supply ?? {};
  const tests = [pressureTest?.at, evacuation?.at];
  // Whoever reads the running unit has opened its valves and switched it on.
  const runs = operation.map(({ at }) => at);
  const loaded = readings.some(({ state }) => state === "load" || state === "start");
  const once = (done: boolean, at: IsoTime | undefined): Dates => (done || at ? [at] : []);
  return [
    holdOf(
      "open-valves",
      needsOf("valves", steps),
      [...once(false, valves?.openedAt), ...runs],
      tests,
    ),
    // A date without an amount says that some was added; an amount of 0 that none was.
    holdOf(
      "add-charge",
      needsOf("charge", steps),
      (charge?.added?.si ?? (charge?.at ? 1 : 0)) > 0 ? [charge?.at] : [],
      tests,
    ),
    holdOf(
      "power-on",
      steps.filter(({ name }) => name === "circuit" || name === "supply"),
      [...once(loaded, power?.energizedAt), ...runs],
      [suppliedAt, power?.circuit?.at],
    ),
  ];
}

function holdOf(name: HoldName, needs: readonly Tried[], done: Dates, proofs: Dates): Held {
  const waitsFor = uncleared(needs);
  const away = needs.filter(({ state }) => state === "not-applicable").map((step) => step.name);
  const [did, wait] = texts[name];
  const said = (
    state: HoldPoint["state"],
    code: string,
    text: string,
    values: Statement["values"],
  ): HoldPoint => ({ name, state, waitsFor, reason: statement(`${name}-${code}`, text, values) });
  const steps = waitsFor.join(", ");
  for (const at of done) {
    const proof = proofs.find((one) => at && one && surelyBefore(at, one));
    if (at === undefined || proof === undefined) continue;
    const text = `${did} at {at}, before the proof of {proof}.`;
    return {
      hold: said("breached", "too-early", text, { at, proof }),
      proven: true,
      undated: false,
    };
  }
  if (waitsFor.length > 0) {
    const hold = done.length
      ? said(
          "breached",
          "without-proof",
          `${did}, though the record does not show a pass of: {steps}.`,
          { steps },
        )
      : said("held", "held", `${wait} until passed: {steps}.`, { steps });
    return { hold, proven: false, undated: false };
  }
  const dated = done.every((at) => at && proofs.every((one) => one && surelyBefore(one, at)));
  const text = away.length
    ? "Every step that it waits for has passed, but for what was declared not applicable: {away}."
    : "Every step that it waits for has passed.";
  const hold = said("released", "released", text, away.length ? { away: away.join(", ") } : {});
  return { hold, proven: false, undated: !dated };
}
