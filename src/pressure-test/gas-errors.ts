// How far may the gas be from what the thermometer shows? What the user states, else defaults that grow with
// the swing, the time and the volume: common practice, no source. Standard uncertainties in K; JCGM 100:2008, 4.3.7, for
// bounds. Does not cover a thermometer in the sun: state how far it follows.
import { objectOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { deltaK } from "../quantity/units/temperature.ts";
import { second } from "../quantity/units/time.ts";
import type { GasThermometer } from "./instruments.ts";
import { type PressureTestStatement, say } from "./statements.ts";

/**
 * The part of the gas that lies where no thermometer is: tubing indoors while the thermometer hangs outdoors.
 */
export interface GasElsewhere {
  /** Its share of the volume, 0 to below 1; 0 says that every part has its thermometer. */
  readonly share: Quantity<"ratio">;
  /** How much its temperature may have changed from the first to the last reading, ±; when left out, what a day and a house do in that time is assumed. */
  readonly change?: Quantity<"temperatureDifference"> | undefined;
}

/** Decaying warmth of the gas after the fill: at most so many K at its end, with a time constant in s. */
export interface Warmth {
  readonly kelvin: number;
  readonly seconds: number;
}

/** What the gas temperature leaves open beside the thermometer's own errors. */
export interface GasErrors {
  /** Of each reading, K. */
  readonly between: number;
  /** Share of the swing that the gas may not have made, and its lag behind the thermometer, s. */
  readonly missed: number;
  readonly lag: number;
  /** Change of the mean gas temperature that no thermometer saw after some seconds, K. */
  readonly unseen: (seconds: number) => number;
  /** What is left of the fill: each part at most so much, K. */
  readonly warmth: readonly Warmth[];
  /** Seconds from the end of the fill to the first reading; a minute when unknown. */
  readonly sinceFill: number;
  /** Share of the gas that is a zone of its own, and the change of its temperature after some seconds, K. */
  readonly elsewhere: number;
  readonly change: (seconds: number) => number;
  /** What was not stated and would tell more: how far the thermometer follows the gas, whether part of it lies elsewhere and how that changed, how long ago the fill was. */
  readonly asks: {
    readonly within: boolean;
    readonly elsewhere: boolean;
    readonly change: boolean;
    readonly sinceFill: boolean;
  };
  readonly assumptions: readonly PressureTestStatement[];
}

/** What is stated about the gas. */
export interface StatedGas {
  readonly probe: GasThermometer;
  readonly elsewhere: GasElsewhere | undefined;
  readonly sinceFill: Quantity<"duration"> | undefined;
  /** Every zone has its thermometer. */
  readonly isZoned: boolean;
  /** m³, 0 when unknown; and Pa after the fill. */
  readonly volume: number;
  readonly fill: number;
}

const ROOT3 = /* @__PURE__ */ Math.sqrt(3);
/** Bound ± when nothing is stated, K: sun on part of the tubing, lag. */
const WITHIN = 1;
/**
 * Warmth of a fill of 4 MPa, K, and its time constants, s. The work p·V of a fill goes into the wall: p·A/C' in tube of
 * ASTM B280, from 1.6 K in 1/4 in to 5 K in 3/4 in less what insulation (ASTM C534) takes, leaves through it and the film
 * to the air (ISO 12241) within C'/U', 4 min to 30 min; heat conduction alone gives the gas to the wall of a tube in
 * R²/(7.35 α), 1 s to 20 s, free convection in a shell in 45 s to 140 s. Mean of a system, so that twice the standard uncertainty covers
 * 95 % of 6000 systems of tube to 3/4 in with coils and shells, stepped in time. More of the same tube is not slower; wider
 * tube is, and then more is warm. Warm gas feigns a leak and hides none. From memory: the metal of coils and shells, the heat
 * that foam takes, how many outdoor units are open.
 */
const FILL = 4e6;
/** The gas above its wall. */
const GAS = { kelvin: 8, seconds: 75 };
/** Tubing and coil, and the shell of an open outdoor unit. */
const WALLS = [
  { kelvin: 2.7, seconds: 1000 },
  { kelvin: 0.5, seconds: 5400 },
];
/** Seconds that pass between fill and first reading at the least: closing the valve and reading. */
const AT_ONCE = 60;
/** Part of the swing that a thermometer by the tubing may miss, and one of which nothing is known: up to 0.7 of the gas is elsewhere. */
const MISSED = { measured: 0.1, unknown: 0.4 };
/** Standard uncertainty of what a day does to the air in half a day, K: 9 K from end to end, seen from indoors. */
const DAY = 5;
/** Part of that which the mean gas may make unseen. */
const UNSEEN = 0.6;
/** Volume up to which the estimates hold, m³; beyond it lengths, and with them differences and times, grow. */
const SMALL = 3e-3;

/** Change of a temperature that nobody saw, as part of what a day does: half a wave of 24 h. */
const overDay = (seconds: number) => Math.sin((Math.min(seconds, 43_200) / 86_400) * Math.PI);

/** Reads what is stated and puts defaults where nothing is. */
export function gasErrorsOf(stated: StatedGas): GasErrors {
  const { probe, isZoned, volume, fill, sinceFill: since = second(AT_ONCE) } = stated;
  const sinceFill = siOf("sinceFill", since, "duration", { min: 0 });
  const { elsewhere: split = { share: percent(0) } } = stated;
  const { share, change } = objectOf("elsewhere", split);
  const elsewhere = siOf("elsewhere.share", share, "ratio", { min: 0, below: 1 });
  const changed =
    change === undefined
      ? undefined
      : siOf("elsewhere.change", change, "temperatureDifference", { min: 0 }) / ROOT3;
  const growth = Math.cbrt(Math.max(1, volume / SMALL));
  const within = probe.followsGasWithin;
  const isStated = within !== undefined;
  const bound = isStated
    ? siOf("instruments.temperature.followsGasWithin", within, "temperatureDifference", { min: 0 })
    : WITHIN * growth;
  const sees = isStated ? [GAS] : [GAS, ...WALLS];
  const warm = isStated && stated.sinceFill === undefined ? [] : sees;
  const isMeasured = isZoned || stated.elsewhere !== undefined;
  const missed = isStated ? 0 : isMeasured ? MISSED.measured : MISSED.unknown;
  return {
    between: bound / ROOT3,
    missed,
    lag: isStated ? 120 : 900,
    unseen: (seconds) => (isStated || isMeasured ? 0 : DAY * overDay(seconds) * UNSEEN),
    // The gas settles to the wall at once, which no thermometer on the wall shows; the wall to the air later.
    warmth: warm.map(({ kelvin, seconds }) => ({ kelvin: (kelvin * fill) / FILL, seconds })),
    sinceFill,
    elsewhere,
    change: (seconds) => changed ?? DAY * overDay(seconds),
    asks: {
      within: !isStated,
      elsewhere: !isStated && !isMeasured,
      change: elsewhere > 0 && change === undefined,
      sinceFill: stated.sinceFill === undefined,
    },
    assumptions: assumed(stated, bound, missed, isMeasured),
  };
}

/** Standard uncertainty of one part of the warmth at a time after the first reading, K. */
export const warmthAt = ({ kelvin, seconds }: Warmth, time: number): number =>
  (kelvin / ROOT3) * Math.exp(-time / seconds);

/** What was assumed of what was not stated. */
function assumed(
  { probe, sinceFill }: StatedGas,
  bound: number,
  missedShare: number,
  isMeasured: boolean,
): PressureTestStatement[] {
  if (probe.followsGasWithin !== undefined) {
    return sinceFill === undefined ? [say("pressure-test.gas-settled")] : [];
  }
  const within = deltaK(Number(bound.toPrecision(2)));
  const missed = percent(Math.round(100 * missedShare * ROOT3));
  return [
    isMeasured
      ? say("pressure-test.follows-gas", { within, missed })
      : say("pressure-test.gas-elsewhere-unknown", { within, missed }),
    ...(sinceFill === undefined ? [say("pressure-test.warm-from-fill")] : []),
  ];
}
