// How wide must the drain be? By cooling capacity and by the pan's outlet.
// Follows IMC 2021, 307.2.2 and table 307.2.2.
// Does not cover UPC table 814.3, which is similar, nor sizing by flow: the code goes by tonnage.
import { type Citation, cite } from "../assessment/assessment.ts";
import { heed } from "../assessment/safety.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { isAtLeast } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { tonRefrigeration } from "../quantity/units/electricity.ts";
import { inch } from "../quantity/units/geometry.ts";
import { baseCautions } from "./drain-cautions.ts";
import type { CondensateCaution } from "./statements.ts";

// IMC table 307.2.2: equipment capacity up to, tons of refrigeration; minimum pipe diameter, in.
const table: readonly (readonly [tons: number, inches: number])[] = [
  [20, 3 / 4],
  [40, 1],
  [90, 1.25],
  [125, 1.5],
  [250, 2],
];

/**
 * The size of a condensate drain.
 *
 * Source: see {@link drainSize}.
 */
export interface DrainSize {
  /** Nominal size, in. */
  readonly nominal: Quantity<"length">;
  /** Whether the capacity or the pan's outlet decides. */
  readonly decidedBy: "capacity" | "outlet";
  /** What overrides it. */
  readonly cautions: readonly CondensateCaution[];
  /** Where it stands. */
  readonly citation: Citation;
}

/**
 * The smallest drain for a cooling capacity: 3/4 in at least, not smaller than the pan's outlet, and by
 * the table where several units share one drain.
 *
 * @param input - Capacity of all units on the drain, above 0 to 250 tons, and the outlet's diameter.
 * @returns The nominal size. The table means drains that fall about 1/8 in per foot.
 * @throws {@link OutOfRangeError} when the capacity is not above 0 or above 250 tons, where the table ends.
 * @throws {@link InvalidInputError} when a kind does not fit.
 *
 * Cautions: small splits come with a hose of their own, often 16 mm; the manual rules up to where it
 * joins a drain.
 *
 * Source: IMC 2021, 307.2.2 and table 307.2.2 (as one ordinance prints it).
 *
 * @example
 * ```ts
 * import { drainSize } from "hvac-install-math/condensate";
 * import { inch, tonRefrigeration } from "hvac-install-math/quantity";
 *
 * drainSize({ capacity: tonRefrigeration(21) }).nominal.toString(); // => 1 in
 * drainSize({ capacity: tonRefrigeration(3), outletDiameter: inch(1) }).decidedBy; // => outlet
 * ```
 */
export function drainSize(input: {
  /** Cooling capacity of all units on the drain. */
  readonly capacity: Quantity<"power">;
  /** Diameter of the pan's outlet, nominal. */
  readonly outletDiameter?: Quantity<"length"> | undefined;
}): DrainSize {
  objectOf("input", input);
  const { capacity, outletDiameter } = input;
  const limits = { above: 0, max: tonRefrigeration(250).si };
  siOf("capacity", capacity, "power", limits, OutOfRangeError);
  const outlet =
    outletDiameter === undefined
      ? 0
      : siOf("outletDiameter", outletDiameter, "length", { above: 0 });
  const tons = capacity.in(tonRefrigeration); // twelve digits, so that 40 tons are 40 tons
  const rows = table.filter(([upTo]) => tons <= upTo);
  const wide = rows.find(([, size]) => isAtLeast(inch(size).si, outlet)) ?? [0, outlet / 0.0254];
  return frozen<DrainSize>({
    nominal: inch(wide[1]),
    decidedBy: wide === rows[0] ? "capacity" : "outlet",
    cautions: heed(baseCautions()),
    citation: cite("imc-2021", "307.2.2"),
  });
}
