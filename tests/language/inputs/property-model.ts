// What else it takes to hear all that the module says: states that a fluid does not have.
import type * as propertyModel from "hvac-install-math/property-model";
import { R32, R1234yf, R1234zeE, water } from "hvac-install-math/property-model";
import { kelvin, kgPerM3, kPaa, percent } from "hvac-install-math/quantity";
import type { Inputs } from "../../faults/catalogue.ts";

export const inputs: Partial<Inputs<typeof propertyModel>> = {
  bubblePoint: [[R32, { pressure: kPaa(5790) }]],
  mixture: [
    [
      {
        components: [
          { fluid: R32, massFraction: percent(50) },
          { fluid: R1234yf, massFraction: percent(30) },
        ],
      },
    ],
    [
      {
        components: [
          { fluid: R1234zeE, massFraction: percent(50) },
          { fluid: water, massFraction: percent(50) },
        ],
      },
    ],
  ],
  stateAt: [[R32, { temperature: kelvin(250), density: kgPerM3(500) }]],
};
