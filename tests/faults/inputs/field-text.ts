import type * as fieldText from "hvac-install-math/field-text";
import { psig } from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

export const inputs: Inputs<typeof fieldText> = {
  isFieldTextError: [[new Error("invented")]],
  parseQuantity: [
    ["118 psig", { kind: "gaugePressure", defaultUnit: psig, locale: "en" }] as never,
    ["12 ft 6 in + 9 ft", { kind: "length" }] as never,
  ],
  typedUnits: [["gaugePressure"], ["mass", "fr"]],
};
