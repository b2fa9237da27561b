// What can this module give as a reason? Every code with its values.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover findings, assumptions and actions: see statements.ts.
import type { None, Verbatim } from "../assessment/statement.ts";
import type {
  Clause,
  Conductor,
  Current,
  Device,
  DeviceAllowed,
  DeviceRated,
  Drop,
  Length,
  Plate,
  Ruled,
  Space,
  Verified,
} from "./statement-values.ts";

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
  "circuit-protection.grounding-by-exception": {
    readonly fitted: Verbatim;
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
