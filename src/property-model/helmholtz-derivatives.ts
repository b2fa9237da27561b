// Which derivatives of the Helmholtz energy does the model use?
// Follows the notation of Span (2000). Does not cover how they are computed: residual-terms.ts.

/**
 * A Helmholtz energy and its derivatives, each multiplied by the powers of δ and τ by which it is
 * differentiated, because that is how every property needs them.
 */
export interface HelmholtzDerivatives {
  /** α */
  a: number;
  /** δ ∂α/∂δ */
  d: number;
  /** δ² ∂²α/∂δ² */
  dd: number;
  /** τ ∂α/∂τ */
  t: number;
  /** τ² ∂²α/∂τ² */
  tt: number;
  /** δτ ∂²α/∂δ∂τ */
  dt: number;
}
