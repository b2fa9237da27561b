// What goes into the check of a circuit: plate, supply, wiring and what is fitted.
// Follows no single standard; the fields name what NFPA 70 (2023), 440.4(B), 440.14 and 110.26(A) ask for.
// Does not cover short-circuit ratings: compare them with the available fault current (110.9, 440.10).
import type { Quantity } from "../quantity/quantity.ts";
import type { Supply } from "./connection.ts";
import type { DeviceKind, EquipmentKind } from "./minimum-conductor.ts";
import type {
  CircuitRules,
  RuleFamily,
  SizeOf,
  TripCurve,
  VoltageRating,
  WiringOf,
} from "./rules/circuit-rules.ts";

/**
 * How the plate words the largest protection. "fuse only": a breaker alone is not enough; the others allow
 * either.
 *
 * Source: UL Marking Guide, heating and cooling equipment, as quoted in trade forums.
 */
export type ProtectionMarking =
  | "fuse only"
  | "fuse or HACR breaker"
  | "fuse or breaker"
  | "max overcurrent protection";

/**
 * The breaker or the fuses at the start of the circuit.
 *
 * Source: none; the library's own type.
 */
export interface FittedDevice {
  /** Breaker or fuse. */
  readonly kind: DeviceKind;
  /** Rating, more than 0. */
  readonly rating: Quantity<"current">;
  /** Poles that open together. */
  readonly poles?: 1 | 2 | 3;
  /** Voltage marking. */
  readonly voltageRating?: VoltageRating;
  /** Whether a breaker is marked HACR. */
  readonly hacr?: boolean;
  /** Curve of a miniature breaker. */
  readonly curve?: TripCurve;
}

/**
 * The disconnect at the unit.
 *
 * Source: NFPA 70 (2023), 440.12, 440.14, 110.26(A).
 */
export interface FittedDisconnect {
  /** Rating, more than 0. */
  readonly rating: Quantity<"current">;
  /** Rating of the fuses in it; leave out for a non-fused one. */
  readonly fuse?: Quantity<"current">;
  /** Whether it can be seen from the unit. */
  readonly visible?: boolean;
  /** How far it is from the unit. */
  readonly distance?: Quantity<"length">;
  /** Whether it can be reached without a ladder and without moving anything. */
  readonly readilyAccessible?: boolean;
  /** Whether it hides the nameplate or hangs on a panel that has to come off. */
  readonly inTheWay?: boolean;
  /** Clear space in front of it. */
  readonly workingSpace?: {
    /** Depth in front. */
    readonly depth: Quantity<"length">;
    /** Width. */
    readonly width: Quantity<"length">;
    /** Clear height from the ground or platform. */
    readonly height: Quantity<"length">;
    /** Width of the equipment, where it is wider than the least width. */
    readonly equipmentWidth?: Quantity<"length">;
    /** Opposite the live parts: 1 nothing grounded, 2 grounded parts, 3 other live parts; 3 is assumed. */
    readonly condition?: 1 | 2 | 3;
  };
}

/**
 * What is fitted. Each part that is stated is checked; without device and conductor the outcome stays open.
 *
 * Source: none; the library's own type.
 */
export interface InstalledCircuit<F extends RuleFamily = RuleFamily> {
  /** Breaker or fuses. */
  readonly device?: FittedDevice;
  /** Circuit conductors. */
  readonly conductor?: SizeOf<F>;
  /** Equipment grounding (protective) conductor. */
  readonly equipmentGrounding?: SizeOf<F>;
  /** Disconnect at the unit. */
  readonly disconnect?: FittedDisconnect;
}

/**
 * Everything that the check of a circuit needs.
 *
 * Source: none; the library's own type.
 */
export interface CircuitInput<F extends RuleFamily = RuleFamily> {
  /** The adopted rules, such as `nec2023`. */
  readonly rules: CircuitRules<F>;
  /** From the plate, more than 0. Under metric rules the design current. It already holds the 125 %. */
  readonly minimumCircuitAmpacity: Quantity<"current">;
  /** From the plate, at least the minimum circuit ampacity. Under metric rules the largest fuse allowed. */
  readonly maximumOvercurrentProtection: Quantity<"current">;
  /** How the plate words it; "max overcurrent protection" is assumed. */
  readonly protectionMarking?: ProtectionMarking;
  /** Sum of the rated-load currents of all that runs together; the minimum circuit ampacity is assumed, on the safe side. */
  readonly ratedLoadCurrent?: Quantity<"current">;
  /** Locked-rotor current, for the drop at the start. */
  readonly lockedRotorCurrent?: Quantity<"current">;
  /** Power factor while running, above 0 up to 1; together with `wiring.conduit` it gives the impedance. */
  readonly powerFactor?: number;
  /** What the circuit feeds; `motor-compressor` is assumed. */
  readonly equipment?: EquipmentKind;
  /** Where it stands; only "other" silences the advice on ground-fault protection of dwellings. */
  readonly occupancy?: "dwelling" | "other";
  /** The supply. */
  readonly supply: Supply;
  /** How the cable runs. */
  readonly wiring: WiringOf<F>;
  /** What is fitted. */
  readonly installed?: InstalledCircuit<F>;
}
