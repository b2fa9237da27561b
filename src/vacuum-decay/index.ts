/**
 * Evacuation and vacuum decay: is the system dry and tight, wet, leaking, or can't one tell yet?
 *
 * @module vacuum-decay
 */
export { assessVacuumDecay, type VacuumDecayInput } from "./assess.ts";
export type {
  DecayReading,
  DecayStep,
  Exclusion,
  VacuumDecayAssessment,
} from "./assessment.ts";
export type { DecayCause, EvidenceShares } from "./cause.ts";
export type { ExclusionReason } from "./collect.ts";
export { compareLineAndSaturating, type ShapeComparison } from "./compare-shapes.ts";
export {
  type Conductance,
  type ConductanceInput,
  effectivePumpingSpeed,
  type PumpedGas,
  tubeConductance,
  type VacuumTube,
} from "./conductance.ts";
export { type DecayFit, decayCurve } from "./decay-curve.ts";
export { createDecayMonitor, type DecayMonitor } from "./monitor.ts";
export type { Plateau } from "./plateau.ts";
export * from "./policies.ts";
export * from "./pump-down.ts";
export type { GaugeRange, VacuumDecayOptions, VacuumGauge } from "./settings.ts";
export type { SlowShape } from "./shapes.ts";
export { vacuumRiseOfLeak } from "./vacuum-rise.ts";
export { waterSaturationPressure, waterSaturationTemperature } from "./water.ts";
export { waterVapourMass } from "./water-vapour.ts";
