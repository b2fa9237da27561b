// How does a code ask for ground-fault protection outdoors? The clause as data.
// Follows NFPA 70, 210.8(F), in its editions. Does not cover the answer for one circuit: ground-fault.ts.

/** A text of the clause: as printed, or as one amendment left it. */
export interface GroundFaultText {
  /** Its name: "as printed", or the amendment's number. */
  readonly name: string;
  /** First day of an amendment; left out: it counts only where it is stated. The text as printed needs none. */
  readonly inForceFrom?: string | undefined;
  /** First day on which listed heating and cooling equipment is within it; left out: from adoption on. */
  readonly listedEquipmentFrom?: string | undefined;
  /** First day on which units with power conversion are within it; left out: like all others. */
  readonly powerConversionFrom?: string | undefined;
}

/** What is stated in place of a text where the clause was deleted locally. */
export const notAdopted = "not adopted";

/** The clause of one edition. Source: NFPA 70, 210.8(F). */
export interface GroundFaultRule {
  /** Up to which voltage to ground. */
  readonly toGround: number;
  /** Up to which rating of the circuit. */
  readonly rating: number;
  /** The texts, as printed first, then as amended, the one in force last. */
  readonly texts: readonly GroundFaultText[];
  /** Whether a special-purpose device (class C) may take the place. */
  readonly classC: boolean;
}
