// How uneven are the three phases, and what does it do to a motor?
// Follows NEMA MG 1, 14.36 and 12.45 (clauses from memory): the largest deviation from the average.
// Does not cover inverters, whose rectifier sees an uneven supply differently.

import { listOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { say } from "./statements.ts";

/**
 * How uneven three readings are.
 *
 * Source: NEMA MG 1, 14.36.
 */
export interface PhaseUnbalance<K extends "voltage" | "current"> {
  /** Largest deviation from the average, in per cent of the average. */
  readonly unbalance: Quantity<"ratio">;
  /** Average of the three. */
  readonly average: Quantity<K>;
  /** The reading farthest from the average less the average: negative for a low leg. */
  readonly deviation: Quantity<K>;
  /** Position of that reading, 0 to 2. */
  readonly farthest: number;
}

/**
 * How uneven three voltages are, and what that does to a motor.
 *
 * Source: NEMA MG 1, 14.36.
 */
export interface VoltageUnbalance extends PhaseUnbalance<"voltage"> {
  /** Negative over positive sequence, the unbalance that EN 50160 limits; missing when no three phases can give these voltages. */
  readonly negativeSequence?: Quantity<"ratio"> | undefined;
  /** Share of its rated power that a motor may give; missing above 5 %, where it must not run. */
  readonly deratingFactor?: number | undefined;
  /** How much more the windings heat up, in per cent of their temperature rise: about 2u². */
  readonly addedTemperatureRise: Quantity<"ratio">;
}

/** NEMA MG 1, figure of 14.36, read off the curve by others; no derating up to 1 %. Tolerance ±0.02. */
// biome-ignore format: a table.
const curve: readonly (readonly [unbalance: number, factor: number])[] = [
  [0, 1], [1, 1], [1.5, 0.97], [2, 0.95], [2.5, 0.93], [3, 0.89], [3.5, 0.85], [4, 0.82], [4.5, 0.78], [5, 0.76],
];

/**
 * Voltage unbalance by the definition of NEMA MG 1, from three line-to-line readings of one moment.
 * (Maximum − minimum)/average is another, larger number, and the negative-sequence ratio is a third.
 *
 * @param readings - Three line-to-line `voltage`, above 0. Line-to-neutral readings give another number.
 * @returns Unbalance, average, the leg that is farthest off, derating factor and added temperature rise.
 * @throws {@link InvalidInputError} when there are not three, or one is not above 0.
 *
 * Cautions: measured at live terminals by a licensed electrician. Above 5 % do not operate; makers of
 * units commonly allow no more than 2 %.
 *
 * Source: NEMA MG 1, 14.36 and 12.45 (clauses from memory; the derating curve as read off by others);
 * temperature rise 2u²: common rule, in two independent trade sources; negative sequence: IEC
 * 61000-4-30, 5.7 (from memory).
 *
 * @example
 * ```ts
 * import { percent, volt } from "hvac-install-math/quantity";
 * import { voltageUnbalance } from "hvac-install-math/supply-voltage";
 *
 * const { unbalance, deratingFactor } = voltageUnbalance([volt(460), volt(467), volt(450)]);
 * unbalance.toString(percent, 2); // => 1.96 %
 * deratingFactor?.toFixed(2); // => 0.95
 * ```
 */
export function voltageUnbalance(readings: readonly Quantity<"voltage">[]): VoltageUnbalance {
  const base = unbalanceOf("readings", readings, "voltage");
  const u = base.unbalance.in(percent);
  const fourth = readings.reduce((sum, { si }) => sum + si ** 4, 0);
  const square = readings.reduce((sum, { si }) => sum + si ** 2, 0);
  const root = Math.sqrt(3 - (6 * fourth) / square ** 2); // IEC 61000-4-30, 5.7: √(3 − 6β)
  return frozen({
    ...base,
    ...(root >= 0 && {
      negativeSequence: percent(100 * Math.sqrt(Math.max(0, (1 - root) / (1 + root)))),
    }),
    ...(u <= 5 && { deratingFactor: deratingAt(u) }),
    addedTemperatureRise: percent(2 * u * u),
  });
}

/**
 * Current unbalance, by the same formula. Units are commonly allowed 10 %; a voltage unbalance shows as
 * about 6 to 10 times as much in the currents.
 *
 * @param readings - Three line `current`, above 0.
 * @returns Unbalance, average and the line that is farthest off.
 * @throws {@link InvalidInputError} when there are not three, or one is not above 0.
 *
 * Source: NEMA MG 1, 14.36, for the formula; the 10 % from makers' manuals.
 *
 * @example
 * ```ts
 * import { ampere, percent } from "hvac-install-math/quantity";
 * import { currentUnbalance } from "hvac-install-math/supply-voltage";
 *
 * const { unbalance } = currentUnbalance([ampere(33), ampere(29), ampere(34)]);
 * unbalance.toString(percent, 1); // => 9.4 %
 * ```
 */
export function currentUnbalance(
  readings: readonly Quantity<"current">[],
): PhaseUnbalance<"current"> {
  return frozen(unbalanceOf("readings", readings, "current"));
}

/**
 * The share of its rated power that a motor may give on an uneven supply.
 *
 * @param unbalance - Voltage unbalance by {@link voltageUnbalance}, 0 to 5 %.
 * @returns 0.76 to 1, within ±0.02: the sources read a printed curve.
 * @throws {@link OutOfRangeError} above 5 %, where the motor must not run.
 *
 * Source: NEMA MG 1, figure of 14.36, as read off by others.
 *
 * @example
 * ```ts
 * import { percent } from "hvac-install-math/quantity";
 * import { unbalanceDerating } from "hvac-install-math/supply-voltage";
 *
 * unbalanceDerating(percent(3)); // => 0.89
 * ```
 */
export function unbalanceDerating(unbalance: Quantity<"ratio">): number {
  const limits = { min: 0, max: 0.05, hint: say("supply-voltage.do-not-run-motor") };
  return deratingAt(100 * siOf("unbalance", unbalance, "ratio", limits, OutOfRangeError));
}

function deratingAt(u: number): number {
  const next = Math.max(
    1,
    curve.findIndex(([at]) => at >= u),
  );
  const [x0, y0] = curve[next - 1] as readonly [number, number];
  const [x1, y1] = curve[next] as readonly [number, number];
  return y0 + ((y1 - y0) * (u - x0)) / (x1 - x0);
}

/** MG 1, 14.36: 100 × largest |reading − average| / average. */
export function unbalanceOf<K extends "voltage" | "current">(
  argument: string,
  readings: readonly Quantity<K>[],
  kind: K,
): PhaseUnbalance<K> {
  const si = listOf(argument, readings, 3, 3).map((reading, i) =>
    siOf(`${argument}[${i}]`, reading, kind, { above: 0 }),
  );
  const average = si.reduce((sum, value) => sum + value, 0) / 3;
  const off = si.map((value) => Math.abs(value - average));
  const farthest = off.indexOf(Math.max(...off));
  const { unit } = readings[0] as Quantity<K>;
  return {
    unbalance: percent((100 * (off[farthest] ?? 0)) / average),
    average: new Quantity(average, unit),
    deviation: new Quantity((si[farthest] ?? 0) - average, unit),
    farthest,
  };
}
