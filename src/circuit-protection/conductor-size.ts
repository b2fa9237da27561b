// What are conductors called? Sizes and materials in the words of the trade.
// Follows NFPA 70 (2023), table 310.16; IEC 60228; the Japanese sizes by diameter and mm² of Interpretation art. 149.
// Does not cover sizes beyond those of a small unit's circuit.

/**
 * American wire gauge sizes, and the first of the kcmil sizes.
 *
 * Source: NFPA 70 (2023), table 310.16.
 */
export type AwgSize =
  | "14 AWG"
  | "12 AWG"
  | "10 AWG"
  | "8 AWG"
  | "6 AWG"
  | "4 AWG"
  | "3 AWG"
  | "2 AWG"
  | "1 AWG"
  | "1/0 AWG"
  | "2/0 AWG"
  | "3/0 AWG"
  | "4/0 AWG"
  | "250 kcmil";

/** Metric cross-sections, and the Japanese sizes by diameter. Source: IEC 60228; Interpretation art. 149. */
export type MetricSize =
  | "1 mm²"
  | "1.5 mm²"
  | "2.5 mm²"
  | "4 mm²"
  | "6 mm²"
  | "10 mm²"
  | "16 mm²"
  | "25 mm²"
  | "35 mm²"
  | "50 mm²"
  | "1.6 mm"
  | "2.0 mm"
  | "2.6 mm"
  | "5.5 mm²"
  | "8 mm²"
  | "14 mm²";

/** A conductor size of either family. */
export type ConductorSize = AwgSize | MetricSize;

/** Conductor material. Source: NFPA 70 (2023), table 310.16. */
export type Material = "copper" | "aluminum";
