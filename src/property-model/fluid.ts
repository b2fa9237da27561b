// What is known of a fluid's equation of state? The data shape of a pure or pseudo-pure fluid.
// Follows the Helmholtz energy form of Span, Multiparameter Equations of State (Springer 2000), ch. 3.
// Does not cover transport properties, surface tension, melting or sublimation.
import type { ResidualBlock } from "./residual-terms.ts";

/** The publication behind a set of coefficients. */
export interface Literature {
  /** Authors as printed. */
  readonly authors: string;
  /** Year of publication. */
  readonly year: number;
  /** Title of the paper. */
  readonly title: string;
  /** Journal, volume and pages. */
  readonly journal: string;
  /** Digital object identifier. */
  readonly doi: string;
}

/**
 * The ideal-gas part of the Helmholtz energy:
 * α⁰ = ln δ + a1 + a2 τ + logTau ln τ + Σ n τ^t + Σ n ln(1 − exp(−θ τ)).
 *
 * Source: Span, Multiparameter Equations of State (Springer 2000), ch. 3.
 */
export interface IdealPart {
  /** Constant term; with `a2` it only fixes the zero of entropy and enthalpy. */
  readonly a1: number;
  /** Coefficient of τ. */
  readonly a2: number;
  /** Coefficient of ln τ. */
  readonly logTau: number;
  /** Rows of [n, t] for n τ^t. */
  readonly power: readonly (readonly [n: number, t: number])[];
  /** Rows of [n, θ] for n ln(1 − exp(−θ τ)). */
  readonly planckEinstein: readonly (readonly [n: number, theta: number])[];
}

/** Rows of [n, t] of a saturation equation in θ = 1 − T/Tr. Source: the paper of the fluid. */
export type SaturationTerms = readonly (readonly [n: number, t: number])[];

/** What a pure and a pseudo-pure fluid have in common. Source: the paper of the fluid. */
export interface FluidData {
  /** The library's name of the fluid, such as `R32`. */
  readonly id: string;
  /** ASHRAE 34 designation. */
  readonly designation: string;
  /** Molar mass, kg/mol. */
  readonly molarMass: number;
  /** The gas constant that the paper uses, J/(mol K). */
  readonly gasConstant: number;
  /** Published critical point: K, Pa, mol/m³. */
  readonly critical: {
    readonly temperature: number;
    readonly pressure: number;
    readonly density: number;
  };
  /** Reducing constants of the equation, K and mol/m³; not always the critical point. */
  readonly reducing: { readonly temperature: number; readonly density: number };
  /** Validity of the equation: K, Pa. */
  readonly limits: {
    readonly minTemperature: number;
    readonly maxTemperature: number;
    readonly maxPressure: number;
  };
  /** Residual part of the Helmholtz energy. */
  readonly residual: readonly ResidualBlock[];
  /** Ideal part of the Helmholtz energy. */
  readonly ideal: IdealPart;
  /** Where the coefficients were published. */
  readonly literature: Literature;
}

/** A pure fluid. Saturation is the equality of pressure and Gibbs energy. Source: see its `literature`. */
export interface PureFluid extends FluidData {
  /** Tells the two apart. */
  readonly kind: "pure";
  /** Where these coefficients have dp/dρ = d²p/dρ² = 0, K: no two phases exist above. */
  readonly saturationLimit: number;
  /**
   * First guesses of the saturated densities: ρ′/ρr = 1 + Σ n θ^t and ln(ρ″/ρr) = Σ n θ^t, the latter
   * times Tr/T where `vaporOverT` says so; θ = 1 − T/Tr. They start the phase equilibrium and are no
   * result.
   */
  readonly start: {
    readonly temperature: number;
    readonly density: number;
    readonly vaporOverT: boolean;
    readonly liquid: SaturationTerms;
    readonly vapor: SaturationTerms;
  };
}

/**
 * A blend treated as one fluid. Bubble and dew pressure are published equations of their own:
 * ln(p/pc) = (Tc/T) Σ n θ^t, θ = 1 − T/Tc. Source: see its `literature`.
 */
export interface PseudoPureFluid extends FluidData {
  /** Tells the two apart. */
  readonly kind: "pseudo-pure";
  /** Bubble pressure equation. */
  readonly bubble: SaturationTerms;
  /** Dew pressure equation. */
  readonly dew: SaturationTerms;
}
