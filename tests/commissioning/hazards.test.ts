// Each hazard that the modules warn of is said by the whole, in one danger; no group says what no module warns of.
import { explain } from "hvac-install-math/assessment";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { describe, expect, it } from "vitest";
import { groups } from "../../src/commissioning/installation-cautions.ts";
import { assessInstallation } from "./assess.ts";
import { changed } from "./changed.ts";
import { complete } from "./complete-record.ts";

/** A word of each hazard that has to stand in the sentence of its group. */
const words: Readonly<Record<string, RegExp>> = {
  "safety.dry-nitrogen-only": /dry nitrogen only.*oxygen.*explode/,
  "safety.regulator-and-relief": /regulator and a relief/,
  "safety.raise-in-stages": /in stages.*people clear/,
  "safety.lowest-rating": /within the lowest marked pressure/,
  "safety.nitrogen-suffocates": /outdoors.*suffocates/,
  "safety.refrigerant-contact": /frostbite.*gloves and goggles/,
  "safety.refrigerant-suffocates": /displaces air and suffocates.*ventilate/,
  "safety.open-under-pressure": /Never loosen, cut or braze anything under pressure/,
  "safety.charge-tight-system": /Charge only a tight, tested system/,
  "safety.refrigerant-air-mixture": /never pressure-test with refrigerant and air/,
  "safety.compressor-in-vacuum": /Never run a compressor in a vacuum/,
  "safety.line-voltage": /can kill.*lock out.*capacitors.*Licensed/,
  "safety.meter-category": /category III/,
  "safety.running-unit": /live terminals and fans/,
  "operating-check.mode-first": /mode.*destroys a low-side gauge/,
  "operating-check.hoses-lose-refrigerant": /hose loses refrigerant/,
  "condensate.discharge": /indirect waste, off public ways/,
  "condensate.sweating": /sweating/,
  "condensate.sunlight": /sunlight/,
  "condensate.freezing": /frost/,
  "condensate.overflow": /overflow above finished space/,
  "condensate.pump-failure": /pump stop the unit/,
};

describe("the groups of cautions", () => {
  it.each(
    Object.entries(groups).flatMap(([group, [, codes]]) => codes.map((code) => [code, group])),
  )("say %s in %s", (code, group) => {
    const sentence = explain({ code: group as string, values: {} }, english as never);
    expect(sentence).toMatch(words[code as string] as RegExp);
  });

  it("each say what no other says", () => {
    const all = Object.values(groups).flatMap(([, codes]) => codes);
    expect(new Set(all).size).toBe(all.length);
  });

  it("leave no danger of a step unsaid by the whole", () => {
    const { steps, cautions } = assessInstallation(complete);
    const told = new Set(cautions.map(({ code }) => code));
    const groupOf = (code: string) =>
      Object.entries(groups).find(([, [, codes]]) => codes.includes(code))?.[0] ?? code;
    const dangers = steps.flatMap(({ checks }) =>
      checks.flatMap(({ assessment }) =>
        assessment.cautions
          .filter(({ kind }) => kind === "danger")
          .map(({ code }) => groupOf(code)),
      ),
    );
    expect([...new Set(dangers)].filter((code) => !told.has(code as never))).toEqual([]);
  });

  // What a later test proves need not be warned of once it has: until then a sound flare is not a tight one.
  it.each([
    ["flare-joint.not-a-leak-test", "pressureTests"],
    ["line-set.charge-after-tests", "charge"],
  ])("drop %s when %s have passed, and not before", (code, part) => {
    const toldOf = (record: InstallationRecord) =>
      assessInstallation(record).cautions.some((one) => one.code === code);
    expect(toldOf(complete)).toBe(false);
    expect(toldOf(changed({ [part]: undefined }))).toBe(true);
  });
});
