// English of what to do about a state that the property model does not have.
import type { PropertyModelHint } from "../../property-model/hints.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<PropertyModelHint>;
const catalogue: Define<Said> = define;

/** The hints of `property-model`, in American English. */
export const propertyModel: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "property-model.no-such-point":
    "The model has no such point, or it is too near the critical point to be trusted.",
  "property-model.two-phases": "A density between saturated liquid and vapor is two phases.",
  "property-model.sum-of-fractions": "This is the sum of the mass fractions.",
  "property-model.give-the-pair": "Give the parameters of the pair.",
});
