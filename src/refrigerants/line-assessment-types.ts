// What goes into a verdict on superheat or subcooling, and what comes out?
// Follows the library's own shape of a verdict, see the module assessment.
// Does not cover the rule itself; that is line-assessment.ts.
import type { Assessment, Estimate } from "../assessment/assessment.ts";
import type { Instrument } from "../assessment/uncertainty.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { LineReading } from "./line-reading.ts";
import type { RefrigerantsStatement } from "./statements.ts";

/**
 * A reading with its target and its instruments.
 */
export type LineAssessmentInput = LineReading & {
  /** The superheat or subcooling that the nameplate or the manufacturer's chart asks for, 0 or more. */
  readonly target: Quantity<"temperatureDifference">;
  /** How far from the target is still right, above 0; manufacturers often say ±3 °F to ±5 °F. */
  readonly tolerance: Quantity<"temperatureDifference">;
  /** What the two probes can do; `atmosphere` where the barometer is uncertain too. */
  readonly instruments: {
    readonly pressure: Instrument<"gaugePressure">;
    readonly temperature: Instrument<"temperature">;
    readonly atmosphere?: Instrument<"absolutePressure"> | undefined;
  };
  /** How sure a pass or a fail has to be, 0.5 to below 1; 0.95 when left out. */
  readonly confidence?: number | undefined;
};

/**
 * The verdict on superheat or subcooling. `cause` says on which side of the target it is when it fails.
 *
 * Source: JCGM 106:2012, 8.3; the shape is the library's own.
 */
export interface LineAssessment extends Assessment<"low" | "high", RefrigerantsStatement> {
  /** Superheat or subcooling with its uncertainty. */
  readonly result: Estimate<"temperatureDifference">;
  /** Dew temperature (superheat) or bubble temperature (subcooling) with its uncertainty. */
  readonly saturationTemperature: Estimate<"temperature">;
  /** Probability that the true value lies within the tolerance of the target, 0 to 1. */
  readonly conformanceProbability: number;
}
