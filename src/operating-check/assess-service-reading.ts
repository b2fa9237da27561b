// Does the gauge show what it should? A reading on a port against its window.
// Follows common practice, no source, for the window; JCGM 106:2012, 8.3, for the decision.
// Does not cover the charge: many faults give the same pressure.
import { type Assessment, cite, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { conformity } from "../assessment/conformity.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { type Instrument, standardUncertainty } from "../assessment/uncertainty.ts";
import { objectOf, oneOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { psi } from "../quantity/units/pressure.ts";
import { doubtOfApproach } from "./approach-doubt.ts";
import {
  type ExpectedPressures,
  expectedPressures,
  type RunningUnit,
} from "./expected-pressures.ts";
import { type ExpansionPlace, type ServicePorts, servicePorts } from "./service-ports.ts";
import { type OperatingCheckCause, type OperatingCheckStatement, say } from "./statements.ts";

/**
 * A gauge reading on a running unit.
 */
export interface ServiceReading extends RunningUnit {
  /** What the gauge shows. */
  readonly pressure: Quantity<"gaugePressure">;
  /** The port that it is on; the larger one, `vapor`, when left out. */
  readonly port?: "vapor" | "liquid" | "commonSuction" | undefined;
  /** Where the refrigerant expands; in the outdoor unit when left out. */
  readonly expansion?: ExpansionPlace | undefined;
  /** What is known of the gauge; counted as exact when left out. */
  readonly gauge?: Instrument<"gaugePressure"> | undefined;
  /** How sure a pass or a fail has to be; 0.95 when left out. */
  readonly confidence?: number | undefined;
}

/** How a reading is off. Source: see {@link assessServiceReading}. */
export type ServiceReadingCause = Extract<
  OperatingCheckCause,
  "below-window" | "above-window" | "other-side"
>;

/**
 * The verdict on a gauge reading.
 *
 * Source: see {@link assessServiceReading}.
 */
export interface ServiceReadingAssessment
  extends Assessment<ServiceReadingCause, OperatingCheckStatement> {
  /** What was to be expected. */
  readonly expected: ExpectedPressures;
  /** The side that the port shows in this mode. */
  readonly side: "low" | "high";
}

/**
 * Judges a reading against the window of its port and mode. A reading that lies in the window of the other
 * side is called `other-side`: the unit runs in the other mode, or the hose is on the other port.
 *
 * An approach that is more than 15 K wide (`operating-check.approach-range-wide`) or begins below 1 K (`operating-check.approach-at-rest`) lets
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
  const u = gauge === undefined ? psi(0) : standardUncertainty(gauge, psi, "gauge");
  const { outcome: kept } = conformity({
    value: pressure,
    standardUncertainty: u,
    lowerLimit: from,
    upperLimit: to,
    confidence,
  });
  const fits = y >= other.from.si && y <= other.to.si;
  const swapped = fits && !doubtOfApproach(approaches[otherSide]);
  const cause = swapped ? "other-side" : y < from.si ? "below-window" : "above-window";
  const outcome = doubt && kept !== "fail" ? "inconclusive" : kept;
  const failed = outcome === "fail";
  const window = { pressure, from, to };
  const reason = {
    pass: () => say("operating-check.within-window", window),
    inconclusive: () => doubt ?? say("operating-check.too-close-to-call", window),
    fail: () =>
      cause === "other-side"
        ? say("operating-check.other-side", {
            ...window,
            side: `operating-check.side.${otherSide}`,
          })
        : say(`operating-check.${cause}`, window),
  }[outcome]();
  const action = {
    pass: () => [],
    inconclusive: () => [
      doubt
        ? say("operating-check.state-approach")
        : betterGauge(Math.min(Math.abs(y - from.si), Math.abs(to.si - y)), pressure, confidence),
    ],
    fail: () => [
      ...(swapped ? [say("operating-check.check-mode-and-port")] : []),
      say("operating-check.find-the-cause"),
    ],
  }[outcome]();
  return verdict({
    outcome,
    ...(failed && { cause }),
    reasons: [reason],
    assumptions: [
      ...expected.assumptions,
      ...(port === "liquid" && !reading.expansion ? [say("operating-check.expands-outdoors")] : []),
      ...(gauge ? [] : [say("operating-check.exact-gauge")]),
    ],
    cautions: [...expected.cautions, caution("finding", say("operating-check.not-the-charge"))],
    actions: action,
    sources: [...expected.sources, cite("jcgm-106-2012", "8.3")],
    expected,
    side,
  });
}

// No gauge of the trade reads finer than 0.1 psi: common practice, no source.
const finest = /* @__PURE__ */ psi(0.1);

/** The gauge that could tell a reading that far from a limit, where there is one. */
function betterGauge(
  gap: number,
  { unit }: Quantity<"gaugePressure">,
  confidence: number,
): OperatingCheckStatement {
  // Limits of error count as a rectangular distribution: JCGM 100:2008, 4.3.7.
  const needed = (gap * Math.sqrt(3)) / normalQuantile(confidence);
  return needed < finest.si
    ? say("operating-check.read-again-later")
    : say("operating-check.use-better-gauge", { needed: new Quantity(needed, unit.difference) });
}
