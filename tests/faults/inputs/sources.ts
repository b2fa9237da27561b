import type * as sources from "hvac-install-math/sources";
import type { Inputs } from "../catalogue.ts";

export const inputs: Inputs<typeof sources> = {
  sourceById: [["span-2000"]],
};
