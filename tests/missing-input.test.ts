// A JavaScript caller that forgets the input, or passes an option that cannot be used, gets a typed error.
import * as chargeLimit from "hvac-install-math/charge-limit";
import * as condensate from "hvac-install-math/condensate";
import * as flareJoint from "hvac-install-math/flare-joint";
import * as lineSet from "hvac-install-math/line-set";
import * as operatingCheck from "hvac-install-math/operating-check";
import {
  gPerM,
  isInvalidInputError,
  kg,
  m,
  newtonMeter,
  percent,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

type AnyFunction = (input: unknown) => unknown;
const modules = { chargeLimit, condensate, flareJoint, lineSet, operatingCheck };
const functions = Object.entries(modules).flatMap(([module, names]) =>
  Object.entries(names)
    .filter(([, value]) => typeof value === "function")
    .map(([name, value]) => [`${module}.${name}`, value as unknown as AnyFunction] as const),
);
/** Works on nothing by design: every question that it asks is left open. */
const needsNothing = ["condensate.drainCautions"];

describe("forgetting the input", () => {
  it.each(functions)("%s names what is missing", (name, act) => {
    for (const wrong of [undefined, null, 7, "text", []]) {
      if (wrong === undefined && needsNothing.includes(name)) continue;
      let thrown: unknown;
      try {
        act(wrong);
      } catch (error) {
        thrown = error;
      }
      expect(isInvalidInputError(thrown), `${JSON.stringify(wrong)}: ${thrown}`).toBe(true);
    }
  });
});

const ok = {
  drainSlope: { reading: { slope: percent(2) } },
  lineRun: { length: m(10), lift: m(3), outdoorUnit: "below", limits: { maximumLength: m(25) } },
  recovery: { chargeToKeep: kg(0.2), chargeInSystem: kg(1) },
  charge: { length: m(10), preChargedLength: m(7.5), rate: gPerM(15), shortLineRule: "add-only" },
  torque: { tube: "1/4", torque: newtonMeter(16), refrigerant: "R410A" },
  blend: { report: "ar4" },
};

describe("an option that is there but cannot be used is refused, not overlooked:", () => {
  it.each<[string, (value: unknown) => unknown]>([
    [
      "required of a drain slope",
      (required) => condensate.assessDrainSlope({ ...ok.drainSlope, required } as never),
    ],
    [
      "route of a drain slope",
      (route) => condensate.assessDrainSlope({ ...ok.drainSlope, route } as never),
    ],
    ["route of a drain", (route) => condensate.drainCautions(route as never)],
    [
      "oil traps of a run",
      (oilTraps) =>
        lineSet.assessLineRun({
          ...ok.lineRun,
          limits: { maximumLength: m(25), oilTraps },
        } as never),
    ],
    [
      "cylinder of a recovery",
      (cylinder) => lineSet.assessRecovery({ ...ok.recovery, cylinder } as never),
    ],
    [
      "longest run of a charge",
      (maximumLength) => lineSet.additionalCharge({ ...ok.charge, maximumLength } as never),
    ],
    [
      "factory charge",
      (factoryCharge) => lineSet.additionalCharge({ ...ok.charge, factoryCharge } as never),
    ],
    ["torque wrench", (wrench) => flareJoint.assessFlareTorque({ ...ok.torque, wrench } as never)],
    [
      "manual's torque",
      (manual) => flareJoint.assessFlareTorque({ ...ok.torque, manual } as never),
    ],
    [
      "composition of a blend",
      (composition) => chargeLimit.blendWarmingPotential({ ...ok.blend, composition } as never),
    ],
  ])("%s", (_, act) => {
    for (const wrong of [null, 0, Number.NaN, "", 7, [null]]) {
      let thrown: unknown;
      try {
        act(wrong);
      } catch (error) {
        thrown = error;
      }
      expect(isInvalidInputError(thrown), `${JSON.stringify(wrong)}: ${thrown}`).toBe(true);
    }
  });

  it("while the same calls without it answer", () => {
    expect(condensate.assessDrainSlope(ok.drainSlope as never).outcome).toBe("pass");
    expect(lineSet.assessLineRun(ok.lineRun as never).equivalentLength?.in(m)).toBe(10);
    expect(lineSet.assessRecovery(ok.recovery as never).toRecover?.in(kg)).toBe(0.8);
    expect(lineSet.additionalCharge(ok.charge as never).outcome).toBe("pass");
    expect(flareJoint.assessFlareTorque(ok.torque as never).outcome).toBe("pass");
  });
});
