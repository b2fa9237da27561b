import { ft, inch, psig } from "hvac-install-math/quantity";
import type * as readQuantity from "hvac-install-math/read-quantity";
import type { Inputs } from "../catalogue.ts";

export const inputs: Inputs<typeof readQuantity> = {
  isFieldTextError: [[new Error("invented")]],
  readQuantity: [
    ["118 psig", { kind: "gaugePressure", units: [psig], locale: "en" }] as never,
    ["12 ft 6 in", { kind: "length", units: [ft, inch] }] as never,
  ],
};
