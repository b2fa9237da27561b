import type * as flareJoint from "hvac-install-math/flare-joint";
import { degreeAngle, inch, mm, newtonMeter, percent } from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

const confidence = 0.95;
const protractor = { accuracy: degreeAngle(0.2), resolution: degreeAngle(0.1) };
const lengths = { accuracy: mm(0.02), resolution: mm(0.01), repeatability: mm(0.01) };

export const inputs: Inputs<typeof flareJoint> = {
  assessFlareCone: [[{ seatAngle: degreeAngle(45), protractor, confidence }]],
  assessFlareDiameter: [
    [
      {
        tube: "3/8",
        refrigerant: "R410A",
        diameter: mm(13),
        manual: { low: mm(12.8), high: mm(13.2) },
        caliper: lengths,
        confidence,
      },
    ],
  ],
  assessFlareTorque: [
    [
      {
        tube: "3/8",
        torque: newtonMeter(37),
        manual: { low: newtonMeter(33), high: newtonMeter(42) },
        wrench: { relativeAccuracy: percent(4), resolution: newtonMeter(0.1) },
        confidence,
      },
    ],
    [{ tube: "3/8", torque: newtonMeter(37), wrench: { accuracy: newtonMeter(1) } }],
  ],
  assessFlareTurn: [[{ tube: "1/4", turn: degreeAngle(75), protractor, confidence }]],
  assessFlareWall: [
    [
      {
        tube: "3/8",
        refrigerant: "R410A",
        wall: inch(0.036),
        manualMinimum: mm(0.8),
        micrometer: lengths,
        confidence,
      },
    ],
  ],
  flareDiameterLimits: [[{ tube: "3/8", refrigerant: "R32" }]],
  flareNutSize: [[{ tube: "1/2", refrigerant: "R32" }]],
  flareThread: [["3/8"]],
  flareTorque: [["5/8"]],
  flareTube: [[mm(9.52)]],
  flareTubeOfThread: [["1/2-20 UNF"]],
  flareTurn: [["1/2"]],
  servicePortAdapter: [[{ port: "5/16", hose: "1/4" }]],
  usualServicePort: [[{ refrigerant: "R410A", equipment: "mini-split" }]],
};
