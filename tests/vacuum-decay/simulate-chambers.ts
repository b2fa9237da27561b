// Simulator 1: two chambers joined by a restriction, integrated in time. The gauge sits on the small one.
// Viscous leak from the atmosphere, liquid water evaporating until it is gone or the vapour is saturated,
// water on the walls of a spread of binding strengths that can go back, outgassing as 1/t.

import { saturation } from "./saturation.ts";
import {
  observe,
  type Random,
  type SimulatedCase,
  siteOf,
  type Truth,
  truthOf,
} from "./simulation.ts";

export function simulateChambers(rng: Random, wanted?: Truth): SimulatedCase {
  const site = siteOf(rng);
  const truth = wanted ?? truthOf(rng);
  const { allowed, hold, start } = site;
  const rate = allowed / hold;
  const leaks = truth === "leak" || truth === "leak-and-moisture";
  const wet = truth === "moisture" || truth === "leak-and-moisture";
  const leakRate = leaks ? rate * rng.logBetween(0.4, 30) : 0;

  // a wet spot cools itself by evaporating: what is left heads for the saturation of a colder spot
  const plenty = wet && rng() < 0.3;
  const psat = saturation(site.ambient - rng.between(0, 4));
  const spot = saturation(rng.between(-22, site.ambient));
  const wantedRise = wet ? Math.min(allowed * rng.logBetween(0.5, 25), 0.9 * psat) : 0;
  const tau = rng.logBetween(90, 1200);
  const wetSpot = plenty ? Math.max(spot, start + 0.6 * allowed) : psat;
  let liquid = plenty ? 3 * wetSpot : 0;
  const evaporation = 1 / tau;
  const walls = [0.5, 1, 2].map((factor) => ({
    left: plenty ? 0 : wantedRise * (factor === 1 ? 0.5 : 0.25),
    rate: 1 / (tau * factor),
  }));
  const outgas =
    truth === "outgassing" ? allowed * rng.logBetween(0.4, 2.5) : allowed * rng.between(0, 0.06);
  const pumped = rng.logBetween(300, 5400);
  const outgasK = outgas / Math.log1p(hold / pumped);

  // gauge chamber 1 holds a small part of the volume; conductance grows with pressure (viscous) from a floor
  const part = rng.between(0.03, 0.2);
  const equalise = rng.logBetween(2, 45);
  let p1 = start * rng.between(0.6, 1);
  let p2 = start + (start - p1) * part;
  let vapour = 0;
  let water = 0;
  const dt = 0.5;
  const trace = [p1];
  const wettest = 101_325;
  for (let t = 0; t < site.duration + 2; t += dt) {
    const c = (1 / equalise) * (0.5 + (0.5 * (p1 + p2)) / (2 * start));
    const flow = c * (p2 - p1) * Math.min(1, 1 / (c * dt * 2));
    let source = (leakRate * (wettest ** 2 - p2 ** 2)) / wettest ** 2 + outgasK / (pumped + t);
    if (liquid > 0) {
      const off = Math.min(liquid / dt, evaporation * Math.max(0, wetSpot - p2));
      liquid -= off * dt;
      vapour += off * dt;
      source += off;
      water += off * dt;
    }
    for (const wall of walls) {
      const off = wall.left * wall.rate * (1 - vapour / psat);
      wall.left -= off * dt;
      vapour += off * dt;
      source += off;
      water += off * dt;
    }
    p1 += flow * dt;
    p2 += (source / (1 - part) - (flow * part) / (1 - part)) * dt;
    trace.push(p1);
  }
  const pressureAt = (t: number) => {
    const x = t / dt;
    const i = Math.min(trace.length - 2, Math.floor(x));
    const a = trace[i] as number;
    return a + ((trace[i + 1] as number) - a) * (x - i);
  };
  return observe(rng, site, truth, leakRate, water, pressureAt, "autoregressive");
}
