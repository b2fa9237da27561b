// Writes plan.json and record.json of this folder: `npx tsx examples/three-heads/make-records.ts`. One outdoor unit with
// three indoor units, before the work and after it. All of it is invented: site, plates, manual, readings.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { InstallationRecord, Joint, Run } from "hvac-install-math/commissioning";
import { expectedTestPressure } from "hvac-install-math/pressure-test";
import {
  ampere,
  atmosphereAtAltitude,
  cfm,
  degF,
  deltaF,
  ft,
  ftLb,
  hour,
  inch,
  liter,
  m2,
  micron,
  mm,
  oz,
  ozPerFt,
  paM3PerS,
  percent,
  psi,
  psig,
  second,
  volt,
  watt,
} from "hvac-install-math/quantity";
import { recordCodec } from "hvac-install-math/wire";

const altitude = ft(5000);
const [fill, morning] = [{ pressure: psig(500), temperature: degF(76) }, { temperature: degF(61) }];
const held = { calibratedOn: "2026-01-10", calibrationDue: "2027-01-10" } as const;
const heads = [
  { name: "A", way: 38, cut: 41, room: 24, watts: 2600 },
  { name: "B", way: 15, cut: 18, room: 11, watts: 2600 },
  { name: "C", way: 30, cut: 33, room: 16, watts: 3500 },
] as const;

const runOf = ({ name, way, room, watts }: (typeof heads)[number]): Run => ({
  name,
  port: name,
  indoorUnits: [
    {
      model: `invented head ${name}`,
      ports: { liquid: "1/4", vapor: "3/8" },
      capacity: watt(watts),
    },
  ],
  tubing: {
    liquid: { outsideDiameter: inch(0.25), wall: inch(0.03) },
    vapor: { outsideDiameter: inch(0.375), wall: inch(0.032) },
    way: ft(way),
    lift: ft(9),
    outdoorUnit: "below",
    otherVolume: liter(0.9),
  },
  room: { floorArea: m2(room), place: "wall", edition: "iec-60335-2-40-2018" },
  drain: {
    run: ft(6),
    fall: inch(6),
    route: { outdoors: false, aboveFinishedSpace: false, pumped: false },
  },
});

/** As it is planned. */
export const plan: InstallationRecord = {
  version: 2,
  name: "Three heads, an invented example",
  site: { name: "Invented guesthouse", altitude },
  equipment: {
    outdoorUnit: { model: "invented multi 27k", ports: { liquid: "1/4", vapor: "3/8" } },
    portPairs: 4,
    refrigerant: "R-32",
    capacity: watt(8000),
    factoryCharge: oz(56),
    maximumCharge: oz(70),
    lowestMarkedPressure: psig(550),
    minimumCircuitAmpacity: ampere(19.5),
    maximumOvercurrentProtection: ampere(30),
    ratedLoadCurrent: ampere(15.8),
    ratedVoltages: [volt(208), volt(230)],
    meteringDevice: "electronic-valve",
    compressor: "inverter",
    expansion: "outdoor-unit",
    manual: {
      run: { minimumLength: ft(10), maximumLength: ft(82), maximumLift: ft(49) },
      maximumTotalLength: ft(196),
      leastConnected: watt(4000),
      mostConnected: watt(10_400),
      linkCable: "14/4 AWG stranded, 600 V",
      preChargedLength: ft(25),
      preChargedFor: "each-run",
      chargeRate: ozPerFt(0.13),
      shortLineRule: "net-add-only",
      unusedPortAllowance: oz(-0.9),
      testPressure: psig(450),
      testHold: hour(12),
    },
  },
  instruments: {
    testGauge: { ...held, accuracy: psi(2.5), resolution: psi(0.1), drift: psi(0.3) },
    gasThermometer: {
      ...held,
      accuracy: deltaF(0.5),
      resolution: deltaF(0.1),
      followsGasWithin: deltaF(0.9),
    },
    vacuumGauge: { ...held, accuracy: percent(10), resolution: micron(1).minus(micron(0)) },
    scale: { ...held, accuracy: oz(0.1), resolution: oz(0.1) },
    tape: { ...held, accuracy: inch(0.5) },
    torqueWrench: { ...held, relativeAccuracy: percent(4) },
    voltmeter: { ...held, accuracy: volt(1.2) },
    serviceGauge: { ...held, accuracy: psi(2) },
    level: held,
  },
  plan: {
    stock: [ft(15), ft(16), ft(25), ft(35), ft(50)],
    slack: ft(1),
    serviceLoop: ft(2),
    insulation: inch(0.5),
    drainDiameter: inch(0.625),
    cableDiameter: inch(0.4),
    fillTemperature: fill.temperature,
    laterTemperature: morning.temperature,
    warmest: degF(100),
    fillPressure: fill.pressure,
    hold: hour(16),
    leakRate: paM3PerS(5e-4),
    cylinder: { waterVolume: liter(8.4), pressure: psig(2000) },
    pump: cfm(5),
  },
  runs: heads.map(runOf),
  pressureTests: heads.map(({ name }) => ({ covers: [name] })),
  evacuations: [{ policy: "splitManualB" }],
  power: {
    voltage: volt(240),
    phases: 1,
    circuits: [
      {
        name: "outdoor unit",
        rules: "nfpa-70-2023",
        feeds: "motor-compressor",
        sharedWith: [],
        wiring: {
          material: "copper",
          insulation: "90 °C",
          cable: "NM",
          terminations: "75 °C",
          length: ft(60),
        },
      },
    ],
  },
  operation: [
    {
      mode: "cooling",
      indoorTemperature: degF(75),
      outdoorTemperature: degF(88),
      evaporatorApproach: { low: deltaF(28), high: deltaF(42) },
      condenserApproach: { low: deltaF(12), high: deltaF(28) },
    },
  ],
};

/** Torques at which the wrench clicked, by line and end. */
const joints = (offset: number): Joint[] =>
  (["indoor", "outdoor"] as const).flatMap((end, i) => [
    {
      line: "liquid" as const,
      end,
      kind: "flare" as const,
      torque: ftLb(11.3 + 0.1 * (offset + i)),
    },
    {
      line: "vapor" as const,
      end,
      kind: "flare" as const,
      torque: ftLb(27.4 + 0.2 * (offset + i)),
    },
  ]);

/** As it was done: the plan with lengths, joints, readings and signature. */
export const record: InstallationRecord = {
  ...plan,
  runs: (plan.runs ?? []).map((run, i) => ({
    ...run,
    tubing: { ...run.tubing, length: ft(heads[i]?.cut ?? 0), at: "2026-05-04" },
    joints: joints(i),
    drain: {
      ...run.drain,
      slope: { gap: mm(12 + i), levelLength: mm(600), accuracy: mm(0.5) },
      waterRanOff: true,
      at: "2026-05-05",
    },
  })),
  pressureTests: heads.map(({ name }, i) => {
    const tight = expectedTestPressure({
      pressure: psig(500 + 0.4 * i),
      temperature: fill.temperature,
      laterTemperature: morning.temperature,
      atmosphere: atmosphereAtAltitude(altitude),
    }).in(psig);
    return {
      covers: [name],
      readings: [
        { pressure: psig(500 + 0.4 * i), temperature: fill.temperature, elapsed: hour(0) },
        {
          pressure: psig(Number((tight - 0.1 - 0.1 * i).toFixed(1))),
          temperature: morning.temperature,
          elapsed: hour(16),
        },
      ],
      criterion: { maximumDrop: psi(4) },
      at: "2026-05-05T08:00",
    };
  }),
  evacuations: [
    {
      policy: "splitManualB",
      readings: Array.from({ length: 91 }, (_, i) => ({
        elapsed: second(20 * i),
        pressure: micron(Math.round(250 + 40 * (1 - Math.exp(-i / 10)) + 2 * Math.sin(1.7 * i))),
      })),
      ambient: degF(64),
      at: "2026-05-05T11:00",
    },
  ],
  charge: { added: oz(1.3), tolerance: oz(0.5), fedAs: "liquid", at: "2026-05-05T12:00" },
  valves: { openedAt: "2026-05-05T12:10" },
  power: {
    ...plan.power,
    circuits: (plan.power?.circuits ?? []).map((one) => ({
      ...one,
      installed: {
        device: { kind: "breaker", rating: ampere(30), poles: 2 },
        conductor: "10 AWG",
        equipmentGrounding: "10 AWG",
        disconnect: { rating: ampere(60), visible: true },
      },
      at: "2026-05-05T12:15",
    })),
    supply: {
      readings: [
        { state: "rest", voltage: volt(241.5) },
        { state: "load", voltage: volt(239.6) },
      ],
      measuredAt: "unit",
      standard: "ansi-c84.1-2020",
      at: "2026-05-05T12:30",
    },
    energizedAt: "2026-05-05T12:45",
  },
  operation: (plan.operation ?? []).map((one) => ({
    ...one,
    pressure: psig(121),
    at: "2026-05-05T14:00",
  })),
  signatures: [{ name: "N. N.", role: "installer", at: "2026-05-05T16:00" }],
};

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  for (const [name, one] of Object.entries({ plan, record })) {
    const text = JSON.stringify(JSON.parse(recordCodec.stringify(one)), undefined, 2);
    writeFileSync(join(import.meta.dirname, `${name}.json`), `${text}\n`);
  }
}
