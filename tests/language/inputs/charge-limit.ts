// What else it takes to hear all that the module says.
import type * as chargeLimit from "hvac-install-math/charge-limit";
import { g, kg, kgPerM3, m, m2, m3, m3PerHour } from "hvac-install-math/quantity";
import {
  R32,
  R290,
  R410A,
  R454B,
  R600a,
  R717,
  R1234yf,
  R1234zeE,
} from "hvac-install-math/refrigerants";
import type { Inputs } from "../../faults/catalogue.ts";

const floor = { refrigerant: R32, place: "floor", charge: kg(2), floorArea: m2(20) } as const;
const instruments = { charge: { accuracy: g(5) }, size: { accuracy: m2(1) } };
const opened = {
  kind: "connected-rooms",
  adjoiningFloorArea: m2(30),
  lowerOpening: m2(0.02),
  upperOpening: m2(0.02),
} as const;
const tight = { kind: "enhanced-tightness", measure: "alarm", ceilingHeight: m(2.2) } as const;
const fan = { kind: "circulation", totalFloorArea: m2(60), airflow: m3PerHour(400) } as const;
const open = { ...opened, lowerOpening: m2(0.1), upperOpening: m2(0.1) };
const outdoors = { refrigerant: R290, surroundings: "open-air" } as const;
const room = { name: "study", place: "floor", floorArea: m2(20) } as const;

export const inputs: Partial<Inputs<typeof chargeLimit>> = {
  assessConcentration: [
    [{ refrigerant: R410A, charge: kg(15), volume: m3(30) }],
    [{ refrigerant: R32, charge: kg(1), volume: m3(30) }],
    [{ refrigerant: R717, charge: kg(1), volume: m3(30) }],
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
  assessOutdoorUnit: [
    [outdoors],
    [{ ...outdoors, protectionZone: m(1) }],
    [{ ...outdoors, protectionZone: m(1), distances: [m(0.5)] }],
    [{ ...outdoors, protectionZone: m(1), distances: [m(1)], tape: { accuracy: m(0.1) } }],
    [{ ...outdoors, protectionZone: m(1), distances: [] }],
    [{ ...outdoors, surroundings: "closed-in" }],
  ],
  assessRoomCharge: [
    [{ ...floor, installationHeight: m(2) }],
    [floor],
    [{ ...floor, charge: kg(1.5) }],
    [{ ...floor, floorArea: m2(34.3), instruments }],
    [{ ...floor, charge: kg(17), floorArea: m2(5000) }],
    [{ ...floor, charge: kg(100), floorArea: m2(5000) }],
    [{ ...floor, edition: "iec-60335-2-40-2013" }],
    [{ ...floor, edition: "iec-60335-2-40-2022", protection: { ...open, placedAsRequired: true } }],
    [{ ...floor, edition: "ul-60335-2-40-2019", protection: { ...tight, declared: true } }],
    [{ ...floor, edition: "ul-60335-2-40-2022", protection: { ...fan, detector: true } }],
    [{ ...floor, edition: "en-378-1", altitude: m(1600) }],
    [{ ...floor, protection: { ...opened, placedAsRequired: true } }],
    [{ ...floor, protection: open }],
    [{ ...floor, protection: tight }],
    [{ ...floor, protection: fan }],
    [{ ...floor, protection: { ...fan, airflow: m3PerHour(190), detector: true } }],
    [{ refrigerant: R454B, installationHeight: m(3), charge: kg(1), floorArea: m2(20) }],
    [{ refrigerant: R1234zeE, place: "wall", charge: kg(1), floorArea: m2(20) }],
    [{ refrigerant: R600a, place: "wall", charge: kg(0.1), floorArea: m2(20) }],
  ],
  assessRooms: [
    [{ refrigerant: R32, charge: kg(2), rooms: [room] }],
    [{ refrigerant: R32, charge: kg(1), rooms: [room] }],
    [{ refrigerant: R32, charge: kg(2), rooms: [{ ...room, floorArea: m2(34.3), instruments }] }],
  ],
  blendWarmingPotential: [
    [{ composition: [{ designation: "R-32", massPercent: 50 }], basis: "ipcc-ar4" }],
    [{ composition: R454B.composition, basis: "ipcc-ar4" }],
  ],
  minimumFloorArea: [[{ ...floor, charge: kg(20) }], [{ ...floor, refrigerant: R410A }]],
  refrigerantSafety: [[{ designation: "R-999", safetyClass: "A1" }]],
  ventilationLimits: [
    [{ refrigerant: R1234yf, charge: kg(9), volume: m3(50), lowestUndergroundFloor: true }],
  ],
};
