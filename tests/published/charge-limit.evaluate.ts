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
  place?: charge.IndoorUnitPlace;
  edition?: charge.RoomEdition;
  cap?: charge.SmallRoomCap;
}
type Limit = { refrigerant: string; index?: number; unit: keyof typeof densities };
const room = ({ refrigerant, lfl, place = "floor", edition, cap }: Room) => ({
  refrigerant: named(refrigerant),
  lowerFlammabilityLimit: q.kgPerM3(lfl),
  place,
  ...(edition && { edition }),
  ...(cap && { smallRoomCap: cap }),
});
const protections = {
  "tightness-none": { kind: "enhanced-tightness", measure: "none" },
  "tightness-alarm": { kind: "enhanced-tightness", measure: "alarm" },
} as const;
const limit = ({ refrigerant, index = 0, unit }: Limit) =>
  charge
    .refrigerantSafety(named(refrigerant))
    .concentrationLimits[index]?.value.in(densities[unit]) ?? "no such limit";

export const evaluators: Evaluators = {
  roomCharge: (i: Room & { m2: number }) =>
    charge.roomChargeLimit({ ...room(i), floorArea: q.m2(i.m2) }).byFormula.in(q.kg),
  protected: (i: Room & { kg: number; m2: number; protection: keyof typeof protections }) =>
    charge
      .assessRoomCharge({
        ...room(i),
        charge: q.kg(i.kg),
        floorArea: q.m2(i.m2),
        protection: { ...protections[i.protection], declared: true, ceilingHeight: q.m(2.2) },
      })
      .limit.byFormula.in(q.kg),
  opening: (i: Room & { kg: number; m2: number }) =>
    charge
      .ventilationOpening({ ...room(i), charge: q.kg(i.kg), floorArea: q.m2(i.m2) })
      .lower.in(q.m2),
  dwelling: (i: { lfl: number; sqft: number }) =>
    charge
      .dwellingChargeEstimate({
        lowerFlammabilityLimit: q.kgPerM3(i.lfl),
        floorArea: q.sqft(i.sqft),
      })
      .estimate.in(q.lb),
  altitude: (i: { m: number }) => charge.roomAltitudeFactor(q.m(i.m)),
  leakMonths: (i: {
    refrigerant: string;
    kg: number;
    detection?: boolean;
    region?: "EU" | "GB";
    sealed?: boolean;
  }) =>
    charge.leakCheckInterval({
      refrigerant: named(i.refrigerant),
      charge: q.kg(i.kg),
      ...(i.detection !== undefined && { leakDetection: i.detection }),
      ...(i.region && { region: i.region }),
      ...(i.sealed !== undefined && { hermeticallySealed: i.sealed }),
    }).months ?? 0,
  barred: (i: {
    region: charge.LawAnswer["region"];
    equipment: charge.RuledEquipment;
    refrigerant: string;
    kg: number;
    kW?: number;
    date: string;
    made?: string;
  }) =>
    charge
      .marketRules({
        region: i.region,
        equipment: i.equipment,
        refrigerant: named(i.refrigerant),
        charge: q.kg(i.kg),
        date: i.date,
        ...(i.kW !== undefined && { capacity: q.kW(i.kW) }),
        ...(i.made !== undefined && { componentsMade: i.made }),
      })
      .rules.some(({ barred }) => barred),
  floorArea: (i: Room & { kg: number }) =>
    charge.minimumFloorArea({ ...room(i), charge: q.kg(i.kg) }).byFormula.in(q.m2),
  threshold: (i: {
    lfl: number;
    which: "m1" | "m2" | "m3";
    class: charge.FlammableClass;
    edition?: charge.RoomEdition;
  }) =>
    charge
      .chargeThresholds({
        lowerFlammabilityLimit: q.kgPerM3(i.lfl),
        safetyClass: i.class,
        ...(i.edition && { edition: i.edition }),
      })
      [i.which].in(q.kg),
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
      smallRoomCap: "release-height",
    }).decidedBy,
  blend: ({ refrigerant, basis }: { refrigerant: string; basis: refrigerants.WarmingBasis }) =>
    charge.blendWarmingPotential({ composition: named(refrigerant).composition, basis }).value,
  mixture: (i: { parts: Record<string, number>; basis: refrigerants.WarmingBasis }) =>
    charge.blendWarmingPotential({
      composition: Object.entries(i.parts).map(([designation, massPercent]) => ({
        designation,
        massPercent,
      })),
      basis: i.basis,
    }).value,
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
