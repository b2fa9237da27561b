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
import type { CircuitProtectionReasons } from "./reason-statements.ts";
import type { RuleAdvice, RulePoint } from "./rules/index.ts";
import type {
  Clause,
  Current,
  DeviceRated,
  Drop,
  Length,
  Plate,
  Section,
  Space,
  Unjudged,
  Verified,
} from "./statement-values.ts";

export type { CircuitProtectionReasons } from "./reason-statements.ts";
export type { Section, Unjudged } from "./statement-values.ts";

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
