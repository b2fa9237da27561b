/**
 * Condensate: how much there is, whether it runs off by itself, how large the drain and its trap have
 * to be, and what a pump has to do.
 *
 * @module condensate
 */
export * from "./assess-condensate-pump.ts";
export * from "./assess-drain-slope.ts";
export * from "./assess-indoor-unit-pitch.ts";
export * from "./condensate-rate.ts";
export * from "./condensate-trap.ts";
export { type DrainRoute, drainCautions } from "./drain-cautions.ts";
export * from "./drain-size.ts";
export {
  codeDrainSlope,
  minimumFall,
  type SlopeReading,
  slopeOf,
  usualDrainSlope,
} from "./drain-slope.ts";
export { type AirState, humidityRatio } from "./moist-air.ts";
export * from "./plan-drain.ts";
export type {
  CondensateCause,
  CondensateCaution,
  CondensateStatement,
  CondensateStatements,
  CondensateWord,
} from "./statements.ts";
