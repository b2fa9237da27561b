// What else it takes to hear all that the module says: each case after what it should say.
import type * as pressureTest from "hvac-install-math/pressure-test";
import {
  degF,
  deltaF,
  hour,
  kPaa,
  liter,
  minute,
  paM3PerS,
  percent,
  psi,
  psig,
  second,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import type { Inputs } from "../../faults/catalogue.ts";

type Test = pressureTest.PressureTest;
type Log = pressureTest.PressureTestLog;

const instruments = {
  pressure: { accuracy: psi(2), resolution: psi(0.1), drift: psi(0.3) },
  temperature: { accuracy: deltaF(1), resolution: deltaF(0.1), followsGasWithin: deltaF(0.5) },
};
/** 500 psig at 70 °F, and what is left of it after 12 h at the same temperature. */
const held = (end: number, change: Partial<Test> = {}, elapsed = hour(12)): [Test] => [
  {
    start: { pressure: psig(500), temperature: degF(70) },
    end: { pressure: psig(end), temperature: degF(70), elapsed },
    volume: liter(3),
    instruments,
    criterion: { maximumDrop: psi(5) },
    atmosphere: standardAtmosphere,
    ...change,
  },
];
const gauge = (pressure: Test["instruments"]["pressure"]) => ({
  instruments: { ...instruments, pressure },
});
const thermometer = (temperature: Test["instruments"]["temperature"]) => ({
  instruments: { ...instruments, temperature },
});
const bySheet = { accuracy: deltaF(1), resolution: deltaF(0.1) };
const allHere = { elsewhere: { share: percent(0) } };
const settled = { sinceFill: hour(1) };
/** As much pressure outside as inside: nothing leaks outward. */
const still = {
  gramsPerMole: 28,
  viscosity: 17.8,
  pressure: kPaa(500),
  outside: kPaa(500),
} as const;
const { volume: _, ...small } = held(490)[0];
const { criterion: __, ...unlimited } = held(500)[0];

const log = (
  rows: readonly (readonly [number, number, number])[],
  change: Partial<Log> = {},
): [Log] => [
  {
    readings: rows.map(([hours, pressure, temperature]) => ({
      elapsed: hour(hours),
      pressure: psig(pressure),
      temperature: degF(temperature),
    })),
    volume: liter(3),
    instruments,
    criterion: { maximumDrop: psi(5) },
    atmosphere: standardAtmosphere,
    ...change,
  },
];
const rows = Array.from({ length: 25 }, (_, i) => i / 2);

export const inputs: Partial<Inputs<typeof pressureTest>> = {
  assessPressureTest: [
    held(500), // within-limit
    held(480), // above-limit, find-by-bubbles
    held(495.5), // across-limit, leak-proven
    held(498), // leak-within-limit
    held(500, { criterion: { maximumDrop: psi(24) } }), // limit-lowered
    held(499.5, { criterion: { maximumDrop: psi(1) } }), // hold-longer
    held(500, { criterion: { maximumDrop: psi(0.2) } }), // reduce-uncertainty
    held(510), // unexplained-rise
    [unlimited], // no-limit-stated, state-limit
    [small], // find-of-unknown-size, smallest-drop-rate
    held(500, { end: { pressure: psig(500), temperature: degF(70) } }), // hold-time-unknown, smallest-drop
    held(480, { volume: liter(0.003) }), // find-by-foam
    held(480, { volume: liter(0.0003) }), // find-by-tracer
    held(500, {}, second(30)), // short-hold, hold-at-least
    held(500, { required: { hold: hour(24) } }), // hold-below-manual
    held(500, gauge({ accuracy: psi(2), resolution: psi(2) }), minute(15)), // hold-below-step
    held(500, gauge({ accuracy: psi(0), resolution: psi(0) })), // gauge-without-error
    held(500, thermometer({ accuracy: deltaF(0) })), // thermometer-without-error
    held(500, { required: { testPressure: psig(550) } }), // fill-below-manual, fill-higher
    held(500, {
      refrigerant: { gas: { gramsPerMole: 72.6, viscosity: 13 }, pressure: kPaa(4000) },
    }), // fill-below-service
    held(500, { required: { marked: [{ part: "low side", pressure: psig(450) }] } }), // above-marked
    held(499, thermometer(bySheet)), // state-elsewhere, state-since-fill
    held(500, { ...thermometer(bySheet), ...allHere, sinceFill: minute(2) }), // settle-first
    held(500, {
      ...thermometer(bySheet),
      ...allHere,
      ...settled,
      criterion: { maximumDrop: psi(2) },
    }), // state-follows-gas
    held(500, { ...thermometer(bySheet), ...settled, elsewhere: { share: percent(40) } }), // measure-elsewhere
    held(499, {
      ...thermometer(bySheet),
      elsewhere: { share: percent(40), change: deltaF(2) },
      sinceFill: minute(45),
    }), // follows-gas
    held(500, {
      end: {
        pressure: psig(500),
        temperature: degF(70),
        elapsed: hour(12),
        atmosphere: kPaa(98),
      },
    }), // weather-and-barometer-alone
    [
      {
        ...held(500)[0],
        end: { pressure: psig(500), temperature: degF(70) },
        instruments: {
          ...instruments,
          pressure: { accuracy: psi(0.1), resolution: psi(0.1), drift: psi(0) },
          temperature: { accuracy: deltaF(0.1), followsGasWithin: deltaF(0) },
        },
        wall: "copper",
        criterion: { maximumDrop: psi(0.05) },
      },
    ], // hold-time-unknown
    // What is the largest part of an uncertainty that no hold makes smaller.
    ...(
      [
        gauge({ accuracy: psi(2), resolution: psi(3), drift: psi(0) }),
        gauge({ accuracy: psi(2), drift: psi(2) }),
        {
          ...gauge({ accuracy: psi(40), drift: psi(0) }),
          end: { pressure: psig(429), temperature: degF(0), elapsed: hour(12) },
        },
        thermometer({ accuracy: deltaF(1), resolution: deltaF(5), followsGasWithin: deltaF(0) }),
        {
          ...thermometer({ accuracy: deltaF(20), followsGasWithin: deltaF(0) }),
          end: { pressure: psig(429), temperature: degF(0), elapsed: hour(12) },
        },
        {
          ...thermometer({ accuracy: deltaF(1), followsGasWithin: deltaF(0) }),
          ...gauge({ accuracy: psi(0.1), drift: psi(0) }),
          instruments: {
            pressure: { accuracy: psi(0.1), drift: psi(0) },
            temperature: { accuracy: deltaF(0.1), followsGasWithin: deltaF(0) },
          },
        },
        {
          instruments: {
            pressure: { accuracy: psi(0.1), drift: psi(0) },
            temperature: { accuracy: deltaF(0.1), followsGasWithin: deltaF(0) },
          },
          end: {
            pressure: psig(429.7),
            temperature: degF(0),
            elapsed: hour(12),
            atmosphere: standardAtmosphere,
          },
        },
        {
          instruments: {
            pressure: { accuracy: psi(0.1), drift: psi(0) },
            temperature: { accuracy: deltaF(0.1), followsGasWithin: deltaF(0) },
            volumeUncertainty: percent(30),
          },
          wall: "copper",
          volume: [liter(1), liter(2)],
          start: { pressure: psig(500), temperature: [degF(70), degF(70)] },
          end: {
            pressure: psig(472),
            temperature: [degF(70), degF(30)],
            elapsed: hour(12),
            atmosphere: standardAtmosphere,
          },
        },
        {
          ...thermometer({ accuracy: deltaF(1), followsGasWithin: deltaF(0) }),
          ...gauge({ accuracy: psi(0.1), drift: psi(0) }),
          sinceFill: second(0),
          criterion: { maximumDrop: psi(0.2) },
        },
      ] satisfies Partial<Test>[]
    ).map((change) => held(500, { criterion: { maximumDrop: psi(0.01) }, ...change })),
    held(500, { criterion: { maximumDrop: psi(0) } }), // no-loss-not-shown
    [{ ...small, criterion: { maximumLeakRate: paM3PerS(1e-5) } }], // rate-needs-it
    held(500, { atmosphere: kPaa(800) }), // station-pressure
    held(500, {
      start: { pressure: psig(500), temperature: [degF(70), degF(70)] },
    }), // zones-need-volumes
    held(500, {
      volume: liter(3),
      zoneShares: [percent(50), percent(50)],
      start: { pressure: psig(500), temperature: [degF(50), degF(70)] },
      end: { pressure: psig(500), temperature: [degF(70), degF(50)] },
    }), // zones-swapped-at-end
  ],
  assessPressureLog: [
    log(rows.map((t) => [t, 500, 75 + 10 * Math.cos(t / 2)])), // pressure-still
    log([], {
      volume: liter(3),
      zoneShares: [percent(50), percent(50)],
      readings: rows.map((t) => ({
        elapsed: hour(t),
        pressure: psig(500),
        temperature: t === 12 ? [degF(70), degF(50)] : [degF(50), degF(70)],
      })),
    }), // zones-swapped, check-thermometers
    log(rows.map((t) => [t, t > 5 ? 491 : 500, 70])), // jump, hold-again
    log(rows.map((t) => [t, t === 12 ? 494 : 500, 70])), // last-reading-above-limit
    log(rows.map((t) => [t, 500 - 1.2 * Math.max(0, t - 9), 70])), // falls-faster
    log(rows.map((t) => [t, 500 + 1.5 * Math.sin(1.6 * t), 70])), // log-misfit, look-at-plot
    log(
      rows.map((t) => [t, 500 + (t % 1) * 0.6, 70]),
      { criterion: { maximumDrop: psi(0.01) }, ...gauge({ accuracy: psi(0.01), drift: psi(0) }) },
    ),
  ],
  scaleLeak: [[{ throughput: paM3PerS(1e-5), from: still, to: still }]],
  nitrogenNeeded: [
    [
      {
        volume: liter(3),
        pressure: psig(500),
        temperature: degF(70),
        atmosphere: standardAtmosphere,
        cylinder: { waterVolume: liter(1133), pressure: psig(2000) },
      },
    ],
  ],
  pressurizationPlan: (["low side", "high side", "component", "relief device"] as const).map(
    (part) => [
      {
        limits: [{ part, pressure: psig(500) }],
        wanted: psig(part === "component" ? 400 : 480),
        temperature: degF(60),
        warmest: degF(100),
        atmosphere: standardAtmosphere,
      },
    ],
  ),
  refrigerantEquivalent: [
    [
      {
        nitrogenLeak: paM3PerS(1e-5),
        testPressure: kPaa(3500),
        refrigerant: { gramsPerMole: 72.6, viscosity: 13 },
        refrigerantPressure: kPaa(1440),
        outside: standardAtmosphere,
        temperature: degF(70),
      },
    ],
  ],
};
