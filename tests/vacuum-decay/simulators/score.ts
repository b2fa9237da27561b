// How is a verdict on a simulated log scored? What counts as right is written here and nowhere else.
import { degC, liter, micron, micronDifference, minute } from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  assessVacuumDecay,
  createDecayMonitor,
  type DecayCause,
  type DecayReading,
  type VacuumDecayAssessment,
  type VacuumDecayOptions,
} from "hvac-install-math/vacuum-decay";
import type { FieldEffect, SimulatedLog, Truth } from "./log.ts";

/** What a user states: ambient, volume, step of the display, a named policy; nothing else. */
export function optionsOf(log: SimulatedLog): VacuumDecayOptions {
  return {
    ambient: degC(log.ambient),
    volume: liter(log.liters),
    gauge: { resolution: micronDifference(log.step) },
    policy: acceptancePolicies[log.policy.name],
  };
}

export const readingsOf = (log: SimulatedLog): DecayReading[] =>
  log.rows.map((row) => ({ elapsed: minute(row.minute), pressure: micron(row.micron) }));

const words: Record<DecayCause, readonly Truth[]> = {
  "dry-and-tight": ["sound"],
  leak: ["leak"],
  moisture: ["water"],
  "leak-and-moisture": ["both"],
  "moisture-leak-not-excluded": [],
  outgassing: [],
  "not-determined": [],
};

/** Right: the word for what is there; wrong: another word; open: no word, or moisture with a leak not excluded. */
export function scoreCause(
  truth: Truth,
  effect: FieldEffect,
  cause: DecayCause,
): "right" | "wrong" | "open" {
  if (cause === "not-determined" || cause === "moisture-leak-not-excluded") return "open";
  if (cause === "outgassing")
    return truth === "sound" && effect === "outgassing" ? "right" : "wrong";
  return words[cause].includes(truth) ? "right" : "wrong";
}

/** Tallies of many logs. */
export interface Score {
  readonly logs: number;
  readonly bad: number;
  readonly badPassed: number;
  readonly sound: number;
  readonly soundFailed: number;
  readonly soundPassed: number;
  readonly undecided: number;
  readonly right: number;
  readonly wrong: number;
  readonly open: number;
  /** Intervals of the leak given and holding the truth, without and with water. */
  readonly dryIntervals: number;
  readonly dryHeld: number;
  readonly wetIntervals: number;
  readonly wetHeld: number;
  readonly live: number;
  readonly liveWrong: number;
  readonly livePassWrong: number;
  /** When the first right live verdict came where one may come early, parts of the hold; Infinity for none. */
  readonly liveTimes: number[];
  /** The same of sound systems alone, whose policy may pass before its hold is over. */
  readonly earlyPassTimes: number[];
  readonly misses: string[];
}

type Tally = { -readonly [K in keyof Score]: Score[K] };

export const emptyScore = (): Tally => ({
  logs: 0,
  bad: 0,
  badPassed: 0,
  sound: 0,
  soundFailed: 0,
  soundPassed: 0,
  undecided: 0,
  right: 0,
  wrong: 0,
  open: 0,
  dryIntervals: 0,
  dryHeld: 0,
  wetIntervals: 0,
  wetHeld: 0,
  live: 0,
  liveWrong: 0,
  livePassWrong: 0,
  liveTimes: [],
  earlyPassTimes: [],
  misses: [],
});

/** Adds one log to the tallies; its live verdicts too when asked. */
export function addScore(
  tally: Tally,
  name: string,
  log: SimulatedLog,
  truth: Truth,
  live: boolean,
): VacuumDecayAssessment {
  const readings = readingsOf(log);
  const options = optionsOf(log);
  const verdict = assessVacuumDecay({ ...options, readings });
  const sound = truth === "sound";
  tally.logs++;
  if (sound) tally.sound++;
  else tally.bad++;
  if (verdict.outcome === "inconclusive") tally.undecided++;
  if (sound && verdict.outcome === "pass") tally.soundPassed++;
  if (sound && verdict.outcome === "fail") tally.soundFailed++;
  if (!sound && verdict.outcome === "pass") tally.badPassed++;
  const cause = scoreCause(truth, log.effect, verdict.cause);
  tally[cause]++;
  const missed = verdict.outcome === (sound ? "fail" : "pass");
  if (missed || cause !== "right") {
    tally.misses.push(
      `${name} ${truth} ${missed ? "MISSED" : ""} ${verdict.outcome} ${verdict.cause}`,
    );
  }
  if (verdict.leakInterval !== undefined) {
    const [low, high] = verdict.leakInterval;
    const real = micron(log.truth.leak).si / 60;
    const held = real >= low.si - 1e-9 && real <= high.si + 1e-9 ? 1 : 0;
    if (log.truth.water > 0) {
      tally.wetIntervals++;
      tally.wetHeld += held;
    } else {
      tally.dryIntervals++;
      tally.dryHeld += held;
    }
  }
  if (live) addLive(tally, options, readings, log.policy, sound);
  return verdict;
}

function addLive(
  tally: Tally,
  options: VacuumDecayOptions,
  readings: readonly DecayReading[],
  { name, hold }: SimulatedLog["policy"],
  sound: boolean,
): void {
  const monitor = createDecayMonitor(options);
  const early = acceptancePolicies[name].earlyPass;
  tally.live++;
  let at = Number.POSITIVE_INFINITY;
  let wrong = false;
  let wrongPass = false;
  for (const reading of readings) {
    const { outcome } = monitor.add(reading);
    if (outcome === "inconclusive") continue;
    if (outcome === (sound ? "fail" : "pass")) {
      wrong = true;
      if (outcome === "pass") wrongPass = true;
    } else at = Math.min(at, reading.elapsed.si / 60 / hold);
  }
  if (wrong) tally.liveWrong++;
  if (wrongPass) tally.livePassWrong++;
  // a policy that waits for the end of its hold has no early pass to be late with
  if (!sound || early) tally.liveTimes.push(at);
  if (sound && early) tally.earlyPassTimes.push(at);
}
