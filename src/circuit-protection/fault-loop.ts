// How long may a run be so that a fault to ground still trips its breaker at once? The fault loop of a final circuit.
// Follows AS/NZS 3000:2018, B5.2.2, from one transcription; the same arithmetic serves any TN system.
// Does not cover reactance, TT systems, the impedance measured on site: a loop tester has the last word.
import { numberOf, objectOf, oneOf, refuse, siOf } from "../quantity/check.ts";
import { choose } from "../quantity/hints.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { m } from "../quantity/units/geometry.ts";
import { amperesOf } from "./checks.ts";
import type { MetricSize } from "./conductor-size.ts";
import type { TripCurve } from "./rules/index.ts";

/** Sizes of final circuits, as IEC 60228 has them. */
const usual: readonly MetricSize[] = ["1.5 mm²", "2.5 mm²", "4 mm²", "6 mm²", "10 mm²", "16 mm²"];

/** Copper while a fault heats it, Ω·mm²/m: B5.2.2. */
const resistivity = 0.0225;

/** Mean current at which a breaker trips at once, over its rating. C is B5.2.2; B and D are from memory. */
const meanTrip: Readonly<Record<TripCurve, number>> = { B: 4, C: 7.5, D: 12.5 };

/**
 * Longest one-way run of a final circuit whose breaker still trips at once when a line touches the protective conductor.
 *
 * Assumes copper, that a fifth of the voltage is lost before the circuit, and the mean of the breaker's band (7.5 times
 * its rating for curve C). Another practice takes the top of the band: state `tripsAt`.
 *
 * @param input - Rating and curve of the breaker, volts to ground, sizes of the line and the protective conductor.
 * @returns The length, in meters.
 * @throws {@link InvalidInputError} for a value outside its range or a size that is no cross-section.
 *
 * Cautions: a designer's figure, no verdict: the loop impedance measured on site and the adopted rules decide; for a
 * licensed electrician.
 *
 * Source: AS/NZS 3000:2018, B5.2.2 (one transcription): L = 0.8 U0 Sph Spe/(ρ Ia (Sph + Spe)).
 *
 * @example
 * ```ts
 * import { longestRunByFaultLoop } from "hvac-install-math/circuit-protection";
 * import { ampere, volt } from "hvac-install-math/quantity";
 *
 * const run = longestRunByFaultLoop({
 *   rating: ampere(20),
 *   curve: "C",
 *   voltageToGround: volt(230),
 *   line: "2.5 mm²",
 *   protective: "2.5 mm²",
 * });
 * run.toString(undefined, 1); // => 68.1 m
 * ```
 */
export function longestRunByFaultLoop(input: {
  /** Rating of the breaker, above 0. */
  readonly rating: Quantity<"current">;
  /** Its curve. */
  readonly curve: TripCurve;
  /** Multiple of the rating at which it trips at once, 1 to 50, where the mean of the band is not to be taken. */
  readonly tripsAt?: number | undefined;
  /** Volts from line to ground, above 0. */
  readonly voltageToGround: Quantity<"voltage">;
  /** Line conductor, copper. */
  readonly line: MetricSize;
  /** Protective conductor, copper. */
  readonly protective: MetricSize;
}): Quantity<"length"> {
  const { tripsAt } = objectOf("input", input);
  const rating = amperesOf("rating", input.rating);
  const mean = meanTrip[oneOf("curve", input.curve, ["B", "C", "D"])];
  const multiple = tripsAt === undefined ? mean : numberOf("tripsAt", tripsAt, { min: 1, max: 50 });
  const voltage = siOf("voltageToGround", input.voltageToGround, "voltage", { above: 0 });
  const [line, protective] = [areaOf("line", input.line), areaOf("protective", input.protective)];
  const shared = (line * protective) / (line + protective);
  return m((0.8 * voltage * shared) / (resistivity * multiple * rating));
}

/** The cross-section of a size that is named by it, in mm². */
function areaOf(argument: string, size: MetricSize): number {
  const area = /^(\d+(?:\.\d)?) mm²$/.exec(String(size))?.[1];
  return Number(area ?? refuse(argument, size, "a size in mm², such as 2.5 mm²", choose(usual)));
}
