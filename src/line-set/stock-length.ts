// Which stock length does this run take, and what becomes of the surplus?
// Follows common practice, no source, within the manual's shortest and longest run.
// Does not cover hard tube in straight lengths, which is cut and brazed.
import { cite, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { flagOf, listOf, objectOf, siOf } from "../quantity/check.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { decide, type Finding } from "./decide.ts";
import { manuals, underPressure } from "./line-cautions.ts";
import { say, type Verdict } from "./statements.ts";
import { lengthOf } from "./tube.ts";

/**
 * The run and the line sets at hand.
 */
export interface StockLengthInput {
  /** Length of the way along the wall, bends followed. */
  readonly run: Quantity<"length">;
  /** Extra for measuring and making ends, for instance 3 % of the run or a foot; none when left out. */
  readonly slack?: Quantity<"length"> | undefined;
  /** Extra kept as a loop so that the unit can be moved for service; none when left out. */
  readonly serviceLoop?: Quantity<"length"> | undefined;
  /** The lengths in which the set can be bought. */
  readonly stock: readonly Quantity<"length">[];
  /** Whether the set can be cut: `false` for sets that come charged or with fixed ends. */
  readonly cuttable: boolean;
  /** Shortest length that the unit's manual allows. */
  readonly minimumLength?: Quantity<"length"> | undefined;
  /** Longest length that the unit's manual allows. */
  readonly maximumLength?: Quantity<"length"> | undefined;
}

/**
 * The verdict on the stock.
 */
export interface StockLengthAssessment extends Verdict {
  /** Run, slack and loop together, or the manual's shortest length where that is more. */
  readonly neededLength: Quantity<"length">;
  /** The shortest stock length that will do; absent when none does. */
  readonly stockLength?: Quantity<"length"> | undefined;
  /** Stock length less needed length. */
  readonly surplus?: Quantity<"length"> | undefined;
  /** `cut` it off, `coil` it, or nothing is left. */
  readonly surplusUse?: "cut" | "coil" | "none" | undefined;
  /** Length of tube that ends up installed: the one to reckon the added charge with. */
  readonly installedLength?: Quantity<"length"> | undefined;
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
  const lengths = listOf("stock", stock, Infinity, 1)
    .map((one, i) => siOf(`stock[${i}]`, one, "length", { above: 0, max: 1000 }))
    .sort((a, b) => a - b);
  const optional = (name: string, value?: Quantity<"length">) =>
    value === undefined ? 0 : lengthOf(name, value);
  const way = run.si + optional("slack", slack) + optional("serviceLoop", serviceLoop);
  const least = optional("minimumLength", minimumLength);
  optional("maximumLength", maximumLength);
  const needed = Math.max(way, least);
  const neededLength = new Quantity(needed, unit);
  const length = lengths.find((one) => isAtLeast(one, needed));

  const result = {
    assumptions: [
      ...(slack ? [] : [say("line-set.no-slack")]),
      ...(serviceLoop ? [] : [say("line-set.no-service-loop")]),
      ...(maximumLength ? [] : [say("line-set.maximum-length-not-checked")]),
    ],
    cautions: [caution("finding", say("line-set.no-kinks")), ...(cuttable ? [] : underPressure())],
    sources: [cite("common-practice"), manuals],
    neededLength,
  };
  if (length === undefined) {
    const longest = new Quantity(lengths.at(-1) as number, unit);
    const none: Finding = {
      outcome: "fail",
      said: say("line-set.no-stock-length", { needed: neededLength, longest }),
      actions: [say("line-set.take-from-roll")],
    };
    return verdict({ ...decide([none]), ...result });
  }
  const surplus = Math.max(0, length - needed);
  const installedLength = new Quantity(cuttable ? needed : length, unit);
  const chosen = {
    stockLength: new Quantity(length, unit),
    surplus: new Quantity(surplus, unit),
    surplusUse: surplus === 0 ? "none" : cuttable ? "cut" : "coil",
    installedLength,
  } as const;
  const coiled = new Quantity(installedLength.si - way, unit);
  const findings: Finding[] = [
    ...tooLong(neededLength, installedLength, maximumLength),
    {
      outcome: "pass",
      said: say("line-set.stock-length", { stock: chosen.stockLength, needed: neededLength }),
    },
  ];
  if (chosen.surplusUse === "cut") {
    const { surplus } = chosen;
    findings.push({ outcome: "pass", said: say("line-set.surplus-to-cut", { surplus }) });
  }
  if (!isAtMost(installedLength.si, way)) {
    const values = { coiled, installed: installedLength };
    const said =
      way < least ? say("line-set.coil-to-minimum", values) : say("line-set.coil-surplus", values);
    findings.push({ outcome: "pass", said });
  }
  return verdict({ ...decide(findings), ...result, ...chosen });
}

/** The installed length where it is more than the unit allows. */
function tooLong(
  needed: Quantity<"length">,
  installed: Quantity<"length">,
  limit: Quantity<"length"> | undefined,
): Finding[] {
  if (limit === undefined || isAtMost(installed.si, limit.si)) return [];
  const figure = "line-set.figure.length";
  return [
    {
      outcome: "fail",
      said: say("line-set.above-maximum", { figure, value: installed, limit }),
      actions: [
        isAtMost(needed.si, limit.si)
          ? say("line-set.other-stock", { needed, limit })
          : say("line-set.shorten-line", { limit }),
      ],
    },
  ];
}
