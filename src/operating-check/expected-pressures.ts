// What should the gauges show about now? Pressures from air temperatures and stated approaches.
// Follows common practice, no source: coil temperature is air temperature less or plus an approach.
// Does not cover units that hunt, defrost or have just started; the approaches are the caller's.
import { type Citation, cite } from "../assessment/assessment.ts";
import { toGauge } from "../quantity/atmosphere.ts";
import { objectOf, oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import { bubblePressure, dewPressure, type Refrigerant } from "../refrigerants/index.ts";
import { type GaugeCaution, gaugeCautions } from "./cautions.ts";
import { type RunningMode, runningModes } from "./service-ports.ts";
import { type OperatingCheckStatement, say } from "./statements.ts";

/**
 * Smallest and largest difference between the air that enters a coil and the saturation temperature in
 * it, both 0 to 60 K.
 *
 * Source: the manual, or the caller's experience.
 */
export interface ApproachRange {
  /** Smallest difference. */
  readonly low: Quantity<"temperatureDifference">;
  /** Largest difference. */
  readonly high: Quantity<"temperatureDifference">;
}

/**
 * A running unit and the air around it.
 */
export interface RunningUnit {
  /** The refrigerant, of any kind. */
  readonly refrigerant: Refrigerant;
  /** What the unit does. */
  readonly mode: RunningMode;
  /** Air that enters the indoor coil. */
  readonly indoorTemperature: Quantity<"temperature">;
  /** Air that enters the outdoor coil. */
  readonly outdoorTemperature: Quantity<"temperature">;
  /** How far the evaporating temperature lies below the air at the evaporator. */
  readonly evaporatorApproach: ApproachRange;
  /** How far the condensing temperature lies above the air at the condenser. */
  readonly condenserApproach: ApproachRange;
  /** Atmospheric pressure on site: gauges read against it. */
  readonly atmosphere: Quantity<"absolutePressure">;
}

/**
 * A window of pressure and the saturation temperatures behind it.
 *
 * Source: see {@link expectedPressures}.
 */
export interface SaturationWindow {
  /** Lowest pressure to be expected. */
  readonly from: Quantity<"gaugePressure">;
  /** Highest pressure to be expected. */
  readonly to: Quantity<"gaugePressure">;
  /** Saturation temperature at the lowest pressure. */
  readonly fromTemperature: Quantity<"temperature">;
  /** Saturation temperature at the highest pressure. */
  readonly toTemperature: Quantity<"temperature">;
}

/**
 * What to expect on both sides of a running unit.
 *
 * Source: see {@link expectedPressures}.
 */
export interface ExpectedPressures {
  /** Low side: dew pressure in the evaporator. */
  readonly low: SaturationWindow;
  /** High side: bubble pressure in the condenser. */
  readonly high: SaturationWindow;
  /** Side that the larger (vapor) port shows in this mode. */
  readonly vaporPort: "low" | "high";
  /** What was assumed. */
  readonly assumptions: readonly OperatingCheckStatement[];
  /** What can hurt someone. */
  readonly cautions: readonly GaugeCaution[];
  /** Where it stands. */
  readonly sources: readonly Citation[];
}

/**
 * The pressures to be expected on both sides of a running unit, for any refrigerant, from the air on both
 * coils and how far the coils are from it. In cooling the indoor coil evaporates, in heating the outdoor
 * coil.
 *
 * A window tells whether the unit does what it should about now. It does not tell the charge.
 *
 * @param unit - Refrigerant, mode, two air temperatures, two approaches, site atmosphere.
 * @returns Windows of both sides and the side of the larger port; in psig for temperatures in °F.
 * @throws {@link OutOfRangeError} when a coil temperature is beyond the refrigerant's saturation range.
 * @throws {@link InvalidInputError} when a kind, word or range does not fit.
 *
 * Cautions: connect gauges only with a reason; see {@link assessGaugeSet} before you do.
 *
 * Source: common practice, no source; saturation by the refrigerant's `sources`.
 *
 * @example
 * ```ts
 * import { expectedPressures } from "hvac-install-math/operating-check";
 * import { deltaF, degF, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R410A } from "hvac-install-math/refrigerants";
 *
 * const { low, high } = expectedPressures({
 *   refrigerant: R410A,
 *   mode: "cooling",
 *   indoorTemperature: degF(75),
 *   outdoorTemperature: degF(95),
 *   evaporatorApproach: { low: deltaF(30), high: deltaF(40) },
 *   condenserApproach: { low: deltaF(15), high: deltaF(25) },
 *   atmosphere: standardAtmosphere,
 * });
 * `${low.from.toString(undefined, 0)} to ${low.to.toString(undefined, 0)}`; // => 107 psig to 130 psig
 * `${high.from.toString(undefined, 0)} to ${high.to.toString(undefined, 0)}`; // => 366 psig to 419 psig
 * ```
 */
export function expectedPressures(unit: RunningUnit): ExpectedPressures {
  objectOf("unit", unit);
  const { refrigerant, indoorTemperature: indoor, outdoorTemperature: outdoor, atmosphere } = unit;
  siOf("indoorTemperature", indoor, "temperature");
  siOf("outdoorTemperature", outdoor, "temperature");
  const cooling = oneOf("mode", unit.mode, runningModes) === "cooling";
  const [lowE, highE] = approachOf("evaporatorApproach", unit.evaporatorApproach);
  const [lowC, highC] = approachOf("condenserApproach", unit.condenserApproach);
  const [source, sink] = cooling ? [indoor, outdoor] : [outdoor, indoor];
  const window = (saturation: typeof dewPressure, air: typeof source, a: number, b: number) => {
    const fromTemperature = new Quantity(air.si + a, air.unit);
    const toTemperature = new Quantity(air.si + b, air.unit);
    return {
      from: toGauge(saturation(refrigerant, fromTemperature), atmosphere),
      to: toGauge(saturation(refrigerant, toTemperature), atmosphere),
      fromTemperature,
      toTemperature,
    };
  };
  return frozen({
    low: window(dewPressure, source, -highE, -lowE),
    high: window(bubblePressure, sink, lowC, highC),
    vaporPort: cooling ? "low" : "high",
    assumptions: [
      say("operating-check.steady-full-speed"),
      say("operating-check.approaches-as-stated"),
    ],
    cautions: gaugeCautions(refrigerant),
    sources: [cite("common-practice"), ...refrigerant.sources],
  });
}

function approachOf(argument: string, approach: ApproachRange): [low: number, high: number] {
  const limits = { min: 0, max: 60 };
  const low = siOf(`${argument}.low`, approach?.low, "temperatureDifference", limits);
  const high = siOf(`${argument}.high`, approach.high, "temperatureDifference", limits);
  if (low <= high) return [low, high];
  throw new InvalidInputError({
    argument: `${argument}.low`,
    value: String(approach.low),
    allowed: `at most ${approach.high}`,
    bound: { value: approach.low, is: "max", limit: new Quantity(high, approach.low.unit) },
  });
}
