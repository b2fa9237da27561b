// How much refrigerant would fill the line? Bore times density, as a mass and as a rate per length.
// Follows plane geometry; densities come from the caller's refrigerant data.
// Does not cover what a unit needs: only the nameplate's rate does. Use this as a plausibility check.
import { siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { g, gPerM, oz, ozPerFt } from "../quantity/units/mass.ts";
import { boreOf, isImperial, lengthOf, type TubeSize } from "./tube.ts";

/**
 * A tube full of a fluid of one density.
 *
 * Source: none; the library's own type.
 */
export interface FilledTube {
  /** Outside diameter and wall. */
  readonly tube: TubeSize;
  /** Density of the refrigerant in it, up to 3000 kg/m³. */
  readonly density: Quantity<"density">;
}

/** Mass per metre in kg/m. Internal. */
export function fillOf({ tube, density }: FilledTube, path = ""): number {
  return (
    boreOf(`${path}tube`, tube) *
    siOf(`${path}density`, density, "density", { above: 0, max: 3000 })
  );
}

/**
 * Mass per length of a tube full of refrigerant.
 *
 * @param filled - Tube and density.
 * @returns The mass per length, in oz/ft for a tube in inches, else in g/m.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 * Caution: an upper bound for a liquid line, never the nameplate's rate.
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { astmB280Tube, fullLineRate } from "hvac-install-math/line-set";
 * import { gPerM, kgPerM3 } from "hvac-install-math/quantity";
 *
 * const tube = astmB280Tube({ size: "1/4", temper: "annealed" });
 * fullLineRate({ tube, density: kgPerM3(972.3) }).toString(gPerM, 1); // => 17.8 g/m
 * ```
 */
export function fullLineRate(filled: FilledTube): Quantity<"massPerLength"> {
  return new Quantity(fillOf(filled), isImperial(filled.tube.outsideDiameter) ? ozPerFt : gPerM);
}

/**
 * Mass of refrigerant that fills a length of tube.
 *
 * @param filled - Tube, density and `length`, 0 to 1000 m.
 * @returns The mass, in ounces for a length in feet or inches, else in grams.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 * Caution: an upper bound for a liquid line, never the mass to charge.
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { fullLineMass, jisH3300Tube } from "hvac-install-math/line-set";
 * import { g, kgPerM3, m } from "hvac-install-math/quantity";
 *
 * const tube = jisH3300Tube("6.35");
 * fullLineMass({ tube, density: kgPerM3(890.3), length: m(10) }).toString(g, 0); // => 158 g
 * ```
 */
export function fullLineMass(
  filled: FilledTube & {
    /** Length of tube. */ readonly length: Quantity<"length">;
  },
): Quantity<"mass"> {
  const mass = fillOf(filled) * lengthOf("length", filled.length);
  return new Quantity(mass, isImperial(filled.length) ? oz : g);
}
