// What does the library know of a refrigerant? The shape of its data object.
// Follows ANSI/ASHRAE Standard 34 for designation, composition and safety class.
// Does not cover flammability limits and charge limits; see the module charge-limit.

import type { Citation } from "../assessment/assessment.ts";
import type { Quantity } from "../quantity/quantity.ts";

/**
 * How a figure was come by: printed in a source that was read, printed in a text that names the source, computed from
 * the composition or the model, or remembered and to be checked against the standard.
 */
export type Standing = "published" | "secondary" | "computed" | "from memory";

/** One component of a blend. Source: ANSI/ASHRAE Standard 34. */
export interface RefrigerantComponent {
  /** ASHRAE 34 designation, such as `R-32`. */
  readonly designation: string;
  /** Nominal share of the mass, per cent. */
  readonly massPercent: number;
}

/** A global warming potential over 100 years, CO₂ = 1. Source: the assessment report that names it. */
export interface WarmingPotential {
  /** The value, not rounded; 1 stands for "less than 1" too. */
  readonly value: number;
  /** How it was come by. */
  readonly standing: Standing;
}

/**
 * Chebyshev series of the saturation curves, made from the equation of state by the library's generator.
 * Plain SI numbers: K, Pa absolute, kg/m³. The variable of the first four is x = √(1 − T/Tr), of the last
 * two s = √(ln(pr/p)), both mapped from their `x` or `s` interval to −1 … 1.
 *
 * Source: Boyd, Chebyshev and Fourier Spectral Methods, 2nd ed. (2001), ch. 2.
 */
export interface SaturationSeries {
  /** Tr, K. */
  readonly temperature: number;
  /** pr, Pa. */
  readonly pressure: number;
  /** Interval of x. */
  readonly x: readonly [from: number, to: number];
  /** ln(p/Pa) at the bubble point. */
  readonly bubble: readonly number[];
  /** ln(p/Pa) at the dew point. */
  readonly dew: readonly number[];
  /** Density of the saturated liquid, kg/m³. */
  readonly liquid: readonly number[];
  /** ln(ρ″/(kg/m³)) of the saturated vapor. */
  readonly vapor: readonly number[];
  /** Bubble temperature, K, over s. */
  readonly bubbleInverse: InverseSeries;
  /** Dew temperature, K, over s. */
  readonly dewInverse: InverseSeries;
}

/** A series over s = √(ln(pr/p)). Source: see {@link SaturationSeries}. */
export interface InverseSeries {
  /** Interval of s. */
  readonly s: readonly [from: number, to: number];
  /** Coefficients of T, K. */
  readonly terms: readonly number[];
}

/**
 * A refrigerant: who it is, where its figures come from, and its saturation curves.
 *
 * Designation, composition and safety class follow ANSI/ASHRAE Standard 34 as the ASHRAE Handbook, Fundamentals, prints
 * it (R-452B and R-454C from memory); check them against the current addenda where they decide something.
 *
 * Source: ANSI/ASHRAE Standard 34; the works in `sources`.
 *
 * @example
 * ```ts
 * import { R454B } from "hvac-install-math/refrigerants";
 *
 * R454B.designation; // => R-454B
 * R454B.composition.map((c) => `${c.massPercent} % ${c.designation}`).join(", "); // => 68.9 % R-32, 31.1 % R-1234yf
 * R454B.safetyClass; // => A2L
 * ```
 */
export interface Refrigerant {
  /** ASHRAE 34 designation, such as `R-410A`. */
  readonly designation: string;
  /** Chemical name; "blend" for a mixture. */
  readonly name: string;
  /** Components by mass; one of 100 % for a pure substance. */
  readonly composition: readonly RefrigerantComponent[];
  /** ASHRAE 34 safety class: A lower, B higher toxicity; 1, 2L, 2, 3 by flammability. */
  readonly safetyClass: "A1" | "A2L" | "A2" | "A3" | "B1" | "B2L" | "B2" | "B3";
  /** Critical point: of the paper, or of the mixture model where `model` is `mixture`. */
  readonly criticalPoint: {
    readonly temperature: Quantity<"temperature">;
    readonly pressure: Quantity<"absolutePressure">;
  };
  /**
   * Global warming potential by assessment report of the IPCC, where the report has a value for every component; the
   * fourth has none for HFOs and hydrocarbons. What a law fixes instead: `blendWarmingPotential` of charge-limit.
   */
  readonly gwp: {
    readonly ar4?: WarmingPotential | undefined;
    readonly ar5?: WarmingPotential | undefined;
    readonly ar6?: WarmingPotential | undefined;
  };
  /** Temperatures for which the saturation functions answer. */
  readonly range: {
    readonly min: Quantity<"temperature">;
    readonly max: Quantity<"temperature">;
  };
  /** The kind of equation behind the curves; see the module property-model. */
  readonly model: "pure" | "pseudo-pure" | "mixture";
  /** The papers of the model, and of the GWP. */
  readonly sources: readonly Citation[];
  /** What the model is known to be weak in. */
  readonly weakness: string;
  /** The curves; use the functions of this module rather than these numbers. */
  readonly saturation: SaturationSeries;
}
