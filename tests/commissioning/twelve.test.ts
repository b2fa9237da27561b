// Sound installations pass, with few cautions; each of them broken in five ways does not.
import { explain } from "hvac-install-math/assessment";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { ft } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { broken } from "./broken.ts";
import { changed } from "./changed.ts";
import { own } from "./own.ts";
import { casaQuattroFloor, sound as twelve } from "./twelve.ts";

const sound: Readonly<Record<string, InstallationRecord>> = { ...twelve, ...own };

/**
 * What stays open on a sound installation: the ampacity of conductors by AS/NZS 3008.1.1 was read in one transcription
 * alone, so that no Australian circuit passes by these rules.
 */
const openByRule: Readonly<Record<string, string>> = {
  "Red Gum": "circuit power.circuits[0]: circuit-protection.conductor-not-judged",
};

it("are eighteen, each with five ways to break it", () => {
  expect(Object.keys(sound)).toHaveLength(18);
  expect(Object.keys(broken)).toEqual(Object.keys(sound));
  for (const breaks of Object.values(broken)) expect(breaks).toHaveLength(5);
});

describe.each(Object.entries(sound))("%s", (name, record) => {
  const result = assessInstallation(record);
  const known = openByRule[name];

  it("is sound and passes, but for what no rule set confirms", () => {
    const open = result.deciding.filter(
      ({ code, step }) => step && !/waived|falls-away/.test(code),
    );
    const said = open.map(({ step, part, code }) => `${step} ${part}: ${code}`);
    expect(said, open.map((one) => explain(one as never, english)).join()).toEqual(
      known ? [known] : [],
    );
    expect(result.missing).toEqual([]);
    expect(result.outcome).toBe(known ? "inconclusive" : "pass");
    if (!known) expect(result.actions).toEqual([]);
  });

  it("carries at most 15 cautions, findings first and who governs last", () => {
    const kinds = result.cautions.map(({ kind }) => kind);
    expect(kinds.length).toBeLessThanOrEqual(15);
    expect(kinds.at(-1)).toBe("governing");
    expect(kinds.indexOf("danger")).toBeGreaterThan(kinds.lastIndexOf("finding"));
  });

  it.each(broken[name] ?? [])("does not pass with %s", (_, changes, step, outcome) => {
    const found = assessInstallation(changed(changes, record));
    expect(found.outcome).not.toBe("pass");
    const held = found.holds.find((one) => one.name === step);
    expect(held?.reason.code ?? found.steps.find((one) => one.name === step)?.outcome).toBe(
      held ? "commissioning.done-before-proof" : outcome,
    );
    expect(found.actions.length).toBeGreaterThan(0);
  });
});

it("a floor unit with the charge of four heads in an office of 9 m² fails", () => {
  const { cause, reasons } = assessInstallation(casaQuattroFloor);
  expect(cause).toBe("room-limit");
  expect(reasons[0]?.part).toBe("runs[2].room");
});

it("a length typed in the other unit is asked about", () => {
  const record = changed(
    { "runs[0].tubing.lift": ft(200) },
    twelve["Heron Cabin"] as InstallationRecord,
  );
  const codes = assessInstallation(record).reasons.map(({ code }) => code);
  expect(codes).toContain("commissioning.lift-above-length");
});
