/**
 * Unit-safe quantities: gauge, absolute and difference pressure, a temperature and a temperature
 * difference are types of their own, and a unit mistake is a compile error.
 *
 * @module quantity
 */
export * from "./atmosphere.ts";
export * from "./equals.ts";
export {
  type InputProblem,
  InvalidInputError,
  isInvalidInputError,
  OutOfRangeError,
} from "./errors.ts";
export { type AnyQuantity, fromJSON, isQuantity } from "./json.ts";
export type { AdditiveKind, DifferenceOf, Differences, Kind, Kinds, PointKind } from "./kinds.ts";
export { type Products, product, quotient } from "./products.ts";
export { Quantity, type QuantityJson, type Unit } from "./quantity.ts";
export * from "./units/index.ts";
