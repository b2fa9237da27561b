// Which courses can a rising vacuum take? The curves and the sums that fit them, opened without the rest of the module.
// Follows the sources of shapes.ts. Does not cover which of them is true.
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
