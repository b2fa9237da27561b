// What both simulators hand over (types only: they share no code): what the person on site has in hand,
// and the truth beside it.

/** What happens in the field and is not in the readings, or only in part. */
export type Effect =
  /** One thermometer outdoors, part of the gas indoors. */
  | "gas-elsewhere"
  /** One thermometer indoors, part of the gas outdoors. */
  | "thermometer-indoors"
  /** Gas and tubing still warm from the fill at the first reading. */
  | "warm-from-fill"
  /** Sun on part of the tubing for part of the hold. */
  | "sun"
  /** The coil and insulated tubing follow the air late. */
  | "lag"
  /** The zero of the gauge moves with its own temperature and with time. */
  | "gauge-drift"
  /** Weather: the atmosphere changes and only the first value is stated. */
  | "weather";

export const effects: readonly Effect[] = [
  "gas-elsewhere",
  "thermometer-indoors",
  "warm-from-fill",
  "sun",
  "lag",
  "gauge-drift",
  "weather",
];

/**
 * Careful: a thermometer on the tubing of each part, data sheets and site stated, at least 20 min of settling.
 * Hurried: one thermometer, accuracy and step only, read right after the fill.
 */
export type Care = "careful" | "hurried";

export interface Row {
  /** s after the first reading. */
  readonly t: number;
  /** Gauge pressure as shown, Pa. */
  readonly p: number;
  /** Temperatures as shown, K; one per thermometer. */
  readonly T: readonly number[];
}

/** A pressure test from a hidden truth. */
export interface Simulated {
  readonly care: Care;
  readonly rows: readonly Row[];
  /** What the data sheets say, Pa and K; what a hurried user does not state is there too. */
  readonly gauge: { accuracy: number; step: number; drift: number };
  readonly thermometer: { accuracy: number; step: number; follows: number };
  /** m³, as estimated by the user: one per thermometer. */
  readonly volumes: readonly number[];
  readonly volumeError: number;
  /** Station pressure at the start as stated, Pa. */
  readonly atmosphere: number;
  readonly copper: boolean;
  /** s from the end of the fill to the first reading. */
  readonly sinceFill: number;
  /** Truth: drop between first and last reading, at the true last temperatures, Pa; 0 for a tight system. */
  readonly drop: number;
  readonly tight: boolean;
}

export type Simulator = (
  seed: number,
  options: { care: Care; only?: readonly Effect[] },
) => () => Simulated;
