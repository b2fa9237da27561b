// Six further invented installations as finished records, each for something that the twelve do not have. The pressures
// of the morning after are those of nitrogen by a virial equation outside this library (B of Kaye and Laby's form,
// 185.4 − 141.8·exp(88.7 K/T) cm³/mol, C 1450 cm⁶/mol², from memory), which gives the figures of the twelve to the digit.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import {
  cuft,
  degC,
  degF,
  ft,
  g,
  gPerM,
  hour,
  literPerHour,
  MPag,
  m,
  m2,
  mL,
  mm,
  oz,
  ozPerFt,
  psig,
  watt,
} from "hvac-install-math/quantity";
import { installation, run } from "./installations.ts";
import { air, cool, cooling, heating, metric, nec, unit } from "./usual.ts";

/** Two heads and a third port: 2 · (16 − 25) ft · 0.22 oz/ft − 1.61 oz is below zero, which the manual counts as nothing. */
const shortLines = installation({
  name: "Short Lines",
  equipment: {
    ...unit("multi 18k", "R-410A", 5300, ["1/4", "3/8"], [17, 25, 13.8], [208, 230]),
    portPairs: 3,
    factoryCharge: oz(80),
    lowestMarkedPressure: psig(540),
  },
  manual: {
    run: { minimumLength: ft(10), maximumLength: ft(82), maximumLift: ft(49) },
    maximumTotalLength: ft(164),
    preChargedLength: ft(25),
    preChargedFor: "each-run",
    chargeRate: ozPerFt(0.22),
    shortLineRule: "net-add-only",
    unusedPortAllowance: oz(-1.61),
    testPressure: psig(450),
    testHold: hour(12),
  },
  runs: ["A", "B"].map((name) =>
    run({
      name,
      length: ft(16),
      lines: ["1/4", "3/8"],
      vessel: 0.9,
      room: { volume: cuft(1100), place: "wall" },
    }),
  ),
  test: [psig(500), degF(70), psig(489.5), degF(60), 24],
  added: oz(0),
  voltage: 240,
  circuits: [nec(20, "12 AWG", 40, 2, 30)],
  operation: cooling(degF(75), degF(90), psig(121)),
});

/** A ducted unit: 40 ft · 0.6 oz/ft less the 9 oz that the factory put in for its own line. */
const wholeLine = installation({
  name: "Whole Line",
  equipment: {
    ...unit("ducted 3 ton", "R-410A", 10_500, ["3/8", "3/4"], [21.6, 35, 17.5], [208, 230]),
    meteringDevice: "thermostatic-valve",
    factoryCharge: oz(120),
    lowestMarkedPressure: psig(480),
  },
  manual: {
    run: { minimumLength: ft(10), maximumLength: ft(80), maximumLift: ft(30) },
    preChargedLength: ft(0),
    chargeRate: ozPerFt(0.6),
    shortLineRule: "add-and-subtract",
    chargeAllowance: oz(-9),
    testPressure: psig(430),
    testHold: hour(24),
  },
  runs: [
    run({
      length: ft(40),
      lines: ["3/8", "3/4"],
      vessel: 3.2,
      joint: "brazed",
      room: { volume: cuft(1300), place: "ceiling" },
    }),
  ],
  test: [psig(450), degF(70), psig(440.6), degF(60), 74],
  added: oz(15),
  voltage: 240,
  circuits: [nec(35, "10 AWG", 60, 2, 30)],
  operation: cooling(degF(75), degF(90), psig(121)),
});

/** A cellar whose water a pump lifts: 9.8 L/h at 1.2 m, six times what comes. */
const cellar = installation({
  name: "Cellar",
  equipment: {
    ...unit("2.5 kW", "R-32", 2500, ["1/4", "3/8"], [5.6, 16, 5.6], [230]),
    factoryCharge: g(600),
    lowestMarkedPressure: MPag(4.15),
  },
  manual: {
    run: { minimumLength: m(3), maximumLength: m(20), maximumLift: m(10) },
    preChargedLength: m(7.5),
    chargeRate: gPerM(20),
    shortLineRule: "add-only",
    testPressure: MPag(3.5),
    testHold: hour(12),
  },
  runs: [
    run({
      length: m(6),
      lines: ["1/4", "3/8"],
      vessel: 0.8,
      outdoorUnit: "above",
      room: { floorArea: m2(14), place: "wall" },
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
        unitPitch: { gap: mm(3), levelLength: mm(600), accuracy: mm(0.3) },
        waterRanOff: true,
        at: "2026-05-05",
      },
    }),
  ],
  test: [MPag(3.8), degC(18), MPag(3.741), degC(14), 16],
  voltage: 230,
  circuits: [metric(10, "1.5 mm²", 14)],
  operation: cool(0.92, 30),
});

/** Twenty degrees of frost, in which ice holds less pressure than many targets. */
const coldAttic = installation({
  name: "Cold Attic",
  altitude: m(100),
  equipment: {
    ...unit("3.5 kW", "R-32", 3500, ["1/4", "3/8"], [15, 20, 12.1], [208, 230]),
    factoryCharge: g(850),
    lowestMarkedPressure: MPag(4.3),
  },
  manual: {
    run: { minimumLength: m(3), maximumLength: m(20), maximumLift: m(10) },
    preChargedLength: m(7.5),
    chargeRate: gPerM(20),
    shortLineRule: "add-only",
    testPressure: MPag(3.2),
    testHold: hour(12),
  },
  runs: [
    run({
      length: m(10),
      lines: ["1/4", "3/8"],
      vessel: 0.8,
      room: { floorArea: m2(25), place: "wall" },
    }),
  ],
  test: [MPag(3.5), degC(-20), MPag(3.564), degC(-16), 24],
  added: g(50),
  voltage: 240,
  circuits: [{ ...nec(20, "12 AWG", 50, 2, 30), rules: "csa-c22.1-2024" }],
  operation: heating(2.4, -16),
});

/** Three heads that together ask for just what the outdoor unit takes: 7.8 kW of 8 kW, 30 m of 40 m. */
const justEnough = installation({
  name: "Just Enough",
  each: true,
  equipment: {
    ...unit("multi 6 kW", "R-32", 6000, ["1/4", "3/8"], [13.4, 20, 13.4], [230]),
    portPairs: 3,
    factoryCharge: g(1300),
    maximumCharge: g(1900),
    lowestMarkedPressure: MPag(4.3),
  },
  manual: {
    run: { minimumLength: m(3), maximumLength: m(25), maximumLift: m(15) },
    maximumTotalLength: m(40),
    leastConnected: watt(3000),
    mostConnected: watt(8000),
    preChargedLength: m(20),
    preChargedFor: "sum",
    chargeRate: gPerM(20),
    shortLineRule: "add-only",
    testPressure: MPag(3.5),
    testHold: hour(16),
  },
  runs: (
    [
      ["A", 10],
      ["B", 12],
      ["C", 8],
    ] as const
  ).map(([name, length]) =>
    run({
      name,
      length: m(length),
      lines: ["1/4", "3/8"],
      vessel: 0.7,
      room: { floorArea: m2(20), place: "wall" },
      more: { indoorUnits: [{ model: `invented head ${name}`, capacity: watt(2600) }] },
    }),
  ),
  test: [MPag(3.8), degC(24), MPag(3.671), degC(15), 24],
  added: g(200),
  voltage: 230,
  circuits: [metric(16, "2.5 mm²", 20)],
  operation: cool(0.92, 32),
});

/** 120 ft of cable at 120 V, where the drop decides the conductor, and a unit that should not be opened for a gauge. */
const longFeed = installation({
  name: "Long Feed",
  equipment: {
    ...unit("9k", "R-32", 2600, ["1/4", "3/8"], [12, 20, 10], [115]),
    factoryCharge: oz(20),
    lowestMarkedPressure: psig(550),
  },
  manual: {
    run: { minimumLength: ft(10), maximumLength: ft(66), maximumLift: ft(33) },
    preChargedLength: ft(25),
    chargeRate: ozPerFt(0.13),
    shortLineRule: "add-only",
    testPressure: psig(450),
    testHold: hour(12),
  },
  runs: [
    run({
      length: ft(20),
      lines: ["1/4", "3/8"],
      vessel: 0.9,
      room: { floorArea: m2(14), place: "wall" },
    }),
  ],
  test: [psig(500), degF(70), psig(489.5), degF(60), 16],
  voltage: 120,
  circuits: [nec(20, "8 AWG", 120, 1, 30)],
  operation: air("cooling", [24, 13, 31], 9),
});

/** The six by name. */
export const own: Readonly<Record<string, InstallationRecord>> = {
  "Short Lines": shortLines,
  "Whole Line": wholeLine,
  Cellar: cellar,
  "Cold Attic": coldAttic,
  "Just Enough": justEnough,
  "Long Feed": longFeed,
};
