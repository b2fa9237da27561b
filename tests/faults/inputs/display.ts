import type * as display from "hvac-install-math/display";
import { ft, newtonMeter, psi, psig } from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

export const inputs: Inputs<typeof display> = {
  figureText: [
    [{ system: "inch-pound" }],
    [{ system: "SI", units: { torque: newtonMeter }, locale: "de" }],
  ],
  formatQuantity: [
    [psig(118.4), { system: "inch-pound", locale: "en", resolution: psi(1), unit: psig }] as never,
    [ft(12.5), { system: "SI" }] as never,
  ],
  usualUnit: [["gaugePressure", "SI"]],
};
