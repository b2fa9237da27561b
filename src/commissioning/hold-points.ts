// What may not be done yet, and was it done all the same? The hold points of an installation.
// Follows the order of the work in manuals; common practice, no source.
// Does not cover who may release a hold: licensed practice and local code say that.

import type { CircuitPart } from "../circuit-protection/index.ts";
import type { IsoTime } from "../shapes/index.ts";
import { surelyBefore } from "../shapes/index.ts";
import type { Job } from "./job.ts";
import type { HoldName, HoldState, StepName } from "./names.ts";
import { lastOfEachRun } from "./runs.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import type { Tried } from "./step.ts";
import { clears, holdWord, needsOf, uncleared } from "./step-order.ts";
import { stepWord, verbatim } from "./words.ts";

/** A point at which the work waits until steps have passed. */
export interface HoldPoint {
  /** What waits. */
  readonly name: HoldName;
  /** Whether it still waits. */
  readonly state: HoldState;
  /** The steps that have not passed: those that have to, and `joints` where one of them fails. */
  readonly waitsFor: readonly StepName[];
  /** Why. */
  readonly reason: CommissioningStatement;
  /** What to do next where it was breached; empty otherwise. */
  readonly actions: readonly CommissioningStatement[];
}

/** Whether nothing of a step is open but clauses that this library does not know: a limit of it, not of the work. */
const isLeftToVerify = ({ state, checks }: Tried): boolean =>
  state === "done" &&
  checks.every(({ assessment }) => assessment.outcome === "pass" || assessment.cause === unknown);

const unknown: CircuitPart = "not-confirmed";

/**
 * A hold point, whether the record shows by itself that it was broken, and whether the dates of what was
 * done leave open that it came first.
 */
export interface Held {
  readonly hold: HoldPoint;
  readonly proven: boolean;
  readonly undated: boolean;
}

/** The step of the valves: that they were opened is no pass where they should have stayed closed. */
export function valvesHeld(step: Tried, held: readonly Held[]): Tried {
  const breach = held.find(({ hold }) => hold.name === "open-valves" && hold.state === "breached");
  if (!breach) return step;
  const outcome = breach.proven ? "fail" : "inconclusive";
  const checks = step.checks.map(({ assessment, ...check }) => ({
    ...check,
    assessment: {
      ...assessment,
      outcome,
      reasons: [breach.hold.reason, ...assessment.reasons],
      actions: breach.hold.actions,
    },
  }));
  return { ...step, outcome, checks } as Tried;
}

/** When something was done, as often as it was; a date may be unknown. */
type Dates = readonly (IsoTime | undefined)[];

/** The hold points of a record whose steps were tried. */
export function holdsOf({ record, runs: all }: Job, steps: readonly Tried[]): readonly Held[] {
  const { valves, charge, power, operation = [] } = record;
  const { circuits = [] } = power ?? {};
  const { readings = [], at: suppliedAt } = power?.supply ?? {};
  const tests = [
    ...lastOfEachRun(record.pressureTests, "", all).counting,
    ...lastOfEachRun(record.evacuations, "", all).counting,
  ].map(({ part }) => part.at);
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
      [suppliedAt, ...circuits.map(({ at }) => at)],
    ),
  ];
}

function holdOf(name: HoldName, needs: readonly Tried[], done: Dates, proofs: Dates): Held {
  // What was done all the same breaches nothing by a clause that nobody has checked yet.
  const toVerify =
    done.length > 0 ? needs.filter((step) => !clears(step) && isLeftToVerify(step)) : [];
  const waitsFor = uncleared(needs.filter((step) => !toVerify.includes(step)));
  const away = needs.filter(({ state }) => state === "not-applicable").map((step) => step.name);
  const hold = holdWord(name);
  const point = (
    state: HoldState,
    reason: CommissioningStatement,
    ...actions: readonly CommissioningStatement[]
  ): HoldPoint => ({ name, state, waitsFor, reason, actions });
  for (const at of done) {
    const proof = at && proofs.find((one) => one && surelyBefore(at, one));
    if (!proof) continue;
    const times = { at: verbatim(at), proof: verbatim(proof) };
    const reason = say("commissioning.done-before-proof", { hold, ...times });
    const breached = point("breached", reason, say("commissioning.put-right", { hold }));
    return { hold: breached, proven: true, undated: false };
  }
  if (waitsFor.length > 0) {
    const steps = waitsFor.map(stepWord);
    const open = done.length
      ? point(
          "breached",
          say("commissioning.done-without-proof", { hold, steps }),
          say("commissioning.finish-first", { hold, steps }),
        )
      : point("held", say("commissioning.held", { hold, steps }));
    return { hold: open, proven: false, undated: false };
  }
  const dated = done.every((at) => at && proofs.every((one) => one && surelyBefore(one, at)));
  const reason = toVerify.length
    ? say("commissioning.left-to-verify", { steps: toVerify.map(({ name }) => stepWord(name)) })
    : away.length
      ? say("commissioning.released-by-declaration", { hold, steps: away.map(stepWord) })
      : say("commissioning.released", { hold });
  if (dated) return { hold: point("released", reason), proven: false, undated: false };
  // What was done without times that show that its proof came first is not shown to be right.
  const notShown = say("commissioning.order-not-shown", { hold });
  const undated = point("released", notShown, say("commissioning.state-times", { hold }));
  return { hold: undated, proven: false, undated: true };
}
