// Six further invented installations before the work, each for something that the twelve do not have.
import type { InstallationRecord, Planned } from "hvac-install-math/commissioning";
import {
  ampere,
  degC,
  degF,
  deltaF,
  ft,
  g,
  gPerM,
  inch,
  liter,
  literPerHour,
  MPag,
  m,
  mL,
  mm,
  oz,
  ozPerFt,
  paM3PerS,
  volt,
  watt,
} from "hvac-install-math/quantity";

const tube = (size: number, wall = 0.032) => ({ outsideDiameter: inch(size), wall: inch(wall) });
const plan: Planned = {
  stock: [ft(15), ft(16), ft(25), ft(35), ft(50)],
  slack: ft(1),
  fillTemperature: degF(70),
  laterTemperature: degF(60),
  warmest: degF(100),
  leakRate: paM3PerS(5e-4),
};

/** Two heads and a third port: short lines offset long ones, and the sum falls below zero. */
export const shortLines: InstallationRecord = {
  version: 2,
  name: "Short lines (invented)",
  equipment: {
    refrigerant: "R-410A",
    portPairs: 3,
    factoryCharge: oz(80),
    manual: {
      preChargedLength: ft(25),
      preChargedFor: "each-run",
      chargeRate: ozPerFt(0.22),
      shortLineRule: "net-add-only",
      unusedPortAllowance: oz(-1.61),
    },
  },
  runs: ["A", "B"].map((name) => ({ name, tubing: { length: ft(16) } })),
};

/** A ducted unit whose rate counts for the whole line, less what the factory put in for its own. */
export const wholeLine: InstallationRecord = {
  version: 2,
  name: "Whole line (invented)",
  equipment: {
    refrigerant: "R-410A",
    factoryCharge: oz(120),
    manual: {
      preChargedLength: ft(0),
      chargeRate: ozPerFt(0.6),
      shortLineRule: "add-and-subtract",
      chargeAllowance: oz(-9),
    },
  },
  runs: [{ tubing: { length: ft(40), liquid: tube(0.375), vapor: tube(0.75) } }],
};

/** A drain that has to rise, with the curve of its pump. */
export const cellar: InstallationRecord = {
  version: 2,
  name: "Cellar (invented)",
  equipment: { refrigerant: "R-32" },
  runs: [
    {
      drain: {
        pump: {
          condensate: literPerHour(1.6),
          lift: m(1.2),
          curve: [
            { lift: m(0), flow: literPerHour(11) },
            { lift: m(6), flow: literPerHour(5) },
          ],
          reservoir: mL(50),
        },
      },
    },
    { name: "B", drain: { run: m(4), fall: mm(-300) } },
  ],
};

/** A cold attic: ice in the vacuum, a fill that the warm house would push above the marked pressure. */
export const coldAttic: InstallationRecord = {
  version: 2,
  name: "Cold attic (invented)",
  site: { altitude: m(100) },
  equipment: {
    refrigerant: "R-32",
    lowestMarkedPressure: MPag(4.3),
    manual: { testPressure: MPag(4.2) },
  },
  runs: [
    {
      tubing: {
        length: m(10),
        liquid: tube(0.25),
        vapor: tube(0.375),
        otherVolume: liter(0.8),
      },
    },
  ],
  plan: { ...plan, fillTemperature: degC(-20), laterTemperature: degC(-20), warmest: degC(20) },
  evacuations: [{ policy: "commonPractice500" }],
};

/** Three heads that together ask for more than the outdoor unit takes, and longer lines than it allows. */
export const tooMuch: InstallationRecord = {
  version: 2,
  name: "Too much (invented)",
  equipment: {
    refrigerant: "R-32",
    portPairs: 3,
    factoryCharge: g(1300),
    manual: {
      run: { maximumLength: m(25), maximumLift: m(15) },
      maximumTotalLength: m(40),
      mostConnected: watt(7000),
      leastConnected: watt(3000),
      preChargedLength: m(30),
      preChargedFor: "sum",
      chargeRate: gPerM(20),
      shortLineRule: "add-only",
    },
  },
  runs: ["A", "B", "C"].map((name) => ({
    name,
    indoorUnits: [{ capacity: watt(2600) }],
    tubing: { length: m(15), lift: m(3), outdoorUnit: "below" as const },
  })),
};

/** A heat pump on a long feeder of 120 V, where the drop decides the conductor. */
export const longFeed: InstallationRecord = {
  version: 2,
  name: "Long feed (invented)",
  equipment: {
    minimumCircuitAmpacity: ampere(12),
    maximumOvercurrentProtection: ampere(20),
    ratedLoadCurrent: ampere(10),
    lockedRotorCurrent: ampere(40),
    ratedVoltages: [volt(115)],
  },
  power: {
    voltage: volt(120),
    phases: 1,
    circuits: [
      {
        name: "heat pump",
        rules: "nfpa-70-2023",
        feeds: "motor-compressor",
        wiring: { material: "copper", insulation: "75 °C", terminations: "75 °C", length: ft(120) },
      },
    ],
  },
  operation: [
    {
      mode: "heating",
      indoorTemperature: degF(70),
      outdoorTemperature: degF(35),
      airSide: { least: deltaF(20), largest: deltaF(45) },
    },
  ],
};
