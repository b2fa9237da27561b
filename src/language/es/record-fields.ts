// Spanish of the fields of a record, all of them.
import type { Catalogue } from "../../assessment/catalogue.ts";
import { type CodeOf, join } from "../define.ts";
import { plateFields } from "./plate-fields.ts";
import { powerFields } from "./power-fields.ts";
import { workFields } from "./work-fields.ts";

type Part = typeof plateFields | typeof powerFields | typeof workFields;

/** Every field of a record, in Spanish of the Americas. Each part can be imported alone. */
export const recordFields: Catalogue<CodeOf<Part>> = /* @__PURE__ */ join<Part>([
  plateFields,
  powerFields,
  workFields,
]);
