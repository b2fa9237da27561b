import type * as chargeLimit from "hvac-install-math/charge-limit";
import {
  degC,
  g,
  kg,
  kgPerM3,
  kW,
  m,
  m2,
  m3,
  m3PerHour,
  ppm,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

const R32 = { designation: "R-32", safetyClass: "A2L" } as const;
const R410A = { designation: "R-410A", safetyClass: "A1" } as const;
const room = {
  refrigerant: R32,
  lowerFlammabilityLimit: kgPerM3(0.307),
  installationHeight: m(1.8),
  releaseOffset: m(0),
  edition: "iec-60335-2-40-2018",
  smallRoomCap: "strictest",
  altitude: m(100),
} as const;
const scale = { accuracy: g(5), resolution: g(1), repeatability: g(1) };
const rows = [
  { area: m2(10), charge: kg(0.24) },
  { area: m2(20), charge: kg(0.34) },
];
const composition = [{ designation: "R-32", massPercent: 100 }] as const;
const opened = {
  kind: "connected-rooms",
  adjoiningFloorArea: m2(20),
  lowerOpening: m2(0.03),
  upperOpening: m2(0.015),
  placedAsRequired: true,
  molarMass: 52.024,
} as const;
const tight = {
  kind: "enhanced-tightness",
  countedFloorArea: m2(60),
  ceilingHeight: m(2.4),
  measure: "alarm",
  declared: true,
} as const;
const fan = {
  kind: "circulation",
  totalFloorArea: m2(60),
  airflow: m3PerHour(400),
  detector: true,
} as const;

export const inputs: Inputs<typeof chargeLimit> = {
  areaFromRoomTable: [[{ rows, charge: kg(0.3) }]],
  assessConcentration: [
    [
      {
        refrigerant: R410A,
        concentrationLimit: kgPerM3(0.42),
        charge: kg(1.5),
        volume: m3(30),
        instruments: { charge: scale, size: { accuracy: m3(1) } },
        confidence: 0.95,
      },
    ],
  ],
  assessRoomCharge: [
    [
      {
        ...room,
        charge: kg(2.1),
        floorArea: m2(40),
        instruments: { charge: scale, size: { accuracy: m2(0.5) } },
        confidence: 0.95,
      },
    ],
    [{ refrigerant: R32, place: "floor", charge: kg(1.5), floorArea: m2(60) }],
    [{ ...room, charge: kg(2.4), floorArea: m2(20), protection: opened }],
    [{ ...room, charge: kg(5), floorArea: m2(20), protection: tight }],
    [{ ...room, charge: kg(2.4), floorArea: m2(20), protection: fan }],
  ],
  assessRooms: [
    [
      {
        refrigerant: R32,
        lowerFlammabilityLimit: kgPerM3(0.307),
        edition: "iec-60335-2-40-2018",
        altitude: m(100),
        charge: kg(2.1),
        confidence: 0.95,
        rooms: [
          { name: "one", place: "wall", floorArea: m2(40) },
          { name: "two", installationHeight: m(1.8), releaseOffset: m(0), floorArea: m2(40) },
        ],
      },
    ],
  ],
  assessOutdoorUnit: [
    [
      {
        refrigerant: { designation: "R-290", safetyClass: "A3" },
        surroundings: "open-air",
        protectionZone: m(1),
        distances: [m(1.5), m(3)],
        tape: { accuracy: m(0.01), resolution: m(0.01), repeatability: m(0.01) },
        confidence: 0.95,
      },
    ],
  ],
  dispersalChargeLimit: [[{ refrigerant: R410A, volume: m3(50), occupancy: "other" }]],
  dwellingChargeEstimate: [[{ lowerFlammabilityLimit: kgPerM3(0.296), floorArea: m2(20) }]],
  leakCheckInterval: [
    [
      {
        refrigerant: { composition },
        charge: kg(8),
        hermeticallySealed: false,
        residential: true,
        leakDetection: false,
        region: "GB",
      },
    ],
  ],
  marketRules: [
    [
      {
        region: "US",
        equipment: "single-split",
        refrigerant: { composition },
        charge: kg(1.1),
        capacity: kW(3.5),
        date: "2026-08-01",
        componentsMade: "2024-06-01",
      },
    ],
  ],
  roomAltitudeFactor: [[m(1600)]],
  ventilationLimits: [
    [{ refrigerant: R32, charge: kg(3), volume: m3(50), lowestUndergroundFloor: false }],
  ],
  ventilationOpening: [
    [{ ...room, floorArea: m2(20), charge: kg(2.4), molarMass: 52.024 }],
    [{ refrigerant: R32, place: "floor", floorArea: m2(20), charge: kg(2) }],
  ],
  blendWarmingPotential: [
    [
      {
        composition: [
          { designation: "R-32", massPercent: 50 },
          { designation: "R-125", massPercent: 50 },
        ],
        basis: "ipcc-ar4",
      },
    ],
  ],
  carbonDioxideEquivalent: [
    [{ refrigerant: { composition }, charge: kg(1.2), basis: "eu-2024-573" }],
  ],
  chargeFromRoomTable: [[{ rows, floorArea: m2(15) }]],
  chargeThresholds: [
    [
      {
        lowerFlammabilityLimit: kgPerM3(0.307),
        safetyClass: "A2L",
        edition: "iec-60335-2-40-2018",
      },
    ],
  ],
  concentrationChargeLimit: [
    [{ refrigerant: R410A, concentrationLimit: kgPerM3(0.42), volume: m3(30) }],
    [{ refrigerant: R410A, volume: m3(30) }],
  ],
  massConcentration: [
    [
      {
        volumeFraction: ppm(36_000),
        molarMass: 52.024,
        temperature: degC(25),
        atmosphere: standardAtmosphere,
      },
    ],
  ],
  minimumFloorArea: [
    [{ ...room, charge: kg(2) }],
    [{ refrigerant: R32, place: "wall", charge: kg(2) }],
  ],
  minimumRoomVolume: [[{ refrigerant: R410A, concentrationLimit: kgPerM3(0.42), charge: kg(2.1) }]],
  refrigerantSafety: [[R32]],
  roomChargeLimit: [
    [{ ...room, floorArea: m2(20) }],
    [{ refrigerant: R32, place: "wall", floorArea: m2(20) }],
  ],
};
