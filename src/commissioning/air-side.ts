// Does a unit run as it should on which no gauge belongs? Air across the indoor coil; the current: running-current.ts.
// Follows the manual's limits; without them manufacturers' manuals (cooling 8 to 14 K) and common practice.
// Does not cover the charge: air and current show that the unit runs, not what it holds.
import { cite, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { conformity } from "../assessment/conformity.ts";
import { standardUncertainty } from "../assessment/uncertainty.ts";
import { oneOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import { deltaK } from "../quantity/units/temperature.ts";
import { errorsOf } from "./instrument-errors.ts";
import type { Job } from "./job.ts";
import { type OwnVerdict, ownVerdict } from "./own-verdict.ts";
import type { AirSideReading, OperatingReading } from "./record-operation.ts";
import { plateCurrents, runningCurrent } from "./running-current.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

type Difference = Quantity<"temperatureDifference">;

/**
 * The usual difference of the air across an indoor coil at full speed, where the manual says none.
 *
 * @param mode - Cooling or heating.
 * @returns Least and largest difference.
 *
 * Source: manufacturers' published manuals for cooling; heating is common practice, no source.
 *
 * @example
 * ```ts
 * import { usualAirDifference } from "hvac-install-math/commissioning";
 *
 * const { low, high } = usualAirDifference("cooling");
 * `${low} to ${high}`; // => 8 K to 14 K
 * ```
 */
export function usualAirDifference(mode: "cooling" | "heating"): {
  /** Least difference. */
  readonly low: Difference;
  /** Largest difference. */
  readonly high: Difference;
} {
  const cooling = oneOf("mode", mode, ["cooling", "heating"]) === "cooling";
  return frozen(
    cooling ? { low: deltaK(8), high: deltaK(14) } : { low: deltaK(10), high: deltaK(30) },
  );
}

/** The checks of air and current. */
export function airSideTrials(job: Job, reading: OperatingReading, path: string): Trial[] {
  const { instruments = {} } = job.record;
  const { mode, indoorTemperature, outdoorTemperature, airSide = {} } = reading;
  const own = `${path}.airSide`;
  const state = {
    [`${path}.mode`]: mode,
    [`${path}.outdoorTemperature`]: outdoorTemperature,
    [`${own}.fullSpeed`]: airSide.fullSpeed,
  };
  return [
    {
      name: "air-difference",
      path: own,
      needs: {
        ...state,
        [`${path}.indoorTemperature`]: indoorTemperature,
        [`${own}.supplyAir`]: airSide.supplyAir,
        "instruments.airThermometer": instruments.airThermometer,
      },
      run: () => difference(job, reading, airSide),
    },
    {
      name: "running-current",
      path: own,
      needs: {
        ...state,
        [`${own}.current`]: airSide.current,
        ...plateCurrents(job),
        "instruments.clampMeter": instruments.clampMeter,
      },
      paths: { meter: "instruments.clampMeter" },
      run: () => runningCurrent(job, airSide),
    },
  ];
}

/** The air that leaves the coil against the air that enters it. */
function difference(
  { record }: Job,
  { mode, indoorTemperature }: OperatingReading,
  { supplyAir, least, largest, fullSpeed }: AirSideReading,
): OwnVerdict {
  const [entering, leaving] = [indoorTemperature, supplyAir] as Quantity<"temperature">[];
  const way = mode as "cooling" | "heating";
  const unit = (entering as Quantity<"temperature">).unit.difference;
  const rise = (leaving as Quantity<"temperature">).si - (entering as Quantity<"temperature">).si;
  const value: Difference = new Quantity(way === "cooling" ? -rise : rise, unit);
  const word = { mode: `commissioning.mode.${way}` } as const;
  if (value.si < 0) {
    return ownVerdict(
      "inconclusive",
      say("commissioning.air-the-other-way", {
        ...word,
        difference: new Quantity(-value.si, unit),
      }),
      say("commissioning.read-air-again"),
    );
  }
  if (fullSpeed !== true) {
    return ownVerdict(
      "inconclusive",
      say("commissioning.not-at-full-speed"),
      say("commissioning.run-at-full-speed"),
    );
  }
  const isManual = least !== undefined || largest !== undefined;
  const usual = usualAirDifference(way);
  const limits = {
    low: least ?? new Quantity(isManual ? 0 : usual.low.si, unit),
    high: largest ?? new Quantity(isManual ? 60 : usual.high.si, unit),
  };
  const thermometer = errorsOf(record.instruments?.airThermometer);
  const each = thermometer ? standardUncertainty(thermometer, deltaK).si : 0;
  const { outcome } = conformity({
    value,
    standardUncertainty: new Quantity(Math.SQRT2 * each, unit), // two readings
    lowerLimit: limits.low,
    upperLimit: limits.high,
  });
  const values = { ...word, difference: value, ...limits };
  const code = outcome === "pass" ? "within" : outcome === "fail" ? "outside" : "too-close";
  return verdict({
    // Without the manual's figures nothing fails: they may differ from the usual ones.
    outcome: isManual || outcome === "pass" ? outcome : "inconclusive",
    reasons: [say(`commissioning.air-difference-${code}`, values)],
    assumptions: isManual ? [] : [say("commissioning.usual-air-difference", limits)],
    cautions: [caution("finding", say("commissioning.air-proves-no-charge"))],
    actions:
      outcome === "pass"
        ? []
        : [
            // The manual's range clears what is unusual and right: it is asked for first.
            ...(isManual ? [] : [say("commissioning.state-air-difference")]),
            say("commissioning.see-filter-and-fan"),
          ],
    sources: [cite("manufacturer-manuals", "air across the indoor coil")],
  });
}
