// What else it takes to hear all that the module says: a gauge below a vacuum, a pressure that is no weather's.
import type * as quantity from "hvac-install-math/quantity";
import { ft, psia, psig, standardAtmosphere } from "hvac-install-math/quantity";
import type { Inputs } from "../../faults/catalogue.ts";

export const inputs: Partial<Inputs<typeof quantity>> = {
  toAbsolute: [[psig(-20), standardAtmosphere]],
  stationPressure: [
    [{ seaLevelPressure: psia(12), altitude: ft(5280), reduction: "altimeter-setting" }],
  ],
};
