import * as model from "hvac-install-math/property-model";
import { definitions } from "../../src/refrigerants/generate/definitions.ts";
import { modelOf } from "../../src/refrigerants/generate/models.ts";

/** The fluid behind an id of the check files; `-mix` is the mixture model of a blend that has an equation of its own. */
export function fluidById(id: string): model.Fluid {
  const definition = definitions.find((one) => one.id === id.replace("-mix", ""));
  if (definition === undefined)
    return (model as unknown as Record<string, model.Fluid>)[id] as model.Fluid;
  return modelOf(id.endsWith("-mix") ? { ...definition, id, model: "mixture" } : definition);
}
