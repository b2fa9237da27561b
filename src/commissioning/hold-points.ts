// What may not be done yet, and was it done all the same? The hold points of an installation.
// Follows the order of the work in manuals; common practice, no source.
// Does not cover who may release a hold: licensed practice and local code say that.
import { type Statement, statement } from "../assessment/assessment.ts";
import { surelyBefore } from "./iso-time.ts";
import type { InstallationRecord, IsoTime } from "./record.ts";
import type { StepName, Tried } from "./step.ts";

/** What waits for proof. Source: common practice, no source. */
export type HoldName = "open-valves" | "add-charge" | "power-on";

/** A point at which the work waits until steps have passed. Source: none; the library's own type. */
export interface HoldPoint {
  /** What waits. */
  readonly name: HoldName;
  /** `held`: not yet. `released`: may be done. `breached`: was done although it was held, or before its proof. */
  readonly state: "held" | "released" | "breached";
  /** The steps that have not passed. */
  readonly waitsFor: readonly StepName[];
  /** Why, in a sentence. */
  readonly reason: Statement;
}

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

/** A hold point, and whether the record shows by itself that it was broken. */
export interface Held {
  readonly hold: HoldPoint;
  readonly proven: boolean;
}

const texts: Record<HoldName, readonly [done: string, wait: string]> = {
  "open-valves": ["The valves were opened", "Keep the valves closed"],
  "add-charge": ["Refrigerant was added", "Add no refrigerant"],
  "power-on": ["The unit was switched on", "Keep the power off"],
};

/** The hold points of a record whose steps were tried. */
export function holdsOf(record: InstallationRecord, steps: readonly Tried[]): readonly Held[] {
  const { valves, charge, power, pressureTest, evacuation, operation } = record;
  const outcomeOf = (name: StepName) => steps.find((step) => step.name === name)?.outcome;
  const runs = operation !== undefined && operation.length > 0;
  const tests = [pressureTest?.at, evacuation?.at];
  const hold = (
    name: HoldName,
    needs: readonly StepName[],
    done: boolean,
    at: IsoTime | undefined,
    proofs: readonly (IsoTime | undefined)[],
  ): Held => {
    const waitsFor = needs.filter((step) => outcomeOf(step) !== "pass");
    const early = proofs.find((proof) => at && proof && surelyBefore(at, proof));
    const held = waitsFor.length > 0;
    const [did, wait] = texts[name];
    const values = { steps: waitsFor.join(", "), at: at ?? "", proof: early ?? "" };
    if (early !== undefined) {
      const text = `${did} at {at}, before the proof of {proof}.`;
      const reason = statement(`${name}-too-early`, text, values);
      return { hold: { name, state: "breached", waitsFor, reason }, proven: true };
    }
    if (done && held) {
      const text = `${did}, though the record does not show a pass of: {steps}.`;
      const reason = statement(`${name}-without-proof`, text, values);
      return { hold: { name, state: "breached", waitsFor, reason }, proven: false };
    }
    const text = held
      ? `${wait} until passed: {steps}.`
      : "Every step that it waits for has passed.";
    const reason = statement(`${name}-${held ? "held" : "released"}`, text, values);
    return { hold: { name, state: held ? "held" : "released", waitsFor, reason }, proven: false };
  };
  const added = charge?.added !== undefined && charge.added.si > 0;
  const openedAt = valves?.openedAt;
  const energizedAt = power?.energizedAt;
  const chargedAt = added ? charge.at : undefined;
  return [
    hold("open-valves", before.valves, openedAt !== undefined || runs, openedAt, tests),
    hold("add-charge", before.charge, added, chargedAt, tests),
    hold("power-on", ["circuit", "supply"], energizedAt !== undefined || runs, energizedAt, [
      power?.supply?.at,
      power?.circuit?.at,
    ]),
  ];
}
