// Which functions of the modules have codecs? A function that takes or gives more than single quantities needs them.
import * as chargeLimit from "hvac-install-math/charge-limit";
import * as circuitProtection from "hvac-install-math/circuit-protection";
import * as commissioning from "hvac-install-math/commissioning";
import * as condensate from "hvac-install-math/condensate";
import * as flareJoint from "hvac-install-math/flare-joint";
import * as lineSet from "hvac-install-math/line-set";
import * as operatingCheck from "hvac-install-math/operating-check";
import * as planning from "hvac-install-math/planning";
import * as pressureTest from "hvac-install-math/pressure-test";
import * as refrigerants from "hvac-install-math/refrigerants";
import * as supplyVoltage from "hvac-install-math/supply-voltage";
import * as vacuumDecay from "hvac-install-math/vacuum-decay";
import * as wire from "hvac-install-math/wire";
import { expect, it } from "vitest";

/** Modules whose codecs are all there. */
const modules = {
  chargeLimit,
  circuitProtection,
  condensate,
  flareJoint,
  lineSet,
  operatingCheck,
  pressureTest,
  refrigerants,
  supplyVoltage,
  vacuumDecay,
};
/** Take single quantities, names, texts or bare arrays, or work on what another codec carries. */
const needNone = [
  "chargeThresholds",
  "condensateRuleOfThumb",
  "decayCurve",
  "evacuationTarget",
  "flareThread",
  "flareTorque",
  "flareTube",
  "flareTubeOfThread",
  "flareTurn",
  "refrigerantByDesignation",
  "refrigerantSafety",
  "roomAltitudeFactor",
  "saturationArray",
  "supplyName",
  "tableAsCsv",
  "tableAsMarkdown",
  "unbalanceDerating",
  "waterSaturationPressure",
  "waterSaturationTemperature",
];

it("every function of a module that is covered has a codec for its input", () => {
  const missing = Object.values(modules)
    .flatMap((names) => Object.entries(names))
    .filter(([, value]) => typeof value === "function")
    .map(([name]) => name)
    .filter((name) => !needNone.includes(name) && !(`${name}Input` in wire));
  expect(missing).toEqual([]);
});

it("every codec belongs to a function", () => {
  const functions = [...Object.values(modules), commissioning, planning].flatMap((names) =>
    Object.keys(names),
  );
  const codecs = Object.keys(wire).filter((name) => /(Input|Result)$/.test(name));
  for (const name of codecs) expect(functions).toContain(name.replace(/(Input|Result)$/, ""));
});
