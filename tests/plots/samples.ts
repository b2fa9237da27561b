// Invented tests in all their varieties, with their pictures: for the tests of this folder and in Chromium.
import { assessRoomCharge } from "hvac-install-math/charge-limit";
import { english } from "hvac-install-math/language/en";
import {
  type PlotOptions,
  pressureTestPlot,
  roomChargePlot,
  saturationPlot,
  supplyVoltagePlot,
  vacuumDecayPlot,
} from "hvac-install-math/plots";
import {
  assessPressureLog,
  assessPressureTest,
  type PressureTest,
  type PressureTestLog,
} from "hvac-install-math/pressure-test";
import {
  atmosphereAtAltitude,
  bara,
  degC,
  degF,
  deltaC,
  deltaF,
  ft,
  hour,
  kg,
  kPag,
  liter,
  m2,
  micron,
  mL,
  percent,
  psi,
  psia,
  psig,
  second,
  standardAtmosphere,
  volt,
} from "hvac-install-math/quantity";
import { R32, R407C, R410A } from "hvac-install-math/refrigerants";
import { assessSupplyVoltage, type SupplyVoltageInput } from "hvac-install-math/supply-voltage";
import {
  type AcceptancePolicy,
  acceptancePolicies,
  assessVacuumDecay,
  type VacuumDecayInput,
} from "hvac-install-math/vacuum-decay";

/** A reader of English in inch-pound units, and one in SI. */
export const reader: PlotOptions = { language: english, system: "inch-pound" };
export const metric: PlotOptions = { language: english, system: "SI" };

const instruments = {
  pressure: { accuracy: psi(2), resolution: psi(0.1) },
  temperature: { accuracy: deltaF(1), resolution: deltaF(0.1), followsGasWithin: deltaF(0) },
};

/** Two readings twelve hours apart. */
export const twoReadings: PressureTest = {
  start: { pressure: psig(500), temperature: degF(80), elapsed: hour(0) },
  end: { pressure: psig(479), temperature: degF(60), elapsed: hour(12) },
  instruments,
  criterion: { maximumDrop: psi(4) },
  atmosphere: standardAtmosphere,
};

/** A night's log; it loses `leak` psi an hour. */
export function nightLog(leak: number, rows = 145): PressureTestLog {
  return {
    readings: Array.from({ length: rows }, (_, i) => {
      const at = (12 * i) / (rows - 1);
      const swing = -9 * Math.sin((Math.PI * at) / 11) + 0.4 * Math.sin(1.3 * i);
      const pressure = 500 + 500 * (swing / 539) * 1.03 - leak * at + 0.15 * Math.sin(2.1 * i);
      return {
        elapsed: hour(at),
        pressure: psig(Number(pressure.toFixed(1))),
        temperature: degF(Number((79 + swing).toFixed(1))),
      };
    }),
    instruments,
    criterion: { maximumDrop: psi(6), per: hour(12) },
    atmosphere: atmosphereAtAltitude(ft(1200)),
    volume: liter(4),
  };
}

/** A decay log of a pressure in micron over minutes. */
export function decayLog(
  at: (minutes: number) => number,
  policy: AcceptancePolicy,
  length = 20,
): VacuumDecayInput {
  return {
    readings: Array.from({ length: length * 6 + 1 }, (_, i) => ({
      elapsed: second(10 * i),
      pressure: micron(Math.round(at(i / 6) + 2 * Math.sin(1.7 * i))),
    })),
    ambient: degC(22),
    volume: liter(6),
    gauge: { accuracy: percent(10) },
    policy,
  };
}

const { splitManualA, commonPractice500, closeControlManual, guideSpec15182 } = acceptancePolicies;

/** Decays that mean different things. */
export const decays: Readonly<Record<string, VacuumDecayInput>> = {
  leak: decayLog((t) => 300 + 50 * t, splitManualA),
  moisture: decayLog((t) => 280 - 1500 * Math.expm1(-t / 5), splitManualA, 25),
  tight: decayLog(
    (t) => 240 - 60 * Math.expm1(-t / 0.3) + 3 * Math.log1p(t),
    commonPractice500,
    12,
  ),
  early: decayLog((t) => 310 + 2 * t, guideSpec15182, 15),
  stages: decayLog((t) => 320 + (t > 31 ? 2.5 * t : 0), closeControlManual, 62),
};

const zones: PressureTestLog = {
  readings: [
    [0, 3400, 24, 19],
    [2, 3412, 26, 19.5],
    [5, 3431, 29, 20],
    [9, 3387, 23, 18.5],
  ].map(([at = 0, pressure = 0, outdoors = 0, indoors = 0]) => ({
    elapsed: hour(at),
    pressure: kPag(pressure),
    temperature: [degC(outdoors), degC(indoors)],
  })),
  volume: [liter(3), mL(1200)],
  instruments: {
    pressure: { accuracy: psi(2) },
    temperature: { accuracy: deltaC(0.5), followsGasWithin: deltaC(0) },
  },
  atmosphere: bara(1.01),
};

/** A supply of three readings, beside its nameplate. */
export const supply = (volts: number): SupplyVoltageInput => ({
  nameplate: {
    rated: [volt(208), volt(230)],
    range: { minimum: volt(197), maximum: volt(253) },
  },
  supply: { voltage: volt(240), phases: 1 },
  readings: [
    { voltage: volt(volts), state: "rest" },
    { voltage: volt(volts - 7.5), state: "load" },
  ],
  measuredAt: "unit",
  meter: { accuracy: volt(1.5) },
});

/** Every picture, each with its own ids. */
export function allPlots(options: Partial<PlotOptions> = {}): Readonly<Record<string, string>> {
  const of = (id: string): PlotOptions => ({ ...reader, ...options, id });
  const room = { refrigerant: R32, place: "floor", floorArea: m2(30) } as const;
  const [light, heavy] = [1.2, 2.4].map((kilograms) => ({ ...room, charge: kg(kilograms) }));
  const untimed: PressureTest = {
    ...twoReadings,
    start: { pressure: psia(515), temperature: degF(70) },
    end: { pressure: psia(470), temperature: degF(69) },
  };
  const logs = { good: nightLog(0), slow: nightLog(0.4), bad: nightLog(1.5) };
  return {
    two: pressureTestPlot(twoReadings, assessPressureTest(twoReadings), of("two")),
    untimed: pressureTestPlot(untimed, assessPressureTest(untimed), of("untimed")),
    ...Object.fromEntries(
      Object.entries(logs).map(([name, log]) => [
        name,
        pressureTestPlot(log, assessPressureLog(log), of(name)),
      ]),
    ),
    zones: pressureTestPlot(zones, assessPressureLog(zones), of("zones")),
    ...Object.fromEntries(
      Object.entries(decays).map(([name, log]) => [
        name,
        vacuumDecayPlot(log, assessVacuumDecay(log), of(name)),
      ]),
    ),
    glide: saturationPlot(R407C, {
      ...of("glide"),
      from: degF(-20),
      to: degF(140),
      atmosphere: standardAtmosphere,
    }),
    pure: saturationPlot(R32, of("pure")),
    blend: saturationPlot(R410A, {
      ...of("blend"),
      atmosphere: standardAtmosphere,
      units: { gaugePressure: kPag },
    }),
    ...Object.fromEntries(
      [238.4, 204, 262].map((volts, i) => [
        `supply-${i}`,
        supplyVoltagePlot(assessSupplyVoltage(supply(volts)), of(`supply-${i}`)),
      ]),
    ),
    light: roomChargePlot(light as never, assessRoomCharge(light as never), of("light")),
    heavy: roomChargePlot(heavy as never, assessRoomCharge(heavy as never), of("heavy")),
  };
}
