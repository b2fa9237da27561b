// Which readings count? Takes them one at a time, sets aside what is not evidence with its reason, sees a
// valve that was opened, and bins the rest. Memory does not grow with the log but for the logarithm.
// Common practice of logging, no source. Does not cover the fit: weigh.ts.
import { type Bin, binIndex } from "./binning.ts";
import { grainOf, readRoundness, roundGrains, typedByHand } from "./by-hand.ts";
import {
  addPoint,
  copyGram,
  createScratch,
  emptyGram,
  type Gram,
  type Scratch,
} from "./curve/index.ts";
import type { ExclusionReason } from "./exclusion-reason.ts";
import { readScatter, type Scatter, scatterOf } from "./scatter.ts";
import type { Settings } from "./settings.ts";

/** A reading that was set aside, in SI units. */
export interface ExcludedRow {
  readonly row: number;
  readonly t: number;
  readonly p: number;
  readonly reason: ExclusionReason;
}

/** A stretch of the log without a step. */
export interface Segment {
  readonly start: number;
  readonly origin: number;
  readonly gram: Gram;
  readonly t: number[];
  readonly p: number[];
  readonly w: number[];
  open: Bin;
  last: number;
  lastP: number;
  /** The course smoothed over the last few readings, for jumps within its scatter. */
  level: number;
  /** When the reading last changed. */
  changed: number;
  rows: number;
}

/** Everything that is kept of a log. */
export interface Collector {
  readonly settings: Settings;
  readonly scratch: Scratch;
  readonly keep: number;
  /** The stretch since the last step: this one is judged. */
  segment: Segment | undefined;
  /** The longest stretch before it: evidence against only. */
  earlier: Segment | undefined;
  readonly excluded: ExcludedRow[];
  readonly excludedCount: Partial<Record<ExclusionReason, number>>;
  readonly steps: { t: number; change: number }[];
  suspect: { t: number; p: number; row: number } | undefined;
  /** Readings in a row over the gauge's range just now. */
  overRangeRun: number;
  rows: number;
  /** Running variance of one reading about the line through its two predecessors, Pa². */
  noise: number;
  noiseCount: number;
  scatter: Scatter;
  slope: number;
  spacing: number;
  step: number;
  /** Round steps that every reading is a multiple of, micron, the largest first. */
  grains: readonly number[];
  /** Whether every reading came at a full or half minute. */
  wholeTimes: boolean;
}

export function createCollector(settings: Settings, keep: number): Collector {
  return {
    settings,
    scratch: createScratch(),
    keep,
    segment: undefined,
    earlier: undefined,
    excluded: [],
    excludedCount: {},
    steps: [],
    suspect: undefined,
    overRangeRun: 0,
    rows: 0,
    noise: 0,
    noiseCount: 0,
    scatter: { variance: 0, count: 0, recent: [] },
    slope: 0,
    spacing: 0,
    step: Number.NaN,
    grains: roundGrains,
    wholeTimes: true,
  };
}

function exclude(log: Collector, row: number, t: number, p: number, reason: ExclusionReason): void {
  log.excludedCount[reason] = (log.excludedCount[reason] ?? 0) + 1;
  if (log.excluded.length < log.keep) log.excluded.push({ row, t, p, reason });
}

/** Takes one reading: elapsed time in s, pressure in Pa, its place in the caller's log. */
export function collect(log: Collector, t: number, p: number, row: number): void {
  log.rows++;
  const reason = unusable(log, t, p);
  if (reason) {
    exclude(log, row, t, p, reason);
    if (reason === "over-range") log.overRangeRun++;
    return;
  }
  log.overRangeRun = 0;
  const { segment, suspect } = log;
  log.suspect = undefined;
  if (!segment) {
    begin(log, t, p);
    return;
  }
  if (suspect) {
    const course = (at: number) => segment.lastP + log.slope * (at - segment.start - segment.last);
    const back = Math.abs(p - course(t)) < Math.abs(p - suspect.p);
    // of a thousand readings with heavy tails one lies that far off by chance: the next has to lie off too
    const again = p - log.slope * (t - suspect.t);
    if (back || !jumps(log, segment, suspect.t, again, confirming)) {
      exclude(log, suspect.row, suspect.t, suspect.p, "spike");
    } else {
      log.steps.push({ t: suspect.t, change: suspect.p - course(suspect.t) });
      if (!log.earlier || segment.last > log.earlier.last) log.earlier = segment;
      begin(log, suspect.t, suspect.p);
    }
  } else if (jumps(log, segment, t, p)) {
    log.suspect = { t, p, row };
    return;
  }
  take(log, log.segment as Segment, t, p);
}

function unusable({ segment, suspect, settings }: Collector, t: number, p: number) {
  const last = suspect?.t ?? (segment ? segment.start + segment.last : -1);
  if (t < 0) return "before-isolation";
  if (t <= last) return t < last ? "out-of-order" : "repeated-time";
  if (p <= 0) return "zero";
  return p >= settings.range ? "over-range" : undefined;
}

/** Part of a jump that the next reading has to confirm: four of five times the scatter; common practice, no source. */
const confirming = 0.8;

/** Whether the pressure left its course between two readings: a valve, a hose or a spike. */
function jumps(log: Collector, segment: Segment, t: number, p: number, part = 1): boolean {
  const step = t - segment.start - segment.last;
  if (segment.last < 120 || segment.rows < 4) return false; // equalization moves fast too
  const course = log.slope * step;
  const off = Math.min(Math.abs(p - segment.lastP - course), Math.abs(p - segment.level - course));
  const patience = Math.max(1, step / log.spacing); // after a gap the course is less certain
  return (
    off >
    Math.max(
      5 * Math.sqrt(log.noise),
      4 * (resolution(log, p) || 0),
      0.012 * segment.lastP,
      2 * Math.abs(log.slope) * step,
    ) *
      patience *
      part
  );
}

function begin(log: Collector, t: number, p: number): void {
  const start = log.steps.length ? t : 0;
  log.segment = {
    start,
    origin: p,
    gram: emptyGram(),
    t: [],
    p: [],
    w: [],
    open: { index: binIndex(t - start), n: 0, t: 0, p: 0 },
    last: 0,
    lastP: p,
    level: p,
    changed: t - start,
    rows: 0,
  };
  log.slope = 0;
  log.scatter.recent = [];
  take(log, log.segment, t, p);
}

function take(log: Collector, segment: Segment, t: number, p: number): void {
  readRoundness(log, t, p);
  const at = t - segment.start;
  if (segment.rows > 0) {
    const step = at - segment.last;
    const change = p - segment.lastP;
    if (segment.rows > 1 && step < 3 * log.spacing) {
      // scatter about the course of the last few readings, large values clipped
      const error = change - log.slope * step;
      const square = (error * error) / 1.5;
      log.noiseCount = Math.min(log.noiseCount + 1, 40);
      const clipped = log.noiseCount > 10 ? Math.min(square, 9 * log.noise + 1e-12) : square;
      log.noise += (clipped - log.noise) / log.noiseCount;
    }
    const course = segment.level + log.slope * step;
    segment.level = course + 0.3 * (p - course);
    log.slope += (change / step - log.slope) * Math.max(0.2, 1 / segment.rows);
    log.spacing += (step - log.spacing) / Math.min(segment.rows, 20);
    const size = Math.abs(change);
    if (size > 1e-7 * p) {
      // the smallest change seen lately is the display's step, or less
      log.step = log.step > 0 ? Math.min(log.step * 1.02, size) : size;
      segment.changed = at;
    }
  }
  readScatter(log.scatter, at, p);
  const index = binIndex(at);
  if (segment.open.index !== index) {
    closeBin(log, segment, segment.open, segment.gram);
    segment.t.push(segment.open.t / segment.open.n);
    segment.p.push(segment.open.p / segment.open.n);
    segment.w.push(binWeight(log, segment, segment.open));
    segment.open = { index, n: 0, t: 0, p: 0 };
  }
  segment.open.n++;
  segment.open.t += at;
  segment.open.p += p - segment.origin;
  segment.last = at;
  segment.lastP = p;
  segment.rows++;
}

/** Smallest step of the readings at a pressure: the display's as stated or as seen, or that of rounding by hand. */
export function resolution(log: Collector, p: number): number {
  const stated = log.settings.resolutionAt(p);
  if (stated >= 0) return typedByHand(log) ? Math.max(stated, grainOf(log)) : stated;
  return grainOf(log) || log.step || 0;
}

/** How far a time that was written by hand is off, s; common practice, no source. */
const handTime = 8;

/**
 * 1/variance of a bin: scatter, averaged as far as a logger with a memory of about 10 s lets it; the
 * display's step²/12, which does not average out (JCGM 100:2008, F.2.2.1); and a tenth of the gauge's
 * error limits on what has risen since the start, which bends a strong rise.
 */
export function binWeight(log: Collector, segment: Segment, { n, p }: Bin): number {
  const memory = 20;
  const rise = p / n;
  const bend = 0.02 * log.settings.accuracy * rise;
  const average = memory / (memory + (n - 1) * log.spacing);
  const r = resolution(log, segment.origin + rise);
  const late = n === 1 && typedByHand(log) ? handTime * log.slope : 0;
  return (
    1 /
    (scatterOf(log.scatter, log.noise) * average + (r * r) / 12 + bend * bend + late * late + 1e-6)
  );
}

function closeBin(log: Collector, segment: Segment, bin: Bin, gram: Gram): void {
  addPoint(gram, log.scratch, bin.t / bin.n, bin.p / bin.n, binWeight(log, segment, bin));
}

/** The table of a segment with its open bin, in scratch memory. */
export function wholeGram(log: Collector, segment: Segment, into: Gram): void {
  copyGram(segment.gram, into);
  closeBin(log, segment, segment.open, into);
}
