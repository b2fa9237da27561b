/**
 * How much refrigerant a room may hold: flammability by IEC 60335-2-40 Annex GG, concentration by
 * ASHRAE 34, what the charge weighs as carbon dioxide, and which law hangs on it.
 *
 * Not here, because no text of it was at hand: the tables of ASHRAE 15.2, mechanical ventilation by Annex GG, and
 * the higher charges of edition 7 for A2 and A3. The area factors that manuals print belong to their product and
 * are never derived.
 *
 * @module charge-limit
 */
export * from "./altitude-factor.ts";
export type {
  AnnexGGAnswer,
  ByArea,
  IndoorUnitPlace,
  RoomUnit,
  SmallRoomCap,
} from "./annex-gg.ts";
export * from "./assess-concentration.ts";
export * from "./assess-outdoor-unit.ts";
export * from "./assess-room-charge.ts";
export * from "./assess-rooms.ts";
export {
  type BlendWarmingPotential,
  blendWarmingPotential,
  type Composed,
  carbonDioxideEquivalent,
} from "./carbon-dioxide-equivalent.ts";
export * from "./concentration-limit.ts";
export type { RoomInstruments } from "./decide.ts";
export * from "./dispersal-limit.ts";
export {
  type ChargeThresholds,
  chargeThresholds,
  type FlammableClass,
  type RoomEdition,
} from "./editions.ts";
export * from "./leak-checks.ts";
export type { RuledEquipment, RuledEvent } from "./market-rows.ts";
export * from "./market-rules.ts";
export * from "./mass-concentration.ts";
export * from "./minimum-floor-area.ts";
export {
  type RefrigerantSafety,
  type RoomCaution,
  type RoomRefrigerant,
  refrigerantSafety,
  type SafetyLimit,
} from "./refrigerant-safety.ts";
export * from "./room-charge-limit.ts";
export type {
  Circulation,
  ConnectedRooms,
  EnhancedTightness,
  ProtectedLimit,
  RoomProtection,
} from "./room-protection.ts";
export * from "./room-table.ts";
export type {
  ChargeLimitCause,
  ChargeLimitStatement,
  ChargeLimitStatements,
  ChargeLimitWord,
  LimitStanding,
  ProtectionFact,
  Remembered,
} from "./statements.ts";
export { type VentilationOpening, ventilationOpening } from "./ventilation-opening.ts";
