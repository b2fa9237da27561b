// Texts that are refused where a field takes one number with its unit.
import { psi, psig } from "hvac-install-math/quantity";
import type * as readQuantity from "hvac-install-math/read-quantity";
import type { Inputs } from "../../faults/catalogue.ts";

export const inputs: Pick<Inputs<typeof readQuantity>, "readQuantity"> = {
  readQuantity: [
    ["118 psig + 2", { kind: "gaugePressure", units: [psig] }],
    ["118 psi", { kind: "gaugePressure", units: [psig] }],
    ["118 psia", { kind: "gaugePressure", units: [psig] }],
    ["118 psi", { kind: "pressureDifference", units: [psi] }],
  ] as never,
};
