import {
  cfm,
  degC,
  degF,
  ft,
  inch,
  liter,
  literPerSecond,
  m,
  micron,
  micronDifference,
  minute,
  paM3PerS,
  percent,
  psia,
  second,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import type * as vacuumDecay from "hvac-install-math/vacuum-decay";
import {
  type AcceptancePolicy,
  createDecayMonitor,
  type DecayReading,
  type VacuumDecayAssessment,
  type VacuumDecayOptions,
} from "hvac-install-math/vacuum-decay";
import type { Inputs } from "../catalogue.ts";

const policy: AcceptancePolicy = {
  name: "invented policy",
  target: micron(500),
  checkpoints: [
    { at: minute(5), limit: micron(800), failAbove: micron(2000) },
    { at: minute(10), rise: micronDifference(400) },
  ],
  earlyPass: false,
  standing: "practice",
  source: { source: "span-2000", clause: "" },
};
const settings: VacuumDecayOptions = {
  ambient: degC(20),
  coldest: degC(15),
  volume: liter(3),
  gauge: { resolution: micronDifference(1), accuracy: percent(10), range: micron(20_000) },
  policy,
  leakLimit: paM3PerS(5e-5),
  isolation: "isolation-valve",
  hoses: { material: "rubber", length: m(1) },
  confidence: 0.95,
};
const readings: DecayReading[] = Array.from({ length: 25 }, (_, i) => ({
  elapsed: second(25 * i),
  pressure: micron(Math.round(260 + 40 * (1 - Math.exp(-i / 4)))),
}));

export const inputs: Inputs<typeof vacuumDecay> = {
  assessVacuumDecay: [
    [{ ...settings, readings }],
    [
      {
        ...settings,
        readings,
        gauge: {
          resolution: [
            { upTo: micron(1000), resolution: micronDifference(1) },
            { upTo: micron(20_000), resolution: micronDifference(100) },
          ],
        },
      },
    ],
  ],
  createDecayMonitor: [[settings]],
  decayCurve: [
    [
      {
        shape: "saturating",
        timeConstant: second(100),
        line: true,
        equalization: true,
        aicc: 3,
        from: second(0),
        to: second(600),
        coefficients: {
          fast: 0,
          shape: 0,
          tau: 100,
          line: true,
          constant: 40,
          fast1: 0.1,
          fast2: 0.1,
          amplitude: 5,
          slope: 0.01,
          slopeU: 0.001,
          amplitudeU: 0.1,
          ahead: 50,
          aheadU: 1,
          aicc: 3,
          origin: 0,
        },
      },
      { points: 3, until: minute(20) },
    ],
  ],
  effectivePumpingSpeed: [
    [{ pump: literPerSecond(50), conductances: [literPerSecond(30), literPerSecond(20)] }],
  ],
  pumpDownTime: [
    [
      {
        volume: liter(8),
        pump: cfm(4),
        tubes: [{ bore: inch(0.25), length: ft(3) }],
        from: standardAtmosphere,
        to: micron(500),
        ultimate: micron(20),
        temperature: degC(20),
      },
    ],
  ],
  residualGasFraction: [
    [
      {
        cycles: [{ vacuum: micron(1500), brokenTo: psia(16.7) }],
        last: micron(500),
        start: standardAtmosphere,
      },
    ],
  ],
  tubeConductance: [
    [
      {
        bore: inch(0.25),
        length: ft(3),
        temperature: degC(20),
        meanPressure: micron(500),
        gas: "nitrogen",
      },
    ],
  ],
  vacuumRiseOfLeak: [
    [
      {
        leak: paM3PerS(1.596e-4),
        testPressure: psia(514.7),
        atmosphere: standardAtmosphere,
        volume: liter(2),
      },
    ],
  ],
  waterSaturationPressure: [[degF(68)]],
  waterSaturationTemperature: [[micron(500)]],
  waterVaporMass: [[{ rise: micronDifference(1000), volume: liter(1), temperature: degC(20) }]],
};

/** The live monitor, from its options and readings to what it says. */
export const monitor = {
  add: (options: VacuumDecayOptions, reading: DecayReading): VacuumDecayAssessment => {
    const live = createDecayMonitor(options);
    for (const one of readings.slice(0, 4)) live.add(one);
    return live.add(reading);
  },
  assessment: (options: VacuumDecayOptions, reading: DecayReading): VacuumDecayAssessment => {
    const live = createDecayMonitor(options);
    for (const one of readings.slice(0, 4)) live.add(one);
    live.add(reading);
    return live.assessment();
  },
};

export const monitorInputs: Inputs<typeof monitor> = {
  add: [[settings, { elapsed: minute(4), pressure: micron(300) }]],
  assessment: [[settings, { elapsed: second(30), pressure: micron(300) }]],
};
