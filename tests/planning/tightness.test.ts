// Pressure test and evacuation of a plan, line by line. Pressures, masses and holds are checked against other sources in
// twelve.test.ts; the rest is plain arithmetic, said beside it.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { planInstallation } from "hvac-install-math/planning";
import {
  degC,
  degF,
  hour,
  kelvin,
  liter,
  literPerHour,
  paM3PerS,
  psig,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { rules } from "../commissioning/assess.ts";
import { changed } from "../commissioning/changed.ts";
import { planned } from "./installations.ts";
import * as own from "./own.ts";
import { partOf } from "./part.ts";

const named = (name: string) => planned[name] as InstallationRecord;
const heron = named("Heron Cabin");
const mesa = named("Mesa Barn");
const wren = named("Quick Wren");
const stove = named("North Stove");

type Changes = Readonly<Record<string, unknown>>;
const manuals = "[manufacturer-manuals]";
const practice = "[common-practice]";
const nothing = { bring: [], set: [], check: [], ask: [] };
/** The lines of some codes. */
const only = (lines: readonly string[], codes: RegExp) => lines.filter((one) => codes.test(one));

describe("the pressure test of a plan", () => {
  const test = (record: InstallationRecord, changes: Changes = {}) =>
    partOf("pressure-test", record, changes);
  const ask = (path: string) =>
    `${path}: ask, changes part.pressure-test, field field.${path.replace(/\[\d\]/, "")}`;

  it("takes no nitrogen in a monobloc, and asks nothing", () => {
    const set = [`no-nitrogen, construction construction.monobloc ${practice}`];
    const bare = { "equipment.refrigerant": undefined, plan: undefined };
    expect(test(stove)).toEqual({ ...nothing, set });
    expect(test(stove, bare)).toEqual({ ...nothing, set });
  });

  it("bubbles the couplings that are not opened, once refrigerant, site and warmth are stated", () => {
    const first = `no-nitrogen, construction construction.quick-connect ${practice}`;
    const { set } = test(wren);
    expect(set[0]).toBe(first);
    // R-454B at 72 °F: 199 psig by the published equations of state
    expect(set[1]).toMatch(/^bubble-couplings, pressure 198\.7 psig, temperature 72 °F \[tillner/);
    const without = test(wren, { "plan.fillTemperature": undefined });
    expect(without).toEqual({ ...nothing, set: [first], ask: [ask("plan.fillTemperature")] });
    const bare = test(wren, { "equipment.refrigerant": undefined, site: undefined });
    expect(bare.set).toEqual([first]);
    expect(bare.ask.map((one) => one.split(":")[0]).sort()).toEqual([
      "equipment.refrigerant",
      "site.altitude",
    ]);
  });

  it.each<[what: string, changes: Changes, said: string[], check: string[]]>([
    ["stands as long as the manual asks", { "plan.hold": hour(24) }, ["24 h"], []],
    ["is short by an hour", { "plan.hold": hour(23) }, ["24 h"], ["hold 23 h, least 24 h"]],
    [
      "is held to the manual in any unit",
      { "plan.hold": hour(1) },
      ["24 h"],
      ["hold 1 h, least 24 h"],
    ],
    ["is held to nothing where no hold is planned", { "plan.hold": undefined }, ["24 h"], []],
    [
      "is held to nothing where the manual is silent",
      { "equipment.manual.testHold": undefined },
      [],
      [],
    ],
  ])("%s", (_, changes, said, check) => {
    const part = test(mesa, changes);
    expect(only(part.set, /hold-of-manual/)).toEqual(
      said.map((one) => `hold-of-manual, hold ${one} ${manuals}`),
    );
    expect(only(part.check, /hold-below/)).toEqual(
      check.map((one) => `fail: hold-below-manual, ${one} ${manuals}`),
    );
    expect(only(part.ask, /testHold/)).toEqual(
      said.length ? [] : [ask("equipment.manual.testHold")],
    );
  });

  it("asks which runs a test covers where several are planned and no test is", () => {
    const covers = ask("pressureTests[0].covers");
    const finches = named("Three Finches");
    const apart = test(finches, { pressureTests: undefined });
    expect(apart.ask).toEqual([covers]);
    // the three volumes of 1.738, 1.268 and 2.452 L are one of 5.458 L
    expect(only(apart.bring, /^nitrogen,/).join()).toMatch(/runs A \+ B \+ C, volume 5\.45[78] L/);
    expect(test(finches, { pressureTests: [] }).ask).toEqual([covers]);
    expect(test(finches).ask).toEqual([]);
    expect(test(heron, { pressureTests: undefined }).ask).toEqual([]);
  });

  it("asks what a manual leaves open, and tells the most that may go in", () => {
    const {
      set,
      check,
      ask: asked,
    } = test(heron, {
      "plan.fillPressure": undefined,
      "equipment.manual.testPressure": undefined,
    });
    expect(only(set, /fill/)).toHaveLength(1);
    expect(set[0]).toMatch(/^most-fill, limit 550 psig, most 515\.7 psig, warmest 110 °F/);
    expect(only(set, /^(fill|stages|when-warm|later),/)).toEqual([]);
    expect(check).toEqual([]);
    expect(asked).toEqual([ask("equipment.manual.testPressure")]);
  });

  it("fills to the plan, else to the manual, else to what is required", () => {
    const filled = (changes: Changes) => only(test(heron, changes).set, /^fill,/).join();
    const silent = { "plan.fillPressure": undefined };
    const required = [{}, { requirement: { pressure: psig(400) } }];
    expect(filled({})).toMatch(/^fill, pressure 500 psig/);
    expect(filled(silent)).toMatch(/^fill, pressure 450 psig/);
    const open = { ...silent, "equipment.manual.testPressure": undefined };
    expect(filled({ ...open, pressureTests: required })).toMatch(/^fill, pressure 400 psig/);
    expect(filled({ ...open, pressureTests: [{}] })).toBe("");
    expect(filled({ ...open, pressureTests: undefined })).toBe("");
  });

  it.each<[what: string, changes: Changes, check: RegExp[]]>([
    [
      "at the manual's pressure is enough",
      { "plan.fillPressure": psig(450) },
      [/^pass.*above-own/],
    ],
    [
      "below the manual's fails",
      { "plan.fillPressure": psig(449) },
      [
        /^fail: plan\.fillPressure: fill-below-manual, fill 449 psig, least 450 psig/,
        /^pass.*above-own/,
      ],
    ],
    [
      // R-32 at 78 °F has 234 psig
      "below what the refrigerant would have proves nothing of it",
      { "plan.fillPressure": psig(200), "equipment.manual.testPressure": undefined },
      [/^inconclusive: plan\.fillPressure: below-own-pressure, fill 200 psig, own 234\.1 psig/],
    ],
    ["is held to no refrigerant where none is stated", { "equipment.refrigerant": undefined }, []],
  ])("a fill %s", (_, changes, expected) => {
    const { check } = test(heron, changes);
    expect(check).toHaveLength(expected.length);
    for (const [i, one] of expected.entries()) expect(check[i]).toMatch(one);
  });

  it("tells no pressure of tomorrow whose warmth nobody stated", () => {
    const { set, ask: asked } = test(heron, { "plan.laterTemperature": undefined });
    expect(only(set, /^(later|hold),/)).toEqual([]);
    expect(only(set, /^(fill|when-warm),/)).toHaveLength(2);
    expect(asked).toEqual([ask("plan.laterTemperature")]);
  });

  it.each<[path: string, value: unknown, end: string]>([
    ["equipment.lowestMarkedPressure", psig(-5), "-5 psig"],
    ["plan.fillPressure", psig(-5), "-5 psig"],
    ["plan.fillTemperature", degF(900), "900 °F"],
    ["plan.laterTemperature", degF(900), "900 °F"],
    ["plan.warmest", degF(900), "900 °F"],
    ["plan.leakRate", paM3PerS(-1), "-1 Pa·m³/s"],
  ])("asks for %s again where it can't be", (path, value, end) => {
    const asked = test(heron, { [path]: value }).ask;
    expect(asked).toHaveLength(1);
    expect(asked[0]?.startsWith(`${path}: unusable, field field.${path}, value `)).toBe(true);
    expect(asked[0]?.endsWith(end)).toBe(true);
  });

  it("says what cylinder is too small, and that none is enough without its figures", () => {
    const small = { "plan.cylinder": { waterVolume: liter(1), pressure: psig(600) } };
    expect(only(test(heron, small).bring, /cylinder/)).toEqual(["cylinder-too-small [span-2000]"]);
    expect(only(test(heron).bring, /cylinder/).join()).toMatch(/^cylinder-enough, .*count 1/);
    const none = test(heron, { "plan.cylinder": undefined });
    expect(none.bring).toEqual([]);
    expect(none.ask).toEqual([ask("plan.cylinder")]);
  });

  // Two tubes of 15 ft = 4.572 m, 0.187 and 0.312 in inside (0.25 and 0.375 less twice 0.0315 in): 0.081 and 0.226 L
  it("counts coils and manifold with the tubes, and none where there are none", () => {
    const volume = (changes: Changes) => only(test(heron, changes).bring, /^nitrogen,/).join();
    expect(volume({})).toMatch(/volume 1\.307 L/);
    expect(volume({ "runs[0].tubing.otherVolume": liter(0) })).toMatch(/volume 0\.306[0-9]* L/);
  });
});

describe("the evacuation of a plan", () => {
  const evacuation = (record: InstallationRecord, changes: Changes = {}) =>
    partOf("evacuation", record, changes);
  const ice = (changes: Changes) =>
    planInstallation(changed(changes, own.coldAttic), { rules })
      .cautions.filter(({ code }) => code === "planning.ice")
      .map(({ values }) => `${values.temperature}, ${values.pressure}`);

  // Policies as manuals print them; a leak of 0.5 micron·L/s, 6.666e-5 Pa·m³/s, is common practice.
  it("has target, limits and the most that may leak, by the policy that is named", () => {
    const leak = `vacuum-leak, leak 0.00006666 Pa·m³/s ${practice}`;
    const bring = [`vacuum-hose, bore 0.375 in ${practice}`];
    const ask = ["plan.pump: ask, changes part.evacuation, field field.plan.pump"];
    expect(evacuation(heron)).toEqual({
      bring,
      set: [
        "vacuum-target, target 500 micron [manufacturer-manuals split B]",
        "vacuum-limit, hold 20 min, limit 500 micron [manufacturer-manuals split B]",
        leak,
      ],
      check: [],
      ask,
    });
    expect(evacuation(own.coldAttic)).toEqual({
      bring,
      set: [
        `vacuum-target, target 500 micron ${practice}`,
        `vacuum-rise, hold 10 min, rise 500 micron ${practice}`,
        leak,
      ],
      check: [],
      ask,
    });
  });

  it("is none where the circuit is not opened, and waits for its policy where it is", () => {
    for (const record of [wren, stove]) expect(evacuation(record)).toEqual(nothing);
    expect(evacuation(heron, { evacuations: undefined })).toEqual({
      ...nothing,
      ask: ["evacuations[0].policy: ask, changes part.evacuation, field field.evacuations.policy"],
    });
  });

  // V/S · ln(p0/p): 1.307 L of a pump of 60 L/h, from 101085 Pa (20 m) to 500 micron or 66.66 Pa:
  // 1.307/60 h · ln(1516.4) = 0.02178 h · 7.324 = 9.57 min
  it("pumps for the time that volume and pump make, in each test", () => {
    expect(only(evacuation(heron, { "plan.pump": literPerHour(60) }).bring, /pump-down/)).toEqual([
      `pump-down, runs 1, target 500 micron, time 9.6 min ${practice}`,
    ]);
    expect(evacuation(heron, { "plan.pump": literPerHour(-60) }).ask).toEqual([
      "plan.pump: unusable, field field.plan.pump, value -60 L/h",
    ]);
  });

  // Ice has 103.3 Pa, 774 micron, at −20 °C, and 259.9 Pa, 1949 micron, at −10 °C (IAPWS R14-08); none at 0.01 °C and above.
  it("warns of ice by the coldest that is stated", () => {
    const warm = {
      "plan.fillTemperature": degC(10),
      "plan.laterTemperature": degC(12),
      "plan.warmest": degC(20),
    };
    expect(ice({})).toEqual(["-20 °C, 774 micron"]);
    expect(ice({ ...warm, "plan.fillTemperature": degC(-10) })).toEqual(["-10 °C, 1950 micron"]);
    expect(ice({ ...warm, "plan.laterTemperature": degC(-10) })).toEqual(["-10 °C, 1950 micron"]);
    expect(ice({ ...warm, "evacuations[0].coldest": degC(-10) })).toEqual(["-10 °C, 1950 micron"]);
    expect(ice({ "plan.fillTemperature": degC(-10), "plan.laterTemperature": degC(-20) })).toEqual([
      "-20 °C, 774 micron",
    ]);
    expect(ice({ ...warm })).toEqual([]);
    expect(ice({ ...warm, "plan.laterTemperature": kelvin(273.16) })).toEqual([]);
    expect(ice({ "plan.fillTemperature": undefined, "plan.laterTemperature": undefined })).toEqual(
      [],
    );
    expect(ice({ "plan.laterTemperature": degC(-270) })).toEqual([]);
    expect(ice({ evacuations: undefined })).toEqual(["-20 °C, 774 micron"]);
  });
});
