// Can the pressures of plate and manual be as they are recorded? The mark, and the least pressure of the test.
// Follows the saturation pressure of the refrigerants; the limits are common practice, no source. A doubt, never a fail.
// Does not cover the readings: see test-doubts.ts.
import { Quantity } from "../quantity/quantity.ts";
import { MPag } from "../quantity/units/pressure.ts";
import { degF } from "../quantity/units/temperature.ts";
import { bubblePressure } from "../refrigerants/index.ts";
import { atmosphereOf, type Job } from "./job.ts";
import { oddFigure } from "./odd-figure.ts";
import type { Trial } from "./step.ts";

/** No part of a split system is marked lower or higher, but for carbon dioxide. */
const [lowest, highest] = [/* @__PURE__ */ MPag(1), /* @__PURE__ */ MPag(10)];

/** That more is asked for than any mark allows, the test itself says. */
const higher = (required: Quantity<"gaugePressure">) =>
  required.si > highest.si ? required : highest;

/** Share of the refrigerant's own pressure at 80 °F below which a test tests nothing. */
const least = 0.5;

/** What cannot be right of the pressures of plate and manual. */
export function doubtsOfPressures(job: Job): Trial[] {
  const { record, refrigerant } = job;
  const { lowestMarkedPressure: marked, manual } = record.equipment ?? {};
  const { atmosphere, altitude } = record.site ?? {};
  const required = manual?.testPressure;
  const doubts: Trial[] = [];
  if (refrigerant?.designation !== "R-744") {
    doubts.push(...oddFigure("equipment.lowestMarkedPressure", marked, [lowest, highest]));
  }
  const warm = degF(80);
  if (!required || !refrigerant || warm.si > refrigerant.range.max.si) return doubts;
  if (!atmosphere && !altitude) return doubts;
  const own = bubblePressure(refrigerant, warm).si - airOf(job);
  const low = new Quantity(Number((least * own).toPrecision(2)), required.unit);
  return [
    ...doubts,
    ...oddFigure("equipment.manual.testPressure", required, [low, higher(required)]),
  ];
}

/** The air at the site, Pa; that of sea level where it cannot be right, which the test says. */
function airOf(job: Job): number {
  try {
    return atmosphereOf(job).si;
  } catch {
    return 101_325;
  }
}
