// Does the pan need a trap, and how deep? By the static pressure at the pan.
// Follows manufacturers' manuals for draw-through coils: H = |p| + 1 in of water, seal H/2.
// Does not cover plumbing traps against sewer gas, nor pans at no static pressure, as in most wall units.
import { type Citation, cite } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { heed } from "../assessment/safety.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { inch } from "../quantity/units/geometry.ts";
import { inchWater } from "../quantity/units/pressure.ts";
import { baseCautions } from "./drain-cautions.ts";
import { type CondensateCaution, say } from "./statements.ts";

/**
 * The trap that a pan needs.
 *
 * Source: see {@link condensateTrap}.
 */
export interface CondensateTrap {
  /** Whether the fan sucks at the pan, blows into it, or neither. */
  readonly kind: "draw-through" | "blow-through" | "none";
  /** From the pan's outlet down to the trap's outlet, at least; 0 where the manual gives no figure. */
  readonly outletDrop: Quantity<"length">;
  /** Water in the trap below its outlet, at least. */
  readonly seal: Quantity<"length">;
  /** From the pan's outlet down to the bottom of the trap, about, without the pipe's own diameter. */
  readonly height: Quantity<"length">;
  /** What to heed. */
  readonly cautions: readonly CondensateCaution[];
  /** Where it stands. */
  readonly citations: readonly Citation[];
}

/**
 * The trap for a pan at a static pressure. A fan behind the coil sucks at the pan (negative): without a
 * trap that is deep enough the water stands in the pan. A fan before the coil blows air through the
 * drain (positive).
 *
 * @param input - Static pressure at the pan against the room, above −5 to 5 kPa; at 0 no trap is needed.
 * @returns Drop, seal and height, in inches.
 * @throws {@link InvalidInputError} when a kind or range does not fit.
 *
 * Cautions: take the highest static pressure, with dirty filters. A unit that hangs at no static
 * pressure, as most wall units, gets no trap unless its manual asks for one.
 *
 * Source: manufacturers' published manuals for draw-through coils; for blow-through coils the seal is
 * the static pressure (as manuals say) and a margin of 1 in (common practice, no source).
 *
 * @example
 * ```ts
 * import { condensateTrap } from "hvac-install-math/condensate";
 * import { inchWater } from "hvac-install-math/quantity";
 *
 * const { outletDrop, seal } = condensateTrap({ staticPressure: inchWater(-1.5) });
 * outletDrop.toString(); // => 2.5 in
 * seal.toString(); // => 1.25 in
 * ```
 */
export function condensateTrap(input: {
  /** Static pressure at the pan less that of the room. */
  readonly staticPressure: Quantity<"pressureDifference">;
  /** Seal beyond the static pressure of a blow-through coil, 0 or more; 1 in when left out. */
  readonly margin?: Quantity<"length"> | undefined;
}): CondensateTrap {
  objectOf("input", input);
  const { staticPressure, margin = inch(1) } = input;
  const p = siOf("staticPressure", staticPressure, "pressureDifference", {
    above: -5e3,
    below: 5e3,
  });
  siOf("margin", margin, "length", { min: 0 });
  const head = Math.abs(staticPressure.in(inchWater)); // inches of water
  const H = head + 1;
  const drawThrough = p < 0;
  const seal = p === 0 ? 0 : drawThrough ? H / 2 : head + margin.in(inch);
  return frozen<CondensateTrap>({
    kind: p === 0 ? "none" : drawThrough ? "draw-through" : "blow-through",
    outletDrop: inch(drawThrough ? H : 0),
    seal: inch(seal),
    height: inch(drawThrough ? 1.5 * H : seal),
    cautions: heed([caution("finding", say("condensate.dry-trap")), ...baseCautions()]),
    citations: [cite("manufacturer-manuals", "condensate trap"), cite("common-practice")],
  });
}
