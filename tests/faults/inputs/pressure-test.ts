import type * as pressureTest from "hvac-install-math/pressure-test";
import {
  day,
  degC,
  degF,
  deltaF,
  ft,
  hour,
  inch,
  kPaa,
  liter,
  MPaa,
  minute,
  paM3PerS,
  percent,
  psi,
  psia,
  psig,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

const atmosphere = standardAtmosphere;
const nitrogen = { gramsPerMole: 28.014, viscosity: 17.6 };
const instruments = {
  pressure: {
    accuracy: psi(2),
    resolution: psi(0.1),
    repeatability: psi(0.1),
    drift: psi(0.1),
    separateInstruments: false,
  },
  temperature: {
    accuracy: deltaF(1),
    resolution: deltaF(0.1),
    followsGasWithin: deltaF(0.5),
    separateInstruments: false,
  },
  volumeUncertainty: percent(10),
};
const setup = {
  instruments,
  atmosphere,
  volume: liter(3),
  criterion: { maximumDrop: psi(8), per: hour(12) },
  sinceFill: minute(40),
  elsewhere: { share: percent(30), change: deltaF(2) },
  required: {
    testPressure: psig(450),
    hold: hour(10),
    marked: [{ part: "low side" as const, pressure: psig(600) }],
  },
  confidence: 0.95,
  refrigerant: { gas: { gramsPerMole: 72.585, viscosity: 13.3 }, pressure: MPaa(1.44) },
  wall: "copper",
} as const;
const zones = {
  ...setup,
  volume: [liter(2), liter(1)],
  criterion: { maximumLeakRate: paM3PerS(0.01) },
};

export const inputs: Inputs<typeof pressureTest> = {
  assessPressureLog: [
    [
      {
        ...setup,
        readings: [
          [0, 500, 80],
          [30, 497, 77],
          [60, 494.9, 75],
          [90, 494.8, 75],
          [120, 497.9, 78],
        ].map(([min = 0, p = 0, t = 0]) => ({
          elapsed: minute(min),
          pressure: psig(p),
          temperature: degF(t),
          atmosphere,
        })),
      },
    ],
  ],
  assessPressureTest: [
    [
      {
        ...setup,
        start: { pressure: psig(500), temperature: degF(80), elapsed: hour(0), atmosphere },
        end: { pressure: psig(479), temperature: degF(60), elapsed: hour(12), atmosphere },
      },
    ],
    [
      {
        ...zones,
        start: { pressure: psia(514.7), temperature: [degF(80), degF(70)] },
        end: { pressure: psia(493), temperature: [degF(60), degF(55)], elapsed: hour(12) },
      },
    ],
  ],
  compareTemperatureRules: [
    [
      {
        pressure: psig(500),
        temperature: degF(95),
        laterTemperature: degF(65),
        atmosphere,
      },
    ],
  ],
  expectedTestPressure: [
    [
      {
        pressure: psig(500),
        temperature: degF(95),
        laterTemperature: degF(65),
        atmosphere,
        laterAtmosphere: kPaa(100),
        volume: liter(3),
        wall: "aluminum",
      } as never,
    ],
    [
      {
        pressure: MPaa(3),
        temperature: [degF(95), degF(90)],
        laterTemperature: [degF(65), degF(70)],
        volume: [liter(3), liter(1)],
      },
    ],
  ],
  holdTime: [
    [
      {
        leakRate: paM3PerS(1e-3),
        volume: liter(3),
        pressure: psig(500),
        temperature: degF(80),
        laterTemperature: degF(75),
        instruments,
        atmosphere,
        confidence: 0.95,
        wall: "rigid",
      },
    ],
  ],
  massFlowOfThroughput: [
    [{ throughput: paM3PerS(1e-3), temperature: degC(20), gramsPerMole: 28.96 }],
  ],
  nitrogenNeeded: [
    [
      {
        volume: liter(3),
        pressure: psig(500),
        startPressure: psig(10),
        temperature: degF(70),
        atmosphere,
        fills: 2,
        cylinder: { waterVolume: liter(8), pressure: psig(2000), temperature: degF(75) },
      },
    ],
  ],
  pressurizationPlan: [
    [
      {
        limits: [
          { part: "low side", pressure: psig(450) },
          { part: "high side", pressure: psig(600) },
        ],
        wanted: psig(500),
        temperature: degF(60),
        warmest: degF(100),
        atmosphere,
        pattern: "ten percent",
      },
    ],
  ],
  refrigerantEquivalent: [
    [
      {
        nitrogenLeak: paM3PerS(1.596e-4),
        testPressure: psia(514.7),
        refrigerant: { gramsPerMole: 72.585, viscosity: 13.3 },
        refrigerantPressure: MPaa(1.44),
        outside: atmosphere,
        temperature: degC(20),
      },
    ],
  ],
  scaleLeak: [
    [
      {
        throughput: paM3PerS(1e-4),
        from: { ...nitrogen, pressure: kPaa(1013.25), outside: atmosphere },
        to: { ...nitrogen, pressure: kPaa(2026.5), outside: atmosphere },
      },
    ],
  ],
  testVolume: [
    [
      {
        tubes: [
          { insideDiameter: inch(0.311), length: ft(25) },
          { insideDiameter: inch(0.555), length: ft(25) },
        ],
        vessels: [liter(0.8)],
      },
    ],
  ],
  throughputOfDrop: [[{ volume: liter(2), drop: psi(1), elapsed: day(1) }]],
};
