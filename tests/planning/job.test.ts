// What all parts of a plan share: the length that will be installed, how a run is called, what is asked once, what governs.
// Figures are sums of what the record says; every record is invented.
import type { InstallationRecord, Planned, Run } from "hvac-install-math/commissioning";
import { planInstallation } from "hvac-install-math/planning";
import { ft, inch, m } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { rules } from "../commissioning/assess.ts";
import { said } from "../told.ts";
import { planned } from "./installations.ts";

const plan = (record: Omit<InstallationRecord, "version">) =>
  planInstallation({ version: 2, ...record }, { rules });
const limited = { manual: { run: { maximumLength: m(25), maximumLift: m(15) } } };
const run = (tubing: Run["tubing"], name?: string): Run => ({
  ...(name && { name }),
  tubing: { lift: m(1), outdoorUnit: "below", ...tubing },
});

/** The length of a run, as it is held against the longest that the manual allows. */
const lengthOf = (tubing: Run["tubing"], more: Planned = {}) => {
  const { check } = plan({ equipment: limited, runs: [run(tubing)], plan: more });
  return String(check.find(({ code }) => /maximum/.test(code))?.values.value);
};

describe("the length that will be installed", () => {
  it.each<[string, Run["tubing"], Planned, string]>([
    ["the way alone", { way: m(10) }, {}, "10 m"],
    ["the way and its slack", { way: m(10) }, { slack: m(1) }, "11 m"],
    ["the way and its loop", { way: m(10) }, { serviceLoop: m(2) }, "12 m"],
    ["the way, slack and loop", { way: m(10) }, { slack: m(1), serviceLoop: m(2) }, "13 m"],
    // Cut to what is needed, a set of 15 m ends with it; one that must not be cut stays.
    ["of a set what is needed", { way: m(10) }, { slack: m(1), stock: [m(15)] }, "11 m"],
    ["a whole set", { way: m(10) }, { slack: m(1), stock: [m(15)], cuttable: false }, "15 m"],
    ["two sets what is needed", { way: m(18) }, { slack: m(1), stock: [m(15)] }, "19 m"],
    ["what is decided", { way: m(10), length: m(12) }, { slack: m(1), stock: [m(15)] }, "12 m"],
  ])("is %s", (_, tubing, more, length) => {
    expect(lengthOf(tubing, more)).toBe(length);
  });

  it("of lines with couplings is that of the set, as nobody cuts them", () => {
    const { check } = plan({
      equipment: { ...limited, construction: "quick-connect" },
      runs: [run({ way: m(10) })],
      plan: { stock: [m(15)] },
    });
    expect(check.map(({ values }) => String(values.value))).toContain("15 m");
  });
});

describe("a question", () => {
  const asked = (record: Omit<InstallationRecord, "version">, path: string) =>
    plan(record)
      .ask.filter((one) => one.path === path)
      .map(said);

  it("names the runs of which it is asked, by name or number, and all parts that wait for it", () => {
    const runs = [run({}, "loft"), run({})];
    const [question = ""] = asked({ runs }, "runs[0].tubing.way");
    expect(question).toMatch(/^ask-of-runs, changes part\.lines \+ part\.pressure-test/);
    expect(question).toMatch(/field field\.runs\.tubing\.way, runs loft \+ 2$/);
    expect(asked({ runs }, "runs[1].tubing.way")).toEqual([]);
    // A question of the whole system names none.
    expect(asked({ runs }, "equipment.factoryCharge")[0]).toMatch(/^ask, /);
  });

  it("is asked of one run where none is recorded, and of none of a monobloc", () => {
    const ways = (construction?: "monobloc") =>
      plan({ ...(construction && { equipment: { construction } }) })
        .ask.map(({ path }) => path)
        .filter((path) => path.startsWith("runs"));
    expect(ways()).toContain("runs[0].tubing.way");
    expect(ways("monobloc")).toEqual([]);
  });

  it("is asked for the refrigerant that nobody knows as for one that is not stated", () => {
    for (const refrigerant of [undefined, "R-000"]) {
      const { ask } = plan({ equipment: { ...(refrigerant && { refrigerant }) }, runs: [run({})] });
      expect(ask.map(({ path }) => path)).toContain("equipment.refrigerant");
    }
  });

  it("says that an app has not passed the rules of a circuit", () => {
    const record = planned["Heron Cabin"] as InstallationRecord;
    const [name] = record.power?.circuits?.map((one) => one.rules) ?? [];
    const { ask, bring } = planInstallation(record, { rules: [] });
    const [missing] = ask.filter(({ code }) => code === "planning.rules-not-passed");
    expect(missing).toMatchObject({
      path: "power.circuits[0].rules",
      changes: ["circuit"],
      values: { rules: { verbatim: name } },
    });
    expect(bring.filter(({ part }) => part === "circuit")).toEqual([]);
    const passed = planInstallation(record, { rules });
    expect(passed.ask.map(({ code }) => code)).not.toContain("planning.rules-not-passed");
  });
});

it("a plan warns of dangers, and says who governs once, at the end", () => {
  for (const record of Object.values(planned)) {
    const { cautions } = planInstallation(record, { rules });
    const governing = cautions.filter(({ code }) => /govern$/.test(code));
    expect(governing.map(({ code }) => code)).toEqual(["safety.others-govern"]);
    expect(cautions.at(-1)).toBe(governing[0]);
    expect(new Set(cautions.map(said)).size).toBe(cautions.length);
  }
  const heron = planInstallation(planned["Heron Cabin"] as InstallationRecord, { rules });
  expect(heron.cautions.map(({ kind }) => kind)).toContain("danger");
});

it("a run of another maker's manual is held against that one", () => {
  const own = { manual: { run: { maximumLength: ft(50) } } };
  const tube = { outsideDiameter: inch(0.25), wall: inch(0.03) };
  const two = [
    run({ way: m(10), liquid: tube, vapor: tube }),
    { ...run({ way: m(10), liquid: tube, vapor: tube }), ...own },
  ];
  const { check } = plan({ equipment: limited, runs: two });
  const limits = check.filter(
    ({ code, values }) => /maximum/.test(code) && String(values.value) === "10 m",
  );
  expect(limits.map(({ path, values }) => `${path}: ${values.limit}`)).toEqual([
    "runs[0]: 25 m",
    "runs[1]: 50 ft",
  ]);
});
