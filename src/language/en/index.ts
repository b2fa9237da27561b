/**
 * Every sentence and word of the library in American English: one catalogue per module, and all of them as
 * `english`. Hand one to `explain`, to a plot or to a report.
 *
 * @module language/en
 */
import type { Catalogue } from "../../assessment/catalogue.ts";
import { type CodeOf, join } from "../define.ts";
import { assessment } from "./assessment.ts";
import { chargeLimit } from "./charge-limit.ts";
import { choices } from "./choices.ts";
import { circuitProtection } from "./circuit-protection.ts";
import { circuitProtectionActions } from "./circuit-protection-actions.ts";
import { circuitProtectionFindings } from "./circuit-protection-findings.ts";
import { circuitProtectionReasons } from "./circuit-protection-reasons.ts";
import { circuitProtectionWords } from "./circuit-protection-words.ts";
import { commissioning } from "./commissioning.ts";
import { commissioningActions } from "./commissioning-actions.ts";
import { commissioningFindings } from "./commissioning-findings.ts";
import { commissioningReasons } from "./commissioning-reasons.ts";
import { commissioningWords } from "./commissioning-words.ts";
import { condensate } from "./condensate.ts";
import { display } from "./display.ts";
import { fieldText } from "./field-text.ts";
import { figures } from "./figures.ts";
import { flareJoint } from "./flare-joint.ts";
import { holdRules } from "./hold-rules.ts";
import { lineSet } from "./line-set.ts";
import { logs } from "./logs.ts";
import { operatingCheck } from "./operating-check.ts";
import { planning } from "./planning.ts";
import { plateFields } from "./plate-fields.ts";
import { plots } from "./plots.ts";
import { powerFields } from "./power-fields.ts";
import { pressureTest } from "./pressure-test.ts";
import { propertyModel } from "./property-model.ts";
import { quantity } from "./quantity.ts";
import { recordFields } from "./record-fields.ts";
import { refrigerants } from "./refrigerants.ts";
import { report } from "./report.ts";
import { supplyVoltage } from "./supply-voltage.ts";
import { vacuumDecay } from "./vacuum-decay.ts";
import { wire } from "./wire.ts";
import { workFields } from "./work-fields.ts";

export {
  assessment,
  chargeLimit,
  choices,
  circuitProtection,
  circuitProtectionActions,
  circuitProtectionFindings,
  circuitProtectionReasons,
  circuitProtectionWords,
  commissioning,
  commissioningActions,
  commissioningFindings,
  commissioningReasons,
  commissioningWords,
  condensate,
  display,
  fieldText,
  figures,
  flareJoint,
  holdRules,
  lineSet,
  logs,
  operatingCheck,
  planning,
  plateFields,
  plots,
  powerFields,
  pressureTest,
  propertyModel,
  quantity,
  recordFields,
  refrigerants,
  report,
  supplyVoltage,
  vacuumDecay,
  wire,
  workFields,
};

/** The whole language, worded by this project. */
export const english: Catalogue<CodeOf<Module>> = /* @__PURE__ */ join<Module>([
  assessment,
  chargeLimit,
  choices,
  circuitProtection,
  circuitProtectionActions,
  circuitProtectionFindings,
  circuitProtectionReasons,
  circuitProtectionWords,
  commissioning,
  commissioningActions,
  commissioningFindings,
  commissioningReasons,
  commissioningWords,
  condensate,
  display,
  fieldText,
  figures,
  flareJoint,
  holdRules,
  lineSet,
  logs,
  operatingCheck,
  planning,
  plateFields,
  plots,
  powerFields,
  pressureTest,
  propertyModel,
  quantity,
  recordFields,
  refrigerants,
  report,
  supplyVoltage,
  vacuumDecay,
  wire,
  workFields,
]);

type Module =
  | typeof assessment
  | typeof chargeLimit
  | typeof choices
  | typeof circuitProtection
  | typeof circuitProtectionActions
  | typeof circuitProtectionFindings
  | typeof circuitProtectionReasons
  | typeof circuitProtectionWords
  | typeof commissioning
  | typeof commissioningActions
  | typeof commissioningFindings
  | typeof commissioningReasons
  | typeof commissioningWords
  | typeof condensate
  | typeof display
  | typeof fieldText
  | typeof figures
  | typeof flareJoint
  | typeof holdRules
  | typeof lineSet
  | typeof logs
  | typeof operatingCheck
  | typeof planning
  | typeof plateFields
  | typeof plots
  | typeof powerFields
  | typeof pressureTest
  | typeof propertyModel
  | typeof quantity
  | typeof recordFields
  | typeof refrigerants
  | typeof report
  | typeof supplyVoltage
  | typeof vacuumDecay
  | typeof wire
  | typeof workFields;
