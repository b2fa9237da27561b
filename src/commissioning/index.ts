/**
 * One record of a whole installation: its form, its verdict in the order of the work with what is missing
 * and what may not be done yet, and amendments that lose nothing.
 *
 * Start with {@link InstallationRecord} and {@link assessInstallation}.
 *
 * @module commissioning
 */

export type {
  AtShape,
  CasesShape,
  Draft,
  EachShape,
  EitherShape,
  Fields,
  FieldsShape,
  IsoTime,
  ItemsShape,
  ListShape,
  NamedShape,
  Shape,
  StatementsShape,
  UnitShape,
  WordsShape,
} from "../shapes/index.ts";
export { amend, type Change, recordRevision } from "./amend.ts";
export type { Amendment } from "./amendment.ts";
export { assessInstallation, type InstallationAssessment } from "./assess-installation.ts";
export { checkRecord } from "./check-record.ts";
export type { CheckName, CheckVerdicts, NamedCheck, StepCheck } from "./check-verdicts.ts";
export { recordShape } from "./generated/record-shape.ts";
export type { HoldName, HoldPoint } from "./hold-points.ts";
export type { NotApplicable, OptionalStep } from "./not-applicable.ts";
export type { InstallationRecord, Photo, Signature, Valves } from "./record.ts";
export type { ChargeReading, Drain, OperatingReading, Room } from "./record-building.ts";
export type {
  Equipment,
  InstrumentIdentity,
  Instruments,
  Manual,
  Site,
  UnitPlate,
} from "./record-equipment.ts";
export type { Circuit, Power, SupplyPart } from "./record-power.ts";
export type { Charge, Evacuation, Joint, PressureTestPart, Tubing } from "./record-tubing.ts";
export {
  type CircuitRulesName,
  circuitRules,
  type VoltageStandardName,
  voltageStandards,
} from "./rule-names.ts";

export type { InstallationStep, StepName, StepProblem } from "./step.ts";
