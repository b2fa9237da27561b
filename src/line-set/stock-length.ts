// Which stock length does this run take, and what becomes of the surplus?
// Follows common practice, no source, within the manual's shortest and longest run.
// Does not cover hard tube in straight lengths, which is cut and brazed.
import { type Assessment, cite, type Statement, statement } from "../assessment/assessment.ts";
import { flagOf, listOf, objectOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { Quantity } from "../quantity/quantity.ts";
import { manualDecides, manuals, underPressure } from "./line-cautions.ts";
import { lengthOf } from "./tube.ts";

/**
 * The run and the line sets at hand.
 *
 * Source: none; the library's own type.
 */
export interface StockLengthInput {
  /** Length of the way along the wall, bends followed. */
  readonly run: Quantity<"length">;
  /** Extra for measuring and making ends, for instance 3 % of the run or a foot; none when left out. */
  readonly slack?: Quantity<"length">;
  /** Extra kept as a loop so that the unit can be moved for service; none when left out. */
  readonly serviceLoop?: Quantity<"length">;
  /** The lengths in which the set can be bought. */
  readonly stock: readonly Quantity<"length">[];
  /** Whether the set can be cut: `false` for sets that come charged or with fixed ends. */
  readonly cuttable: boolean;
  /** Shortest length that the unit's manual allows. */
  readonly minimumLength?: Quantity<"length">;
  /** Longest length that the unit's manual allows. */
  readonly maximumLength?: Quantity<"length">;
}

/**
 * The verdict on the stock.
 *
 * Source: none; the library's own type.
 */
export interface StockLengthAssessment extends Assessment {
  /** Run, slack and loop together, or the manual's shortest length where that is more. */
  readonly neededLength: Quantity<"length">;
  /** The shortest stock length that will do; absent when none does. */
  readonly stockLength?: Quantity<"length">;
  /** Stock length less needed length. */
  readonly surplus?: Quantity<"length">;
  /** `cut` it off, `coil` it, or nothing is left. */
  readonly surplusUse?: "cut" | "coil" | "none";
  /** Length of tube that ends up installed: the one to reckon the added charge with. */
  readonly installedLength?: Quantity<"length">;
}

/**
 * Chooses the shortest stock length that covers the run with slack and service loop, and says what to
 * do with the surplus: cut it off where the set may be cut, else coil it flat. A run below the manual's
 * shortest length is made up by coiling the excess, which keeps noise and vibration down.
 *
 * @param input - Run, extras, stock, whether it may be cut, the manual's limits.
 * @returns The verdict with stock length, surplus and installed length. `fail` when no stock length will
 * do.
 * @throws {@link InvalidInputError} when there is no stock or a length is missing, of another kind or
 * impossible.
 * Cautions: bend by hand only as tight as the tube's bender allows; no kinks; coil flat so that no oil
 * collects; keep the ends sealed until you flare.
 *
 * Source: common practice, no source; limits from the manual.
 *
 * @example
 * ```ts
 * import { chooseStockLength } from "hvac-install-math/line-set";
 * import { ft } from "hvac-install-math/quantity";
 *
 * const choice = chooseStockLength({
 *   run: ft(21),
 *   slack: ft(1),
 *   serviceLoop: ft(2),
 *   stock: [ft(16), ft(25), ft(35), ft(50)],
 *   cuttable: true,
 * });
 * choice.stockLength?.toString(); // => 25 ft
 * choice.surplus?.toString(); // => 1 ft
 * choice.surplusUse; // => cut
 * ```
 */
export function chooseStockLength(input: StockLengthInput): StockLengthAssessment {
  const { run, slack, serviceLoop, stock, minimumLength, maximumLength } = objectOf("input", input);
  const cuttable = flagOf("cuttable", input.cuttable);
  siOf("run", run, "length", { above: 0, max: 1000 });
  const { unit } = run;
  if (listOf("stock", stock).length === 0) {
    throw new InvalidInputError({
      argument: "stock",
      value: "none",
      allowed: "one or more stock lengths",
    });
  }
  const lengths = stock
    .map((one, i) => siOf(`stock[${i}]`, one, "length", { above: 0, max: 1000 }))
    .sort((a, b) => a - b);
  const optional = (name: string, value?: Quantity<"length">) =>
    value === undefined ? 0 : lengthOf(name, value);
  const way = run.si + optional("slack", slack) + optional("serviceLoop", serviceLoop);
  const least = optional("minimumLength", minimumLength);
  optional("maximumLength", maximumLength);
  const needed = Math.max(way, least);
  const neededLength = new Quantity(needed, unit);
  // A hair of binary arithmetic must not send anyone back to the shop.
  const length = lengths.find((one) => one >= needed * (1 - 1e-12));

  const result = {
    assumptions: [
      ...(slack ? [] : [statement("no-slack", "No slack for measuring and making ends.")]),
      ...(serviceLoop ? [] : [statement("no-service-loop", "No service loop.")]),
      ...(maximumLength
        ? []
        : [statement("maximum-length-not-given", "The longest run was not checked.")]),
    ],
    cautions: [
      manualDecides,
      ...(cuttable ? [] : [underPressure]),
      statement(
        "kinks",
        "Bend with a bender, no kinks; coil flat, so that no oil collects; keep ends sealed.",
      ),
    ],
    sources: [cite("common-practice"), manuals],
    neededLength,
  };
  const say = (code: string, text: string, values: Statement["values"] = {}): Statement =>
    statement(code, text, { needed: neededLength, ...values });
  if (length === undefined) {
    const longest = new Quantity(lengths.at(-1) as number, unit);
    const reasons = [
      say(
        "no-stock-length",
        "{needed} is more than the longest stock length, {longest}: take tube from a roll, or join two sets by brazing.",
        { longest },
      ),
    ];
    return { outcome: "fail", reasons, ...result };
  }
  const surplus = Math.max(0, length - needed);
  const installed = cuttable ? needed : length;
  const coiled = installed - way;
  const surplusUse = surplus === 0 ? "none" : cuttable ? "cut" : "coil";
  const values = {
    stock: new Quantity(length, unit),
    surplus: new Quantity(surplus, unit),
    coiled: new Quantity(coiled, unit),
    installed: new Quantity(installed, unit),
  };
  const reasons = [
    say("stock-length", "{stock} is the shortest stock length that covers {needed}.", values),
  ];
  if (surplusUse === "cut") reasons.push(say("cut-surplus", "Cut off {surplus}.", values));
  if (coiled > 1e-9) {
    reasons.push(
      say(
        way < least ? "coil-to-minimum" : "coil-surplus",
        "Coil {coiled} flat by the outdoor unit; the charge counts {installed}.",
        values,
      ),
    );
  }
  const tooLong = maximumLength !== undefined && installed > maximumLength.si;
  if (tooLong) {
    reasons.unshift(
      say("too-long", "{installed} installed is more than the {limit} allowed.", {
        ...values,
        limit: maximumLength,
      }),
    );
  }
  return {
    outcome: tooLong ? "fail" : "pass",
    reasons,
    ...result,
    stockLength: values.stock,
    surplus: new Quantity(surplus, unit),
    surplusUse,
    installedLength: new Quantity(installed, unit),
  };
}
