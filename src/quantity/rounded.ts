// How does a figure read with few digits? Rounded in its own unit, as a sentence shows it.
// Follows no standard. Does not cover what an app shows: see display.
import type { Kind } from "./kinds.ts";
import { Quantity, type Unit } from "./quantity.ts";

/** An SI figure in a unit, rounded there: 2.5 oz are 2.5 oz, whatever they are in kilograms. */
export const rounded = <K extends Kind>(si: number, unit: Unit<K>, digits: number): Quantity<K> =>
  unit(Number(new Quantity(si, unit).in(unit).toPrecision(digits)));
