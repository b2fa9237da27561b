import { expectedTestPressure } from "hvac-install-math/pressure-test";
import { degC, degF, MPag, psig, standardAtmosphere } from "hvac-install-math/quantity";
import type { Evaluators } from "./check.ts";

interface Change {
  readonly psig?: number;
  readonly MPag?: number;
  readonly degF?: [number, number];
  readonly degC?: [number, number];
}

/** Pressure and temperatures of a row, in the unit in which it states them. */
function change(row: Change) {
  const [before, after] = row.degF ?? row.degC ?? [Number.NaN, Number.NaN];
  const temperature = row.degF ? degF : degC;
  return {
    pressure: row.psig === undefined ? MPag(row.MPag ?? Number.NaN) : psig(row.psig),
    temperature: temperature(before),
    laterTemperature: temperature(after),
    atmosphere: standardAtmosphere,
  };
}

export const evaluators: Evaluators = {
  expected: (row: Change) => {
    const result = expectedTestPressure(change(row));
    return result.in(result.unit);
  },
};
