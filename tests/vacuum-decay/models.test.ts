// The fast table of inner products against brute force: every model of the set fitted by itself with Householder QR
// (which reproduces NIST StRD, see tests/published), weighed by the published formulas with the priors that
// evidence.ts states.
import { describe, expect, it } from "vitest";
import { degC } from "../../src/quantity/index.ts";
import { binWeight, collect, createCollector, wholeGram } from "../../src/vacuum-decay/collect.ts";
import { type Component, componentAt } from "../../src/vacuum-decay/curve/component.ts";
import {
  fastTaus,
  levelling,
  slowCount,
  slowShape,
  slowShapes,
  slowTau,
} from "../../src/vacuum-decay/curve/shapes.ts";
import { createWorkspace, lineUncertainty } from "../../src/vacuum-decay/curve/workspace.ts";
import { acceptancePolicies } from "../../src/vacuum-decay/policies/acceptance-policies.ts";
import { settingsOf } from "../../src/vacuum-decay/settings.ts";
import { weighModels } from "../../src/vacuum-decay/weigh.ts";
import { aiccOf, linearLeastSquares } from "./qr-least-squares.ts";
import { random } from "./random.ts";

const limits = {
  largest: { water: 300, outgassing: 260, waterTau: 1800, outgassingTau: 600 },
  floor: 0.1,
  equalization: 12,
  outgassing: 15,
  aheadTime: 1300,
  end: 900,
};
/** Readings as good as which the scatter is known beforehand. */
const prior = 2;

/** A log in Pa, judged by the library's own steps up to the weights. */
function weighed(pressure: (t: number) => number, until: number, step: number, noise: number) {
  const settings = settingsOf({ ambient: degC(20), policy: acceptancePolicies.commonPractice500 });
  const log = createCollector(settings, 100);
  const rng = random(4);
  for (let t = 0, row = 0; t <= until; t += step) {
    collect(log, t, pressure(t) + noise * rng.normal(), row++);
  }
  const { segment } = log;
  if (!segment) throw new Error("no segment");
  const work = createWorkspace();
  wholeGram(log, segment, work.gram);
  const { open } = segment;
  const t = [...segment.t, open.t / open.n];
  const root = [...segment.w, binWeight(log, segment, open)].map(Math.sqrt);
  const y = [...segment.p, open.p / open.n].map((p, i) => p * (root[i] as number));
  const fastest = step / 2; // as the analysis has it
  return { ...weighModels(work, { ...limits, fastest }), fastest, work, t, root, y };
}

interface Model {
  readonly fast: number;
  readonly shape: number;
  readonly k: number;
  readonly line: boolean;
}

/** The columns of a model at a time: 1, two fast exponentials, the line, the slow shape. */
function columnsAt({ fast, shape, k, line }: Model, t: number): number[] {
  const rise = (tau: number | undefined) => -Math.expm1(-t / (tau ?? 1));
  return [
    1,
    ...(fast < 0 ? [] : [rise(fastTaus[fast]), rise(fastTaus[fast + 1])]),
    ...(line ? [t] : []),
    ...(shape < 0 ? [] : [slowShape(shape, t, slowTau(k))]),
  ];
}

function fitted(model: Model, t: readonly number[], root: readonly number[], y: readonly number[]) {
  const rows = t.map((at, i) => columnsAt(model, at).map((x) => x * (root[i] as number)));
  const columns = (rows[0] as number[]).map((_, j) => rows.map((row) => row[j] as number));
  return linearLeastSquares(columns, y);
}

/** Constant and variance, two of an equalization, the line, amplitude and time constant. */
const parametersOf = ({ fast, shape, line }: Pick<Model, "fast" | "shape" | "line">): number =>
  2 + (fast < 0 ? 0 : 2) + (line ? 1 : 0) + (shape < 0 ? 0 : 2);

/** Shares of the evidence of every model, keyed by its words. */
function bruteForce(log: Pick<ReturnType<typeof weighed>, "t" | "root" | "y" | "fastest">) {
  const { t, root, y, fastest } = log;
  const n = t.length;
  const { largest, floor, aheadTime } = limits;
  interface Found extends Model {
    readonly rss: number;
    /** What is known of equalization and outgassing before any reading. */
    readonly odds: number;
  }
  const families = new Map<string, Found[]>();
  for (let fast = -1; fast < fastTaus.length - 1; fast++) {
    const shared = fast < 0 ? 1 : 3;
    if (fast >= 0 && (fastTaus[fast + 1] as number) < fastest) continue;
    for (let shape = -1; shape < slowShapes.length; shape++) {
      for (let k = 0; k < (shape < 0 ? 1 : slowCount); k++) {
        // a slow shape is slower than the equalization
        if (shape >= 0 && fast >= 0 && slowTau(k) < 2 * (fastTaus[fast + 1] as number) * (1 - 1e-9))
          continue;
        // a slower one is a straight line
        const longest = shape < levelling ? largest.waterTau : largest.outgassingTau;
        if (shape >= 0 && slowTau(k) > longest * (1 + 1e-9)) continue;
        for (const line of [false, true]) {
          if (n < parametersOf({ fast, shape, line }) + 1) continue;
          const model = { fast, shape, k, line };
          const { coefficients, rss } = fitted(model, t, root, y);
          const amplitude = coefficients.at(-1) as number;
          const slope = coefficients[shared] as number;
          const most =
            shape < levelling
              ? largest.water
              : largest.outgassing / slowShape(shape, aheadTime, slowTau(k));
          if (shape >= 0 && !(amplitude > 0 && amplitude < most)) continue;
          if (shape >= 0 && line && !(slope > 0)) continue;
          const [, a = 0, b = 0] = coefficients;
          const jump = fast < 0 ? 0 : a + b;
          const oneSign = fast < 0 || Math.abs(jump) >= 0.5 * (Math.abs(a) + Math.abs(b));
          const over = Math.max(0, jump / limits.equalization - 1) / 0.3;
          const gassed = shape < levelling ? 0 : amplitude * slowShape(shape, 600, slowTau(k));
          const usual = (x: number) => Math.max(1e-5, Math.exp(-(x ** 2) / 2));
          const odds = (oneSign ? 1 : 1 / 20) * usual(over) * usual(gassed / limits.outgassing);
          const key = `${fast >= 0} ${shape} ${line}`;
          families.set(key, [...(families.get(key) ?? []), { ...model, rss, odds }]);
        }
      }
    }
  }
  const scored = [...families.values()].map((all) => {
    const best = all.reduce((least, one) => (one.rss < least.rss ? one : least));
    const { fast, shape, line, rss } = best;
    const slow = shape >= 0;
    const K = parametersOf({ fast, shape, line });
    // AICc with its small-sample term held to the size of the plain one
    const penaltyOf = (k: number) => 2 * k + Math.min(2 * k, aiccOf(n, n, k) - 2 * k);
    const capped = (k: number) => (n > k + 1 ? penaltyOf(k) : 4 * k);
    const m = n + prior;
    const misfit = m * Math.log((rss + n * floor + prior) / m);
    const aicc = misfit + capped(K);
    // the time constant is averaged over; a line beside a curve costs nothing: no leak is as likely as a leak (no source)
    const penalty = capped(slow ? K - 1 - (line ? 1 : 0) : K);
    const score = misfit + penalty + (slow ? 2 * Math.log(7) : 0);
    const members = slow ? all.filter((one) => one.fast === fast) : [best];
    return { best, aicc, score, members };
  });
  const usable = scored;
  const top = usable.reduce((least, one) => (one.aicc < least.aicc ? one : least));
  const freedom = Math.max(1, n + 1 - parametersOf(top.best)) + prior;
  const variance = (top.best.rss + n * floor + prior) / freedom;
  const least = Math.min(...usable.map(({ score }) => score));
  let weights: { model: Model; weight: number; aicc: number }[] = [];
  for (const { best, aicc, score, members } of usable) {
    const family = Math.exp((least - score) / 2);
    const oddsOf = (one: (typeof members)[number]) =>
      one.shape < 0
        ? 1
        : Math.exp(-(one.rss - best.rss) / (2 * variance)) / (1 + (slowTau(one.k) / 5400) ** 2);
    // every second, third … of the likely time constants stands for its neighbors, from the best on
    const likely = members.filter((one) => oddsOf(one) > 0.02).length;
    const apart = Math.max(1, Math.floor(likely / 3));
    for (const one of members) {
      const odds = oddsOf(one);
      if (family <= 2e-3 || odds <= 0.02) continue; // too small to matter
      if (one.shape >= 0 && (one.k - best.k) % apart !== 0) continue;
      const share = one.shape < 0 ? 1 : (odds * apart) / slowCount;
      weights.push({ model: one, weight: family * share * one.odds, aicc });
    }
  }
  const sum = () => weights.reduce((all, { weight }) => all + weight, 0);
  const total = sum();
  weights = weights.filter(({ weight }) => weight > 3e-4 * total);
  const kept = sum();
  return {
    variance,
    freedom,
    rss: top.best.rss,
    weights: weights.map((one) => ({ ...one, weight: one.weight / kept })),
  };
}

const keyOf = ({ fast, shape, tau, line }: Component) =>
  `${fast} ${shape} ${shape < 0 ? 0 : Math.round((2 * Math.log(tau / 60)) / Math.log(1.25))} ${line}`;

const logs = [
  ["a constant", () => 40, 900, 10, 0.3],
  ["a leak", (t: number) => 40 + 0.02 * t, 900, 10, 0.3],
  ["water", (t: number) => 40 - 80 * Math.expm1(-t / 200), 1200, 10, 0.5],
  ["water between two time constants", (t: number) => 40 - 30 * Math.expm1(-t / 200), 900, 10, 0.5],
  ["water with a leak", (t: number) => 40 - 60 * Math.expm1(-t / 150) + 0.03 * t, 1500, 10, 0.4],
  ["outgassing", (t: number) => 40 + 20 * Math.log1p(t / 100), 1500, 15, 0.2],
  [
    "an equalization before a slow leak",
    (t: number) => 40 - 15 * Math.expm1(-t / 12) + 0.01 * t,
    900,
    2,
    0.2,
  ],
  [
    "water above all that the ambient allows",
    (t: number) => 40 - 900 * Math.expm1(-t / 400),
    1500,
    15,
    1,
  ],
  [
    "outgassing above all that is believed",
    (t: number) => 40 + 200 * Math.log1p(t / 100),
    1200,
    15,
    0.5,
  ],
  ["a rise that quickens", (t: number) => 40 + 5e-5 * t * t, 900, 15, 0.2],
  [
    "water in a pressure that falls",
    (t: number) => 60 - 30 * Math.expm1(-t / 150) - 0.02 * t,
    900,
    15,
    0.2,
  ],
  ["six points", (t: number) => 40 + 0.03 * t, 600, 120, 0.2],
  ["seven points", (t: number) => 40 + 0.03 * t, 720, 120, 0.2],
  ["four points", (t: number) => 40 + 0.03 * t, 720, 240, 0.2],
] as const;

describe.each(logs)("the models of %s", (_, pressure, until, step, noise) => {
  const judged = () => weighed(pressure, until, step, noise);

  it("carry the weights that brute force gives them", () => {
    const log = judged();
    const brute = bruteForce(log);
    const ours = new Map(log.components.map((one) => [keyOf(one), one]));
    expect(log.components.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(log.variance / brute.variance).toBeCloseTo(1, 6);
    // what the best leaves: χ² per degree of freedom, and the weighted root mean square
    const weight = log.root.reduce((sum, one) => sum + one * one, 0);
    expect(log.freedom).toBe(brute.freedom);
    expect((log.misfit * brute.freedom) / brute.rss).toBeCloseTo(1, 4);
    expect((log.residual ** 2 * weight) / brute.rss).toBeCloseTo(1, 4);
    expect(brute.weights).toHaveLength(log.components.length);
    for (const { model, weight, aicc } of brute.weights) {
      const one = ours.get(`${model.fast} ${model.shape} ${model.k} ${model.line}`);
      expect(one?.weight, JSON.stringify(model)).toBeCloseTo(weight, 5);
      expect(one?.aicc).toBeCloseTo(aicc, 4);
    }
    const least = Math.min(...log.components.map(({ aicc }) => aicc));
    const equals = log.components.filter(({ aicc }) => aicc === least);
    expect(log.best?.aicc).toBe(least);
    expect(log.best?.weight).toBe(Math.max(...equals.map(({ weight }) => weight)));
  });

  it("have the coefficients, uncertainties and forecasts of a fit by QR", () => {
    const log = judged();
    const { t, root, y, variance } = log;
    for (const one of log.components) {
      const { fast, shape, tau, line } = one;
      const k = Math.round((2 * Math.log(tau / 60)) / Math.log(1.25));
      const model = { fast, shape, k, line };
      const { coefficients, inverse } = fitted(model, t, root, y);
      const columns = columnsAt(model, limits.aheadTime);
      const ahead = columns.reduce((sum, x, i) => sum + x * (coefficients[i] as number), 0);
      const spread = columns.reduce(
        (sum, x, i) =>
          sum + x * columns.reduce((s, z, j) => s + z * (inverse[i]?.[j] as number), 0),
        0,
      );
      const at = fast < 0 ? 1 : 3;
      const expected = {
        constant: coefficients[0],
        fast1: fast < 0 ? 0 : coefficients[1],
        fast2: fast < 0 ? 0 : coefficients[2],
        slope: line ? coefficients[at] : 0,
        slopeU: line ? Math.sqrt(variance * (inverse[at]?.[at] as number)) : 0,
        amplitude: shape < 0 ? 0 : coefficients.at(-1),
        amplitudeU: shape < 0 ? 0 : Math.sqrt(variance * (inverse.at(-1)?.at(-1) as number)),
        ahead,
        aheadU: Math.sqrt(variance * spread),
        endRate: (componentAt(one, limits.end + 0.01) - componentAt(one, limits.end - 0.01)) / 0.02,
      };
      for (const [name, value] of Object.entries(expected)) {
        const ours = one[name as keyof typeof expected];
        const scale = Math.max(Math.abs(value as number), 1e-5);
        expect(Math.abs(ours - (value as number)) / scale, `${name} of ${keyOf(one)}`).toBeLessThan(
          1e-4,
        );
      }
      expect(componentAt(one, limits.aheadTime)).toBeCloseTo(one.ahead, 6);
    }
  });

  it("leave a plain line the uncertainty that QR gives it", () => {
    const log = judged();
    const { inverse } = fitted({ fast: -1, shape: -1, k: 0, line: true }, log.t, log.root, log.y);
    const expected = Math.sqrt(2 * (inverse[1]?.[1] as number));
    expect(lineUncertainty(log.work, 2) / expected).toBeCloseTo(1, 6);
  });
});
