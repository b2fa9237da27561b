// The sheet of a plan: it says every line of the plan, and fits its paper.
import { english } from "hvac-install-math/language/en";
import { planInstallation } from "hvac-install-math/planning";
import { planSheet } from "hvac-install-math/report";
import { describe, expect, it } from "vitest";
import { plan as threeHeads } from "../../examples/three-heads/make-records.ts";
import { rules } from "../commissioning/assess.ts";

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

  it("takes a plan that was made before, and does not make it again", () => {
    const plan = planInstallation(threeHeads, { rules });
    const { rules: _, ...rest } = options;
    expect(planSheet(threeHeads, { ...rest, plan })).toBe(planSheet(threeHeads, options));
    const [first] = plan.bring;
    const short = { ...plan, bring: first ? [first] : [], set: [], check: [], ask: [] };
    const items = planSheet(threeHeads, { ...rest, plan: short }).split("\n- Run").length - 1;
    expect(items).toBe(1);
    for (const bad of [null, 7, "plan"]) {
      expect(() => planSheet(threeHeads, { ...rest, plan: bad as never })).toThrow(/options\.plan/);
    }
  });

  it("is the same for the same record", () => {
    expect(planSheet(threeHeads, options)).toBe(planSheet(threeHeads, options));
  });
});
