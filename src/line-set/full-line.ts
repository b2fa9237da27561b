// How much refrigerant would fill the line? Bore times density, as a mass and as a rate per length.
// Follows plane geometry; the density is the caller's or that of the refrigerant's saturated liquid.
// Does not cover what a unit needs: only the nameplate's rate does. Use this as a plausibility check.
import { objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { g, gPerM, oz, ozPerFt } from "../quantity/units/mass.ts";
import { type Refrigerant, saturatedLiquidDensity } from "../refrigerants/index.ts";
import { boreOf, isImperial, lengthOf, type TubeSize } from "./tube.ts";

/**
 * A tube full of a fluid of one density.
 */
export interface FilledTube {
  /** Outside diameter and wall. */
  readonly tube: TubeSize;
  /** Density of the refrigerant in it, up to 3000 kg/m³. */
  readonly density: Quantity<"density">;
}

/**
 * A tube full of a refrigerant's saturated liquid.
 */
export interface LiquidFilledTube {
  /** Outside diameter and wall. */
  readonly tube: TubeSize;
  /** A refrigerant of `hvac-install-math/refrigerants`. */
  readonly refrigerant: Refrigerant;
  /** Temperature of the liquid, within the refrigerant's range. */
  readonly temperature: Quantity<"temperature">;
}

/** Mass per meter in kg/m. Internal. */
export function fillOf(filled: FilledTube | LiquidFilledTube, path = ""): number {
  objectOf(path.slice(0, -1) || "filled", filled);
  const density =
    "refrigerant" in filled
      ? saturatedLiquidDensity(filled.refrigerant, filled.temperature)
      : filled.density;
  return (
    boreOf(`${path}tube`, filled.tube) *
    siOf(`${path}density`, density, "density", { above: 0, max: 3000 })
  );
}

/**
 * Mass per length of a tube full of refrigerant.
 *
 * @param filled - Tube and density, or tube, refrigerant and temperature of the liquid.
 * @returns The mass per length, in oz/ft for a tube in inches, else in g/m.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible;
 * {@link OutOfRangeError} for a temperature outside the refrigerant's range.
 * Caution: an upper bound for a liquid line, never the nameplate's rate.
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { astmB280Tube, fullLineRate } from "hvac-install-math/line-set";
 * import { degF, gPerM, kgPerM3 } from "hvac-install-math/quantity";
 * import { R410A } from "hvac-install-math/refrigerants";
 *
 * const tube = astmB280Tube({ size: "1/4", temper: "annealed" });
 * fullLineRate({ tube, refrigerant: R410A, temperature: degF(105) }).toString(gPerM, 1); // => 17.8 g/m
 * fullLineRate({ tube, density: kgPerM3(972.3) }).toString(gPerM, 1); // => 17.8 g/m
 * ```
 */
export function fullLineRate(filled: FilledTube | LiquidFilledTube): Quantity<"massPerLength"> {
  return new Quantity(fillOf(filled), isImperial(filled.tube.outsideDiameter) ? ozPerFt : gPerM);
}

/**
 * Mass of refrigerant that fills a length of tube.
 *
 * @param filled - Tube, density (or refrigerant and temperature of the liquid) and `length`, 0 to 1000 m.
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
  filled: (FilledTube | LiquidFilledTube) & {
    /** Length of tube. */ readonly length: Quantity<"length">;
  },
): Quantity<"mass"> {
  const mass = fillOf(filled) * lengthOf("length", filled.length);
  return new Quantity(mass, isImperial(filled.length) ? oz : g);
}
