// What else it takes to hear all that the module says.
import {
  degC,
  inch,
  liter,
  micron,
  micronDifference,
  micronPerMinute,
  minute,
  percent,
  second,
} from "hvac-install-math/quantity";
import type * as vacuumDecay from "hvac-install-math/vacuum-decay";
import {
  acceptancePolicies,
  type DecayReading,
  type VacuumDecayInput,
} from "hvac-install-math/vacuum-decay";
import type { Inputs } from "../../faults/catalogue.ts";

/** Invented: micron by minute, with the scatter of a gauge. */
const log = (course: (t: number) => number, minutes = 15, seconds = 5): DecayReading[] =>
  Array.from({ length: Math.round((60 * minutes) / seconds) + 1 }, (_, i) => ({
    elapsed: second(i * seconds),
    pressure: micron(course((i * seconds) / 60) + ((3 * i) % 7) / 5),
  }));
const given = {
  ambient: degC(20),
  volume: liter(3),
  gauge: { accuracy: percent(5), resolution: micronDifference(0.2), range: micron(25_000) },
  policy: acceptancePolicies.commonPractice500,
  isolation: "isolation-valve",
} as const;
const of = (
  readings: DecayReading[],
  more: Partial<VacuumDecayInput> = {},
): readonly [VacuumDecayInput] => [{ ...given, ...more, readings }];
const { splitManualA, ashrae15Memory, provenEarly500 } = acceptancePolicies;
const dry = (t: number) => 300 + 4 * Math.log1p(t);
const water = (rise: number, tau: number) => (t: number) => 250 - rise * Math.expm1(-t / tau);
const outOfOrder = [...log(dry)];
outOfOrder[40] = { elapsed: second(200), pressure: micron(0) };
outOfOrder[60] = { elapsed: second(300), pressure: micron(900) };
outOfOrder[80] = { elapsed: second(400), pressure: micron(26_000) };

export const inputs: Partial<Inputs<typeof vacuumDecay>> = {
  assessVacuumDecay: [
    of(log(dry)),
    of(log(dry), { policy: splitManualA }),
    of(log(dry, 5)),
    of(log(dry, 5), { policy: splitManualA }),
    of(log((t) => 300 + 30 * t)),
    of(log((t) => 300 + 8 * t)),
    of(log((t) => 300 + 5.5 * t)),
    of(log((t) => 300 + 60 * t)),
    of(
      log((t) => 300 + 60 * t),
      { policy: splitManualA },
    ),
    of(
      log((t) => 300 + 30 * t),
      { volume: liter(0.05), hoses: { material: "metal", length: inch(1) } },
    ),
    of(log(water(1500, 2), 25), { policy: splitManualA }),
    of(log(water(1500, 2), 25), { coldest: degC(-20) }),
    of(log((t) => water(1200, 2)(t) + 25 * t, 30)),
    of(log(water(3000, 15), 10)),
    ...[400, 500, 600, 700, 800, 900].map((rise) =>
      of(
        log((t) => 160 + (rise * t) / (t + 4), 10, 60),
        { policy: ashrae15Memory },
      ),
    ),
    of(log(water(330, 2.2), 10, 60), { policy: ashrae15Memory }),
    of(log((t) => 250 + 120 * Math.log1p(t / 1.25), 60)),
    of(
      log((t) => 250 + 60 * Math.sqrt(t), 10, 60),
      { policy: ashrae15Memory },
    ),
    of(log((t) => 300 + 25 * Math.log1p(t / 4) + 4 * t)),
    of(
      log((t) => 495 + 0.4 * t),
      { policy: acceptancePolicies.splitManualB },
    ),
    of(
      log((t) => 470 + 2 * t, 21),
      { policy: acceptancePolicies.splitManualB },
    ),
    of(log((t) => 300 + 48 * t)),
    of(log(dry).map((one) => ({ ...one, pressure: micron(one.pressure.in(micron) + 400) }))),
    of(
      log((t) => 300 + 6000 * t),
      { policy: splitManualA },
    ),
    of(
      log((t) => 300 + 300 * t),
      { gauge: { ...given.gauge, range: micron(780) }, policy: splitManualA },
    ),
    of(log(dry), { coldest: degC(-31) }),
    // a slow rise beside water: one of the two is there, and the course is too short to tell which
    [
      {
        ambient: degC(20),
        volume: liter(3),
        policy: splitManualA,
        readings: Array.from({ length: 37 }, (_, i) => ({
          elapsed: second(50 * i),
          pressure: micron(
            Math.round(water(326, 6)((50 * i) / 60) + (7.6 * 50 * i) / 60 + (i % 2 ? 3 : -3)),
          ),
        })),
      },
    ],
    of(log(() => 0.3)),
    of(log(dry).map((one) => ({ ...one, pressure: micron(300) }))),
    of(
      log(dry).map((one) => ({ ...one, pressure: micron(300) })),
      { gauge: { resolution: micronDifference(25) } },
    ),
    of(log((t) => 200 + 250 * Math.exp(-t / 2.2))),
    [{ ambient: degC(20), policy: provenEarly500, readings: log(() => 300) }],
    of(log((t) => 300 + Math.max(0, t - 12) ** 2 * 12)),
    of(log((t) => 300 + 30 * Math.cos((t * Math.PI) / 3))),
    of(log((t) => (t < 12 ? 300 : 360) + t / 3)),
    of(log((t) => (t < 8 ? 250 + 60 * t : 300 + t / 3), 25)),
    of(outOfOrder),
    of([...log(dry), { elapsed: minute(15.2), pressure: micron(500) }]),
    of([
      { elapsed: minute(-1), pressure: micron(300) },
      { elapsed: minute(1), pressure: micron(300) },
      { elapsed: minute(1), pressure: micron(300) },
    ]),
    of([300, 330, 360, 390].map((p, i) => ({ elapsed: minute(i), pressure: micron(p) }))),
    of(
      log((t) => 250 + 6 * t),
      { volume: liter(0.4) },
    ),
    of(
      log((t) => 300 + t / 20),
      { leakLimit: micronPerMinute(2.9) },
    ),
  ],
};
