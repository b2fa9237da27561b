// What is inside the unit? The loads from which its nameplate is made.
// Follows UL 1995 / CSA C22.2 No. 236, 4th edition, 37.14 and 37.15.
// Does not cover loads that are fed by another circuit.
import { listOf, numberOf, oneOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { amperesOf, countOf } from "./checks.ts";
import { currentOfHeater } from "./heater-current.ts";

/** When a load runs. */
export type OperatingMode = "cooling" | "heating" | "emergency heating" | "defrost";

/**
 * One load of a unit, or several alike.
 *
 * Source: UL 1995, 37.14; NFPA 70 (2023), 440.6.
 */
export interface Load {
  /** Compressor, fan or other motor, electric heater, or anything else. */
  readonly kind: "compressor" | "motor" | "heater" | "other";
  /** Rated-load current of a compressor, full-load current of a motor, current of the rest; above 0. A heater may state its power and voltage instead. */
  readonly current?: Quantity<"current"> | undefined;
  /** Branch-circuit selection current, where one is marked: it takes the place of the rated-load current. */
  readonly branchCircuitSelectionCurrent?: Quantity<"current"> | undefined;
  /** Locked-rotor current, where it is marked. */
  readonly lockedRotorCurrent?: Quantity<"current"> | undefined;
  /** Power of a heater; from 50 kW in all another formula holds. */
  readonly power?: Quantity<"power"> | undefined;
  /** Voltage for which a heater's power is marked, in place of its current. */
  readonly ratedVoltage?: Quantity<"voltage"> | undefined;
  /** Voltage that the heater gets; the rated one when left out. */
  readonly supplyVoltage?: Quantity<"voltage"> | undefined;
  /** Phases that feed the heater; 1 when left out. */
  readonly phases?: 1 | 3 | undefined;
  /** How many alike; 1 when left out. */
  readonly count?: number | undefined;
  /** Modes in which it runs; every mode when left out. Loads that share no mode never add up. */
  readonly runsIn?: readonly OperatingMode[] | undefined;
}

/** What runs in one mode, in A. `motors` holds compressors too, largest first. */
export interface ModeLoads {
  readonly mode: OperatingMode | "any";
  readonly compressors: readonly number[];
  readonly motors: readonly number[];
  readonly heaters: number;
  readonly heaterPower: number;
  readonly others: number;
  /** Of the largest compressor. */
  readonly lockedRotor: number | undefined;
}

const modes: readonly OperatingMode[] = ["cooling", "heating", "emergency heating", "defrost"];

/** Sorts the loads by the modes in which they run together. */
export function loadsByMode(loads: readonly Load[]): ModeLoads[] {
  listOf("loads", loads, 1000, 1);
  const checked = (loads as readonly Load[]).map((load, i) => {
    const at = `loads[${i}]`;
    const above = { above: 0 };
    const kind = oneOf(`${at}.kind`, load?.kind, ["compressor", "motor", "heater", "other"]);
    // A heater may state power and voltage instead.
    const byPower = kind === "heater" && (load.power ?? load.ratedVoltage) !== undefined;
    const {
      current = byPower
        ? currentOfHeater(`${at}.`, load as Parameters<typeof currentOfHeater>[1])
        : undefined,
    } = load;
    const rated = amperesOf(`${at}.current`, current as Quantity<"current">);
    const { branchCircuitSelectionCurrent: selection, lockedRotorCurrent: locked, power } = load;
    const { count = 1, runsIn } = load;
    countOf(`${at}.count`, count);
    if (runsIn !== undefined) {
      listOf(`${at}.runsIn`, runsIn, modes.length).forEach((mode) => {
        oneOf(`${at}.runsIn`, mode, modes);
      });
      numberOf(`${at}.runsIn`, runsIn.length, { min: 1 });
    }
    return {
      kind,
      // 440.6(A): the selection current, which is never below the rated-load current, takes its place.
      current:
        selection !== undefined
          ? siOf(`${at}.branchCircuitSelectionCurrent`, selection, "current", { min: rated })
          : rated,
      lockedRotor:
        locked !== undefined
          ? siOf(`${at}.lockedRotorCurrent`, locked, "current", { min: rated })
          : undefined,
      power: power !== undefined ? siOf(`${at}.power`, power, "power", above) * count : 0,
      count,
      runsIn,
    };
  });
  const named = modes.filter((mode) => checked.some(({ runsIn }) => runsIn?.includes(mode)));
  return (named.length ? named : (["any"] as const)).map((mode) => {
    const running = checked.filter(
      ({ runsIn }) => !runsIn || (runsIn as readonly string[]).includes(mode),
    );
    const each = (...kinds: Load["kind"][]) =>
      running
        .filter(({ kind }) => kinds.includes(kind))
        .flatMap(({ current, count }) => Array<number>(count).fill(current))
        .sort((a, b) => b - a);
    const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
    const largest = running
      .filter(({ kind }) => kind === "compressor")
      .sort((a, b) => b.current - a.current)[0];
    return {
      mode,
      compressors: each("compressor"),
      motors: each("compressor", "motor"),
      heaters: sum(each("heater")),
      heaterPower: sum(running.filter(({ kind }) => kind === "heater").map(({ power }) => power)),
      others: sum(each("other").filter((current) => current >= 1)), // L4: 1.0 A or more
      lockedRotor: largest?.lockedRotor,
    };
  });
}
