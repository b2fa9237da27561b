import { nec2023 } from "hvac-install-math/circuit-protection";
import type * as planning from "hvac-install-math/planning";
import { ampere, degF, ft, psig } from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

const small = {
  version: 2,
  site: { altitude: ft(700) },
  equipment: { refrigerant: "R-410A", lowestMarkedPressure: psig(600) },
  runs: [{ tubing: { way: ft(21), lift: ft(9), outdoorUnit: "below" } }],
  plan: { fillTemperature: degF(78), laterTemperature: degF(64), warmest: degF(110) },
  power: { circuits: [{ plate: { minimumCircuitAmpacity: ampere(15) } }] },
} as const;

export const inputs: Inputs<typeof planning> = {
  planInstallation: [[small as never, { rules: [nec2023] }]],
};
