// What a plan says: every code that is declared is said by some plan, and nothing else; the sheet fits its paper.
import { gzipSync } from "node:zlib";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english, planning } from "hvac-install-math/language/en";
import { planInstallation } from "hvac-install-math/planning";
import { ft, psig, watt } from "hvac-install-math/quantity";
import { planSheet } from "hvac-install-math/report";
import { describe, expect, it } from "vitest";
import { plan as threeHeads } from "../../examples/three-heads/make-records.ts";
import { rules } from "../commissioning/assess.ts";
import { changed } from "../commissioning/changed.ts";
import { planned } from "./installations.ts";
import * as own from "./own.ts";

const cabin = planned["Heron Cabin"] as InstallationRecord;
const [run] = cabin.runs ?? [];
/** Plans that go wrong somewhere. */
const odd: readonly InstallationRecord[] = [
  changed({ "runs[0].tubing.way": ft(150) }, cabin),
  changed(
    {
      "runs[0].tubing.liquid": run?.tubing?.vapor,
      "runs[0].tubing.vapor": run?.tubing?.liquid,
    },
    cabin,
  ),
  changed({ "equipment.manual.leastConnected": watt(9000) }, own.tooMuch),
  changed({ "equipment.protectionMarking": "fuse only" }, cabin),
  changed({ "power.circuits[0].installed": { conductor: "14 AWG" } }, own.longFeed),
  changed({ "plan.fillPressure": psig(100) }, cabin),
  changed({ "equipment.manual.shortLineRule": "add-and-subtract" }, own.shortLines),
  changed({ "equipment.manual.testPressure": psig(-3), "plan.fillPressure": undefined }, cabin),
];

const said = new Set<string>();
const hear = (record: InstallationRecord, passed = rules) => {
  const { bring, set, check, ask, cautions } = planInstallation(record, { rules: passed });
  for (const { code, values } of [...bring, ...set, ...check, ...ask, ...cautions]) {
    said.add(code);
    for (const one of Object.values(values).flat()) if (typeof one === "string") said.add(one);
  }
};
for (const one of [...Object.values(planned), ...Object.values(own), ...odd, threeHeads]) hear(one);
hear(cabin, []);

describe("the sentences of a plan", () => {
  it("are all that is declared", () => {
    const ours = [...said].filter((code) => code.startsWith("planning."));
    expect(ours.sort()).toEqual(Object.keys(planning.messages).sort());
  });

  it("take at most 3 kB in one language", () => {
    expect(gzipSync(JSON.stringify(planning.messages)).length).toBeLessThanOrEqual(3000);
  });
});

describe("the sheet of a plan", () => {
  const options = { language: english, rules, system: "inch-pound" } as const;

  it("says every line, with its sources, in both forms", () => {
    const { bring, set, check, ask } = planInstallation(threeHeads, { rules });
    const lines = planSheet(threeHeads, options).split("\n");
    const items = lines.filter((line) => line.startsWith("- "));
    expect(items.length).toBeGreaterThan(bring.length + set.length + check.length + ask.length);
    expect(lines[0]).toBe("# Plan of the work: Three heads, an invented example");
    const page = planSheet(threeHeads, { ...options, format: "html" });
    expect(page.match(/<li[ >]/g)).toHaveLength(items.length);
    for (const [, place = ""] of page.matchAll(/href="#(part-[\w-]+)"/g)) {
      expect(page).toContain(`id="${place}"`);
    }
    expect(page).not.toMatch(/<script|undefined|NaN|\[object/);
  });

  it("escapes what the record says", () => {
    const hostile = { ...threeHeads, name: "<script>alert(1)</script> | *x*" };
    expect(planSheet(hostile, { ...options, format: "html" })).not.toContain("<script");
    expect(planSheet(hostile, options)).toContain("&lt;script&gt;");
  });

  it("names the run for what another module says of it", () => {
    expect(planSheet(threeHeads, options)).toContain("- Run A: Surplus to cut off: 9 ft.");
  });

  it("is the same for the same record", () => {
    expect(planSheet(threeHeads, options)).toBe(planSheet(threeHeads, options));
  });
});
