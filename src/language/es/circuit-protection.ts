// Spanish of the verdict on a circuit: its four parts as one.
import type { Catalogue } from "../../assessment/catalogue.ts";
import { type CodeOf, join } from "../define.ts";
import { circuitProtectionActions } from "./circuit-protection-actions.ts";
import { circuitProtectionFindings } from "./circuit-protection-findings.ts";
import { circuitProtectionReasons } from "./circuit-protection-reasons.ts";
import { circuitProtectionWords } from "./circuit-protection-words.ts";

type Part =
  | typeof circuitProtectionActions
  | typeof circuitProtectionFindings
  | typeof circuitProtectionReasons
  | typeof circuitProtectionWords;

/** What `circuit-protection` says, in Spanish of the Americas. Each part can be imported alone. */
export const circuitProtection: Catalogue<CodeOf<Part>> = /* @__PURE__ */ join<Part>([
  circuitProtectionReasons,
  circuitProtectionFindings,
  circuitProtectionActions,
  circuitProtectionWords,
]);
