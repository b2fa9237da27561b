// Does a charge keep its limit, given scale and tape? One decision for both rules.
// Follows JCGM 106:2012, 8.3, and JCGM 100:2008, eq. 10.
import type { Outcome } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { type Instrument, standardUncertainty } from "../assessment/uncertainty.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import type { Quantity, Unit } from "../quantity/quantity.ts";
import { kg } from "../quantity/units/mass.ts";
import { type ChargeLimitStatement, say } from "./statements.ts";

/**
 * What is known of the instruments behind a charge and the size of its room.
 */
export interface RoomInstruments<K extends "area" | "volume"> {
  /** The charging scale, or the tolerance of the nameplate charge. */
  readonly charge?: Instrument<"mass"> | undefined;
  /** How well the size of the room is known. */
  readonly size?: Instrument<K> | undefined;
}

/** The charge, its limit, and how much the limit moves with the size of the room (SI). */
interface Question<K extends "area" | "volume"> {
  readonly charge: Quantity<"mass">;
  readonly limit: Quantity<"mass">;
  readonly slope: number;
  readonly instruments: RoomInstruments<K> | undefined;
  readonly unit: Unit<K>;
  readonly confidence: number | undefined;
}

/** What was decided, why, and what was taken for granted. */
export interface Decision {
  readonly outcome: Outcome;
  readonly reasons: readonly ChargeLimitStatement[];
  readonly assumptions: readonly ChargeLimitStatement[];
}

export function decide<K extends "area" | "volume">(input: Question<K>): Decision {
  const { charge, limit, slope, instruments = {}, unit, confidence = 0.95 } = input;
  siOf("charge", charge, "mass", { above: 0 });
  const { charge: scale, size: tape } = objectOf("instruments", instruments);
  const errorOf = (name: string, given: Instrument<never> | undefined, its: Unit<never>) =>
    given === undefined ? 0 : standardUncertainty(given, its, `instruments.${name}`).si;
  const u = kg(
    Math.hypot(
      errorOf("charge", scale as never, kg as never),
      slope * errorOf("size", tape as never, unit as never),
    ),
  );
  const { outcome } = conformity({
    value: charge,
    standardUncertainty: u,
    upperLimit: limit,
    confidence,
  });
  const compared = { charge, limit: limit.as(charge.unit) };
  const reason = {
    pass: () => say("charge-limit.within-limit", compared),
    fail: () => say("charge-limit.above-limit", compared),
    inconclusive: () =>
      say("charge-limit.too-close-to-call", {
        ...compared,
        uncertainty: u.times(2).as(charge.unit),
      }),
  }[outcome]();
  return {
    outcome,
    reasons: [reason],
    assumptions: [
      ...(scale ? [] : [say("charge-limit.exact-charge")]),
      ...(tape ? [] : [say("charge-limit.exact-size")]),
    ],
  };
}
