// What goes into the check of a circuit: nameplate, supply, wiring and what is fitted.
// Follows no single standard; the fields name what NFPA 70 (2023), 440.4(B), 440.14 and 110.26(A) ask for, and their
// counterparts elsewhere.
// Does not cover short-circuit ratings: compare them with the available fault current (110.9, 440.10).
import type { Quantity } from "../quantity/quantity.ts";
import type { FaultEnergy } from "./adiabatic.ts";
import type { DeviceKind, EquipmentKind } from "./circuit-kinds.ts";
import type { Material } from "./conductor-size.ts";
import type { Supply } from "./connection.ts";
import type {
  CircuitRules,
  RuleFamily,
  SizeOf,
  TripCurve,
  VoltageRating,
  WiringOf,
} from "./rules/index.ts";
import type { ClauseVerification } from "./verification.ts";

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
 */
export interface FittedDevice {
  /** Breaker or fuse. */
  readonly kind: DeviceKind;
  /** Rating, more than 0. */
  readonly rating: Quantity<"current">;
  /** Poles that open together; 4 where a device for three phases opens the neutral too. */
  readonly poles?: 1 | 2 | 3 | 4 | undefined;
  /** Voltage marking. */
  readonly voltageRating?: VoltageRating | undefined;
  /** Whether a breaker is marked HACR. */
  readonly hacr?: boolean | undefined;
  /** Curve of a miniature breaker. */
  readonly curve?: TripCurve | undefined;
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
  readonly fuse?: Quantity<"current"> | undefined;
  /** Whether it can be seen from the unit. */
  readonly visible?: boolean | undefined;
  /** How far it is from the unit. */
  readonly distance?: Quantity<"length"> | undefined;
  /** Whether it can be reached without a ladder and without moving anything. */
  readonly readilyAccessible?: boolean | undefined;
  /** Whether it hides the nameplate or hangs on a panel that has to come off. */
  readonly inTheWay?: boolean | undefined;
  /** Whether it can be locked open. */
  readonly lockable?: boolean | undefined;
  /** Whether it is mounted on the unit itself. */
  readonly onUnit?: boolean | undefined;
  /** Clear space in front of it. */
  readonly workingSpace?:
    | {
        /** Depth in front. */
        readonly depth: Quantity<"length">;
        /** Width. */
        readonly width: Quantity<"length">;
        /** Clear height from the ground or platform. */
        readonly height: Quantity<"length">;
        /** Width of the equipment, where it is wider than the least width. */
        readonly equipmentWidth?: Quantity<"length"> | undefined;
        /** Opposite the live parts: 1 nothing grounded, 2 grounded parts, 3 other live parts; 3 is assumed. */
        readonly condition?: 1 | 2 | 3 | undefined;
      }
    | undefined;
}

/**
 * A 125 V service receptacle near the unit.
 *
 * Source: NFPA 70, 210.63(A).
 */
export interface ServiceReceptacle {
  /** How far it is from the unit, on the same level. */
  readonly distance: Quantity<"length">;
  /** Whether it is fed from the load side of the unit's disconnect. */
  readonly onLoadSide?: boolean | undefined;
}

/**
 * The last piece of the run, from the disconnect to the unit, where it differs.
 */
export interface Whip<F extends RuleFamily = RuleFamily> {
  /** Its conductors. */
  readonly conductor: SizeOf<F>;
  /** How it runs; like the run when left out. */
  readonly wiring?: WiringOf<F> | undefined;
}

/**
 * What is fitted. Each part that is stated is checked; without device and conductor the outcome stays open.
 */
export interface InstalledCircuit<F extends RuleFamily = RuleFamily> {
  /** Breaker or fuses. */
  readonly device?: FittedDevice | undefined;
  /** Circuit conductors. */
  readonly conductor?: SizeOf<F> | undefined;
  /** The whip, where it differs from the run. */
  readonly whip?: Whip<F> | undefined;
  /** Whether all terminals are marked for aluminum; asked for with aluminum conductors. */
  readonly aluminumTerminals?: boolean | undefined;
  /** Equipment grounding (protective) conductor. */
  readonly equipmentGrounding?: SizeOf<F> | undefined;
  /** Material of the grounding conductor; that of the circuit conductors when left out. */
  readonly groundingMaterial?: Material | undefined;
  /** Whether the metal raceway alone serves as grounding path. */
  readonly groundingByRaceway?: boolean | undefined;
  /** Whether that raceway has compression fittings, with which it does not do alone on a roof. */
  readonly compressionFittings?: boolean | undefined;
  /** Heat of a fault to ground, for a protective conductor below the table's size. */
  readonly fault?: FaultEnergy | undefined;
  /** Disconnect at the unit. */
  readonly disconnect?: FittedDisconnect | undefined;
  /** Rated residual current of the device: 30 mA, or 5 mA for a class A ground-fault device (UL 943, 4 to 6 mA, from memory); `false` where there is none. */
  readonly residualCurrent?: Quantity<"current"> | false | undefined;
  /** The service receptacle. */
  readonly serviceReceptacle?: ServiceReceptacle | undefined;
}

/**
 * Something else on the same circuit: another unit by its nameplate, or another load by its current.
 *
 * Source: NFPA 70 (2023), 440.33, 440.34.
 */
export interface SharedLoad {
  /** `unit`: the current is its minimum circuit ampacity. `other`: it is the load's rated current. */
  readonly kind: "unit" | "other";
  /** The current, more than 0. */
  readonly current: Quantity<"current">;
  /** Largest protection that its nameplate allows. */
  readonly maximumOvercurrentProtection?: Quantity<"current"> | undefined;
  /** Whether another load runs for three hours or more, so that it counts 125 %; assumed, on the safe side. */
  readonly continuous?: boolean | undefined;
}

/**
 * Everything that the check of a circuit needs.
 */
export interface CircuitInput<F extends RuleFamily = RuleFamily> {
  /** The adopted rules, such as `nec2023`. */
  readonly rules: CircuitRules<F>;
  /** From the nameplate, more than 0. It already holds the 125 %. Metric rules take the rated current here too. */
  readonly minimumCircuitAmpacity?: Quantity<"current"> | undefined;
  /** Under metric rules, in its place: the rated current of the nameplate, which is the design current. */
  readonly ratedCurrent?: Quantity<"current"> | undefined;
  /** From the nameplate, at least the minimum circuit ampacity. */
  readonly maximumOvercurrentProtection?: Quantity<"current"> | undefined;
  /** Under metric rules, in its place: the largest fuse that nameplate or manual allows; asked for when left out. */
  readonly maximumFuse?: Quantity<"current"> | undefined;
  /** Last digit that the nameplate prints of the ampacity: 0.1 A, or 1 A for whole amperes, which is assumed. */
  readonly printedTo?: Quantity<"current"> | undefined;
  /** Whether the nameplate was read a second time, so that figures that look wrong are taken as printed. */
  readonly nameplateReadAgain?: boolean | undefined;
  /** How the plate words it; "max overcurrent protection" is assumed. */
  readonly protectionMarking?: ProtectionMarking | undefined;
  /** Sum of the rated-load currents of all that runs together; the minimum circuit ampacity is assumed, on the safe side. */
  readonly ratedLoadCurrent?: Quantity<"current"> | undefined;
  /** Rated-load current of the largest of them, for rules that size the disconnect by it. */
  readonly largestLoadCurrent?: Quantity<"current"> | undefined;
  /** Locked-rotor current, for the drop at the start. */
  readonly lockedRotorCurrent?: Quantity<"current"> | undefined;
  /** What else is on the circuit. */
  readonly sharedWith?: readonly SharedLoad[] | undefined;
  /** Power factor while running, above 0 up to 1; 1 is assumed, on the safe side for small conductors. */
  readonly powerFactor?: number | undefined;
  /** What the circuit feeds; where it is not stated and decides, the outcome stays open. */
  readonly equipment?: EquipmentKind | undefined;
  /** Where it stands; only "other" silences ground-fault protection of dwellings. */
  readonly occupancy?: "dwelling" | "other" | undefined;
  /** Day of the work, as "2026-11-29"; rules with dates are read for it. */
  readonly date?: string | undefined;
  /** Whether the unit has power conversion (an inverter); it is taken as having it. */
  readonly powerConversion?: boolean | undefined;
  /**
   * Which text of the clause on ground-fault protection is adopted, by its name in the rule set, or "not adopted"; asked
   * for where it decides.
   */
  readonly groundFaultText?: string | undefined;
  /** What was checked by the text of clauses that the verdict asked for in `toVerify`. */
  readonly verifications?: readonly ClauseVerification[] | undefined;
  /** Earthing of the supply, which decides on residual-current devices under metric rules. */
  readonly earthing?: "TN" | "TT" | undefined;
  /** The supply. */
  readonly supply: Supply;
  /** How the cable runs. */
  readonly wiring: WiringOf<F>;
  /** What is fitted. */
  readonly installed?: InstalledCircuit<F> | undefined;
}
