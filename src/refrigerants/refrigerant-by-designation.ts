// Which refrigerant does this name mean? All that the library carries, and a forgiving look-up.
// Follows ANSI/ASHRAE Standard 34 for the designations.
// Does not cover trade names: they belong to their owners.

import { describe } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozenInPlace } from "../quantity/frozen.ts";
import { R22 } from "./data/r22.ts";
import { R32 } from "./data/r32.ts";
import { R134a } from "./data/r134a.ts";
import { R290 } from "./data/r290.ts";
import { R404A } from "./data/r404a.ts";
import { R407A } from "./data/r407a.ts";
import { R407C } from "./data/r407c.ts";
import { R407F } from "./data/r407f.ts";
import { R410A } from "./data/r410a.ts";
import { R448A } from "./data/r448a.ts";
import { R449A } from "./data/r449a.ts";
import { R450A } from "./data/r450a.ts";
import { R452A } from "./data/r452a.ts";
import { R452B } from "./data/r452b.ts";
import { R454A } from "./data/r454a.ts";
import { R454B } from "./data/r454b.ts";
import { R454C } from "./data/r454c.ts";
import { R507A } from "./data/r507a.ts";
import { R513A } from "./data/r513a.ts";
import { R600a } from "./data/r600a.ts";
import { R717 } from "./data/r717.ts";
import { R744 } from "./data/r744.ts";
import { R1233zdE } from "./data/r1233zde.ts";
import { R1234yf } from "./data/r1234yf.ts";
import { R1234zeE } from "./data/r1234zee.ts";
import type { Refrigerant } from "./refrigerant.ts";
import { say } from "./statements.ts";

/**
 * Every refrigerant of the library, by number. Using it puts the data of all of them into a bundle;
 * import single ones where size matters.
 *
 * Source: ANSI/ASHRAE Standard 34.
 */
export const refrigerants: readonly Refrigerant[] = /* @__PURE__ */ frozenInPlace([
  R22,
  R32,
  R134a,
  R290,
  R404A,
  R407A,
  R407C,
  R407F,
  R410A,
  R448A,
  R449A,
  R450A,
  R452A,
  R452B,
  R454A,
  R454B,
  R454C,
  R507A,
  R513A,
  R600a,
  R717,
  R744,
  R1233zdE,
  R1234yf,
  R1234zeE,
]);

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
