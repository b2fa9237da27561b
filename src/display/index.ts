/**
 * Quantities and the figures of a verdict as text for people: in their system of units, with the digits that
 * an instrument of the kind deserves, in the numbers of their language.
 *
 * @module display
 */
export { usualUnit } from "./display-units.ts";
export { type FigureTextOptions, figureText } from "./figure-text.ts";
export {
  type FormatQuantityOptions,
  formatQuantity,
  shownUnit,
  type UnitSystem,
} from "./format-quantity.ts";
export { type DisplayStatements, type UnitLanguage, unitName } from "./unit-words.ts";
