import type * as circuitProtection from "hvac-install-math/circuit-protection";
import { bs7671, iec60364, nec2023 } from "hvac-install-math/circuit-protection";
import {
  ampere,
  degC,
  ft,
  inch,
  kW,
  m,
  ohmPerKft,
  percent,
  second,
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
  { kind: "heater", power: kW(1), ratedVoltage: volt(240), supplyVoltage: volt(208), phases: 1 },
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
  grouping: "single layer",
  insulationLength: m(0.3),
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
        printedTo: ampere(0.1),
        standard: "UL 1995",
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
        ratedLoadCurrent: ampere(26),
        largestLoadCurrent: ampere(24),
        printedTo: ampere(0.1),
        nameplateReadAgain: true,
        sharedWith: [
          { kind: "other", current: ampere(0.5), continuous: false },
          {
            kind: "unit",
            current: ampere(0.2),
            maximumOvercurrentProtection: ampere(50),
          },
        ],
        date: "2026-09-01",
        powerConversion: true,
        groundFaultText: "as printed",
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
          whip: { conductor: "8 AWG", wiring },
          aluminumTerminals: true,
          equipmentGrounding: "10 AWG",
          groundingMaterial: "copper",
          groundingByRaceway: false,
          compressionFittings: false,
          serviceReceptacle: { distance: ft(20), onLoadSide: false },
          disconnect: {
            rating: ampere(60),
            fuse: ampere(50),
            visible: true,
            distance: ft(20),
            readilyAccessible: true,
            inTheWay: false,
            lockable: true,
            onUnit: false,
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
        ratedCurrent: ampere(12),
        maximumFuse: ampere(16),
        earthing: "TT",
        lockedRotorCurrent: ampere(50),
        supply: { voltage: volt(230), phases: 1 },
        wiring: metric,
        installed: {
          device: { kind: "breaker", rating: ampere(16), poles: 2, curve: "C" },
          conductor: "2.5 mm²",
          equipmentGrounding: "1.5 mm²",
          fault: { letThrough: 15_000 },
          residualCurrent: ampere(0.03),
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
  groundFaultProtection: [
    [
      {
        rules: nec2023,
        supply: split,
        rating: ampere(30),
        occupancy: "dwelling",
        date: "2026-09-01",
        powerConversion: true,
        text: "as printed",
      },
    ],
  ],
  heaterCurrent: [
    [{ power: kW(9.6), ratedVoltage: volt(240), supplyVoltage: volt(208), phases: 3 }],
  ],
  minimumDisconnect: [[{ rules: nec2023, loads }]],
  protectiveConductorArea: [
    [
      {
        fault: { current: ampere(1000), clearingTime: second(0.4) },
        conductor: { material: "copper", insulation: "70 °C", separate: false },
      },
    ],
    [{ fault: { letThrough: 15_000 }, conductor: { material: "copper", insulation: "90 °C" } }],
  ],
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
        groundingMaterial: "copper",
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
  nameplateFromParts: [[loads, "UL 60335-2-40"]],
  longestRunByFaultLoop: [
    [
      {
        rating: ampere(20),
        curve: "C",
        tripsAt: 10,
        voltageToGround: volt(230),
        line: "2.5 mm²",
        protective: "2.5 mm²",
      },
    ],
  ],
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
    [
      {
        rules: iec60364,
        size: "4 mm²",
        wiring: {
          material: "copper",
          insulation: "90 °C",
          method: "D1",
          ambient: degC(15),
          soilResistivity: 1.5,
        },
        phases: 3,
      },
    ] as never,
    [
      {
        rules: bs7671,
        size: "2.5 mm²",
        wiring: { material: "copper", insulation: "70 °C", method: "101" },
        phases: 1,
      },
    ] as never,
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
