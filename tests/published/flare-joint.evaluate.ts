import * as flare from "hvac-install-math/flare-joint";
import { degreeAngle, ftLb, mm, newtonMeter } from "hvac-install-math/quantity";
import type { Evaluators } from "./check.ts";

type Tube = { tube: flare.FlareTube };
type Limit = { limit: "low" | "high" };
type Joint = Tube & { refrigerant: flare.FlareRefrigerant };
const torqueUnits = { newtonMeter, ftLb };

export const evaluators: Evaluators = {
  torque: (i: Tube & Limit & { source: string; unit: keyof typeof torqueUnits }) =>
    flare
      .flareTorque(i.tube)
      .windows.find(({ source }) => source === i.source)
      ?.[i.limit].in(torqueUnits[i.unit]) ?? "no such window",
  torqueFromNcm: ({ value }: { value: number }) => newtonMeter(value / 100).in(ftLb),
  overlap: (i: Tube & Limit) => flare.flareTorque(i.tube).overlap[i.limit].in(newtonMeter),
  diameter: (i: Joint & Limit) => flare.flareDiameterLimits(i)[i.limit].in(mm),
  diameterVerdict: (i: Joint & { mm: number }) =>
    flare.assessFlareDiameter({ ...i, diameter: mm(i.mm) }).outcome,
  nut: (i: Joint) => flare.flareNutSize(i).in(mm),
  turn: (i: Tube & Limit) => flare.flareTurn(i.tube)[i.limit].in(degreeAngle),
  thread: (i: Tube) => flare.flareThread(i.tube).name,
  port: (i: Parameters<typeof flare.usualServicePort>[0]) => flare.usualServicePort(i),
  wall: (i: Tube & { mm: number }) =>
    flare.assessFlareWall({ tube: i.tube, refrigerant: "R32", wall: mm(i.mm) }).outcome,
  cone: ({ degrees }: { degrees: number }) =>
    flare.assessFlareCone({ seatAngle: degreeAngle(degrees) }).outcome,
};
