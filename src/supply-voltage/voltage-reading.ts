// What was read? One moment or a log, of one phase or of three, and what the voltmeter leaves open.
// Follows JCGM 100:2008, 4.3.7, for the meter.
// Does not cover line-to-neutral readings of a three-phase supply: the rules want line to line.
import type { Meter } from "../assessment/uncertainty.ts";
import { askOneOf, listOf, numberOf, objectOf, oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { say } from "./statements.ts";
import type { NominalSupply } from "./supply-ranges.ts";

/**
 * What the unit did: off, running, or just starting. A reading without a state counts against the limits
 * but not for the sag; one while starting counts only against the highest voltage.
 */
export type LoadState = "rest" | "load" | "start";

/**
 * What every reading has.
 */
export interface ReadingMoment {
  /** What the unit did. */
  readonly state?: LoadState | undefined;
  /** Time since the first reading of a log; on all readings or on none, and growing. */
  readonly elapsed?: Quantity<"duration"> | undefined;
}

/**
 * One reading of a supply that feeds the unit by two conductors.
 */
export interface SinglePhaseReading extends ReadingMoment {
  /** Voltage between the two conductors that feed the unit. */
  readonly voltage: Quantity<"voltage">;
  /** Current of the unit at that moment. */
  readonly current?: Quantity<"current"> | undefined;
  /** Voltages from each of the two conductors to ground, where they were read too. */
  readonly lineToGround?: readonly Quantity<"voltage">[] | undefined;
}

/**
 * One set of readings of a three-phase supply.
 */
export interface ThreePhaseReading extends ReadingMoment {
  /** Voltages between lines 1 and 2, 2 and 3, 3 and 1. */
  readonly lineToLine: readonly Quantity<"voltage">[];
  /** Currents of lines 1, 2 and 3 at that moment. */
  readonly currents?: readonly Quantity<"current">[] | undefined;
}

/** A reading of one phase or of three. */
export type VoltageReading = SinglePhaseReading | ThreePhaseReading;

/**
 * The voltmeter. The limits of a digital one, "±(0.7 % + 2 counts)", are
 * `{ accuracyOfReading: percent(0.7), accuracy: volt(0.2), resolution: volt(0.1) }` on a 0.1 V display.
 *
 * Source: JCGM 100:2008, 4.3.7.
 */
export type Voltmeter = Meter<"voltage">;

/** A reading in SI. */
export interface PlainReading {
  readonly volts: readonly number[];
  readonly amps: readonly number[];
  /** From each of two lines to ground; empty where it was not read. */
  readonly toGround: readonly number[];
  readonly state: LoadState | undefined;
  readonly at: number;
}

/** Checks the readings and takes them in SI; a log without times gets the time NaN. */
export function plainReadings(
  readings: readonly VoltageReading[],
  supply: NominalSupply,
): readonly PlainReading[] {
  const { phases } = supply;
  const plain = listOf("readings", readings, Infinity, 1).map(
    (reading: VoltageReading, i): PlainReading => {
      const path = `readings[${i}]`;
      const { voltage, lineToLine, current, currents, state, elapsed, lineToGround } = (reading ??
        {}) as Partial<SinglePhaseReading & ThreePhaseReading>;
      const list = <K extends "voltage" | "current">(
        name: string,
        kind: K,
        three: readonly Quantity<K>[] | undefined,
        one: Quantity<K> | undefined,
      ): number[] => {
        if (phases === 1) return [siOf(`${path}.${name}`, one as Quantity<K>, kind, { min: 0 })];
        return listOf(`${path}.${name}`, three as readonly Quantity<K>[], 3, 3).map((q, j) =>
          siOf(`${path}.${name}[${j}]`, q, kind, { min: 0 }),
        );
      };
      const volts = list(phases === 1 ? "voltage" : "lineToLine", "voltage", lineToLine, voltage);
      if (phases === 3) refuseLineToNeutral(path, volts, supply.voltage.si);
      const given = current !== undefined || currents !== undefined;
      return {
        volts,
        amps: given
          ? list(phases === 1 ? "current" : "currents", "current", currents, current)
          : [],
        toGround: lineToGround === undefined ? [] : toGroundOf(path, lineToGround),
        state:
          state === undefined
            ? state
            : oneOf<LoadState>(`${path}.state`, state, ["rest", "load", "start"]),
        at:
          elapsed === undefined
            ? Number.NaN
            : siOf(`${path}.elapsed`, elapsed, "duration", { min: 0 }),
      };
    },
  );
  if (plain.some(({ at }) => at >= 0)) {
    for (const [i, { at }] of plain.entries()) {
      const before = plain[i - 1]?.at ?? -1;
      if (at > before) continue;
      throw new InvalidInputError({
        argument: `readings[${i}].elapsed`,
        value: Number.isNaN(at) ? "nothing" : `${at} s`,
        allowed: `more than the ${before} s of the reading before; on all readings or on none`,
        hint: say("supply-voltage.times-in-order"),
      });
    }
  }
  return plain;
}

/** Two voltages to ground in SI. */
function toGroundOf(path: string, two: readonly Quantity<"voltage">[]): number[] {
  const at = `${path}.lineToGround`;
  return listOf(at, two, 2, 2).map((one, i) => siOf(`${at}[${i}]`, one, "voltage", { min: 0 }));
}

/** A line-to-neutral voltage is the nominal one by √3; a lost phase gives a half or less, not that. */
function refuseLineToNeutral(path: string, volts: readonly number[], nominal: number): void {
  const suspect = volts.findIndex((v) => Math.abs((v * Math.sqrt(3)) / nominal - 1) < 0.06);
  if (suspect < 0 || volts.some((v) => v < 0.54 * nominal)) return;
  throw new InvalidInputError({
    argument: `${path}.lineToLine[${suspect}]`,
    value: `${volts[suspect]} V`,
    allowed: `voltages between two lines of a ${nominal} V supply`,
    hint: say("supply-voltage.line-to-neutral"),
  });
}

/** Standard uncertainty of a reading in volts, and the part that differs between two readings of a meter. */
export function meterErrors(meter: Voltmeter | undefined): {
  readonly of: (volts: number) => number;
  readonly each: number;
  readonly gain: number;
} {
  if (meter === undefined) return { of: () => 0, each: 0, gain: 0 };
  const { accuracyOfReading, accuracy, resolution, repeatability } = objectOf("meter", meter);
  if ([accuracyOfReading, accuracy, resolution, repeatability].every((one) => one === undefined)) {
    const names = ["accuracy", "accuracyOfReading", "resolution", "repeatability"];
    askOneOf("meter", "nothing", names);
  }
  const part = (name: "accuracy" | "resolution" | "repeatability") =>
    meter[name] === undefined ? 0 : siOf(`meter.${name}`, meter[name], "voltage", { min: 0 });
  const gain =
    accuracyOfReading === undefined
      ? 0
      : siOf("meter.accuracyOfReading", accuracyOfReading, "ratio", { min: 0, max: 0.2 });
  // JCGM 100:2008, F.2.2.1 and 4.3.7; the two limits add and are taken as one rectangle.
  const each = Math.hypot(part("resolution") / Math.sqrt(12), part("repeatability"));
  const limits = part("accuracy");
  return { of: (volts) => Math.hypot(each, (limits + gain * volts) / Math.sqrt(3)), each, gain };
}

/** The smallest of however many numbers. */
export const least = (values: readonly number[]): number =>
  values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);

/** Rounds for a sentence. */
export const rounded = (value: number, decimals: number): number =>
  Number(numberOf("value", value).toFixed(decimals));
