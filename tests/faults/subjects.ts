// The whole catalogue: each module under its name as a subpath, with the inputs of its functions.
import * as assessment from "hvac-install-math/assessment";
import * as chargeLimit from "hvac-install-math/charge-limit";
import * as circuitProtection from "hvac-install-math/circuit-protection";
import * as commissioning from "hvac-install-math/commissioning";
import * as condensate from "hvac-install-math/condensate";
import * as display from "hvac-install-math/display";
import * as fieldText from "hvac-install-math/field-text";
import * as flareJoint from "hvac-install-math/flare-joint";
import * as lineSet from "hvac-install-math/line-set";
import * as logs from "hvac-install-math/logs";
import * as operatingCheck from "hvac-install-math/operating-check";
import * as planning from "hvac-install-math/planning";
import * as pressureTest from "hvac-install-math/pressure-test";
import * as propertyModel from "hvac-install-math/property-model";
import * as quantity from "hvac-install-math/quantity";
import * as readQuantity from "hvac-install-math/read-quantity";
import * as refrigerants from "hvac-install-math/refrigerants";
import * as sources from "hvac-install-math/sources";
import * as supplyVoltage from "hvac-install-math/supply-voltage";
import * as vacuumDecay from "hvac-install-math/vacuum-decay";
import { type Subject, subjectsOf } from "./catalogue.ts";
import * as ofAssessment from "./inputs/assessment.ts";
import * as ofChargeLimit from "./inputs/charge-limit.ts";
import * as ofCircuitProtection from "./inputs/circuit-protection.ts";
import * as ofCommissioning from "./inputs/commissioning.ts";
import * as ofCondensate from "./inputs/condensate.ts";
import * as ofDisplay from "./inputs/display.ts";
import * as ofFieldText from "./inputs/field-text.ts";
import * as ofFlareJoint from "./inputs/flare-joint.ts";
import * as ofLineSet from "./inputs/line-set.ts";
import * as ofLogs from "./inputs/logs.ts";
import * as ofOperatingCheck from "./inputs/operating-check.ts";
import * as ofPlanning from "./inputs/planning.ts";
import * as ofPressureTest from "./inputs/pressure-test.ts";
import * as ofPropertyModel from "./inputs/property-model.ts";
import * as ofQuantity from "./inputs/quantity.ts";
import * as ofReadQuantity from "./inputs/read-quantity.ts";
import * as ofRefrigerants from "./inputs/refrigerants.ts";
import * as ofSources from "./inputs/sources.ts";
import * as ofSupplyVoltage from "./inputs/supply-voltage.ts";
import * as ofVacuumDecay from "./inputs/vacuum-decay.ts";

/** The modules by the name of their subpath. */
export const modules: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  assessment,
  "charge-limit": chargeLimit,
  "circuit-protection": circuitProtection,
  commissioning,
  condensate,
  display,
  "field-text": fieldText,
  "flare-joint": flareJoint,
  "line-set": lineSet,
  logs,
  "operating-check": operatingCheck,
  planning,
  "pressure-test": pressureTest,
  "property-model": propertyModel,
  quantity,
  "read-quantity": readQuantity,
  refrigerants,
  sources,
  "supply-voltage": supplyVoltage,
  "vacuum-decay": vacuumDecay,
};

/** Every function of every module with its inputs, and what only an object can do. */
export const subjects: readonly Subject[] = [
  ...subjectsOf("assessment", assessment, ofAssessment.inputs),
  ...subjectsOf("charge-limit", chargeLimit, ofChargeLimit.inputs),
  ...subjectsOf("circuit-protection", circuitProtection, ofCircuitProtection.inputs),
  ...subjectsOf("commissioning", commissioning, ofCommissioning.inputs),
  ...subjectsOf("condensate", condensate, ofCondensate.inputs),
  ...subjectsOf("display", display, ofDisplay.inputs),
  ...subjectsOf("field-text", fieldText, ofFieldText.inputs),
  ...subjectsOf("flare-joint", flareJoint, ofFlareJoint.inputs),
  ...subjectsOf("line-set", lineSet, ofLineSet.inputs),
  ...subjectsOf("logs", logs, ofLogs.inputs),
  ...subjectsOf("operating-check", operatingCheck, ofOperatingCheck.inputs),
  ...subjectsOf("planning", planning, ofPlanning.inputs),
  ...subjectsOf("pressure-test", pressureTest, ofPressureTest.inputs),
  ...subjectsOf("property-model", propertyModel, ofPropertyModel.inputs),
  ...subjectsOf("quantity", quantity, ofQuantity.inputs),
  ...subjectsOf("quantity.Quantity", ofQuantity.methods, ofQuantity.methodInputs),
  ...subjectsOf("read-quantity", readQuantity, ofReadQuantity.inputs),
  ...subjectsOf("refrigerants", refrigerants, ofRefrigerants.inputs),
  ...subjectsOf("sources", sources, ofSources.inputs),
  ...subjectsOf("supply-voltage", supplyVoltage, ofSupplyVoltage.inputs),
  ...subjectsOf("vacuum-decay", vacuumDecay, ofVacuumDecay.inputs),
  ...subjectsOf("vacuum-decay.monitor", ofVacuumDecay.monitor, ofVacuumDecay.monitorInputs),
];
