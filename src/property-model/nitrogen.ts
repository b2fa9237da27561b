// What does nitrogen in a closed vessel do when its temperature changes? The reference equation.
// Follows Span R., Lemmon E.W., Jacobsen R.T, Wagner W., Yokozeki A. (2000), doi:10.1063/1.1349047.
// Does not cover liquid nitrogen; the reduced form for apps is nitrogen-gas.ts.

import { OutOfRangeError } from "../quantity/errors.ts";
import { choose } from "../quantity/hints.ts";
import { densityAt } from "./density-solver.ts";
import { nitrogen } from "./fluids/nitrogen.ts";
import { modelOf, pressureAt } from "./helmholtz-model.ts";

const model = /* @__PURE__ */ modelOf(nitrogen);

/** Density of gaseous nitrogen, kg/m³, at an absolute pressure (Pa) and a temperature (K). */
export function nitrogenDensity(pressurePa: number, temperatureK: number): number {
  const density = densityAt(model, temperatureK, pressurePa, "vapor");
  if (density === undefined) {
    throw new OutOfRangeError({
      argument: "pressure",
      value: `${pressurePa} Pa at ${temperatureK} K`,
      allowed: "a state of gaseous nitrogen",
      hint: choose(["pressure", "temperature"], "matching"),
    });
  }
  return density * model.molarMass;
}

/** Absolute pressure of nitrogen, Pa, at a density (kg/m³) and a temperature (K). */
export function nitrogenPressure(densityKgM3: number, temperatureK: number): number {
  return pressureAt(model, temperatureK, densityKgM3 / model.molarMass).p;
}
