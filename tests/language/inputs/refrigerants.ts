// What else it takes to hear all that the module says.
import { degF, deltaF, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
import type * as refrigerants from "hvac-install-math/refrigerants";
import { R410A, R717 } from "hvac-install-math/refrigerants";
import type { Inputs } from "../../faults/catalogue.ts";

const good = { pressure: { accuracy: psi(1) }, temperature: { accuracy: deltaF(1) } };
const blunt = { pressure: { accuracy: psi(10) }, temperature: { accuracy: deltaF(1) } };
const cold = { pressure: { accuracy: psi(1) }, temperature: { accuracy: deltaF(6) } };
const suction = {
  pressure: psig(118), // dew 39.8 °F
  lineTemperature: degF(52),
  atmosphere: standardAtmosphere,
  target: deltaF(12),
  tolerance: deltaF(3),
  instruments: good,
};
const liquid = {
  ...suction,
  pressure: psig(355), // bubble 107.7 °F
  lineTemperature: degF(95),
};
const line = (more: Partial<refrigerants.LineAssessmentInput>) =>
  ({ ...suction, ...more }) as refrigerants.LineAssessmentInput;

export const inputs: Partial<Inputs<typeof refrigerants>> = {
  assessSuperheat: [
    [R410A, suction],
    [R717, line({ pressure: psig(60), lineTemperature: degF(55) })],
    [R410A, line({ target: deltaF(25) })],
    [R410A, line({ target: deltaF(4) })],
    [R410A, line({ lineTemperature: degF(30) })],
    [R410A, line({ instruments: blunt })],
    [R410A, line({ instruments: cold })],
    [R410A, line({ target: deltaF(9.2), tolerance: deltaF(3) })],
    [R410A, line({ target: deltaF(60) })],
    [R410A, line({ tolerance: deltaF(10) })],
    [R410A, line({ target: deltaF(2), tolerance: deltaF(4), lineTemperature: degF(42) })],
    [R410A, line({ pressure: psig(390), lineTemperature: degF(127) })],
  ],
  bubblePressure: [[R410A, degF(400)]],
  bubbleTemperature: [[R410A, psig(100)] as never],
  pressureTemperatureTable: [
    [R410A, { from: degF(0), to: degF(100), step: deltaF(0.001) }],
    [R410A, { from: degF(0), to: degF(10), step: deltaF(1), pressureUnit: psig }] as never,
  ],
  refrigerantByDesignation: [["R-999"]],
  assessSubcooling: [
    [R410A, liquid],
    [R410A, { ...liquid, lineTemperature: degF(115) }],
    [R410A, { ...liquid, target: deltaF(40) }],
    [R410A, { ...liquid, tolerance: deltaF(10) }],
    [R410A, { ...liquid, pressure: psig(100), lineTemperature: degF(22) }],
  ],
};
