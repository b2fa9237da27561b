// How does the cable run? What decides its ampacity, in the words of each family of rules.
// Follows NFPA 70 (2023), 110.14(C), 310.15, 334.80; IEC 60364-5-52:2009, 523 and annex B.
// Does not cover cables in the ground, in free air, or under thermal insulation.
import type { Quantity } from "../quantity/quantity.ts";
import type { Material } from "./conductor-size.ts";

/**
 * What any wiring has in common.
 *
 * Source: none; the library's own type.
 */
export interface CommonWiring {
  /** Temperature around the cable at its hottest place, from the lowest to the highest of the table; 30 °C is assumed when left out. */
  readonly ambient?: Quantity<"temperature">;
  /** One-way length from the device to the unit, more than 0; without it no voltage drop is calculated. */
  readonly length?: Quantity<"length">;
  /** Solid or stranded, for the resistance; stranded is assumed, the higher of the two. */
  readonly stranding?: "solid" | "stranded";
}

/**
 * Wiring by wire gauge.
 *
 * Source: NFPA 70 (2023), 110.14(C), 310.15, 334.80.
 */
export interface AwgWiring extends CommonWiring {
  /** Material of the conductors. */
  readonly material: Material;
  /** Rating of the insulation. For NM cable (NM-B) 90 °C. */
  readonly insulation: "60 °C" | "75 °C" | "90 °C";
  /** What the terminals at both ends are marked for; when left out, 60 °C up to 100 A and 75 °C above. */
  readonly terminations?: "60 °C" | "75 °C";
  /** "NM" for non-metallic sheathed cable, which never carries more than its 60 °C column. */
  readonly cable?: "NM" | "other";
  /** Loaded conductors in the same raceway or bundle, grounding conductors not counted; 3 or fewer are assumed. */
  readonly currentCarryingConductors?: number;
  /** Height above a roof in the sun; leave out where there is no roof. */
  readonly aboveRoof?: Quantity<"length">;
  /** Conduit, for the alternating-current impedance; used together with a power factor. */
  readonly conduit?: "PVC" | "aluminum" | "steel";
}

/**
 * Wiring by cross-section and method of installation, PVC insulated copper.
 *
 * Source: IEC 60364-5-52:2009, tables B.52.2 and B.52.4.
 */
export interface MetricWiring extends CommonWiring {
  /** Material of the conductors. */
  readonly material: "copper";
  /** PVC. */
  readonly insulation: "70 °C";
  /**
   * A1, A2: conduit in an insulated wall (single-core, multi-core); B1, B2: conduit on a wall; C: clipped
   * direct.
   */
  readonly method: "A1" | "A2" | "B1" | "B2" | "C";
  /** Circuits that run together, this one included; 1 is assumed. */
  readonly groupedCircuits?: number;
}
