// How are the steps, checks and hold points of an installation called? Types only.
// Follows the order of the work as manuals have it; common practice, no source.
// Does not cover how they read: the catalogues in language/ word them.

/** The steps in the order of the work. Source: common practice, no source. */
export type StepName =
  | "line-run"
  | "joints"
  | "pressure-test"
  | "evacuation"
  | "room-limit"
  | "charge"
  | "valves"
  | "circuit"
  | "supply"
  | "drain"
  | "operation";

/**
 * How far a step is recorded. `done`: all that it needs is there and was judged. `partial`: some of it. `missing`:
 * nothing could be judged. `not-applicable`: waived, or left out by the construction of the unit, and nothing in the
 * record speaks against it.
 */
export type StepState = "done" | "partial" | "missing" | "not-applicable";

/** What waits for proof. Source: common practice, no source. */
export type HoldName = "open-valves" | "add-charge" | "power-on";

/**
 * `held`: not yet. `released`: may be done. `breached`: was done although it was held, or before its proof.
 */
export type HoldState = "held" | "released" | "breached";

/** The checks by name. */
export type CheckName =
  | "line-run"
  | "line-sizes"
  | "total-length"
  | "indoor-lift"
  | "connected-units"
  | "flare-torque"
  | "flare-turn"
  | "flare-diameter"
  | "flare-wall"
  | "brazed-joint"
  | "pressed-joint"
  | "coupling-joint"
  | "joint-inspected"
  | "joint-count"
  | "joint-sizes"
  | "pressure-test"
  | "test-hold"
  | "marked-pressure"
  | "test-pressure"
  | "vacuum-decay"
  | "order"
  | "room-charge"
  | "room-concentration"
  | "additional-charge"
  | "charge-rate"
  | "weighed-charge"
  | "fed-as-liquid"
  | "valves-opened"
  | "circuit"
  | "rules"
  | "supply-voltage"
  | "drain-slope"
  | "condensate-pump"
  | "unit-pitch"
  | "water-drained"
  | "service-reading"
  | "charge-by-gauge"
  | "air-difference"
  | "running-current"
  | "coverage"
  | "plausibility"
  | "waiver";
