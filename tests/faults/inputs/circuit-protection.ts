import type * as circuitProtection from "hvac-install-math/circuit-protection";
import { iec60364, nec2023 } from "hvac-install-math/circuit-protection";
import {
  ampere,
  degC,
  ft,
  inch,
  kW,
  m,
  ohmPerKft,
  percent,
  volt,
  watt,
} from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

const loads = [
  {
    kind: "compressor",
    current: ampere(17.6),
    branchCircuitSelectionCurrent: ampere(18),
    lockedRotorCurrent: ampere(90),
    count: 1,
    runsIn: ["cooling", "heating"],
  },
  { kind: "motor", current: ampere(1.5), count: 2 },
  { kind: "heater", current: ampere(10), power: kW(2.4), runsIn: ["heating"] },
] as const;
const wiring = {
  material: "copper",
  insulation: "75 °C",
  terminations: "75 °C",
  cable: "other",
  ambient: degC(30),
  length: ft(48),
  stranding: "stranded",
  currentCarryingConductors: 2,
  conduit: "PVC",
} as const;
const metric = {
  material: "copper",
  insulation: "70 °C",
  method: "B2",
  groupedCircuits: 1,
  ambient: degC(30),
  length: m(15),
} as const;
const split = { voltage: volt(240), phases: 1, system: "120/240 V" } as const;

export const inputs: Inputs<typeof circuitProtection> = {
  assessNameplate: [
    [
      {
        loads: [
          { kind: "compressor", current: ampere(31.5) },
          { kind: "motor", current: ampere(3.1) },
        ],
        minimumCircuitAmpacity: ampere(42.5),
        maximumOvercurrentProtection: ampere(50),
      },
    ],
  ],
  breakerConnection: [[{ rules: nec2023, supply: split }]],
  circuitFromNameplate: [
    [
      {
        rules: nec2023,
        minimumCircuitAmpacity: ampere(31.4),
        maximumOvercurrentProtection: ampere(50),
        protectionMarking: "fuse or HACR breaker",
        ratedLoadCurrent: ampere(25),
        lockedRotorCurrent: ampere(120),
        powerFactor: 0.9,
        equipment: "motor-compressor",
        occupancy: "dwelling",
        supply: split,
        wiring,
        installed: {
          device: {
            kind: "breaker",
            rating: ampere(50),
            poles: 2,
            voltageRating: "120/240 V",
            hacr: true,
          },
          conductor: "8 AWG",
          equipmentGrounding: "10 AWG",
          disconnect: {
            rating: ampere(60),
            fuse: ampere(50),
            visible: true,
            distance: ft(20),
            readilyAccessible: true,
            inTheWay: false,
            workingSpace: {
              depth: inch(40),
              width: inch(40),
              height: inch(90),
              equipmentWidth: inch(12),
              condition: 1,
            },
          },
        },
      },
    ],
    [
      {
        rules: iec60364,
        minimumCircuitAmpacity: ampere(12),
        maximumOvercurrentProtection: ampere(16),
        lockedRotorCurrent: ampere(50),
        supply: { voltage: volt(230), phases: 1 },
        wiring: metric,
        installed: {
          device: { kind: "breaker", rating: ampere(16), poles: 2, curve: "C" },
          conductor: "2.5 mm²",
        },
      },
    ] as never,
  ],
  compareSupplies: [
    [
      {
        rules: nec2023,
        power: watt(1500),
        powerFactor: 0.95,
        supplies: [{ voltage: volt(120), phases: 1 }, split],
        wiring: { ...wiring, length: ft(80) },
        conductor: "10 AWG",
      },
    ],
  ],
  compressorProtection: [[{ rules: nec2023, loads }]],
  conductorResistance: [
    [
      {
        rules: nec2023,
        size: "8 AWG",
        material: "copper",
        stranding: "stranded",
        temperature: degC(60),
      },
    ],
  ],
  conduitImpedance: [[{ rules: nec2023, size: "250 kcmil", material: "copper", conduit: "steel" }]],
  equipmentGrounding: [
    [
      {
        rules: nec2023,
        material: "copper",
        deviceRating: ampere(60),
        minimumConductor: "6 AWG",
        conductor: "4 AWG",
      },
    ],
  ],
  largestDeviceOnConductor: [
    [{ rules: nec2023, size: "6 AWG", material: "copper", usable: ampere(55), device: "fuse" }],
  ],
  longestRun: [
    [
      {
        current: ampere(31),
        voltage: volt(230),
        phases: 1,
        limit: percent(2),
        resistance: ohmPerKft(1.21),
        reactance: ohmPerKft(0.05),
        powerFactor: 0.9,
      },
    ],
  ],
  maximumOvercurrentProtection: [[loads]],
  minimumCircuitAmpacity: [[loads]],
  minimumConductor: [
    [
      {
        rules: nec2023,
        wiring,
        phases: 1,
        ampacity: ampere(31.4),
        deviceRating: ampere(50),
        device: "breaker",
        equipment: "motor-compressor",
      },
    ],
  ],
  nameplateFromParts: [[loads]],
  tripBand: [[{ rules: iec60364, rating: ampere(16), curve: "C" }] as never],
  usableAmpacity: [
    [
      {
        rules: nec2023,
        size: "12 AWG",
        wiring: { ...wiring, aboveRoof: inch(12), cable: "other" },
        phases: 1,
        deviceRating: ampere(20),
      },
    ],
    [{ rules: iec60364, size: "2.5 mm²", wiring: metric, phases: 1 }] as never,
  ],
  voltageDrop: [
    [
      {
        current: ampere(44),
        voltage: volt(240),
        phases: 1,
        length: ft(160),
        resistance: ohmPerKft(0.491),
        reactance: ohmPerKft(0.05),
        powerFactor: 0.9,
      },
    ],
  ],
};
