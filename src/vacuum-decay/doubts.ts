// What do the figures of a policy not see? Ice below the limit, a pump that still pulls, a rise that quickens,
// a display that stands still, readings that no field gauge shows. Follows IAPWS R14-08(2011) and Wagner & Pruss
// (2002) through water.ts for the ice; the rest is common practice, no source. Does not cover water in oil.
import { Quantity } from "../quantity/quantity.ts";
import { micron } from "../quantity/units/pressure.ts";
import { degC, kelvin } from "../quantity/units/temperature.ts";
import { second } from "../quantity/units/time.ts";
import type { Analysis } from "./analysis.ts";
import { allPoints } from "./binning.ts";
import type { Segment } from "./collect.ts";
import { componentAt } from "./curve/index.ts";
import type { Stage } from "./policy-verdict.ts";
import type { Settings } from "./settings.ts";
import { standstill } from "./standstill.ts";
import { say, type VacuumDecayStatement } from "./statements.ts";
import { passShare } from "./tuning.ts";
import { saturationPa } from "./water.ts";

/**
 * Lowest reading that is believed: thermal gauges end near 1 micron, and a rotary pump leaves some 10 micron,
 * little less at its own inlet; common practice, no source.
 */
const lowestBelieved = 5 * micron.scale;
/** Step of a display that shows the scatter and the outgassing of every hold; common practice, no source. */
const fineStep = 1.001 * micron.scale;

/**
 * Rise in the second half of a hold that is over, below which something may pull at the system; and the rise before
 * which no pass comes early, because the valve to the system may be shut; common practice, no source.
 */
const stillRise: number = /* @__PURE__ */ (() => 0.3 * micron.scale)();
const seenRise: number = /* @__PURE__ */ (() => 5 * micron.scale)();

/** Steps of a display that was the same over the last half of the evidence: wide enough to explain it, or not. */
export function stillness(
  { changed, last, lastP }: Segment,
  { hold, resolutionAt }: Settings,
): "follows" | "wide-steps" | "unexplained" {
  if (changed > last / 2 || last < Math.min(120, hold)) return "follows"; // two minutes may be quiet
  return resolutionAt(lastP) > fineStep ? "wide-steps" : "unexplained";
}

/** A doubt and what settles it. */
export interface Doubt {
  readonly reason: VacuumDecayStatement;
  readonly action: VacuumDecayStatement;
}

/** What is read, whatever the fits say. */
export function doubtsOfReadings(segment: Segment, settings: Settings, k: number): Doubt[] {
  const { coldest, resolutionAt } = settings;
  const { origin, lastP, changed, start } = segment;
  const doubts: Doubt[] = [];
  const saturation = saturationPa(coldest);
  if (lastP > saturation * (1 - k)) {
    const cold = kelvin(coldest).as(degC);
    doubts.push({
      reason: say("vacuum-decay.ice-not-excluded", {
        coldest: cold,
        saturation: new Quantity(saturation, micron),
      }),
      action: say("vacuum-decay.warm-and-repeat", { coldest: cold }),
    });
  }
  const lowest = Math.min(origin, lastP);
  const believed = Math.max(lowestBelieved, resolutionAt(lowest) || 0);
  if (lowest < believed * (1 - 1e-6)) {
    doubts.push({
      reason: say("vacuum-decay.below-gauge", {
        lowest: new Quantity(lowest, micron),
        believed: new Quantity(believed, micron),
      }),
      action: say("vacuum-decay.check-the-gauge"),
    });
  }
  if (stillness(segment, settings) === "unexplained") {
    doubts.push({
      reason: say("vacuum-decay.display-still", {
        since: second(start + changed),
        pressure: new Quantity(lastP, micron),
      }),
      action: say("vacuum-decay.check-the-gauge"),
    });
  }
  return doubts;
}

/** How the course does not look like that of a system that is shut off. */
export function doubtsOfCourse(
  analysis: Analysis,
  settings: Settings,
  noise: number,
  stage: Stage,
): Doubt[] {
  const { segment, components, T, first, endRate, misfit, residual, step } = analysis;
  const doubts: Doubt[] = [];
  const isolation = settings.shutOff
    ? say("vacuum-decay.isolate-at-the-system")
    : say("vacuum-decay.state-isolation");
  const difference = (si: number) => new Quantity(si, micron.difference);
  const { t, p } = allPoints(segment);
  const n = t.length;
  const mean = (list: readonly number[]) => ((list[n - 2] as number) + (list[n - 1] as number)) / 2;
  const end = mean(p);
  const least = 5 * micron.scale + 3 * noise + step + 0.01 * segment.lastP;

  const strange = Math.max(2 * micron.scale + noise + step / 2, 0.01 * segment.lastP);

  // a gauge far from the pump may fall while the pressure equalizes: look after that
  const from = Math.min(T / 4, 180);
  const early = t.findIndex((time) => time >= from);
  const since = early < n - 2 ? (p[early] as number) - end : 0;
  // what rose and came down again was pumped, however early
  const highest = Math.max(...p);
  const risen = highest > (p[0] as number) + least;
  const pumped = highest - (p[n - 1] as number);
  const fall = risen && pumped > 2 * least ? pumped : since;
  const falling = -(endRate.mean + 2 * endRate.u) * T;
  if (fall > least || (n >= 8 && falling > least)) {
    doubts.push({
      reason: say("vacuum-decay.pressure-falls", { fall: difference(Math.max(fall, falling)) }),
      action: isolation,
    });
  }
  const averaged = (at: number) =>
    components.reduce((sum, one) => sum + one.weight * componentAt(one, at), 0);
  // walls and oil never stop in a hold; what stands is pumped
  const still = averaged(T) - averaged(T / 2);
  const isFlat = stage.over ? still < stillRise : averaged(T) - averaged(first) < seenRise;
  if (!settings.shutOff && stage.mayPass && isFlat) {
    doubts.push({
      reason: say("vacuum-decay.too-flat", { change: difference(Math.max(0, still)) }),
      action: isolation,
    });
  }
  const mayPass = stage.mayPass && analysis.odds.bad < passShare;
  const stop = mayPass ? standstill(t, p, least) : undefined;
  if (stop) {
    const { at, missing } = stop;
    doubts.push({
      reason: say("vacuum-decay.rise-stops", {
        elapsed: second(segment.start + at),
        missing: difference(missing),
      }),
      action: say("vacuum-decay.keep-gauge-open", { hold: second(settings.hold) }),
    });
  }
  const late = Math.max(end - averaged(mean(t)), quickening(t, p, T) - least / 2);
  if (late > least) {
    doubts.push({
      reason: say("vacuum-decay.rise-quickens", { late: difference(late) }),
      action: say("vacuum-decay.hold-again", { hold: second(settings.hold) }),
    });
  }
  if (misfit > 12 && residual > strange) {
    doubts.push({
      reason: say("vacuum-decay.course-unexplained", { off: difference(residual) }),
      action: say("vacuum-decay.hold-again", { hold: second(settings.hold) }),
    });
  }
  return doubts;
}

/**
 * How much more rose in a sixth of the time than in an earlier one: leaks, water and walls only slow down. The first
 * sixth is left out, where a gauge behind a hose lags.
 */
function quickening(t: readonly number[], p: readonly number[], T: number): number {
  const parts = 6;
  const at = (part: number) => {
    const next = t.findIndex((time) => time >= (part * T) / parts);
    return next < 0 ? t.length - 1 : next;
  };
  let [least, most] = [Infinity, 0];
  for (let part = 1; part < parts; part++) {
    const [from, to] = [at(part), at(part + 1)];
    const span = (t[to] as number) - (t[from] as number);
    if (to - from < 2) continue; // two readings are no course
    const rise = (((p[to] as number) - (p[from] as number)) * T) / parts / span;
    most = Math.max(most, rise - least);
    least = Math.min(least, Math.max(0, rise));
  }
  return most;
}
