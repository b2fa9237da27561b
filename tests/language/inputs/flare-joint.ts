// What else it takes to hear all that the module says.
import type * as flareJoint from "hvac-install-math/flare-joint";
import { degreeAngle, ftLb, mm, newtonMeter } from "hvac-install-math/quantity";
import type { Inputs } from "../../faults/catalogue.ts";

const flare = { tube: "3/8", refrigerant: "R410A" } as const;
const torque = (n: number) => ({ tube: "5/8", torque: newtonMeter(n) }) as const;
const range = (low: number, high: number) => ({ low: newtonMeter(low), high: newtonMeter(high) });

export const inputs: Partial<Inputs<typeof flareJoint>> = {
  assessFlareCone: [[{ seatAngle: degreeAngle(37) }], [{ seatAngle: degreeAngle(50) }]],
  assessFlareDiameter: [
    [{ ...flare, diameter: mm(12) }],
    [{ ...flare, diameter: mm(14) }],
    [{ ...flare, diameter: mm(13), manual: { low: mm(12), high: mm(14) } }],
    [{ ...flare, refrigerant: "R454B", diameter: mm(13) }],
  ],
  assessFlareTorque: [
    [torque(50)],
    [torque(90)],
    [{ tube: "5/8", torque: ftLb(72) }],
    [torque(80)],
    [{ ...torque(75), wrench: { accuracy: newtonMeter(3) } }],
    [{ tube: "5/16", torque: newtonMeter(36) }],
    [{ ...torque(80), manual: range(20, 80) }],
    [{ ...torque(80), manual: range(100, 110) }],
    [{ tube: "5/8", torque: ftLb(40), manual: { low: ftLb(34), high: ftLb(37) } }],
    [{ ...torque(83), manual: range(75, 85) }],
    [{ ...torque(83), manual: range(90, 95), manualReadAgain: true }],
    [{ ...torque(68), wrench: { accuracy: newtonMeter(3) } }],
  ],
  assessFlareTurn: [
    [{ tube: "1/4", turn: degreeAngle(20) }],
    [{ tube: "1/4", turn: degreeAngle(200) }],
  ],
  assessFlareWall: [
    [{ ...flare, wall: mm(0.5) }],
    [{ ...flare, wall: mm(0.75) }],
    [{ ...flare, wall: mm(0.9), manualMinimum: mm(0.3) }],
    [{ ...flare, wall: mm(0.8), micrometer: { accuracy: mm(0.01) } }],
    [{ ...flare, wall: mm(0.805), micrometer: { accuracy: mm(0.01) } }],
  ],
  flareDiameterLimits: [[{ tube: "5/16", refrigerant: "R32" }]],
  servicePortAdapter: [[{ port: "5/16", hose: "5/16" }]],
};
