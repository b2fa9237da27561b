// French of Canada: all modules as one.
import type { Catalogue } from "../../assessment/catalogue.ts";
import { type CodeOf, join } from "../define.ts";
import { assessment } from "./assessment.ts";
import { chargeLimit } from "./charge-limit.ts";
import { choices } from "./choices.ts";
import { circuitProtection } from "./circuit-protection.ts";
import { commissioning } from "./commissioning.ts";
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
import { plots } from "./plots.ts";
import { pressureTest } from "./pressure-test.ts";
import { propertyModel } from "./property-model.ts";
import { quantity } from "./quantity.ts";
import { recordFields } from "./record-fields.ts";
import { refrigerants } from "./refrigerants.ts";
import { report } from "./report.ts";
import { supplyVoltage } from "./supply-voltage.ts";
import { vacuumDecay } from "./vacuum-decay.ts";
import { wire } from "./wire.ts";

/** The whole language; worded by this project, not yet reviewed by a technician who works in it. */
export const french: Catalogue<CodeOf<Module>> = /* @__PURE__ */ join<Module>([
  assessment,
  chargeLimit,
  choices,
  circuitProtection,
  commissioning,
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
  plots,
  pressureTest,
  propertyModel,
  quantity,
  recordFields,
  refrigerants,
  report,
  supplyVoltage,
  vacuumDecay,
  wire,
]);

type Module =
  | typeof assessment
  | typeof chargeLimit
  | typeof choices
  | typeof circuitProtection
  | typeof commissioning
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
  | typeof plots
  | typeof pressureTest
  | typeof propertyModel
  | typeof quantity
  | typeof recordFields
  | typeof refrigerants
  | typeof report
  | typeof supplyVoltage
  | typeof vacuumDecay
  | typeof wire;
