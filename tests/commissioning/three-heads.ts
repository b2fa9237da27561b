// Three indoor units on one outdoor unit, invented: the lengths, the charge and the limits of a manual of that kind.
// Manual: 25 ft per port, add-and-subtract, 0.22 oz/ft: 41, 18 and 33 ft ask for (16 − 7 + 8) ft · 0.22 oz/ft = 3.74 oz.
import type { InstallationRecord, Run } from "hvac-install-math/commissioning";
import {
  ampere,
  degF,
  ft,
  ftLb,
  hour,
  inch,
  liter,
  m3,
  oz,
  ozPerFt,
  psi,
  psig,
  volt,
} from "hvac-install-math/quantity";
import { complete } from "./complete-record.ts";

const [one] = complete.runs ?? [];
const { tubing, room, drain } = one ?? {};
const sizes = { "3/8": [0.375, 28], "1/2": [0.5, 42] } as const;

/** A run with its own length, gas line and joints. */
function runOf(name: string, length: number, gas: "3/8" | "1/2"): Run {
  const [wide, torque] = sizes[gas];
  const ends = ["indoor", "outdoor"] as const;
  return {
    name,
    port: name,
    indoorUnits: [{ model: `invented head ${name}`, ports: { liquid: "1/4", vapor: gas } }],
    tubing: {
      ...tubing,
      vapor: { outsideDiameter: inch(wide), wall: inch(0.032) },
      length: ft(length),
      lift: ft(9),
      otherVolume: liter(0.9),
    },
    joints: ends.flatMap((end) => [
      { line: "liquid" as const, end, kind: "flare" as const, torque: ftLb(11.5) },
      { line: "vapor" as const, end, kind: "flare" as const, torque: ftLb(torque) },
    ]),
    room: { ...room, volume: m3(60) },
    drain: { ...drain },
  };
}

const [test] = complete.pressureTests ?? [];
const [watch] = complete.evacuations ?? [];
const [reading] = complete.operation ?? [];
const [circuit] = complete.power?.circuits ?? [];
const { manual, ...plates } = complete.equipment ?? {};

/** Each head tested and evacuated by itself; A and B were read together, C alone. */
export const threeHeads: InstallationRecord = {
  ...complete,
  equipment: {
    ...plates,
    factoryCharge: oz(113),
    maximumCharge: oz(150),
    minimumCircuitAmpacity: ampere(24.5),
    maximumOvercurrentProtection: ampere(40),
    ratedLoadCurrent: ampere(20.2),
    manual: {
      ...manual,
      run: { minimumLength: ft(10), maximumLength: ft(82), maximumLift: ft(49) },
      maximumTotalLength: ft(246),
      preChargedLength: ft(25),
      preChargedFor: "each-run",
      chargeRate: ozPerFt(0.22),
      shortLineRule: "add-and-subtract",
    },
  },
  runs: [runOf("A", 41, "3/8"), runOf("B", 18, "3/8"), runOf("C", 33, "1/2")],
  pressureTests: ["A", "B", "C"].map((name, i) => ({
    ...test,
    covers: [name],
    readings: [
      { pressure: psig(500 + i), temperature: degF(70), elapsed: hour(0) },
      { pressure: psig(489.3 + i), temperature: degF(60), elapsed: hour(14) },
    ],
    criterion: { maximumDrop: psi(4) },
  })),
  evacuations: [{ ...watch }],
  charge: { ...complete.charge, added: oz(3.7), tolerance: oz(1) },
  power: {
    ...complete.power,
    voltage: volt(240),
    circuits: [
      {
        ...circuit,
        installed: {
          device: { kind: "breaker", rating: ampere(40), poles: 2 },
          conductor: "10 AWG",
          equipmentGrounding: "10 AWG",
          disconnect: { rating: ampere(60), visible: true },
        },
      },
    ],
  },
  operation: [
    { ...reading, covers: ["A", "B"] },
    { ...reading, covers: ["C"], at: "2026-05-05T14:40" },
  ],
};
