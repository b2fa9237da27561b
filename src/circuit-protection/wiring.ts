// How does the cable run? What decides its ampacity, in the words of each family of rules.
// Follows NFPA 70 (2023), 110.14(C), 310.15, 334.80; IEC 60364-5-52:2009, 523 and annex B; BS 7671, table 4D5.
// Does not cover parallel conductors.
import type { Quantity } from "../quantity/quantity.ts";
import type { Material } from "./conductor-size.ts";

/**
 * What any wiring has in common.
 */
export interface CommonWiring {
  /** Material of the conductors. */
  readonly material: Material;
  /** Temperature around the cable at its hottest place; 30 °C is assumed when left out, 20 °C in the ground. */
  readonly ambient?: Quantity<"temperature"> | undefined;
  /** One-way length, more than 0; without it no voltage drop is calculated. */
  readonly length?: Quantity<"length"> | undefined;
  /** Solid or stranded, for the resistance; stranded is assumed, the higher of the two. */
  readonly stranding?: "solid" | "stranded" | undefined;
}

/**
 * Wiring by wire gauge.
 *
 * Source: NFPA 70 (2023), 110.14(C), 310.15, 334.80; CSA C22.1, 4-004, 4-006.
 */
export interface AwgWiring extends CommonWiring {
  /** Rating of the insulation. For NM cable (NM-B, NMD90) 90 °C. */
  readonly insulation: "60 °C" | "75 °C" | "90 °C";
  /** What the terminals at both ends are marked for; when left out, 60 °C up to 100 A and 75 °C above. */
  readonly terminations?: "60 °C" | "75 °C" | undefined;
  /** "NM" for non-metallic sheathed cable, which some rules hold to its 60 °C column. */
  readonly cable?: "NM" | "other" | undefined;
  /** Loaded conductors in the same raceway or bundle, grounding conductors not counted; 3 or fewer are assumed. */
  readonly currentCarryingConductors?: number | undefined;
  /** Height above a roof in the sun; leave out where there is no roof. */
  readonly aboveRoof?: Quantity<"length"> | undefined;
  /** Conduit, for the alternating-current impedance; used together with a power factor. */
  readonly conduit?: "PVC" | "aluminum" | "steel" | undefined;
}

/**
 * Reference method of installation. A1, A2: conduit in an insulated wall (single-core, multi-core); B1, B2: conduit
 * on a wall; C: clipped direct; D1, D2: in ducts or direct in the ground; E: free air. British flat cable: A, C, and
 * 100 (above a ceiling, insulation up to 100 mm), 101 (more), 102 (in a stud wall, touching the inner face), 103 (not
 * touching it).
 *
 * Source: IEC 60364-5-52:2009, table B.52.1; BS 7671, table 4A2.
 */
export type InstallationMethod =
  | "A1"
  | "A2"
  | "B1"
  | "B2"
  | "C"
  | "D1"
  | "D2"
  | "E"
  | "A"
  | "100"
  | "101"
  | "102"
  | "103";

/**
 * Wiring by cross-section and method of installation.
 *
 * Source: IEC 60364-5-52:2009, tables B.52.2 to B.52.13; BS 7671, appendix 4.
 */
export interface MetricWiring extends CommonWiring {
  /** "70 °C" for PVC, "90 °C" for XLPE and EPR. */
  readonly insulation: "70 °C" | "90 °C";
  /** Reference method. */
  readonly method: InstallationMethod;
  /** Circuits that run together, this one included; 1 is assumed. */
  readonly groupedCircuits?: number | undefined;
  /** How they run together; bunched or enclosed is assumed, in the ground touching. */
  readonly grouping?: "bunched" | "single layer" | "perforated tray" | undefined;
  /** Thermal resistivity of the soil in K·m/W, methods D1 and D2; 2.5 is assumed. */
  readonly soilResistivity?: number | undefined;
  /** Length over which the cable is surrounded by thermal insulation. */
  readonly insulationLength?: Quantity<"length"> | undefined;
}
