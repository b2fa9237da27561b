// Runs simulated logs through the library and counts; shared by the quick test and the full study.
import { assessVacuumDecay, createDecayMonitor } from "hvac-install-math/vacuum-decay";
import { covered, scoreCause, soundnessOf } from "./score.ts";
import { type Random, random, type SimulatedCase, type Truth } from "./simulation.ts";

export type Simulator = (rng: Random, wanted?: Truth) => SimulatedCase;

/** Counts by a key. */
export type Counts = Record<string, number>;

export interface StudyResult {
  readonly cases: number;
  /** "sound pass", "bad fail" … */
  readonly outcomes: Counts;
  /** "right", "partly", "open", "wrong". */
  readonly causes: Counts;
  /** The same by truth: "leak right" … */
  readonly causesByTruth: Counts;
  /** Cases and covered intervals of the leak by truth. */
  readonly coverage: Record<string, { n: number; hits: number }>;
  /** Median over sound and bad cases of the time to the first definite verdict, as a part of the hold; a miss counts as infinite. */
  readonly medianLive: number;
  readonly liveWrong: number;
  readonly misses: string[];
  /** The policy's limit read off the last reading of the hold: "sound pass" … */
  readonly ceilingRule: Counts;
  /** A straight rise or one that flattens, told by comparing both halves of the log: right, wrong. */
  readonly halvesRule: Counts;
}

const add = (counts: Counts, key: string) => {
  counts[key] = (counts[key] ?? 0) + 1;
};

/** Runs `cases` logs; the live monitor on every `liveEvery`-th. */
export function runStudy(
  simulate: Simulator,
  seed: number,
  cases: number,
  liveEvery: number,
): StudyResult {
  const rng = random(seed);
  const outcomes: Counts = {};
  const causes: Counts = {};
  const causesByTruth: Counts = {};
  const coverage: StudyResult["coverage"] = {};
  const ceilingRule: Counts = {};
  const halvesRule: Counts = {};
  const misses: string[] = [];
  const live: number[] = [];
  let liveWrong = 0;
  for (let i = 0; i < cases; i++) {
    const one = simulate(rng);
    const soundness = soundnessOf(one);
    const verdict = assessVacuumDecay({ ...one.options, readings: one.readings });
    const score = scoreCause(one, verdict.cause);
    add(outcomes, `${soundness} ${verdict.outcome}`);
    add(causes, score);
    add(causesByTruth, `${one.truth} ${score}`);
    coverage[one.truth] ??= { n: 0, hits: 0 };
    const cell = coverage[one.truth] as { n: number; hits: number };
    cell.n++;
    if (covered(one, verdict)) cell.hits++;
    const failed = soundness === "sound" && verdict.outcome === "fail";
    const passed = soundness === "bad" && verdict.outcome === "pass";
    if (failed || passed || score === "wrong") {
      misses.push(`#${i} ${one.truth}, ${soundness}: ${verdict.outcome}, ${verdict.cause}`);
    }
    add(ceilingRule, `${soundness} ${ceiling(one)}`);
    add(halvesRule, halves(one) === one.truth ? "right" : "wrong");
    if (i % liveEvery === 0 && (soundness === "sound" || soundness === "bad")) {
      const first = firstVerdict(one);
      const right = first?.outcome === (soundness === "sound" ? "pass" : "fail");
      live.push(first && right ? first.at / one.holdSeconds : Number.POSITIVE_INFINITY);
      if (first && !right) liveWrong++;
    }
  }
  live.sort((a, b) => a - b);
  const medianLive = live[Math.floor(live.length / 2)] ?? Number.POSITIVE_INFINITY;
  return {
    cases,
    outcomes,
    causes,
    causesByTruth,
    coverage,
    medianLive,
    liveWrong,
    misses,
    ceilingRule,
    halvesRule,
  };
}

function firstVerdict({ options, readings }: SimulatedCase) {
  const monitor = createDecayMonitor(options);
  for (const one of readings) {
    const { outcome } = monitor.add(one);
    if (outcome !== "inconclusive") return { outcome, at: one.elapsed.si };
  }
  return undefined;
}

/** What the needle says at the end of the hold. */
function ceiling({ readings, holdSeconds, endLimit }: SimulatedCase): "pass" | "fail" {
  const last = readings.filter(({ elapsed }) => elapsed.si <= holdSeconds).at(-1);
  return (last?.pressure.si ?? 0) > endLimit ? "fail" : "pass";
}

/** The trade's look: hardly any rise is dry, a second half that rises less than half of the first is wet, else a leak. */
function halves({ readings, endLimit }: SimulatedCase): Truth {
  const at = (part: number) => readings[Math.floor(part * (readings.length - 1))]?.pressure.si ?? 0;
  const [start, middle, end] = [at(0), at(0.5), at(1)];
  if (end - start < 0.2 * (endLimit - start)) return "dry-and-tight";
  return end - middle < 0.5 * (middle - start) ? "moisture" : "leak";
}
