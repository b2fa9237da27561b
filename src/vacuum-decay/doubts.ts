// What do the figures of a policy not see? Ice below the limit, a pump that still pulls, a rise that quickens.
// Follows IAPWS R14-08(2011) and Wagner & Pruss (2002) through water.ts for the ice; the rest is common
// practice, no source. Does not cover water in oil.
import type { Reason } from "../assessment/assessment.ts";
import { Quantity } from "../quantity/quantity.ts";
import { micron } from "../quantity/units/pressure.ts";
import { degC, kelvin } from "../quantity/units/temperature.ts";
import type { Segment } from "./collect.ts";
import { type Component, componentAt } from "./component.ts";
import type { Settings } from "./settings.ts";
import { saturationPa } from "./water.ts";

/** Each of these takes back a pass, and the words "dry and tight". */
export function doubtsOf(
  components: readonly Component[],
  { origin, t: times, p: rises, open, last: T, lastP }: Segment,
  { coldest }: Settings,
  { k, least }: { readonly k: number; readonly least: number },
): { code: string; text: string; values: Reason["values"] }[] {
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
  if (n < 2) return doubts;

  // a gauge far from the pump may fall while the pressure equalises: look after that
  const from = Math.min(T / 4, 180);
  const fall = (p[t.findIndex((time) => time >= from)] ?? end) - end;
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
