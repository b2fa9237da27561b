// Can a pressure test be as it is recorded? Its limit against its pressure, its temperatures against the weather.
// Follows common practice, no source; a doubt leaves the test open, it never fails it.
// Does not cover the drop: see try-pressure-test.ts.
import type { Quantity } from "../quantity/quantity.ts";
import { degC, deltaK } from "../quantity/units/temperature.ts";
import { type IsoTime, surelyBefore } from "../shapes/index.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import { oddFigure } from "./odd-figure.ts";
import type { Evacuation, PressureTestPart } from "./record-circuit.ts";
import type { Covering } from "./runs.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

/** Share of the test pressure above which an allowed drop is none; common practice, no source. */
const largestDrop = 0.05;

/** How far the evacuated system may be from every temperature of its test before one is asked about; common practice, no source. */
const farApart = 20; // K

const aDay = 86_400_000; // ms

/** Below this nobody installs; common practice, no source. */
const coldestSite: Quantity<"temperature"> = /* @__PURE__ */ degC(-50);

type Temperature = Quantity<"temperature">;

const temperaturesOf = (
  readings: NonNullable<PressureTestPart["readings"]>,
): readonly Temperature[] => readings.flatMap(({ temperature }) => temperature ?? []);

const leastBy = (of: (one: Temperature) => number, all: readonly Temperature[]) =>
  [...all].sort((a, b) => of(a) - of(b))[0];

const farFrom = (test: Temperature, evacuation: Temperature) =>
  say("commissioning.temperatures-apart", { test, evacuation, usual: deltaK(farApart) });

/** Whether two moments are known and lie within a day. */
const isSameDay = (a: IsoTime | undefined, b: IsoTime | undefined): boolean =>
  !!a && !!b && !surelyBefore(a, b, -aDay) && !surelyBefore(b, a, -aDay);

/** What cannot be right of a test. */
export function doubtsOfTest(
  { record }: Job,
  { part, path, runs }: Covering<PressureTestPart>,
): Trial[] {
  const { readings = [], criterion } = part;
  const [first] = readings;
  const limit = criterion && "maximumDrop" in criterion ? criterion.maximumDrop : undefined;
  const doubts: Trial[] = [];
  if (limit && first?.pressure && limit.si > largestDrop * first.pressure.si) {
    const reason = say("commissioning.allowed-drop-large", { limit });
    doubts.push(doubt(`${path}.criterion.maximumDrop`, reason));
  }
  // Tested and evacuated within days: °F for °C, or °C for °F, lies further apart than the weather.
  const evacuation = record.evacuations?.find(
    ({ covers }) => !covers || runs.some(({ run }) => run.name && covers.includes(run.name)),
  );
  const { ambient, coldest: stated } = evacuation ?? {};
  if (!ambient) return doubts;
  const coldest = stated ?? ambient;
  // From the coldest part to the warmest, no figure of the gas is odd: outdoors in winter, or in an attic.
  const apart = ({ si }: Temperature) => Math.max(si - ambient.si, coldest.si - si, 0);
  const nearest = leastBy(apart, temperaturesOf(readings));
  if (nearest && apart(nearest) > farApart) {
    const isCold = nearest.si < ambient.si && !stated;
    const fields = ["commissioning.field.evacuations.coldest"] as const;
    const action = isCold ? say("commissioning.record-fields", { fields }) : undefined;
    const beside = nearest.si < coldest.si ? coldest : ambient;
    doubts.push(doubt(`${path}.readings[0].temperature`, farFrom(nearest, beside), action));
  }
  // Where all of the gas was at the thermometer, the coldest part was too.
  const last = leastBy(({ si }) => si, temperaturesOf(readings.slice(-1)));
  const isWhole = part.elsewhere?.share?.si === 0 && isSameDay(part.at, evacuation?.at);
  if (last && isWhole && last.si - coldest.si > farApart) {
    const at = `${path}.readings[${readings.length - 1}].temperature`;
    doubts.push(doubt(at, farFrom(last, coldest)));
  }
  return doubts;
}

/** What cannot be right of an evacuation: a part colder than any site. Colder than the air is the safe side, as outdoors in winter. */
export function doubtsOfEvacuation({ part, path }: Covering<Evacuation>): Trial[] {
  const { ambient, coldest } = part;
  if (!ambient || !coldest) return [];
  // That a part is warmer than the air, vacuum-decay refuses.
  return oddFigure(`${path}.coldest`, coldest, [
    coldestSite,
    coldest.si > ambient.si ? coldest : ambient,
  ]);
}
