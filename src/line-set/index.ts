/**
 * Line sets: tubing, the nameplate's added charge and whether it can be right, limits of the run, stock
 * lengths, pressure losses, oil return, recovery, and whether all of it fits the duct.
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
export * from "./friction-factor.ts";
export {
  type FrictionLoss,
  type FrictionLossInput,
  frictionLoss,
  lineVelocity,
  type TubeFlow,
} from "./friction-loss.ts";
export { type FilledTube, fullLineMass, fullLineRate, type LiquidFilledTube } from "./full-line.ts";
export * from "./identify-lines.ts";
export type { SafetyClass } from "./line-cautions.ts";
export * from "./line-fit.ts";
export * from "./line-run.ts";
export * from "./liquid-charge-plausibility.ts";
export * from "./liquid-subcooling.ts";
export * from "./liquid-velocity.ts";
export * from "./metric-tubes.ts";
export * from "./multi-split-charge.ts";
export * from "./rate-for-liquid-line.ts";
export * from "./recovery.ts";
export type { RunLimits } from "./run-limits.ts";
export type {
  LineSetFigure,
  LineSetStatement,
  LineSetStatements,
  LineSetWord,
  RateSlip,
} from "./statements.ts";
export * from "./static-head.ts";
export * from "./stock-length.ts";
export {
  boreArea,
  copperMassPerLength,
  insideDiameter,
  type Tube,
  type TubeSize,
  tubeVolume,
} from "./tube.ts";
export * from "./vapor-line.ts";
