// Was the log written by hand? Round times and round pressures, few rows.
// Common practice, no source. Does not cover what that does to the weights: collect.ts.
import { micron } from "../quantity/units/pressure.ts";
import type { Collector } from "./collect.ts";

const grains = [50, 25, 20, 10, 5, 2, 1];

/** What hand-written rows look like: round times, round pressures. */
export function readRoundness(log: Collector, t: number, p: number): void {
  if (Math.abs(t / 30 - Math.round(t / 30)) > 1e-6) log.wholeTimes = false;
  const microns = p / micron.scale;
  const divides = (by: number) => Math.abs(microns / by - Math.round(microns / by)) < 1e-6;
  while (log.grain > 0 && !divides(log.grain / micron.scale)) {
    const next = grains.find((by) => by * micron.scale < log.grain * 0.99);
    log.grain = next === undefined ? Number.NaN : next * micron.scale;
  }
}

/** Whether the log was written by hand: few rows at round times, or pressures rounder than the display; common practice, no source. */
export function typedByHand({
  wholeTimes,
  grain,
  rows,
  spacing,
  settings,
  segment,
}: Collector): boolean {
  const display = settings.resolutionAt(segment?.origin ?? 0) || 0;
  const isRound = grain > Math.max(4.9 * micron.scale, 1.01 * display);
  return wholeTimes && spacing > 29 && grain > 0 && (rows <= 12 || isRound);
}
