// Which port does a tube fit? The flare of its size; above the largest flare, the socket that it is brazed into.
// Follows ASTM B280 and EN 12735-1 for the sizes. Does not cover sizes above 1-1/8 in.
import { type FlareTube, flareTube } from "../flare-joint/index.ts";
import { type AstmB280Size, astmB280 } from "../line-set/index.ts";
import { siOf } from "../quantity/check.ts";
import { known } from "../quantity/known.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { inch } from "../quantity/units/geometry.ts";

/**
 * Size of a port by the outside diameter of the tube that it takes: a flare, or above 3/4 in a brazed socket.
 *
 * Source: ASTM B280; metric sizes of EN 12735-1, from memory.
 */
export type PortSize = FlareTube | AstmB280Size;

/** As near as {@link flareTube} asks for, m. */
const near = 0.2e-3;

/**
 * The size of port that a tube fits, by its outside diameter.
 *
 * @param outsideDiameter - `length`, above 0.
 * @returns The size, or nothing where none lies within 0.2 mm.
 * @throws {@link InvalidInputError} when it is not a positive length.
 *
 * Source: ASTM B280, sizes; the 0.2 mm are common practice, no source.
 *
 * @example
 * ```ts
 * import { portSize } from "hvac-install-math/commissioning";
 * import { inch, mm } from "hvac-install-math/quantity";
 *
 * portSize(inch(0.875)); // => 7/8
 * portSize(mm(9.52)); // => 3/8
 * portSize(mm(40)); // => undefined
 * ```
 */
export function portSize(outsideDiameter: Quantity<"length">): PortSize | undefined {
  const diameter = siOf("outsideDiameter", outsideDiameter, "length", { above: 0 });
  const brazed = Object.keys(astmB280) as AstmB280Size[];
  return (
    known(() => flareTube(outsideDiameter)) ??
    brazed.find((size) => Math.abs(inch(astmB280[size].outside).si - diameter) <= near)
  );
}
