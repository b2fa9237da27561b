// Is superheat or subcooling on target, or can the probes not tell? A verdict with its uncertainty.
// Follows JCGM 100:2008 for the uncertainty and JCGM 106:2012, 8.3, for the decision.
// Does not cover what the target should be: it stands on the nameplate or in the manufacturer's chart.
import { cite, estimate, type Reason, statement } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { standardUncertainty } from "../assessment/uncertainty.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { pascal } from "../quantity/units/pressure.ts";
import { deltaK } from "../quantity/units/temperature.ts";
import { absoluteOf, saturationTemperatureOf, temperatureUnitFor } from "./arguments.ts";
import type { LineAssessment, LineAssessmentInput } from "./line-assessment-types.ts";
import { cautionOfSide, doubtOfTarget, doubtOfTolerance } from "./line-doubts.ts";
import { assumptionsOf, cautionsOf } from "./line-statements.ts";
import type { Refrigerant } from "./refrigerant.ts";
import { type Side, temperatureAt } from "./saturation-curve.ts";

/**
 * Judges superheat against a target, given what the probes can do. It passes only where the tolerance is
 * kept even after allowing for the uncertainty, and says so when the probes cannot tell. Below zero it
 * never passes. A target above 25 K (`target-out-of-reach`) decides nothing; a tolerance above 5 K
 * (`tolerance-wide`) or one as large as the target (`tolerance-reaches-saturation`) lets nothing pass. A
 * reading that looks like that of the other side of the unit carries the caution `other-side`.
 *
 * The uncertainty holds the pressure probe, the temperature probe, the atmosphere where its instrument is
 * given, and the equation of state (standard uncertainty 0.05 % of the pressure for a pure substance,
 * 0.25 % for a blend). Contact and insulation of the probe are not in it. Readings have to be steady.
 *
 * Refrigerant under pressure burns and freezes; A2L and A3 refrigerants can ignite and B classes are
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
 * Refrigerant under pressure burns and freezes; A2L and A3 refrigerants can ignite and B classes are
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
  const barometer =
    instruments.atmosphere === undefined
      ? 0
      : standardUncertainty(instruments.atmosphere, pascal, "instruments.atmosphere").si;
  const parts = {
    pressure: standardUncertainty(instruments.pressure, pascal, "instruments.pressure").si,
    atmosphere: gauge ? barometer : 0,
    model: model * p,
    temperature: standardUncertainty(instruments.temperature, deltaK, "instruments.temperature").si,
  };
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
  const cause = distance > target ? "high" : "low";
  const what = side === "dew" ? "superheat" : "subcooling";
  const result = estimate(value, uncertainty);
  // Sentences carry two decimals; `result` has them all.
  const shown = (q: Quantity<"temperatureDifference">) => unit(Number(q.in(unit).toFixed(2)));
  const figures = {
    value: shown(value),
    target: input.target,
    tolerance: input.tolerance,
    uncertainty: shown(result.expandedUncertainty),
  };
  const missed =
    distance < 0
      ? `below zero: the readings contradict each other, or ${side === "dew" ? "liquid" : "vapour"} is in the line`
      : `${cause}: more than {tolerance} from {target}`;
  const said = {
    pass: `The ${what} of {value} ± {uncertainty} is within {tolerance} of {target}.`,
    fail: `The ${what} of {value} ± {uncertainty} is ${missed}.`,
    inconclusive: `The probes cannot tell whether the ${what} of {value} ± {uncertainty} is within {tolerance} of {target}.`,
  };
  const reasons: Reason[] = [statement(`${what}-${outcome}`, said[outcome], figures)];
  if (outcome === "inconclusive") {
    const fromPressure = Math.hypot(shares[0] as number, shares[1] as number);
    const probe = fromPressure > parts.temperature ? "pressure" : "temperature";
    // Distance from the nearer end of the window, over the one-sided coverage factor.
    const room = Math.min(distance - low.si, high.si - distance);
    const needed = Math.abs(room) / normalQuantile(confidence);
    const decidable = needed > Math.abs(shares[2] as number); // beyond the equation of state itself
    reasons.push(
      decidable
        ? statement(
            `${probe}-probe-decides`,
            `Most of the uncertainty comes from the ${probe} probe. A standard uncertainty of {needed} instead of {now} would decide.`,
            {
              needed: shown(new Quantity(needed, unit)),
              now: shown(result.standardUncertainty),
            },
          )
        : statement(
            "too-near-the-limit",
            "It lies so near the limit that no better probe would decide; adjust towards the target and read again.",
          ),
    );
  }
  const doubt =
    doubtOfTarget(what, input.target) ??
    (outcome === "fail" ? undefined : doubtOfTolerance(input.target, input.tolerance));
  const saturation = new Quantity(saturated, temperatureUnitFor(pressure));
  return {
    outcome: doubt ? "inconclusive" : outcome,
    ...(outcome === "fail" && !doubt && { cause }),
    reasons: doubt ? [doubt] : reasons,
    assumptions: assumptionsOf(gauge && !instruments.atmosphere, model),
    cautions: [...cautionOfSide(what, saturation), ...cautionsOf(refrigerant, what)],
    sources: [
      ...refrigerant.sources.slice(0, -2), // without the reports on warming potential
      cite("jcgm-100-2008", "5.1.2"),
      cite("jcgm-106-2012", "8.3"),
    ],
    result,
    saturationTemperature: estimate(saturation, Math.hypot(...shares)),
    conformanceProbability: ruling.conformanceProbability,
  };
}
