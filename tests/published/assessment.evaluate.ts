import {
  conformity,
  normalProbability,
  normalQuantile,
  propagate,
  studentQuantile,
} from "hvac-install-math/assessment";
import { kPa, kPaa } from "hvac-install-math/quantity";
import type { Evaluators } from "./check.ts";

// JCGM 100:2008, H.2, table H.2: five simultaneous observations of voltage, current and phase.
const voltage = [5.007, 4.994, 5.005, 4.99, 4.999];
const current = [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3];
const phase = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

const mean = (x: number[]) => x.reduce((sum, v) => sum + v, 0) / x.length;
/** Covariance of the means of two series, JCGM 100:2008, eq. 17. */
const covariance = (x: number[], y: number[]) =>
  x.reduce((sum, v, i) => sum + (v - mean(x)) * ((y[i] ?? 0) - mean(y)), 0) /
  (x.length * (x.length - 1));
const deviation = (x: number[]) => Math.sqrt(covariance(x, x));
const correlation = (x: number[], y: number[]) => covariance(x, y) / (deviation(x) * deviation(y));

const impedance = {
  R: ([V = 0, I = 1, phi = 0]: readonly number[]) => (V / I) * Math.cos(phi),
  X: ([V = 0, I = 1, phi = 0]: readonly number[]) => (V / I) * Math.sin(phi),
  Z: ([V = 0, I = 1]: readonly number[]) => V / I,
};

export const evaluators: Evaluators = {
  conformanceProbability: ({ value, u, lower }: { value: number; u: number; lower: number }) =>
    conformity({ value: kPaa(value), standardUncertainty: kPa(u), lowerLimit: kPaa(lower) })
      .conformanceProbability,
  combined: ({ shares }: { shares: number[] }) =>
    propagate(
      (v) => v.reduce((a, b) => a + b, 0),
      shares.map((uncertainty) => ({ value: 0, uncertainty })),
    ).uncertainty,
  impedance: ({ output }: { output: keyof typeof impedance }) =>
    propagate(
      impedance[output],
      [voltage, current, phase].map((x) => ({ value: mean(x), uncertainty: deviation(x) })),
      [
        [0, 1, correlation(voltage, current)],
        [0, 2, correlation(voltage, phase)],
        [1, 2, correlation(current, phase)],
      ],
    ).uncertainty,
  normalQuantile: ({ p }: { p: number }) => normalQuantile(p),
  normalProbability: ({ z }: { z: number }) => normalProbability(z),
  studentQuantile: ({ p, dof }: { p: number; dof: number }) => studentQuantile(p, dof),
};
