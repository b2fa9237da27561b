// Can the nameplate's rate be right for this tube? The rate against the mass of a line full of liquid.
// Follows manufacturers' published rate tables, brands withheld: with the expansion device in the indoor
// unit they print 1.1 to 1.7 times the full line, with the device outdoors 0.47 to 0.85 times.
// Does not cover the charge itself: the nameplate decides, this only finds slips.
import { type Outcome, verdict } from "../assessment/assessment.ts";
import { objectOf, oneOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { type ChargeRate, rateOf } from "./charge-rate.ts";
import { decide, type Finding } from "./decide.ts";
import { type FilledTube, fillOf, type LiquidFilledTube } from "./full-line.ts";
import { manuals } from "./line-cautions.ts";
import { type RateSlip, say, type Verdict } from "./statements.ts";

/**
 * Where the liquid is expanded in cooling: in the `indoor` unit the liquid line is full of liquid; in
 * the `outdoor` unit, as in most small splits, it carries a two-phase mixture.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export type ExpansionDevice = "indoor" | "outdoor" | "not-known";

/**
 * The nameplate's rate and the line it is meant for.
 */
export type LiquidChargePlausibilityInput = (FilledTube | LiquidFilledTube) & {
  /** The nameplate's rate for this size of liquid line. */
  readonly rate: ChargeRate;
  /** Where the unit expands the liquid in cooling. */
  readonly expansionDevice: ExpansionDevice;
};

/**
 * The verdict on a rate: `pass` plausible, `inconclusive` plausible only with the device elsewhere,
 * `fail` read the nameplate again.
 */
export interface LiquidChargePlausibility extends Verdict<RateSlip> {
  /** What the line holds when full of liquid, in the unit of the rate. */
  readonly fullLineRate: Quantity<"massPerLength">;
  /** The nameplate's rate over the full line's. */
  readonly ratio: number;
}

/**
 * Rate over full line that counts as plausible, the library's own choice around published tables: R410A and
 * R32 by two manufacturers give 0.47 to 0.84 with the device outdoors; splits with the device indoors 1.12
 * to 1.69. The two meet: 0.9 to 1.1 can be either.
 */
const windows = { outdoor: [0.4, 1.1], indoor: [0.9, 1.9], "not-known": [0.4, 1.9] } as const;

/**
 * Holds a nameplate's charge rate against the mass of a liquid line full of liquid, and says why it may
 * well be lower: the unit expands the liquid outdoors, so that the line carries flashing liquid.
 *
 * Assumes saturated liquid, of the density given or of the refrigerant at the temperature given; 10 °F of subcooling adds about 4 % for R410A.
 *
 * @param input - Rate, tube, liquid density (or refrigerant and liquid temperature), place of the
 * expansion device.
 * @returns The verdict, the full line's rate and the ratio. Never a charge.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible;
 * {@link OutOfRangeError} for a temperature outside the refrigerant's range.
 * Caution: charge by the nameplate and by weight, never by the geometric figure.
 *
 * Source: manufacturers' published rate tables, brands withheld; plane geometry.
 *
 * @example
 * ```ts
 * import { astmB280Tube, liquidChargePlausibility } from "hvac-install-math/line-set";
 * import { degF, gPerM } from "hvac-install-math/quantity";
 * import { R410A } from "hvac-install-math/refrigerants";
 *
 * const check = liquidChargePlausibility({
 *   rate: gPerM(15),
 *   tube: astmB280Tube({ size: "1/4", temper: "annealed" }),
 *   refrigerant: R410A,
 *   temperature: degF(105),
 *   expansionDevice: "outdoor",
 * });
 * check.outcome; // => pass
 * check.ratio.toFixed(2); // => 0.84
 * ```
 */
export function liquidChargePlausibility(
  input: LiquidChargePlausibilityInput,
): LiquidChargePlausibility {
  const rate = rateOf("rate", objectOf("input", input).rate);
  const full = fillOf(input);
  const device = oneOf("expansionDevice", input.expansionDevice, [
    "indoor",
    "outdoor",
    "not-known",
  ]);
  const ratio = rate.si / full;
  const inside = (value: number, [low, high]: readonly [number, number]) =>
    value >= low && value <= high;

  const outcome: Outcome = inside(ratio, windows[device])
    ? "pass"
    : inside(ratio, windows["not-known"])
      ? "inconclusive"
      : "fail";
  const [low, high] = windows[device];
  const fullLineRate = new Quantity(full, rate.unit);
  const values = { rate, full: fullLineRate, ratio: Number(ratio.toPrecision(3)), low, high };
  const found: Record<Outcome, Finding> = {
    pass: { outcome, said: say("line-set.rate-plausible", values) },
    fail: {
      outcome,
      said: say("line-set.rate-implausible", values),
      actions: [say("line-set.read-rate-again")],
    },
    inconclusive: {
      outcome,
      said: say("line-set.rate-fits-other-device", values),
      actions: [say("line-set.enter-expansion-device")],
    },
  };
  const slip: RateSlip | undefined =
    outcome !== "fail"
      ? undefined
      : inside(ratio / 0.3048, windows[device])
        ? "per-foot-taken-as-per-meter"
        : inside(ratio * 0.3048, windows[device])
          ? "per-meter-taken-as-per-foot"
          : undefined;
  const aside =
    slip === "per-foot-taken-as-per-meter"
      ? say("line-set.rate-per-foot")
      : slip === "per-meter-taken-as-per-foot"
        ? say("line-set.rate-per-meter")
        : outcome !== "fail" && ratio < 0.9
          ? say("line-set.two-phase-liquid-line")
          : undefined;
  return verdict({
    ...decide([found[outcome], ...(aside ? [{ outcome, said: aside }] : [])]),
    ...(slip && { cause: slip }),
    assumptions: [say("line-set.saturated-liquid")],
    cautions: [],
    sources: [manuals],
    fullLineRate,
    ratio,
  });
}
