/**
 * What a person types into a box, such as `12 ft 6 in + 9 ft` or `118 psig`, to a typed quantity, and
 * back to text for people, in inch-pound or SI units and in their language's digits.
 *
 * @module field-text
 */
export { type FormatQuantityOptions, formatQuantity, type UnitSystem } from "../display/index.ts";
export { type FieldTextError, isFieldTextError } from "./field-text-error.ts";
export * from "./parse-quantity.ts";
export { type TypedUnit, typedUnits } from "./typed-units.ts";
