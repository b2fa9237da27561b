import * as fieldText from "hvac-install-math/field-text";
import { expect, it } from "vitest";

it("offers four functions and nothing of its insides", () => {
  expect(Object.keys(fieldText).sort()).toEqual([
    "formatQuantity",
    "isFieldTextError",
    "parseQuantity",
    "typedUnits",
  ]);
});
