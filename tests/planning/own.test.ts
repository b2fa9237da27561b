// Six further plans, and what holds for every plan: it changes with the record, and guesses nothing.
import { explain } from "hvac-install-math/assessment";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { planInstallation } from "hvac-install-math/planning";
import {
  degF,
  ft,
  inch,
  isInvalidInputError,
  liter,
  m3,
  oz,
  psig,
  sqft,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { plan as threeHeads } from "../../examples/three-heads/make-records.ts";
import { rules } from "../commissioning/assess.ts";
import { changed } from "../commissioning/changed.ts";
import { planned } from "./installations.ts";
import * as own from "./own.ts";

const plan = (record: InstallationRecord) => planInstallation(record, { rules });
const said = (record: InstallationRecord): string[] => {
  const { bring, set, check, cautions } = plan(record);
  return [...bring, ...set, ...check, ...cautions].map((one) => explain(one, english as never));
};
const asked = (record: InstallationRecord) => plan(record).ask.map(({ path }) => path);

describe("a plan", () => {
  // 2 · (16 − 25) ft · 0.22 oz/ft − 1.61 oz = −5.57 oz, which the manual counts as nothing.
  it("takes nothing out where short lines and a spare port fall below zero", () => {
    expect(said(own.shortLines)).toContain("By the rule, add nothing: the total is -5.57 oz.");
    expect(said(own.shortLines)).toContain("2 caps on the unused ports, inside the leak test.");
  });

  // 40 ft · 0.6 oz/ft − 9 oz = 15 oz.
  it("counts the whole line less what the factory put in for its own", () => {
    expect(said(own.wholeLine)).toContain("Add 15 oz in all.");
    expect(said(own.wholeLine)).toContain("Total for the label: 135 oz.");
  });

  // Between (0 m, 11 L/h) and (6 m, 5 L/h) the flow at 1.2 m is 9.8 L/h, three times 1.6 L/h.
  it("holds a condensate pump against its curve, and asks for one where the water has to rise", () => {
    const { check } = plan(own.cellar);
    expect(
      check.find(({ code }) => code === "condensate.pump-keeps-up")?.values.flow,
    ).toMatchObject({
      kind: "volumeFlow",
    });
    expect(said(own.cellar).join()).toMatch(/9\.8 L\/h/);
    expect(asked(own.cellar)).toContain("runs[1].drain.pump");
  });

  // Ice at −20 °C has 774 micron (IAPWS R14-08).
  it("lowers a fill that the warmth would push above the marked pressure, and tells of ice", () => {
    const { check, cautions } = plan(own.coldAttic);
    const codes = check.map(({ code, outcome }) => `${code} ${outcome}`);
    expect(codes).toContain("planning.fill-lowered inconclusive");
    expect(codes).toContain("planning.fill-below-manual fail");
    const ice = cautions.find(({ code }) => code === "planning.ice");
    expect(String(ice?.values.pressure)).toBe("774 micron");
  });

  it("fails a sum of lengths and of capacities that the manual does not allow", () => {
    const failed = plan(own.tooMuch).check.filter(({ outcome }) => outcome === "fail");
    expect(failed.map(({ code }) => code)).toEqual([
      "planning.total-length-above",
      "planning.connected-above",
    ]);
  });

  // Three heads of 2600 W: 7800 W, of at least 3000 W and at most 7000 W.
  it("never calls the least capacity a limit that is kept from below", () => {
    expect(said(own.tooMuch)).toEqual(
      expect.arrayContaining([
        "The indoor units together have 7800 W: above the limit of 7000 W.",
        "The indoor units together have 7800 W; at least 3000 W required.",
      ]),
    );
  });

  // 2 · 120 ft · 10 A · 3.14 Ω/1000 ft (14 AWG stranded; NFPA 70, chapter 9, table 8) are 7.54 V of 120 V, 6.28 %; 10 AWG
  // with 1.24 Ω/1000 ft keeps 3 %: 2.48 %.
  it("brings the conductor that keeps the drop, and says the drop at the start", () => {
    const { bring, check, set } = plan(own.longFeed);
    const larger = bring.find(({ code }) => code === "planning.conductor-for-drop");
    expect(larger?.values).toMatchObject({
      size: { verbatim: "10 AWG" },
      smallest: { verbatim: "14 AWG" },
    });
    expect(check.map(({ code }) => code)).toContain("planning.drop-at-start");
    expect(set.map((one) => explain(one, english as never))).toContain(
      "Heating at full speed: the air changes by 20 Δ°F to 45 Δ°F across the indoor coil.",
    );
  });
});

describe("what is in the bag", () => {
  const record = planned["Three Finches"] as InstallationRecord;

  // Across flats by manuals: 17 mm for 1/4, 22 mm for 3/8, 26 mm for 1/2 in with R-410A and R-32, 24 mm with R-22.
  it("has a wrench for each size of nut", () => {
    expect(said(record)).toContain(
      "Wrenches for the nuts: 17 mm, 22 mm, and 26 mm across flats, and a second one to hold each body.",
    );
    const old = changed({ "equipment.refrigerant": "R-22" }, record);
    expect(said(old).join()).toMatch(/17 mm, 22 mm, and 24 mm across flats/);
    const unpublished = changed({ "equipment.refrigerant": "R-290" }, record);
    expect(said(unpublished).join()).not.toMatch(/across flats/);
  });

  it("has hoses for nitrogen and vacuum where the circuit is opened, and none where it is not", () => {
    const codes = (one: InstallationRecord) => plan(one).bring.map(({ code }) => code);
    expect(codes(record)).toEqual(
      expect.arrayContaining(["planning.nitrogen-hose", "planning.vacuum-hose"]),
    );
    expect(said(record)).toContain("A hose for nitrogen that is marked for 500 psig or more.");
    const closed = codes(planned["Quick Wren"] as InstallationRecord).join();
    expect(closed).not.toMatch(/hose|wrenches/);
  });
});

describe("every plan", () => {
  const cabin = planned["Heron Cabin"] as InstallationRecord;

  it.each([
    ["another way", { "runs[0].tubing.way": ft(30) }, "planning.line-set"],
    ["a warmer morning", { "plan.laterTemperature": degF(70) }, "planning.later"],
    ["another factory charge", { "equipment.factoryCharge": oz(30) }, "planning.label"],
    ["a lower marking", { "equipment.lowestMarkedPressure": psig(500) }, "planning.most-fill"],
  ])("changes with %s", (_, changes, code) => {
    const line = (record: InstallationRecord) => {
      const { bring, set } = plan(record);
      return [...bring, ...set].find((one) => one.code === code)?.values;
    };
    expect(line(changed(changes, cabin))).not.toEqual(line(cabin));
  });

  it.each([
    ["equipment.factoryCharge", "planning.label"],
    ["equipment.manual.chargeRate", "planning.label"],
    ["equipment.manual.preChargedLength", "planning.label"],
    ["equipment.manual.shortLineRule", "planning.label"],
    ["equipment.lowestMarkedPressure", "planning.fill"],
    ["equipment.minimumCircuitAmpacity", "planning.device"],
    ["equipment.maximumOvercurrentProtection", "planning.device"],
    ["equipment.ratedVoltages", "planning.monitor"],
    ["power.voltage", "planning.device"],
    ["plan.stock", "planning.line-set"],
    ["plan.laterTemperature", "planning.hold"],
    ["plan.leakRate", "planning.hold"],
    ["instruments.testGauge", "planning.hold"],
    ["plan.cylinder", "planning.nitrogen"],
    ["plan.insulation", "planning.sleeve"],
    ["runs[0].drain.fall", "planning.drain-fall"],
    ["runs[0].room.floorArea", "charge-limit.within-limit"],
    ["evacuations[0].policy", "planning.vacuum-target"],
  ])("asks for %s in place of what needs it", (path, code) => {
    const record = changed({ [path]: undefined }, cabin);
    const { bring, set, check, ask } = plan(record);
    expect([...bring, ...set, ...check].map((one) => one.code)).not.toContain(code);
    const question = ask.find((one) => one.path === path);
    expect(question?.changes.length, ask.map((one) => one.path).join()).toBeGreaterThan(0);
  });

  it("asks about a value that can't be used, and says the rest", () => {
    const { ask, bring } = plan(changed({ "plan.warmest": degF(900) }, cabin));
    expect(ask.find(({ path }) => path === "plan.warmest")?.code).toBe("planning.unusable");
    expect(bring.map(({ code }) => code)).toContain("planning.line-set");
  });

  it.each([
    ["runs[1].tubing.otherVolume", liter(-1)],
    ["runs[2].tubing.liquid.wall", inch(0.3)],
    ["runs[2].tubing.vapor.outsideDiameter", inch(-0.5)],
    ["runs[1].tubing.way", ft(-14)],
    ["runs[1].room.floorArea", sqft(-150)],
    ["runs[2].room.volume", m3(-40)],
  ])("names %s where it can't be used, in its own run and nowhere else", (path, wrong) => {
    const record = changed(
      { ...(path.endsWith("volume") && { "equipment.refrigerant": "R-410A" }), [path]: wrong },
      threeHeads,
    );
    const unusable = plan(record).ask.filter(({ code }) => code === "planning.unusable");
    expect(new Set(unusable.map((one) => one.path))).toEqual(new Set([path]));
  });

  it.each(Object.entries({ ...planned, ...own }))("reads as sentences: %s", (_, record) => {
    const { bring, set, check, ask, cautions } = plan(record);
    for (const one of [...bring, ...set, ...check, ...ask, ...cautions]) {
      const sentence = explain(one, english as never);
      expect(sentence).toMatch(/^[A-Z0-9−-].*[.?]$/);
      expect(sentence).not.toMatch(/[{}]|undefined|NaN|Infinity|\[object/);
    }
    for (const one of [...bring, ...set, ...check]) {
      expect(one.sources.length, one.code).toBeGreaterThan(0);
      expect(Object.isFrozen(one.sources)).toBe(true);
    }
  });

  it("of an empty record asks, and of none is refused", () => {
    const { bring, ask } = plan({ version: 2 });
    expect(bring).toEqual([]);
    expect(ask.length).toBeGreaterThan(10);
    for (const bad of [undefined, null, 7, { version: 3 }]) {
      try {
        planInstallation(bad as never, { rules });
        expect.unreachable();
      } catch (error) {
        expect(isInvalidInputError(error)).toBe(true);
      }
    }
  });
});
