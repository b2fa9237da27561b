import * as fieldText from "hvac-install-math/field-text";
import { expect, it } from "vitest";

it("offers three functions and nothing of its insides", () => {
  expect(Object.keys(fieldText).sort()).toEqual([
    "isFieldTextError",
    "parseQuantity",
    "typedUnits",
  ]);
});
