// How large a drop has to be excluded? The stated limit of a test, as a drop over its duration, with a ceiling.
// Follows ISO 3529-1 (throughput: pressure times volume per time) and JCGM 106:2012 (a limit is stated).
// Does not cover "no drop at all": no instrument can show it.
import { askOneOf, type Limits, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { say } from "./statements.ts";

/**
 * The largest corrected drop that still passes.
 */
export interface DropLimit {
  /** Largest drop, above 0; more than 1 % of the fill pressure counts as 1 %. */
  readonly maximumDrop: Quantity<"pressureDifference">;
  /** The time for which the drop is allowed, so that the limit is a rate; the whole test when left out. */
  readonly per?: Quantity<"duration"> | undefined;
}

/**
 * The largest leak that still passes; needs the volume and the time of the test.
 */
export interface LeakLimit {
  /** Largest nitrogen throughput at the temperature of the test, above 0; one that lets more than 1 % of the fill pressure go in the test counts as 1 %. */
  readonly maximumLeakRate: Quantity<"throughput">;
}

/** A stated limit; without one a test cannot pass. Source: JCGM 106:2012, 3.3. */
export type PressureTestCriterion = DropLimit | LeakLimit;

/** The limit as a drop over this test, Pa: as stated, and with the ceiling; whether it grows with time; whether it hangs on the volume. */
export interface Limit {
  readonly drop: number;
  readonly stated: number;
  readonly isRate: boolean;
  readonly isLeak: boolean;
}

/**
 * The largest part of the fill pressure that any test may leave open: as much as 3 K of weather move it, where
 * field practice accepts no drop at all. Common practice, no source.
 */
const CEILING = 0.01;

const positive = (): Limits => ({ above: 0, hint: say("pressure-test.no-loss-not-shown") });

/** The limit over a test of some seconds and m³ (0 when unknown) that was filled to a gauge pressure, Pa. */
export function limitOf(
  criterion: PressureTestCriterion | undefined,
  seconds: number,
  volume: number,
  fill: number,
): Limit | undefined {
  if (criterion === undefined) return undefined;
  const { maximumDrop, per, maximumLeakRate } = (criterion ?? {}) as Partial<DropLimit & LeakLimit>;
  const need = (argument: string, known: number) => {
    if (known > 0) return;
    const hint = say("pressure-test.rate-needs-it");
    throw new InvalidInputError({ argument, value: "nothing", allowed: "a value above 0", hint });
  };
  const of = (stated: number, isRate: boolean, isLeak: boolean): Limit => {
    const drop = Math.min(stated, ceilingOf(fill));
    return { drop, stated, isRate: isRate && drop === stated, isLeak: isLeak && drop === stated };
  };
  if (maximumLeakRate !== undefined) {
    const rate = siOf("criterion.maximumLeakRate", maximumLeakRate, "throughput", positive());
    need("end.elapsed", seconds);
    need("volume", volume);
    return of((rate * seconds) / volume, true, true);
  }
  if (maximumDrop === undefined) {
    askOneOf("criterion", "neither", ["maximumDrop", "maximumLeakRate"]);
  }
  const drop = siOf("criterion.maximumDrop", maximumDrop, "pressureDifference", positive());
  if (per === undefined) return of(drop, false, false);
  const time = siOf("criterion.per", per, "duration", { above: 0 });
  need("end.elapsed", seconds);
  return of((drop * seconds) / time, true, false);
}

/** The largest limit of a fill, Pa; 0 for one that is not above the atmosphere. */
export const ceilingOf = (fill: number): number => CEILING * Math.max(0, fill);
