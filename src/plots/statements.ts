// What do the pictures say? Every heading, axis, legend and label by its code, with its values.
// Follows assessment/statement.ts; the words are in language/, one file per language.
// Does not cover what a verdict says: its own module does.
import type { Outcome } from "../assessment/assessment.ts";
import type { Catalogue } from "../assessment/catalogue.ts";
import {
  type None,
  type Say,
  type StatementOf,
  sayer,
  type Verbatim,
} from "../assessment/statement.ts";
import type { UnitLanguage } from "../display/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { SupplyName, SupplyNameWord } from "../supply-voltage/index.ts";
import type { DecayCause } from "../vacuum-decay/index.ts";

type Pressure = Quantity<"gaugePressure"> | Quantity<"absolutePressure">;
type Loss = Quantity<"pressureDifference">;
type Duration = Quantity<"duration">;
type Temperature = Quantity<"temperature">;

interface Axis {
  readonly unit: Verbatim;
}
interface Dropped {
  readonly drop: Loss;
  readonly uncertainty: Loss;
}
interface Shown {
  readonly count: number;
  readonly first: Pressure;
  readonly firstTemperature: readonly Temperature[];
  readonly last: Pressure;
  readonly lastTemperature: readonly Temperature[];
}
interface Ranged {
  readonly low: Quantity<"voltage">;
  readonly high: Quantity<"voltage">;
}

/**
 * What the pictures say: values by code.
 */
export interface PlotStatements {
  // headings
  "plots.pressure-test": None;
  "plots.vacuum-decay": None;
  "plots.saturation": { readonly designation: Verbatim };
  "plots.supply-voltage": None;
  "plots.room-limit": None;
  // axes
  "plots.pressure-axis": Axis;
  "plots.gas-temperature-axis": Axis;
  "plots.temperature-axis": Axis;
  "plots.time-axis": Axis;
  "plots.time-since-isolation-axis": Axis;
  "plots.voltage-axis": Axis;
  "plots.charge-axis": Axis;
  "plots.time-not-recorded": None;
  "plots.start": None;
  "plots.end": None;
  // the line under the heading: outcome first
  "plots.colon": None;
  "plots.outcome": { readonly outcome: `assessment.outcome.${Outcome}` };
  "plots.drop-with-limit": Dropped & { readonly limit: Loss };
  "plots.drop-without-limit": Dropped;
  "plots.course": { readonly course: PlotWord };
  "plots.leak-course": { readonly rate: Quantity<"pressureRate"> };
  "plots.absolute-pressure": None;
  "plots.gauge-pressure": { readonly atmosphere: Quantity<"absolutePressure"> };
  "plots.voltage-range": Ranged & { readonly readings: number };
  "plots.charge-of-limit": {
    readonly charge: Quantity<"mass">;
    readonly limit: Quantity<"mass">;
  };
  // legends and labels
  "plots.readings": None;
  "plots.explained-by-temperature": None;
  "plots.found-at-end": { readonly uncertainty: Loss };
  "plots.limit": { readonly limit: Loss };
  "plots.zone": { readonly zone: number };
  "plots.limit-at": { readonly limit: Quantity<"absolutePressure">; readonly at: Duration };
  "plots.rise-limit-at": { readonly limit: Quantity<"absolutePressure">; readonly at: Duration };
  "plots.fails-from": { readonly limit: Quantity<"absolutePressure"> };
  "plots.target": { readonly target: Quantity<"absolutePressure"> };
  "plots.levels-off": { readonly plateau: Quantity<"absolutePressure"> };
  "plots.fitted-curve": None;
  "plots.fitted-curve-and-forecast": None;
  "plots.set-aside": None;
  "plots.valve-moved": None;
  "plots.accepted": None;
  "plots.at-hold-end": None;
  "plots.bubble": None;
  "plots.dew": None;
  "plots.in-balance": None;
  "plots.nameplate-range": Ranged;
  "plots.standard-range": Ranged & { readonly name: SupplyName };
  "plots.lowest-and-highest": None;
  "plots.charge": None;
  "plots.charge-limit": { readonly limit: Quantity<"mass"> };
  // for who does not see the picture
  "plots.test-shown": Shown & { readonly span: Duration };
  "plots.untimed-test-shown": Shown;
  "plots.decay-shown": {
    readonly count: number;
    readonly first: Quantity<"absolutePressure">;
    readonly last: Quantity<"absolutePressure">;
  };
  "plots.pure-point": { readonly temperature: Temperature; readonly pressure: Pressure };
  "plots.blend-point": {
    readonly temperature: Temperature;
    readonly bubble: Pressure;
    readonly dew: Pressure;
  };
}

/** The words of this module: how a pressure goes on, but for a leak, which has a rate. */
export type PlotWord = `plots.course.${Exclude<DecayCause, "leak">}`;

/** One thing that a picture says. */
export type PlotStatement = StatementOf<PlotStatements>;

/**
 * The language of a picture: `english`, or its like. It has the words of `plots`, of `display` and of `assessment`, and
 * those of the module whose verdict is drawn.
 */
export type PlotLanguage = Catalogue<
  (keyof PlotStatements & string) | PlotWord | SupplyNameWord | `assessment.outcome.${Outcome}`
> &
  UnitLanguage;

/** Makes what a picture says. */
export const say: Say<PlotStatements> = /* @__PURE__ */ sayer();
