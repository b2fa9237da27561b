// The charge of a plan, line by line. Figures are rate times length, by the arithmetic said beside each.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { ft, g, gPerM, kg, m, oz, ozPerFt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { planned } from "./installations.ts";
import * as own from "./own.ts";
import { type Part, partOf } from "./part.ts";

const named = (name: string) => planned[name] as InstallationRecord;
const heron = named("Heron Cabin");
const mesa = named("Mesa Barn");
const finches = named("Three Finches");
const birch = named("Birch Lake");

const nothing: Part = { bring: [], set: [], check: [], ask: [] };
/** The manual's rule; the class of the refrigerant is that of ASHRAE 34, 6.1. */
const rule = "[manufacturer-manuals + ashrae-34-2022 6.1]";
const practice = "[common-practice]";
const brought = (refrigerant: string, mass: string, reserve: string) =>
  `refrigerant, mass ${mass}, refrigerant ${refrigerant}, reserve ${reserve} ${practice}`;
const flammable = `flammable-cylinder ${practice}`;
const asLiquid = `blend-as-liquid ${practice}`;
const ports =
  "equipment.portPairs: ask, changes part.joints + part.charge, field field.equipment.portPairs";

type Row = readonly [
  what: string,
  record: InstallationRecord,
  changes: Readonly<Record<string, unknown>>,
  expected: Partial<Part>,
];

describe("the charge of a plan", () => {
  it.each<Row>([
    [
      "adds nothing to a run within the factory's length, and brings none",
      heron,
      {},
      {
        set: [
          `runs[0]: nothing-to-add, length 15 ft, preCharged 25 ft ${rule}`,
          `label, mass 21.2 oz ${rule}`,
        ],
      },
    ],
    [
      // (15 − 25) ft · 0.13 oz/ft = −1.3 oz, of 21.2 oz
      "takes out of a short run, and brings neither refrigerant nor a cylinder",
      heron,
      { "equipment.manual.shortLineRule": "add-and-subtract" },
      {
        set: [
          `runs[0]: take-out, charge 1.3 oz, difference 10 ft, length 15 ft, preCharged 25 ft, rate 0.13 oz/ft ${rule}`,
          `taken-out, mass 1.3 oz ${rule}`,
          `label, mass 19.9 oz ${rule}`,
        ],
      },
    ],
    [
      // (61 − 25) ft · 0.16 oz/ft = 5.76 oz, with the 44 oz 49.76 oz; a tenth in reserve
      "brings a blend that burns with its cylinder, and charges it as a liquid",
      mesa,
      {},
      {
        bring: [brought("R-454B", "5.76 oz", "0.58 oz"), flammable],
        set: [
          `runs[0]: add, charge 5.76 oz, difference 36 ft, length 61 ft, preCharged 25 ft, rate 0.16 oz/ft ${rule}`,
          `added, mass 5.76 oz ${rule}`,
          `label, mass 49.76 oz ${rule}`,
          asLiquid,
        ],
      },
    ],
    [
      // (61 − 70) ft · 0.16 oz/ft = −1.44 oz, of 44 oz
      "takes a blend that burns out of a short run, and brings and feeds none",
      mesa,
      {
        "equipment.manual.shortLineRule": "add-and-subtract",
        "equipment.manual.preChargedLength": ft(70),
      },
      {
        set: [
          `runs[0]: take-out, charge 1.44 oz, difference 9 ft, length 61 ft, preCharged 70 ft, rate 0.16 oz/ft ${rule}`,
          `taken-out, mass 1.44 oz ${rule}`,
          `label, mass 42.56 oz ${rule}`,
        ],
      },
    ],
    [
      // 16, −7 and 8 ft of 0.22 oz/ft, less 1.61 oz for a spare port: 3.52 − 1.54 + 1.76 − 1.61 = 2.13 oz
      "names each run where each has its own length, and the port that stays unused",
      finches,
      {},
      {
        bring: [brought("R-410A", "2.13 oz", "0.21 oz")],
        set: [
          `runs[0]: add, charge 3.52 oz, difference 16 ft, length 41 ft, preCharged 25 ft, rate 0.22 oz/ft ${rule}`,
          `runs[1]: take-out, charge 1.54 oz, difference 7 ft, length 18 ft, preCharged 25 ft, rate 0.22 oz/ft ${rule}`,
          `runs[2]: add, charge 1.76 oz, difference 8 ft, length 33 ft, preCharged 25 ft, rate 0.22 oz/ft ${rule}`,
          `allowances, mass -1.61 oz ${rule}`,
          `added, mass 2.13 oz ${rule}`,
          `label, mass 115.1 oz ${rule}`,
          asLiquid,
        ],
      },
    ],
    [
      // (12 + 9 − 15) m · 12 g/m = 72 g, with the 1250 g 1322 g; R-32 is no blend
      "names no run where one length covers their sum, and asks for the ports",
      birch,
      {},
      {
        bring: [brought("R-32", "72 g", "7.2 g"), flammable],
        set: [
          `add, charge 72 g, difference 6 m, length 21 m, preCharged 15 m, rate 12 g/m ${rule}`,
          `added, mass 72 g ${rule}`,
          `label, mass 1322 g ${rule}`,
        ],
        ask: [ports],
      },
    ],
    [
      // 1.25 kg as the plate prints it: 0.072 kg and 1.322 kg
      "tells masses in the unit of the factory charge",
      birch,
      { "equipment.factoryCharge": kg(1.25), "equipment.portPairs": 2 },
      {
        bring: [brought("R-32", "0.072 kg", "0.0072 kg"), flammable],
        set: [
          `add, charge 72 g, difference 6 m, length 21 m, preCharged 15 m, rate 12 g/m ${rule}`,
          `added, mass 0.072 kg ${rule}`,
          `label, mass 1.322 kg ${rule}`,
        ],
      },
    ],
    [
      // 2 · (16 − 25) ft · 0.22 oz/ft − 1.61 oz = −3.96 oz − 1.61 oz = −5.57 oz, which counts as nothing
      "says first that a sum below zero is nothing, and names the run of each line",
      own.shortLines,
      {},
      {
        set: [
          `nothing-to-add-in-all, total -5.57 oz ${rule}`,
          ...[0, 1].map(
            (i) =>
              `runs[${i}]: take-out, charge 1.98 oz, difference 9 ft, length 16 ft, preCharged 25 ft, rate 0.22 oz/ft ${rule}`,
          ),
          `allowances, mass -1.61 oz ${rule}`,
          `nothing-added ${rule}`,
          `label, mass 80 oz ${rule}`,
        ],
      },
    ],
    [
      // 40 ft · 0.6 oz/ft − 9 oz = 15 oz; R-410A does not burn
      "counts the whole line less what the factory put in, without a cylinder for what burns",
      own.wholeLine,
      {},
      {
        bring: [brought("R-410A", "15 oz", "1.5 oz")],
        set: [
          `runs[0]: add, charge 24 oz, difference 40 ft, length 40 ft, preCharged 0 ft, rate 0.6 oz/ft ${rule}`,
          `allowances, mass -9 oz ${rule}`,
          `added, mass 15 oz ${rule}`,
          `label, mass 135 oz ${rule}`,
          asLiquid,
        ],
      },
    ],
    [
      "checks what a manual leaves open of short lines, and adds nothing",
      heron,
      { "equipment.manual.shortLineRule": "not-stated" },
      {
        set: [`label, mass 21.2 oz ${rule}`],
        check: [
          `inconclusive: short-line-rule-not-known, difference 10 ft, length 15 ft, preCharged 25 ft ${rule}`,
        ],
      },
    ],
    [
      // 49.76 oz of at most 48 oz
      "fails a total above the most that the unit holds, with the line that makes it",
      mesa,
      { "equipment.maximumCharge": oz(48) },
      {
        bring: [brought("R-454B", "5.76 oz", "0.58 oz"), flammable],
        set: [
          `add, charge 5.76 oz, difference 36 ft, length 61 ft, preCharged 25 ft, rate 0.16 oz/ft ${rule}`,
          `added, mass 5.76 oz ${rule}`,
          `label, mass 49.76 oz ${rule}`,
          asLiquid,
        ],
        check: [
          `fail: above-maximum, figure figure.total-charge, limit 48 oz, value 49.76 oz ${rule}`,
        ],
      },
    ],
    ["is the factory's where couplings are not opened", named("Quick Wren"), {}, {}],
    ["is the factory's in a monobloc", named("North Stove"), {}, {}],
  ])("%s", (_, record, changes, expected) => {
    expect(partOf("charge", record, changes)).toEqual({ ...nothing, ...expected });
  });
});

describe("what the charge asks", () => {
  const ask = (path: string, changes = "part.charge") =>
    `${path}: ask, changes ${changes}, field field.${path}`;

  it("is each figure of the rule that is missing, and nothing is charged without it", () => {
    const manual = "equipment.manual";
    expect(
      partOf("charge", finches, { [manual]: undefined, "equipment.portPairs": undefined }),
    ).toEqual({
      ...nothing,
      ask: [
        ports,
        ask(`${manual}.preChargedLength`),
        ask(`${manual}.chargeRate`),
        ask(`${manual}.shortLineRule`),
        ask(`${manual}.preChargedFor`),
      ],
    });
    expect(partOf("charge", mesa, { "equipment.refrigerant": undefined })).toEqual({
      ...nothing,
      ask: [
        ask(
          "equipment.refrigerant",
          "part.joints + part.pressure-test + part.charge + part.room + part.operation",
        ),
      ],
    });
  });

  // Each figure is impossible, or was typed in another unit.
  it.each<[path: string, value: unknown, record: InstallationRecord, said: string]>([
    ["equipment.factoryCharge", oz(-21.2), heron, "-21.2 oz"],
    ["equipment.maximumCharge", oz(-21.2), heron, "-21.2 oz"],
    ["equipment.portPairs", 2, finches, "2"], // three runs take three pairs
    ["equipment.manual.chargeAllowance", kg(101), heron, "101 kg"],
    ["equipment.manual.preChargedLength", m(-1), birch, "-1 m"],
    ["equipment.manual.preChargedLength", ft(-1), finches, "-1 ft"],
    ["equipment.manual.preChargedLength", ft(-1), heron, "-1 ft"],
    ["equipment.manual.chargeRate", ozPerFt(-0.13), heron, "-0.13 oz/ft"],
    ["equipment.manual.chargeRate", gPerM(-12), birch, "-12 g/m"],
  ])("is %s where it is %s", (path, value, record, said) => {
    const { bring, set, check, ask } = partOf("charge", record, { [path]: value });
    expect([bring, set, check]).toEqual([[], [], []]);
    expect(ask.filter((one) => /unusable/.test(one))).toEqual([
      `${path}: unusable, field field.${path}, value ${said}`,
    ]);
    expect(ask.filter((one) => !/unusable|portPairs: ask/.test(one))).toEqual([]);
  });

  // What is of a run is asked for there: a figure of its own, or the way, which is at most 1000 m.
  const larks = named("Four Larks");
  it.each<[path: string, value: unknown, record: InstallationRecord, said: string]>([
    ["runs[2].manual.preChargedLength", ft(-1), larks, "-1 ft"],
    ["runs[2].manual.chargeRate", ozPerFt(-0.22), larks, "-0.22 oz/ft"],
    ["runs[1].manual.chargeAllowance", kg(101), larks, "101 kg"],
    ["runs[0].manual.chargeRate", ozPerFt(-0.6), own.wholeLine, "-0.6 oz/ft"],
    ["runs[0].manual.preChargedLength", ft(-1), heron, "-1 ft"],
  ])("is %s of one run where it is %s", (path, value, record, said) => {
    const { bring, set, ask } = partOf("charge", record, {
      "equipment.portPairs": 1,
      [path]: value,
    });
    expect([bring, set]).toEqual([[], []]);
    expect(ask.filter((one) => /unusable/.test(one))).toEqual([
      `${path}: unusable, field field.${path.replace(/\[\d\]/, "")}, value ${said}`,
    ]);
  });

  it.each([
    ["runs[0].tubing.way", own.wholeLine],
    ["runs[1].tubing.way", own.shortLines],
  ])("is %s where a length is more than the rule takes", (path, record) => {
    const length = path.replace("way", "length");
    const unusable = partOf("charge", record, { [length]: m(1001) }).ask;
    expect(unusable).toEqual([`${path}: unusable, field field.runs.tubing.way, value 1001 m`]);
  });

  // 1250.04 g + 72 g = 1322.04 g
  it("rounds to four digits", () => {
    const { set } = partOf("charge", birch, {
      "equipment.portPairs": 2,
      "equipment.factoryCharge": g(1250.04),
    });
    expect(set.at(-1)).toBe(`label, mass 1322 g ${rule}`);
  });
});
