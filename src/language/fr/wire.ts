// French (of Canada) of what to do about a document that cannot be read.
import type { WireHint } from "../../wire/hints.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = Words<WireHint>;
const catalogue: Define<Said> = defineFrench;

/** The hints of `wire`, in French. */
export const wire: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "wire.newer-version":
    "Une version plus récente de la bibliothèque a écrit ceci. Mettez la bibliothèque à jour.",
});
