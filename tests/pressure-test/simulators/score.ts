// Scores a judgment against the hidden truth, beside what common rules say of the same readings.
import {
  assessPressureLog,
  assessPressureTest,
  type PressureTestAssessment,
  type PressureTestSetup,
} from "hvac-install-math/pressure-test";
import {
  deltaK,
  kelvin,
  kPag,
  liter,
  pascal,
  pascalAbsolute,
  percent,
  type Quantity,
  second,
} from "hvac-install-math/quantity";
import type { Row, Simulated } from "./simulated.ts";

export type By = "two readings" | "log";

export interface Score {
  cases: number;
  tight: number;
  tightFailed: number;
  tightPassed: number;
  leaking: number;
  /** Leaks above the limit, of which failed and passed; passed although above the limit by more than U. */
  above: number;
  aboveFailed: number;
  abovePassed: number;
  wellAbovePassed: number;
  /** Leaks of any size that were proven, and that were passed. */
  proven: number;
  leakPassed: number;
  open: number;
  /** Of the tight. */
  tightOpen: number;
  tightCalledLeaking: number;
  covered: number;
  /** Error of the drop in units of its standard uncertainty, and in Pa. */
  errors: number[];
  pascals: number[];
  misses: string[];
}

/** What the user states: careful all of it, hurried accuracy and step. */
export function statedOf(test: Simulated): PressureTestSetup {
  const { gauge, thermometer, volumes, volumeError, care } = test;
  const careful = care === "careful";
  return {
    instruments: {
      pressure: {
        accuracy: pascal(gauge.accuracy),
        resolution: pascal(gauge.step),
        ...(careful && { drift: pascal(gauge.drift) }),
      },
      temperature: {
        accuracy: deltaK(thermometer.accuracy),
        resolution: deltaK(thermometer.step),
        ...(careful && { followsGasWithin: deltaK(thermometer.follows) }),
      },
      ...(careful && { volumeUncertainty: percent(volumeError * 100) }),
    },
    atmosphere: pascalAbsolute(test.atmosphere),
    ...(careful && {
      volume: volumes.map((v) => liter(v * 1e3)),
      sinceFill: second(test.sinceFill),
      elsewhere: { share: percent(0) },
    }),
  };
}

/** A row as the library takes it. */
export function readingOf(row: Row): {
  elapsed: Quantity<"duration">;
  pressure: Quantity<"gaugePressure">;
  temperature: Quantity<"temperature">[];
} {
  return {
    elapsed: second(row.t),
    pressure: kPag(row.p / 1e3),
    temperature: row.T.map((T) => kelvin(T)),
  };
}

const roundLimits = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10];
/** The smallest round limit in psi of at least twice U, up to 1 % of the fill; Pa. */
export function limitFor(U: number, fill: number): number {
  const wanted = (2 * U) / 6894.757;
  const decade = 10 ** Math.floor(Math.log10(wanted));
  const round = roundLimits.find((r) => r * decade >= wanted * (1 - 1e-12)) as number;
  return Math.min(round * decade * 6894.757, 0.01 * fill);
}

/** Both verdicts on a test: without a limit, and with the one that a user would state who knows U. */
export function verdictOn(
  test: Simulated,
  by: By,
): { limit: number; free: PressureTestAssessment; judged: PressureTestAssessment } {
  const stated = statedOf(test);
  const rows = test.rows.map(readingOf);
  const run = (setup: PressureTestSetup) =>
    by === "log"
      ? assessPressureLog({ ...setup, readings: rows })
      : assessPressureTest({
          ...setup,
          start: rows[0] as (typeof rows)[0],
          end: rows.at(-1) as (typeof rows)[0],
        });
  const free = run(stated);
  const U = free.correctedDrop.expandedUncertainty.si;
  const limit = limitFor(U, (test.rows[0] as Row).p);
  return { limit, free, judged: run({ ...stated, criterion: { maximumDrop: pascal(limit) } }) };
}

export function score(next: () => Simulated, cases: number, by: By): Score {
  const s: Score = {
    cases,
    tight: 0,
    tightFailed: 0,
    tightPassed: 0,
    leaking: 0,
    above: 0,
    aboveFailed: 0,
    abovePassed: 0,
    wellAbovePassed: 0,
    proven: 0,
    leakPassed: 0,
    open: 0,
    tightOpen: 0,
    tightCalledLeaking: 0,
    covered: 0,
    errors: [],
    pascals: [],
    misses: [],
  };
  for (let i = 0; i < cases; i++) count(s, next(), by, i);
  return s;
}

function count(s: Score, test: Simulated, by: By, i: number): void {
  const { limit, free, judged } = verdictOn(test, by);
  const { outcome, correctedDrop } = judged;
  const found = correctedDrop.value.si;
  const U = correctedDrop.expandedUncertainty.si;
  const error = found - test.drop;
  const miss = (what: string) =>
    s.misses.push(
      `#${i} ${what}: true ${test.drop.toFixed(0)}, found ${found.toFixed(0)} ± ${U.toFixed(0)}, limit ${limit.toFixed(0)} Pa, ${((test.rows.at(-1) as Row).t / 3600).toFixed(1)} h; largest ${judged.uncertaintyBudget[0]?.part}`,
    );
  if (Math.abs(error) <= U) s.covered++;
  s.errors.push(error / correctedDrop.standardUncertainty.si);
  s.pascals.push(error);
  if (outcome === "inconclusive") s.open++;
  if (test.tight) {
    s.tight++;
    if (outcome === "pass") s.tightPassed++;
    if (outcome === "inconclusive") s.tightOpen++;
    if (free.cause === "leak") s.tightCalledLeaking++;
    if (outcome === "fail") {
      s.tightFailed++;
      miss("tight failed");
    }
    return;
  }
  s.leaking++;
  if (free.cause === "leak") s.proven++;
  if (outcome === "pass") s.leakPassed++;
  if (test.drop <= limit) return;
  s.above++;
  if (outcome === "fail") s.aboveFailed++;
  if (outcome === "pass") {
    s.abovePassed++;
    miss("above the limit passed");
    if (test.drop > limit + U) s.wellAbovePassed++;
  }
}

/** What a rule without uncertainty says: the corrected drop, to hold against a limit. */
export const rules: Record<string, (test: Simulated) => number> = {
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
  "ideal gas, absolute": (test) => {
    const { p1, p2, T1, T2, air } = ends(test);
    return ((p1 + air) * T2) / T1 - air - p2;
  },
};
function ends(test: Simulated) {
  const [a, b] = [test.rows[0] as Row, test.rows.at(-1) as Row];
  const total = test.volumes.reduce((sum, v) => sum + v, 0);
  const mean = ({ T }: Row) =>
    1 / T.reduce((sum, t, z) => sum + (test.volumes[z] as number) / total / t, 0);
  return { p1: a.p, p2: b.p, T1: mean(a), T2: mean(b), air: test.atmosphere };
}

/** Shares of wrong verdicts of each rule against 1 % of the fill: tight failed, leaks above it passed. */
export function scoreRules(
  next: () => Simulated,
  cases: number,
): Record<string, { tightFailed: number; abovePassed: number }> {
  const tests = Array.from({ length: cases }, next);
  const limit = (test: Simulated) => 0.01 * (test.rows[0] as Row).p;
  const share = (list: Simulated[], of: (test: Simulated) => boolean) =>
    list.filter(of).length / Math.max(1, list.length);
  const tight = tests.filter((test) => test.tight);
  const above = tests.filter((test) => test.drop > limit(test));
  return Object.fromEntries(
    Object.entries(rules).map(([name, rule]) => [
      name,
      {
        tightFailed: share(tight, (test) => rule(test) > limit(test)),
        abovePassed: share(above, (test) => rule(test) <= limit(test)),
      },
    ]),
  );
}
