// Where each argument ends: the last value that is taken, the first that is refused, by name.
import * as charge from "hvac-install-math/charge-limit";
import {
  degC,
  fraction,
  kelvin,
  kg,
  kgPerM3,
  kW,
  m,
  m2,
  m3,
  m3PerHour,
  pascalAbsolute,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { R32, R290, R410A } from "hvac-install-math/refrigerants";
import { expect, test } from "vitest";

const unit = { refrigerant: R32, place: "floor" } as const;
const limit = (more: object) => () =>
  charge.roomChargeLimit({ ...unit, floorArea: m2(20), ...more });
const high = (installationHeight: ReturnType<typeof m>) =>
  limit({ place: undefined, installationHeight });
const smallest = (more: object) => () =>
  charge.minimumFloorArea({ ...unit, charge: kg(2), ...more });
const room = (more: object) => () =>
  charge.assessRoomCharge({ ...unit, charge: kg(2), floorArea: m2(20), ...more });
const joined = (more: object) =>
  room({
    protection: {
      kind: "connected-rooms",
      adjoiningFloorArea: m2(20),
      lowerOpening: m2(0.1),
      upperOpening: m2(0.1),
      placedAsRequired: true,
      ...more,
    },
  });
const tight = (more: object) =>
  room({
    protection: {
      kind: "enhanced-tightness",
      ceilingHeight: m(2.4),
      measure: "none",
      declared: true,
      ...more,
    },
  });
const fan = (more: object) =>
  room({
    protection: {
      kind: "circulation",
      totalFloorArea: m2(60),
      airflow: m3PerHour(300),
      detector: true,
      ...more,
    },
  });
const opening = (more: object) => () =>
  charge.ventilationOpening({ ...unit, floorArea: m2(20), charge: kg(2), ...more });
const outdoors = (more: object) => () =>
  charge.assessOutdoorUnit({
    refrigerant: R290,
    surroundings: "open-air",
    protectionZone: m(1),
    distances: [m(2)],
    ...more,
  });
const air = (more: object) => () =>
  charge.concentrationChargeLimit({ refrigerant: R410A, volume: m3(30), ...more });
const space = (more: object) => () =>
  charge.minimumRoomVolume({ refrigerant: R410A, charge: kg(1), ...more });
const gas = (more: object) => () =>
  charge.massConcentration({
    volumeFraction: fraction(0.01),
    molarMass: 52,
    temperature: degC(25),
    atmosphere: standardAtmosphere,
    ...more,
  });
const dispersal = (more: object) => () =>
  charge.dispersalChargeLimit({
    refrigerant: R410A,
    volume: m3(50),
    occupancy: "other",
    ...more,
  });
const dwelling = (more: object) => () =>
  charge.dwellingChargeEstimate({
    lowerFlammabilityLimit: kgPerM3(0.3),
    floorArea: m2(20),
    ...more,
  });
const measures = (more: object) => () =>
  charge.ventilationLimits({
    refrigerant: R32,
    charge: kg(1),
    volume: m3(50),
    lowestUndergroundFloor: false,
    ...more,
  });
const leak = (more: object) => () =>
  charge.leakCheckInterval({ refrigerant: R32, charge: kg(1), ...more });
const market = (more: object) => () =>
  charge.marketRules({
    region: "EU",
    equipment: "single-split",
    refrigerant: R32,
    charge: kg(1),
    date: "2025-01-01",
    ...more,
  });
const parts = (...massPercent: number[]) => ({
  refrigerant: {
    composition: massPercent.map((share) => ({ designation: "R-32", massPercent: share })),
  },
});
const rows = [
  { area: m2(4), charge: kg(0.68) },
  { area: m2(10), charge: kg(1.08) },
];
const fromArea = (more: object) => () =>
  charge.chargeFromRoomTable({ rows, floorArea: m2(5), ...more });
const fromCharge = (more: object) => () =>
  charge.areaFromRoomTable({ rows, charge: kg(1), ...more });
const served = (more: object) => () =>
  charge.assessRooms({
    refrigerant: R32,
    charge: kg(1),
    rooms: [{ name: "study", place: "wall", floorArea: m2(20) }],
    ...more,
  });

test.each([
  ["altitude", () => charge.roomAltitudeFactor(m(-500)), () => charge.roomAltitudeFactor(m(-501))],
  ["altitude", () => charge.roomAltitudeFactor(m(3200)), () => charge.roomAltitudeFactor(m(3201))],
  ["altitude", limit({ altitude: m(-500) }), limit({ altitude: m(-501) })],
  ["floorArea", limit({ floorArea: m2(0.01) }), limit({ floorArea: m2(0) })],
  [
    "lowerFlammabilityLimit",
    limit({ lowerFlammabilityLimit: kgPerM3(1) }),
    limit({ lowerFlammabilityLimit: kgPerM3(1.01) }),
  ],
  [
    "lowerFlammabilityLimit",
    limit({ lowerFlammabilityLimit: kgPerM3(0.001) }),
    limit({ lowerFlammabilityLimit: kgPerM3(0) }),
  ],
  ["installationHeight", high(m(0)), high(m(-0.1))],
  ["installationHeight", high(m(10)), high(m(10.1))],
  ["releaseOffset", limit({ releaseOffset: m(0) }), limit({ releaseOffset: m(-0.1) })],
  ["releaseOffset", limit({ releaseOffset: m(10) }), limit({ releaseOffset: m(10.1) })],
  ["place", limit({}), limit({ place: "roof" })],
  ["charge", smallest({ charge: kg(0.01) }), smallest({ charge: kg(0) })],
  ["charge", smallest({ charge: kg(15.964) }), smallest({ charge: kg(15.965) })], // 52 · 0.307
  ["floorArea", room({ floorArea: m2(0.01) }), room({ floorArea: m2(0) })],
  ["charge", room({ charge: kg(0.01) }), room({ charge: kg(0) })],
  ["confidence", room({ confidence: 0.5 }), room({ confidence: 0.49 })],
  ["confidence", room({ confidence: 0.999 }), room({ confidence: 1 })],
  [
    "instruments.size.accuracy",
    room({ instruments: { size: { accuracy: m2(0) } } }),
    room({ instruments: { size: { accuracy: m2(-1) } } }),
  ],
  ["protection.kind", joined({}), joined({ kind: "window" })],
  ["protection", tight({}), room({ edition: "en-378-1", protection: { kind: "circulation" } })],
  [
    "protection.placedAsRequired",
    joined({ placedAsRequired: false }),
    joined({ placedAsRequired: 1 }),
  ],
  ["protection.declared", tight({ declared: false }), tight({ declared: "yes" })],
  ["protection.detector", fan({ detector: false }), fan({ detector: null })],
  [
    "protection.adjoiningFloorArea",
    joined({ adjoiningFloorArea: m2(0.01) }),
    joined({ adjoiningFloorArea: m2(0) }),
  ],
  ["protection.lowerOpening", joined({ lowerOpening: m2(0) }), joined({ lowerOpening: m2(-0.1) })],
  ["protection.upperOpening", joined({ upperOpening: m2(0) }), joined({ upperOpening: m2(-0.1) })],
  ["protection.molarMass", joined({ molarMass: 29.1 }), joined({ molarMass: 29 })],
  ["protection.molarMass", joined({ molarMass: 1000 }), joined({ molarMass: 1001 })],
  [
    "protection.countedFloorArea",
    tight({ countedFloorArea: m2(0.01) }),
    tight({ countedFloorArea: m2(0) }),
  ],
  ["protection.ceilingHeight", tight({ ceilingHeight: m(0.1) }), tight({ ceilingHeight: m(0) })],
  ["protection.measure", tight({ measure: "shut-off" }), tight({ measure: "siren" })],
  ["protection.totalFloorArea", fan({ totalFloorArea: m2(0.01) }), fan({ totalFloorArea: m2(0) })],
  ["protection.airflow", fan({ airflow: m3PerHour(0.1) }), fan({ airflow: m3PerHour(0) })],
  ["floorArea", opening({ floorArea: m2(0.01) }), opening({ floorArea: m2(0) })],
  ["charge", opening({ charge: kg(0.01) }), opening({ charge: kg(0) })],
  ["molarMass", opening({ molarMass: 29.1 }), opening({ molarMass: 29 })],
  ["molarMass", opening({ molarMass: 1000 }), opening({ molarMass: 1001 })],
  ["protectionZone", outdoors({ protectionZone: m(0.01) }), outdoors({ protectionZone: m(0) })],
  ["distances[1]", outdoors({ distances: [m(2), m(0)] }), outdoors({ distances: [m(2), m(-1)] })],
  [
    "distances.length",
    outdoors({ distances: Array(1000).fill(m(2)) }),
    outdoors({ distances: Array(1001).fill(m(2)) }),
  ],
  ["distances", outdoors({ distances: [] }), outdoors({ distances: m(2) })],
  ["surroundings", outdoors({ surroundings: "closed-in" }), outdoors({ surroundings: "roof" })],
  [
    "tape.accuracy",
    outdoors({ tape: { accuracy: m(0) } }),
    outdoors({ tape: { accuracy: kg(1) } }),
  ],
  ["volume", air({ volume: m3(0.01) }), air({ volume: m3(0) })],
  [
    "concentrationLimit",
    air({ concentrationLimit: kgPerM3(1) }),
    air({ concentrationLimit: kgPerM3(1.01) }),
  ],
  [
    "refrigerant.designation",
    air({
      refrigerant: { designation: "R-999", safetyClass: "A1" },
      concentrationLimit: kgPerM3(1),
    }),
    air({ refrigerant: { designation: "R-999", safetyClass: "A1" } }),
  ],
  ["charge", space({ charge: kg(0.01) }), space({ charge: kg(0) })],
  ["volumeFraction", gas({ volumeFraction: fraction(1) }), gas({ volumeFraction: fraction(1.1) })],
  ["molarMass", gas({ molarMass: 1e4 }), gas({ molarMass: 10_001 })],
  ["temperature", gas({ temperature: kelvin(1) }), gas({ temperature: kelvin(0) })],
  ["atmosphere", gas({ atmosphere: pascalAbsolute(1) }), gas({ atmosphere: pascalAbsolute(0) })],
  ["volume", dispersal({ volume: m3(0.01) }), dispersal({ volume: m3(0) })],
  ["occupancy", dispersal({ occupancy: "institutional" }), dispersal({ occupancy: "home" })],
  ["refrigerant.safetyClass", dispersal({ refrigerant: R32 }), dispersal({ refrigerant: R290 })],
  [
    "lowerFlammabilityLimit",
    dwelling({ lowerFlammabilityLimit: kgPerM3(1) }),
    dwelling({ lowerFlammabilityLimit: kgPerM3(1.01) }),
  ],
  [
    "lowerFlammabilityLimit",
    dwelling({ lowerFlammabilityLimit: kgPerM3(0.001) }),
    dwelling({ lowerFlammabilityLimit: kgPerM3(0) }),
  ],
  ["floorArea", dwelling({ floorArea: m2(0.01) }), dwelling({ floorArea: m2(0) })],
  ["volume", measures({ volume: m3(0.01) }), measures({ volume: m3(0) })],
  ["charge", measures({ charge: kg(0.01) }), measures({ charge: kg(0) })],
  ["charge", measures({ charge: kg(150) }), measures({ charge: kg(150.1) })],
  ["refrigerant.designation", measures({}), measures({ refrigerant: R290 })],
  ["charge", leak({ charge: kg(0) }), leak({ charge: kg(-0.1) })],
  ["region", leak({ region: "GB" }), leak({ region: "US" })],
  ["hermeticallySealed", leak({ hermeticallySealed: true }), leak({ hermeticallySealed: 1 })],
  ["residential", leak({ residential: true }), leak({ residential: 1 })],
  ["leakDetection", leak({ leakDetection: true }), leak({ leakDetection: 1 })],
  ["refrigerant.composition", leak(parts(60, 40.1)), leak(parts(60, 40.2))],
  ["refrigerant.composition", leak(parts(60, 39.9)), leak(parts(60, 39.8))],
  ["charge", market({ charge: kg(0.01) }), market({ charge: kg(0) })],
  ["capacity", market({ capacity: kW(0.1) }), market({ capacity: kW(0) })],
  ["componentsMade", market({ componentsMade: "2024-02-29" }), market({ componentsMade: "2024" })],
  ["refrigerant.composition[1].massPercent", market(parts(60, 40)), market(parts(100, 0))],
  ["refrigerant.composition[0].massPercent", market(parts(100)), market(parts(100.05))],
  ["refrigerant.composition", market(parts(60, 40.1)), market(parts(60, 40.2))],
  [
    "refrigerant.composition[0].designation",
    market({ refrigerant: { composition: [{ designation: "R-999", massPercent: 100 }] } }),
    market({ refrigerant: { composition: [{ designation: 32, massPercent: 100 }] } }),
  ],
  ["floorArea", fromArea({ floorArea: m2(4) }), fromArea({ floorArea: m2(3.9) })],
  ["floorArea", fromArea({}), fromArea({ floorArea: m2(0) })],
  ["charge", fromCharge({ charge: kg(1.08) }), fromCharge({ charge: kg(1.09) })],
  ["charge", fromCharge({ charge: kg(0.01) }), fromCharge({ charge: kg(0) })],
  ["rows[0].area", fromArea({}), fromArea({ rows: [undefined, rows[1]] })],
  ["rows[0].area", fromArea({}), fromArea({ rows: [{ area: m2(0), charge: kg(1) }] })],
  [
    "rows[1].charge",
    fromArea({ rows: [rows[0], { area: m2(10), charge: kg(0.68) }] }),
    fromArea({ rows: [rows[0], { area: m2(10), charge: kg(0.67) }] }),
  ],
  ["rooms.length", served({}), served({ rooms: [] })],
  [
    "rooms.length",
    served({
      rooms: Array.from({ length: 100 }, (_, i) => ({
        name: `room ${i}`,
        place: "wall",
        floorArea: m2(20),
      })),
    }),
    served({
      rooms: Array.from({ length: 101 }, (_, i) => ({
        name: `room ${i}`,
        place: "wall",
        floorArea: m2(20),
      })),
    }),
  ],
] as const)(
  "%s: the last value that is taken, the first that is refused (%#)",
  (argument, taken, refused) => {
    expect(taken).not.toThrow();
    expect(refused).toThrow(expect.objectContaining({ argument }));
  },
);
