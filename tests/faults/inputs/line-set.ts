import type * as lineSet from "hvac-install-math/line-set";
import {
  degC,
  degF,
  deltaK,
  ft,
  g,
  gPerM,
  inch,
  kg,
  kgPerHour,
  kgPerM3,
  kJPerKg,
  kPa,
  kW,
  m,
  mL,
  mm,
  mPerSecond,
  oz,
  ozPerFt,
} from "hvac-install-math/quantity";
import { bubblePressure, bubbleTemperature, R410A } from "hvac-install-math/refrigerants";
import type { Inputs } from "../catalogue.ts";

const small = { outsideDiameter: inch(0.25), wall: inch(0.03) };
const large = { outsideDiameter: inch(0.375), wall: inch(0.032) };
const bounds = {
  factoryCharge: oz(52),
  maximumLength: ft(82),
  minimumLength: ft(10),
  maximumCharge: oz(80),
  scaleResolution: oz(0.1),
  lengthUncertainty: inch(2),
  safetyClass: "A2L",
} as const;
const items = [
  { label: "vapor line", diameter: inch(1.375) },
  { label: "liquid line", diameter: inch(1.25) },
  { label: "drain", diameter: inch(0.75) },
];

export const inputs: Inputs<typeof lineSet> = {
  additionalCharge: [
    [
      {
        length: ft(60),
        preChargedLength: ft(40),
        rate: ozPerFt(0.16),
        shortLineRule: "add-only",
        ...bounds,
      },
    ],
    [
      {
        length: ft(60),
        preChargedLength: ft(40),
        rate: { mass: oz(0.8), per: ft(5) },
        shortLineRule: "add-and-subtract",
      },
    ],
  ],
  assessLineFit: [
    [{ items, opening: { diameter: inch(3) }, clearance: inch(0.1) }],
    [{ items, opening: { width: inch(4), height: inch(3) } }],
  ],
  assessLineRun: [
    [
      {
        length: m(18),
        lift: m(14),
        outdoorUnit: "above",
        bends: 4,
        standardUncertainty: m(0.1),
        limits: {
          maximumLength: m(25),
          minimumLength: m(3),
          maximumLift: m(15),
          maximumLiftOutdoorAbove: m(15),
          maximumBends: 10,
          bendEquivalentLength: m(0.3),
          oilTraps: { above: m(10), spacing: m(6) },
          extraOil: { beyond: m(10), per: m(5), volume: mL(5) },
        },
      },
    ],
  ],
  assessLiquidVelocity: [
    [
      {
        tube: small,
        massFlow: kgPerHour(78),
        density: kgPerM3(980),
        solenoidValve: false,
        pressureLoss: kPa(20),
        maximumLoss: kPa(40),
      },
    ],
  ],
  assessRecovery: [
    [
      {
        chargeInSystem: g(1100),
        chargeToKeep: g(100),
        cylinder: { maximumFill: kg(9), contents: kg(2) },
        safetyClass: "A1",
      },
    ],
  ],
  assessVaporLine: [
    [
      {
        tube: large,
        direction: "riser",
        fullMassFlow: kgPerHour(78),
        minimumMassFlow: kgPerHour(70),
        vaporDensity: kgPerM3(33),
        oilDensity: kgPerM3(980),
        minimumVelocity: mPerSecond(2),
        maximumVelocity: mPerSecond(20),
      },
    ],
  ],
  astmB280Tube: [[{ size: "3/8", temper: "annealed", wall: inch(0.032) }]],
  boreArea: [[small]],
  chooseStockLength: [
    [
      {
        run: ft(21),
        slack: ft(1),
        serviceLoop: ft(2),
        stock: [ft(16), ft(25), ft(35), ft(50)],
        cuttable: true,
        minimumLength: ft(10),
        maximumLength: ft(60),
      },
    ],
  ],
  copperMassPerLength: [[small]],
  en12735Tube: [[9.52, mm(0.8)]],
  frictionFactor: [[{ reynolds: 1e5, relativeRoughness: 1e-5 }]],
  frictionLoss: [
    [
      {
        tube: small,
        length: m(10),
        massFlow: kgPerHour(60),
        density: kgPerM3(980),
        viscosityMicropascalSecond: 100,
        roughness: mm(0.0015),
      },
    ],
  ],
  fullLineMass: [
    [{ tube: small, density: kgPerM3(890.3), length: m(10) }],
    [{ tube: small, refrigerant: R410A, temperature: degF(105), length: m(10) }],
  ],
  fullLineRate: [
    [{ tube: small, density: kgPerM3(890.3) }],
    [{ tube: small, refrigerant: R410A, temperature: degF(105) }],
  ],
  identifyLines: [[large, small]],
  insideDiameter: [[small]],
  insulatedDiameter: [[large, inch(0.5)]],
  jisH3300Tube: [["6.35", mm(0.8)]],
  lineContents: [
    [
      {
        liquid: { tube: small, density: kgPerM3(961) },
        vapor: { tube: large, density: kgPerM3(28) },
        length: m(8),
      },
    ],
  ],
  lineVelocity: [[{ tube: large, massFlow: kgPerHour(60), density: kgPerM3(33) }]],
  liquidChargePlausibility: [
    [{ rate: gPerM(15), tube: small, density: kgPerM3(972), expansionDevice: "outdoor" }],
    [
      {
        rate: { mass: g(150), per: m(10) },
        tube: small,
        refrigerant: R410A,
        temperature: degF(105),
        expansionDevice: "indoor",
      },
    ],
  ],
  liquidLineSubcooling: [
    [
      {
        liquidPressure: bubblePressure(R410A, degC(42)),
        bubbleTemperature: (pressure) => bubbleTemperature(R410A, pressure),
        losses: [kPa(56), kPa(40)],
        margin: deltaK(2),
        available: deltaK(6),
        standardUncertainty: deltaK(0.5),
      },
    ],
  ],
  multiSplitCharge: [
    [
      {
        lines: [
          { length: m(12), rate: gPerM(12), allowance: g(10) },
          { length: m(15), rate: { mass: g(12), per: m(1) } },
        ],
        preChargedTotal: m(20),
        shortLineRule: "add-only",
        ...bounds,
        maximumLength: m(60),
        minimumLength: m(3),
      },
    ],
    [
      {
        lines: [{ length: m(12), rate: gPerM(12), preChargedLength: m(7.5) }],
        shortLineRule: "add-only",
      },
    ],
  ],
  oilEntrainmentVelocity: [[{ tube: large, vaporDensity: kgPerM3(33), oilDensity: kgPerM3(980) }]],
  rateForLiquidLine: [
    [
      [
        { outsideDiameter: mm(6.35), rate: gPerM(12) },
        { outsideDiameter: mm(9.52), rate: { mass: g(24), per: m(1) } },
      ],
      small,
    ],
  ],
  refrigerantMassFlow: [[{ capacity: kW(3.5), enthalpyDifference: kJPerKg(160) }]],
  smallestSleeve: [[items, inch(0.1)]],
  staticHead: [[{ density: kgPerM3(1113.6), lift: ft(10) }]],
  tubeVolume: [[small, ft(25)]],
};
