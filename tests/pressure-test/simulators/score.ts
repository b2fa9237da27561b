// Scores a judgement against the hidden truth, beside what common rules say of the same readings.
import {
  assessPressureLog,
  assessPressureTest,
  type PressureTestAssessment,
} from "hvac-install-math/pressure-test";
import { type Random, seeded } from "./random.ts";
import { type Row, readingOf, type Simulated, setupOf } from "./simulated.ts";

export interface Score {
  cases: number;
  tight: number;
  tightFailed: number;
  tightPassed: number;
  above: number;
  abovePassed: number;
  aboveFailed: number;
  wellAbovePassed: number;
  within: number;
  withinFailed: number;
  open: number;
  covered: number;
  /** Tight systems called leaking when no limit is stated. */
  falseLeak: number;
  /** Leaks that are proven when no limit is stated. */
  leakProven: number;
  rise: number;
  /** Mean of squared error over squared standard uncertainty; 1 when the uncertainty is right. */
  squares: number;
  misses: string[];
}

const byTwo = (test: Simulated) =>
  assessPressureTest({
    ...setupOf(test),
    start: readingOf(test.rows[0] as Row),
    end: readingOf(test.rows.at(-1) as Row),
  });
const byLog = (test: Simulated) =>
  assessPressureLog({ ...setupOf(test), readings: test.rows.map(readingOf) });

export function score(
  simulate: (random: Random) => Simulated,
  seed: number,
  cases: number,
  by: "two readings" | "log",
): Score {
  const result: Score = {
    cases,
    tight: 0,
    tightFailed: 0,
    tightPassed: 0,
    above: 0,
    abovePassed: 0,
    aboveFailed: 0,
    wellAbovePassed: 0,
    within: 0,
    withinFailed: 0,
    open: 0,
    covered: 0,
    falseLeak: 0,
    leakProven: 0,
    rise: 0,
    squares: 0,
    misses: [],
  };
  const random = seeded(seed);
  for (let i = 0; i < cases; i++) {
    const test = simulate(random);
    const verdict: PressureTestAssessment = by === "log" ? byLog(test) : byTwo(test);
    count(result, test, verdict, i);
  }
  return result;
}

function count(s: Score, test: Simulated, verdict: PressureTestAssessment, i: number): void {
  const { outcome, cause, correctedDrop } = verdict;
  const d = correctedDrop.value.si;
  const u = correctedDrop.standardUncertainty.si;
  const U = correctedDrop.expandedUncertainty.si;
  const miss = (what: string) =>
    s.misses.push(
      `#${i} ${what}: true ${test.drop.toFixed(0)}, found ${d.toFixed(0)} ± ${U.toFixed(0)}, limit ${test.limit.toFixed(0)} Pa, ${((test.rows.at(-1) as Row).t / 3600).toFixed(1)} h; largest ${verdict.uncertaintyBudget[0]?.part}`,
    );
  if (Math.abs(d - test.drop) <= U) s.covered++;
  s.squares += ((d - test.drop) / u) ** 2 / s.cases;
  if (outcome === "inconclusive") s.open++;
  if (cause === "unexplained rise") s.rise++;
  if (test.tight) {
    s.tight++;
    if (outcome === "pass") s.tightPassed++;
    if (outcome === "fail") {
      s.tightFailed++;
      miss("tight failed");
    }
    if (cause === "leak") s.falseLeak++;
  } else if (cause === "leak") s.leakProven++;
  if (test.drop > test.limit) {
    s.above++;
    if (outcome === "fail") s.aboveFailed++;
    if (outcome === "pass") {
      s.abovePassed++;
      miss("above the limit passed");
      if (test.drop > test.limit + U) s.wellAbovePassed++;
    }
  } else {
    s.within++;
    if (outcome === "fail") {
      s.withinFailed++;
      if (!test.tight) miss("within the limit failed");
    }
  }
}

/** What a rule without uncertainty says: the corrected drop against the limit, or against a display step. */
export type Rule = (test: Simulated) => number;
const ends = (test: Simulated) => {
  const [a, b] = [test.rows[0] as Row, test.rows.at(-1) as Row];
  const mean = ({ T }: Row) => {
    const total = test.volumes.reduce((sum, v) => sum + v, 0);
    return 1 / T.reduce((sum, t, z) => sum + (test.volumes[z] as number) / total / t, 0);
  };
  return { p1: a.p, p2: b.p, T1: mean(a), T2: mean(b), air: test.atmosphere };
};
export const rules: Record<string, Rule> = {
  "raw drop, no correction": (test) => {
    const { p1, p2 } = ends(test);
    return p1 - p2;
  },
  "0.3 psi per °F": (test) => {
    const { p1, p2, T1, T2 } = ends(test);
    return p1 + 0.3 * 6894.757 * 1.8 * (T2 - T1) - p2;
  },
  "0.01 MPa per °C": (test) => {
    const { p1, p2, T1, T2 } = ends(test);
    return p1 + 1e4 * (T2 - T1) - p2;
  },
  "ideal gas on gauge pressure": (test) => {
    const { p1, p2, T1, T2 } = ends(test);
    return (p1 * T2) / T1 - p2;
  },
  "ideal gas, absolute": (test) => {
    const { p1, p2, T1, T2, air } = ends(test);
    return ((p1 + air) * T2) / T1 - air - p2;
  },
};

/** Shares of wrong verdicts of each rule: against the stated limit, and "no drop beyond a display step". */
export function scoreRules(
  simulate: (random: Random) => Simulated,
  seed: number,
  cases: number,
): Record<
  string,
  { tightFailed: number; abovePassed: number; tightFailedNoDrop: number; leakPassedNoDrop: number }
> {
  const random = seeded(seed);
  const tests = Array.from({ length: cases }, () => simulate(random));
  const share = (list: Simulated[], of: (test: Simulated) => boolean) =>
    list.filter(of).length / list.length;
  const tight = tests.filter((test) => test.tight);
  const leaking = tests.filter((test) => !test.tight);
  const above = tests.filter((test) => test.drop > test.limit);
  return Object.fromEntries(
    Object.entries(rules).map(([name, rule]) => [
      name,
      {
        tightFailed: share(tight, (test) => rule(test) > test.limit),
        abovePassed: share(above, (test) => rule(test) <= test.limit),
        tightFailedNoDrop: share(tight, (test) => rule(test) > test.gauge.step),
        leakPassedNoDrop: share(leaking, (test) => rule(test) <= test.gauge.step),
      },
    ]),
  );
}
