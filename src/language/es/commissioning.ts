// Spanish of the verdict on an installation: its four parts and the fields of a record, as one.
import type { Catalogue } from "../../assessment/catalogue.ts";
import { type CodeOf, join } from "../define.ts";
import { commissioningActions } from "./commissioning-actions.ts";
import { commissioningFindings } from "./commissioning-findings.ts";
import { commissioningReasons } from "./commissioning-reasons.ts";
import { commissioningWords } from "./commissioning-words.ts";
import { recordFields } from "./record-fields.ts";

type Part =
  | typeof commissioningActions
  | typeof commissioningFindings
  | typeof commissioningReasons
  | typeof commissioningWords
  | typeof recordFields;

/** What `commissioning` says, with the fields of a record, in Spanish of the Americas. Each part can be imported alone. */
export const commissioning: Catalogue<CodeOf<Part>> = /* @__PURE__ */ join<Part>([
  commissioningReasons,
  commissioningFindings,
  commissioningActions,
  commissioningWords,
  recordFields,
]);
