/**
 * From the nameplate to the circuit: breaker or fuse, poles, conductors, grounding, disconnect, voltage drop.
 *
 * @module circuit-protection
 */
export {
  type FaultEnergy,
  type ProtectiveConductor,
  protectiveConductorArea,
} from "./adiabatic.ts";
export * from "./assess-nameplate.ts";
export type { CircuitDrop } from "./circuit-drop.ts";
export * from "./circuit-from-nameplate.ts";
export * from "./circuit-input.ts";
export type { DeviceKind, EquipmentKind } from "./circuit-kinds.ts";
export * from "./compare-supplies.ts";
export * from "./compressor-protection.ts";
export {
  type ConductorInput,
  conductorResistance,
  conduitImpedance,
} from "./conductor-impedance.ts";
export * from "./conductor-size.ts";
export { breakerConnection, type Connection, type Supply } from "./connection.ts";
export { type EquipmentGrounding, equipmentGrounding } from "./equipment-grounding.ts";
export { longestRunByFaultLoop } from "./fault-loop.ts";
export {
  type GroundFaultAnswer,
  type GroundFaultInput,
  groundFaultProtection,
} from "./ground-fault.ts";
export { heaterCurrent } from "./heater-current.ts";
export type { Load, OperatingMode } from "./loads.ts";
export {
  type ConductorDemand,
  largestDeviceOnConductor,
  minimumConductor,
} from "./minimum-conductor.ts";
export * from "./nameplate-from-parts.ts";
export type { PermittedDevices } from "./permitted-devices.ts";
export {
  minimumDisconnect,
  type RequiredDisconnect,
  type WorkingSpace,
} from "./required-disconnect.ts";
export type * from "./rules/circuit-rules.ts";
export {
  asNzs3000Australia,
  asNzs3000NewZealand,
  bs7671,
  cec2024,
  type GroundFaultRule,
  type GroundFaultText,
  iec60364,
  japan,
  nec2020,
  nec2023,
  nec2026,
  type SupplySystem,
  type SupplySystemName,
  type VoltageRating,
} from "./rules/index.ts";
export type {
  CircuitPart,
  CircuitProtectionStatement,
  CircuitProtectionStatements,
  CircuitProtectionWord,
  NameplateCause,
  Section,
  Unjudged,
} from "./statements.ts";
export * from "./trip-band.ts";
export { type AmpacityInput, type UsableAmpacity, usableAmpacity } from "./usable-ampacity.ts";
export type { ClauseVerification } from "./verification.ts";
export {
  longestRun,
  type VoltageDrop,
  type VoltageDropInput,
  voltageDrop,
} from "./voltage-drop.ts";
export * from "./wiring.ts";
