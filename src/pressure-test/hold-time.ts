// How long must the test stand to show a leak of a wanted size?
// Follows t = V k u(d)/Q with u by JCGM 100:2008, 5.2; the twofold time by JCGM 106:2012, 9.5 (both risks).
// Does not cover a thermometer that does not follow the gas: no time makes up for it.

import { objectOf, refuse, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { choose } from "../quantity/hints.ts";
import { Quantity } from "../quantity/quantity.ts";
import { hour } from "../quantity/units/time.ts";
import { coverage } from "./decide.ts";
import { budget, combined, expected, statesOf } from "./drop.ts";
import { absoluteSi, type TestPressure, type TestTemperature, temperaturesSi } from "./reading.ts";
import { barometerDrift, gasOf, type PressureTestSetup, type State, setupOf } from "./setup.ts";
import type { Share } from "./uncertainty-part.ts";
import type { UncertaintyShare } from "./verdict.ts";

/** What the hold is planned for. */
export interface HoldPlan
  extends Omit<PressureTestSetup, "criterion" | "refrigerant" | "required"> {
  /** The smallest leak that should show, as nitrogen at the test pressure, above 0. */
  readonly leakRate: Quantity<"throughput">;
  /** Pressure after the fill. */
  readonly pressure: TestPressure;
  /** Gas temperature at the start. */
  readonly temperature: TestTemperature;
  /** Gas temperature to expect at the end; common errors of gauge, thermometer and walls count by how far it is from the first. */
  readonly laterTemperature: TestTemperature;
}

/** The hold. */
export interface HoldTime {
  /** A leak of this size then loses as much as the expanded uncertainty: half of such leaks show, and a tight system has an even chance to pass this limit. */
  readonly shortest: Quantity<"duration">;
  /** Twice that: nearly every such leak shows and nearly every tight system passes. */
  readonly recommended: Quantity<"duration">;
  /** The drop that can be proven. */
  readonly provableDrop: Quantity<"pressureDifference">;
  /** What makes it up, the largest first. */
  readonly uncertaintyBudget: readonly UncertaintyShare[];
}

/**
 * The time that a test has to stand until a leak of the wanted size shows: from what the instruments can
 * see, not from habit.
 *
 * @param plan - Wanted `leakRate` (`throughput`, above 0), `volume`, start `pressure` and `temperature`,
 * the `laterTemperature` to expect, `instruments`, `atmosphere`, `confidence`, `wall`.
 * @returns The shortest hold, the recommended one, and the drop that they rest on.
 * @throws {@link OutOfRangeError} beyond the range of the nitrogen equation.
 * @throws {@link InvalidInputError} when a value is missing, of another kind or out of its range.
 *
 * Source: JCGM 100:2008, 5.2; JCGM 106:2012, 8.3; Q = V·Δp/Δt (ISO 3529-1:2019).
 *
 * @example
 * ```ts
 * import { holdTime } from "hvac-install-math/pressure-test";
 * import { deltaF, degF, hour, liter, paM3PerS, psi, psig, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const hold = holdTime({
 *   leakRate: paM3PerS(1e-3),
 *   volume: liter(3),
 *   pressure: psig(500),
 *   temperature: degF(80),
 *   laterTemperature: degF(75),
 *   instruments: {
 *     pressure: { accuracy: psi(2), resolution: psi(0.1) },
 *     temperature: { accuracy: deltaF(1), resolution: deltaF(0.1), followsGasWithin: deltaF(0.5) },
 *   },
 *   atmosphere: standardAtmosphere,
 * });
 * hold.recommended.toString(hour, 1); // => 12.8 h
 * ```
 */
export function holdTime(plan: HoldPlan): HoldTime {
  const { pressure, temperature, laterTemperature } = objectOf("plan", plan);
  const setup = setupOf(plan);
  const { errors, volumes, beta, expansion, atmosphere } = setup;
  const Q = siOf("leakRate", plan.leakRate, "throughput", { above: 0 });
  const V = volumes.reduce((sum, v) => sum + v, 0);
  if (V === 0) {
    refuse("volume", undefined, "a volume", "volume");
  }
  const p1 = absoluteSi("pressure", pressure, atmosphere);
  const at = (argument: string, T: TestTemperature): State => ({
    pressure: p1,
    temperatures: temperaturesSi(argument, T, volumes),
    elapsed: 0,
    atmosphere,
  });
  const gas = gasOf(plan, setup, [
    at("temperature", temperature),
    at("laterTemperature", laterTemperature),
  ]);
  const [first, last] = gas.states as [State, State];
  const sealed = statesOf(first, last, gas.volumes, beta);
  const states = { ...sealed, p2: expected(sealed) };
  const { k } = coverage(plan.confidence);
  let seconds = 3600;
  let shares: Share[] = [];
  // Some shares grow with the time that is asked for: a few rounds settle it.
  for (let round = 0; round < 20; round++) {
    const barometer = pressure.kind === "gaugePressure" ? barometerDrift(seconds) : 0;
    shares = budget(states, { errors, gas, seconds, barometer, expansion });
    seconds = (V * k * combined(shares)) / Q;
  }
  const { difference } = pressure.unit;
  if (seconds === 0) {
    const parts = choose(["accuracy", "resolution", "repeatability"], "one-of");
    const allowed = "figures that a real instrument has";
    refuse("instruments", undefined, allowed, parts, OutOfRangeError);
  }
  return frozen({
    shortest: new Quantity(seconds, hour),
    recommended: new Quantity(2 * seconds, hour),
    provableDrop: new Quantity(k * combined(shares), difference),
    uncertaintyBudget: shares.map(({ part, u }) => ({
      part,
      standardUncertainty: new Quantity(u, difference),
    })),
  });
}
