// Which verdict belongs to which check? The names of the checks and what their modules answer. Types only.
// Follows the modules. Does not cover which checks a record allows: the steps say that.
import type { Assessment } from "../assessment/assessment.ts";
import type { ConcentrationAssessment, RoomChargeAssessment } from "../charge-limit/index.ts";
import type { CircuitAssessment } from "../circuit-protection/index.ts";
import type {
  CondensatePumpAssessment,
  DrainSlopeAssessment,
  IndoorUnitPitchAssessment,
} from "../condensate/index.ts";
import type {
  FlareAssessment,
  FlareDiameterCause,
  FlareTorqueAssessment,
  FlareTorqueCause,
} from "../flare-joint/index.ts";
import type {
  ChargeAssessment,
  LineRunAssessment,
  LiquidChargePlausibility,
} from "../line-set/index.ts";
import type {
  ChargeByGaugeAssessment,
  ServiceReadingAssessment,
} from "../operating-check/index.ts";
import type { LogAssessment, TwoReadingAssessment } from "../pressure-test/index.ts";
import type { SupplyVoltageAssessment } from "../supply-voltage/index.ts";
import type { VacuumDecayAssessment } from "../vacuum-decay/index.ts";
import type { CheckName } from "./names.ts";
import type { OwnVerdict } from "./own-verdict.ts";

/**
 * What each check answers, by its name. An {@link OwnVerdict} is one that the record answers by itself.
 *
 * Source: the modules that judge; the names are the library's own.
 */
export interface CheckVerdicts extends Record<CheckName, object> {
  /** Length and lift against the manual. */
  readonly "line-run": LineRunAssessment;
  /** A liquid line that is recorded as wider than the vapor line. */
  readonly "line-sizes": OwnVerdict;
  /** All runs together against the manual. */
  readonly "total-length": OwnVerdict;
  /** Capacities of the indoor units together against the manual. */
  readonly "connected-units": OwnVerdict;
  /** The height between the indoor units against the manual. */
  readonly "indoor-lift": OwnVerdict;
  /** Torque of a flare nut. */
  readonly "flare-torque": FlareTorqueAssessment;
  /** Turn of a flare nut, where there was no wrench. */
  readonly "flare-turn": FlareAssessment<"angle", FlareTorqueCause>;
  /** Diameter of a flare. */
  readonly "flare-diameter": FlareAssessment<"length", FlareDiameterCause>;
  /** Wall of a flared tube. */
  readonly "flare-wall": FlareAssessment<"length", "wall-too-thin">;
  /** Nitrogen while brazing. */
  readonly "brazed-joint": OwnVerdict;
  /** Look at a pre-charged coupling. */
  readonly "coupling-joint": OwnVerdict;
  /** Look at a pressed joint. */
  readonly "pressed-joint": OwnVerdict;
  /** A look that found a flared or brazed joint wrong. */
  readonly "joint-inspected": OwnVerdict;
  /** Joints recorded against joints made. */
  readonly "joint-count": OwnVerdict;
  /** A line of which no flare is recorded, where all joints are flares. */
  readonly "joint-sizes": OwnVerdict;
  /** Tightness, by two readings or by a log. */
  readonly "pressure-test": TwoReadingAssessment | LogAssessment;
  /** Length of the hold. */
  readonly "test-hold": OwnVerdict;
  /** Highest reading against the lowest marked pressure. */
  readonly "marked-pressure": OwnVerdict;
  /** Lowest reading against the pressure of the manual, and each against the refrigerant's own. */
  readonly "test-pressure": OwnVerdict;
  /** Dryness and tightness in vacuum. */
  readonly "vacuum-decay": VacuumDecayAssessment;
  /** A test that is older than what it should prove. */
  readonly order: OwnVerdict;
  /** Flammable charge in its room. */
  readonly "room-charge": RoomChargeAssessment;
  /** Concentration in its room. */
  readonly "room-concentration": ConcentrationAssessment;
  /** Charge by the manual's rule. */
  readonly "additional-charge": ChargeAssessment;
  /** A rate that cannot be right for the liquid line. */
  readonly "charge-rate": LiquidChargePlausibility;
  /** Charge that was weighed in. */
  readonly "weighed-charge": OwnVerdict;
  /** A blend that was fed as liquid. */
  readonly "fed-as-liquid": OwnVerdict;
  /** Whether the valves were opened. */
  readonly "valves-opened": OwnVerdict;
  /** Breaker, conductor, grounding, disconnect. */
  readonly circuit: CircuitAssessment;
  /** Rules that are named but were not passed. */
  readonly rules: OwnVerdict;
  /** Supply against plate and standard. */
  readonly "supply-voltage": SupplyVoltageAssessment;
  /** Fall of the drain. */
  readonly "drain-slope": DrainSlopeAssessment | OwnVerdict;
  /** Pump of the drain. */
  readonly "condensate-pump": CondensatePumpAssessment;
  /** Pitch of the indoor unit. */
  readonly "unit-pitch": IndoorUnitPitchAssessment;
  /** Poured water. */
  readonly "water-drained": OwnVerdict;
  /** Gauge on the running unit. */
  readonly "service-reading": ServiceReadingAssessment;
  /** Superheat or subcooling; plain where the charge can only be weighed. */
  readonly "charge-by-gauge": ChargeByGaugeAssessment | Assessment;
  /** Air across the indoor coil. */
  readonly "air-difference": OwnVerdict;
  /** Current at full speed against the plate. */
  readonly "running-current": OwnVerdict;
  /** A run that no test covers, or a test of a run that there is not. */
  readonly coverage: OwnVerdict;
  /** A figure that cannot be as it is recorded. */
  readonly plausibility: OwnVerdict;
  /** A waiver, or a construction, that the record does not bear out. */
  readonly waiver: OwnVerdict;
}

/** The check of one name. */
export interface NamedCheck<Name extends CheckName> {
  /** What was checked. */
  readonly name: Name;
  /** Path of the part of the record that was checked. */
  readonly path: string;
  /** The verdict of the module, with all its own figures. */
  readonly assessment: CheckVerdicts[Name];
}

/**
 * What a module said about a part of the record. Its `name` tells which figures the verdict has.
 */
export type StepCheck = { readonly [Name in CheckName]: NamedCheck<Name> }[CheckName];
