// Spanish (of the Americas) of what to do about a document that cannot be read.
import type { WireHint } from "../../wire/hints.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<WireHint>;
const catalogue: Define<Said> = define;

/** The hints of `wire`, in Spanish. */
export const wire: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "wire.newer-version":
    "Lo escribió una versión más nueva de la biblioteca. Actualice la biblioteca.",
});
