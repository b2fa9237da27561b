// How much voltage is lost on the way, and how long may the run be?
// Follows NFPA 70 (2023), 210.19 and 215.2, informational notes; chapter 9, tables 8 and 9; IEC 60228.
// Does not cover harmonics, or the transformer's and service's own drop.

import { numberOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import { volt } from "../quantity/units/electricity.ts";
import { m } from "../quantity/units/geometry.ts";
import { percent } from "../quantity/units/ratio.ts";
import { amperesOf } from "./checks.ts";
import { say } from "./statements.ts";

/**
 * A run and the current in it.
 */
export interface VoltageDropInput {
  /** Current, more than 0: the running current for the drop while running, locked-rotor current for the start. */
  readonly current: Quantity<"current">;
  /** Voltage at the start of the run, more than 0; line to line for three phases. */
  readonly voltage: Quantity<"voltage">;
  /** Phases: 1 counts the way there and back, 3 counts √3. */
  readonly phases: 1 | 3;
  /** One-way length, more than 0. */
  readonly length: Quantity<"length">;
  /** Resistance of one conductor per length, hot. */
  readonly resistance: Quantity<"resistancePerLength">;
  /** Reactance of one conductor per length; 0 when left out. */
  readonly reactance?: Quantity<"resistancePerLength"> | undefined;
  /** Power factor, more than 0 up to 1; 1 when left out, which is on the safe side for small conductors. */
  readonly powerFactor?: number | undefined;
}

/**
 * What is lost and what is left.
 */
export interface VoltageDrop {
  /** Voltage lost. */
  readonly drop: Quantity<"voltage">;
  /** Share of the voltage at the start. */
  readonly ratio: Quantity<"ratio">;
  /** Voltage at the unit. */
  readonly atUnit: Quantity<"voltage">;
}

/** A conductor per meter: resistance and reactance in Ω/m. */
export interface PlainLine {
  readonly resistance: number;
  readonly reactance: number;
}

/** Volts lost per meter: 2·I·Ze or √3·I·Ze with Ze = R·cos φ + X·sin φ (table 9, note 2; annex G). */
export function voltsPerMeter(
  { resistance, reactance }: PlainLine,
  current: number,
  phases: 1 | 3,
  powerFactor: number,
): number {
  const impedance = resistance * powerFactor + reactance * Math.sqrt(1 - powerFactor ** 2);
  return (phases === 3 ? Math.sqrt(3) : 2) * current * impedance;
}

/** The same for a checked input. */
function dropPerMeter(input: Omit<VoltageDropInput, "length" | "voltage">): number {
  const current = amperesOf("current", input.current);
  const phases = oneOf("phases", input.phases, [1, 3]);
  const resistance = siOf("resistance", input.resistance, "resistancePerLength", { above: 0 });
  const reactance =
    input.reactance === undefined
      ? 0
      : siOf("reactance", input.reactance, "resistancePerLength", { min: 0 });
  const { powerFactor = 1 } = input;
  numberOf("powerFactor", powerFactor, { min: 0.01, max: 1 });
  return voltsPerMeter({ resistance, reactance }, current, phases, powerFactor);
}

/** What is left of a voltage after a drop in volts, which has to be less. */
export function dropOf(
  drop: number,
  voltage: Quantity<"voltage">,
  length: Quantity<"length">,
  current: Quantity<"current">,
): VoltageDrop {
  if (drop >= voltage.si) {
    throw new OutOfRangeError({
      argument: "length",
      value: `${length}`,
      allowed: `a run that leaves some of ${voltage} at ${current}`,
      hint: say("circuit-protection.fit-larger-conductor"),
    });
  }
  return {
    drop: volt(drop),
    ratio: new Quantity(drop / voltage.si, percent),
    atUnit: volt(voltage.si - drop),
  };
}

/**
 * Voltage drop of a run.
 *
 * Assumes a constant current and the approximate formula of table 9, note 2.
 *
 * @param input - Current, voltage, phases, one-way length, resistance, reactance and power factor.
 * @returns Drop, its share of the voltage, and the voltage at the unit.
 * @throws {@link InvalidInputError} for a value outside its range; {@link OutOfRangeError} when nothing of
 * the voltage would be left.
 *
 * Cautions: a resistivity at 20 °C understates the drop by about 20 %.
 *
 * Source: NFPA 70 (2023), chapter 9, tables 8 and 9, note 2.
 *
 * @example
 * ```ts
 * import { voltageDrop } from "hvac-install-math/circuit-protection";
 * import { ampere, ft, ohmPerKft, percent, volt } from "hvac-install-math/quantity";
 *
 * const run = voltageDrop({
 *   current: ampere(44),
 *   voltage: volt(240),
 *   phases: 1,
 *   length: ft(160),
 *   resistance: ohmPerKft(0.491),
 * });
 * run.drop.toString(volt, 1); // => 6.9 V
 * run.ratio.toString(percent, 1); // => 2.9 %
 * ```
 */
export function voltageDrop(input: VoltageDropInput): VoltageDrop {
  siOf("voltage", objectOf("input", input).voltage, "voltage", { above: 0 });
  const length = siOf("length", input.length, "length", { above: 0 });
  return frozen(dropOf(dropPerMeter(input) * length, input.voltage, input.length, input.current));
}

/**
 * Longest one-way run that keeps a voltage drop.
 *
 * Assumes what {@link voltageDrop} assumes.
 *
 * @param input - As for {@link voltageDrop}, with a limit above 0 and below 100 % in place of the length.
 * @returns The length, in meters.
 * @throws {@link InvalidInputError} for a value outside its range.
 *
 * Source: NFPA 70 (2023), chapter 9, tables 8 and 9, note 2.
 *
 * @example
 * ```ts
 * import { longestRun } from "hvac-install-math/circuit-protection";
 * import { ampere, ft, ohmPerKft, percent, volt } from "hvac-install-math/quantity";
 *
 * const run = longestRun({
 *   current: ampere(31),
 *   voltage: volt(230),
 *   phases: 1,
 *   limit: percent(2),
 *   resistance: ohmPerKft(1.21),
 * });
 * run.toString(ft, 0); // => 61 ft
 * ```
 */
export function longestRun(
  input: Omit<VoltageDropInput, "length"> & {
    /** Largest drop as a share of the voltage. */
    readonly limit: Quantity<"ratio">;
  },
): Quantity<"length"> {
  const voltage = siOf("voltage", objectOf("input", input).voltage, "voltage", { above: 0 });
  const limit = siOf("limit", input.limit, "ratio", { above: 0, below: 1 });
  return m((limit * voltage) / dropPerMeter(input));
}
