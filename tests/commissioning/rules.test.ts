import { circuitRules } from "hvac-install-math/commissioning";
import { expect, it } from "vitest";
import { circuitRulesNamed } from "../../src/commissioning/rule-sets.ts";
import { assessInstallation, rules } from "./assess.ts";
import { complete } from "./complete-record.ts";

it.each(Object.entries(circuitRules))(
  "%s is found among the rule sets that were passed",
  (name, set) => {
    expect(circuitRulesNamed(name as keyof typeof circuitRules, rules)).toBe(set);
  },
);

it("asks for the rule set that the record names and that was not passed", async () => {
  const { assessInstallation: judge } = await import("hvac-install-math/commissioning");
  const without = rules.filter((one) => one !== circuitRules["nfpa-70-2023"]);
  const result = judge(complete, { rules: without });
  expect(result.outcome).toBe("inconclusive");
  const said = result.reasons.find(({ code }) => code === "commissioning.rules-not-passed");
  expect(said).toMatchObject({ step: "circuit", values: { rules: { verbatim: "nfpa-70-2023" } } });
  expect(result.actions.map(({ code }) => code)).toContain("commissioning.pass-rules");
  expect(assessInstallation(complete).outcome).toBe("pass");
});
