// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the dangers that modules share: assessment/safety.ts.
import { type None, type Say, type StatementOf, sayer } from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { MarkedLimit } from "./marked-limit.ts";
import type { UncertaintyPart } from "./uncertainty-part.ts";

type Difference = Quantity<"pressureDifference">;
type Duration = Quantity<"duration">;
type Gauge = Quantity<"gaugePressure">;
type Kelvin = Quantity<"temperatureDifference">;
type Leak = Quantity<"throughput">;

/** The drop as a verdict shows it. */
interface Drop {
  readonly drop: Difference;
  readonly uncertainty: Difference;
}
interface AtLimit extends Drop {
  readonly limit: Difference;
}
interface Planned {
  readonly part: `pressure-test.marked.${MarkedLimit["part"]}`;
  readonly limit: Gauge;
  readonly fill: Gauge;
  readonly warm: Gauge;
}

/**
 * The statements of this module: values by code.
 */
export interface PressureTestStatements {
  // reasons: the drop
  "pressure-test.within-limit": AtLimit;
  "pressure-test.above-limit": AtLimit;
  "pressure-test.across-limit": AtLimit;
  "pressure-test.leak-within-limit": AtLimit;
  "pressure-test.limit-lowered": {
    readonly stated: Difference;
    readonly pressure: Difference;
    readonly limit: Difference;
  };
  "pressure-test.leak-proven": Drop;
  "pressure-test.no-leak-above": { readonly above: Difference };
  "pressure-test.unexplained-rise": { readonly rise: Difference; readonly uncertainty: Difference };
  "pressure-test.no-limit-stated": None;
  "pressure-test.weather-alone": { readonly temperature: Difference; readonly change: Difference };
  "pressure-test.weather-and-barometer-alone": {
    readonly temperature: Difference;
    readonly barometer: Difference;
    readonly change: Difference;
  };
  // reasons: what keeps a test from passing, whatever the drop
  "pressure-test.hold-time-unknown": None;
  "pressure-test.short-hold": { readonly hold: Duration; readonly shortest: Duration };
  "pressure-test.hold-below-manual": { readonly hold: Duration; readonly required: Duration };
  "pressure-test.hold-below-step": { readonly hold: Duration; readonly step: Difference };
  "pressure-test.gauge-without-error": None;
  "pressure-test.thermometer-without-error": None;
  "pressure-test.fill-below-manual": { readonly pressure: Gauge; readonly required: Gauge };
  "pressure-test.fill-below-service": { readonly pressure: Gauge; readonly service: Gauge };
  "pressure-test.above-marked": { readonly pressure: Gauge; readonly marked: Gauge };
  "pressure-test.pressure-still": { readonly moved: Difference };
  "pressure-test.zones-swapped": {
    readonly elapsed: Duration;
    readonly from: Quantity<"temperature">;
    readonly to: Quantity<"temperature">;
  };
  "pressure-test.zones-swapped-at-end": {
    readonly from: Quantity<"temperature">;
    readonly to: Quantity<"temperature">;
  };
  "pressure-test.log-misfit": { readonly misfit: number };
  "pressure-test.last-reading-above-limit": {
    readonly drop: Difference;
    readonly limit: Difference;
  };
  "pressure-test.falls-faster": { readonly lost: Difference };
  "pressure-test.jump": { readonly change: Difference; readonly elapsed: Duration };
  // reasons: the plan
  "pressure-test.below-limit": Planned;
  "pressure-test.lowered-to-limit": Planned;
  // assumptions
  "pressure-test.gauge-drift": { readonly drift: Difference };
  "pressure-test.rigid-walls": None;
  "pressure-test.volume-exact": None;
  "pressure-test.fill-unchecked": None;
  "pressure-test.barometer-unchanged": { readonly change: Difference };
  "pressure-test.gas-settled": None;
  "pressure-test.follows-gas": { readonly within: Kelvin; readonly missed: Quantity<"ratio"> };
  "pressure-test.gas-elsewhere-unknown": {
    readonly within: Kelvin;
    readonly missed: Quantity<"ratio">;
  };
  "pressure-test.warm-from-fill": None;
  "pressure-test.all-limits-given": None;
  // cautions: what was found
  "pressure-test.smallest-leak": { readonly smallest: Leak; readonly hold: Duration };
  "pressure-test.smallest-drop-rate": {
    readonly smallest: Difference;
    readonly held: Duration;
    readonly hold: Duration;
  };
  "pressure-test.smallest-drop": { readonly smallest: Difference };
  "pressure-test.no-margin": None;
  "pressure-test.cylinder-cools": None;
  "pressure-test.order-of-magnitude": None;
  "pressure-test.liquid-leaks-more": None;
  // actions
  "pressure-test.state-limit": { readonly largest: Difference };
  "pressure-test.find-by-bubbles": { readonly leak: Leak; readonly watch: Duration };
  "pressure-test.find-by-foam": { readonly leak: Leak; readonly watch: Duration };
  "pressure-test.find-by-tracer": { readonly leak: Leak; readonly watch: Duration };
  "pressure-test.find-of-unknown-size": { readonly watch: Duration };
  "pressure-test.repair-and-retest": None;
  "pressure-test.close-supply": None;
  "pressure-test.read-at-first-temperature": { readonly temperature: Quantity<"temperature"> };
  "pressure-test.hold-longer": { readonly further: Duration };
  "pressure-test.hold-at-least": { readonly hold: Duration };
  "pressure-test.state-gauge": None;
  "pressure-test.state-thermometer": None;
  "pressure-test.fill-higher": { readonly required: Gauge };
  "pressure-test.lower-pressure": { readonly marked: Gauge };
  "pressure-test.check-thermometers": None;
  "pressure-test.open-to-system": None;
  "pressure-test.look-at-plot": None;
  "pressure-test.read-again": None;
  "pressure-test.hold-again": None;
  "pressure-test.state-elsewhere": None;
  "pressure-test.measure-elsewhere": { readonly share: Quantity<"ratio"> };
  "pressure-test.state-since-fill": { readonly settle: Duration };
  "pressure-test.settle-first": { readonly settle: Duration };
  "pressure-test.state-follows-gas": { readonly within: Kelvin };
  "pressure-test.reduce-uncertainty": {
    readonly part: `pressure-test.part.${UncertaintyPart}`;
    readonly share: Difference;
  };
  // hints of errors
  "pressure-test.no-loss-not-shown": None;
  "pressure-test.rate-needs-it": None;
  "pressure-test.station-pressure": None;
  "pressure-test.zones-need-volumes": None;
  "pressure-test.gas-leaks-outward": None;
  "pressure-test.water-volume": None;
}

/** What may be behind a verdict. */
export type PressureTestCause =
  /** Pressure is missing that temperature and instruments do not explain. */
  | "leak"
  /** More pressure than temperature and instruments explain: gas fed in, or the thermometer misleads. */
  | "unexplained-rise";

/** The words of this module. */
export type PressureTestWord =
  | `pressure-test.part.${UncertaintyPart}`
  | `pressure-test.marked.${MarkedLimit["part"]}`
  | `pressure-test.cause.${PressureTestCause}`;

/** One statement of this module. */
export type PressureTestStatement = StatementOf<PressureTestStatements>;

/** Makes a statement of this module. */
export const say: Say<PressureTestStatements> = /* @__PURE__ */ sayer();
