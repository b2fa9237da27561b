// The twelve invented installations as complete records: their manuals, runs, tests, circuits and readings.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import {
  ampere,
  barg,
  cuft,
  degC,
  degF,
  ft,
  g,
  gPerM,
  hour,
  kg,
  MPag,
  m,
  m2,
  oz,
  ozPerFt,
  psig,
} from "hvac-install-math/quantity";
import { installation, run } from "./installations.ts";
import { air, cool, cooling, heating, metric, nec, unit } from "./usual.ts";

export const heronCabin: InstallationRecord = installation({
  name: "Heron Cabin",
  equipment: {
    ...unit("12k", "R-32", 3500, ["1/4", "3/8"], [15, 20, 12.1], [115]),
    factoryCharge: oz(21.2),
    lowestMarkedPressure: psig(550),
  },
  manual: {
    run: { minimumLength: ft(10), maximumLength: ft(66), maximumLift: ft(33) },
    preChargedLength: ft(25),
    chargeRate: ozPerFt(0.13),
    shortLineRule: "add-only",
    testPressure: psig(450),
    testHold: hour(8),
  },
  runs: [
    run({
      length: ft(15),
      lines: ["1/4", "3/8"],
      vessel: 1,
      room: { floorArea: m2(15.6), place: "wall" },
    }),
  ],
  test: [psig(500), degF(78), psig(485.5), degF(64), 15.7],
  voltage: 120,
  circuits: [nec(20, "12 AWG", 45, 1, 30)],
  operation: cooling(degF(75), degF(90), psig(121)),
});

export const mesaBarn: InstallationRecord = installation({
  name: "Mesa Barn",
  altitude: ft(5280),
  equipment: {
    ...unit("18k", "R-454B", 5300, ["1/4", "1/2"], [13.5, 20, 10.9], [208, 230]),
    factoryCharge: oz(44),
    lowestMarkedPressure: psig(550),
  },
  manual: {
    run: { minimumLength: ft(10), maximumLength: ft(98), maximumLift: ft(49) },
    preChargedLength: ft(25),
    chargeRate: ozPerFt(0.16),
    shortLineRule: "add-only",
    testPressure: psig(450),
    testHold: hour(24),
  },
  runs: [
    run({
      length: ft(61),
      lines: ["1/4", "1/2"],
      vessel: 1.4,
      room: { floorArea: m2(40), place: "wall" },
    }),
  ],
  test: [psig(500), degF(88), psig(463.7), degF(52), 43.2],
  added: oz(5.8),
  voltage: 240,
  circuits: [nec(20, "12 AWG", 80, 2, 30)],
  operation: cooling(degF(75), degF(92), psig(110)),
});

export const threeFinches: InstallationRecord = installation({
  name: "Three Finches",
  each: true,
  equipment: {
    ...unit("multi 36k", "R-410A", 10_500, ["1/4", "3/8"], [24.5, 40, 20.2], [208, 230]),
    factoryCharge: oz(113),
    lowestMarkedPressure: psig(540),
  },
  manual: {
    run: { minimumLength: ft(10), maximumLength: ft(82), maximumLift: ft(49) },
    maximumTotalLength: ft(246),
    preChargedLength: ft(25),
    preChargedFor: "each-run",
    chargeRate: ozPerFt(0.22),
    shortLineRule: "add-and-subtract",
    testPressure: psig(450),
    testHold: hour(15),
  },
  runs: (
    [
      ["A", 41, "3/8", 0.9],
      ["B", 18, "3/8", 0.9],
      ["C", 33, "1/2", 1.3],
    ] as const
  ).map(([name, length, vapor, vessel]) =>
    run({
      name,
      length: ft(length),
      lines: ["1/4", vapor],
      vessel,
      room: { volume: cuft(880), place: "wall" },
    }),
  ),
  test: [psig(500), degF(82), psig(487.7), degF(70), 29.2],
  added: oz(3.74),
  voltage: 240,
  circuits: [nec(30, "10 AWG", 65, 2, 30)],
  operation: cooling(degF(75), degF(90), psig(121)),
});

export const birchLake: InstallationRecord = installation({
  name: "Birch Lake",
  altitude: m(600),
  equipment: {
    ...unit("multi 18k", "R-32", 5300, ["1/4", "3/8"], [17, 25, 13.8], [208, 230]),
    factoryCharge: g(1250),
    lowestMarkedPressure: MPag(4.3),
  },
  manual: {
    run: { minimumLength: m(3), maximumLength: m(25), maximumLift: m(15) },
    maximumTotalLength: m(40),
    preChargedLength: m(15),
    preChargedFor: "sum",
    chargeRate: gPerM(12),
    shortLineRule: "add-only",
    testPressure: MPag(3.5),
    testHold: hour(12),
  },
  runs: (
    [
      ["east", 12],
      ["west", 9],
    ] as const
  ).map(([name, length]) =>
    run({
      name,
      length: m(length),
      lines: ["1/4", "3/8"],
      vessel: 0.8,
      room: { floorArea: m2(30), place: "wall" },
    }),
  ),
  test: [MPag(3.7), degC(-12), MPag(3.83), degC(-4), 25],
  added: g(72),
  voltage: 240,
  circuits: [{ ...nec(20, "12 AWG", 79, 2, 30), rules: "csa-c22.1-2024" }],
  operation: heating(2.4, -12),
});

export const rueCourte: InstallationRecord = installation({
  name: "Rue Courte",
  equipment: {
    ...unit("2.5 kW", "R-32", 2500, ["1/4", "3/8"], [5.6, 16, 5.6], [230]),
    factoryCharge: g(550),
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
      length: m(3.1),
      lines: ["1/4", "3/8"],
      vessel: 0.8,
      lift: m(0.5),
      room: { floorArea: m2(11), place: "wall" },
    }),
  ],
  test: [MPag(3.8), degC(26), MPag(3.672), degC(17), 13.3],
  voltage: 230,
  circuits: [metric(10, "1.5 mm²", 16)],
  operation: cool(0.92, 32),
});

const quattro = (place: "wall" | "floor"): InstallationRecord =>
  installation({
    name: "Casa Quattro",
    equipment: {
      ...unit("multi 8 kW", "R-32", 8000, ["1/4", "3/8"], [15.2, 25, 15.2], [230]),
      factoryCharge: kg(2.2),
      maximumCharge: kg(2.8),
      lowestMarkedPressure: MPag(4.3),
    },
    manual: {
      run: { minimumLength: m(3), maximumLength: m(25), maximumLift: m(15) },
      maximumTotalLength: m(60),
      preChargedLength: m(30),
      preChargedFor: "sum",
      chargeRate: gPerM(20),
      shortLineRule: "add-only",
      testPressure: MPag(3.5),
      testHold: hour(20),
    },
    runs: (
      [
        ["living room", 14, 32, "wall"],
        ["bedroom", 11, 12, "wall"],
        ["office", 9, 9, place],
        ["hall", 16, 8, "ceiling"], // the cap of small rooms asks for 7.7 m²
      ] as const
    ).map(([name, length, area, where]) =>
      run({
        name,
        length: m(length),
        lines: ["1/4", "3/8"],
        vessel: 0.7,
        room: { floorArea: m2(area), place: where, edition: "iec-60335-2-40-2018" },
      }),
    ),
    test: [MPag(3.8), degC(31), MPag(3.675), degC(22), 24],
    added: g(400),
    voltage: 230,
    circuits: [metric(20, "2.5 mm²", 22)],
    operation: cool(0.92, 32),
  });

/** A floor unit in the office: 2.6 kg need 57.53 m² there. */
export const casaQuattroFloor: InstallationRecord = quattro("floor");
/** The same, hung on the wall. */
export const casaQuattro: InstallationRecord = quattro("wall");

export const atticLark: InstallationRecord = installation({
  name: "Attic Lark",
  equipment: {
    ...unit("3.5 kW", "R-32", 3500, ["1/4", "3/8"], [7.4, 16, 7.4], [230]),
    factoryCharge: g(780),
    lowestMarkedPressure: barg(43),
  },
  manual: {
    run: { minimumLength: m(3), maximumLength: m(20), maximumLift: m(10) },
    preChargedLength: m(7.5),
    chargeRate: gPerM(20),
    shortLineRule: "add-only",
    testPressure: barg(35),
    testHold: hour(12),
  },
  runs: [
    run({
      length: m(13),
      lines: ["1/4", "3/8"],
      vessel: 0.9,
      lift: m(4),
      outdoorUnit: "above",
      room: { floorArea: m2(18), place: "wall" },
    }),
  ],
  test: [barg(40), degC(14), barg(38.74), degC(6), 25.9],
  added: g(110),
  voltage: 230,
  circuits: [metric(16, "1.5 mm²", 18)],
  operation: heating(2.4, 6),
});

/** Hot and by the wiring rules of Australia. */
export const redGum: InstallationRecord = installation({
  name: "Red Gum",
  equipment: {
    ...unit("7.1 kW", "R-32", 7100, ["1/4", "5/8"], [13.5, 25, 13.5], [220, 240]),
    factoryCharge: g(1300),
    lowestMarkedPressure: MPag(4.2),
  },
  manual: {
    run: { minimumLength: m(3), maximumLength: m(30), maximumLift: m(15) },
    preChargedLength: m(15),
    chargeRate: gPerM(20),
    shortLineRule: "add-only",
    testPressure: MPag(3.4),
    testHold: hour(18),
  },
  runs: [
    run({
      length: m(22),
      lines: ["1/4", "5/8"],
      vessel: 1.6,
      room: { floorArea: m2(18), place: "wall" },
    }),
  ],
  test: [MPag(3.7), degC(41), MPag(3.413), degC(19), 69],
  added: g(140),
  voltage: 230,
  standard: "iec-60038",
  circuits: [metric(20, "2.5 mm²", 18, "as-nzs-3000-2018-australia")],
  operation: cool(0.92, 41),
});

const couplings = ["pressureTests", "evacuations", "charge"] as const;
const quick = installation({
  name: "Quick Wren",
  equipment: {
    ...unit("18k", "R-454B", 5300, ["1/4", "1/2"], [16.5, 25, 13.2], [208, 230]),
    construction: "quick-connect",
    factoryCharge: oz(50),
  },
  manual: { run: { minimumLength: ft(10), maximumLength: ft(50), maximumLift: ft(25) } },
  runs: [
    run({
      length: ft(25),
      lines: ["1/4", "1/2"],
      vessel: 0,
      joint: "coupling",
      room: { floorArea: m2(40), place: "wall" },
    }),
  ],
  voltage: 240,
  circuits: [nec(20, "12 AWG", 55, 2, 30)],
  operation: air("cooling", [24, 12, 30], 10),
});
export const quickWren: InstallationRecord = {
  ...Object.fromEntries(Object.entries(quick).filter(([key]) => !couplings.includes(key as never))),
  charge: { added: g(0) },
} as InstallationRecord;

export const northStove: InstallationRecord = {
  ...installation({
    name: "North Stove",
    equipment: {
      ...unit("monobloc 6 kW", "R-290", 6000, [undefined, undefined], [13.4, 20, 13.4], [230]),
      construction: "monobloc",
      duty: "heating",
      factoryCharge: kg(0.6),
    },
    manual: {},
    runs: [],
    voltage: 230,
    circuits: [metric(16, "2.5 mm²", 28)],
    operation: air("heating", [20, 38, 2], 10),
  }),
  waivers: [{ step: "drain", reason: "heats-only", by: "N. N.", at: "2026-05-04" }],
};

export const foundryLoft: InstallationRecord = installation({
  name: "Foundry Loft",
  equipment: {
    ...unit("ducted 3 ton", "R-454B", 10_500, ["3/8", "3/4"], [21.6, 35, 17.5], [208, 230]),
    meteringDevice: "thermostatic-valve",
    factoryCharge: oz(128),
    lowestMarkedPressure: psig(480),
  },
  manual: {
    run: { minimumLength: ft(10), maximumLength: ft(80), maximumLift: ft(30) },
    preChargedLength: ft(15),
    chargeRate: ozPerFt(0.6),
    shortLineRule: "add-and-subtract",
    testPressure: psig(430),
    testHold: hour(24),
  },
  runs: [
    run({
      length: ft(40),
      lines: ["3/8", "3/4"],
      vessel: 3.2,
      joint: "brazed",
      room: { floorArea: m2(58), place: "ceiling" },
    }),
  ],
  test: [psig(450), degF(70), psig(446.2), degF(66), 74],
  added: oz(15),
  voltage: 208,
  circuits: [
    nec(35, "10 AWG", 90, 2, 30),
    {
      ...nec(45, "6 AWG", 60, 2, 60),
      name: "air handler",
      feeds: "other",
      plate: {
        minimumCircuitAmpacity: ampere(45),
        maximumOvercurrentProtection: ampere(45),
        ratedLoadCurrent: ampere(36),
      },
    },
  ],
  operation: cooling(degF(75), degF(90), psig(110)),
});

const branch = { preChargedLength: m(0), chargeRate: ozPerFt(0.22) };
export const fourLarks: InstallationRecord = installation({
  name: "Four Larks",
  equipment: {
    ...unit("branch box 48k", "R-410A", 14_000, ["3/8", "5/8"], [32.5, 50, 27.1], [208, 230]),
    factoryCharge: oz(211),
    lowestMarkedPressure: psig(601),
  },
  manual: {
    run: { minimumLength: ft(10), maximumLength: ft(180), maximumLift: ft(98) },
    maximumTotalLength: ft(476),
    preChargedLength: ft(16),
    preChargedFor: "each-run",
    chargeRate: ozPerFt(0.65),
    shortLineRule: "add-only",
    testPressure: psig(500),
    testHold: hour(24),
  },
  runs: [
    run({
      name: "main",
      length: ft(60),
      lines: ["3/8", "5/8"],
      vessel: 1.5,
      more: { serves: "branch-box" },
    }),
    ...(
      [
        ["A", 22, "3/8"],
        ["B", 30, "3/8"],
        ["C", 18, "3/8"],
        ["D", 41, "1/2"],
      ] as const
    ).map(([name, length, vapor]) =>
      run({
        name,
        length: ft(length),
        lines: ["1/4", vapor],
        vessel: 1,
        room: { volume: cuft(720), place: "wall" },
        more: { manual: branch },
      }),
    ),
  ],
  test: [psig(550), degF(84), psig(531.9), degF(68), 159],
  added: oz(53),
  voltage: 240,
  circuits: [nec(50, "8 AWG", 75, 2, 60)],
  operation: cooling(degF(75), degF(90), psig(121)),
});

/** The sound ones by name. */
export const sound: Readonly<Record<string, InstallationRecord>> = {
  "Heron Cabin": heronCabin,
  "Mesa Barn": mesaBarn,
  "Three Finches": threeFinches,
  "Birch Lake": birchLake,
  "Rue Courte": rueCourte,
  "Casa Quattro": casaQuattro,
  "Attic Lark": atticLark,
  "Red Gum": redGum,
  "Quick Wren": quickWren,
  "North Stove": northStove,
  "Foundry Loft": foundryLoft,
  "Four Larks": fourLarks,
};
