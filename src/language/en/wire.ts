// English of what to do about a document that cannot be read.
import type { WireHint } from "../../wire/hints.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<WireHint>;
const catalogue: Define<Said> = define;

/** The hints of `wire`, in American English. */
export const wire: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "wire.newer-version": "A newer version of the library wrote this. Update the library.",
});
