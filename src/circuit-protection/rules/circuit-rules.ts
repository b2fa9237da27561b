// What does one edition or jurisdiction lay down? The form that every rule set fills with its tables.
// Follows no single standard: the fields are those of NFPA 70, CSA C22.1, IEC 60364 and others side by side.
// Does not cover a rule that is not data: the arithmetic stands in the files that read these tables.

import type { Citation } from "../../assessment/assessment.ts";
import type { Unit } from "../../quantity/quantity.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { AwgSize, Material, MetricSize } from "../conductor-size.ts";
import type { AwgWiring, MetricWiring } from "../wiring.ts";
import type { GroundFaultRule } from "./ground-fault-rule.ts";
import type { SupplySystem, VoltageRating } from "./supply-system.ts";

/**
 * The two ways in which rule books describe a cable: by wire gauge, insulation and terminals (NFPA 70,
 * CSA C22.1), or by cross-section and method of installation (IEC 60364 and its national forms).
 */
export interface RuleFamilies {
  /** Wire gauge, insulation column, termination limit. */
  awg: { size: AwgSize; wiring: AwgWiring };
  /** Square millimeters, reference method of installation. */
  metric: { size: MetricSize; wiring: MetricWiring };
}

/** A key of {@link RuleFamilies}. */
export type RuleFamily = keyof RuleFamilies;

/** A conductor size of a family. */
export type SizeOf<F extends RuleFamily> = RuleFamilies[F]["size"];

/** A description of the wiring of a family. */
export type WiringOf<F extends RuleFamily> = RuleFamilies[F]["wiring"];

/**
 * A table as it is printed: a key column, then one value per heading, `null` where the print has a dash.
 */
export interface PrintedTable<Key extends string | number> {
  /** Headings of the value columns. */
  readonly columns: readonly string[];
  /** The rows, in the order of the print. */
  readonly rows: readonly (readonly [key: Key, ...values: (number | null)[]])[];
}

/**
 * Rows "up to and including this count or rating, this value".
 */
export type Steps<Value> = readonly (readonly [upTo: number, value: Value])[];

/**
 * How a rule came into a rule set. `confirmed`: two or more public texts agree, or the law itself was read.
 * `secondary`: one transcription, or a text of the trade about the rule. `memory`: remembered, not read. `missing`:
 * the rule exists, its content was not found.
 */
export type ClauseStanding = "confirmed" | "secondary" | "memory" | "missing";

/**
 * The points on which a circuit is judged, each by a clause of its own.
 */
export type RulePoint =
  | "marked-values"
  | "device-ratings"
  | "poles"
  | "voltage-marking"
  | "overload"
  | "small-fuse"
  | "ampacity"
  | "terminations"
  | "sheathed-cable"
  | "ambient"
  | "grouping"
  | "thermal-insulation"
  | "rooftop"
  | "aluminum-terminals"
  | "grounding"
  | "enlarged-grounding"
  | "disconnect-rating"
  | "disconnect-place"
  | "working-space"
  | "voltage-drop"
  | "residual-current"
  | "ground-fault"
  | "service-receptacle"
  | "rooftop-raceway"
  | "compressor";

/** A clause and how it was come by. */
export interface RuleClause {
  /** Where the rule stands in the rule book. */
  readonly clause: string;
  /** How it came into this rule set. */
  readonly standing: ClauseStanding;
}

/**
 * Equipment grounding (protective) conductor: by the device with an enlargement for enlarged conductors, or by the
 * line conductor.
 *
 * Source: NFPA 70, 250.122; CSA C22.1, table 16; IEC 60364-5-54, table 54.2.
 */
export type GroundingRule<F extends RuleFamily = RuleFamily> =
  | {
      /** By the rating of the device. */
      readonly by: "device";
      /** Sizes by rating and material. */
      readonly table: Steps<Readonly<Record<Material, SizeOf<F>>>>;
      /** What an enlarged circuit conductor does: in proportion of area, or the table entered with its ampacity. */
      readonly enlargedBy: "area" | "ampacity";
    }
  | {
      /** By the line conductor. */
      readonly by: "line";
      /** Line conductor and the protective conductor that belongs to it. */
      readonly table: readonly (readonly [line: SizeOf<F>, protective: SizeOf<F>])[];
      /** Whether the adiabatic equation may take the table's place. */
      readonly adiabatic: boolean;
    };

/** What a disconnect has to be, apart from its rating. */
export type DisconnectDemand =
  | "visible"
  | "visible or lockable"
  | "readilyAccessible"
  | "notInTheWay"
  | "lockable"
  | "notOnUnit";

/**
 * The rules of one edition in one jurisdiction, as data. Plain numbers are in A, V, °C, m unless a field
 * says otherwise.
 */
export interface CircuitRules<F extends RuleFamily = RuleFamily> {
  /** How cables are described. */
  readonly family: F;
  /** Name with edition. */
  readonly name: string;
  /** The work in the bibliography. */
  readonly source: SourceId;
  /** The day to which the set was held against its source, as "2026-11-29". */
  readonly reviewed: string;
  /** Whether a point that is not confirmed decides nothing. */
  readonly onlyConfirmed: boolean;
  /** The clauses by point; a point that is left out is not judged under these rules. */
  readonly points: Readonly<Partial<Record<RulePoint, RuleClause>>>;
  /** The clauses that a circuit is judged by. */
  readonly citations: readonly Citation[];
  /** Standard ratings of breakers and of fuses, rising. */
  readonly ratings: { readonly breaker: readonly number[]; readonly fuse: readonly number[] };
  /** Smallest rating of a circuit of this kind, unless the nameplate asks for less. */
  readonly smallestRating: number;
  /** Which of the permitted ratings is proposed. */
  readonly proposes: "largest" | "smallest";
  /** Minimum ampacity over rated-load current of a single load. */
  readonly ampacityFactor: number;
  /** Whether the device has to protect the conductor against overload also in compressor circuits. */
  readonly deviceProtectsConductor: boolean;
  /** Ampacity over rating that each kind of device needs, where the device protects the conductor. */
  readonly ampacityPerRating?:
    | { readonly breaker: Steps<number>; readonly fuse: Steps<number> }
    | undefined;
  /** General circuits: up to which rating the next size above the ampacity is allowed. */
  readonly nextSizeUpTo?: number | undefined;
  /** General circuits: largest device on small conductors, columns by material. */
  readonly smallConductors?: PrintedTable<SizeOf<F>> | undefined;
  /** Services, in the order in which an unnamed one is taken: the one with the stricter rating first. */
  readonly systems: readonly SupplySystem[];
  /** Voltage markings: volts to ground and volts between conductors, rising. */
  readonly voltageRatings: PrintedTable<VoltageRating>;
  /** Ampacities; columns "copper 60 °C", or "copper 70 °C C 2" for method C with two loaded conductors. Left out: not judged. */
  readonly ampacity?: readonly PrintedTable<SizeOf<F>>[] | undefined;
  /** Correction for ambient temperature by its upper edge in °C; columns by insulation. */
  readonly ambient: PrintedTable<number>;
  /** The same in the ground, methods D1 and D2. */
  readonly groundAmbient?: PrintedTable<number> | undefined;
  /** Correction for the soil by its resistivity in K·m/W; columns by method. */
  readonly soil?: PrintedTable<number> | undefined;
  /** Derating where thermal insulation surrounds the cable, by length in m. */
  readonly thermalInsulation?: Steps<number> | undefined;
  /** Adjustment for loaded conductors (wire gauge, "bunched") or circuits (metric) that run together, by arrangement. */
  readonly adjustment: Readonly<Record<string, Steps<number>>>;
  /** Termination column up to a device rating, and above it, unless the equipment is marked. */
  readonly terminations?: Steps<"60 °C" | "75 °C"> | undefined;
  /** Column that caps non-metallic sheathed cable. */
  readonly sheathedCableColumn?: "60 °C" | undefined;
  /** Wiring closer to the roof than `below` (m) counts as hotter by `adder` (K). */
  readonly rooftop?: { readonly below: number; readonly adder: number } | undefined;
  /** Equipment grounding (protective) conductor; left out: not judged. */
  readonly grounding?: GroundingRule<F> | undefined;
  /** Disconnect: factor on the rated-load currents of all or of the largest, made sizes, distance in m, what else. */
  readonly disconnect: {
    readonly factor: number;
    readonly of: "sum" | "largest";
    readonly sizes: readonly number[];
    readonly within?: number | undefined;
    readonly wants: readonly DisconnectDemand[];
  };
  /** Working space at the disconnect: depth by volts to ground for conditions 1 to 3, width and height, m. */
  readonly workingSpace?:
    | {
        readonly depth: Steps<readonly [number, number, number]>;
        /** Volts to ground up to which the depth was read in the source; above, it is from memory. */
        readonly readUpTo?: number | undefined;
        readonly width: number;
        readonly height: number;
        readonly required: boolean;
      }
    | undefined;
  /** Farthest service receptacle in m. */
  readonly receptacleWithin?: number | undefined;
  /** Area and direct-current resistance; columns "area", "copper solid", "copper stranded", … */
  readonly conductors: PrintedTable<SizeOf<F>>;
  /** Alternating-current resistance and reactance; columns "copper PVC", "reactance PVC", … */
  readonly impedance?: PrintedTable<SizeOf<F>> | undefined;
  /** Unit of the resistance and impedance tables. */
  readonly resistanceUnit: Unit<"resistancePerLength">;
  /** Unit in which lengths are answered. */
  readonly lengthUnit: Unit<"length">;
  /** °C of the resistance table. */
  readonly resistanceAt: number;
  /** °C at which the voltage drop is calculated; "by load": 30 °C and the rise to the insulation's limit by the square of the load. */
  readonly operatingTemperature: number | "by load";
  /** Temperature coefficient of resistance at `resistanceAt`, 1/K. */
  readonly temperatureCoefficient: Readonly<Partial<Record<Material, number>>>;
  /** Voltage drop: largest share by one-way length in m, whether the limit binds, and the rule's own resistivity. */
  readonly voltageDrop: {
    readonly branch: Steps<number>;
    readonly total: number;
    readonly mandatory: boolean;
    /** More for each meter beyond a length, up to a most. */
    readonly growth?:
      | { readonly beyond: number; readonly perMeter: number; readonly most: number }
      | undefined;
    /** Ω·mm²/m hot, and Ω/m of reactance, where the rule states them. */
    readonly resistivity?: Readonly<Record<Material, number>> | undefined;
    readonly reactance?: number | undefined;
  };
  /** Protection of a compressor circuit as multiples of the rated-load or the locked-rotor current. */
  readonly compressorProtection?:
    | {
        readonly of: "ratedLoad" | "lockedRotor";
        readonly normal: number;
        readonly ifItWillNotStart?: number | undefined;
        /** Locked-rotor over rated-load current where none is marked. */
        readonly lockedRotorMultiple?: number | undefined;
      }
    | undefined;
  /** Ground-fault protection of dwelling outlets, with its dates. */
  readonly groundFault?: GroundFaultRule | undefined;
  /** Residual-current device: for every circuit up to a rating, or where a TT system needs it to disconnect. */
  readonly residualCurrent?: { readonly upTo: number } | "TT" | undefined;
  /** Tripping of a miniature breaker as multiples of its rating. */
  readonly tripping?:
    | {
        readonly noTrip: number;
        readonly trip: number;
        readonly curves: Readonly<Record<TripCurve, readonly [from: number, to: number]>>;
        /** Curves that suit compressors. */
        readonly compressor: readonly TripCurve[];
      }
    | undefined;
  /** Further duties that are told and not judged, by name and clause. */
  readonly advice: readonly { readonly name: RuleAdvice; readonly clause: string }[];
}

/**
 * Duties that a rule set tells of and does not judge.
 */
export type RuleAdvice =
  | "enclosure-tool-or-lock"
  | "enclosure-locked"
  | "surge-protection"
  | "buried-cable-residual-current"
  | "own-circuit"
  | "earth-class-d"
  | "notifiable-work"
  | "gas-clearance";

/** Instantaneous tripping characteristic of a miniature breaker. Source: IEC 60898-1:2015, table 2. */
export type TripCurve = "B" | "C" | "D";
