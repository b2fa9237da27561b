// What is wrong with an input, in the reader's language? The broken bound or the hint of an error as one statement.
// The shape is that of every statement. Does not cover typed texts: their error has a `problem` of its own.
import { objectOf, oneOf, refuse } from "./check.ts";
import type { Hint, InputProblem } from "./errors.ts";
import { frozen } from "./frozen.ts";

/**
 * What is wrong with an input, as a statement that `explain` words: the bound that it broke with both figures, or else
 * what to do about it.
 *
 * @param error - An `InvalidInputError`, or one of the `problems()` of a codec.
 * @returns The statement; undefined where the error has neither (a mistake of the program, not of a person).
 * @throws {@link InvalidInputError} when it is no such error.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { explain } from "hvac-install-math/assessment";
 * import { figureText } from "hvac-install-math/display";
 * import { spanish } from "hvac-install-math/language/es";
 * import { atmosphereAtAltitude, type InvalidInputError, m, problemOf } from "hvac-install-math/quantity";
 *
 * const show = figureText({ system: "SI", language: spanish });
 * let said = "";
 * try {
 *   atmosphereAtAltitude(m(30_000));
 * } catch (error) {
 *   said = explain(problemOf(error as InvalidInputError)!, spanish, show);
 * }
 * said; // => 30000 m: como máximo 11000 m.
 * ```
 */
export function problemOf(
  error: Pick<InputProblem, "allowed" | "bound" | "hint">,
): Hint | undefined {
  const { allowed, bound, hint } = objectOf("error", error);
  if (typeof allowed !== "string") refuse("error", error, "an error of an input");
  if (!bound) return hint;
  const { is, value, limit } = objectOf("bound", bound);
  const side = oneOf("bound.is", is, ["min", "above", "max", "below"]);
  return frozen({ code: `quantity.bound.${side}`, values: { value, limit } });
}
