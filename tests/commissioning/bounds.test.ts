// Where a figure begins to be odd: at its bound it is taken, a little beyond it is asked about. The bounds are common
// practice, no source; the figures are chosen so that plain arithmetic puts them exactly on it.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import {
  ampere,
  degC,
  deltaC,
  ft,
  hour,
  inch,
  kg,
  kPa,
  kPaa,
  kPag,
  kW,
  MPag,
  m,
  m2,
  m3,
  oz,
  psi,
  psig,
  volt,
  watt,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";
import { complete } from "./complete-record.ts";

/** Everything that is said of a record: by its checks and of itself. */
const saidOf = (record: InstallationRecord): readonly string[] => {
  const { steps, cautions } = assessInstallation(record);
  const reasons = steps.flatMap(({ checks }) =>
    checks.flatMap(({ assessment, path }) =>
      assessment.reasons.map(({ code }) => `${code.replace("commissioning.", "")} ${path}`),
    ),
  );
  return [...reasons, ...cautions.map(({ code }) => code.replace("commissioning.", ""))];
};

const room = "runs[0].room";
const flammable: Change = { "equipment.refrigerant": "R-32" };
const sized = (area: number, volume: number): Change => ({
  [room]: { floorArea: m2(area), volume: m3(volume), place: "wall" },
});
const reading = (pressure: number, celsius = 20) => ({
  pressure: kPag(pressure),
  temperature: degC(celsius),
  elapsed: hour(0),
});
const test = (drop: number): Change => ({
  "pressureTests[0].readings": [reading(4000), { ...reading(4000), elapsed: hour(24) }],
  "pressureTests[0].criterion": { maximumDrop: kPa(drop) },
});
const plate = (capacity: number, phases = 1): Change => ({
  "equipment.capacity": watt(capacity),
  "equipment.ratedLoadCurrent": ampere(10),
  "power.voltage": volt(100),
  "power.phases": phases,
});
const charges = (factory: number, more: Change): Change => ({
  "equipment.factoryCharge": kg(factory),
  "equipment.maximumCharge": undefined,
  ...more,
});
const weather = (mode: string, celsius: number): Change => ({
  "operation[0].mode": mode,
  "operation[0].outdoorTemperature": degC(celsius),
});
const small = (protection: number): Change => ({
  "equipment.minimumCircuitAmpacity": ampere(1),
  "equipment.ratedLoadCurrent": undefined,
  "equipment.maximumOvercurrentProtection": ampere(protection),
});
const same: Change = { "equipment.ratedLoadCurrent": ampere(12.4) };
const cable = (length: number): Change => ({ "power.circuits[0].wiring.length": m(length) });
const level = (length: number): Change => ({ "runs[0].drain.slope.levelLength": m(length) });
const indoors = (celsius: number): Change => ({ "operation[0].indoorTemperature": degC(celsius) });
const promised = (minimum: number, maximum: number): Change => ({
  "power.supply.range": { minimum: volt(minimum), maximum: volt(maximum) },
});
const gauge = (accuracy: number, resolution: number): Change => ({
  "instruments.serviceGauge": { accuracy: psi(accuracy), resolution: psi(resolution) },
});

it.each<[said: string, at: Change, beyond: Change]>([
  // A ceiling of 2 m to 4.5 m by area and volume; one of 1.5 m to 12 m as it is stated.
  [`room-height-odd ${room}.volume`, sized(20, 40), sized(20, 39)],
  [`room-height-odd ${room}.volume`, sized(20, 90), sized(20, 91)],
  [
    `room-height-odd ${room}.floorArea`,
    { ...flammable, ...sized(20, 90) },
    { ...flammable, ...sized(20, 91) },
  ],
  [
    `ceiling-odd ${room}.ceilingHeight`,
    { [`${room}.ceilingHeight`]: m(1.5) },
    { [`${room}.ceilingHeight`]: m(1.4) },
  ],
  [
    `ceiling-odd ${room}.ceilingHeight`,
    { [`${room}.ceilingHeight`]: m(12) },
    { [`${room}.ceilingHeight`]: m(12.1) },
  ],
  [
    `unit-high ${room}.installationHeight`,
    { [`${room}.installationHeight`]: m(4) },
    { [`${room}.installationHeight`]: m(4.1) },
  ],
  // An allowed drop of a twentieth of the pressure: 4000 kPa / 20 = 200 kPa.
  ["allowed-drop-large pressureTests[0].criterion.maximumDrop", test(200), test(201)],
  // Capacity per 100 V · 10 A: 0.8 to 9.
  ["capacity-odd equipment.capacity", plate(800), plate(790)],
  ["capacity-odd equipment.capacity", plate(9000), plate(9100)],
  // Three phases: √3 · 100 V · 10 A = 1732 W.
  ["capacity-odd equipment.capacity", plate(9100, 3), plate(15_600, 3)],
  // 0.13 kg to 0.6 kg per kW of R-410A; 0.04 kg of R-290, a hydrocarbon.
  [
    "factory-charge-odd equipment.factoryCharge",
    charges(1.3, { "equipment.capacity": kW(10) }),
    charges(1.29, { "equipment.capacity": kW(10) }),
  ],
  [
    "factory-charge-odd equipment.factoryCharge",
    charges(6, { "equipment.capacity": kW(10) }),
    charges(6.1, { "equipment.capacity": kW(10) }),
  ],
  [
    "factory-charge-odd equipment.factoryCharge",
    charges(0.4, { "equipment.capacity": kW(10), "equipment.refrigerant": "R-290" }),
    charges(0.39, { "equipment.capacity": kW(10), "equipment.refrigerant": "R-290" }),
  ],
  // Of one that nobody knows, the least that any has.
  [
    "factory-charge-odd equipment.factoryCharge",
    charges(0.4, { "equipment.capacity": kW(10), "equipment.refrigerant": "R-999" }),
    charges(0.39, { "equipment.capacity": kW(10), "equipment.refrigerant": "R-999" }),
  ],
  // More than six tenths of the factory charge added.
  [
    "added-large charge.added",
    charges(1, { "charge.added": kg(0.6) }),
    charges(1, { "charge.added": kg(0.61) }),
  ],
  // Four times the factory charge, at most.
  [
    "mass-odd equipment.maximumCharge",
    charges(1, { "equipment.maximumCharge": kg(4) }),
    charges(1, { "equipment.maximumCharge": kg(4.1) }),
  ],
  // Nothing below 1 MPa or above 10 MPa is marked.
  [
    "pressure-odd equipment.lowestMarkedPressure",
    { "equipment.lowestMarkedPressure": MPag(10) },
    { "equipment.lowestMarkedPressure": MPag(10.1) },
  ],
  [
    "pressure-odd equipment.lowestMarkedPressure",
    { "equipment.lowestMarkedPressure": MPag(1) },
    { "equipment.lowestMarkedPressure": MPag(0.99) },
  ],
  [
    "pressure-odd equipment.lowestMarkedPressure",
    { "equipment.lowestMarkedPressure": MPag(12), "equipment.refrigerant": "R-744" },
    { "equipment.lowestMarkedPressure": MPag(12) },
  ],
  // No unit draws more than its conductors are laid out for, and none is protected for far more: 225/125 of 12.4 A and
  // 10 A (440.22(A), 440.32), or the smallest device, 15 A (240.6(A)).
  [
    "rated-above-ampacity equipment.ratedLoadCurrent",
    { "equipment.ratedLoadCurrent": ampere(12.4) },
    { "equipment.ratedLoadCurrent": ampere(12.5) },
  ],
  [
    "protection-far-above-ampacity equipment.maximumOvercurrentProtection",
    { "equipment.maximumOvercurrentProtection": ampere(32.32) },
    { "equipment.maximumOvercurrentProtection": ampere(33) },
  ],
  ["protection-far-above-ampacity equipment.maximumOvercurrentProtection", small(15), small(16)],
  // An ampacity has a quarter on top of the rated load where sizes are by wire gauge (440.33).
  [
    "rated-as-ampacity equipment.minimumCircuitAmpacity",
    { ...same, "power.circuits[0].rules": "iec-60364" },
    { ...same, "power.circuits[0].rules": "csa-c22.1-2024" },
  ],
  // A line is as long as its rise, at least, and its vapor side as wide as its liquid side.
  [
    "lift-above-length runs[0].tubing.lift",
    { "runs[0].tubing.lift": ft(36) },
    { "runs[0].tubing.lift": ft(37) },
  ],
  [
    "lines-swapped runs[0].tubing.liquid.outsideDiameter",
    { "runs[0].tubing.liquid.outsideDiameter": inch(0.375) },
    { "runs[0].tubing.liquid.outsideDiameter": inch(0.5) },
  ],
  [
    "pre-charged-above-longest equipment.manual.preChargedLength",
    { "equipment.manual.preChargedLength": ft(66) },
    { "equipment.manual.preChargedLength": ft(67) },
  ],
  [
    "pre-charged-above-longest equipment.manual.preChargedLength",
    { "equipment.manual.preChargedLength": ft(67), "equipment.manual.preChargedFor": "sum" },
    { "equipment.manual.preChargedLength": ft(67), "equipment.manual.preChargedFor": "each-run" },
  ],
  [
    "pre-charged-above-longest runs[0].manual.preChargedLength",
    { "runs[0].manual": { preChargedLength: ft(66) } },
    { "runs[0].manual": { preChargedLength: ft(67) } },
  ],
  [
    "length-odd equipment.manual.run.maximumLength",
    { "equipment.manual.run.maximumLength": m(165) },
    { "equipment.manual.run.maximumLength": m(166) },
  ],
  [
    "length-odd equipment.manual.run.maximumLength",
    { "equipment.manual.run.maximumLength": m(3) },
    { "equipment.manual.run.maximumLength": m(2.9) },
  ],
  [
    "length-odd equipment.manual.run.maximumLift",
    { "equipment.manual.run.maximumLift": ft(66) },
    { "equipment.manual.run.maximumLift": ft(67) },
  ],
  [
    "length-odd runs[0].manual.run.maximumLift",
    { "runs[0].manual": { run: { maximumLift: ft(66) } } },
    { "runs[0].manual": { run: { maximumLift: ft(67) } } },
  ],
  // A circuit of 0.3 m to 300 m, a level of 0.1 m to 5 m.
  ["length-odd power.circuits[0].wiring.length", cable(300), cable(301)],
  ["length-odd power.circuits[0].wiring.length", cable(0.3), cable(0.2)],
  ["length-odd runs[0].drain.slope.levelLength", level(5), level(5.1)],
  ["length-odd runs[0].drain.slope.levelLength", level(0.1), level(0.09)],
  // The air of rooms and of inhabited places.
  ["temperature-odd operation[0].indoorTemperature", indoors(50), indoors(51)],
  ["temperature-odd operation[0].indoorTemperature", indoors(-10), indoors(-11)],
  [
    "temperature-odd operation[0].outdoorTemperature",
    weather("cooling", 60),
    weather("cooling", 61),
  ],
  [
    "temperature-odd operation[0].outdoorTemperature",
    weather("heating", -50),
    weather("heating", -51),
  ],
  // A utility promises 240 V less or more 15 %, at most: 204 V to 276 V, around 240 V.
  ["voltage-odd power.supply.range.minimum", promised(204, 250), promised(203, 250)],
  ["voltage-odd power.supply.range.minimum", promised(240, 250), promised(241, 250)],
  ["voltage-odd power.supply.range.maximum", promised(230, 276), promised(230, 277)],
  ["voltage-odd power.supply.range.maximum", promised(230, 240), promised(230, 239)],
  // 39.5 oz in the unit and 1.76 oz to add: 41.3 oz is the whole charge, not the addition.
  [
    "total-as-added charge.added",
    { "charge.added": oz(40.7), "charge.tolerance": oz(0.5) },
    { "charge.added": oz(41), "charge.tolerance": oz(0.5) },
  ],
  // Nothing is no whole charge, however wide its tolerance.
  [
    "total-as-added charge.added",
    { "charge.added": oz(0), "charge.tolerance": oz(50) },
    { "charge.added": oz(41), "charge.tolerance": oz(50) },
  ],
  ["altitude-odd site.altitude", { "site.altitude": m(4500) }, { "site.altitude": m(4501) }],
  // Cooling in frost, heating above 35 °C, a cable below 2 m.
  ["weather-unusual", weather("cooling", 0), weather("cooling", -0.1)],
  ["weather-unusual", weather("heating", 35), weather("heating", 35.1)],
  ["weather-unusual", weather("cooling", 45), weather("heating", 45)],
  ["weather-unusual", weather("heating", -15), weather("cooling", -15)],
  [
    "cable-short",
    { "power.circuits[0].wiring.length": m(2) },
    { "power.circuits[0].wiring.length": m(1.9) },
  ],
  // An accuracy of a hundred steps of the display.
  ["instrument-coarse", gauge(100, 1), gauge(101, 1)],
])("%s", (said, at, beyond) => {
  expect(saidOf(changed(at))).not.toContain(said);
  expect(saidOf(changed(beyond))).toContain(said);
});

describe("what is not stated", () => {
  it.each<[string, Change]>([
    ["room-height-odd", { [room]: { floorArea: m2(20) } }],
    ["room-height-odd", { [room]: { volume: m3(60) } }],
    ["ceiling-odd", { [room]: { volume: m3(60) } }],
    ["allowed-drop-large", { ...test(1000), "pressureTests[0].criterion": undefined }],
    ["capacity-odd", { ...plate(1), "equipment.ratedLoadCurrent": undefined }],
    [
      "capacity-odd",
      { ...plate(1), "power.voltage": undefined, "equipment.ratedVoltages": undefined },
    ],
    ["weather-unusual", { ...weather("cooling", -20), "operation[0].mode": undefined }],
  ])("makes nothing odd: %s", (code, changes) => {
    expect(saidOf(changed(changes)).some((one) => one.startsWith(code))).toBe(false);
  });

  it("is taken from the plate where the supply has no voltage yet", () => {
    const of = (watts: number) =>
      saidOf(
        changed({
          ...plate(watts),
          "power.voltage": undefined,
          "equipment.ratedVoltages": [volt(100), volt(1)],
        }),
      );
    expect(of(9000)).not.toContain("capacity-odd equipment.capacity");
    expect(of(9100)).toContain("capacity-odd equipment.capacity");
  });
});

it("asks of factory and largest charge about one only where they contradict each other", () => {
  const said = saidOf(changed(charges(4, { "equipment.maximumCharge": kg(3) })));
  expect(said).toContain("factory-charge-is-maximum equipment.factoryCharge");
  expect(said).not.toContain("mass-odd equipment.maximumCharge");
});

// From the coldest part of the system to its air, and 20 K beyond, a test may be as warm or as cold as it likes.
describe("a test beside its evacuation", () => {
  const place = "temperatures-apart pressureTests[0].readings[0].temperature";
  const apart = (celsius: number, ambient: number, more: Change = {}) =>
    saidOf(
      changed({
        "pressureTests[0].readings[0].temperature": degC(celsius),
        "pressureTests[0].readings[1].temperature": degC(celsius),
        "evacuations[0].ambient": degC(ambient),
        ...more,
      }),
    ).includes(place);

  it.each([
    [39, 20, false],
    [41, 20, true],
    [1, 20, false],
    [-1, 20, true],
  ])("of %d °C is far from %d °C: %s", (celsius, ambient, is) => {
    expect(apart(celsius, ambient)).toBe(is);
  });

  it("may be as cold as a part of the system was", () => {
    const coldest = { "evacuations[0].coldest": degC(0) };
    expect(apart(-1, 20, coldest)).toBe(false);
    expect(apart(-19, 20, coldest)).toBe(false);
    expect(apart(-21, 20, coldest)).toBe(true);
  });

  it("is held against the evacuation of its own runs", () => {
    const named = {
      "runs[0].name": "A",
      "runs[1]": { ...complete.runs?.[0], name: "B" },
      "evacuations[0].covers": ["B"],
    };
    expect(apart(41, 20, named)).toBe(true); // the test covers all runs
    expect(apart(41, 20, { ...named, "pressureTests[0].covers": ["B"] })).toBe(true);
    expect(apart(41, 20, { ...named, "pressureTests[0].covers": ["A"] })).toBe(false);
  });

  it("asks for the temperature of the coldest part where the gas was colder than the air", () => {
    const of = (celsius: number) =>
      assessInstallation(
        changed({
          "pressureTests[0].readings[0].temperature": degC(celsius),
          "pressureTests[0].readings[1].temperature": degC(celsius),
          "evacuations[0].ambient": degC(20),
        }),
      )
        .actions.filter(({ part }) => part === "pressureTests[0].readings[0].temperature")
        .map(({ code }) => code);
    expect(of(-5)).toEqual(["commissioning.record-fields"]);
    expect(of(45)).toEqual(["commissioning.correct-field"]);
  });
});

// The accuracy of an air thermometer or a tape is no pressure: steps of another kind cannot be counted.
it("counts the steps of a display in its own kind only", () => {
  const codes = saidOf(
    changed({ "instruments.airThermometer": { accuracy: deltaC(0.5), resolution: deltaC(0) } }),
  );
  expect(codes).not.toContain("instrument-coarse");
});

// 0.13 kg and 0.6 kg per kW, times 10 kW; 0.04 kg for a hydrocarbon.
it.each([
  ["R-410A", 0.39, 1.3],
  ["R-410A", 6.1, 1.3],
  ["R-290", 0.39, 0.4],
])("says between which charges a unit of 10 kW with %s lies", (refrigerant, factory, low) => {
  const { reasons } = assessInstallation(
    changed(
      charges(factory, { "equipment.capacity": kW(10), "equipment.refrigerant": refrigerant }),
    ),
  );
  const odd = reasons.find(({ code }) => code === "commissioning.factory-charge-odd");
  expect(odd?.values).toMatchObject({ low: kg(low), high: kg(6) });
});

// One pre-charged length for all runs may be longer than any of them; 67 ft is more than the longest run of 66 ft.
it("asks about a pre-charged length above the longest run of the only run", () => {
  const of = (...runs: NonNullable<InstallationRecord["runs"]>) =>
    saidOf(changed({ "equipment.manual.preChargedLength": ft(67), runs })).some((one) =>
      one.startsWith("pre-charged-above-longest"),
    );
  const [run = {}] = complete.runs ?? [];
  expect(of(run)).toBe(true);
  expect(of({ ...run, name: "A" }, { ...run, name: "B" })).toBe(false);
});

// 11 MPa is above every mark: a test within the mark does not reach it, which the test itself says.
it("does not ask about a test pressure above all marks besides", () => {
  const said = saidOf(changed({ "equipment.manual.testPressure": MPag(11) }));
  expect(said).not.toContain("pressure-odd equipment.manual.testPressure");
  expect(said).toContain("test-pressure-too-low pressureTests[0].readings");
});

// Half of what R-410A presses at 80 °F: 235 psig by its table, so that 110 psig is too little; no air is assumed.
it("asks about a test pressure that tests nothing, once the atmosphere is known", () => {
  const said = "pressure-odd equipment.manual.testPressure";
  const of = (pressure: number, more: Change = {}) =>
    saidOf(changed({ "equipment.manual.testPressure": psig(pressure), ...more }));
  expect(of(110)).toContain(said);
  expect(of(125)).not.toContain(said);
  expect(of(110, { site: undefined })).not.toContain(said);
  expect(of(110, { site: { atmosphere: kPaa(84) } })).toContain(said);
});
