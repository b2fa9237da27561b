/**
 * Every sentence and word of the library in French: one catalogue per module, all of them as `french`, of
 * Canada, and as `frenchOfFrance`. Hand one to `explain`, to a plot or to a report. Worded by this project and not yet
 * reviewed by a technician who works in the language; English governs.
 *
 * @module language/fr
 */
export { assessment } from "./assessment.ts";
export { chargeLimit } from "./charge-limit.ts";
export { choices } from "./choices.ts";
export { circuitProtection } from "./circuit-protection.ts";
export { circuitProtectionActions } from "./circuit-protection-actions.ts";
export { circuitProtectionFindings } from "./circuit-protection-findings.ts";
export { circuitProtectionReasons } from "./circuit-protection-reasons.ts";
export { circuitProtectionWords } from "./circuit-protection-words.ts";
export { commissioning } from "./commissioning.ts";
export { commissioningActions } from "./commissioning-actions.ts";
export { commissioningFindings } from "./commissioning-findings.ts";
export { commissioningReasons } from "./commissioning-reasons.ts";
export { commissioningWords } from "./commissioning-words.ts";
export { condensate } from "./condensate.ts";
export { display } from "./display.ts";
export { fieldText } from "./field-text.ts";
export { figures } from "./figures.ts";
export { flareJoint } from "./flare-joint.ts";
export { frenchOfFrance } from "./france.ts";
export { holdRules } from "./hold-rules.ts";
export { lineSet } from "./line-set.ts";
export { logs } from "./logs.ts";
export { operatingCheck } from "./operating-check.ts";
export { planning } from "./planning.ts";
export { plateFields } from "./plate-fields.ts";
export { plots } from "./plots.ts";
export { powerFields } from "./power-fields.ts";
export { pressureTest } from "./pressure-test.ts";
export { propertyModel } from "./property-model.ts";
export { quantity } from "./quantity.ts";
export { recordFields } from "./record-fields.ts";
export { refrigerants } from "./refrigerants.ts";
export { report } from "./report.ts";
export { supplyVoltage } from "./supply-voltage.ts";
export { vacuumDecay } from "./vacuum-decay.ts";
export { french } from "./whole.ts";
export { wire } from "./wire.ts";
export { workFields } from "./work-fields.ts";
