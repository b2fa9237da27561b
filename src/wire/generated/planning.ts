// How do the inputs and results of planning travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type { planInstallation } from "../../planning/index.ts";
import type { ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import { InstallationPlanShape } from "./planning.shapes.ts";

/** JSON of what `planInstallation` gives. Source: the library's own format. */
export const planInstallationResult: Codec<ResultOf<typeof planInstallation>> =
  /* @__PURE__ */ codecOf({
    id: "planInstallationResult",
    name: "result",
    shape: InstallationPlanShape,
  });
