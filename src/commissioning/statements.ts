// What can the verdict on an installation say by itself? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover what the modules say of a part: each has statements of its own.
import {
  type Figure,
  type None,
  type Say,
  type Single,
  type StatementOf,
  sayer,
  type Verbatim,
} from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { AllRunsStatements } from "./all-runs-statements.ts";
import type { Aired, Doubted, Range } from "./doubt-statements.ts";
import type {
  ConstructionWord,
  FieldWord,
  HoldWord,
  LineWord,
  ModeWord,
  StandingWord,
  StepWord,
  WaiverWord,
} from "./words.ts";

type Mass = Quantity<"mass">;
type Gauge = Quantity<"gaugePressure">;
interface Weighed {
  readonly added: Mass;
  readonly tolerance: Mass;
  readonly asked: Mass;
}
interface Bounded {
  readonly field: FieldWord;
  readonly value: Figure;
  readonly limit: Figure;
}
interface Counted {
  readonly field: FieldWord;
  readonly count: number;
  readonly limit: number;
}
interface Fields {
  readonly fields: readonly FieldWord[];
}
interface Hold {
  readonly hold: HoldWord;
}
interface Steps {
  readonly steps: readonly StepWord[];
}
interface Called {
  /** A name, or a number where there is none. */
  readonly run: Single;
}

/** Reasons and assumptions: what the record shows, and what was taken for granted. */
interface Shown {
  "commissioning.not-recorded": Fields;
  "commissioning.unusable-value": { readonly field: FieldWord; readonly value: Figure | Verbatim };
  "commissioning.unusable-part": { readonly field: FieldWord };
  "commissioning.value-too-low": Bounded;
  "commissioning.value-not-above": Bounded;
  "commissioning.value-too-high": Bounded;
  "commissioning.value-not-below": Bounded;
  "commissioning.too-few-entries": Counted;
  "commissioning.too-many-entries": Counted;
  "commissioning.waived": {
    readonly by: Verbatim;
    readonly at: Verbatim;
    readonly why: WaiverWord;
  };
  "commissioning.waived-for-run": {
    readonly run: Verbatim;
    readonly by: Verbatim;
    readonly at: Verbatim;
    readonly why: WaiverWord;
  };
  "commissioning.waived-by-nobody": None;
  "commissioning.waived-twice": None;
  "commissioning.waiver-contradicted": { readonly field: FieldWord };
  "commissioning.waiver-without-reason": { readonly fits: WaiverWord };
  "commissioning.waiver-does-not-fit": { readonly reason: WaiverWord; readonly fits: WaiverWord };
  "commissioning.waiver-needs-a1": None;
  "commissioning.waiver-needs-heating-only": None;
  "commissioning.falls-away": { readonly construction: ConstructionWord };
  "commissioning.construction-contradicted": {
    readonly construction: ConstructionWord;
    readonly field: FieldWord;
  };
  "commissioning.run-not-covered": Called;
  "commissioning.unknown-run": { readonly run: Verbatim };
  "commissioning.rules-not-passed": { readonly rules: Verbatim };
  "commissioning.done-before-proof": Hold & { readonly at: Verbatim; readonly proof: Verbatim };
  "commissioning.done-without-proof": Hold & Steps;
  "commissioning.order-not-shown": Hold;
  "commissioning.held": Hold & Steps;
  "commissioning.released": Hold;
  "commissioning.released-by-declaration": Hold & Steps;
  "commissioning.left-to-verify": Steps;
  "commissioning.older-than-work": { readonly read: Verbatim; readonly at: Verbatim };
  "commissioning.rework-not-ordered": { readonly read: Verbatim; readonly at: Verbatim };
  "commissioning.begun-before-work": { readonly read: Verbatim; readonly at: Verbatim };
  "commissioning.lines-swapped": {
    readonly liquid: Quantity<"length">;
    readonly vapor: Quantity<"length">;
  };
  "commissioning.line-other-than-port": Port;
  "commissioning.line-with-adapter": Port;
  "commissioning.fewer-joints-than-ends": { readonly count: number };
  "commissioning.joints-complete": { readonly count: number };
  "commissioning.joints-incomplete": { readonly recorded: number; readonly count: number };
  "commissioning.joint-recorded-twice": { readonly joints: readonly (Verbatim | number)[] };
  "commissioning.joint-defect": None;
  "commissioning.joint-inspected": None;
  "commissioning.brazed-with-nitrogen": None;
  "commissioning.brazed-without-nitrogen": None;
  "commissioning.no-flare-of-line": {
    readonly line: LineWord;
    readonly diameter: Quantity<"length">;
    readonly tubes: readonly Verbatim[];
  };
  "commissioning.held-long-enough": HoldTimes;
  "commissioning.held-too-short": HoldTimes;
  "commissioning.within-marked-pressure": { readonly pressure: Gauge; readonly limit: Gauge };
  "commissioning.above-marked-pressure": { readonly pressure: Gauge; readonly limit: Gauge };
  "commissioning.test-pressure-reached": { readonly pressure: Gauge; readonly limit: Gauge };
  "commissioning.test-pressure-too-low": { readonly pressure: Gauge; readonly limit: Gauge };
  "commissioning.test-below-refrigerant": {
    readonly pressure: Gauge;
    readonly own: Gauge;
    readonly refrigerant: Verbatim;
    readonly temperature: Quantity<"temperature">;
  };
  "commissioning.manual-silent": { readonly standing: StandingWord };
  "commissioning.nothing-added": None;
  "commissioning.stands-outdoors": None;
  "commissioning.weighed-within": Weighed;
  "commissioning.weighed-outside": Weighed;
  "commissioning.weighed-too-close": Weighed;
  "commissioning.above-maximum-charge": { readonly total: Mass; readonly most: Mass };
  "commissioning.near-maximum-charge": { readonly total: Mass; readonly most: Mass };
  "commissioning.tolerance-too-wide": { readonly tolerance: Mass; readonly whole: Mass };
  "commissioning.blend-fed-as-liquid": None;
  "commissioning.blend-fed-as-vapor": None;
  "commissioning.valves-opened": { readonly at: Verbatim };
  "commissioning.drain-fall": {
    readonly fall: Quantity<"length">;
    readonly needed: Quantity<"length">;
  };
  "commissioning.drain-falls-straight": None;
  "commissioning.water-drained": None;
  "commissioning.water-did-not-drain": None;
  // assumptions
  "commissioning.exact-scale": None;
  "commissioning.joints-undated": { readonly joints: readonly (Verbatim | number)[] };
  "commissioning.calibration-taken-for-granted": Fields;
  "commissioning.usual-air-difference": Range;
}

type Length = Quantity<"length">;
interface Port {
  readonly line: LineWord;
  readonly diameter: Length;
  readonly port: Verbatim;
}

interface HoldTimes {
  readonly held: Quantity<"duration">;
  readonly required: Quantity<"duration">;
}

/** Findings, which a pass would hide, and the dangers of the whole work. */
interface Found {
  "commissioning.heed-nitrogen": None;
  "commissioning.heed-refrigerant": None;
  "commissioning.heed-voltage": None;
  "commissioning.heed-gauges": None;
  "commissioning.heed-drain": None;
  "commissioning.tested-again": { readonly step: StepWord; readonly tests: number };
  "commissioning.zones-mixed": None;
  "commissioning.weather-unusual": {
    readonly mode: ModeWord;
    readonly outdoor: Quantity<"temperature">;
  };
  "commissioning.cable-short": { readonly length: Length };
  "commissioning.air-proves-no-charge": None;
  "commissioning.not-signed": None;
  "commissioning.signed-before-change": Fields & { readonly name: Verbatim; readonly at: Verbatim };
  "commissioning.amended-before-work": {
    readonly first: Verbatim;
    readonly fields: readonly FieldWord[];
  };
  "commissioning.amended": Fields;
  "commissioning.unit-unknown": None;
  "commissioning.instrument-unknown": Fields;
  "commissioning.circuit-long-before": {
    readonly circuit: Verbatim;
    readonly first: Verbatim;
    readonly field: FieldWord;
  };
  "commissioning.older-than-a-year": Fields & {
    readonly field: FieldWord;
    readonly at: Verbatim;
  };
  "commissioning.opened-long-after-evacuation": {
    readonly opened: Verbatim;
    readonly evacuated: Verbatim;
  };
  "commissioning.instrument-without-error": Fields;
  "commissioning.instrument-coarse": Fields;
  "commissioning.calibration-expired": {
    readonly instrument: FieldWord;
    readonly due: Verbatim;
    readonly at: Verbatim;
  };
  "commissioning.calibrated-afterwards": {
    readonly instrument: FieldWord;
    readonly on: Verbatim;
    readonly at: Verbatim;
  };
}

/** Actions: what to do next. */
export interface CommissioningActions {
  "commissioning.record-fields": Fields;
  "commissioning.correct-field": { readonly field: FieldWord };
  "commissioning.withdraw-waiver": None;
  "commissioning.correct-construction": None;
  "commissioning.cover-run": Called & { readonly step: StepWord };
  "commissioning.state-times": Hold;
  "commissioning.shorten-runs": { readonly most: Length };
  "commissioning.bring-indoor-units-closer": { readonly most: Length };
  "commissioning.connect-less": { readonly limit: Quantity<"power"> };
  "commissioning.connect-more": { readonly limit: Quantity<"power"> };
  "commissioning.measure-runs-better": None;
  "commissioning.recover-and-charge-anew": None;
  "commissioning.read-air-again": None;
  "commissioning.run-at-full-speed": None;
  "commissioning.see-filter-and-fan": None;
  "commissioning.state-air-difference": None;
  "commissioning.stop-and-find-current": None;
  "commissioning.read-current-again": None;
  "commissioning.pass-rules": { readonly rules: Verbatim };
  "commissioning.put-right": Hold;
  "commissioning.finish-first": Hold & Steps;
  "commissioning.read-vacuum-again": None;
  "commissioning.repeat-step": { readonly step: StepWord };
  "commissioning.see-which-line": None;
  "commissioning.record-each-joint": { readonly count: number };
  "commissioning.remake-joint": None;
  "commissioning.see-joints-of-line": { readonly line: LineWord };
  "commissioning.hold-longer": { readonly required: Quantity<"duration"> };
  "commissioning.lower-pressure": { readonly limit: Gauge };
  "commissioning.test-higher": { readonly limit: Gauge };
  "commissioning.correct-charge": { readonly asked: Mass; readonly tolerance: Mass };
  "commissioning.weigh-better": None;
  "commissioning.recover-down-to": { readonly most: Mass };
  "commissioning.state-tolerance": None;
  "commissioning.lower-drain": None;
  "commissioning.clear-drain": None;
  // hints of errors
  "commissioning.pass-what-is-on-file": None;
}

/** Reasons and assumptions. */
export interface CommissioningReasons extends Shown, AllRunsStatements, Aired {}

/** Findings, dangers, and figures that cannot be as they are recorded. */
export interface CommissioningFindings extends Found, Doubted {}

/**
 * The statements of this module: values by code.
 */
export interface CommissioningStatements
  extends CommissioningReasons,
    CommissioningFindings,
    CommissioningActions {}

/** One statement of this module. */
export type CommissioningStatement = StatementOf<CommissioningStatements>;

/** Makes a statement of this module. */
export const say: Say<CommissioningStatements> = /* @__PURE__ */ sayer();
