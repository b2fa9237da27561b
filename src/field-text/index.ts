/**
 * What a person types into a box, such as `12 ft 6 in + 9 ft` or `118 psig`, to a typed quantity. The
 * module display writes it back.
 *
 * @module field-text
 */
export {
  type FieldTextError,
  type FieldTextStatement,
  type FieldTextStatements,
  isFieldTextError,
} from "../read-quantity/index.ts";
export * from "./parse-quantity.ts";
export { type TypedUnit, typedUnits, type UnitLanguageName } from "./typed-units.ts";
