import * as model from "hvac-install-math/property-model";
import { percent } from "hvac-install-math/quantity";

const compositions: Record<string, Record<string, number>> = {
  "R404A-mix": { R125: 44, R143a: 52, R134a: 4 },
  "R407C-mix": { R32: 23, R125: 25, R134a: 52 },
  "R410A-mix": { R32: 50, R125: 50 },
  "R507A-mix": { R125: 50, R143a: 50 },
  R448A: { R32: 26, R125: 26, R1234yf: 20, R134a: 21, R1234zeE: 7 },
  R449A: { R32: 24.3, R125: 24.7, R1234yf: 25.3, R134a: 25.7 },
  R452B: { R32: 67, R125: 7, R1234yf: 26 },
  R454B: { R32: 68.9, R1234yf: 31.1 },
  R454C: { R32: 21.5, R1234yf: 78.5 },
  R513A: { R1234yf: 56, R134a: 44 },
  R407A: { R32: 20, R125: 40, R134a: 40 },
  R407F: { R32: 30, R125: 30, R134a: 40 },
  R450A: { R134a: 42, R1234zeE: 58 },
  R452A: { R32: 11, R125: 59, R1234yf: 30 },
  R454A: { R32: 35, R1234yf: 65 },
};

/** The fluid behind an id of the check files: a pure or pseudo-pure fluid, or a blend by ASHRAE 34 mass. */
export function fluidById(id: string): model.Fluid {
  const composition = compositions[id];
  if (composition === undefined) {
    return (model as unknown as Record<string, model.Fluid>)[id] as model.Fluid;
  }
  return model.mixture({
    id,
    components: Object.entries(composition).map(([name, mass]) => ({
      fluid: fluidById(name) as model.PureFluid,
      massFraction: percent(mass),
    })),
  });
}
