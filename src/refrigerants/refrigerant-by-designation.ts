// Which refrigerant does this name mean? A forgiving look-up.
// Follows ANSI/ASHRAE Standard 34 for the designations.
// Does not cover trade names: they belong to their owners.
import { describe } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { refrigerants } from "./data/index.ts";
import type { Refrigerant } from "./refrigerant.ts";
import { say } from "./saturation/index.ts";

/**
 * The refrigerant that a designation means, however it is written: `R-410A`, `r410a`, `410A`, `R 410 A`,
 * `R1234ze(E)`, `HFO-1234yf`. It puts the data of all refrigerants into a bundle.
 *
 * @param designation - A text.
 * @returns The refrigerant.
 * @throws {@link InvalidInputError} when the library has none of that name; the message lists what it has.
 *
 * Source: ANSI/ASHRAE Standard 34 for the designations.
 *
 * @example
 * ```ts
 * import { refrigerantByDesignation } from "hvac-install-math/refrigerants";
 *
 * refrigerantByDesignation("r 410 a").designation; // => R-410A
 * refrigerantByDesignation("1234ze").designation; // => R-1234ze(E)
 * ```
 */
export function refrigerantByDesignation(designation: string): Refrigerant {
  const wanted = typeof designation === "string" ? plain(designation) : "";
  const found =
    refrigerants.find((one) => plain(one.designation) === wanted) ??
    // The isomer may be left out where the library knows only one.
    refrigerants.find((one) => plain(one.designation.replace(/\(.\)/, "")) === wanted);
  if (found !== undefined) return found;
  throw new InvalidInputError({
    argument: "designation",
    value: describe(designation),
    allowed: refrigerants.map((one) => one.designation).join(", "),
    hint: say("refrigerants.check-designation"),
  });
}

/** Number and letters alone, without R, HFC, HFO and the like in front. */
function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]/g, "")
    .replace(/^(r|hfc|hfo|hcfo|hcfc|hc)(?=\d)/, "");
}
