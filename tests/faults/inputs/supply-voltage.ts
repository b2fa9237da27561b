import { ampere, hour, minute, percent, volt } from "hvac-install-math/quantity";
import type * as supplyVoltage from "hvac-install-math/supply-voltage";
import { ansiC84 } from "hvac-install-math/supply-voltage";
import type { Inputs } from "../catalogue.ts";

const nameplate = {
  rated: [volt(208), volt(230)],
  range: { minimum: volt(197), maximum: volt(253) },
  phases: 1,
  ratedCurrent: ampere(12),
} as const;
const supply = { voltage: volt(240), phases: 1, standard: ansiC84 } as const;
const meter = {
  accuracy: volt(0.5),
  resolution: volt(0.1),
  repeatability: volt(0.1),
  accuracyOfReading: percent(0.5),
};
const log = [231, 229, 230, 230, 231].map((v, i) => ({ elapsed: minute(i), voltage: volt(v) }));

export const inputs: Inputs<typeof supplyVoltage> = {
  assessSupplyVoltage: [
    [
      {
        nameplate,
        supply,
        readings: [
          {
            state: "rest",
            voltage: volt(241),
            current: ampere(0.2),
            lineToGround: [volt(121), volt(120)],
            elapsed: hour(0),
          },
          { state: "load", voltage: volt(239), current: ampere(11), elapsed: hour(1) },
        ],
        measuredAt: "unit",
        meter,
        confidence: 0.95,
      },
    ],
    [
      {
        nameplate: { rated: volt(460), phases: 3 },
        supply: {
          voltage: volt(480),
          phases: 3,
          range: { minimum: volt(456), maximum: volt(504) },
        },
        readings: [
          {
            state: "load",
            lineToLine: [volt(480), volt(478), volt(481)],
            currents: [ampere(10), ampere(10.2), ampere(9.9)],
          },
        ],
        measuredAt: "service",
        unbalanceLimit: percent(2),
      },
    ],
  ],
  assessSupplyWeek: [
    [
      {
        nominal: volt(230),
        readings: Array.from({ length: 1009 }, (_, i) => ({
          elapsed: minute(10 * i),
          voltage: volt(231),
        })),
      },
    ],
  ],
  currentUnbalance: [[[ampere(33), ampere(29), ampere(34)]]],
  nameplateVoltageRange: [[nameplate], [{ rated: volt(230) }]],
  resistanceHeatAt: [[{ rated: volt(240), actual: volt(208) }]],
  supplySag: [
    [
      {
        rest: volt(120),
        load: volt(115),
        loadCurrent: ampere(8),
        restCurrent: ampere(0.5),
        phases: 1,
        meter,
        atCurrent: ampere(12),
      },
    ],
  ],
  supplyName: [["only-range"], ["ANSI C84.1"]],
  supplyVoltageRanges: [[supply, "service"]],
  unbalanceDerating: [[percent(3)]],
  voltageLogStatistics: [[{ readings: log, range: { minimum: volt(207), maximum: volt(253) } }]],
  voltageMonitorSettings: [[{ nameplate, supply }]],
  voltageUnbalance: [[[volt(460), volt(467), volt(450)]]],
};
