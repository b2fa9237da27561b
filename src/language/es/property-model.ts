// Spanish (of the Americas) of what to do about a state that the property model does not have.
import type { PropertyModelHint } from "../../property-model/hints.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<PropertyModelHint>;
const catalogue: Define<Said> = define;

/** The hints of `property-model`, in Spanish. */
export const propertyModel: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "property-model.no-such-point":
    "El modelo no tiene ese punto, o está demasiado cerca del punto crítico para ser fiable.",
  "property-model.two-phases":
    "Una densidad entre la del líquido y la del vapor saturados son dos fases.",
  "property-model.sum-of-fractions": "Es la suma de las fracciones másicas.",
  "property-model.give-the-pair": "Indique los parámetros del par.",
});
