/**
 * How much refrigerant a room may hold: flammability by IEC 60335-2-40 Annex GG, concentration by
 * ASHRAE 34, and what the charge weighs as carbon dioxide.
 *
 * Not here, because no text of it was at hand: the tables of ASHRAE 15.2, the effective dispersal volume of
 * ASHRAE 15, and Annex GG with ventilation, joined rooms, circulation fans or leak sensors. The area
 * factors that manuals print belong to their product and are never derived.
 *
 * @module charge-limit
 */
export {
  type AnnexGGAnswer,
  type ChargeThresholds,
  chargeThresholds,
  type IndoorUnitPlace,
  type RoomUnit,
} from "./annex-gg.ts";
export * from "./assess-concentration.ts";
export * from "./assess-room-charge.ts";
export * from "./carbon-dioxide-equivalent.ts";
export * from "./concentration-limit.ts";
export type { RoomInstruments } from "./decide.ts";
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
export * from "./room-table.ts";
export type {
  ChargeLimitCause,
  ChargeLimitStatement,
  ChargeLimitStatements,
  ChargeLimitWord,
  LimitStanding,
} from "./statements.ts";
