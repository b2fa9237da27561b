import * as charge from "hvac-install-math/charge-limit";
import * as q from "hvac-install-math/quantity";
import * as refrigerants from "hvac-install-math/refrigerants";
import type { Evaluators } from "./check.ts";

const named = (name: string) =>
  (refrigerants as unknown as Record<string, refrigerants.Refrigerant>)[
    name
  ] as refrigerants.Refrigerant;
const densities = { gPerM3: q.gPerM3, lbPer1000Cuft: q.lbPer1000Cuft };
interface Room {
  refrigerant: string;
  lfl: number;
  place: charge.IndoorUnitPlace;
}
type Limit = { refrigerant: string; index?: number; unit: keyof typeof densities };
const room = ({ refrigerant, lfl, place }: Room) => ({
  refrigerant: named(refrigerant),
  lowerFlammabilityLimit: q.kgPerM3(lfl),
  place,
});
const limit = ({ refrigerant, index = 0, unit }: Limit) =>
  charge
    .refrigerantSafety(named(refrigerant))
    .concentrationLimits[index]?.value.in(densities[unit]) ?? "no such limit";

export const evaluators: Evaluators = {
  roomCharge: (i: Room & { m2: number; edition: "2018" | "before-2018" }) =>
    charge
      .roomChargeLimit({ ...room(i), floorArea: q.m2(i.m2), edition: i.edition })
      .byFormula.in(q.kg),
  floorArea: (i: Room & { kg: number }) =>
    charge.minimumFloorArea({ ...room(i), charge: q.kg(i.kg) }).byFormula.in(q.m2),
  threshold: ({ lfl, which }: { lfl: number; which: keyof charge.ChargeThresholds }) =>
    charge.chargeThresholds(q.kgPerM3(lfl))[which].in(q.kg),
  height: ({ place }: { place: charge.IndoorUnitPlace }) =>
    charge
      .roomChargeLimit({ refrigerant: refrigerants.R32, place, floorArea: q.m2(20) })
      .releaseHeight.in(q.m),
  crossover: ({ m2 }: { m2: number }) =>
    // High up, so that the formula and not the unrestricted charge decides.
    charge.roomChargeLimit({
      refrigerant: refrigerants.R32,
      installationHeight: q.m(3),
      floorArea: q.m2(m2),
    }).decidedBy,
  blend: ({ refrigerant, report }: { refrigerant: string; report: charge.WarmingReport }) =>
    charge.blendWarmingPotential({ composition: named(refrigerant).composition, report }),
  concentration: ({ refrigerant, m3 }: { refrigerant: string; m3: number }) =>
    charge
      .concentrationChargeLimit({ refrigerant: named(refrigerant), volume: q.m3(m3) })
      .value.in(q.kg),
  rcl: limit,
  rclOther: limit,
  rclPpm: ({ refrigerant }: { refrigerant: string }) =>
    charge.refrigerantSafety(named(refrigerant)).concentrationLimitByVolume.in(q.ppm),
  lfl: ({ refrigerant, index }: { refrigerant: string; index: number }) =>
    charge
      .refrigerantSafety(named(refrigerant))
      .lowerFlammabilityLimits[index]?.value.in(q.kgPerM3) ?? "no such limit",
  massConcentration: ({ ppm, molarMass }: { ppm: number; molarMass: number }) =>
    charge
      .massConcentration({
        volumeFraction: q.ppm(ppm),
        molarMass,
        temperature: q.degC(25),
        atmosphere: q.standardAtmosphere,
      })
      .in(q.gPerM3),
};
