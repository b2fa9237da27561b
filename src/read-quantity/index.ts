/**
 * A number as a person types it, with or without its unit, to a typed quantity: `8,14 bar`, `12 ft 6 in`,
 * `1-1/4"`. Small enough for every form; sums and products of quantities are the work of field-text.
 *
 * @module read-quantity
 */
export { type FieldTextError, isFieldTextError } from "./field-text-error.ts";
export { type ReadQuantityOptions, readQuantity } from "./read-quantity.ts";
export type { FieldTextStatement, FieldTextStatements } from "./statements.ts";
