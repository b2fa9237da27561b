/**
 * From the nameplate to the circuit: breaker or fuse, poles, conductors, grounding, disconnect, voltage drop.
 *
 * @module circuit-protection
 */
export * from "./assess-nameplate.ts";
export type { CircuitDrop } from "./circuit-drop.ts";
export * from "./circuit-from-nameplate.ts";
export * from "./circuit-input.ts";
export * from "./compare-supplies.ts";
export * from "./compressor-protection.ts";
export * from "./conductor-impedance.ts";
export * from "./conductor-size.ts";
export { breakerConnection, type Connection, type Supply } from "./connection.ts";
export * from "./equipment-grounding.ts";
export type { CircuitPart } from "./findings.ts";
export type { Load, OperatingMode } from "./loads.ts";
export {
  type ConductorDemand,
  type DeviceKind,
  type EquipmentKind,
  largestDeviceOnConductor,
  minimumConductor,
} from "./minimum-conductor.ts";
export * from "./nameplate-from-parts.ts";
export type { PermittedDevices } from "./permitted-devices.ts";
export type { RequiredDisconnect, WorkingSpace } from "./required-disconnect.ts";
export { cec2024 } from "./rules/cec-2024.ts";
export * from "./rules/circuit-rules.ts";
export { iec60364 } from "./rules/iec-60364.ts";
export { nec2020 } from "./rules/nec-2020.ts";
export { nec2023 } from "./rules/nec-2023.ts";
export { nec2026 } from "./rules/nec-2026.ts";
export * from "./trip-band.ts";
export { type AmpacityInput, type UsableAmpacity, usableAmpacity } from "./usable-ampacity.ts";
export * from "./voltage-drop.ts";
export * from "./wiring.ts";
