// Which model of property-model stands behind a definition?
import { type Fluid, mixture, type PureFluid } from "../../property-model/index.ts";
import { percent } from "../../quantity/units/ratio.ts";
import { componentOf } from "./component.ts";
import type { Definition } from "./definitions.ts";

/** The model of a refrigerant. */
export function modelOf({ id, model, composition }: Definition): Fluid {
  if (model !== "mixture") return componentOf(id);
  return mixture({
    id,
    components: Object.entries(composition).map(([component, mass]) => ({
      fluid: componentOf(component) as PureFluid,
      massFraction: percent(mass),
    })),
  });
}
