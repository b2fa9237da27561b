// What should the nameplate say? Minimum circuit ampacity and largest overcurrent protection from the loads.
// Follows UL 1995 / CSA C22.2 No. 236, 4th edition, 37.14 and 37.15; NFPA 70 (2023), 440.4(B), 440.12(B).
// Does not cover a maker's reasons to mark less than the largest protection that the formula allows.

import { type Assessment, cite } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { danger, heed } from "../assessment/safety.ts";
import { oneOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { twelveDigits } from "../quantity/twelve-digits.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { type Load, loadsByMode, type ModeLoads, type OperatingMode } from "./loads.ts";
import { ratingAtLeast, ratingAtMost, standardRatings } from "./rules/index.ts";
import { type CircuitProtectionStatement, say, verbatim } from "./statements.ts";

/**
 * The standard that the unit's nameplate follows. UL 60335-2-40 takes the place of UL 1995; its formulas give the same
 * figures, from memory, and a result by it says so.
 *
 * Source: UL 1995, 37.14 and 37.15; UL 60335-2-40, from memory.
 */
export type NameplateStandard = "UL 1995" | "UL 60335-2-40";

/**
 * The nameplate figures of one operating mode.
 *
 * Source: UL 1995, 37.14 and 37.15.
 */
export interface NameplateMode {
  /** The mode; `any` when no load names one. */
  readonly mode: OperatingMode | "any";
  /** Minimum circuit ampacity, unrounded. */
  readonly minimumCircuitAmpacity: Quantity<"current">;
  /** 2.25 × largest motor + everything else, before rounding to a standard size. */
  readonly calculatedProtection: Quantity<"current">;
  /** Largest standard size of overcurrent protection. */
  readonly maximumOvercurrentProtection: Quantity<"current">;
  /** Sum of the currents at rated load, without the small loads that do not count. */
  readonly ratedLoadCurrent: Quantity<"current">;
  /** How the size was come by. */
  readonly steps: readonly CircuitProtectionStatement[];
}

/**
 * Nameplate figures from the parts of a unit.
 *
 * Source: UL 1995, 37.14 and 37.15.
 */
export interface NameplateFromParts
  extends Pick<
    Assessment<never, CircuitProtectionStatement>,
    "assumptions" | "cautions" | "sources"
  > {
  /** The largest of the modes. A maker prints it rounded to 0.1 A or 1 A. */
  readonly minimumCircuitAmpacity: Quantity<"current">;
  /** The largest of the modes. A maker may mark less. */
  readonly maximumOvercurrentProtection: Quantity<"current">;
  /** Smallest disconnect: 115 % of the largest sum of rated-load currents. */
  readonly disconnectRating: Quantity<"current">;
  /** Each mode by itself. */
  readonly modes: readonly NameplateMode[];
}

/** UL 1995, 37.14 and 37.15, for what runs together. */
function modeFigures({ mode, motors, heaters, heaterPower, others }: ModeLoads): NameplateMode {
  const [largest = 0, ...rest] = motors; // L1 and what makes L2
  const remaining = rest.reduce((a, b) => a + b, 0) + others; // L2 + L4
  const withFactor = heaterPower < 50_000 ? heaters : 0;
  const ampacity = twelveDigits(
    heaters
      ? 1.25 * (largest + remaining + withFactor) + heaters - withFactor
      : 1.25 * largest + remaining,
  );
  const calculated = twelveDigits(2.25 * largest + remaining + heaters);
  const steps: CircuitProtectionStatement[] = [];
  let rating = ratingAtMost(calculated, standardRatings) ?? 0;
  const raise = (
    code: "heater-needs-more" | "smallest-rating" | "ampacity-needs-more",
    to: number | undefined,
  ) => {
    if (to === undefined) {
      throw new OutOfRangeError({
        argument: "loads",
        value: `a minimum circuit ampacity of ${ampacity} A`,
        allowed: "at most 800 A",
        bound: { value: ampere(ampacity), is: "max", limit: ampere(800) },
      });
    }
    rating = to;
    steps.push(say(`circuit-protection.${code}`, { rating: ampere(to) }));
  };
  if (rating !== calculated) {
    steps.push(say("circuit-protection.next-size-down", { calculated: ampere(calculated) }));
  }
  if (heaters && rating < 1.25 * heaters) {
    raise("heater-needs-more", ratingAtLeast(calculated, standardRatings));
  }
  if (rating < 15) raise("smallest-rating", 15);
  if (rating < ampacity) {
    const made = standardRatings.filter((r) => r <= 800);
    raise("ampacity-needs-more", ratingAtLeast(ampacity, made));
  }
  return {
    mode,
    minimumCircuitAmpacity: ampere(ampacity),
    calculatedProtection: ampere(calculated),
    maximumOvercurrentProtection: ampere(rating),
    ratedLoadCurrent: ampere(twelveDigits(largest + remaining + heaters)),
    steps,
  };
}

/**
 * Nameplate figures of a unit from its loads, mode by mode: to read an unreadable plate, or to check a
 * readable one.
 *
 * With L1 the largest motor or compressor, L2 the other motors, L3 the heaters, L4 other loads of 1 A or more:
 * MCA = 1.25·L1 + L2 + L4 without heat, 1.25·(L1 + L2 + L3 + L4) with heat below 50 kW,
 * 1.25·(L1 + L2 + L4) + L3 from 50 kW; MOP = 2.25·L1 + L2 + L3 + L4, rounded down to a standard size, but up
 * where it is below 125 % of the heaters, to the minimum circuit ampacity at least, and 15 A at least.
 *
 * Assumes heaters below 50 kW when no power is given, which asks for more.
 *
 * @param loads - The loads; at least one, each with a current above 0, or a heater with its power and voltage.
 * @param standard - The standard of the nameplate; UL 1995 when left out.
 * @returns The figures, each mode, and how the size was come by.
 * @throws {@link InvalidInputError} for an empty list or a load that is not one; {@link OutOfRangeError}
 * above 800 A.
 *
 * Cautions: a calculated figure is a cross-check or a stopgap, no substitute for the nameplate; the marked
 * maximum rules (440.22(C)).
 *
 * Source: UL 1995 / CSA C22.2 No. 236, 4th edition, 37.14 and 37.15, as restated in makers' manuals.
 *
 * @example
 * ```ts
 * import { nameplateFromParts } from "hvac-install-math/circuit-protection";
 * import { ampere } from "hvac-install-math/quantity";
 *
 * const heat = nameplateFromParts([
 *   { kind: "heater", current: ampere(40) },
 *   { kind: "motor", current: ampere(3) },
 * ]);
 * heat.minimumCircuitAmpacity.toString(); // => 53.75 A
 * heat.maximumOvercurrentProtection.toString(); // => 60 A
 * ```
 */
export function nameplateFromParts(
  loads: readonly Load[],
  standard: NameplateStandard = "UL 1995",
): NameplateFromParts {
  oneOf("standard", standard, ["UL 1995", "UL 60335-2-40"]);
  const together = loadsByMode(loads);
  const modes = together.map(modeFigures);
  const largest = (
    of: "minimumCircuitAmpacity" | "maximumOvercurrentProtection" | "ratedLoadCurrent",
  ) => Math.max(...modes.map((mode) => mode[of].si));
  const unknownPower = together.some(({ heaters, heaterPower }) => heaters && !heaterPower);
  const ul1995 = standard === "UL 1995";
  return frozen({
    minimumCircuitAmpacity: ampere(largest("minimumCircuitAmpacity")),
    maximumOvercurrentProtection: ampere(largest("maximumOvercurrentProtection")),
    disconnectRating: ampere(twelveDigits(1.15 * largest("ratedLoadCurrent"))), // 440.12(B)
    modes,
    assumptions: unknownPower ? [say("circuit-protection.heater-below-50-kw")] : [],
    cautions: heed<CircuitProtectionStatement | ReturnType<typeof danger>>([
      caution("finding", say("circuit-protection.calculated-not-marked")),
      ...(ul1995
        ? []
        : [
            caution(
              "finding",
              say("circuit-protection.from-memory", { clauses: [verbatim("UL 60335-2-40")] }),
            ),
          ]),
      danger("safety.line-voltage"),
    ]),
    sources: [
      ul1995 ? cite("ul-1995", "37.14, 37.15") : cite("ul-60335-2-40-2022"),
      cite("nfpa-70-2023", "440.4(B), 440.6, 440.12(B)"),
    ],
  });
}

/**
 * Minimum circuit ampacity of a unit from its loads: the largest of its operating modes.
 *
 * Assumes what {@link nameplateFromParts} assumes, which shows every mode.
 *
 * @param loads - The loads; at least one, each with a current above 0.
 * @returns The ampacity, unrounded. It already holds the 125 %.
 * @throws {@link InvalidInputError} and {@link OutOfRangeError} as {@link nameplateFromParts}.
 *
 * Cautions: no substitute for the nameplate.
 *
 * Source: UL 1995, 37.14; NFPA 70 (2023), 440.33 to 440.35.
 *
 * @example
 * ```ts
 * import { minimumCircuitAmpacity } from "hvac-install-math/circuit-protection";
 * import { ampere } from "hvac-install-math/quantity";
 *
 * const compressor = { kind: "compressor", current: ampere(17.6) } as const;
 * const fan = { kind: "motor", current: ampere(1.5) } as const;
 * minimumCircuitAmpacity([compressor, fan]).toString(); // => 23.5 A
 * ```
 */
export function minimumCircuitAmpacity(loads: readonly Load[]): Quantity<"current"> {
  return nameplateFromParts(loads).minimumCircuitAmpacity;
}

/**
 * Largest overcurrent protection of a unit from its loads: the largest of its operating modes.
 *
 * Assumes what {@link nameplateFromParts} assumes, which shows every mode and how it was rounded.
 *
 * @param loads - The loads; at least one, each with a current above 0.
 * @returns A standard rating, 15 A or more.
 * @throws {@link InvalidInputError} and {@link OutOfRangeError} as {@link nameplateFromParts}.
 *
 * Cautions: no substitute for the nameplate; a maker may mark less, and the marked maximum rules.
 *
 * Source: UL 1995, 37.15; NFPA 70 (2023), 440.22.
 *
 * @example
 * ```ts
 * import { maximumOvercurrentProtection } from "hvac-install-math/circuit-protection";
 * import { ampere } from "hvac-install-math/quantity";
 *
 * const compressor = { kind: "compressor", current: ampere(17.6) } as const;
 * const fan = { kind: "motor", current: ampere(1.5) } as const;
 * maximumOvercurrentProtection([compressor, fan]).toString(); // => 40 A
 * ```
 */
export function maximumOvercurrentProtection(loads: readonly Load[]): Quantity<"current"> {
  return nameplateFromParts(loads).maximumOvercurrentProtection;
}
