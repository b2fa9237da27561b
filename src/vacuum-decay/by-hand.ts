// Was the log written by hand? Round times and round pressures, few rows.
// Common practice, no source. Does not cover what that does to the weights: collect.ts.
import { micron } from "../quantity/units/pressure.ts";

/** What a log has shown of how it was written. */
interface Written {
  /** Every time a multiple of half a minute. */
  wholeTimes: boolean;
  /** Round steps that every pressure is a multiple of, micron, the largest first. */
  grains: readonly number[];
  readonly rows: number;
  readonly spacing: number;
  readonly settings: { readonly resolutionAt: (p: number) => number };
  readonly segment?: { readonly origin: number } | undefined;
}

/** Steps to which people round, micron, the largest first; common practice, no source. */
export const roundGrains: readonly number[] = [50, 25, 20, 10, 5, 2, 1];

/** What hand-written rows look like: round times, round pressures. */
export function readRoundness(log: Written, t: number, p: number): void {
  if (Math.abs(t / 30 - Math.round(t / 30)) > 1e-6) log.wholeTimes = false;
  const microns = p / micron.scale;
  const divides = (by: number) => Math.abs(microns / by - Math.round(microns / by)) < 1e-6;
  log.grains = log.grains.filter(divides);
}

/** How coarsely the pressures are rounded, Pa: by the largest step that explains them all; NaN where none does. */
export const grainOf = ({ grains: [largest = Number.NaN] }: Pick<Written, "grains">): number =>
  largest * micron.scale;

/** Whether the log was written by hand: few rows at round times, or pressures rounder than the display; common practice, no source. */
export function typedByHand(log: Written): boolean {
  const { wholeTimes, rows, spacing, settings, segment } = log;
  const grain = grainOf(log);
  const display = settings.resolutionAt(segment?.origin ?? 0) || 0;
  const isRound = grain > Math.max(4.9 * micron.scale, 1.01 * display);
  // two readings at whole times have a spacing, one has none
  return wholeTimes && spacing > 0 && grain > 0 && (rows <= 12 || isRound);
}
