// Does the gauge show what it should? A reading on a port against its window.
// Follows common practice, no source, for the window; JCGM 106:2012, 8.3, for the decision.
// Does not cover the charge: many faults give the same pressure.
import { type Assessment, cite, statement } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { type Instrument, standardUncertainty } from "../assessment/uncertainty.ts";
import { objectOf, oneOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { psi } from "../quantity/units/pressure.ts";
import { doubtOfApproach } from "./approach-doubt.ts";
import {
  type ExpectedPressures,
  expectedPressures,
  type RunningUnit,
} from "./expected-pressures.ts";
import { type ExpansionPlace, type ServicePorts, servicePorts } from "./service-ports.ts";

/**
 * A gauge reading on a running unit.
 *
 * Source: none; the library's own type.
 */
export interface ServiceReading extends RunningUnit {
  /** What the gauge shows. */
  readonly pressure: Quantity<"gaugePressure">;
  /** The port that it is on; the larger one, `vapor`, when left out. */
  readonly port?: "vapor" | "liquid" | "commonSuction";
  /** Where the refrigerant expands; in the outdoor unit when left out. */
  readonly expansion?: ExpansionPlace;
  /** What is known of the gauge; counted as exact when left out. */
  readonly gauge?: Instrument<"gaugePressure">;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number;
}

/** How a reading is off. Source: see {@link assessServiceReading}. */
export type ServiceReadingCause = "below-window" | "above-window" | "other-side";

/**
 * The verdict on a gauge reading.
 *
 * Source: see {@link assessServiceReading}.
 */
export interface ServiceReadingAssessment extends Assessment<ServiceReadingCause> {
  /** What was to be expected. */
  readonly expected: ExpectedPressures;
  /** The side that the port shows in this mode. */
  readonly side: "low" | "high";
}

/**
 * Judges a reading against the window of its port and mode. A reading that lies in the window of the other
 * side is called `other-side`: the unit runs in the other mode, or the hose is on the other port.
 *
 * An approach that is more than 15 K wide (`approach-range-wide`) or begins below 1 K (`approach-at-rest`) lets
 * nothing pass: what lies outside its window fails, the rest is `inconclusive` until the manufacturer's figures
 * are stated.
 *
 * @param reading - The unit, the pressure, the port, the gauge.
 * @returns The verdict. A pass does not prove the charge; a fail does not name the fault.
 * @throws {@link OutOfRangeError} and {@link InvalidInputError} as {@link expectedPressures}.
 *
 * Cautions: see {@link servicePorts}.
 *
 * Source: common practice, no source; JCGM 106:2012, 8.3.
 *
 * @example
 * ```ts
 * import { assessServiceReading } from "hvac-install-math/operating-check";
 * import { deltaF, degF, psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R410A } from "hvac-install-math/refrigerants";
 *
 * const unit = {
 *   refrigerant: R410A,
 *   mode: "cooling",
 *   indoorTemperature: degF(75),
 *   outdoorTemperature: degF(95),
 *   evaporatorApproach: { low: deltaF(30), high: deltaF(40) },
 *   condenserApproach: { low: deltaF(15), high: deltaF(25) },
 *   atmosphere: standardAtmosphere,
 * } as const;
 * assessServiceReading({ ...unit, pressure: psig(118) }).outcome; // => pass
 * assessServiceReading({ ...unit, pressure: psig(80) }).cause; // => below-window
 * assessServiceReading({ ...unit, pressure: psig(380) }).cause; // => other-side
 * ```
 */
export function assessServiceReading(reading: ServiceReading): ServiceReadingAssessment {
  objectOf("reading", reading);
  const { pressure, gauge, mode, confidence = 0.95 } = reading;
  const { port: given = "vapor", expansion = "outdoor-unit" } = reading;
  const expected = expectedPressures(reading);
  const y = siOf("pressure", pressure, "gaugePressure");
  const port = oneOf("port", given, ["vapor", "liquid", "commonSuction"]);
  const ports: ServicePorts = servicePorts({
    mode,
    expansion: expansion,
  });
  const { side } = ports[port];
  const { from, to } = expected[side];
  const otherSide = side === "low" ? "high" : "low";
  const other = expected[otherSide];
  const approaches = { low: reading.evaporatorApproach, high: reading.condenserApproach };
  const doubt = doubtOfApproach(approaches[side]);
  const { outcome: kept } = conformity({
    value: pressure,
    standardUncertainty: gauge === undefined ? psi(0) : standardUncertainty(gauge, psi, "gauge"),
    lowerLimit: from,
    upperLimit: to,
    confidence,
  });
  const fits = y >= other.from.si && y <= other.to.si;
  const swapped = fits && !doubtOfApproach(approaches[otherSide]);
  const cause = swapped ? "other-side" : y < from.si ? "below-window" : "above-window";
  const outcome = doubt && kept !== "fail" ? "inconclusive" : kept;
  const failed = outcome === "fail";
  const text = failed
    ? `{pressure} is outside {from} to {to}${swapped ? ": it fits the other side: mode or port?" : "."}`
    : outcome === "pass"
      ? "{pressure} is within {from} to {to}."
      : "{pressure} is too near {from} or {to} for this gauge to tell.";
  return {
    outcome,
    ...(failed && { cause }),
    reasons: [
      doubt && !failed
        ? doubt
        : statement(failed ? cause : `window-${outcome}`, text, { pressure, from, to }),
    ],
    assumptions: [
      ...expected.assumptions,
      ...(port === "liquid" && !reading.expansion
        ? [statement("expansion-outdoors", "It was assumed to expand in the outdoor unit.")]
        : []),
      ...(gauge ? [] : [statement("exact-instrument", "The reading counts as exact.")]),
    ],
    cautions: [
      ...expected.cautions,
      statement("not-the-charge", "No pressure proves the charge right; it is weighed."),
    ],
    sources: [...expected.sources, cite("jcgm-106-2012", "8.3")],
    expected,
    side,
  };
}
