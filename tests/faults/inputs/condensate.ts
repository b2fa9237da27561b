import type * as condensate from "hvac-install-math/condensate";
import {
  btuPerHour,
  cfm,
  cm,
  degC,
  degF,
  degreeAngle,
  ft,
  inch,
  inchWater,
  kW,
  literPerHour,
  m,
  mL,
  mm,
  percent,
  standardAtmosphere,
  tonRefrigeration,
} from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

const route = {
  outdoors: true,
  lowestOutdoorTemperature: degC(5),
  aboveFinishedSpace: false,
  pumped: false,
};
const confidence = 0.95;
const byLevel = { gap: mm(12), levelLength: mm(600), accuracy: mm(0.3) };

export const inputs: Inputs<typeof condensate> = {
  assessCondensatePump: [
    [
      {
        condensate: literPerHour(2),
        lift: m(6),
        curve: [
          { lift: m(0), flow: literPerHour(15) },
          { lift: m(10), flow: literPerHour(5) },
        ],
        reservoir: mL(30),
        margin: 1.5,
      },
    ],
  ],
  assessDrainSlope: [
    [{ reading: byLevel, required: percent(1), run: ft(20), route, confidence }],
    [{ reading: { slope: percent(2), accuracy: percent(0.1) } }],
  ],
  assessIndoorUnitPitch: [
    [
      {
        reading: { gap: mm(3), levelLength: mm(600), accuracy: mm(0.3) },
        minimum: percent(0.1),
        maximum: percent(2),
        confidence,
      },
    ],
  ],
  condensateFromLoad: [[{ totalCooling: kW(3.5), sensibleHeatRatio: percent(75) }]],
  condensateRate: [
    [
      {
        entering: { dryBulb: degF(80), relativeHumidity: percent(50) },
        leaving: { dryBulb: degF(55), wetBulb: degF(54) },
        airFlow: cfm(400),
        atmosphere: standardAtmosphere,
      },
    ],
    [
      {
        entering: { dryBulb: degF(80), dewPoint: degF(60) },
        leaving: { dryBulb: degF(55), relativeHumidity: percent(95) },
        airFlow: cfm(400),
        atmosphere: standardAtmosphere,
      },
    ],
  ],
  condensateRuleOfThumb: [[btuPerHour(12000)]],
  condensateTrap: [[{ staticPressure: inchWater(-1.5), margin: inch(1) }]],
  drainCautions: [[route]],
  drainSize: [[{ capacity: tonRefrigeration(3), outletDiameter: inch(1) }]],
  humidityRatio: [
    [{ dryBulb: degC(30), relativeHumidity: percent(50) }, standardAtmosphere],
    [{ dryBulb: degC(30), wetBulb: degC(20) }, standardAtmosphere],
  ],
  minimumFall: [[{ run: ft(30), slope: percent(1) }]],
  planDrain: [
    [
      {
        outletHeight: cm(215),
        points: [
          { distance: m(4), height: cm(210) },
          { distance: m(4), height: cm(20) },
        ],
        slope: percent(1),
        route,
      },
    ],
  ],
  slopeOf: [
    [byLevel],
    [{ slope: percent(2), accuracy: percent(0.1) }],
    [{ angle: degreeAngle(1), accuracy: degreeAngle(0.1) }],
    [{ heightAtStart: inch(40), heightAtEnd: inch(38), run: ft(20), accuracy: inch(0.1) }],
  ],
};
