import type * as display from "hvac-install-math/display";
import { english } from "hvac-install-math/language/en";
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
  shownUnit: [
    [psig(118.4), { system: "SI", units: { gaugePressure: psig } }] as never,
    [ft(12.5), { system: "inch-pound" }] as never,
  ],
  unitName: [[psig, english]] as never,
  usualUnit: [["gaugePressure", "SI"]],
};
