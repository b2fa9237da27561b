// What can a plan say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover what the modules say of a run, a room or a circuit: each has statements of its own.
import {
  type None,
  type Say,
  type Single,
  type StatementOf,
  sayer,
  type Verbatim,
} from "../assessment/statement.ts";
import type { FieldWord } from "../commissioning/index.ts";
import type { Quantity } from "../quantity/quantity.ts";

type Length = Quantity<"length">;
type Mass = Quantity<"mass">;
type Gauge = Quantity<"gaugePressure">;
type Warmth = Quantity<"temperature">;
type Current = Quantity<"current">;
type Ratio = Quantity<"ratio">;

/**
 * What a part of the plan is about, in the order of the work.
 */
export type PlanPart =
  | "lines"
  | "joints"
  | "wall"
  | "circuit"
  | "supply"
  | "drain"
  | "pressure-test"
  | "evacuation"
  | "charge"
  | "room"
  | "operation";

/** The words of this module. */
export type PlanningWord =
  | `planning.part.${PlanPart}`
  | `planning.line.${"liquid" | "vapor"}`
  | `planning.end.${"indoor" | "outdoor"}`
  | `planning.mode.${"cooling" | "heating"}`
  | `planning.device.${"breaker" | "fuse"}`
  | `planning.construction.${"quick-connect" | "monobloc"}`;

interface Run {
  /** A name, or a number where there is none. */
  readonly run: Single;
}
interface Runs {
  readonly runs: readonly Single[];
}
interface Fed {
  readonly circuit: Single;
}
interface Count {
  readonly count: number;
}
interface Dropped extends Fed {
  readonly drop: Ratio;
  readonly limit: Ratio;
}
interface Fill {
  readonly fill: Gauge;
  readonly own: Gauge;
  readonly temperature: Warmth;
}
interface Asked {
  readonly field: FieldWord;
  readonly changes: readonly `planning.part.${PlanPart}`[];
}
interface Expected {
  readonly mode: `planning.mode.${"cooling" | "heating"}`;
  readonly lowFrom: Gauge;
  readonly lowTo: Gauge;
  readonly highFrom: Gauge;
  readonly highTo: Gauge;
  readonly indoor: Warmth;
  readonly outdoor: Warmth;
}
interface Power {
  readonly total: Quantity<"power">;
  readonly limit: Quantity<"power">;
}
interface Lifted {
  readonly lift: Length;
  readonly limit: Length;
}
interface Total {
  readonly total: Length;
  readonly limit: Length;
}

/** Lines, joints, bundle. */
interface Lines {
  "planning.line-set": Run & {
    readonly liquid: Length;
    readonly vapor: Length;
    readonly stock: Length;
    readonly needed: Length;
  };
  "planning.two-sets": Run & {
    readonly needed: Length;
    readonly first: Length;
    readonly second: Length;
    readonly joints: number;
  };
  "planning.roll": Run & { readonly needed: Length };
  "planning.flares": Count;
  "planning.brazed": Count;
  "planning.couplings": Count;
  "planning.adapter": Run & {
    readonly line: `planning.line.${"liquid" | "vapor"}`;
    readonly end: `planning.end.${"indoor" | "outdoor"}`;
    readonly tube: Verbatim;
    readonly port: Verbatim;
  };
  "planning.caps": Count;
  "planning.joints": Count;
  "planning.nut": Count & {
    readonly tube: Verbatim;
    readonly low: Quantity<"torque">;
    readonly high: Quantity<"torque">;
  };
  /** Sizes of wrench, as they are marked on it. */
  "planning.wrenches": { readonly flats: readonly Verbatim[] };
  "planning.sleeve": Runs & { readonly diameter: Length };
  "planning.cover": Runs & { readonly side: Length };
  "planning.link-cable": Count & { readonly cable: Verbatim };
  "planning.lines-swapped": Run;
  "planning.total-length-within": Total;
  "planning.total-length-above": Total;
  "planning.indoor-lift-within": Lifted;
  "planning.indoor-lift-above": Lifted;
  "planning.connected-within": Power;
  "planning.connected-enough": Power;
  "planning.connected-above": Power;
  "planning.connected-below": Power;
}

/** Circuit, supply, drain. */
interface Site {
  "planning.device": Fed & {
    readonly ratings: readonly Current[];
    readonly kinds: readonly `planning.device.${"breaker" | "fuse"}`[];
    readonly poles: number;
  };
  "planning.conductor": Fed & { readonly size: Verbatim; readonly usable: Current };
  "planning.conductor-for-drop": Dropped & { readonly size: Verbatim; readonly smallest: Verbatim };
  "planning.grounding": Fed & { readonly size: Verbatim };
  "planning.ground-fault": Fed & { readonly limit: Current };
  "planning.residual-current": Fed & { readonly limit: Current };
  "planning.disconnect": Fed & { readonly least: Current; readonly made: Current };
  "planning.fused-disconnect": Fed & { readonly least: Current; readonly made: Current };
  "planning.drop-within": Dropped;
  "planning.drop-above": Dropped;
  "planning.drop-at-start": Fed & { readonly drop: Ratio };
  "planning.verify-clause": Fed & { readonly rules: Verbatim; readonly clause: Verbatim };
  "planning.rules-not-passed": Fed & { readonly rules: Verbatim };
  "planning.voltage-window": {
    readonly low: Quantity<"voltage">;
    readonly high: Quantity<"voltage">;
  };
  "planning.monitor": {
    readonly low: Quantity<"voltage">;
    readonly high: Quantity<"voltage">;
    readonly trip: Quantity<"duration">;
    readonly reconnect: Quantity<"duration">;
  };
  "planning.drain-fall": Run & { readonly fall: Length; readonly length: Length };
  "planning.drain-pump": Run & { readonly lift: Length };
  "planning.trap": Run & { readonly drop: Length; readonly seal: Length; readonly height: Length };
}

/** Pressure test and evacuation. */
interface Tightness {
  "planning.nitrogen": Runs & { readonly mass: Mass; readonly volume: Quantity<"volume"> };
  "planning.cylinder-enough": Count & { readonly after: Gauge };
  "planning.cylinder-too-small": None;
  "planning.regulator": { readonly pressure: Gauge };
  "planning.nitrogen-hose": { readonly pressure: Gauge };
  "planning.vacuum-hose": { readonly bore: Length };
  "planning.stages": { readonly stages: readonly Gauge[] };
  "planning.fill": { readonly pressure: Gauge; readonly temperature: Warmth };
  "planning.fill-lowered": { readonly wanted: Gauge; readonly most: Gauge };
  "planning.most-fill": { readonly most: Gauge; readonly limit: Gauge; readonly warmest: Warmth };
  "planning.later": { readonly pressure: Gauge; readonly temperature: Warmth };
  "planning.when-warm": { readonly pressure: Gauge; readonly temperature: Warmth };
  "planning.hold": Runs & {
    readonly shortest: Quantity<"duration">;
    readonly recommended: Quantity<"duration">;
    readonly leak: Quantity<"throughput">;
  };
  "planning.hold-of-manual": { readonly hold: Quantity<"duration"> };
  "planning.hold-proves": Runs & {
    readonly hold: Quantity<"duration">;
    readonly leak: Quantity<"throughput">;
  };
  "planning.above-own-pressure": Fill;
  "planning.below-own-pressure": Fill;
  "planning.fill-below-manual": { readonly fill: Gauge; readonly least: Gauge };
  "planning.hold-below-manual": {
    readonly hold: Quantity<"duration">;
    readonly least: Quantity<"duration">;
  };
  "planning.no-nitrogen": {
    readonly construction: `planning.construction.${"quick-connect" | "monobloc"}`;
  };
  "planning.bubble-couplings": { readonly pressure: Gauge; readonly temperature: Warmth };
  "planning.vacuum-target": { readonly target: Quantity<"absolutePressure"> };
  "planning.vacuum-limit": {
    readonly limit: Quantity<"absolutePressure">;
    readonly hold: Quantity<"duration">;
  };
  "planning.vacuum-rise": {
    readonly rise: Quantity<"pressureDifference">;
    readonly hold: Quantity<"duration">;
  };
  "planning.vacuum-leak": { readonly leak: Quantity<"throughput"> };
  "planning.pump-down": Runs & {
    readonly time: Quantity<"duration">;
    readonly target: Quantity<"absolutePressure">;
  };
  "planning.ice": {
    readonly temperature: Warmth;
    readonly pressure: Quantity<"absolutePressure">;
  };
}

/** Charge, operation, questions. */
interface Running {
  "planning.refrigerant": {
    readonly refrigerant: Verbatim;
    readonly mass: Mass;
    readonly reserve: Mass;
  };
  "planning.flammable-cylinder": None;
  "planning.blend-as-liquid": None;
  "planning.added": { readonly mass: Mass };
  "planning.taken-out": { readonly mass: Mass };
  "planning.nothing-added": None;
  "planning.label": { readonly mass: Mass };
  "planning.room-needs": Run & { readonly area: Quantity<"area">; readonly charge: Mass };
  "planning.outdoor-zone": { readonly charge: Mass };
  "planning.expect-pressures-low": Expected;
  "planning.expect-pressures-high": Expected;
  "planning.expect-air": {
    readonly mode: `planning.mode.${"cooling" | "heating"}`;
    readonly low: Quantity<"temperatureDifference">;
    readonly high: Quantity<"temperatureDifference">;
  };
  "planning.expect-current": { readonly rated: Current; readonly most: Current };
  "planning.ask": Asked;
  "planning.ask-of-runs": Asked & Runs;
  "planning.unusable": { readonly field: FieldWord; readonly value: Verbatim };
}

/**
 * The statements of this module: values by code.
 */
export interface PlanningStatements extends Lines, Site, Tightness, Running {}

/** One statement of this module. */
export type PlanningStatement = StatementOf<PlanningStatements>;

/** Makes a statement of this module. */
export const say: Say<PlanningStatements> = /* @__PURE__ */ sayer();

/** What a record or a standard says in its own words: a name, a size. */
export const verbatim = (text: string): Verbatim => ({ verbatim: text });
