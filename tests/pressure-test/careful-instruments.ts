// Invented: what a careful installer knows of gauge and thermometer.
import type { TestInstruments } from "hvac-install-math/pressure-test";
import { deltaF, psi } from "hvac-install-math/quantity";

export const careful: TestInstruments = {
  pressure: { accuracy: psi(2), resolution: psi(0.1), drift: psi(0.5) },
  temperature: { accuracy: deltaF(1), resolution: deltaF(0.1), followsGasWithin: deltaF(0.7) },
};
