// How is a supply named in a statement? Its designation, or the code of a word.
// Follows the names of the standards themselves. Does not cover their figures.
import type { Verbatim } from "../../assessment/statement.ts";
import { textOf } from "../../quantity/check.ts";
import { frozen } from "../../quantity/frozen.ts";

const names: readonly [
  "japan-article-38",
  "stated-supply",
  "only-range",
  "utilization-range",
  "range-a",
  "range-b",
] = ["japan-article-38", "stated-supply", "only-range", "utilization-range", "range-a", "range-b"];

/** The word for a standard or a range that has no designation of its own. */
export type SupplyNameWord = `supply-voltage.name.${(typeof names)[number]}`;

/** A designation, such as ANSI C84.1, or the word for what has none. */
export type SupplyName = Verbatim | SupplyNameWord;

/**
 * A standard or a range by its name, as a value of a statement: `label` words what has no designation of its own.
 *
 * @param text - The name of a `VoltageStandard` or of a `supplyRange`.
 * @returns The code of its word, or the designation as it is.
 * @throws {@link InvalidInputError} from JavaScript, when it is no text.
 *
 * Source: the names of the standards themselves.
 *
 * @example
 * ```ts
 * import { supplyName } from "hvac-install-math/supply-voltage";
 *
 * supplyName("only-range"); // => supply-voltage.name.only-range
 * JSON.stringify(supplyName("ANSI C84.1")); // => {"verbatim":"ANSI C84.1"}
 * ```
 */
export function supplyName(text: string): SupplyName {
  const key = textOf("text", text).toLowerCase().replace(" ", "-"); // Range A has words of its own
  const word = names.find((name) => name === key);
  return word ? `supply-voltage.name.${word}` : frozen({ verbatim: text });
}
