/**
 * Evacuation and vacuum decay: is the system dry and tight, wet, leaking, or can't one tell yet?
 *
 * @module vacuum-decay
 */
export { assessVacuumDecay, type VacuumDecayInput } from "./assess.ts";
export type { DecayCause } from "./cause.ts";

export {
  type Conductance,
  type ConductanceInput,
  effectivePumpingSpeed,
  type PumpedGas,
  tubeConductance,
  type VacuumTube,
} from "./conductance.ts";
export { type DecayFit, decayCurve, type SlowShape } from "./curve/index.ts";
export type {
  DecayStep,
  EvidenceShares,
  Exclusion,
  VacuumDecayAssessment,
} from "./decay-assessment.ts";
export type { DecayReading } from "./decay-reading.ts";
export type { ExclusionReason } from "./exclusion-reason.ts";
export type { GaugeRange, VacuumGauge } from "./gauge.ts";
export { createDecayMonitor, type DecayMonitor } from "./monitor.ts";
export type { Plateau } from "./plateau.ts";
export * from "./policies/index.ts";
export * from "./pump-down.ts";
export type { BlankTest, PumpIsolation, VacuumDecayOptions, VacuumHoses } from "./settings.ts";
export type { VacuumDecayStatement, VacuumDecayStatements, VacuumDecayWord } from "./statements.ts";
export { vacuumRiseOfLeak } from "./vacuum-rise.ts";
export { waterSaturationPressure, waterSaturationTemperature } from "./water.ts";
export { waterVaporMass } from "./water-vapor.ts";
