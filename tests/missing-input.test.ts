// A JavaScript caller that forgets the whole input gets a typed error, not a TypeError.
import * as chargeLimit from "hvac-install-math/charge-limit";
import * as condensate from "hvac-install-math/condensate";
import * as flareJoint from "hvac-install-math/flare-joint";
import * as lineSet from "hvac-install-math/line-set";
import * as operatingCheck from "hvac-install-math/operating-check";
import { isInvalidInputError } from "hvac-install-math/quantity";
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

describe("a part of the input that is nothing", () => {
  const refused = (act: () => unknown) => {
    try {
      act();
    } catch (error) {
      return isInvalidInputError(error);
    }
    return false;
  };
  it.each([null, undefined, 7, [null]])("a blend of %s is refused", (composition) => {
    expect(
      refused(() => chargeLimit.blendWarmingPotential({ composition, report: "ar4" } as never)),
    ).toBe(true);
  });
});
