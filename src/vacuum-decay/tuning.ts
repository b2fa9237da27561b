// Which amounts matter to a system, and which thresholds turn weights into words? Common practice, no source; the
// shares and factors were chosen on simulated logs. Does not cover the policy's limits: policies.ts.
import { micron, micronPerMinute } from "../quantity/units/pressure.ts";

const rate = (microns: number): number => microns * micronPerMinute.scale;

/** The volume for which the rates below are meant, m³: a small split with its hoses. */
export const usualVolume = 0.003;

/** A leak that matters, Pa/s in the usual volume: half of what a policy allows. */
export const materialLeak: number = /* @__PURE__ */ rate(5);
/** In large volumes a leak matters from this many times as much throughput on: three quarters of what a policy allows. */
export const largeShare = 1.5;
/** Rise of everything together that a dry and tight system has fallen below by the end, Pa/s. */
export const materialEndRate: number = /* @__PURE__ */ rate(6);
/** Water that matters: 300 micron and 5 % of the rise; below, walls, hoses and oil make as much. */
export const materialWater: number = /* @__PURE__ */ (() => 300 * micron.scale)();
export const materialWaterPart = 0.05;
/** Largest equalization that is likely, Pa: the drop over hoses and tubes while the pump pulls. */
export const equalization: number = /* @__PURE__ */ (() => 300 * micron.scale)();
/** What hoses of unknown make may let in, Pa·m³/s: 3 micron·L/min. */
export const hoseAllowance: number = /* @__PURE__ */ (() => rate(3) * 1e-3)();

/**
 * Parts of what hoses may let in that a leak and a rise at the end may have besides: what they usually let in, and what
 * fades. In half a liter a leak then matters from 7 micron/min on, a quarter of the throughput that matters in 3 L.
 */
export const hosesOfLeak: number = 1 / 3;
export const hosesOfEndRate: number = 1 / 2;

/** Largest share of the evidence for something bad beside which a system passes: at the end, and before it. */
export const passShare = 0.1;
export const earlyShare = 0.05;
/** Share of the evidence that proves something bad: at the end, and before it. */
export const failShare = 0.95;
export const earlyFailShare = 0.99;
/** Share of the evidence that names a leak or water, and below which the other is excluded: 3 to 1. */
export const named = 0.75;
/** Share that names a leak beside water, 10 to 3: more often than not what was named wrong was water alone. */
export const namedBeside = 0.77;
export const excluded = 0.25;
/** Share of water above which what looks like it is outgassing. */
export const sureOutgassing = 0.88;

/**
 * Variance that the fit never goes below, as a part of what the gauge's step and noise explain: a display that stands, or
 * rows that were typed smooth, leave next to nothing of their step, and every row more would make the odds between shapes
 * larger by the logarithm of nothing. A scatter below a fifth of the step (√0.05) is not believed.
 */
export const floor = 0.05;
/** Part of the curved rise in the second half, per time, by which a wrong shape can feign a leak. */
export const discrepancy = 0.08;
/** Rise within a hold that walls may make and no shape has caught, Pa: 4 micron. */
export const walls: number = /* @__PURE__ */ (() => 4 * micron.scale)();
/** Points below which nothing is fitted, and below which shapes are not told apart. */
export const fewestPoints = 4;
export const enoughPoints = 8;
/** Largest rise over the hold that outgassing is believed to make, Pa: 2000 micron. */
export const outgassingMax: number = /* @__PURE__ */ (() => 2000 * micron.scale)();
/** Usual rise by outgassing in 10 min, Pa: 100 micron. */
export const outgassing: number = /* @__PURE__ */ (() => 100 * micron.scale)();
/** Longest time constant of outgassing, s. */
export const outgassingTau = 600;
/** Time constants of water beyond this, three times what was watched, are a straight line, s. */
export const slowestWater = (watched: number): number => Math.max(480, 3 * watched);
