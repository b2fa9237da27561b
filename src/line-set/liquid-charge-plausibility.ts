// Can the nameplate's rate be right for this tube? The rate against the mass of a line full of liquid.
// Follows manufacturers' published rate tables, brands withheld: with the expansion device in the indoor
// unit they print 1.1 to 1.7 times the full line, with the device outdoors 0.47 to 0.85 times.
// Does not cover the charge itself: the nameplate decides, this only finds slips.
import { type Assessment, type Outcome, statement } from "../assessment/assessment.ts";
import { objectOf, oneOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { type ChargeRate, rateOf } from "./charge-rate.ts";
import { type FilledTube, fillOf, type LiquidFilledTube } from "./full-line.ts";
import { manualDecides, manuals } from "./line-cautions.ts";

/**
 * Where the liquid is expanded in cooling: in the `indoor` unit the liquid line is full of liquid; in
 * the `outdoor` unit, as in most small splits, it carries a two-phase mixture.
 *
 * Source: manufacturers' published manuals, brands withheld.
 */
export type ExpansionDevice = "indoor" | "outdoor" | "not-known";

/**
 * A slip that the ratio points to: a figure per foot read as per metre, or the reverse.
 *
 * Source: plane arithmetic, 1 ft = 0.3048 m.
 */
export type RateSlip = "per-foot-taken-as-per-metre" | "per-metre-taken-as-per-foot";

/**
 * The nameplate's rate and the line it is meant for.
 *
 * Source: none; the library's own type.
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
 *
 * Source: none; the library's own type.
 */
export interface LiquidChargePlausibility extends Assessment<RateSlip> {
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
  const values = {
    rate: rate,
    full: fullLineRate,
    ratio: Number(ratio.toPrecision(3)),
    low,
    high,
  };
  const reasons = [
    statement(
      outcome === "pass" ? "plausible" : outcome === "fail" ? "implausible" : "other-device",
      `{rate} is {ratio} of the {full} of a full line; {low} to {high} is plausible${
        outcome === "fail"
          ? ": read size, unit and nameplate again."
          : outcome === "inconclusive"
            ? ": ask where the expansion device sits."
            : "."
      }`,
      values,
    ),
  ];
  if (outcome !== "fail" && ratio < 0.9) {
    reasons.push(
      statement(
        "two-phase-liquid-line",
        "Lower than a full line is right where the liquid expands outdoors: the line then carries liquid and vapour.",
      ),
    );
  }
  const slip =
    outcome !== "fail"
      ? undefined
      : inside(ratio / 0.3048, windows[device])
        ? "per-foot-taken-as-per-metre"
        : inside(ratio * 0.3048, windows[device])
          ? "per-metre-taken-as-per-foot"
          : undefined;
  return {
    outcome,
    ...(slip && { cause: slip }),
    reasons,
    assumptions: [
      statement("saturated-liquid", "The line is full of saturated liquid at its temperature."),
    ],
    cautions: [manualDecides],
    sources: [manuals],
    fullLineRate,
    ratio,
  };
}
