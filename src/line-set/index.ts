/**
 * Line sets: tubing, the nameplate's added charge, and whether it can be right.
 *
 * @module line-set
 */
export {
  type AdditionalChargeInput,
  additionalCharge,
  type ShortLineRule,
} from "./additional-charge.ts";
export * from "./astm-b280.ts";
export type { ChargeRate, MassPerStep } from "./charge-rate.ts";
export type { ChargeAssessment, ChargeBounds } from "./charge-verdict.ts";
export { type FilledTube, fullLineMass, fullLineRate } from "./full-line.ts";
export type { SafetyClass } from "./line-cautions.ts";
export * from "./liquid-charge-plausibility.ts";
export * from "./metric-tubes.ts";
export * from "./multi-split-charge.ts";
export {
  boreArea,
  copperMassPerLength,
  insideDiameter,
  type Tube,
  type TubeSize,
  tubeVolume,
} from "./tube.ts";
