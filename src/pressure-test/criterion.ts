// How large a drop is allowed? The stated limit of a test, turned into a drop over its duration.
// Follows ISO 3529-1 (throughput: pressure times volume per time) and JCGM 106:2012 (a limit is stated).
// Does not cover "no drop at all": no instrument can show it.
import { describe, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";

/**
 * The largest corrected drop that still passes.
 *
 * Source: none; the library's own type.
 */
export interface DropLimit {
  /** Largest drop, above 0; one of more than 5 % of the fill pressure passes nothing. */
  readonly maximumDrop: Quantity<"pressureDifference">;
  /** The time for which the drop is allowed, so that the limit is a rate; the whole test when left out. */
  readonly per?: Quantity<"duration">;
}

/**
 * The largest leak that still passes; needs the volume and the time of the test.
 *
 * Source: none; the library's own type.
 */
export interface LeakLimit {
  /** Largest nitrogen throughput at the temperature of the test, above 0; one that lets more than 5 % of the fill pressure go in the test, or in a day, passes nothing. */
  readonly maximumLeakRate: Quantity<"throughput">;
}

/** A stated limit; without one a test cannot pass. Source: JCGM 106:2012, 3.3. */
export type PressureTestCriterion = DropLimit | LeakLimit;

/** The limit as a drop over this test, Pa; whether it grows with time; whether it hangs on the volume. */
export interface Limit {
  readonly drop: number;
  readonly isRate: boolean;
  readonly isLeak: boolean;
}

/**
 * The largest part of the fill pressure that a limit may give away and still say something about tightness:
 * as much as 15 K of weather move it, where field practice accepts no drop at all. Common practice, no source.
 */
const LOOSEST = 0.05;
const DAY = 86_400;

/** The loosest limit on a test that has so much to lose, Pa, over this test; of a rate, in at most a day. */
export function loosest({ isRate }: Limit, available: number, seconds: number): number {
  return LOOSEST * available * (isRate ? Math.max(1, seconds / DAY) : 1);
}

const positive = {
  above: 0,
  hint: "No instrument can show that nothing at all was lost: state a limit that it can show",
};

/** The limit over a test of some seconds (0 when unknown) and m³ (0 when unknown). */
export function limitOf(
  criterion: PressureTestCriterion | undefined,
  seconds: number,
  volume: number,
): Limit | undefined {
  if (criterion === undefined) return undefined;
  const { maximumDrop, per, maximumLeakRate } = (criterion ?? {}) as Partial<DropLimit & LeakLimit>;
  const need = (argument: string, known: number) => {
    if (known > 0) return;
    const hint = "The stated limit is a rate, which needs it";
    throw new InvalidInputError({ argument, value: "nothing", allowed: "a value above 0", hint });
  };
  if (maximumLeakRate !== undefined) {
    const rate = siOf("criterion.maximumLeakRate", maximumLeakRate, "throughput", positive);
    need("end.elapsed", seconds);
    need("volume", volume);
    return { drop: (rate * seconds) / volume, isRate: true, isLeak: true };
  }
  if (maximumDrop === undefined) {
    const allowed = "maximumDrop or maximumLeakRate";
    throw new InvalidInputError({ argument: "criterion", value: describe(criterion), allowed });
  }
  const drop = siOf("criterion.maximumDrop", maximumDrop, "pressureDifference", positive);
  if (per === undefined) return { drop, isRate: false, isLeak: false };
  const time = siOf("criterion.per", per, "duration", { above: 0 });
  need("end.elapsed", seconds);
  return { drop: (drop * seconds) / time, isRate: true, isLeak: false };
}
