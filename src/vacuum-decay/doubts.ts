// What do the figures of a policy not see? Ice below the limit, a pump that still pulls, a rise that quickens,
// a display that stands still, readings that no field gauge shows. Follows IAPWS R14-08(2011) and Wagner & Pruss
// (2002) through water.ts for the ice; the rest is common practice, no source. Does not cover water in oil.
import type { Reason } from "../assessment/assessment.ts";
import { Quantity } from "../quantity/quantity.ts";
import { micron } from "../quantity/units/pressure.ts";
import { degC, kelvin } from "../quantity/units/temperature.ts";
import { second } from "../quantity/units/time.ts";
import type { Segment } from "./collect.ts";
import { type Component, componentAt } from "./component.ts";
import type { Settings } from "./settings.ts";
import { saturationPa } from "./water.ts";

/**
 * Lowest reading that is believed: thermal gauges end near 1 micron, and a rotary pump leaves some 10 micron,
 * little less at its own inlet; common practice, no source.
 */
const lowestBelieved = 5 * micron.scale;
/** Step of a display that shows the scatter and the outgassing of every hold; common practice, no source. */
const fineStep = 1.001 * micron.scale;

/** Steps of a display that was the same over the last half of the evidence: wide enough to explain it, or not. */
export function stillness(
  { changed, last, lastP }: Segment,
  { hold, resolutionAt }: Settings,
): "follows" | "wide-steps" | "unexplained" {
  if (changed > last / 2 || last < Math.min(120, hold)) return "follows"; // two minutes may be quiet
  return resolutionAt(lastP) > fineStep ? "wide-steps" : "unexplained";
}

/** Each of these takes back a pass, and the words "dry and tight". */
export function doubtsOf(
  components: readonly Component[],
  segment: Segment,
  settings: Settings,
  { k, least }: { readonly k: number; readonly least: number },
): { code: string; text: string; values: Reason["values"] }[] {
  const { coldest, resolutionAt } = settings;
  const { origin, t: times, p: rises, open, last: T, lastP, changed, start } = segment;
  const doubts: { code: string; text: string; values: Reason["values"] }[] = [];
  const doubt = (code: string, text: string, values: Reason["values"]) =>
    doubts.push({ code, text, values });
  const t = open ? [...times, open.t / open.n] : times;
  const p = open ? [...rises, open.p / open.n] : rises;
  const n = t.length;
  const [before, latest] = [n - 2, n - 1];
  const mean = (list: readonly number[]) =>
    ((list[before] as number) + (list[latest] as number)) / 2;
  const end = n < 2 ? lastP - origin : mean(p);

  const saturation = saturationPa(coldest);
  if (origin + end > saturation * (1 - k)) {
    doubt(
      "ice-not-excluded",
      "Water or ice at the coldest part ({coldest}) levels off at {saturation}, no higher than what was read: warm that part and repeat.",
      { coldest: kelvin(coldest).as(degC), saturation: new Quantity(saturation, micron) },
    );
  }
  const lowest = origin + Math.min(0, end);
  const believed = Math.max(lowestBelieved, resolutionAt(lowest) || 0);
  if (lowest < believed * (1 - 1e-6)) {
    doubt(
      "below-gauge",
      "{lowest} proves nothing: this gauge and a rotary pump do not reach below {believed}. Were torr or mbar taken for micron? Check the unit, and the gauge's range and resolution.",
      { lowest: new Quantity(lowest, micron), believed: new Quantity(believed, micron) },
    );
  }
  if (stillness(segment, settings) === "unexplained") {
    doubt(
      "display-still",
      "The reading stood at {pressure} since {since}, stiller than any hold: is the display held, or the gauge shut off from the system? Repeat, or state the resolution where its steps are wide.",
      { since: second(start + changed), pressure: new Quantity(lastP, micron) },
    );
  }
  if (n < 2) return doubts;

  // a gauge far from the pump may fall while the pressure equalises: look after that
  const from = Math.min(T / 4, 180);
  const early = t.findIndex((time) => time >= from);
  const fall = early < before ? (p[early] as number) - end : 0;
  if (fall > least) {
    doubt("pressure-falls", "The pressure fell by {fall}: is the pump valved off?", {
      fall: new Quantity(fall, micron.difference),
    });
  }
  const at = mean(t);
  const fitted = components.reduce((sum, one) => sum + one.weight * componentAt(one, at), 0);
  if (end - fitted > least) {
    doubt(
      "rise-quickens",
      "The last readings lie {late} above every fitted curve: the rise quickens, keep watching.",
      { late: new Quantity(end - fitted, micron.difference) },
    );
  }
  return doubts;
}
