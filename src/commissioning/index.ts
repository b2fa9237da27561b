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
  StatementTable,
  UnitShape,
  WordsShape,
} from "../shapes/index.ts";
export { usualAirDifference } from "./air-side.ts";
export { indoorLift } from "./all-runs.ts";
export { amend, type Change, recordRevision } from "./amend.ts";
export type { Amendment } from "./amendment.ts";
export {
  type AssessInstallationOptions,
  assessInstallation,
  type InstallationAssessment,
} from "./assess-installation.ts";
export { checkRecord } from "./check-record.ts";
export type { CheckVerdicts, NamedCheck, StepCheck } from "./check-verdicts.ts";
export { completeRecord, type Files } from "./complete-record.ts";
export type { FieldPath } from "./field-path.ts";
export {
  type CircuitRulesName,
  circuitRules,
  fromVersion1,
  recordShape,
  type VoltageStandardName,
  voltageStandards,
} from "./format/index.ts";
export type { HoldPoint } from "./hold-points.ts";
export { holdsAhead } from "./holds-ahead.ts";
export { type ManualCharge, manualCharge } from "./manual-charge.ts";
export type { CheckName, HoldName, HoldState, StepName, StepState } from "./names.ts";
export { hasNominalLength } from "./nominal-length.ts";
export type { OwnVerdict } from "./own-verdict.ts";
export type { Placed, PlacedCaution } from "./placed.ts";
export { type PortSize, portSize } from "./port-size.ts";
export type { StepProblem } from "./problem.ts";
export type {
  InstallationRecord,
  OnFile,
  Photo,
  Signature,
  Site,
  Valves,
} from "./record.ts";
export type { Charge, Evacuation, PressureTestPart, TestRequirement } from "./record-circuit.ts";
export type { Construction, Equipment, Manual, UnitPlate } from "./record-equipment.ts";
export type { InstrumentIdentity, Instruments } from "./record-instruments.ts";
export type { AirSideReading, ChargeReading, OperatingReading } from "./record-operation.ts";
export type { Planned } from "./record-plan.ts";
export type { Circuit, CircuitPlate, Power, SupplyPart } from "./record-power.ts";
export type { Drain, Joint, Room, Run, RunManual, Tubing } from "./record-run.ts";
export { recordText } from "./record-text.ts";
export { circuitRulesNamed } from "./rule-sets.ts";
export type { CommissioningStatement, CommissioningStatements } from "./statements.ts";
export type { InstallationStep } from "./step.ts";
export type { OptionalStep, Waiver, WaiverReason } from "./waiver.ts";
export type {
  CommissioningWord,
  ConstructionWord,
  FieldWord,
  HoldWord,
  LineWord,
  ModeWord,
  StandingWord,
  StepWord,
  WaiverWord,
} from "./words.ts";
