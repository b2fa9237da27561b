// Of what are the values of this module's sentences made? Types that several of them share.
// Follows assessment/statement.ts. Does not cover the codes: see statements.ts.
import type { Verbatim } from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { DeviceKind } from "./circuit-kinds.ts";
import type { RulePoint } from "./rules/index.ts";

export type Current = Quantity<"current">;
export type Length = Quantity<"length">;

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
export type Device = `circuit-protection.device.${DeviceKind}`;
export interface DeviceRated {
  readonly device: Device;
  readonly rating: Current;
}
export interface DeviceAllowed {
  readonly kinds: readonly Device[];
  readonly ratings: readonly Current[];
  readonly poles: number;
}
export interface Conductor {
  readonly section: `circuit-protection.section.${Section}`;
  readonly size: Verbatim;
  readonly usable: Current;
  readonly ampacity: Current;
  readonly rating: Current;
}
export interface Space {
  readonly depth: Length;
  readonly width: Length;
  readonly height: Length;
}
export interface Drop {
  readonly drop: Quantity<"ratio">;
  readonly limit: Quantity<"ratio">;
}
export interface Ruled {
  readonly point: `circuit-protection.point.${RulePoint}`;
  readonly clause: Verbatim;
  readonly rules: Verbatim;
}
export interface Clause {
  readonly clause: Verbatim;
}
export interface Verified extends Clause {
  readonly rules: Verbatim;
  readonly by: Verbatim;
  readonly date: Verbatim;
}
export interface Plate {
  readonly maximum: Current;
  readonly ampacity: Current;
}
