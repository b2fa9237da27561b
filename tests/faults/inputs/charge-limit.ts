import type * as chargeLimit from "hvac-install-math/charge-limit";
import {
  degC,
  g,
  kg,
  kgPerM3,
  m,
  m2,
  m3,
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
  edition: "2018",
} as const;
const scale = { accuracy: g(5), resolution: g(1), repeatability: g(1) };
const rows = [
  { area: m2(10), charge: kg(0.24) },
  { area: m2(20), charge: kg(0.34) },
];
const gwp = {
  ar4: { value: 675, standing: "published" },
  ar5: { value: 677, standing: "published" },
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
  ],
  blendWarmingPotential: [
    [
      {
        composition: [
          { designation: "R-32", massPercent: 50 },
          { designation: "R-125", massPercent: 50 },
        ],
        report: "ar4",
      },
    ],
  ],
  carbonDioxideEquivalent: [[{ refrigerant: { gwp }, charge: kg(1.2), report: "ar4" }]],
  chargeFromRoomTable: [[{ rows, floorArea: m2(15) }]],
  chargeThresholds: [[kgPerM3(0.307)]],
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
