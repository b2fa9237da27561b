// The curves that a rising vacuum can follow, and the sums that fit them.
// A file of its own in the build, so that it is opened without the rest of vacuum-decay.
// Does not cover how a case is judged: the module does.
export { type Component, complete, componentAt } from "./component.ts";
export { type DecayFit, decayCurve, fitOf } from "./decay-curve.ts";
export {
  addPoint,
  baseIndex,
  copyGram,
  createScratch,
  emptyGram,
  fastAt,
  type Gram,
  type Scratch,
  selfAt,
  sharedColumns,
  slowColumns,
  slowIndex,
  timeAt,
  timeUnit,
  yAt,
} from "./gram.ts";
export {
  fastTaus,
  hyperbolic,
  levelling,
  type SlowShape,
  slowColumnsAt,
  slowCount,
  slowShape,
  slowShapes,
  slowStep,
  slowTau,
} from "./shapes.ts";
export { createWorkspace, factor, lineUncertainty, size, type Workspace } from "./workspace.ts";
