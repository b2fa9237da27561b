// How do the inputs and results of commissioning travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type { assessInstallation, Change, hasNominalLength } from "../../commissioning/index.ts";
import type { ArgumentsOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  ChangeShape,
  HasNominalLengthInputShape,
  InstallationAssessmentShape,
} from "./commissioning.shapes.ts";

/** JSON of what `assessInstallation` gives. Source: the library's own format. */
export const assessInstallationResult: Codec<ResultOf<typeof assessInstallation>> =
  /* @__PURE__ */ codecOf({
    id: "assessInstallationResult",
    name: "result",
    shape: InstallationAssessmentShape,
  });

/** JSON of what `hasNominalLength` takes. Source: the library's own format. */
export const hasNominalLengthInput: Codec<ArgumentsOf<typeof hasNominalLength, ["record", "run"]>> =
  /* @__PURE__ */ codecOf({
    id: "hasNominalLengthInput",
    name: "input",
    shape: HasNominalLengthInputShape,
  });

/** JSON of a {@link Change}. Source: the library's own format. */
export const changeCodec: Codec<Change> = /* @__PURE__ */ codecOf({
  id: "changeCodec",
  name: "change",
  shape: ChangeShape,
});
