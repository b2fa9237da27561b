// What can this module say? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover the dangers that modules share: assessment/safety.ts.
import {
  type None,
  type Say,
  type StatementOf,
  sayer,
  type Verbatim,
} from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { DeviceKind } from "./circuit-kinds.ts";
import type { RuleAdvice, RulePoint } from "./rules/circuit-rules.ts";

type Current = Quantity<"current">;
type Length = Quantity<"length">;

/** The place of a conductor: the run from the panel, or the whip from the disconnect to the unit. */
export type Section = "run" | "whip";

/** What is not judged by this module, or was not stated. */
export type Unjudged =
  | "equipment-grounding"
  | "disconnect"
  | "voltage-drop"
  | "service-receptacle"
  | "in-sight"
  | "near-enough"
  | "accessible"
  | "not-in-the-way"
  | "lockable"
  | "not-on-unit"
  | "working-space"
  | "short-circuit-rating"
  | "horsepower-rating"
  | "fault-loop"
  | "breaking-capacity";

/** The device of a sentence. */
type Device = `circuit-protection.device.${DeviceKind}`;
interface DeviceRated {
  readonly device: Device;
  readonly rating: Current;
}
interface DeviceAllowed {
  readonly kinds: readonly Device[];
  readonly ratings: readonly Current[];
  readonly poles: number;
}
interface Conductor {
  readonly section: `circuit-protection.section.${Section}`;
  readonly size: Verbatim;
  readonly usable: Current;
  readonly ampacity: Current;
  readonly rating: Current;
}
interface Space {
  readonly depth: Length;
  readonly width: Length;
  readonly height: Length;
}
interface Drop {
  readonly drop: Quantity<"ratio">;
  readonly limit: Quantity<"ratio">;
}
interface Ruled {
  readonly point: `circuit-protection.point.${RulePoint}`;
  readonly clause: Verbatim;
  readonly rules: Verbatim;
}
interface Clause {
  readonly clause: Verbatim;
}
interface Verified extends Clause {
  readonly rules: Verbatim;
  readonly by: Verbatim;
  readonly date: Verbatim;
}
interface Plate {
  readonly maximum: Current;
  readonly ampacity: Current;
}

/** Reasons, and the steps by which a figure was come by. */
export interface CircuitProtectionReasons {
  // device
  "circuit-protection.device-rating-met": DeviceRated & { readonly limit: Current };
  "circuit-protection.device-too-large": DeviceRated & { readonly limit: Current };
  "circuit-protection.device-below-load": DeviceRated & { readonly load: Current };
  "circuit-protection.device-below-loads": DeviceRated & { readonly load: Current };
  "circuit-protection.device-below-ampacity": DeviceRated & { readonly ampacity: Current };
  "circuit-protection.device-kind-met": { readonly device: Device };
  "circuit-protection.fuse-required": None;
  "circuit-protection.poles-met": { readonly poles: number; readonly needed: number };
  "circuit-protection.poles-too-few": { readonly poles: number; readonly needed: number };
  "circuit-protection.poles-not-stated": { readonly needed: number };
  "circuit-protection.voltage-marking-met": { readonly marking: Verbatim };
  "circuit-protection.voltage-marking-too-low": {
    readonly marking: Verbatim;
    readonly needed: Verbatim;
    readonly system: Verbatim;
  };
  "circuit-protection.voltage-marking-not-stated": { readonly system: Verbatim };
  "circuit-protection.device-not-stated": None;
  "circuit-protection.device-allowed": DeviceAllowed;
  "circuit-protection.allowed": DeviceAllowed & {
    readonly size: Verbatim;
    readonly rating: Current;
  };
  "circuit-protection.no-standard-device": Plate;
  // nameplate
  "circuit-protection.maximum-too-high": Plate;
  "circuit-protection.maximum-not-stated": None;
  // conductors
  "circuit-protection.conductor-met": Conductor;
  "circuit-protection.conductor-too-small": Conductor;
  "circuit-protection.conductor-unprotected": Omit<Conductor, "ampacity">;
  "circuit-protection.conductor-not-stated": None;
  "circuit-protection.conductor-not-judged": { readonly size: Verbatim; readonly clause: Verbatim };
  "circuit-protection.equipment-not-stated": {
    readonly size: Verbatim;
    readonly rating: Current;
  };
  "circuit-protection.aluminum-terminals-met": None;
  "circuit-protection.aluminum-terminals-missing": None;
  "circuit-protection.aluminum-terminals-not-stated": None;
  // grounding
  "circuit-protection.grounding-met": { readonly fitted: Verbatim; readonly size: Verbatim };
  "circuit-protection.grounding-too-small": { readonly fitted: Verbatim; readonly size: Verbatim };
  "circuit-protection.grounding-by-energy-met": {
    readonly fitted: Verbatim;
    readonly area: number;
  };
  "circuit-protection.grounding-by-energy-short": {
    readonly fitted: Verbatim;
    readonly area: number;
  };
  "circuit-protection.grounding-needs-energy": {
    readonly fitted: Verbatim;
    readonly size: Verbatim;
  };
  "circuit-protection.grounding-two-readings": {
    readonly size: Verbatim;
    readonly clause: Verbatim;
  };
  "circuit-protection.grounding-wire-missing": Clause;
  // disconnect
  "circuit-protection.disconnect-rating-met": {
    readonly rating: Current;
    readonly needed: Current;
  };
  "circuit-protection.disconnect-too-small": { readonly rating: Current; readonly needed: Current };
  "circuit-protection.largest-load-not-stated": {
    readonly rating: Current;
    readonly needed: Current;
  };
  "circuit-protection.disconnect-fuse-met": { readonly fuse: Current; readonly limit: Current };
  "circuit-protection.disconnect-fuse-too-large": {
    readonly fuse: Current;
    readonly limit: Current;
  };
  "circuit-protection.disconnect-in-sight": None;
  "circuit-protection.disconnect-out-of-sight": None;
  "circuit-protection.disconnect-near": { readonly distance: Length; readonly limit: Length };
  "circuit-protection.disconnect-too-far": { readonly distance: Length; readonly limit: Length };
  "circuit-protection.disconnect-accessible": None;
  "circuit-protection.disconnect-not-accessible": None;
  "circuit-protection.disconnect-clear": None;
  "circuit-protection.disconnect-in-the-way": None;
  "circuit-protection.disconnect-lockable": None;
  "circuit-protection.disconnect-not-lockable": None;
  "circuit-protection.disconnect-off-unit": None;
  "circuit-protection.disconnect-on-unit": None;
  "circuit-protection.working-space-met": Space;
  "circuit-protection.working-space-short": Space;
  "circuit-protection.receptacle-met": { readonly distance: Length; readonly limit: Length };
  "circuit-protection.receptacle-too-far": { readonly distance: Length; readonly limit: Length };
  "circuit-protection.receptacle-on-load-side": None;
  // drop and residual current
  "circuit-protection.voltage-drop-met": Drop;
  "circuit-protection.voltage-drop-above-limit": Drop;
  "circuit-protection.residual-current-met": { readonly rated: Current };
  "circuit-protection.residual-current-missing": Clause;
  "circuit-protection.residual-current-too-high": {
    readonly rated: Current;
    readonly limit: Current;
  };
  "circuit-protection.residual-current-not-stated": Clause;
  "circuit-protection.ground-fault-met": Clause & { readonly rated: Current };
  "circuit-protection.ground-fault-missing": Clause;
  "circuit-protection.ground-fault-open": Clause;
  "circuit-protection.ground-fault-not-stated": Clause;
  "circuit-protection.ground-fault-by-date": Clause & { readonly from: Verbatim };
  "circuit-protection.raceway-fittings-not-stated": Clause;
  "circuit-protection.raceway-fittings-met": Clause;
  // standing of the rules
  "circuit-protection.not-confirmed": Ruled;
  "circuit-protection.found-not-to-comply": Verified;
  "circuit-protection.clause-not-asked-for": Clause;
  // figures of a nameplate from its parts
  "circuit-protection.ampacity-fits": { readonly marked: Current; readonly ampacity: Current };
  "circuit-protection.ampacity-too-low": { readonly marked: Current; readonly ampacity: Current };
  "circuit-protection.ampacity-unexplained": {
    readonly marked: Current;
    readonly ampacity: Current;
  };
  "circuit-protection.protection-fits": { readonly maximum: Current; readonly ceiling: Current };
  "circuit-protection.protection-too-high": {
    readonly maximum: Current;
    readonly ceiling: Current;
  };
  "circuit-protection.next-size-down": { readonly calculated: Current };
  "circuit-protection.heater-needs-more": { readonly rating: Current };
  "circuit-protection.smallest-rating": { readonly rating: Current };
  "circuit-protection.ampacity-needs-more": { readonly rating: Current };
}

/** What was assumed, and what a pass would hide. */
export interface CircuitProtectionFindings {
  // assumptions
  "circuit-protection.marking-assumed": None;
  "circuit-protection.service-assumed": { readonly system: Verbatim };
  "circuit-protection.ambient-assumed": { readonly ambient: Quantity<"temperature"> };
  "circuit-protection.terminations-assumed": None;
  "circuit-protection.cable-assumed": None;
  "circuit-protection.roof-assumed": None;
  "circuit-protection.conductors-assumed": None;
  "circuit-protection.circuits-assumed": None;
  "circuit-protection.rated-load-assumed": { readonly ampacity: Current };
  "circuit-protection.voltage-marking-assumed": { readonly marking: Verbatim };
  "circuit-protection.compressor-inferred": Plate;
  "circuit-protection.ground-fault-not-adopted": Clause;
  "circuit-protection.not-stated": {
    readonly parts: readonly `circuit-protection.unjudged.${Unjudged}`[];
  };
  "circuit-protection.not-judged": {
    readonly parts: readonly `circuit-protection.unjudged.${Unjudged}`[];
  };
  "circuit-protection.heater-below-50-kw": None;
  // findings
  "circuit-protection.not-a-usual-size": { readonly maximum: Current };
  "circuit-protection.maximum-confirmed": Plate;
  "circuit-protection.rated-load-low": { readonly load: Current; readonly ampacity: Current };
  "circuit-protection.device-not-standard": DeviceRated;
  "circuit-protection.no-standard-device-between": Plate;
  "circuit-protection.hacr-mark": None;
  "circuit-protection.curve": { readonly curve: Verbatim };
  "circuit-protection.start-may-trip": { readonly locked: Current; readonly from: Current };
  "circuit-protection.working-space-recommended": Space;
  "circuit-protection.voltage-drop-recommended": Drop;
  "circuit-protection.verified": Verified;
  "circuit-protection.from-memory": { readonly clauses: readonly Verbatim[] };
  "circuit-protection.rules-older": { readonly reviewed: Verbatim; readonly date: Verbatim };
  "circuit-protection.ground-fault-required": Clause;
  "circuit-protection.ground-fault-class-c": Clause;
  "circuit-protection.ground-fault-exempt": Clause & {
    readonly from: Verbatim;
    readonly date: Verbatim;
  };
  "circuit-protection.advice": Clause & {
    readonly advice: `circuit-protection.advice.${RuleAdvice}`;
  };
  "circuit-protection.calculated-not-marked": None;
  "circuit-protection.shared-circuit": { readonly count: number };
}

/** What to do next. */
export interface CircuitProtectionActions {
  "circuit-protection.fit-at-most": { readonly limit: Current };
  "circuit-protection.fit-between": { readonly from: Current; readonly to: Current };
  "circuit-protection.fit-fuses": None;
  "circuit-protection.fit-poles": { readonly needed: number };
  "circuit-protection.fuse-every-line": { readonly needed: number };
  "circuit-protection.give-own-circuit": None;
  "circuit-protection.fit-marking": { readonly needed: Verbatim };
  "circuit-protection.ask-manufacturer": None;
  "circuit-protection.read-nameplate-again": None;
  "circuit-protection.state-maximum": None;
  "circuit-protection.state-device": None;
  "circuit-protection.state-poles": None;
  "circuit-protection.state-marking": None;
  "circuit-protection.state-conductor": None;
  "circuit-protection.state-equipment": None;
  "circuit-protection.state-largest-load": None;
  "circuit-protection.fit-conductor": { readonly size: Verbatim };
  "circuit-protection.fit-larger-conductor": None;
  "circuit-protection.fit-aluminum-terminals": None;
  "circuit-protection.look-at-terminals": None;
  "circuit-protection.fit-grounding": { readonly size: Verbatim };
  "circuit-protection.fit-grounding-area": { readonly area: number };
  "circuit-protection.state-fault-energy": None;
  "circuit-protection.fit-grounding-wire": None;
  "circuit-protection.look-at-fittings": None;
  "circuit-protection.fit-disconnect": { readonly needed: Current };
  "circuit-protection.fit-disconnect-fuses": { readonly limit: Current };
  "circuit-protection.move-disconnect": None;
  "circuit-protection.move-disconnect-within": { readonly limit: Length };
  "circuit-protection.fit-lockable-disconnect": None;
  "circuit-protection.clear-space": Space;
  "circuit-protection.add-receptacle": { readonly limit: Length };
  "circuit-protection.fit-conductor-for-drop": { readonly size: Verbatim };
  "circuit-protection.shorten-run": { readonly longest: Length };
  "circuit-protection.fit-residual-current": { readonly limit: Current };
  "circuit-protection.state-earthing": None;
  "circuit-protection.fit-ground-fault": { readonly limit: Current };
  "circuit-protection.state-date": None;
  "circuit-protection.state-ground-fault": Clause & { readonly limit: Current };
  "circuit-protection.size-conductor-elsewhere": Clause;
  "circuit-protection.ask-authority": Clause & { readonly rules: Verbatim };
  "circuit-protection.comply-and-verify": Clause & { readonly rules: Verbatim };
  "circuit-protection.withdraw-verification": Clause;
  // hints of errors
  "circuit-protection.add-compressor": None;
  "circuit-protection.check-service": None;
  "circuit-protection.maximum-below-ampacity": None;
}

/**
 * The statements of this module: values by code.
 */
export interface CircuitProtectionStatements
  extends CircuitProtectionReasons,
    CircuitProtectionFindings,
    CircuitProtectionActions {}

/** The words of this module. */
export type CircuitProtectionWord =
  | `circuit-protection.device.${DeviceKind}`
  | `circuit-protection.section.${Section}`
  | `circuit-protection.point.${RulePoint}`
  | `circuit-protection.advice.${RuleAdvice}`
  | `circuit-protection.unjudged.${Unjudged}`
  | `circuit-protection.cause.${CircuitPart | NameplateCause}`;

/**
 * What a circuit can fail on, and what is checked; `not-confirmed` where nothing is open but clauses that this library
 * does not know.
 */
export type CircuitPart =
  | "device-rating"
  | "device-kind"
  | "device-poles"
  | "device-voltage"
  | "conductor"
  | "terminals"
  | "equipment-grounding"
  | "disconnect-rating"
  | "disconnect-fuse"
  | "disconnect-place"
  | "working-space"
  | "service-receptacle"
  | "voltage-drop"
  | "residual-current"
  | "not-confirmed";

/** What a nameplate can fail on. */
export type NameplateCause = "ampacity-too-low" | "protection-too-high";

/** One statement of this module. */
export type CircuitProtectionStatement = StatementOf<CircuitProtectionStatements>;

/** Makes a statement of this module. */
export const say: Say<CircuitProtectionStatements> = /* @__PURE__ */ sayer();

/** A text that no language changes. */
export const verbatim = (text: string): Verbatim => ({ verbatim: text });
