// How much does a tube hold? Bore, volume and copper mass from outside diameter and wall.
// Follows plane geometry: V = π/4 (D − 2 t)² L. Dimensions by ASTM B280, EN 12735-1 or JIS H 3300 stand in
// their own files. Does not cover bends, fittings and tolerances: ± 0.003 in of wall is ± 6 % of the
// volume of a 1/4 in tube.
import { type Citation, cite } from "../assessment/assessment.ts";
import { siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { mL, mm2, sqin } from "../quantity/units/geometry.ts";
import { kgPerM } from "../quantity/units/mass.ts";
import type { SourceId } from "../sources/bibliography.ts";

/**
 * Outside diameter and wall of a round tube: all that its volume needs. Measure both when the tube is
 * not marked; tube sold in line sets is often thinner than the standard.
 */
export interface TubeSize {
  /** Outside diameter, 1 mm to 300 mm. */
  readonly outsideDiameter: Quantity<"length">;
  /** Wall thickness, more than 0 and less than half the outside diameter. */
  readonly wall: Quantity<"length">;
}

/**
 * A tube of a standard.
 */
export interface Tube extends TubeSize {
  /** Nominal size as the trade says it: `3/8 in`, `9.52 mm`. */
  readonly designation: string;
  /** The standard it follows. */
  readonly sources: readonly Citation[];
}

/** A tube of a standard, its wall checked. Internal. */
export function tubeOf(
  designation: string,
  outsideDiameter: Quantity<"length">,
  wall: Quantity<"length">,
  ...standards: SourceId[]
): Tube {
  siOf("wall", wall, "length", { above: 0, below: outsideDiameter.si / 2 });
  return { designation, outsideDiameter, wall, sources: standards.map((one) => cite(one)) };
}

/** Checked outside and inside diameter in meters. Internal. */
export function diametersOf(argument: string, tube: TubeSize): { outside: number; inside: number } {
  const outside = siOf(`${argument}.outsideDiameter`, tube?.outsideDiameter, "length", {
    min: 1e-3,
    max: 0.3,
  });
  const wall = siOf(`${argument}.wall`, tube.wall, "length", { above: 0, below: outside / 2 });
  return { outside, inside: outside - 2 * wall };
}

/** Bore area in m². Internal. */
export function boreOf(argument: string, tube: TubeSize): number {
  return (Math.PI / 4) * diametersOf(argument, tube).inside ** 2;
}

/** A run of tube in meters, 0 to 1 km. Internal. */
export function lengthOf(argument: string, length: Quantity<"length">): number {
  return siOf(argument, length, "length", { min: 0, max: 1000 });
}

/** Whether a length was entered in feet or inches, so that the answer follows. Internal. */
export function isImperial(length: Quantity<"length">): boolean {
  return ["ft", "in"].includes(length.unit.symbol);
}

/**
 * Inside diameter of a tube.
 *
 * @param tube - Outside diameter and wall.
 * @returns Outside diameter less two walls, in the unit of the outside diameter.
 * @throws {@link InvalidInputError} when a dimension is missing, of another kind or impossible.
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { insideDiameter } from "hvac-install-math/line-set";
 * import { inch } from "hvac-install-math/quantity";
 *
 * insideDiameter({ outsideDiameter: inch(0.25), wall: inch(0.03) }).toString(); // => 0.19 in
 * ```
 */
export function insideDiameter(tube: TubeSize): Quantity<"length"> {
  return new Quantity(diametersOf("tube", tube).inside, tube.outsideDiameter.unit);
}

/**
 * Cross-section of the bore of a tube.
 *
 * @param tube - Outside diameter and wall.
 * @returns π/4 times the square of the inside diameter, in square inches for a tube in inches, else in
 * square millimeters.
 * @throws {@link InvalidInputError} when a dimension is missing, of another kind or impossible.
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { boreArea } from "hvac-install-math/line-set";
 * import { inch, sqin } from "hvac-install-math/quantity";
 *
 * boreArea({ outsideDiameter: inch(0.25), wall: inch(0.03) }).toString(sqin, 4); // => 0.0284 in²
 * ```
 */
export function boreArea(tube: TubeSize): Quantity<"area"> {
  return new Quantity(boreOf("tube", tube), isImperial(tube.outsideDiameter) ? sqin : mm2);
}

/**
 * Volume inside a length of tube: what liquid can fill, and what a pressure test or an evacuation has
 * to reckon with.
 *
 * @param tube - Outside diameter and wall.
 * @param length - Length of tube, 0 to 1000 m.
 * @returns The volume, in milliliters.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 *
 * Source: plane geometry, V = π/4·d²·L.
 *
 * @example
 * ```ts
 * import { astmB280Tube, tubeVolume } from "hvac-install-math/line-set";
 * import { ft, mL } from "hvac-install-math/quantity";
 *
 * const suction = astmB280Tube({ size: "3/8", temper: "annealed" });
 * tubeVolume(suction, ft(25)).toString(mL, 1); // => 373.5 mL
 * ```
 */
export function tubeVolume(tube: TubeSize, length: Quantity<"length">): Quantity<"volume"> {
  return new Quantity(boreOf("tube", tube) * lengthOf("length", length), mL);
}

/**
 * Mass of copper per length of tube, for hangers and for handling a coil.
 *
 * @param tube - Outside diameter and wall of a copper tube.
 * @returns π/4·(D² − d²) times the density of copper, in kg/m.
 * @throws {@link InvalidInputError} when a dimension is missing, of another kind or impossible.
 *
 * Source: plane geometry; density of copper 8940 kg/m³, from memory, which gives the masses of ASTM
 * B280 within 0.6 %.
 *
 * @example
 * ```ts
 * import { astmB280Tube, copperMassPerLength } from "hvac-install-math/line-set";
 * import { kgPerM } from "hvac-install-math/quantity";
 *
 * const tube = astmB280Tube({ size: "1/4", temper: "annealed" });
 * copperMassPerLength(tube).toString(kgPerM, 3); // => 0.120 kg/m
 * ```
 */
export function copperMassPerLength(tube: TubeSize): Quantity<"massPerLength"> {
  const { outside, inside } = diametersOf("tube", tube);
  return new Quantity((Math.PI / 4) * (outside ** 2 - inside ** 2) * 8940, kgPerM);
}
