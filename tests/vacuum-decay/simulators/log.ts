// What a simulated vacuum test looks like to those who score it. Types only: the two makers share no code.

/** What else happened at the site. `none` is the plain test of a logger at a small split. */
export type FieldEffect =
  | "none"
  | "valve-opened-late"
  | "pumped-again"
  | "gauge-jump"
  | "gauge-drift"
  | "pump-valve-weeps"
  | "hoses"
  | "slow-equalization"
  | "ice"
  | "outgassing"
  | "temperature-swing"
  | "vapor-response"
  | "typed-by-hand";

export const fieldEffects: readonly FieldEffect[] = [
  "valve-opened-late",
  "pumped-again",
  "gauge-jump",
  "gauge-drift",
  "pump-valve-weeps",
  "hoses",
  "slow-equalization",
  "ice",
  "outgassing",
  "temperature-swing",
  "vapor-response",
  "typed-by-hand",
];

/** Policies under test: target and last limit in micron, hold in minutes; `rise` is above the pressure at isolation. */
export const testedPolicies = [
  { name: "commonPractice500", target: 500, hold: 10, rise: 500 },
  { name: "provenEarly500", target: 500, hold: 10, rise: 500 },
  { name: "splitManualA", target: 500, hold: 15, limit: 700 },
  { name: "splitManualB", target: 500, hold: 20, limit: 500 },
  { name: "distributorAdvice", target: 250, hold: 10, limit: 1000 },
  { name: "ashrae15Memory", target: 500, hold: 10, limit: 1500 },
  { name: "guideSpec15182", target: 300, hold: 60, limit: 500 },
] as const;

export type TestedPolicy = (typeof testedPolicies)[number];

/** A simulated test: what the user types, and what is true. */
export interface SimulatedLog {
  /** Minutes after isolation and micron. */
  readonly rows: readonly { readonly minute: number; readonly micron: number }[];
  /** °C. */
  readonly ambient: number;
  readonly liters: number;
  /** Step of the display, micron. */
  readonly step: number;
  readonly policy: TestedPolicy;
  readonly effect: FieldEffect;
  /** Leak in micron/min in this volume; what water would add in the end, micron. */
  readonly truth: { readonly leak: number; readonly water: number };
}

/** `sound`: no leak above 0.7 micron/min, no water that matters. Everything else that is made here is bad. */
export type Truth = "sound" | "leak" | "water" | "both";
