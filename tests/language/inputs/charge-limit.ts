// What else it takes to hear all that the module says.
import type * as chargeLimit from "hvac-install-math/charge-limit";
import { g, kg, kgPerM3, m, m2, m3 } from "hvac-install-math/quantity";
import { R32, R410A, R454B } from "hvac-install-math/refrigerants";
import type { Inputs } from "../../faults/catalogue.ts";

const floor = { refrigerant: R32, place: "floor", charge: kg(2) } as const;
const instruments = { charge: { accuracy: g(5) }, size: { accuracy: m2(1) } };

export const inputs: Partial<Inputs<typeof chargeLimit>> = {
  assessConcentration: [
    [{ refrigerant: R410A, charge: kg(15), volume: m3(30) }],
    [{ refrigerant: R32, charge: kg(1), volume: m3(30) }],
    [
      {
        refrigerant: R410A,
        charge: kg(12.5),
        volume: m3(30),
        instruments: { size: { accuracy: m3(1) } },
      },
    ],
    [{ refrigerant: R410A, charge: kg(1), volume: m3(30), concentrationLimit: kgPerM3(0.3) }],
  ],
  assessRoomCharge: [
    [{ ...floor, floorArea: m2(30) }],
    [{ ...floor, floorArea: m2(34.3), instruments }],
    [{ ...floor, charge: kg(100), floorArea: m2(5000) }],
    [{ refrigerant: R454B, installationHeight: m(3), charge: kg(1), floorArea: m2(20) }],
  ],
};
