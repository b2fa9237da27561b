// How do the inputs and results of commissioning travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type { assessInstallation, Change } from "../../commissioning/index.ts";
import type { ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import { ChangeShape, InstallationAssessmentShape } from "./commissioning.shapes.ts";

/** JSON of what `assessInstallation` gives. Source: the library's own format. */
export const assessInstallationResult: Codec<ResultOf<typeof assessInstallation>> =
  /* @__PURE__ */ codecOf({
    id: "assessInstallationResult",
    name: "result",
    shape: InstallationAssessmentShape,
  });

/** JSON of a {@link Change}. Source: the library's own format. */
export const changeCodec: Codec<Change> = /* @__PURE__ */ codecOf({
  id: "changeCodec",
  name: "change",
  shape: ChangeShape,
});
