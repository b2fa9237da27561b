// What else it takes to hear all that the module says.
import type * as operatingCheck from "hvac-install-math/operating-check";
import { expectedPressures } from "hvac-install-math/operating-check";
import { degF, deltaF, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
import { R32, R410A, R717 } from "hvac-install-math/refrigerants";
import type { Inputs } from "../../faults/catalogue.ts";

const running = {
  refrigerant: R410A,
  mode: "cooling",
  indoorTemperature: degF(75),
  outdoorTemperature: degF(95),
  evaporatorApproach: { low: deltaF(30), high: deltaF(40) },
  condenserApproach: { low: deltaF(15), high: deltaF(25) },
  atmosphere: standardAtmosphere,
} as const;
const reading = (p: number) => ({ ...running, pressure: psig(p) });
const orifice = {
  refrigerant: R410A,
  meteringDevice: "orifice",
  compressor: "single-speed",
  mode: "cooling",
  pressure: psig(118),
  lineTemperature: degF(58),
  atmosphere: standardAtmosphere,
  target: deltaF(18),
  tolerance: deltaF(5),
  instruments: { pressure: { accuracy: psi(1) }, temperature: { accuracy: deltaF(1) } },
} as const;
const set = { fullScale: psig(250), retardTo: psig(500), hoseWorkingPressure: psig(510) };
const gauge = { accuracy: psi(3) };

export const inputs: Partial<Inputs<typeof operatingCheck>> = {
  assessChargeByGauge: [
    [orifice],
    [{ ...orifice, lineTemperature: degF(70) }],
    [{ ...orifice, lineTemperature: degF(48) }],
    [{ ...orifice, lineTemperature: degF(42), target: deltaF(6) }],
    [{ ...orifice, lineTemperature: degF(45), target: deltaF(6) }],
    [{ ...orifice, compressor: "inverter" }],
    [{ ...orifice, mode: "heating" }],
  ],
  assessGaugeSet: [
    [{ ...set, highestPressure: psig(400) }],
    [{ ...set, highestPressure: psig(520) }],
    [{ ...set, hoseWorkingPressure: psig(800), highestPressure: psig(520) }],
  ],
  assessServiceReading: [
    [reading(118)],
    [reading(80)],
    [reading(180)],
    [reading(380)],
    [{ ...reading(118), port: "liquid" }],
    [{ ...reading(118), port: "liquid", expansion: "evaporating-unit" }],
    [{ ...reading(129.5), gauge }],
    [{ ...reading(128), gauge }],
    [{ ...running, pressure: expectedPressures(running).low.to, gauge }],
    [{ ...reading(118), refrigerant: R32 }],
    [{ ...reading(118), evaporatorApproach: { low: deltaF(10), high: deltaF(60) } }],
    [{ ...reading(217), evaporatorApproach: { low: deltaF(0), high: deltaF(5) } }],
  ],
  expectedPressures: [[{ ...running, refrigerant: R717 }]],
  servicePorts: [[{ mode: "heating", expansion: "evaporating-unit" }]],
};
