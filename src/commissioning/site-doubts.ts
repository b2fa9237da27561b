// Can the site be as it is recorded? Its barometer against its altitude.
// Follows the U.S. Standard Atmosphere 1976; weather moves it by some 4 kPa at most (common practice, no source).
// Does not cover the weather itself.
import { atmosphereAtAltitude } from "../quantity/atmosphere.ts";
import { known } from "../quantity/known.ts";
import { rounded } from "../quantity/rounded.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

const weather = 4000; // Pa
const highest = 4500; // m, above which few people live

/** What cannot be right of the site. */
export function doubtsOfSite({ record: { site } }: Job): Trial[] {
  const { altitude, atmosphere } = site ?? {};
  const doubts: Trial[] = [];
  if (altitude && altitude.si > highest) {
    doubts.push(doubt("site.altitude", say("commissioning.altitude-odd", { altitude })));
  }
  if (!altitude || !atmosphere) return doubts;
  const average = known(() => atmosphereAtAltitude(altitude)); // else the pressure test names it
  if (!average || Math.abs(average.si - atmosphere.si) <= weather) return doubts;
  const usual = rounded(average.si, atmosphere.unit, 3);
  // 1013 hPa typed as kPa is ten times too much.
  const tenth = Math.abs(average.si - atmosphere.si / 10) <= weather;
  const code = tenth ? "barometer-in-hectopascal" : "barometer-odd";
  const reason = say(`commissioning.${code}`, { atmosphere, altitude, usual });
  return [...doubts, doubt("site.atmosphere", reason)];
}
