// What a plan expects of the running unit, line by line. Saturation pressures by the published equations of state are
// checked in twelve.test.ts; the figures here are those of plate and manual.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { ampere, deltaC, deltaK } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { planned } from "./installations.ts";
import * as own from "./own.ts";
import { partOf } from "./part.ts";

const named = (name: string) => planned[name] as InstallationRecord;
const heron = named("Heron Cabin");
const rue = named("Rue Courte");
const wren = named("Quick Wren");
const stove = named("North Stove");

type Changes = Readonly<Record<string, unknown>>;
/** The lines of a kind, without what has to wait. */
const lines = (kind: RegExp, record: InstallationRecord, changes: Changes = {}) =>
  partOf("operation", record, changes).set.filter((one) => kind.test(one));
const asked = (record: InstallationRecord, changes: Changes = {}) =>
  partOf("operation", record, changes).ask;

describe("the air of a plan", () => {
  const air = (mode: string, low: string, high: string, source: string) => [
    `operation[0]: expect-air, high ${high}, low ${low}, mode mode.${mode} [${source}]`,
  ];
  const least = { "operation[0].airSide.least": deltaK(9) };
  const largest = { "operation[0].airSide.largest": deltaK(20) };

  // Usual differences: 8 K to 14 K in cooling by manuals, 10 K to 30 K in heating by common practice.
  it.each<[what: string, record: InstallationRecord, changes: Changes, expected: string[]]>([
    ["usual in cooling", wren, {}, air("cooling", "8 K", "14 K", "manufacturer-manuals")],
    ["usual in heating", stove, {}, air("heating", "10 K", "30 K", "common-practice")],
    ["half stated in heating", stove, least, air("heating", "9 K", "30 K", "common-practice")],
    ["the other half", stove, largest, air("heating", "10 K", "20 K", "common-practice")],
    [
      "stated in heating",
      stove,
      { ...least, ...largest },
      air("heating", "9 K", "20 K", "manufacturer-manuals"),
    ],
    [
      "stated in cooling",
      wren,
      { ...least, ...largest },
      air("cooling", "9 K", "20 K", "manufacturer-manuals"),
    ],
    [
      "told where no gauge belongs, though no air is planned",
      wren,
      { "operation[0].airSide": undefined },
      air("cooling", "8 K", "14 K", "manufacturer-manuals"),
    ],
  ])("is %s", (_, record, changes, expected) => {
    expect(lines(/expect-(air|pressures)/, record, changes)).toEqual(expected);
  });

  it("waits for the mode alone", () => {
    for (const record of [wren, stove]) {
      const changes = { operation: undefined };
      expect(lines(/expect-(air|pressures)/, record, changes)).toEqual([]);
      expect(asked(record, changes)).toEqual([
        "operation[0].mode: ask, changes part.operation, field field.operation.mode",
      ]);
    }
  });
});

describe("the gauges of a plan", () => {
  const fields = [
    "indoorTemperature",
    "outdoorTemperature",
    "evaporatorApproach",
    "condenserApproach",
  ];

  it("wait for mode, temperatures and approaches", () => {
    expect(asked(heron, { operation: undefined })).toEqual(
      ["mode", ...fields].map(
        (one) => `operation[0].${one}: ask, changes part.operation, field field.operation.${one}`,
      ),
    );
  });

  // The nearer the coil is to its air, the smaller; never below zero.
  it.each<[field: string, value: unknown, said: string]>([
    ["evaporatorApproach", { low: deltaK(-5), high: deltaK(11) }, "-5 K"],
    ["condenserApproach", { low: deltaK(-5), high: deltaK(11) }, "-5 K"],
  ])("are not told where %s can not be used", (field, value, said) => {
    const changes = { [`operation[0].${field}`]: value };
    expect(lines(/expect-pressures/, heron, changes)).toEqual([]);
    expect(asked(heron, changes)).toEqual([
      `operation[0].${field}: unusable, field field.operation.${field}, value ${said}`,
    ]);
  });
});

describe("the current of a plan", () => {
  const plate = "equipment.";
  const none = {
    [`${plate}minimumCircuitAmpacity`]: undefined,
    [`${plate}ratedLoadCurrent`]: undefined,
  };
  const current = (rated: string, most: string) => [
    `expect-current, most ${most}, rated ${rated} [common-practice]`,
  ];
  const mixed = [{ rules: "nfpa-70-2023" }, { rules: "iec-60364" }];

  // A plate prints a rated load and an ampacity; a metric one may print one rated current for both.
  it.each<[what: string, record: InstallationRecord, changes: Changes, expected: string[]]>([
    ["rated load and ampacity", heron, {}, current("12.1 A", "15 A")],
    [
      "the ampacity for both, where no load is printed",
      heron,
      { [`${plate}ratedLoadCurrent`]: undefined },
      current("15 A", "15 A"),
    ],
    [
      "one rated current for both",
      rue,
      { ...none, [`${plate}ratedCurrent`]: ampere(5.6) },
      current("5.6 A", "5.6 A"),
    ],
    [
      "the rated current under the ampacity",
      rue,
      {
        ...none,
        [`${plate}ratedCurrent`]: ampere(5),
        [`${plate}minimumCircuitAmpacity`]: ampere(7),
      },
      current("5 A", "7 A"),
    ],
  ])("is %s", (_, record, changes, expected) => {
    expect(lines(/expect-current/, record, changes)).toEqual(expected);
  });

  it.each<[what: string, record: InstallationRecord, changes: Changes, fields: string[]]>([
    ["rated load and ampacity", heron, none, ["ratedLoadCurrent", "minimumCircuitAmpacity"]],
    [
      "both where no circuit is recorded",
      heron,
      { ...none, power: undefined },
      ["ratedLoadCurrent", "minimumCircuitAmpacity"],
    ],
    [
      "both where no rules are named",
      rue,
      { ...none, "power.circuits": [{}] },
      ["ratedLoadCurrent", "minimumCircuitAmpacity"],
    ],
    ["one rated current by metric rules", rue, none, ["ratedCurrent"]],
    [
      "one rated current where one of the circuits is by metric rules",
      rue,
      { ...none, "power.circuits": mixed },
      ["ratedCurrent"],
    ],
  ])("asks for %s", (_, record, changes, fields) => {
    expect(lines(/expect-current/, record, changes)).toEqual([]);
    const found = asked(record, changes).map((one) => one.split(":")[0] as string);
    expect(found.filter((one) => one.startsWith(plate)).sort()).toEqual(
      fields.map((one) => plate + one).sort(),
    );
  });

  it("of a heat pump on a long feed is that of its plate", () => {
    expect(lines(/expect-/, own.longFeed)).toEqual([
      "operation[0]: expect-air, high 45 Δ°F, low 20 Δ°F, mode mode.heating [manufacturer-manuals]",
      ...current("10 A", "12 A"),
    ]);
    expect(lines(/expect-air/, own.longFeed, { "operation[0].airSide.least": deltaC(11) })).toEqual(
      [
        "operation[0]: expect-air, high 45 Δ°F, low 11 Δ°C, mode mode.heating [manufacturer-manuals]",
      ],
    );
  });
});
