// What are the dimensions of ACR tube? The table of North American air-conditioning tube.
// Follows ASTM B280, tables of annealed coils and drawn straight lengths, as reproduced.
// Does not cover tolerances, sizes above 1-1/8 in, and plumbing tube (ASTM B88), which is named by its
// outside diameter less 1/8 in.

import { oneOf, refuse } from "../quantity/check.ts";
import { frozen, frozenInPlace } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { inch } from "../quantity/units/geometry.ts";
import { type Tube, tubeOf } from "./tube.ts";

/** Nominal (actual outside) size in inches. Source: ASTM B280. */
export type AstmB280Size = "1/4" | "5/16" | "3/8" | "1/2" | "5/8" | "3/4" | "7/8" | "1-1/8";

/** `annealed`: soft, in coils. `drawn`: hard, in straight lengths. Source: ASTM B280. */
export type AstmB280Temper = "annealed" | "drawn";

/**
 * The table as the standard prints it: outside diameter in inches, then the walls of annealed and of
 * drawn tube in inches. 5/16 in tube is 0.312 in; annealed 3/4 in tube exists in two walls.
 *
 * Source: ASTM B280, as reproduced.
 *
 * @example
 * ```ts
 * import { astmB280 } from "hvac-install-math/line-set";
 *
 * astmB280["3/4"].annealed.join(" or "); // => 0.035 or 0.042
 * ```
 */
export const astmB280: Readonly<
  Record<
    AstmB280Size,
    {
      /** Outside diameter in inches. */
      readonly outside: number;
      /** Walls of soft coils in inches. */
      readonly annealed: readonly number[];
      /** Walls of hard straight lengths in inches; empty where the size is not made. */
      readonly drawn: readonly number[];
    }
  >
> = /* @__PURE__ */ frozenInPlace({
  "1/4": { outside: 0.25, annealed: [0.03], drawn: [] },
  "5/16": { outside: 0.312, annealed: [0.032], drawn: [] },
  "3/8": { outside: 0.375, annealed: [0.032], drawn: [0.03] },
  "1/2": { outside: 0.5, annealed: [0.032], drawn: [0.035] },
  "5/8": { outside: 0.625, annealed: [0.035], drawn: [0.04] },
  "3/4": { outside: 0.75, annealed: [0.035, 0.042], drawn: [0.042] },
  "7/8": { outside: 0.875, annealed: [0.045], drawn: [0.045] },
  "1-1/8": { outside: 1.125, annealed: [0.05], drawn: [0.05] },
});

/**
 * Which tube of ASTM B280.
 */
export interface AstmB280Choice {
  /** Nominal size in inches. */
  readonly size: AstmB280Size;
  /** Soft coil or hard straight length. */
  readonly temper: AstmB280Temper;
  /** Wall, where the standard has two, or where the tube at hand is thinner or thicker. */
  readonly wall?: Quantity<"length"> | undefined;
}

/**
 * A tube of ASTM B280 by its nominal size.
 *
 * @param choice - Size, temper and, where the standard leaves a choice or the tube differs, the wall.
 * @returns The tube with its actual outside diameter and wall.
 * @throws {@link InvalidInputError} when the size is not made in that temper, or when it has two walls
 * and none is named.
 *
 * Source: ASTM B280, as reproduced.
 *
 * @example
 * ```ts
 * import { astmB280Tube } from "hvac-install-math/line-set";
 *
 * astmB280Tube({ size: "3/8", temper: "annealed" }).wall.toString(); // => 0.032 in
 * ```
 */
export function astmB280Tube(choice: AstmB280Choice): Tube {
  const sizes = Object.keys(astmB280) as AstmB280Size[];
  const size = oneOf("size", choice?.size, sizes);
  const temper = oneOf("temper", choice.temper, ["annealed", "drawn"]);
  const row = astmB280[size];
  const walls = row[temper];
  const [only] = walls;
  if (choice.wall === undefined && (only === undefined || walls.length > 1)) {
    refuse(
      "wall",
      undefined,
      only ? `one of ${walls.join(", ")} in` : `a measured wall: no ${temper} ${size} in`,
      "length",
    );
  }
  const { wall = inch(only ?? Number.NaN) } = choice;
  return frozen(tubeOf(`${size} in`, inch(row.outside), wall, "astm-b280-2020"));
}
