/**
 * Thermodynamic properties of refrigerants, nitrogen and water from their published equations of state,
 * and of blends from the multi-fluid mixture model: saturation, density, enthalpy, entropy, heat
 * capacities and speed of sound.
 *
 * This is the reference from which the small curves of `refrigerants` are made; use those in an app and
 * this where more than saturation is wanted. Typical uncertainties: pure fluids 0.02 % to 0.1 % in
 * vapor pressure and density (R32 from its paper, the others from memory); from the papers: pseudo-pure blends 0.5 % in bubble and dew pressure, 0.1 % in
 * density; mixtures about 0.5 % where the pair has a fitted departure function, more where it has none.
 * Not for the last ten-thousandth below a critical temperature.
 *
 * @module property-model
 */
export { type BinaryPair, binaryPairs } from "./binary-pairs.ts";
export type { Phase } from "./density-solver.ts";
export type {
  FluidData,
  IdealPart,
  Literature,
  PseudoPureFluid,
  PureFluid,
  SaturationTerms,
} from "./fluid.ts";
export { nitrogen } from "./fluids/nitrogen.ts";
export { R22 } from "./fluids/r22.ts";
export { R32 } from "./fluids/r32.ts";
export { R125 } from "./fluids/r125.ts";
export { R134a } from "./fluids/r134a.ts";
export { R143a } from "./fluids/r143a.ts";
export { R152a } from "./fluids/r152a.ts";
export { R227ea } from "./fluids/r227ea.ts";
export { R290 } from "./fluids/r290.ts";
export { R404A } from "./fluids/r404a.ts";
export { R407C } from "./fluids/r407c.ts";
export { R410A } from "./fluids/r410a.ts";
export { R507A } from "./fluids/r507a.ts";
export { R600a } from "./fluids/r600a.ts";
export { R717 } from "./fluids/r717.ts";
export { R744 } from "./fluids/r744.ts";
export { R1233zdE } from "./fluids/r1233zde.ts";
export { R1234yf } from "./fluids/r1234yf.ts";
export { R1234zeE } from "./fluids/r1234zee.ts";
export { water } from "./fluids/water.ts";
export type { PropertyModelHint } from "./hints.ts";
export { type Mixture, type MixtureInput, mixture } from "./mixture.ts";
export type { NonAnalyticTerm } from "./non-analytic-term.ts";
export type { GaussianTerm, ResidualBlock } from "./residual-terms.ts";
export {
  bubblePoint,
  dewPoint,
  type SaturationInput,
  type SaturationPoint,
  type SaturationState,
  saturation,
} from "./saturation.ts";
export type { Fluid } from "./saturation-at.ts";
export { density, type FluidState, stateAt } from "./state.ts";
