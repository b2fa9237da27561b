// Is superheat or subcooling on target, or can the probes not tell? A verdict with its uncertainty.
// Follows JCGM 100:2008 for the uncertainty and JCGM 106:2012, 8.3, for the decision.
// Does not cover what the target should be: it stands on the nameplate or in the manufacturer's chart.
import { cite, estimate, verdict } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { standardUncertainty } from "../assessment/uncertainty.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { pascal } from "../quantity/units/pressure.ts";
import { deltaK } from "../quantity/units/temperature.ts";
import type { LineAssessment, LineAssessmentInput } from "./line-assessment-types.ts";
import { cautionOfSide, doubtOfTarget, doubtOfTolerance } from "./line-doubts.ts";
import { assumptionsOf, cautionsOf, saidOf } from "./line-statements.ts";
import type { Refrigerant } from "./refrigerant.ts";
import {
  absoluteOf,
  type Side,
  saturationTemperatureOf,
  temperatureAt,
  temperatureUnitFor,
} from "./saturation/index.ts";
import { named } from "./statements.ts";

/**
 * Judges superheat against a target, given what the probes can do. It passes only where the tolerance is
 * kept even after allowing for the uncertainty, and says so when the probes cannot tell. Below zero it
 * never passes. A target above 25 K (`refrigerants.target-out-of-reach`) decides nothing; a tolerance above 5 K
 * (`refrigerants.tolerance-wide`) or one as large as the target (`refrigerants.tolerance-reaches-saturation`) lets nothing pass. A
 * reading that looks like that of the other side of the unit carries the finding
 * `refrigerants.looks-like-other-side`.
 *
 * The uncertainty holds the pressure probe, the temperature probe, the atmosphere where its instrument is
 * given, and the equation of state (standard uncertainty 0.05 % of the pressure for a pure substance,
 * 0.25 % for a blend). Contact and insulation of the probe are not in it. Readings have to be steady.
 *
 * Liquid refrigerant causes frostbite; A2L and A3 refrigerants can ignite and B classes are
 * toxic: the cautions of the result say which applies. Inverter and electronic-valve systems are
 * charged by weight, whatever the superheat.
 *
 * @param refrigerant - Such as `R410A`.
 * @param input - The reading, the target with its tolerance, the instruments.
 * @returns The verdict with the superheat, the dew temperature and their uncertainty.
 * @throws {@link OutOfRangeError} when the pressure has no saturation temperature in the range.
 * @throws {@link InvalidInputError} when an argument is missing or of another kind.
 *
 * Source: JCGM 100:2008, eq. 10; JCGM 106:2012, 8.3; what is doubted is common practice, no source.
 *
 * @example
 * ```ts
 * import { deltaF, degF, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R410A, assessSuperheat } from "hvac-install-math/refrigerants";
 *
 * const verdict = assessSuperheat(R410A, {
 *   pressure: psig(118),
 *   lineTemperature: degF(52),
 *   atmosphere: standardAtmosphere,
 *   target: deltaF(12),
 *   tolerance: deltaF(5),
 *   instruments: { pressure: { accuracy: psi(1) }, temperature: { accuracy: deltaF(1) } },
 * });
 * verdict.outcome; // => pass
 * verdict.result.expandedUncertainty.toString(deltaF, 1); // => 1.3 Δ°F
 * ```
 */
export function assessSuperheat(
  refrigerant: Refrigerant,
  input: LineAssessmentInput,
): LineAssessment {
  return assess(refrigerant, input, "dew", 1);
}

/**
 * Judges subcooling against a target, given what the probes can do; see {@link assessSuperheat}. A target above
 * 15 K decides nothing.
 *
 * Liquid refrigerant causes frostbite; A2L and A3 refrigerants can ignite and B classes are
 * toxic: the cautions of the result say which applies.
 *
 * @param refrigerant - Such as `R410A`.
 * @param input - The reading, the target with its tolerance, the instruments.
 * @returns The verdict with the subcooling, the bubble temperature and their uncertainty.
 * @throws {@link OutOfRangeError} when the pressure has no saturation temperature in the range.
 * @throws {@link InvalidInputError} when an argument is missing or of another kind.
 *
 * Source: JCGM 100:2008, eq. 10; JCGM 106:2012, 8.3; what is doubted is common practice, no source.
 *
 * @example
 * ```ts
 * import { deltaF, degF, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R410A, assessSubcooling } from "hvac-install-math/refrigerants";
 *
 * const verdict = assessSubcooling(R410A, {
 *   pressure: psig(355),
 *   lineTemperature: degF(95),
 *   atmosphere: standardAtmosphere,
 *   target: deltaF(10),
 *   tolerance: deltaF(3),
 *   instruments: { pressure: { accuracy: psi(8) }, temperature: { accuracy: deltaF(2) } },
 * });
 * verdict.outcome; // => inconclusive
 * ```
 */
export function assessSubcooling(
  refrigerant: Refrigerant,
  input: LineAssessmentInput,
): LineAssessment {
  return assess(refrigerant, input, "bubble", -1);
}

function assess(
  refrigerant: Refrigerant,
  input: LineAssessmentInput,
  side: Side,
  sign: 1 | -1,
): LineAssessment {
  const {
    pressure,
    lineTemperature,
    atmosphere,
    instruments,
    confidence = 0.95,
  } = objectOf("input", input);
  objectOf("instruments", instruments);
  const line = siOf("lineTemperature", lineTemperature, "temperature");
  const target = siOf("target", input.target, "temperatureDifference", { min: 0 });
  const tolerance = siOf("tolerance", input.tolerance, "temperatureDifference", { above: 0 });
  const saturated = saturationTemperatureOf(refrigerant, side, pressure, atmosphere);
  const p = absoluteOf(pressure, atmosphere);
  if (atmosphere !== undefined) siOf("atmosphere", atmosphere, "absolutePressure", { above: 0 });
  const gauge = pressure.kind === "gaugePressure";
  const model = refrigerant.model === "pure" ? 0.0005 : 0.0025; // half of the papers' 0.1 % and 0.5 %
  const parts = partsOf(instruments, gauge, model * p);
  const curve = (at: number) => temperatureAt(refrigerant.saturation, side, at);
  // Sensitivity dT/dp from a step of 1e-4 of the pressure, which the series bear beyond their end too.
  const kelvinPerPascal = (saturated - curve(0.9999 * p)) / (1e-4 * p);
  const shares = [parts.pressure, parts.atmosphere, parts.model].map((u) => u * kelvinPerPascal);
  const distance = sign * (line - saturated);
  const uncertainty = Math.hypot(parts.temperature, ...shares); // JCGM 100:2008, eq. 10
  const unit = lineTemperature.unit.difference;
  const value = new Quantity(distance, unit);
  // Below saturation there is no superheat and no subcooling, however wide the tolerance is.
  const low = new Quantity(Math.max(0, target - tolerance), unit);
  const high = new Quantity(target + tolerance, unit);
  const ruling = conformity({
    value,
    standardUncertainty: new Quantity(uncertainty, unit),
    lowerLimit: low,
    upperLimit: high,
    confidence,
  });
  const { outcome } = ruling;
  const what = side === "dew" ? "superheat" : "subcooling";
  const result = estimate(value, uncertainty);
  const doubt =
    doubtOfTarget(what, input.target) ??
    (outcome === "fail" ? undefined : doubtOfTolerance(what, input.target, input.tolerance));
  const said = doubt
    ? { reasons: [doubt.reason], actions: [doubt.action] }
    : saidOf(
        {
          figure: named(what),
          value,
          uncertainty: result.expandedUncertainty,
          target: input.target,
          tolerance: input.tolerance,
        },
        outcome,
        {
          // Distance from the nearer end of the window, over the one-sided coverage factor.
          needed:
            Math.abs(Math.min(distance - low.si, high.si - distance)) / normalQuantile(confidence),
          model: Math.abs(shares[2] as number),
          probe:
            Math.hypot(shares[0] as number, shares[1] as number) > parts.temperature
              ? "pressure"
              : "temperature",
          now: result.standardUncertainty,
        },
      );
  const saturation = new Quantity(saturated, temperatureUnitFor(pressure));
  return verdict({
    outcome: doubt ? "inconclusive" : outcome,
    ...(outcome === "fail" && !doubt && { cause: distance > target ? "high" : "low" }),
    ...said,
    assumptions: assumptionsOf(gauge && !instruments.atmosphere, model),
    cautions: [...cautionOfSide(what, saturation), ...cautionsOf(refrigerant, what)],
    sources: [
      ...refrigerant.sources.slice(0, -3), // without the reports on warming potential
      cite("jcgm-100-2008", "5.1.2"),
      cite("jcgm-106-2012", "8.3"),
    ],
    result,
    saturationTemperature: estimate(saturation, Math.hypot(...shares)),
    conformanceProbability: ruling.conformanceProbability,
  });
}

/** Standard uncertainties: of the pressures in Pa, of the temperature in K. */
function partsOf(
  { pressure, temperature, atmosphere }: LineAssessmentInput["instruments"],
  gauge: boolean,
  model: number,
): Record<"pressure" | "atmosphere" | "model" | "temperature", number> {
  const barometer =
    atmosphere === undefined
      ? 0
      : standardUncertainty(atmosphere, pascal, "instruments.atmosphere").si;
  return {
    pressure: standardUncertainty(pressure, pascal, "instruments.pressure").si,
    atmosphere: gauge ? barometer : 0,
    model,
    temperature: standardUncertainty(temperature, deltaK, "instruments.temperature").si,
  };
}
