// What can a part of a typed text be worth?
// Follows no standard. Does not cover how it is computed: evaluate.ts.

import type { AnyUnit } from "./unit-names.ts";

/** A bare number (no unit) or a quantity in SI, with its place in the text. */
export interface Value {
  readonly si: number;
  readonly unit?: AnyUnit | undefined;
  readonly start: number;
  readonly end: number;
  /** Where a unit's name stands that says what it is. */
  readonly unitPlace: readonly [start: number, end: number];
  /** Where the second reading stands, when the value is a reading less a reading. */
  readonly secondReading?: readonly [start: number, end: number] | undefined;
}
