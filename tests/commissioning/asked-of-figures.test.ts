// Figures that a careful reader of the record would ask about: a slip each, with what stands just inside its bound.
// Bounds: common practice, no source, where nothing else is said.
import { explain } from "hvac-install-math/assessment";
import type { InstallationRecord, StepName } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import {
  cuft,
  degC,
  degF,
  ft,
  inch,
  kW,
  liter,
  m2,
  m3,
  psi,
  psig,
  type Quantity,
  sqft,
  watt,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { readInstallation } from "../../examples/worked-install/read-installation.ts";
import { root } from "../examples/run-copy.ts";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";
import { complete } from "./complete-record.ts";
import { threeHeads } from "./three-heads.ts";

/** The code that a step says of a part. */
const asked = (record: InstallationRecord, name: StepName, part: string) =>
  assessInstallation(record)
    .steps.filter((step) => step.name === name)
    .flatMap(({ checks }) => checks)
    .filter(({ path, assessment }) => path === part && assessment.outcome === "inconclusive")
    .map(({ assessment }) => assessment.reasons[0]?.code);

/** What is to be done about a part. */
const todo = (record: InstallationRecord, place: string) =>
  assessInstallation(record)
    .actions.filter(({ part }) => part === place)
    .map((one) => explain(one, english));

const records = { complete, threeHeads };

// R-32 in a wall unit: the rooms of the three heads by area.
const flammable: Change = {
  "equipment.refrigerant": "R-32",
  "runs[0].room": { floorArea: m2(16), place: "wall" },
};

// A hose holds 10 mL; a coil less than 100 m of its vapor line: π/4 · (9.525 mm)² · 100 m = 7.13 L.
describe.each([
  ["complete", "line-run", "runs[0].tubing.otherVolume", cuft(0.62), liter(7), "volume-odd"],
  ["complete", "line-run", "runs[0].tubing.otherVolume", liter(9), liter(0.9), "volume-odd"],
  // paced off before the tube was cut: at most a quarter too long; the line has 36 ft
  ["complete", "line-run", "runs[0].tubing.way", ft(63), ft(44), "length-odd"],
  ["threeHeads", "line-run", "runs[1].indoorUnits[0].capacity", watt(260), kW(1), "power-odd"],
  ["threeHeads", "line-run", "runs[1].indoorUnits[0].capacity", kW(260), kW(26), "power-odd"],
  ["threeHeads", "line-run", "runs[2].port", "A", "C", "entered-twice"],
] as const)("of %s, %s: %s", (base, step, path, slip, sound, code) => {
  it(`asks about ${slip}, and names the field`, () => {
    const record = changed({ [path]: slip }, records[base]);
    expect(asked(record, step, path)).toEqual([`commissioning.${code}`]);
    expect(todo(record, path)[0]).toMatch(/^Correct the value for /);
  });
  it(`takes ${sound}`, () => {
    expect(asked(changed({ [path]: sound }, records[base]), step, path)).toEqual([]);
  });
});

it("takes a port of one name on two branch boxes", () => {
  const record = changed({ "runs[2].port": "A", "runs[0].serves": "branch-box" }, threeHeads);
  expect(asked(record, "line-run", "runs[2].port")).toEqual([]);
});

it("gives a coil on a wider line more room", () => {
  const wide = { "runs[0].tubing.vapor.outsideDiameter": inch(0.625) };
  const path = "runs[0].tubing.otherVolume"; // 100 m of 5/8 in: 19.8 L
  expect(asked(changed({ ...wide, [path]: liter(9) }), "line-run", path)).toEqual([]);
  expect(asked(changed({ ...wide, [path]: liter(21) }), "line-run", path)).toHaveLength(1);
  const unknown = { "runs[0].tubing.vapor": undefined, [path]: liter(17.6) };
  expect(asked(changed(unknown), "line-run", path)).toEqual([]);
});

describe("the capacity of all indoor units", () => {
  const path = "equipment.manual.leastConnected";
  const limits = (least: number, most: number) =>
    changed({ [path]: kW(least), "equipment.manual.mostConnected": kW(most) }, threeHeads);

  it("has no least above its largest", () => {
    expect(asked(limits(10.4, 4), "line-run", path)).toEqual(["commissioning.value-too-high"]);
    expect(todo(limits(10.4, 4), path)[0]).toMatch(/^Correct the value for /);
    expect(asked(limits(4, 10.4), "line-run", path)).toEqual([]);
    expect(asked(limits(8, 8), "line-run", path)).toEqual([]);
  });
});

// A room with an indoor unit of its own has 4 m² to 60 m², and 5 m³ to 180 m³.
describe("a room", () => {
  const path = "runs[0].room.floorArea";
  it.each([sqft(16), m2(3.9), m2(61)])("of %s is asked for its volume", (area) => {
    const record = changed({ ...flammable, [path]: area });
    expect(asked(record, "room-limit", path)).toEqual(["commissioning.area-odd"]);
    expect(todo(record, path)).toEqual(["Record: room volume."]);
    const height = 2.4; // m
    const volume = m3(area.in(m2) * height);
    const second = changed({ ...flammable, [path]: area, "runs[0].room.volume": volume });
    expect(asked(second, "room-limit", path)).toEqual([]);
  });
  it.each([m2(4), m2(16), m2(60)])("of %s is taken", (area) => {
    expect(asked(changed({ ...flammable, [path]: area }), "room-limit", path)).toEqual([]);
  });
  it.each([
    [m3(4.9), 1],
    [m3(5), 0],
    [m3(181), 1],
  ])("of %s is asked for its area by the concentration limit", (volume, times) => {
    const record = changed({ "runs[0].room": { volume } });
    expect(asked(record, "room-limit", "runs[0].room.volume")).toHaveLength(times);
  });
});

// A part colder than the air only makes the watch stricter: ice is looked for at its temperature.
describe("the coldest part of an evacuated system", () => {
  const path = "evacuations[0].coldest";
  const cold = (coldest: Quantity<"temperature">) => changed({ [path]: coldest });

  it.each([degF(52), degF(5), degC(-15), degC(-49)])(
    "may be at %s outdoors while the rooms are heated", // the weather of inhabited places: common practice, no source
    (coldest) => expect(asked(cold(coldest), "evacuation", path)).toEqual([]),
  );
  it("is asked about where no place is as cold", () => {
    expect(asked(cold(degC(-51)), "evacuation", path)).toEqual(["commissioning.temperature-odd"]);
    expect(todo(cold(degC(-51)), path)).toEqual([
      "Correct the value for temperature of the coldest part.",
    ]);
  });
  it("lies between the coldest of sites and the air", () => {
    const { reasons } = assessInstallation(cold(degC(-51)));
    const odd = reasons.find(({ part, code }) => part === path && code.endsWith("-odd"));
    expect(odd?.values).toMatchObject({ low: degC(-50), high: degF(62) });
  });
  it("warmer than the air is refused, and not asked about besides", () => {
    const { steps } = assessInstallation(cold(degF(70)));
    expect(steps.flatMap(({ problems }) => problems.map((one) => one.path))).toContain(path);
    expect(asked(cold(degF(70)), "evacuation", path)).toEqual([]);
  });
});

// Water is poured once the unit hangs on its lines, and the supply read at the unit once its circuit is there; a day is left.
describe("dates that cannot follow each other", () => {
  const dated = (changes: Change) =>
    changed({
      "runs[0].tubing.at": "2026-04-20T16:00",
      "runs[0].joints[0].at": "2026-04-20T16:40",
      "runs[0].joints[1].at": "2026-04-20T16:45",
      "runs[0].joints[2].at": "2026-04-20T17:10",
      "runs[0].joints[3].at": "2026-04-20T17:15",
      "pressureTests[0].at": "2026-04-21T08:30",
      "evacuations[0].at": "2026-04-21T10:50",
      "power.circuits[0].at": "2026-04-21T11:45",
      ...changes,
    });
  const old = ["commissioning.older-than-work"];

  it.each([
    ["drain", "runs[0].drain.at", "2026-04-12T13:00", "runs[0].tubing.at", old],
    ["drain", "runs[0].drain.at", "2026-04-20T10:00", "runs[0].tubing.at", []],
    ["drain", "runs[0].drain.at", "2026-04-21T13:00", "runs[0].tubing.at", []],
    ["supply", "power.supply.at", "2026-04-12T12:05", "power.circuits[0].at", old],
    ["supply", "power.supply.at", "2026-04-21T11:00", "power.circuits[0].at", []],
    ["line-run", "runs[0].tubing.at", "2026-04-21T16:00", "runs[0].tubing.at", old],
    ["line-run", "runs[0].tubing.at", "2026-04-20", "runs[0].tubing.at", []],
  ] as const)("of %s, %s: %s", (step, path, at, part, codes) => {
    expect(asked(dated({ [path]: at }), step, part)).toEqual(codes);
  });

  it("are asked about at the unit only: the service has power before", () => {
    const record = dated({ "power.supply.at": "2026-04-12", "power.supply.measuredAt": "service" });
    expect(asked(record, "supply", "power.circuits[0].at")).toEqual([]);
    const fed = { "power.supply.at": "2026-04-12", "power.circuits[0].plate": {} };
    expect(asked(dated(fed), "supply", "power.circuits[0].at")).toEqual([]);
  });
});

// 250.122(A) never asks for more than the circuit conductors; three times their area: two trade sizes, for what was at hand.
describe("a grounding conductor", () => {
  const path = "power.circuits[0].installed.equipmentGrounding";
  const conductor = complete.power?.circuits?.[0]?.installed?.conductor;
  it("is not far thicker than the circuit conductors", () => {
    expect(conductor).toBe("12 AWG");
    const record = changed({ [path]: "2 AWG" });
    expect(asked(record, "circuit", path)).toEqual(["commissioning.grounding-thick"]);
    expect(todo(record, path)).toEqual(["Correct the value for equipment grounding conductor."]);
    for (const size of ["12 AWG", "10 AWG", "8 AWG"]) {
      expect(asked(changed({ [path]: size }), "circuit", path)).toEqual([]);
    }
  });
});

// An error above a tenth of the reading, and above 5 psi.
it.each([
  [118, 15, 1],
  [118, 11, 0],
  [30, 5, 0],
])("asks about a gauge at %d psig that errs by %d psi", (pressure, error, times) => {
  const path = "instruments.serviceGauge.accuracy";
  const record = changed({ "operation[0].pressure": psig(pressure), [path]: psi(error) });
  expect(asked(record, "operation", path)).toHaveLength(times);
  if (times)
    expect(todo(record, path)).toEqual(["Correct the value for accuracy of the service gauge."]);
});

describe("a finding of the record itself", () => {
  const found = (changes: Change) =>
    assessInstallation(changed(changes))
      .cautions.map((one) => explain(one, english))
      .filter((one) => /entered twice|part on the photo/.test(one));

  it("is that two units have one serial number", () => {
    const number = { "equipment.outdoorUnit.serialNumber": "INV-002" };
    const indoor = "runs[0].indoorUnits[0].serialNumber";
    expect(found({ ...number, [indoor]: "INV-002" })).toEqual([
      "The indoor unit serial number is entered twice: INV-002. Is one of them wrong?",
    ]);
    expect(found({ ...number, [indoor]: "INV-003" })).toEqual([]);
    expect(found({ "equipment.outdoorUnit.serialNumber": "-", [indoor]: "-" })).toEqual([]);
  });

  it("is that a photo shows a part that is not recorded", () => {
    const photo = (of?: string) => ({ photos: [{ reference: "a.jpg", of }] });
    for (const of of [
      "runs[3]",
      "runs[12].joints[0]",
      "runs[0].joints[4]",
      "runs[1].joints[12].at",
    ]) {
      expect(found(photo(of))).toEqual([`The value for part on the photo cannot be used: ${of}.`]);
    }
    const recorded = ["runs[0].joints[3]", "equipment.manual"];
    const toCome = ["valves", "waivers[0]"];
    const words = [undefined, "plate [2", "runs[1234567]", `runs[1]${".room".repeat(50)}`];
    for (const of of [...recorded, ...toCome, ...words]) expect(found(photo(of))).toEqual([]);
  });
});

// A tight, dry night: 7 °F colder, 492.3 psig (PV = ZnRT); a last row copied from the first one is no leak, and no proof.
it("takes no test whose last pressure was copied from the first although the gas cooled", () => {
  const { record } = readInstallation(`${root}/examples/worked-install`);
  const [test] = record.pressureTests ?? [];
  const [first] = test?.readings ?? [];
  const path = `pressureTests[0].readings[${(test?.readings?.length ?? 0) - 1}].pressure`;
  expect(assessInstallation(record).outcome).toBe("pass");
  expect(assessInstallation(changed({ [path]: first?.pressure }, record)).outcome).toBe(
    "inconclusive",
  );
});
