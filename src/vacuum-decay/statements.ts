// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the dangers that modules share: assessment/safety.ts.
import { type None, type Say, type StatementOf, sayer } from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { DecayCause } from "./cause.ts";
import type { ExclusionReason } from "./exclusion-reason.ts";

type Pressure = Quantity<"absolutePressure">;
type Difference = Quantity<"pressureDifference">;
type Rate = Quantity<"pressureRate">;
type Duration = Quantity<"duration">;

interface Interval {
  readonly low: Rate;
  readonly high: Rate;
}

/** What a checkpoint of the policy is held against. */
interface Held {
  readonly at: Duration;
  readonly value: Difference;
  readonly low: Difference;
  readonly high: Difference;
  readonly limit: Difference;
}

/**
 * The statements of this module: values by code.
 */
export interface VacuumDecayStatements {
  // the cause
  "vacuum-decay.dry-and-tight": { readonly smallest: Rate };
  "vacuum-decay.leak": Interval & { readonly leak: Rate };
  "vacuum-decay.moisture": { readonly water: Difference; readonly high: Rate };
  "vacuum-decay.leak-and-moisture": Interval & { readonly leak: Rate; readonly water: Difference };
  "vacuum-decay.moisture-leak-not-excluded": { readonly water: Difference; readonly high: Rate };
  "vacuum-decay.outgassing": { readonly water: Difference; readonly high: Rate };
  "vacuum-decay.not-determined": None;
  // what decides
  "vacuum-decay.leak-proven": Interval & { readonly limit: Rate };
  "vacuum-decay.leak-within-limit": Interval & { readonly limit: Rate };
  "vacuum-decay.leak-not-excluded": { readonly high: Rate; readonly limit: Rate };
  "vacuum-decay.moisture-proven": { readonly water: Difference };
  "vacuum-decay.leak-or-moisture": None;
  "vacuum-decay.moisture-not-excluded": { readonly water: Difference };
  "vacuum-decay.still-rising": { readonly rate: Rate };
  "vacuum-decay.pressure-within-limit": Held;
  "vacuum-decay.pressure-above-limit": Held;
  "vacuum-decay.pressure-too-close": Held;
  "vacuum-decay.pressure-forecast": Held;
  "vacuum-decay.rise-within-limit": Held;
  "vacuum-decay.rise-above-limit": Held;
  "vacuum-decay.rise-too-close": Held;
  "vacuum-decay.rise-forecast": Held;
  "vacuum-decay.last-reading-above-limit": {
    readonly pressure: Pressure;
    readonly limit: Pressure;
  };
  "vacuum-decay.too-few-readings": { readonly rows: number; readonly needed: number };
  "vacuum-decay.target-missed": { readonly start: Pressure; readonly target: Pressure };
  "vacuum-decay.over-range-failed": { readonly range: Pressure };
  "vacuum-decay.over-range": { readonly range: Pressure };
  "vacuum-decay.ice-not-excluded": {
    readonly coldest: Quantity<"temperature">;
    readonly saturation: Pressure;
  };
  "vacuum-decay.below-gauge": { readonly lowest: Pressure; readonly believed: Pressure };
  "vacuum-decay.display-still": { readonly since: Duration; readonly pressure: Pressure };
  "vacuum-decay.pressure-falls": { readonly fall: Difference };
  "vacuum-decay.too-flat": { readonly change: Difference };
  "vacuum-decay.rise-stops": { readonly elapsed: Duration; readonly missing: Difference };
  "vacuum-decay.rise-quickens": { readonly late: Difference };
  "vacuum-decay.course-unexplained": { readonly off: Difference };
  "vacuum-decay.step-before": { readonly elapsed: Duration };
  "vacuum-decay.found-before-step": Interval;
  // further findings
  "vacuum-decay.above-saturation": { readonly plateau: Pressure };
  "vacuum-decay.readings-excluded": {
    readonly excluded: number;
    readonly rows: number;
    readonly why: readonly `vacuum-decay.exclusion.${ExclusionReason}`[];
  };
  "vacuum-decay.step": { readonly elapsed: Duration; readonly change: Difference };
  // assumptions
  "vacuum-decay.isolated": None;
  "vacuum-decay.gauge-at-the-system": None;
  "vacuum-decay.no-cold-spot": { readonly ambient: Quantity<"temperature"> };
  "vacuum-decay.usual-volume": { readonly volume: Quantity<"volume"> };
  "vacuum-decay.gauge-accuracy": { readonly accuracy: Quantity<"ratio"> };
  "vacuum-decay.hoses-unknown": { readonly allowance: Quantity<"throughput"> };
  "vacuum-decay.no-slow-water": { readonly duration: Duration };
  "vacuum-decay.typed-by-hand": { readonly rows: number; readonly step: Difference };
  // cautions
  "vacuum-decay.not-a-pressure-test": {
    readonly limit: Quantity<"throughput">;
    readonly least: Quantity<"massFlow">;
    readonly most: Quantity<"massFlow">;
  };
  "vacuum-decay.display-steps": { readonly step: Difference };
  // actions
  "vacuum-decay.watch-longer": { readonly duration: Duration; readonly rows: number };
  "vacuum-decay.hold-again": { readonly hold: Duration };
  "vacuum-decay.keep-gauge-open": { readonly hold: Duration };
  "vacuum-decay.state-isolation": None;
  "vacuum-decay.isolate-at-the-system": None;
  "vacuum-decay.blank-test": None;
  "vacuum-decay.find-with-bubbles": { readonly least: Duration; readonly most: Duration };
  "vacuum-decay.find-with-tracer": None;
  "vacuum-decay.repair-leak": None;
  "vacuum-decay.dry-and-repeat": None;
  "vacuum-decay.warm-and-repeat": { readonly coldest: Quantity<"temperature"> };
  "vacuum-decay.evacuate-deeper": { readonly target: Pressure };
  "vacuum-decay.check-the-gauge": None;
  "vacuum-decay.better-gauge": None;
}

/** The words of this module. */
export type VacuumDecayWord =
  | `vacuum-decay.cause.${DecayCause}`
  | `vacuum-decay.exclusion.${ExclusionReason}`;

/** One statement of this module. */
export type VacuumDecayStatement = StatementOf<VacuumDecayStatements>;

/** Makes a statement of this module. */
export const say: Say<VacuumDecayStatements> = /* @__PURE__ */ sayer();
