// The modules that judge: each says all that its catalogue declares. A module joins by a line and, where the inputs of
// the fault tests do not reach every code, a file of further inputs.
import { gzipSync } from "node:zlib";
import { nec2023 } from "hvac-install-math/circuit-protection";
import * as en from "hvac-install-math/language/en";
import { holdRules } from "hvac-install-math/pressure-test";
import { expect, it } from "vitest";
import * as ofChargeLimit from "./inputs/charge-limit.ts";
import * as ofCircuitProtection from "./inputs/circuit-protection.ts";
import * as ofCondensate from "./inputs/condensate.ts";
import * as ofFlareJoint from "./inputs/flare-joint.ts";
import * as ofLineSet from "./inputs/line-set.ts";
import * as ofLogs from "./inputs/logs.ts";
import * as ofOperatingCheck from "./inputs/operating-check.ts";
import * as ofPressureTest from "./inputs/pressure-test.ts";
import * as ofPropertyModel from "./inputs/property-model.ts";
import * as ofRefrigerants from "./inputs/refrigerants.ts";
import * as ofSupplyVoltage from "./inputs/supply-voltage.ts";
import { type Spoken, walk } from "./walk.ts";

const spoken: readonly Spoken[] = [
  {
    module: "circuit-protection",
    catalogue: en.circuitProtection,
    further: ofCircuitProtection.inputs,
    // A rule set lists its points with their clauses; an app that shows them has a word for each.
    named: () => Object.keys(nec2023.points).map((point) => `circuit-protection.point.${point}`),
  },
  {
    module: "supply-voltage",
    catalogue: en.supplyVoltage,
    further: ofSupplyVoltage.inputs,
  },
  { module: "charge-limit", catalogue: en.chargeLimit, further: ofChargeLimit.inputs },
  { module: "condensate", catalogue: en.condensate, further: ofCondensate.inputs },
  { module: "flare-joint", catalogue: en.flareJoint, further: ofFlareJoint.inputs },
  { module: "line-set", catalogue: en.lineSet, further: ofLineSet.inputs },
  { module: "logs", catalogue: en.logs, further: ofLogs.inputs },
  { module: "operating-check", catalogue: en.operatingCheck, further: ofOperatingCheck.inputs },
  { module: "pressure-test", catalogue: en.pressureTest, further: ofPressureTest.inputs },
  { module: "property-model", catalogue: en.propertyModel, further: ofPropertyModel.inputs },
  { module: "refrigerants", catalogue: en.refrigerants, further: ofRefrigerants.inputs },
];

for (const one of spoken) walk(one);

it("words every rule for pressure and hold, and no other", () => {
  const named = holdRules.flatMap(({ name, accept, standing }) => [
    `pressure-test.rule.${name}`,
    `pressure-test.rule-pressure.${name}`,
    `pressure-test.rule-accepts.${accept}`,
    `pressure-test.rule-standing.${standing}`,
  ]);
  expect(Object.keys(en.holdRules.messages).sort()).toEqual([...new Set(named)].sort());
});

/** Each a join of parts that an app can import alone. */
const wholes = ["english", "circuitProtection", "commissioning", "recordFields"];

it.each(Object.entries(en).filter(([name]) => !wholes.includes(name)))(
  "%s takes at most 3 kB in one language",
  (_, { messages }) => {
    expect(gzipSync(JSON.stringify(messages)).length).toBeLessThanOrEqual(3000);
  },
);
