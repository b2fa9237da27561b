// The job with which the app begins: plates, manual and instruments of a unit that was never built. An app of your own
// would fill this from its file of equipment; see `onFile` of the record.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import {
  ampere,
  cfm,
  degF,
  deltaF,
  ft,
  hour,
  inch,
  liter,
  m2,
  oz,
  ozPerFt,
  paM3PerS,
  percent,
  psi,
  psig,
  volt,
} from "hvac-install-math/quantity";

/** Everything in it is invented. */
export const inventedJob: InstallationRecord = {
  version: 2,
  name: "Invented job",
  equipment: {
    outdoorUnit: { model: "invented 12k", ports: { liquid: "1/4", vapor: "3/8" } },
    refrigerant: "R-32",
    factoryCharge: oz(35),
    maximumCharge: oz(44),
    lowestMarkedPressure: psig(600),
    minimumCircuitAmpacity: ampere(12.4),
    maximumOvercurrentProtection: ampere(20),
    ratedLoadCurrent: ampere(9.9),
    ratedVoltages: [volt(208), volt(230)],
    meteringDevice: "electronic-valve",
    manual: {
      run: { minimumLength: ft(10), maximumLength: ft(66), maximumLift: ft(33), maximumBends: 10 },
      preChargedLength: ft(25),
      chargeRate: ozPerFt(0.16),
      shortLineRule: "add-only",
      testPressure: psig(450),
      testHold: hour(12),
      linkCable: "14/4 AWG stranded, 600 V",
    },
  },
  instruments: {
    testGauge: { accuracy: psi(2.5), resolution: psi(0.1), drift: psi(0.3) },
    gasThermometer: {
      accuracy: deltaF(0.5),
      resolution: deltaF(0.1),
      followsGasWithin: deltaF(0.9),
    },
    vacuumGauge: { accuracy: percent(10) },
  },
  plan: {
    stock: [ft(16), ft(25), ft(35), ft(50)],
    slack: ft(1),
    insulation: inch(0.5),
    drainDiameter: inch(0.625),
    cableDiameter: inch(0.4),
    warmest: degF(100),
    leakRate: paM3PerS(5e-4),
    cylinder: { waterVolume: liter(8.4), pressure: psig(2000) },
    pump: cfm(5),
  },
  runs: [
    {
      name: "A",
      indoorUnits: [{ model: "invented head", ports: { liquid: "1/4", vapor: "3/8" } }],
      tubing: {
        liquid: { outsideDiameter: inch(0.25), wall: inch(0.03) },
        vapor: { outsideDiameter: inch(0.375), wall: inch(0.032) },
        outdoorUnit: "below",
        otherVolume: liter(0.6),
      },
      room: { floorArea: m2(20), place: "wall", edition: "iec-60335-2-40-2018" },
      drain: {
        run: ft(6),
        fall: inch(6),
        route: { outdoors: false, aboveFinishedSpace: false, pumped: false },
      },
    },
  ],
  pressureTests: [{ readings: [{ elapsed: hour(0) }], criterion: { maximumDrop: psi(4) } }],
  evacuations: [{ policy: "splitManualB", isolation: "isolation-valve" }],
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
          length: ft(40),
        },
      },
    ],
  },
};
