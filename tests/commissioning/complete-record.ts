// A whole installation with invented data, in which every step passes.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import {
  ampere,
  degF,
  deltaF,
  ft,
  ftLb,
  hour,
  inch,
  liter,
  m,
  m3,
  micron,
  mm,
  oz,
  ozPerFt,
  percent,
  psi,
  psig,
  second,
  volt,
} from "hvac-install-math/quantity";

const calibration = { calibratedOn: "2026-01-10", calibrationDue: "2027-01-10" } as const;

/** Every step passes. */
export const complete: InstallationRecord = {
  version: 2,
  name: "Invented workshop",
  site: { name: "Invented site", altitude: m(1520) },
  equipment: {
    outdoorUnit: { model: "invented outdoor unit", ports: { liquid: "1/4", vapor: "3/8" } },
    refrigerant: "R-410A",
    factoryCharge: oz(39.5),
    maximumCharge: oz(60),
    lowestMarkedPressure: psig(600),
    minimumCircuitAmpacity: ampere(12.4),
    maximumOvercurrentProtection: ampere(20),
    ratedLoadCurrent: ampere(10.1),
    ratedVoltages: [volt(208), volt(230)],
    meteringDevice: "electronic-valve",
    compressor: "inverter",
    expansion: "outdoor-unit",
    manual: {
      run: { minimumLength: ft(10), maximumLength: ft(66), maximumLift: ft(33) },
      preChargedLength: ft(25),
      chargeRate: ozPerFt(0.16),
      shortLineRule: "add-only",
      testPressure: psig(450),
      testHold: hour(12),
    },
  },
  instruments: {
    testGauge: { ...calibration, accuracy: psi(2.5), resolution: psi(0.1), drift: psi(0.3) },
    gasThermometer: {
      ...calibration,
      accuracy: deltaF(0.5),
      resolution: deltaF(0.1),
      followsGasWithin: deltaF(0.9),
    },
    vacuumGauge: { ...calibration, accuracy: percent(10), resolution: micron(1).minus(micron(0)) },
    scale: { ...calibration, resolution: oz(0.1) },
    tape: { ...calibration, accuracy: inch(0.5) },
    torqueWrench: { ...calibration, relativeAccuracy: percent(4) },
    voltmeter: { ...calibration, accuracy: volt(1.2) },
    serviceGauge: { ...calibration, accuracy: psi(2) },
    level: calibration,
  },
  runs: [
    {
      indoorUnits: [{ model: "invented indoor unit" }],
      tubing: {
        liquid: { outsideDiameter: inch(0.25), wall: inch(0.03) },
        vapor: { outsideDiameter: inch(0.375), wall: inch(0.032) },
        length: ft(36),
        lift: ft(9),
        outdoorUnit: "below",
        bends: 4,
        otherVolume: liter(0.62),
        at: "2026-05-04",
      },
      joints: [
        {
          name: "liquid, indoor",
          kind: "flare",
          tube: "1/4",
          torque: ftLb(11.5),
          at: "2026-05-04",
        },
        { name: "vapor, indoor", kind: "flare", tube: "3/8", torque: ftLb(28), at: "2026-05-04" },
        {
          name: "liquid, outdoor",
          kind: "flare",
          tube: "1/4",
          torque: ftLb(11.4),
          at: "2026-05-04",
        },
        {
          name: "vapor, outdoor",
          kind: "flare",
          tube: "3/8",
          torque: ftLb(28.3),
          at: "2026-05-04",
        },
      ],
      room: { volume: m3(60), place: "wall" },
      drain: {
        slope: { gap: mm(12), levelLength: mm(600), accuracy: mm(0.5) },
        unitPitch: { gap: mm(3), levelLength: mm(600), accuracy: mm(0.3) },
        waterRanOff: true,
        at: "2026-05-05",
      },
    },
  ],
  pressureTests: [
    {
      readings: [
        { pressure: psig(500), temperature: degF(70), elapsed: hour(0) },
        { pressure: psig(489.3), temperature: degF(60), elapsed: hour(14) },
      ],
      criterion: { maximumDrop: psi(4) },
      at: "2026-05-05T08:00",
    },
  ],
  evacuations: [
    {
      readings: Array.from({ length: 61 }, (_, i) => ({
        elapsed: second(20 * i),
        pressure: micron(Math.round(260 + 40 * (1 - Math.exp(-i / 10)))),
      })),
      policy: "splitManualB",
      ambient: degF(62),
      at: "2026-05-05T11:00",
    },
  ],
  charge: { added: oz(1.8), tolerance: oz(0.5), fedAs: "liquid", at: "2026-05-05T12:00" },
  valves: { openedAt: "2026-05-05T11:30" },
  power: {
    voltage: volt(240),
    phases: 1,
    circuits: [
      {
        sharedWith: [],
        rules: "nfpa-70-2023",
        wiring: { material: "copper", insulation: "90 °C", terminations: "75 °C", length: ft(48) },
        installed: {
          device: { kind: "breaker", rating: ampere(20), poles: 2 },
          conductor: "12 AWG",
          equipmentGrounding: "12 AWG",
          disconnect: { rating: ampere(30), visible: true },
        },
        at: "2026-05-05T12:15",
      },
    ],
    supply: {
      readings: [
        { state: "rest", voltage: volt(241.5) },
        { state: "load", voltage: volt(239.8) },
      ],
      measuredAt: "unit",
      standard: "ansi-c84.1-2020",
      at: "2026-05-05T12:30",
    },
    energizedAt: "2026-05-05T12:45",
  },
  operation: [
    {
      mode: "cooling",
      indoorTemperature: degF(75),
      outdoorTemperature: degF(85),
      evaporatorApproach: { low: deltaF(28), high: deltaF(42) },
      condenserApproach: { low: deltaF(12), high: deltaF(28) },
      pressure: psig(118),
      at: "2026-05-05T14:00",
    },
  ],
  photos: [{ reference: "photo-1", of: "equipment.outdoorUnit", at: "2026-05-04" }],
  signatures: [{ name: "N. N.", role: "installer", at: "2026-05-05T16:00" }],
};
