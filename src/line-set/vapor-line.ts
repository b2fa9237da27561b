// Is the vapor fast enough to carry the oil home, and slow enough to be quiet?
// Follows manufacturers' piping guides (velocities) and Jacobs, Scheidecker & Elphick (1976) for the least
// mass flux that drags an oil film up a riser, from memory. Does not cover double risers and long traps.
import { cite, verdict } from "../assessment/assessment.ts";
import { objectOf, oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { kgPerHour, lbPerHour } from "../quantity/units/mass.ts";
import { ftPerMinute, mPerSecond } from "../quantity/units/time.ts";
import { decide, type Finding } from "./decide.ts";
import { flowOf } from "./friction-loss.ts";
import { manuals } from "./line-cautions.ts";
import { say, type Verdict } from "./statements.ts";
import { diametersOf, isImperial, type TubeSize } from "./tube.ts";

/**
 * Refrigerant flow for a cooling capacity: ṁ = Q/(h leaving the evaporator − h of the liquid entering).
 *
 * @param input - `capacity`, 0 or more, and `enthalpyDifference`, from 10 kJ/kg.
 * @returns The mass flow, in lb/h for a capacity in Btu/h or tons, else in kg/h.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 *
 * Source: energy balance of the evaporator.
 *
 * @example
 * ```ts
 * import { refrigerantMassFlow } from "hvac-install-math/line-set";
 * import { kgPerHour, kJPerKg, kW } from "hvac-install-math/quantity";
 *
 * const flow = refrigerantMassFlow({ capacity: kW(3.5), enthalpyDifference: kJPerKg(160) });
 * flow.toString(kgPerHour, 2); // => 78.75 kg/h
 * ```
 */
export function refrigerantMassFlow(input: {
  /** Cooling capacity. */ readonly capacity: Quantity<"power">;
  /** Enthalpy of the vapor leaving less that of the liquid entering the evaporator. */
  readonly enthalpyDifference: Quantity<"specificEnergy">;
}): Quantity<"massFlow"> {
  const power = siOf("capacity", objectOf("input", input).capacity, "power", { min: 0 });
  const h = siOf("enthalpyDifference", input.enthalpyDifference, "specificEnergy", { min: 1e4 });
  const imperial = ["Btu/h", "ton"].includes(input.capacity.unit.symbol);
  return new Quantity(power / h, imperial ? lbPerHour : kgPerHour);
}

/**
 * What decides whether oil climbs a riser.
 *
 * Source: Jacobs, Scheidecker & Elphick (1976).
 */
export interface OilRiser {
  /** Outside diameter and wall. */
  readonly tube: TubeSize;
  /** Density of the vapor, up to 500 kg/m³. */
  readonly vaporDensity: Quantity<"density">;
  /** Density of the oil with refrigerant in it, about 900 to 1050 kg/m³. */
  readonly oilDensity: Quantity<"density">;
}

/**
 * Least vapor velocity that carries an oil film up a riser: √(j*) = 0.85, so that
 * v = 0.85²·√(g·d·(ρ_oil − ρ_vapor)/ρ_vapor).
 *
 * @param riser - Tube, vapor density, oil density.
 * @returns The velocity, in ft/min for a tube in inches, else in m/s.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 *
 * Source: Jacobs, M. L.; Scheidecker, F. A.; Elphick, S. M., "Oil entrainment by refrigerant vapors in
 * suction and hot gas risers", ASHRAE Trans. 82(2) (1976), from memory; agrees within 10 % with riser
 * capacities of the ASHRAE Handbook, Refrigeration (2022), halocarbon systems, from memory too.
 *
 * @example
 * ```ts
 * import { astmB280Tube, oilEntrainmentVelocity } from "hvac-install-math/line-set";
 * import { kgPerM3, mPerSecond } from "hvac-install-math/quantity";
 *
 * const least = oilEntrainmentVelocity({
 *   tube: astmB280Tube({ size: "3/8", temper: "annealed" }),
 *   vaporDensity: kgPerM3(33),
 *   oilDensity: kgPerM3(980),
 * });
 * least.toString(mPerSecond, 2); // => 1.08 m/s
 * ```
 */
export function oilEntrainmentVelocity(riser: OilRiser): Quantity<"speed"> {
  const d = diametersOf("tube", riser?.tube).inside;
  const vapor = siOf("vaporDensity", riser.vaporDensity, "density", { above: 0, max: 500 });
  const oil = siOf("oilDensity", riser.oilDensity, "density", { above: vapor, max: 1500 });
  const v = 0.85 ** 2 * Math.sqrt((9.80665 * d * (oil - vapor)) / vapor);
  return new Quantity(v, isImperial(riser.tube.outsideDiameter) ? ftPerMinute : mPerSecond);
}

/**
 * The vapor line at full and at least capacity.
 */
export interface VaporLineInput extends OilRiser {
  /** Whether the vapor climbs: `riser` where the outdoor unit is above in cooling. */
  readonly direction: "horizontal" | "riser";
  /** Mass flow at full capacity. */
  readonly fullMassFlow: Quantity<"massFlow">;
  /** Mass flow at the least capacity to which an inverter turns down; full again for a single speed. */
  readonly minimumMassFlow: Quantity<"massFlow">;
  /** Least velocity by the manual; 800 ft/min horizontal and 1000 ft/min in a riser when left out. */
  readonly minimumVelocity?: Quantity<"speed"> | undefined;
  /** Largest velocity for noise by the manual; 3000 ft/min when left out. */
  readonly maximumVelocity?: Quantity<"speed"> | undefined;
}

/**
 * The verdict on the vapor line.
 */
export interface VaporLineAssessment extends Verdict {
  /** Velocity at full capacity. */
  readonly fullVelocity: Quantity<"speed">;
  /** Velocity at least capacity. */
  readonly minimumCapacityVelocity: Quantity<"speed">;
  /** Least velocity that carries oil up a riser. */
  readonly entrainmentVelocity: Quantity<"speed">;
}

/**
 * Judges the velocity in the vapor line at full and at least capacity: fast enough for the oil, slow
 * enough for the ear.
 *
 * Assumes the same vapor density at both capacities. Between the physical limit for oil and the guide's
 * velocity the answer is `inconclusive`: the unit's manual, which may run an oil-return cycle, decides.
 *
 * @param input - Tube, flows, densities, direction, the manual's velocities.
 * @returns The verdict with the velocities.
 * @throws {@link InvalidInputError} when the least flow is more than the full one, or an argument is
 * missing, of another kind or impossible.
 *
 * Source: two manufacturers' piping guides (800 and 1000 ft/min, 3000 ft/min for noise); Jacobs et al.,
 * ASHRAE Trans. 82(2) (1976), from memory. The older 700 and 1500 ft/min are common practice, no source.
 *
 * @example
 * ```ts
 * import { assessVaporLine, astmB280Tube } from "hvac-install-math/line-set";
 * import { ftPerMinute, kgPerHour, kgPerM3 } from "hvac-install-math/quantity";
 *
 * const verdict = assessVaporLine({
 *   tube: astmB280Tube({ size: "3/8", temper: "annealed" }),
 *   direction: "riser",
 *   fullMassFlow: kgPerHour(78),
 *   minimumMassFlow: kgPerHour(22),
 *   vaporDensity: kgPerM3(33),
 *   oilDensity: kgPerM3(980),
 * });
 * verdict.outcome; // => inconclusive
 * verdict.minimumCapacityVelocity.toString(ftPerMinute, 0); // => 744 ft/min
 * ```
 */
export function assessVaporLine(input: VaporLineInput): VaporLineAssessment {
  const { tube, vaporDensity: density, fullMassFlow, minimumMassFlow } = objectOf("input", input);
  const riser = oneOf("direction", input.direction, ["horizontal", "riser"]) === "riser";
  const oil = oilEntrainmentVelocity(input);
  const { unit } = oil;
  siOf("fullMassFlow", fullMassFlow, "massFlow", { above: 0 });
  if (siOf("minimumMassFlow", minimumMassFlow, "massFlow", { above: 0 }) > fullMassFlow.si) {
    throw new InvalidInputError({
      argument: "minimumMassFlow",
      value: String(minimumMassFlow),
      allowed: `at most fullMassFlow ${fullMassFlow}`,
      bound: { value: minimumMassFlow, is: "max", limit: fullMassFlow },
    });
  }
  const at = (massFlow: Quantity<"massFlow">) =>
    new Quantity(flowOf({ tube, massFlow, density }).v, unit);
  const full = at(fullMassFlow);
  const low = at(minimumMassFlow);
  const {
    minimumVelocity: least = ftPerMinute(riser ? 1000 : 800).as(unit),
    maximumVelocity: most = ftPerMinute(3000).as(unit),
  } = input;
  siOf("minimumVelocity", least, "speed", { min: 0 });
  siOf("maximumVelocity", most, "speed", { above: least.si });

  const noise: Finding[] = !isAtMost(full.si, most.si)
    ? [
        {
          outcome: "fail",
          said: say("line-set.vapor-noise", { velocity: full, most }),
          actions: [say("line-set.wider-vapor-line")],
        },
      ]
    : [];
  return verdict({
    ...decide([...noise, oilFinding(low, least, riser ? oil : undefined)]),
    assumptions: [
      say("line-set.same-density"),
      ...(input.minimumVelocity ? [] : [say("line-set.guide-minimum-velocity", { least })]),
      ...(input.maximumVelocity ? [] : [say("line-set.guide-maximum-velocity", { most })]),
    ],
    cautions: [],
    sources: [manuals, cite("jacobs-1976")],
    fullVelocity: full,
    minimumCapacityVelocity: low,
    entrainmentVelocity: oil,
  });
}

/** Whether the oil comes back at this velocity; `oil` is what lifts it, in a riser. */
function oilFinding(
  velocity: Quantity<"speed">,
  least: Quantity<"speed">,
  oil: Quantity<"speed"> | undefined,
): Finding {
  if (isAtLeast(velocity.si, least.si)) {
    return { outcome: "pass", said: say("line-set.oil-returns", { velocity, least }) };
  }
  if (oil && !isAtLeast(velocity.si, oil.si)) {
    const said = say("line-set.oil-stays", { velocity, oil });
    return { outcome: "fail", said, actions: [say("line-set.smaller-riser")] };
  }
  return {
    outcome: "inconclusive",
    said: oil
      ? say("line-set.oil-return-open-riser", { velocity, least, oil })
      : say("line-set.oil-return-open-level", { velocity, least }),
    actions: [say("line-set.ask-oil-return")],
  };
}
