// Do gauge and thermometer say that the charge is right? By superheat, by subcooling, or not at all.
// Follows manufacturers' manuals for method, floor and pressure drop; JCGM 106:2012, 8.3, to decide.
// Does not cover airflow, air in the system or a clogged filter, which move the same figures.
import {
  type Assessment,
  cite,
  type Estimate,
  overallOutcome,
  verdict,
} from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { objectOf, refuse, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { deltaF } from "../quantity/units/temperature.ts";
import {
  assessSubcooling,
  assessSuperheat,
  type LineAssessmentInput,
  type Refrigerant,
  type RefrigerantsStatement,
} from "../refrigerants/index.ts";
import { gaugeCautions } from "./cautions.ts";
import { type ChargedSystem, type ChargingMethod, chargingMethod } from "./charging-method.ts";
import { type OperatingCheckCause, type OperatingCheckStatement, say } from "./statements.ts";

/**
 * A reading of pressure and line temperature on a system, and what it should be.
 */
export interface ChargeByGaugeInput extends ChargedSystem {
  /** The refrigerant. */
  readonly refrigerant: Refrigerant;
  /** Gauge reading: suction for an orifice, liquid or discharge for a valve. */
  readonly pressure: Quantity<"gaugePressure">;
  /** Line temperature: suction line for an orifice, liquid line for a valve. */
  readonly lineTemperature: Quantity<"temperature">;
  /** Atmospheric pressure on site. */
  readonly atmosphere: Quantity<"absolutePressure">;
  /**
   * Pressure lost from the gauge down the flow to the thermometer, 0 or more: that of the coil when the gauge
   * is on the discharge. For subcooling only: superheat is read with both at the suction port.
   */
  readonly pressureDrop?: Quantity<"pressureDifference"> | undefined;
  /** What superheat or subcooling should be, from nameplate, manual or `targetSuperheat`. Not needed where the charge is weighed. */
  readonly target?: Quantity<"temperatureDifference"> | undefined;
  /** How far from it is still right, above 0. Not needed where the charge is weighed. */
  readonly tolerance?: Quantity<"temperatureDifference"> | undefined;
  /** What the two probes can do. */
  readonly instruments: LineAssessmentInput["instruments"];
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/** What is off. Source: see {@link assessChargeByGauge}. */
export type ChargeByGaugeCause = Extract<
  OperatingCheckCause,
  "low" | "high" | "liquid-to-compressor"
>;

/**
 * The verdict on a charge by gauge.
 *
 * Source: see {@link assessChargeByGauge}.
 */
export interface ChargeByGaugeAssessment
  extends Assessment<ChargeByGaugeCause, OperatingCheckStatement | RefrigerantsStatement> {
  /** What the charge is checked by. */
  readonly method: ChargingMethod["method"];
  /** Superheat or subcooling; missing where the charge is weighed. */
  readonly result?: Estimate<"temperatureDifference"> | undefined;
  /** Dew or bubble temperature at the thermometer; missing where the charge is weighed. */
  readonly saturationTemperature?: Estimate<"temperature"> | undefined;
}

/**
 * Judges a charge by what its system allows: superheat for an orifice, subcooling for a thermostatic valve,
 * both for one speed and in cooling. For everything else the answer is `inconclusive` with the reason
 * `operating-check.no-target`.
 *
 * Superheat at the suction port must not be below 5 °F: less fails as `liquid-to-compressor`, whatever the
 * target, and too near to tell is no pass.
 *
 * A target above 25 K of superheat or 15 K of subcooling (`refrigerants.target-out-of-reach`) decides nothing. A tolerance
 * above 5 K (`refrigerants.tolerance-wide`) or one as large as the target (`refrigerants.tolerance-reaches-saturation`) lets nothing pass.
 *
 * @param input - System, refrigerant, reading, target, instruments.
 * @returns The verdict. `low` and `high` are said of superheat or subcooling, not of the charge.
 * @throws {@link OutOfRangeError} when the pressure is beyond the refrigerant's saturation range.
 * @throws {@link InvalidInputError} when target or tolerance are missing where they are needed, a pressure
 * drop is given for superheat, or a kind or range does not fit.
 *
 * Cautions: many faults move superheat and subcooling. Clean filters and right airflow first.
 *
 * Source: manufacturers' published manuals; JCGM 106:2012, 8.3; the largest targets and tolerances are common
 * practice, no source.
 *
 * @example
 * ```ts
 * import { assessChargeByGauge } from "hvac-install-math/operating-check";
 * import { deltaF, degF, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R410A } from "hvac-install-math/refrigerants";
 *
 * const unit = {
 *   refrigerant: R410A,
 *   meteringDevice: "thermostatic-valve",
 *   compressor: "single-speed",
 *   mode: "cooling",
 *   pressure: psig(388), // on the discharge
 *   pressureDrop: psi(33), // of the condenser
 *   lineTemperature: degF(95),
 *   atmosphere: standardAtmosphere,
 *   target: deltaF(12),
 *   tolerance: deltaF(3),
 *   instruments: { pressure: { accuracy: psi(2) }, temperature: { accuracy: deltaF(1) } },
 * } as const;
 * const verdict = assessChargeByGauge(unit);
 * verdict.outcome; // => pass
 * verdict.result?.value.toString(undefined, 1); // => 12.7 Δ°F
 * assessChargeByGauge({ ...unit, compressor: "inverter" }).method; // => weigh
 * ```
 */
export function assessChargeByGauge(input: ChargeByGaugeInput): ChargeByGaugeAssessment {
  objectOf("input", input);
  const { refrigerant, pressure, pressureDrop, target, tolerance, confidence } = input;
  const { method, reason } = chargingMethod(input);
  const cautions = gaugeCautions(objectOf("refrigerant", refrigerant));
  const manual = cite("manufacturer-manuals", "checking the charge");
  if (method === "weigh") {
    return verdict({
      outcome: "inconclusive",
      reasons: [reason],
      assumptions: [],
      cautions,
      actions: [say("operating-check.weigh-the-charge")],
      sources: [manual, cite("common-practice")],
      method,
    });
  }
  const drop =
    pressureDrop !== undefined
      ? siOf("pressureDrop", pressureDrop, "pressureDifference", { min: 0 })
      : 0;
  const gauge = siOf("pressure", pressure, "gaugePressure");
  const bySuperheat = method === "superheat";
  // A drop upstream of the gauge would have to be added: taken off it hides liquid at the compressor.
  if (bySuperheat && drop > 0) {
    const allowed = "none for superheat: gauge and thermometer at the suction port";
    refuse("pressureDrop", pressureDrop, allowed, "nothing");
  }
  const line = {
    pressure: new Quantity(gauge - drop, pressure.unit),
    lineTemperature: input.lineTemperature,
    atmosphere: input.atmosphere,
    target: needed("target", target),
    tolerance: needed("tolerance", tolerance),
    instruments: input.instruments,
    confidence,
  } satisfies LineAssessmentInput;
  const judged = (bySuperheat ? assessSuperheat : assessSubcooling)(refrigerant, line);
  const { result, saturationTemperature, assumptions, sources } = judged;
  const parts = [...(bySuperheat ? belowFloor(result, confidence) : []), judged];
  const outcome = overallOutcome(parts.map((part) => part.outcome));
  // The deciding part first; the floor where both decide.
  const decides = (part: Part) => Number(part.outcome === outcome);
  parts.sort((one, other) => decides(other) - decides(one));
  const cause = parts[0]?.cause;
  return verdict({
    outcome,
    ...(cause && { cause }),
    reasons: [...parts.flatMap((part) => part.reasons), reason],
    assumptions,
    cautions: [...cautions, ...judged.cautions],
    actions: parts.flatMap((part) => part.actions ?? []),
    sources: [...sources, manual],
    method,
    result,
    saturationTemperature,
  });
}

type Part = Pick<ChargeByGaugeAssessment, "outcome" | "cause" | "reasons" | "actions">;

/** What is said where superheat is not surely above the floor; nothing where it is. */
function belowFloor(
  { value, standardUncertainty }: Estimate<"temperatureDifference">,
  confidence: number | undefined,
): readonly Part[] {
  const lowerLimit = deltaF(5); // manufacturers' manuals
  const { outcome } = conformity({ value, standardUncertainty, lowerLimit, confidence });
  const least = lowerLimit.as(value.unit);
  const values = { superheat: value, least };
  if (outcome === "pass") return [];
  return outcome === "fail"
    ? [
        {
          outcome,
          cause: "liquid-to-compressor",
          reasons: [say("operating-check.superheat-below-floor", values)],
          actions: [say("operating-check.stop-liquid")],
        },
      ]
    : [
        {
          outcome,
          reasons: [say("operating-check.superheat-near-floor", values)],
          actions: [say("operating-check.read-near-floor-again", { least })],
        },
      ];
}

function needed(
  argument: string,
  value: Quantity<"temperatureDifference"> | undefined,
): Quantity<"temperatureDifference"> {
  if (value) return value;
  const allowed = "a temperatureDifference from nameplate, manual or targetSuperheat";
  return refuse(argument, value, allowed, "temperatureDifference");
}
