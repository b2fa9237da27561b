// Which services are there, and which voltage markings of breakers and fuses? Types only.
// Follows NFPA 70, 240.85, for the distinction; the names are common practice, no source.
// Does not cover which rule set knows which: each lists its own.

/**
 * Services that the rule sets know, by the way the trade writes them.
 *
 * Source: NFPA 70, 240.85, for the distinction; the names are common practice, no source.
 */
export type SupplySystemName =
  | "120/240 V"
  | "208Y/120 V"
  | "240 V delta"
  | "240/120 V high-leg delta"
  | "480 V delta"
  | "480Y/277 V"
  | "220Y/127 V"
  | "440Y/254 V"
  | "600 V delta"
  | "600Y/347 V"
  | "230/400 V"
  | "220/380 V"
  | "127/220 V"
  | "100/200 V"
  | "200 V delta";

/**
 * Voltage marking of a breaker or fuse. A slash rating ("120/240 V") limits the voltage to ground as
 * well as the voltage between conductors.
 *
 * Source: NFPA 70, 240.85 (from memory).
 */
export type VoltageRating =
  | "120 V"
  | "120/240 V"
  | "240 V"
  | "277 V"
  | "480Y/277 V"
  | "480 V"
  | "600Y/347 V"
  | "600 V"
  | "230 V"
  | "230/400 V"
  | "400 V"
  | "100 V"
  | "100/200 V"
  | "200 V";

/** One service. */
export interface SupplySystem {
  /** Its name. */
  readonly name: SupplySystemName;
  /** Phases that it has. */
  readonly phases: 1 | 3;
  /** Nominal volts between two lines. */
  readonly lineToLine: number;
  /** Nominal volts from line to neutral; left out where there is no neutral. */
  readonly lineToNeutral?: number | undefined;
  /** Highest nominal volts of a line to ground. */
  readonly toGround: number;
  /** Whether it is only taken where it is named: other services of the rules are far more common. */
  readonly onlyNamed?: true | undefined;
}
