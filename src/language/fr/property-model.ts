// French (of Canada) of what to do about a state that the property model does not have.
import type { PropertyModelHint } from "../../property-model/hints.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = Words<PropertyModelHint>;
const catalogue: Define<Said> = defineFrench;

/** The hints of `property-model`, in French. */
export const propertyModel: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "property-model.no-such-point":
    "Le modèle n’a pas ce point, ou il est trop près du point critique pour être fiable.",
  "property-model.two-phases":
    "Une masse volumique entre celles du liquide et de la vapeur saturés correspond à deux phases.",
  "property-model.sum-of-fractions": "C’est la somme des fractions massiques.",
  "property-model.give-the-pair": "Indiquez les paramètres de la paire.",
});
