import type * as propertyModel from "hvac-install-math/property-model";
import { binaryPairs, mixture, R32, R407C, R1234yf, water } from "hvac-install-math/property-model";
import { degC, kelvin, kgPerM3, kPaa, MPaa, percent } from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

const components = [
  { fluid: R32, massFraction: percent(68.9) },
  { fluid: R1234yf, massFraction: percent(31.1) },
];
const blend = mixture({ components });

export const inputs: Inputs<typeof propertyModel> = {
  bubblePoint: [
    [R32, { temperature: kelvin(300) }],
    [R32, { pressure: kPaa(1500) }],
    [R407C, { pressure: kPaa(1500) }],
    [blend, { temperature: kelvin(300) }],
  ],
  dewPoint: [
    [R32, { temperature: kelvin(300) }],
    [R407C, { pressure: kPaa(1500) }],
    [blend, { pressure: kPaa(1500) }],
  ],
  density: [
    [water, { pressure: kPaa(101.325), temperature: degC(20), phase: "liquid" }],
    [R32, { pressure: MPaa(1), temperature: degC(60), phase: "vapor" }],
    [blend, { pressure: MPaa(1), temperature: degC(60), phase: "vapor" }],
  ],
  mixture: [[{ id: "invented", components, pairs: binaryPairs.slice(0, 1) }], [{ components }]],
  saturation: [
    [R32, kelvin(323.15)],
    [R407C, kelvin(300)],
    [blend, kelvin(300)],
  ],
  stateAt: [
    [R32, { temperature: degC(60), density: kgPerM3(22) }],
    [blend, { temperature: degC(60), density: kgPerM3(22) }],
  ],
};
