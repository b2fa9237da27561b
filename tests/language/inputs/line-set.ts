// What else it takes to hear all that the module says.
import type * as lineSet from "hvac-install-math/line-set";
import {
  deltaK,
  ft,
  g,
  gPerM,
  inch,
  kg,
  kgPerHour,
  kgPerM,
  kgPerM3,
  kPa,
  kPaa,
  m,
  mm,
  oz,
  ozPerFt,
} from "hvac-install-math/quantity";
import { bubbleTemperature, R410A } from "hvac-install-math/refrigerants";
import type { Inputs } from "../../faults/catalogue.ts";

const rule = {
  length: ft(60),
  preChargedLength: ft(40),
  rate: ozPerFt(0.16),
  shortLineRule: "add-only",
} as const;
const run = { length: m(20), lift: m(8), outdoorUnit: "above" } as const;
const limits = {
  maximumLength: m(25),
  minimumLength: m(3),
  maximumLift: m(10),
  maximumBends: 10,
};
const small = { outsideDiameter: inch(0.25), wall: inch(0.03) };
const velocity = {
  tube: small,
  massFlow: kgPerHour(78),
  density: kgPerM3(980),
  solenoidValve: false,
};
const subcooling = {
  liquidPressure: kPaa(2550),
  bubbleTemperature: (pressure: ReturnType<typeof kPaa>) => bubbleTemperature(R410A, pressure),
  losses: [kPa(97)],
  margin: deltaK(2),
};
const vapor = {
  tube: { outsideDiameter: inch(0.375), wall: inch(0.032) },
  direction: "riser",
  fullMassFlow: kgPerHour(78),
  minimumMassFlow: kgPerHour(40),
  vaporDensity: kgPerM3(33),
  oilDensity: kgPerM3(980),
} as const;
const stock = { run: ft(21), stock: [ft(16), ft(25), ft(50)], cuttable: false };
const full = { tube: small, density: kgPerM3(972.3), expansionDevice: "outdoor" } as const;
const four = [1, 2, 3, 4].map((i) => ({ label: `item ${i}`, diameter: mm(20) }));

export const inputs: Partial<Inputs<typeof lineSet>> = {
  additionalCharge: [
    [{ ...rule, length: ft(10), shortLineRule: "add-and-subtract" }],
    [{ ...rule, length: ft(10) }],
    [{ ...rule, length: ft(10), shortLineRule: "not-stated" }],
    [{ ...rule, rate: kgPerM(0.3) }],
    [{ ...rule, maximumLength: ft(50), safetyClass: "B2L" }],
    [{ ...rule, maximumLength: ft(61), lengthUncertainty: ft(1) }],
    [{ ...rule, minimumLength: ft(70) }],
    [{ ...rule, minimumLength: ft(59), lengthUncertainty: ft(1) }],
    [{ ...rule, maximumCharge: oz(43), factoryCharge: oz(40) }],
    [{ ...rule, maximumCharge: oz(43.3), factoryCharge: oz(40), lengthUncertainty: ft(1) }],
    [{ ...rule, maximumCharge: oz(43) }],
    [{ ...rule, maximumCharge: oz(3) }],
    [{ ...rule, rate: gPerM(15_000) }], // a rate in another unit: the error's hint
  ],
  multiSplitCharge: [
    [
      {
        lines: [{ length: ft(10), preChargedLength: ft(25), rate: ozPerFt(0.22) }],
        allowance: oz(-1.61),
        shortLineRule: "net-add-only",
      },
    ],
  ],
  frictionLoss: [
    [
      {
        tube: small,
        length: m(10),
        massFlow: kgPerHour(60),
        density: kgPerM3(980),
        viscosityMicropascalSecond: 1e-4, // in Pa·s: the error's hint
      },
    ],
  ],
  assessLineFit: [
    [{ items: four, opening: { width: mm(39.5), height: mm(40) } }],
    [{ items: four, opening: { diameter: mm(30) } }],
  ],
  assessLineRun: [
    [{ ...run, bends: 4, limits }],
    [{ ...run, limits: { ...limits, bendEquivalentLength: m(1) } }],
    [{ ...run, bends: 1, lift: m(12), limits: { ...limits, maximumBends: 0 } }],
    [{ ...run, bends: 11, limits: { ...limits, maximumLiftOutdoorAbove: m(5) } }],
    [{ ...run, length: m(30), bends: 2, limits: { ...limits, maximumBends: 1 } }],
    [{ ...run, length: m(9), bends: 2, limits: { ...limits, minimumLength: m(10) } }],
    [{ ...run, bends: 2, standardUncertainty: m(1), limits: { ...limits, minimumLength: m(20) } }],
    [{ ...run, length: m(25), bends: 2, standardUncertainty: m(0.2), limits }],
  ],
  assessLiquidVelocity: [
    [velocity],
    [{ ...velocity, massFlow: kgPerHour(156), maximumLoss: kPa(40) }],
    [{ ...velocity, massFlow: kgPerHour(7), maximumLoss: kPa(40), pressureLoss: kPa(41) }],
  ],
  assessRecovery: [
    [{ chargeToKeep: g(900) }],
    [{ chargeToKeep: g(0) }],
    [{ chargeInSystem: g(900), chargeToKeep: g(1100) }],
    [
      {
        chargeInSystem: kg(2),
        chargeToKeep: g(0),
        cylinder: { maximumFill: kg(9), contents: kg(8) },
      },
    ],
  ],
  assessVaporLine: [
    [vapor],
    [{ ...vapor, minimumMassFlow: kgPerHour(20) }],
    [{ ...vapor, minimumMassFlow: kgPerHour(5) }],
    [{ ...vapor, minimumMassFlow: kgPerHour(5), direction: "horizontal" }],
    [{ ...vapor, fullMassFlow: kgPerHour(200) }],
  ],
  chooseStockLength: [
    [stock],
    [{ ...stock, run: ft(4), minimumLength: ft(10) }],
    [{ ...stock, run: ft(60) }],
    [{ ...stock, maximumLength: ft(24) }],
    [{ ...stock, maximumLength: ft(20) }],
  ],
  liquidChargePlausibility: [
    [{ ...full, rate: gPerM(5) }],
    [{ ...full, rate: gPerM(30) }],
    [{ ...full, rate: gPerM(40) }],
    [{ ...full, rate: gPerM(600) }],
  ],
  liquidLineSubcooling: [
    [subcooling],
    [{ ...subcooling, available: deltaK(3) }],
    [{ ...subcooling, available: deltaK(4), standardUncertainty: deltaK(0.5) }],
  ],
};
