import type * as operatingCheck from "hvac-install-math/operating-check";
import { degF, deltaF, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
import { R410A } from "hvac-install-math/refrigerants";
import type { Inputs } from "../catalogue.ts";

const atmosphere = standardAtmosphere;
const running = {
  refrigerant: R410A,
  mode: "cooling",
  indoorTemperature: degF(75),
  outdoorTemperature: degF(95),
  evaporatorApproach: { low: deltaF(30), high: deltaF(40) },
  condenserApproach: { low: deltaF(15), high: deltaF(25) },
  atmosphere,
} as const;

export const inputs: Inputs<typeof operatingCheck> = {
  assessChargeByGauge: [
    [
      {
        refrigerant: R410A,
        meteringDevice: "thermostatic-valve",
        compressor: "single-speed",
        mode: "cooling",
        pressure: psig(388),
        pressureDrop: psi(33),
        lineTemperature: degF(95),
        atmosphere,
        target: deltaF(12),
        tolerance: deltaF(4),
        instruments: {
          pressure: { accuracy: psi(2), resolution: psi(0.1) },
          temperature: { accuracy: deltaF(1) },
          atmosphere: { accuracy: psi(0.1) },
        },
        confidence: 0.95,
      },
    ],
  ],
  assessGaugeSet: [
    [
      {
        fullScale: psig(800),
        retardTo: psig(900),
        hoseWorkingPressure: psig(800),
        highestPressure: psig(400),
      },
    ],
  ],
  assessServiceReading: [
    [
      {
        ...running,
        pressure: psig(118),
        port: "vapor",
        expansion: "outdoor-unit",
        gauge: { accuracy: psi(2), resolution: psi(1), repeatability: psi(0.1) },
        confidence: 0.95,
      },
    ],
  ],
  chargingMethod: [[{ meteringDevice: "orifice", mode: "cooling", compressor: "single-speed" }]],
  expectedPressures: [[running]],
  servicePorts: [[{ mode: "cooling", expansion: "outdoor-unit" }]],
  targetSuperheat: [
    [{ outdoorDryBulb: degF(95), indoorWetBulb: degF(70) }],
    [
      {
        outdoorDryBulb: degF(85),
        indoorWetBulb: degF(65),
        chart: {
          outdoorDryBulbs: [degF(80), degF(90)],
          indoorWetBulbs: [degF(60), degF(70)],
          targets: [
            [deltaF(10), deltaF(20)],
            [deltaF(8), deltaF(16)],
          ],
        },
      },
    ],
  ],
  usualPressures: [[{ refrigerant: "R410A", mode: "heating" }]],
};
