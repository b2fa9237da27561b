/**
 * Flare joints: how tight, how wide, which nut, which service-port adapter, and whether a measured
 * joint keeps to it.
 *
 * @module flare-joint
 */
export * from "./assess-flare-cone.ts";
export * from "./assess-flare-diameter.ts";
export * from "./assess-flare-torque.ts";
export * from "./assess-flare-turn.ts";
export * from "./assess-flare-wall.ts";
export type { FlareKind, FlareLimits } from "./flare-limits.ts";
export * from "./flare-nut.ts";
export * from "./flare-torque.ts";
export type { FlareTorqueSource } from "./flare-torque-source.ts";
export { type FlareRefrigerant, type FlareTube, flareTube } from "./flare-tube.ts";
export type { FlareAssessment } from "./judge.ts";
export * from "./service-port.ts";
export type {
  FlareCause,
  FlareFigure,
  FlareJointStatement,
  FlareJointStatements,
  FlareJointWord,
} from "./statements.ts";
