// Which model of property-model stands behind a definition?
import * as model from "../../property-model/index.ts";
import { percent } from "../../quantity/units/ratio.ts";
import type { Definition } from "./definitions.ts";

/** The model of a refrigerant. */
export function modelOf({ id, model: kind, composition }: Definition): model.Fluid {
  const named = model as unknown as Record<string, model.PureFluid | model.PseudoPureFluid>;
  if (kind !== "mixture") return named[id] as model.PureFluid | model.PseudoPureFluid;
  return model.mixture({
    id,
    components: Object.entries(composition).map(([component, mass]) => ({
      fluid: named[component] as model.PureFluid,
      massFraction: percent(mass),
    })),
  });
}
