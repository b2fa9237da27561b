// What does one edition or jurisdiction lay down? The form that every rule set fills with its tables.
// Follows no single standard: the fields are those of NFPA 70, CSA C22.1 and IEC 60364 side by side.
// Does not cover a rule that is not data: the arithmetic stands in the files that read these tables.
import type { Citation, Statement } from "../../assessment/assessment.ts";
import type { Unit } from "../../quantity/quantity.ts";
import type { SourceId } from "../../sources/bibliography.ts";
import type { AwgSize, Material, MetricSize } from "../conductor-size.ts";
import type { AwgWiring, MetricWiring } from "../wiring.ts";

/**
 * The two ways in which rule books describe a cable: by wire gauge, insulation and terminals (NFPA 70,
 * CSA C22.1), or by cross-section and method of installation (IEC 60364).
 *
 * Source: none; the library's own grouping.
 */
export interface RuleFamilies {
  /** Wire gauge, insulation column, termination limit. */
  awg: { size: AwgSize; wiring: AwgWiring };
  /** Square millimetres, reference method of installation. */
  metric: { size: MetricSize; wiring: MetricWiring };
}

/** A key of {@link RuleFamilies}. Source: none; the library's own names. */
export type RuleFamily = keyof RuleFamilies;

/** A conductor size of a family. Source: none; the library's own type. */
export type SizeOf<F extends RuleFamily> = RuleFamilies[F]["size"];

/** A description of the wiring of a family. Source: none; the library's own type. */
export type WiringOf<F extends RuleFamily> = RuleFamilies[F]["wiring"];

/**
 * A table as it is printed: a key column, then one value per heading, `null` where the print has a dash.
 *
 * Source: none; the library's own type.
 */
export interface PrintedTable<Key extends string | number> {
  /** Headings of the value columns. */
  readonly columns: readonly string[];
  /** The rows, in the order of the print. */
  readonly rows: readonly (readonly [key: Key, ...values: (number | null)[]])[];
}

/**
 * Rows "up to and including this count or rating, this value".
 *
 * Source: none; the library's own type.
 */
export type Steps<Value> = readonly (readonly [upTo: number, value: Value])[];

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
  | "600 V delta"
  | "600Y/347 V"
  | "230/400 V";

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
  | "400 V";

/** One service. Source: none; the library's own type. */
export interface SupplySystem {
  /** Its name. */
  readonly name: SupplySystemName;
  /** Phases that it has. */
  readonly phases: 1 | 3;
  /** Nominal volts between two lines. */
  readonly lineToLine: number;
  /** Nominal volts from line to neutral; left out where there is no neutral. */
  readonly lineToNeutral?: number;
  /** Highest nominal volts of a line to ground. */
  readonly toGround: number;
}

/**
 * The rules of one edition in one jurisdiction, as data. Plain numbers are in A, V, °C, m unless a field
 * says otherwise.
 *
 * Source: none; the library's own type.
 */
export interface CircuitRules<F extends RuleFamily = RuleFamily> {
  /** How cables are described. */
  readonly family: F;
  /** Name with edition. */
  readonly name: string;
  /** The work in the bibliography. */
  readonly source: SourceId;
  /** The clauses that a circuit is judged by. */
  readonly citations: readonly Citation[];
  /** Standard ratings of breakers and of fuses, rising. */
  readonly ratings: { readonly breaker: readonly number[]; readonly fuse: readonly number[] };
  /** Smallest rating of a circuit of this kind, unless the plate asks for less. */
  readonly smallestRating: number;
  /** Which of the permitted ratings is proposed. */
  readonly proposes: "largest" | "smallest";
  /** Minimum ampacity over rated-load current of a single load. */
  readonly ampacityFactor: number;
  /** Whether the device has to protect the conductor against overload also in compressor circuits. */
  readonly deviceProtectsConductor: boolean;
  /** Ampacity over rating that each kind of device needs, where the device protects the conductor. */
  readonly ampacityPerRating?: { readonly breaker: Steps<number>; readonly fuse: Steps<number> };
  /** General circuits: up to which rating the next size above the ampacity is allowed. */
  readonly nextSizeUpTo?: number;
  /** General circuits: largest device on small conductors, columns by material. */
  readonly smallConductors?: PrintedTable<SizeOf<F>>;
  /** Services, in the order in which an unnamed one is taken: the one with the stricter rating first. */
  readonly systems: readonly SupplySystem[];
  /** Voltage markings: volts to ground and volts between conductors, rising. */
  readonly voltageRatings: PrintedTable<VoltageRating>;
  /** Ampacities; columns "copper 60 °C", or "copper C 2" for method C with two loaded conductors. */
  readonly ampacity: PrintedTable<SizeOf<F>>;
  /** Correction for ambient temperature by its upper edge in °C; columns by insulation. */
  readonly ambient: PrintedTable<number>;
  /** Adjustment for loaded conductors (wire gauge) or circuits (metric) that run together. */
  readonly adjustment: Steps<number>;
  /** Termination column up to a device rating, and above it, unless the equipment is marked. */
  readonly terminations?: Steps<"60 °C" | "75 °C">;
  /** Wiring closer to the roof than `below` (m) counts as hotter by `adder` (K). */
  readonly rooftop?: { readonly below: number; readonly adder: number };
  /** Equipment grounding (protective) conductor by device rating and material. */
  readonly grounding: Steps<Readonly<Record<Material, SizeOf<F>>>>;
  /** Disconnect: factor on the rated-load currents, made sizes, line of sight in m. */
  readonly disconnect: {
    readonly factor: number;
    readonly sizes: readonly number[];
    readonly withinSight?: number;
  };
  /** Working space at the disconnect: depth by volts to ground for conditions 1 to 3, width and height, m. */
  readonly workingSpace?: {
    readonly depth: Steps<readonly [number, number, number]>;
    readonly width: number;
    readonly height: number;
    readonly required: boolean;
  };
  /** Area and direct-current resistance; columns "area", "copper solid", "copper stranded", … */
  readonly conductors: PrintedTable<SizeOf<F>>;
  /** Alternating-current resistance and reactance; columns "copper PVC", "reactance PVC", … */
  readonly impedance?: PrintedTable<SizeOf<F>>;
  /** Unit of the resistance and impedance tables. */
  readonly resistanceUnit: Unit<"resistancePerLength">;
  /** Unit in which lengths are answered. */
  readonly lengthUnit: Unit<"length">;
  /** °C of the resistance table. */
  readonly resistanceAt: number;
  /** °C at which the voltage drop is calculated. */
  readonly operatingTemperature: number;
  /** Temperature coefficient of resistance at `resistanceAt`, 1/K. */
  readonly temperatureCoefficient: Readonly<Partial<Record<Material, number>>>;
  /** Voltage drop as fractions of the supply, and whether the limit binds. */
  readonly voltageDrop: {
    readonly branch: number;
    readonly total: number;
    readonly mandatory: boolean;
  };
  /** Protection of a compressor circuit as multiples of the rated-load or the locked-rotor current. */
  readonly compressorProtection?: {
    readonly of: "ratedLoad" | "lockedRotor";
    readonly normal: number;
    readonly ifItWillNotStart?: number;
    /** Locked-rotor over rated-load current where none is marked. */
    readonly lockedRotorMultiple?: number;
  };
  /** When the advice on ground-fault protection is given, and the advice. */
  readonly groundFault?: {
    readonly toGround: number;
    readonly rating: number;
    readonly advice: Statement;
  };
  /** Tripping of a miniature breaker as multiples of its rating. */
  readonly tripping?: {
    readonly noTrip: number;
    readonly trip: number;
    readonly curves: Readonly<Record<TripCurve, readonly [from: number, to: number]>>;
    /** Curves that suit compressors. */
    readonly compressor: readonly TripCurve[];
  };
  /** What else the edition asks for, as cautions. */
  readonly advice: readonly Statement[];
}

/** Instantaneous tripping characteristic of a miniature breaker. Source: IEC 60898-1:2015, table 2. */
export type TripCurve = "B" | "C" | "D";
